/** A train as text, like wheels alike: two trains with the same text are one. */
type Best = { readonly text: Set<string>; error: readonly [bigint, bigint] };

const choose = <T>(list: readonly T[], many: number): T[][] =>
  many === 0 ? [[]] : list.flatMap((one, at) => choose(list.slice(at + 1), many - 1).map((rest) => [one, ...rest]));

/**
 * Every train of so many wheels, by places in the list so that no wheel stands in it twice, and of them those nearest to num ÷ den:
 * whole numbers throughout, no sorting, no skipping. For small sets.
 */
export function everyBest(wheels: readonly number[], perSide: number, num: bigint, den: bigint): { trains: string[]; error: string } {
  const places = wheels.map((_, at) => at);
  let best: Best | null = null;
  for (const drivers of choose(places, perSide)) {
    const left = places.filter((at) => !drivers.includes(at));
    for (const driven of choose(left, perSide)) {
      const [top, bottom] = [drivers, driven].map((side) => side.reduce((all, at) => all * BigInt(wheels[at] as number), 1n)) as [
        bigint,
        bigint,
      ];
      const off = top * den - num * bottom;
      const error = [off < 0n ? -off : off, bottom * den] as const;
      const order = best ? error[0] * best.error[1] - best.error[0] * error[1] : -1n;
      if (order > 0n) continue;
      if (!best || order < 0n) best = { text: new Set(), error };
      best.text.add(
        trainText(
          drivers.map((at) => wheels[at] as number),
          driven.map((at) => wheels[at] as number),
        ),
      );
    }
  }
  return best ? { trains: [...best.text].sort(), error: lowestText(best.error) } : { trains: [], error: 'none' };
}

function lowestText([top, bottom]: readonly [bigint, bigint]): string {
  let [x, y] = [top, bottom];
  while (y !== 0n) [x, y] = [y, x % y];
  return `${top / x}/${bottom / x}`;
}

export const trainText = (drivers: readonly number[], driven: readonly number[]): string =>
  `${[...drivers].sort((a, b) => a - b).join('×')}÷${[...driven].sort((a, b) => a - b).join('×')}`;

/**
 * The same at the speed that plain loops have: all choices of drivers against all choices of driven, products ready, disjoint by bits.
 * For up to 60 wheels of different numbers. Gives the least distance from the target and every train at it.
 */
export function fullSearch(wheels: readonly number[], perSide: 2 | 3, target: number): { off: number; trains: string[] } {
  const sides = choose(
    wheels.map((_, at) => at),
    perSide,
  );
  const product = Float64Array.from(sides, (side) => side.reduce((all, at) => all * (wheels[at] as number), 1));
  const [low, high] = [0, 30].map((from) =>
    Int32Array.from(sides, (side) => side.reduce((bits, at) => (at >= from && at < from + 30 ? bits | (1 << (at - from)) : bits), 0)),
  ) as [Int32Array, Int32Array];
  const highest = wheels.length > 60 ? sides.map((side) => new Set(side)) : null;
  let [least, trains] = [Number.POSITIVE_INFINITY, [] as (readonly [number, number])[]];
  for (let driver = 0; driver < sides.length; driver++) {
    const [top, one, two] = [product[driver] as number, low[driver] as number, high[driver] as number];
    for (let driven = 0; driven < sides.length; driven++) {
      if (((one & (low[driven] as number)) | (two & (high[driven] as number))) !== 0) continue;
      const off = Math.abs(top / (product[driven] as number) - target);
      if (off > least) continue;
      if (highest && sides[driven]?.some((at) => highest[driver]?.has(at))) continue;
      if (off < least) [least, trains] = [off, []];
      trains.push([driver, driven]);
    }
  }
  const read = (side: number): number[] => (sides[side] ?? []).map((at) => wheels[at] as number);
  return { off: least, trains: trains.map(([driver, driven]) => trainText(read(driver), read(driven))).sort() };
}
