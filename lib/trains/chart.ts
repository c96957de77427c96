import { DomainError } from '../figure/domain-error.ts';
import type { Ratio } from '../values/ratio.ts';
import { type NearRatio, searchIn, type Train } from './nearest.ts';
import { compareNearness, type Target } from './target.ts';
import { trainFor, type Wanted } from './wanted.ts';

type ChartState = 'exact' | 'near' | 'lost';
/** An entry of a chart with today's drawer. best: the nearest train of two or four wheels; null when the drawer gives none at all. */
export type ChartLine = {
  readonly wanted: Wanted;
  readonly state: ChartState;
  readonly best: { readonly train: Train; readonly error: number } | null;
};

/** A thread within this of its pitch holds its nut over its own diameter; what is "near" is the owner's to say (judgement). */
export const USUAL_NEAR = 0.0005;

/** The nearest ratio with two or four wheels of a drawer, the fewer wheels where equal. */
export function nearestIn(wheels: readonly number[]): (target: Target) => NearRatio | null {
  const searches = ([2, 4] as const).map((wheelsInTrain) => searchIn(wheels, wheelsInTrain));
  return (target) => {
    const [one, two] = searches.flatMap((search) => search(target, 1, 1).slice(0, 1));
    return one && two && compareNearness(two.ratio, one.ratio, target) < 0 ? two : (one ?? null);
  };
}

/** What is found for each of a list, like targets worked once. */
export function onceEach<T>(list: readonly Wanted[], screw: Ratio, find: (target: Target) => T): T[] {
  const found = new Map<string, { readonly value: T }>();
  return list.map((wanted) => {
    const target = trainFor(wanted, screw);
    const key = `${target.num}/${target.den}`;
    const one = found.get(key) ?? { value: find(target) };
    found.set(key, one);
    return one.value;
  });
}

const [MOST_LINES, MOST_WHEELS] = [60, 60];

/** Throws DomainError for a list or a drawer larger than one request can be asked to search line by line. */
export function checkChart(list: readonly Wanted[], drawer: readonly number[]): void {
  const refuse = (given: string, limit: string, tryThis: string, about: string): never => {
    throw new DomainError({ given, limit, tryThis, about: [about] });
  };
  if (list.length > MOST_LINES)
    refuse(`The list has ${list.length} lines.`, `At most ${MOST_LINES} can be searched at once.`, 'Take the chart in two halves.', 'list');
  if (drawer.length > MOST_WHEELS)
    refuse(
      `The drawer comes to ${drawer.length} wheels.`,
      `At most ${MOST_WHEELS} can be searched for a whole list.`,
      'Leave out wheels of another pitch or bore, or third wheels of one number.',
      'drawer',
    );
}

/** Every thread, feed or lead of a list: obtainable exactly, near, or lost. screw: its lead in inches with equal wheels. near: greatest error ÷ pitch. */
export function chartOf(list: readonly Wanted[], screw: Ratio, wheels: readonly number[], near = USUAL_NEAR): ChartLine[] {
  checkChart(list, wheels);
  const nearest = onceEach(list, screw, nearestIn(wheels));
  return list.map((wanted, n) => {
    const found = nearest[n];
    const train = found?.trains[0];
    if (!found || !train) return { wanted, state: 'lost', best: null };
    return { wanted, state: found.exact ? 'exact' : Math.abs(found.error) <= near ? 'near' : 'lost', best: { train, error: found.error } };
  });
}
