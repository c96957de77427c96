import { remembered } from '../../db/remembered.ts';
import { type BlankChoice, chooseBlanks, type LikeGroup, MOST_SPARES, type Pair } from '../../lib/blanks/choice.ts';
import type { CleanUp } from '../../lib/blanks/clean-up.ts';
import { judgeSpare, makes } from '../../lib/blanks/spare-test.ts';
import type { SpareWheel, Wanted } from '../../lib/blanks/spare-wheel.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { countRatios, wheelsKey } from '../../lib/trains/ratio-count.ts';
import { oneOfEachThere } from '../../lib/trains/wheel-lists.ts';
import { type Bench, isLike, isMissing, isToBeChosen, ofTheSet, type Place, type Wheel } from './bench.ts';

/** Which spare becomes which missing wheel. refusal: why none could be worked out, or ''. */
export type SetChoice = {
  readonly wanted: readonly Wanted[];
  readonly candidates: readonly SpareWheel[];
  readonly choice: BlankChoice | null;
  /** The pair that the owner asked to hold against it; its refusal stands in `forcedRefusal`. */
  readonly forced: BlankChoice | null;
  readonly forcedRefusal: string;
  readonly refusal: string;
};

const rememberedRatios = remembered<number>();
/** How many trains may be formed for one choice: what a page has time for. */
const MOST_TRAINS = 40_000_000;

/** Counts ratios for the choice until the page would take too long. */
function countWithin(): (wheels: readonly number[]) => number {
  let formed = 0;
  return (wheels) =>
    rememberedRatios(wheelsKey(wheels), () => {
      formed += (wheels.length * (wheels.length - 1)) ** 2 / 8;
      if (formed <= MOST_TRAINS) return countRatios(wheels).distinct;
      throw new DomainError({
        given: 'More wheels can be made than there are spares, in very many ways.',
        limit: 'Which of them brings back the most ratios would take too long to count.',
        tryThis: 'Say “do without” of those not wanted now, or promise blanks one by one on their pages.',
        about: ['missing'],
      });
    });
}

const wantedOf = ({ id, gear }: Place): Wanted => ({ id, name: `the ${gear.teeth}`, gear });

const serves = (wanted: readonly Wanted[], spare: SpareWheel, cleanUp: CleanUp): boolean =>
  wanted.some(({ gear }) => {
    try {
      return makes(judgeSpare({ wanted: gear, spare, cleanUp }).verdict);
    } catch (error) {
      if (error instanceof DomainError) return false;
      throw error;
    }
  });

const LOOKS = { broken: 3, worn: 2, 'not looked at': 1, good: 0 } as const;

/** Whether cutting the one on the machine rather than its spare keeps the better of the two. */
function betterCut(fitted: SpareWheel, spare: SpareWheel, wanted: readonly Wanted[], cleanUp: CleanUp): boolean {
  if (!serves(wanted, spare, cleanUp)) return serves(wanted, fitted, cleanUp);
  if (fitted.trust !== spare.trust) return spare.trust === 'original';
  return LOOKS[fitted.condition.teeth] > LOOKS[spare.condition.teeth];
}

/** Like wheels as one group: of them so many may be cut as are over. One on the machine is cut only if that keeps the better. */
function likesOf(bench: Bench, wanted: readonly Wanted[]): LikeGroup[] {
  const all = bench.drawer.filter(({ item }) => item.state === 'spare' || item.state === 'fitted');
  const spares = all.filter(({ item }) => item.state === 'spare');
  const groups: Wheel[][] = [];
  for (const one of spares) {
    const group = groups.find((known) => known[0] && isLike(known[0].spare.gear, one.spare.gear));
    if (group) group.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => {
    const [first] = group;
    const fitted = all.filter(
      ({ item, spare }) =>
        item.state === 'fitted' &&
        first !== undefined &&
        isLike(spare.gear, first.spare.gear) &&
        group.some((over) => betterCut(spare, over.spare, wanted, bench.shop.cleanUp)),
    );
    return { wheels: [...group, ...fitted].map(({ spare }) => spare), mayCut: group.length };
  });
}

const alone = (spare: SpareWheel): LikeGroup => ({ wheels: [spare], mayCut: 1 });

/** Other spares of the shop, where this drawer does not make everything. */
function elsewhereFor(bench: Bench, wanted: readonly Wanted[], free: BlankChoice | null, room: number): LikeGroup[] {
  if (!free || free.notMade.length === 0) return [];
  const of = wanted.filter((one) => free.notMade.includes(one));
  return bench.elsewhere
    .map(({ spare }) => spare)
    .filter((spare) => serves(of, spare, bench.shop.cleanUp))
    .slice(0, Math.max(0, room))
    .map(alone);
}

/** What chooseBlanks says, or its refusal in words. */
function tried(work: () => BlankChoice): { readonly choice: BlankChoice | null; readonly refusal: string } {
  try {
    return { choice: work(), refusal: '' };
  } catch (error) {
    if (error instanceof DomainError) return { choice: null, refusal: error.message };
    throw error;
  }
}

/** The choice over all missing wheels of a set at once. force: a pair to hold against it. */
export function choiceFor(bench: Bench, force: Pair | null): SetChoice {
  const wanted = bench.places.filter(isToBeChosen).map(wantedOf);
  const belongs = bench.places.map(({ gear }) => gear.teeth);
  const present = bench.places.filter((place) => !isMissing(place)).map(({ gear }) => gear.teeth);
  const count = countWithin();
  const ratiosAfter = (made: readonly number[]): number => count(oneOfEachThere(belongs, [...present, ...made]));
  const own = likesOf(bench, wanted);
  const { cleanUp } = bench.shop;
  const ask = (likes: readonly LikeGroup[], forced: readonly Pair[] = []) =>
    tried(() => chooseBlanks({ missing: wanted, likes, ratiosAfter, forced, cleanUp }));
  const first = ask(own);
  const room = MOST_SPARES - own.reduce((sum, { wheels }) => sum + wheels.length, 0);
  const others = elsewhereFor(bench, wanted, first.choice, room);
  const likes = [...own, ...others];
  const free = others.length === 0 ? first : ask(likes);
  const forced = force ? ask(likes, [force]) : { choice: null, refusal: '' };
  return {
    wanted,
    candidates: likes.flatMap(({ wheels }) => wheels),
    choice: free.choice,
    refusal: free.refusal,
    forced: forced.choice,
    forcedRefusal: forced.refusal,
  };
}

/** Spares of this set that are promised to its open routings: what becomes what. */
export const promisedIn = (bench: Bench): { readonly place: Place; readonly wheel: Wheel }[] =>
  bench.places.flatMap((place) => {
    const wheel = ofTheSet(bench).find(({ item }) => item.state === 'promised' && item.part_id === place.id);
    return wheel ? [{ place, wheel }] : [];
  });
