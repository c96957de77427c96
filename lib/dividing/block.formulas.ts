import { gcd, type Ratio, ratio } from '../values/ratio.ts';

/**
 * Turns of the crank when k divisions are passed at every move, so that the heat of cutting spreads and wear does not add up on one side.
 *   t = k × R ÷ N
 * The work goes round k times; every space is met once when k and N share no factor.
 * Source: Machinery's Handbook, block or multiple indexing (value of the rule from memory: 25 teeth, every fourth).
 * Throws RangeError when k and N share a factor. Example: 25 divisions, k 4, 40 to 1: 6 2/5 turns.
 */
export function blockTurns(R: number, N: number, k: number): Ratio {
  if (gcd(k, N) !== 1) throw new RangeError(`${k} and ${N} share a factor`);
  return ratio(k * R, N);
}

/** The space that is cut at the i-th cut: ((i − 1) × k) mod N + 1. Source: derived. Example: 25 by fours, eighth cut: space 4. */
export const spaceCut = (i: number, N: number, k: number): number => (((i - 1) * k) % N) + 1;

/** Counts to pass at a move that share no factor with N: from 2 up to half way round. Beyond that one goes backwards. Source: derived. */
export const blocksFor = (N: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor(N / 2) - 1) }, (_, at) => at + 2).filter((k) => gcd(k, N) === 1);
