import { printCount } from '../values/print.ts';
import type { RatioCount } from './ratio-count.ts';

/** The set once one missing wheel has been made: the count by one wheel of each number, and by the wheels that then really lie there. */
export type AfterOne = {
  readonly teeth: number;
  readonly from: number | null;
  readonly oneOfEach: RatioCount;
  readonly reallyThere: RatioCount;
};

/** A missing wheel for which all is at hand, and why in words: "its cutter is owned". */
export type ReadyToCut = { readonly teeth: number; readonly because: string };

/** A missing wheel that cannot be cut today whatever else is at hand, and why in words: "the blank of the 22 will not do". */
export type Barred = { readonly teeth: number; readonly because: string };

/** order: missing numbers, the one to make first in front. tied: those that bring as much as the first. */
export type Choice = { readonly order: readonly number[]; readonly tied: readonly number[]; readonly says: string };

type ByTeeth = ReadonlyMap<number, string>;
const byTeeth = (wheels: readonly ReadyToCut[]): ByTeeth => new Map(wheels.map(({ teeth, because }) => [teeth, because]));

/**
 * Which missing wheel to make first: the one with most ratios by one wheel of each number; of a tie the one that can be cut today, and one
 * that is barred last; then the one with most ratios by the wheels that really lie there; then the one with fewest teeth.
 */
export function whichFirst(afterEach: readonly AfterOne[], readyToCut: readonly ReadyToCut[], barredToday: readonly Barred[] = []): Choice {
  const barred = byTeeth(barredToday);
  const ready = byTeeth(readyToCut.filter(({ teeth }) => !barred.has(teeth)));
  const sorted = [...afterEach].sort(
    (a, b) =>
      b.oneOfEach.distinct - a.oneOfEach.distinct ||
      Number(ready.has(b.teeth)) - Number(ready.has(a.teeth)) ||
      Number(barred.has(a.teeth)) - Number(barred.has(b.teeth)) ||
      b.reallyThere.distinct - a.reallyThere.distinct ||
      a.teeth - b.teeth,
  );
  const best = sorted[0];
  if (!best) return { order: [], tied: [], says: 'No wheel is missing.' };
  const tied = sorted.filter(({ oneOfEach }) => oneOfEach.distinct === best.oneOfEach.distinct);
  const says =
    tied.length === 1 ? alone(sorted, barred) : `A tie at ${printCount(best.oneOfEach.distinct)}; ${ofTie(tied, ready, barred)}.`;
  return { order: sorted.map(({ teeth }) => teeth), tied: tied.map(({ teeth }) => teeth), says };
}

function alone(sorted: readonly AfterOne[], barred: ByTeeth): string {
  const [best, next] = sorted as [AfterOne, AfterOne?];
  const count = printCount(best.oneOfEach.distinct);
  const bar = barred.has(best.teeth) ? ` Not today: ${barred.get(best.teeth)}.` : '';
  if (!next) return `Only the ${best.teeth} is missing; with it there are ${count} ratios.${bar}`;
  return `The ${best.teeth} first: with it there are ${count} ratios, with the ${next.teeth} ${printCount(next.oneOfEach.distinct)}.${bar}`;
}

/** What breaks a tie, in words. tied: in the order of making. */
function ofTie(tied: readonly AfterOne[], ready: ByTeeth, barred: ByTeeth): string {
  const free = tied.filter(({ teeth }) => !barred.has(teeth));
  const bars = tied.flatMap(({ teeth }) => barred.get(teeth) ?? []).join(', ');
  const [best, second] = free;
  if (!best) return `none can be cut today: ${bars}`;
  const because = ready.get(best.teeth);
  if (because !== undefined && !free.every(({ teeth }) => ready.has(teeth))) return `the ${best.teeth} first: ${because}`;
  if (!second) return `the ${best.teeth} first: ${bars}`;
  if (best.reallyThere.distinct > second.reallyThere.distinct)
    return `the ${best.teeth} first: with the wheels that really lie there it makes ${printCount(best.reallyThere.distinct)}`;
  return bars === '' ? anyOf(free) : `${anyOf(free)}; ${bars}`;
}

const anyOf = (wheels: readonly AfterOne[]): string => `any of ${wheels.map(({ teeth }) => teeth).join(', ')} may be made first`;
