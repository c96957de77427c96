import { DomainError } from '../figure/domain-error.ts';
import { checkTeeth } from './check-drawer.ts';
import { eachRatio, type SharedWheel } from './each-ratio.ts';
import { countOfEach, sortedWheels } from './wheel-lists.ts';

/**
 * How many different ratios a set of wheels gives.
 * simple: with two wheels. compound: those that only four wheels give. distinct: both together, simple + compound.
 */
export type RatioCount = { readonly simple: number; readonly compound: number; readonly distinct: number };

const MOST_WHEELS = 60;
/** Up to here the quotient of two products is a sure mark of their ratio; see eachRatio. */
const MOST_TEETH = 5000;
/** As many as a 32-bit whole number has bits. */
const MOST_SETS_AT_ONCE = 32;

/**
 * The number of different ratios that a set of change wheels gives, with two wheels or with four.
 *   two wheels: a ÷ b; four wheels: (a × b) ÷ (c × d).
 * a, b, c, d: tooth counts of different wheels: a number may come twice only if two wheels of it lie there. A ratio and the same turned
 * over are two. 1 to 1 counts as one ratio when the wheels give it (a like pair, or equal products). A value that two wheels give is
 * counted as simple and not again as compound. Order of drivers does not matter, nor does where on the machine a wheel sits.
 * Source: derived: every train formed and every value counted once, in whole fractions.
 * True for up to 60 wheels of 4 to 5,000 teeth. Throws DomainError beyond. Whether the wheels reach on the quadrant is not looked at.
 * Example: one each of 19 22 25 28 31 34 37 41 46 52: 90 simple + 1,260 compound = 1,350.
 */
export function countRatios(wheels: readonly number[]): RatioCount {
  return countEach([wheels])[0] as RatioCount;
}

/** The same for several sets that are nearly alike, in one pass over the wheels of all of them together, which must be 60 at most. */
export function countEach(sets: readonly (readonly number[])[]): RatioCount[] {
  for (const wheels of sets) checkWheels(wheels);
  const counts: RatioCount[] = [];
  for (let from = 0; from < sets.length; from += MOST_SETS_AT_ONCE)
    counts.push(...countTogether(sets.slice(from, from + MOST_SETS_AT_ONCE)));
  return counts;
}

function countTogether(sets: readonly (readonly number[])[]): RatioCount[] {
  const wheels = sharedWheels(sets);
  const [simple, distinct] = [distinctIn(wheels, 2, sets.length), distinctIn(wheels, 4, sets.length)];
  return distinct.map((all, k) => ({ simple: simple[k] as number, compound: all - (simple[k] as number), distinct: all }));
}

function distinctIn(wheels: readonly SharedWheel[], wheelsInTrain: 2 | 4, sets: number): number[] {
  const counts = new Array<number>(sets).fill(0);
  eachRatio(wheels, wheelsInTrain, (value, bits) => {
    const more = value === 1 ? 1 : 2;
    for (let left = bits; left !== 0; left &= left - 1) (counts[31 - Math.clz32(left & -left)] as number) += more;
  });
  return counts;
}

/** The wheels of all sets together: the nth wheel of a number carries the bit of each set that has n of that number or more. */
export function sharedWheels(sets: readonly (readonly number[])[]): SharedWheel[] {
  const counts = sets.map(countOfEach);
  const numbers = sortedWheels([...new Set(counts.flatMap((count) => [...count.keys()]))]);
  const wheels = numbers.flatMap((teeth) => {
    const most = Math.max(...counts.map((count) => count.get(teeth) ?? 0));
    return Array.from({ length: most }, (_, n) => ({ teeth, bits: bitsOf(counts, teeth, n + 1) }));
  });
  if (wheels.length > MOST_WHEELS) throw tooMany(wheels.length, 'The wheels that lie there and those still to make come to');
  return wheels;
}

const bitsOf = (counts: readonly Map<number, number>[], teeth: number, atLeast: number): number =>
  counts.reduce((bits, count, k) => ((count.get(teeth) ?? 0) >= atLeast ? bits | (1 << k) : bits), 0);

/** Throws DomainError for more than 60 wheels, or for a tooth count that no wheel has. */
export function checkWheels(wheels: readonly number[]): void {
  if (wheels.length > MOST_WHEELS) throw tooMany(wheels.length, 'The wheels come to');
  checkTeeth(wheels, MOST_TEETH, 'wheels');
}

const tooMany = (many: number, what: string): DomainError =>
  new DomainError({
    given: `${what} ${many}.`,
    limit: `At most ${MOST_WHEELS} can be counted at once, since the trains run into millions.`,
    tryThis: 'Leave out wheels of another pitch, or second and third wheels of one number.',
    about: ['wheels'],
  });

/** A name for a set of wheels by which a caller can remember its count: the same for the same wheels in any order. */
export const wheelsKey = (wheels: readonly number[]): string => sortedWheels(wheels).join(' ');
