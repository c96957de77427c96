/** Seeded numbers from 0 to 1 (the mulberry32 generator, common practice, no source), so that a bench gives the same answer again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export type Draw = () => number;

/** A number of the bell of width 1 (Box and Muller, 1958). */
export const bell = (draw: Draw): number => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());

/** One of several, each as often as its weight says. */
export function pick<T>(draw: Draw, all: readonly T[], weight: (one: T) => number): T {
  let left = draw() * all.reduce((sum, one) => sum + weight(one), 0);
  for (const one of all) {
    left -= weight(one);
    if (left <= 0) return one;
  }
  return all[all.length - 1] as T;
}

export const from = (draw: Draw, least: number, most: number): number => least + draw() * (most - least);
