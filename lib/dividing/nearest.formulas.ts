import { gcd, type Ratio, ratio } from '../values/ratio.ts';

/**
 * The holes of a circle that come nearest for tooth n, counted on from tooth 1 and never added up from rounded moves.
 *   h = round((n − 1) × R × c ÷ N)
 * R: turns of the crank for one turn of the spindle; N: divisions; c: holes in the circle. Half a hole is rounded down.
 * Source: derived. Example: 40, 71 and 49: tooth 2 stands at hole 28 (27.606).
 */
export const nearestHole = (n: number, R: number, N: number, c: number): number => Math.ceil((2 * (n - 1) * R * c - N) / (2 * N));

/** How far that hole lies past the true place, in turns of the crank: e = h ÷ c − (n − 1) × R ÷ N. Source: derived. */
export const errorAtTooth = (n: number, R: number, N: number, c: number): Ratio =>
  ratio(nearestHole(n, R, N, c) * N - (n - 1) * R * c, c * N);

/**
 * The largest of those errors over all teeth, in turns of the crank.
 *   e = floor(q ÷ 2) ÷ (q × c),  q = N ÷ gcd(N, R × c)
 * The true places fall on q different parts of a hole, evenly spread. Source: derived. Exact (0) when q is 1.
 * Example: 40, 71 and 49: q 71, 35/3479 of a turn.
 */
export function worstError(R: number, N: number, c: number): Ratio {
  const q = N / gcd(N, R * c);
  return ratio(Math.floor(q / 2), q * c);
}

/** The first tooth at which the error is largest. Throws RangeError when no tooth is off. */
export function worstTooth(R: number, N: number, c: number): number {
  const [num, den] = worstError(R, N, c);
  for (let n = 2; n <= N; n++) {
    const [off, by] = errorAtTooth(n, R, N, c);
    if (num !== 0 && Math.abs(off) === num && by === den) return n;
  }
  throw new RangeError(`no tooth of ${N} is off on ${c} holes`);
}
