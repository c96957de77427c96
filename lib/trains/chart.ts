import type { Ratio } from '../values/ratio.ts';
import { type NearRatio, nearestTrains, type Train } from './nearest.ts';
import { compareNearness, type Target } from './target.ts';
import { trainFor, type Wanted } from './wanted.ts';

export type ChartState = 'exact' | 'near' | 'lost';
/** An entry of a chart with today's drawer. best: the nearest train of two or four wheels; null when the drawer gives none at all. */
export type ChartLine = {
  readonly wanted: Wanted;
  readonly state: ChartState;
  readonly best: { readonly train: Train; readonly error: number } | null;
};

/** A thread within this of its pitch holds its nut over its own diameter; what is "near" is the owner's to say (judgement). */
export const USUAL_NEAR = 0.0005;

/** The nearest ratio with two or four wheels, the fewer wheels where equal. */
export function nearestOf(wheels: readonly number[], target: Target): NearRatio | null {
  const both = ([2, 4] as const).flatMap((wheelsInTrain) => nearestTrains({ wheels, target, wheelsInTrain }).slice(0, 1));
  const [one, two] = both;
  return one && two && compareNearness(two.ratio, one.ratio, target) < 0 ? two : (one ?? null);
}

/** Every thread, feed or lead of a list: obtainable exactly, near, or lost. screw: its lead in inches with equal wheels. near: greatest error ÷ pitch. */
export function chartOf(list: readonly Wanted[], screw: Ratio, wheels: readonly number[], near = USUAL_NEAR): ChartLine[] {
  return list.map((wanted) => {
    const found = nearestOf(wheels, trainFor(wanted, screw));
    const train = found?.trains[0];
    if (!found || !train) return { wanted, state: 'lost', best: null };
    return { wanted, state: found.exact ? 'exact' : Math.abs(found.error) <= near ? 'near' : 'lost', best: { train, error: found.error } };
  });
}
