import type { Point } from './drawing.ts';

/**
 * The lines that hatch an area, cut off at its edges, so that they print on anything and need no pattern.
 * rings: outer outline and holes, even-odd; gap: distance between lines; lean: +1 lines rise to the right, -1 to the left.
 * Each line keeps y − lean·x = c; the c are whole multiples of the step, so neighbouring areas hatch in one.
 */
export function hatchLines(rings: readonly (readonly Point[])[], gap: number, lean: 1 | -1): (readonly [Point, Point])[] {
  const step = gap * Math.SQRT2;
  const meets = new Map<number, number[]>();
  for (const ring of rings) for (const [i, from] of ring.entries()) cross(meets, from, ring[(i + 1) % ring.length] ?? from, step, lean);
  return [...meets.entries()].flatMap(([k, xs]) =>
    pairs(xs.sort((a, b) => a - b)).map(([a, b]) => [at(a, k, step, lean), at(b, k, step, lean)] as const),
  );
}

const at = (x: number, k: number, step: number, lean: number): Point => [x, k * step + lean * x];

/** Adds where each hatch line crosses one edge. An edge owns its lower end and not its upper, so a corner counts once. */
function cross(meets: Map<number, number[]>, [ax, ay]: Point, [bx, by]: Point, step: number, lean: number): void {
  const [ca, cb] = [(ay - lean * ax) / step, (by - lean * bx) / step];
  const [low, high] = ca < cb ? [ca, cb] : [cb, ca];
  for (let k = Math.ceil(low); k < high; k++) {
    const x = ax + ((bx - ax) * (k - ca)) / (cb - ca);
    meets.set(k, [...(meets.get(k) ?? []), x]);
  }
}

function pairs(sorted: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  for (let i = 0; i + 1 < sorted.length; i += 2) found.push([sorted[i] ?? 0, sorted[i + 1] ?? 0]);
  return found;
}
