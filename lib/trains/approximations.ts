import type { Ratio } from '../values/ratio.ts';
import { relativeError, type Target } from './target.ts';

/** A fraction near a target. convergent: of its continued fraction; mediant: between two of these. error: ÷ target, plus = too large. */
export type Approximation = {
  readonly ratio: Ratio;
  readonly kind: 'convergent' | 'mediant';
  readonly error: number;
  readonly greatestPrime: number;
};

const MOST_TERMS = 60;
/** Of a long run of mediants between two convergents the nearest ones; 1 ÷ 1,000,000 has half a million of them. */
export const MOST_MEDIANTS = 40;

/**
 * The partial quotients a0, a1, a2 … of a ratio: a0 + 1 ÷ (a1 + 1 ÷ (a2 + …)).
 * Source: Encyclopaedia Britannica, 11th ed., "Continued Fractions". Example: π: 3, 7, 15, 1, 292, 1, 1.
 */
export function partialQuotients({ num, den }: Target, most = MOST_TERMS): bigint[] {
  const quotients: bigint[] = [];
  let [top, bottom] = [num, den];
  while (bottom !== 0n && quotients.length < most) {
    quotients.push(top / bottom);
    [top, bottom] = [bottom, top % bottom];
  }
  return quotients;
}

/**
 * Every fraction that is nearer to the target than all fractions with a smaller denominator, up to `most` above and below the line.
 *   convergent n: pn = an pn−1 + pn−2, qn = an qn−1 + qn−2; mediants: the same with 1 … an − 1 for an
 * Source: Encyclopaedia Britannica, 11th ed., "Continued Fractions": convergents, intermediate fractions.
 * Errors are worked in whole numbers. Example: 1.27 up to 100: 1, 4/3, 5/4, 9/7, 14/11, 33/26, 47/37 and so on, with 127/100 exact.
 */
export function approximations(target: Target, most: number): Approximation[] {
  const found: Approximation[] = [];
  let [before, last]: [Pair, Pair] = [
    [0n, 1n],
    [1n, 0n],
  ];
  let [least, first]: [Pair | null, boolean] = [null, true];
  for (const quotient of partialQuotients(target)) {
    const from = first || quotient <= 2n ? (first ? quotient : 1n) : quotient / 2n;
    first = false;
    const top = lastWithin(before, last, quotient, BigInt(most));
    const start = top - BigInt(MOST_MEDIANTS);
    for (let k = start > from ? start : from; k <= top; k++) {
      const next: Pair = [k * last[0] + before[0], k * last[1] + before[1]];
      if (next[1] === 0n || (least && !nearer(next, least, target))) continue;
      least = next;
      if (next[0] === 0n) continue;
      found.push(approximation(next, k === quotient, target));
    }
    if (top < quotient) return found;
    [before, last] = [last, [quotient * last[0] + before[0], quotient * last[1] + before[1]]];
  }
  return found;
}

type Pair = readonly [bigint, bigint];

/** The last k up to the quotient for which k × last + before stays within `most` above and below the line. */
function lastWithin(before: Pair, last: Pair, quotient: bigint, most: bigint): bigint {
  let least = quotient;
  for (const n of [0, 1] as const) {
    const fits = last[n] > 0n ? (most - before[n]) / last[n] : quotient;
    if (fits < least) least = fits;
  }
  return least;
}

const offOf = ([top, bottom]: Pair, { num, den }: Target): bigint => {
  const off = top * den - num * bottom;
  return off < 0n ? -off : off;
};
const nearer = (one: Pair, other: Pair, target: Target): boolean => offOf(one, target) * other[1] < offOf(other, target) * one[1];

function approximation([top, bottom]: Pair, whole: boolean, target: Target): Approximation {
  const ratio: Ratio = [Number(top), Number(bottom)];
  return {
    ratio,
    kind: whole ? 'convergent' : 'mediant',
    error: relativeError(ratio, target),
    greatestPrime: Math.max(greatestPrime(ratio[0]), greatestPrime(ratio[1])),
  };
}

/** The greatest prime factor: a train of wheels gives the ratio only if some wheel is a multiple of it. 1 for 1. */
export function greatestPrime(whole: number): number {
  let [left, greatest] = [whole, 1];
  for (let factor = 2; factor * factor <= left; factor++)
    while (left % factor === 0) {
      greatest = factor;
      left /= factor;
    }
  return left > 1 ? left : greatest;
}
