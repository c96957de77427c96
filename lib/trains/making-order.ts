import { DomainError } from '../figure/domain-error.ts';
import type { Ratio } from '../values/ratio.ts';
import { checkChart, onceEach } from './chart.ts';
import { searchIn, type Train } from './nearest.ts';
import type { Target } from './target.ts';
import type { Wanted } from './wanted.ts';
import { countOfEach } from './wheel-lists.ts';

/** One wheel made: how many of the list are exact then. */
export type Made = { readonly teeth: number; readonly exact: number; readonly brings: readonly string[] };
export type MakingOrder = {
  readonly today: number;
  /** Each missing wheel as if it alone were made. */
  readonly alone: readonly Made[];
  readonly order: readonly Made[];
  /** The order that takes the greatest gain at each step, the best of such orders where gains are equal. */
  readonly greedy: readonly Made[];
  readonly says: string;
};

const MOST_MISSING = 10;

/**
 * In which order to make missing wheels so that most of the list is exact soonest: the sum, over the steps, of how many are exact after
 * each. All orders are weighed (the best way to each set of made wheels is carried forward), not only the greedy one.
 * Source: derived. True for 10 missing wheels at most; DomainError beyond. Trains of two and four wheels.
 * Example: a list of one thread that needs both missing wheels: greedy sees no gain in either.
 */
export function makingOrder(list: readonly Wanted[], screw: Ratio, drawer: readonly number[], missing: readonly number[]): MakingOrder {
  if (missing.length > MOST_MISSING)
    throw new DomainError({
      given: `${missing.length} wheels are missing.`,
      limit: `The orders of at most ${MOST_MISSING} can all be weighed.`,
      tryThis: 'Leave out those that will not be made soon.',
      about: ['missing'],
    });
  checkChart(list, drawer);
  const searches = ([2, 4] as const).map((wheelsInTrain) => searchIn([...drawer, ...missing], wheelsInTrain));
  const there = countOfEach(drawer);
  const sets = onceEach(list, screw, (target) => setsFor(target, searches, there, missing));
  const needs = list.map((wanted, n) => ({ says: wanted.says, sets: sets[n] as number[] }));
  const exactWith = (made: number): string[] => {
    const lowFirst = likeLowFirst(made, missing);
    return needs.filter(({ sets }) => sets.some((set) => (set & ~lowFirst) === 0)).map(({ says }) => says);
  };
  const count = Array.from({ length: 1 << missing.length }, (_, made) => exactWith(made).length);
  const steps = (order: readonly number[]): Made[] => stepsOf(order, missing, exactWith);
  const best = steps(bestOrder(missing.length, count, () => true));
  const greedy = steps(bestOrder(missing.length, count, (before, after) => count[after] === mostAfter(before, missing.length, count)));
  const alone = missing.map((_, bit) => steps([bit])[0] as Made);
  const order = sumOf(best) === sumOf(greedy) ? greedy : best;
  return { today: count[0] ?? 0, alone, order, greedy, says: why(order, greedy, count[0] ?? 0) };
}

/** Of like missing wheels it does not matter which one is made: the first of them are taken as made. */
function likeLowFirst(made: number, missing: readonly number[]): number {
  const many = countOfEach(missing.filter((_, bit) => (made & (1 << bit)) !== 0));
  return missing.reduce((bits, teeth, bit) => {
    const left = many.get(teeth) ?? 0;
    many.set(teeth, left - 1);
    return left > 0 ? bits | (1 << bit) : bits;
  }, 0);
}

/** The sets of missing wheels, as bits, each of which would make this thread exact: 0 when it is exact today. */
function setsFor(
  target: Target,
  searches: readonly ReturnType<typeof searchIn>[],
  there: ReadonlyMap<number, number>,
  missing: readonly number[],
): number[] {
  const exact = searches.flatMap((search) => search(target).filter((one) => one.exact));
  return [...new Set(exact.flatMap(({ trains }) => trains.flatMap((train) => needed(train, there, missing))))];
}

/** Which missing wheels a train needs beyond the drawer; of like missing wheels the first. there: wheels of each number in the drawer. */
function needed({ drivers, driven }: Train, there: ReadonlyMap<number, number>, missing: readonly number[]): number[] {
  const all = [...drivers, ...driven];
  let bits = 0;
  for (let at = 0; at < all.length; at++) {
    const teeth = all[at] as number;
    let before = 0;
    for (let n = 0; n < at; n++) if (all[n] === teeth) before++;
    if (before < (there.get(teeth) ?? 0)) continue;
    const bit = missing.findIndex((one, n) => one === teeth && (bits & (1 << n)) === 0);
    if (bit < 0) return [];
    bits |= 1 << bit;
  }
  return [bits];
}

/** How many are exact after the wheel that brings most. */
const mostAfter = (made: number, many: number, count: readonly number[]): number =>
  Math.max(...Array.from({ length: many }, (_, bit) => (made & (1 << bit) ? -1 : (count[made | (1 << bit)] as number))));

/** The order with the greatest sum of all those whose every step may be taken, by the best way to every set of wheels made. */
function bestOrder(many: number, count: readonly number[], may: (before: number, after: number) => boolean): number[] {
  const sum = new Array<number>(1 << many).fill(-1);
  const last = new Array<number>(1 << many).fill(-1);
  sum[0] = 0;
  for (let made = 1; made < 1 << many; made++)
    for (let bit = 0; bit < many; bit++) {
      const before = made ^ (1 << bit);
      if ((made & (1 << bit)) === 0 || (sum[before] as number) < 0 || !may(before, made)) continue;
      const all = (sum[before] as number) + (count[made] as number);
      if (all >= (sum[made] as number)) [sum[made], last[made]] = [all, bit];
    }
  const order: number[] = [];
  for (let made = (1 << many) - 1; made !== 0; made ^= 1 << (last[made] as number)) order.unshift(last[made] as number);
  return order;
}

function stepsOf(order: readonly number[], missing: readonly number[], exactWith: (made: number) => string[]): Made[] {
  let made = 0;
  return order.map((bit) => {
    const had = exactWith(made);
    made |= 1 << bit;
    const now = exactWith(made);
    return { teeth: missing[bit] as number, exact: now.length, brings: now.filter((says) => !had.includes(says)) };
  });
}

const sumOf = (steps: readonly Made[]): number => steps.reduce((all, { exact }) => all + exact, 0);
const namesOf = (steps: readonly Made[]): string => steps.map(({ teeth }) => teeth).join(', ');

function why(order: readonly Made[], greedy: readonly Made[], today: number): string {
  if (order.length === 0) return 'No wheel is missing.';
  if (order.at(-1)?.exact === today) return 'None of these wheels, nor all of them together, makes another line of the list exact.';
  const these = `Make them in this order: ${namesOf(order)}.`;
  if (sumOf(order) === sumOf(greedy)) return `${these} Taking each time the wheel that brings most is as good as any order.`;
  const behind = order.findIndex(({ exact }, n) => exact > (greedy[n]?.exact ?? 0));
  const [then, instead] = [order[behind], greedy[behind]];
  return `${these} Taking each time the wheel that brings most gives ${namesOf(greedy)}, but after ${behind + 1} wheels that has ${instead?.exact} exact and this has ${then?.exact}, because some wheels bring more once another is there.`;
}
