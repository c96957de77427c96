import type { Ratio } from '../values/ratio.ts';

/** A prime and how often it divides a number. */
type PrimePower = { readonly prime: number; readonly times: number; readonly product: number };

/** A whole number above 1 taken apart into primes, lowest first, by trial division. 72 = 2 × 2 × 2 × 3 × 3. */
function primePowers(number: number): PrimePower[] {
  const powers: PrimePower[] = [];
  let left = number;
  for (let prime = 2; left > 1; prime = prime * prime > left ? left : prime + 1) {
    let times = 0;
    for (; left % prime === 0; left /= prime) times++;
    if (times > 0) powers.push({ prime, times, product: prime ** times });
  }
  return powers;
}

/** Why no circle serves: what the circle must be a multiple of, and which of its prime factors no circle holds. */
export type WhyNot = { readonly multipleOf: number; readonly inTheWay: readonly PrimePower[]; readonly says: string };

/**
 * Why a move of t turns can be made on none of the circles. The circle must hold every prime factor of t's lower number as often as it does.
 * Called only when no circle serves. Example: 40/71: 71 is prime and no circle is a multiple of it.
 */
export function whyNoCircle(divisions: number, turns: Ratio, circles: readonly number[]): WhyNot {
  const multipleOf = turns[1];
  const powers = primePowers(multipleOf);
  const inTheWay = powers.filter(({ product }) => !circles.some((holes) => holes % product === 0));
  const says = `No circle on these plates divides ${divisions}. One move is ${turns[0]}/${multipleOf} of a turn and needs a circle that is a multiple of ${multipleOf}: ${reason(multipleOf, powers, inTheWay)}`;
  return { multipleOf, inTheWay, says };
}

function reason(multipleOf: number, powers: readonly PrimePower[], inTheWay: readonly PrimePower[]): string {
  if (powers.length === 1 && powers[0]?.times === 1) return `${multipleOf} is prime, and no circle here is a multiple of it.`;
  if (inTheWay.length === 0)
    return `${listed(powers.map(written))} each divide a circle here, but no one circle holds ${powers.length === 2 ? 'both' : 'all'}.`;
  return `its ${inTheWay.length === 1 ? 'factor' : 'factors'} ${listed(inTheWay.map(written))} ${inTheWay.length === 1 ? 'divides' : 'divide'} no circle here.`;
}

/** "27 (3 × 3 × 3)", or the prime alone. */
const written = ({ prime, times, product }: PrimePower): string =>
  times === 1 ? `${prime}` : `${product} (${new Array(times).fill(prime).join(' × ')})`;

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
