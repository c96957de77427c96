import { DomainError } from '../figure/domain-error.ts';
import { checkWheels, countEach, type RatioCount } from './ratio-count.ts';
import { lessWheels, oneOfEachThere, sortedWheels } from './wheel-lists.ts';
import { type AfterOne, type Barred, type Choice, type ReadyToCut, whichFirst } from './which-first.ts';

/** A missing wheel that is to be cut from a spare, which is then used up. */
type PlannedRecut = { readonly make: number; readonly from: number };

export type WheelsAsked = {
  /** Tooth counts of all wheels that belong to the set; a number twice if two of it belong. */
  readonly belongs: readonly number[];
  /** Tooth counts of all wheels that really lie there, of one pitch and bore; those that do not belong as well. */
  readonly drawer: readonly number[];
  /** Missing wheels with no recut planned are taken as made from stock. */
  readonly plannedRecuts?: readonly PlannedRecut[];
  readonly canBeCutToday?: readonly ReadyToCut[];
  /** Those that cannot be, as one whose blank was measured too small. */
  readonly barredToday?: readonly Barred[];
};

export type MissingCost = {
  readonly missing: readonly number[];
  readonly spares: readonly number[];
  /** Spares that the planned recuts use up. */
  readonly usedUp: readonly number[];
  /** One wheel of each number that belongs. lost: complete less today. */
  readonly oneOfEach: { readonly complete: RatioCount; readonly today: RatioCount; readonly lost: number };
  /** The wheels that really lie there, a like pair used as two. allMade: with the spares gone that the recuts use up. */
  readonly reallyThere: { readonly today: RatioCount; readonly allMade: RatioCount };
  readonly afterEach: readonly AfterOne[];
  /** In which order to make them, each judged as if it were made next. */
  readonly first: Choice;
};

/** The drawer when wheels have been made and the spares that they were cut from are gone. */
const drawerAfter = (drawer: readonly number[], made: readonly number[], from: readonly number[]): number[] =>
  sortedWheels([...lessWheels(drawer, from), ...made]);

/**
 * What the missing wheels of a change-gear set cost in ratios, counted both ways, and which to make first.
 * One wheel of each number: the numbers that belong, one wheel each, against those of them that lie there today.
 * The wheels that really lie there: every wheel in the drawer, so that a like pair may stand in one train.
 * Missing: the wheels that belong less those in the drawer, number by number. Ratios as in countRatios.
 * Source: derived: counted, see countRatios. Throws DomainError for more than 60 wheels (those to make included), for a recut of a wheel
 * that is not missing, or from a spare that is not there.
 * Example: 19 22 25 28 31 34 37 41 46 52 without 22 and 28: 1,350 complete, 476 today, 828 with either back.
 */
export function costOfMissing(asked: WheelsAsked): MissingCost {
  const { belongs, drawer, plannedRecuts = [], canBeCutToday = [], barredToday = [] } = asked;
  for (const wheels of [belongs, drawer]) checkWheels(wheels);
  const missing = lessWheels(belongs, drawer);
  const usedUp = sortedWheels(plannedRecuts.map(({ from }) => from));
  checkRecuts(plannedRecuts, missing, drawer);
  const steps = [...new Set(missing)].map((teeth) => stepFor(teeth, drawer, plannedRecuts));
  const counts = countEach([
    [...new Set(belongs)],
    oneOfEachThere(belongs, drawer),
    drawer,
    drawerAfter(drawer, missing, usedUp),
    ...steps.map((step) => oneOfEachThere(belongs, step.drawer)),
    ...steps.map((step) => step.drawer),
  ]);
  const [complete, today, reallyToday, allMade] = counts as [RatioCount, RatioCount, RatioCount, RatioCount];
  const afterEach = steps.map(({ teeth, from }, n) => ({
    teeth,
    from,
    oneOfEach: counts[4 + n] as RatioCount,
    reallyThere: counts[4 + steps.length + n] as RatioCount,
  }));
  return {
    missing,
    spares: lessWheels(drawer, belongs),
    usedUp,
    oneOfEach: { complete, today, lost: complete.distinct - today.distinct },
    reallyThere: { today: reallyToday, allMade },
    afterEach,
    first: whichFirst(afterEach, canBeCutToday, barredToday),
  };
}

function stepFor(teeth: number, drawer: readonly number[], recuts: readonly PlannedRecut[]) {
  const from = recuts.find((recut) => recut.make === teeth)?.from ?? null;
  return { teeth, from, drawer: drawerAfter(drawer, [teeth], from === null ? [] : [from]) };
}

function checkRecuts(recuts: readonly PlannedRecut[], missing: readonly number[], drawer: readonly number[]): void {
  const notMissing = lessWheels(
    recuts.map(({ make }) => make),
    missing,
  )[0];
  if (notMissing !== undefined) throw wrongRecut(`A ${notMissing} is to be made, but none is missing.`, 'Only a missing wheel is made.');
  const notThere = lessWheels(
    recuts.map(({ from }) => from),
    drawer,
  )[0];
  if (notThere !== undefined)
    throw wrongRecut(`A ${notThere} is to be cut up, but there are not so many in the drawer.`, 'Each spare can be cut up once.');
}

const wrongRecut = (given: string, limit: string): DomainError =>
  new DomainError({ given, limit, tryThis: 'Choose again which spare becomes which wheel.', about: ['plannedRecuts'] });
