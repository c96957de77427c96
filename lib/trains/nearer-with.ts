import { DomainError } from '../figure/domain-error.ts';
import type { Ratio } from '../values/ratio.ts';
import { MOST_WHEELS } from './check-drawer.ts';
import { nearestTrains, type Train } from './nearest.ts';
import { compareNearness, isExactly, relativeError, type Target } from './target.ts';
import { lessWheels } from './wheel-lists.ts';

/** A missing wheel, and the train that it would give. */
export type WithMissing = { readonly teeth: number; readonly train: Train; readonly ratio: Ratio; readonly exact: boolean };

/** Each missing number costs a search of its own. */
const MOST_MISSING = 10;

function checkMissing(wheels: readonly number[], numbers: readonly number[]): void {
  if (numbers.length <= MOST_MISSING && (numbers.length === 0 || wheels.length < MOST_WHEELS)) return;
  throw new DomainError({
    given: `${numbers.length} missing numbers beside ${wheels.length} wheels in the drawer.`,
    limit: `At most ${MOST_MISSING} are tried, each with at most ${MOST_WHEELS - 1} wheels.`,
    tryThis: 'Leave out those that will not be made soon.',
    about: ['missing'],
  });
}

/**
 * Which single missing wheels would give an exact train of two or four wheels, or one off by no more than half of today's best, nearest
 * first; none where today's is exact.
 * today: its ratio; null where the drawer gives no train. Throws DomainError for more than ten missing numbers.
 * Example: 12 ÷ 37 from 24 28 32 48 86 with a 37 missing: the 37, exact.
 */
export function nearerWith(target: Target, wheels: readonly number[], missing: readonly number[], today: Ratio | null): WithMissing[] {
  const numbers = [...new Set(lessWheels(missing, []))];
  checkMissing(wheels, numbers);
  if (today && isExactly(today, target)) return [];
  const nearest = (teeth: number): WithMissing | null => {
    const [best] = ([2, 4] as const)
      .flatMap((wheelsInTrain) => nearestTrains({ wheels: [...wheels, teeth], target, wheelsInTrain }).slice(0, 1))
      .sort((a, b) => compareNearness(a.ratio, b.ratio, target));
    const train = best?.trains[0];
    return best && train ? { teeth, train, ratio: best.ratio, exact: best.exact } : null;
  };
  const nearer = numbers
    .flatMap((teeth) => nearest(teeth) ?? [])
    .filter((one) => !today || one.exact || 2 * Math.abs(relativeError(one.ratio, target)) <= Math.abs(relativeError(today, target)));
  return nearer.sort((a, b) => compareNearness(a.ratio, b.ratio, target));
}

/** The missing wheels that an answer waits for: all that would make it exact, else the one that would bring it nearest. */
export function waitsFor(nearer: readonly WithMissing[]): readonly number[] {
  const exact = nearer.filter((one) => one.exact);
  return (exact.length > 0 ? exact : nearer.slice(0, 1)).map(({ teeth }) => teeth);
}
