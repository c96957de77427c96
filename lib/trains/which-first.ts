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

/** order: missing numbers, the one to make first in front. tied: those that bring as much as the first. */
export type Choice = { readonly order: readonly number[]; readonly tied: readonly number[]; readonly says: string };

/**
 * Which missing wheel to make first: the one with most ratios by one wheel of each number; of a tie the one that can be cut today;
 * then the one with most ratios by the wheels that really lie there; then the one with fewest teeth.
 */
export function whichFirst(afterEach: readonly AfterOne[], readyToCut: readonly ReadyToCut[]): Choice {
  const ready = new Map(readyToCut.map(({ teeth, because }) => [teeth, because]));
  const sorted = [...afterEach].sort(
    (a, b) =>
      b.oneOfEach.distinct - a.oneOfEach.distinct ||
      Number(ready.has(b.teeth)) - Number(ready.has(a.teeth)) ||
      b.reallyThere.distinct - a.reallyThere.distinct ||
      a.teeth - b.teeth,
  );
  const best = sorted[0];
  if (!best) return { order: [], tied: [], says: 'No wheel is missing.' };
  const tied = sorted.filter(({ oneOfEach }) => oneOfEach.distinct === best.oneOfEach.distinct);
  return { order: sorted.map(({ teeth }) => teeth), tied: tied.map(({ teeth }) => teeth), says: reason(sorted, tied, ready) };
}

function reason(sorted: readonly AfterOne[], tied: readonly AfterOne[], ready: ReadonlyMap<number, string>): string {
  const [best, next] = sorted as [AfterOne, AfterOne?];
  const count = printCount(best.oneOfEach.distinct);
  if (!next) return `Only the ${best.teeth} is missing; with it there are ${count} ratios.`;
  if (tied.length === 1)
    return `The ${best.teeth} first: with it there are ${count} ratios, with the ${next.teeth} ${printCount(next.oneOfEach.distinct)}.`;
  const because = ready.get(best.teeth);
  if (because !== undefined && !tied.every(({ teeth }) => ready.has(teeth)))
    return `A tie at ${count}; the ${best.teeth} first: ${because}.`;
  const second = tied[1] as AfterOne;
  if (best.reallyThere.distinct > second.reallyThere.distinct)
    return `A tie at ${count}; the ${best.teeth} first: with the wheels that really lie there it makes ${printCount(best.reallyThere.distinct)}.`;
  return `A tie at ${count}; any of ${tied.map(({ teeth }) => teeth).join(', ')} may be made first.`;
}
