import { acceptChanges, asListed, type Listed, ListOvertaken } from '../../db/accept-changes.ts';
import { rowOf } from '../../db/changes.ts';
import { SETS_THE_HEAD } from '../../db/mounted.ts';
import { type MeasuredNow, markDone } from '../../db/operations.ts';
import { type Changed, refreshAllStale } from '../../db/replan.ts';
import { to } from '../addresses.ts';
import type { Typed } from '../forms/form.ts';
import type { Result, Visit } from '../visit.ts';
import { answeredAgain, askWhenHalfCounted, askWhenMetalIsLeft, typedAgain } from './ask-before-done.ts';
import { overtakenPage, sentListed } from './listed.ts';
import { notMeasured } from './measured.ts';
import { type Ask, withMeasured } from './measured-routes.ts';
import { revOf } from './operation-view.ts';
import { figuresChanged, operationHead, type Work } from './work.ts';

/** What has come up since the page was shown was not on it: there it stood as printed. */
const withUnlisted = (own: readonly Changed[], listed: readonly Listed[]): readonly Listed[] => [
  ...listed,
  ...own.filter(({ key }) => !listed.some((one) => one.key === key)).map(({ key, name, was }) => ({ key, name, now: was })),
];

/**
 * An operation that is marked done was cut by the figures that its page showed, those of today where they differ from those printed: so
 * they are taken in before it is closed, and the record is true. Gives the operation's revision, and what was taken in words.
 */
async function takeToday(visit: Visit, work: Work): Promise<{ rev: number; says: string }> {
  const [{ line }, own] = [work, figuresChanged(work)];
  if (own.length === 0) return { rev: line.rev, says: '' };
  await acceptChanges(visit.db, line.routing_id, own, visit.now);
  const told = own.filter(({ was, now }) => was !== '' && now !== '').map(({ name, was, now }) => `${name} ${now}, no longer ${was}`);
  const says = told.length === 0 ? '' : `Kept as cut by the figures of today: ${told.join('; ')}.`;
  return { rev: (await rowOf(visit.db, 'operation', line.id)).rev, says };
}

/** The figures moved while it was cut: both are shown, with all that was typed, and nothing is written yet. Null when none did. */
function overtakenMeanwhile(visit: Visit, work: Work, typed: Typed): Result | null {
  const listed = withUnlisted(figuresChanged(work), sentListed(visit));
  try {
    asListed(figuresChanged(work), listed);
    return null;
  } catch (error) {
    if (!(error instanceof ListOvertaken)) throw error;
    return overtakenPage(listed, error, {
      head: operationHead(work, 'Worked out otherwise meanwhile'),
      says: 'It is not marked done yet. If it was cut by what your page said, go back and type that over the figure first.',
      action: to.operationDone(work.line.id),
      act: 'Mark it done by what it is now',
      hidden: [revOf(work.line), ...typedAgain(typed), ...answeredAgain(visit)],
      back: { says: 'Back to the operation', href: to.operation(work.line.id) },
    });
  }
}

/** A reading whose figure is no length any more is kept as a reading alone. */
const stillAnswering = ({ now }: Work, readings: readonly MeasuredNow[]): MeasuredNow[] =>
  readings.map((one) => {
    const figure = one.figure === null ? undefined : now?.figures[one.figure];
    return figure && !('length' in figure.value) ? { ...one, figure: null } : one;
  });

const askBeforeDone: Ask = async (visit, work, typed, value) =>
  overtakenMeanwhile(visit, work, typed) ??
  (await askWhenHalfCounted(visit, work, typed, value)) ??
  askWhenMetalIsLeft(visit, work, typed, value);

/** Done, with what was measured. */
export const done = (visit: Visit): Promise<Result> =>
  withMeasured(
    visit,
    to.operationDone,
    async (work, readings, minutes) => {
      const { line } = work;
      const { rev, says } = await takeToday(visit, work);
      await markDone(visit.db, line.id, rev, { on: visit.now, minutes, measured: stillAnswering(work, readings) });
      if (line.key === SETS_THE_HEAD) await refreshAllStale(visit.db);
      return ['Done.', says, notMeasured(line, readings, work.now)].filter((part) => part !== '').join(' ');
    },
    ({ today, at }) => {
      const next = today.lines.slice(at + 1).find(({ state }) => state !== 'done' && state !== 'struck out');
      return next
        ? { says: `Next: ${next.title}`, href: to.operation(next.id) }
        : { says: 'The whole routing', href: to.routing(today.lines[0]?.routing_id ?? 0) };
    },
    askBeforeDone,
  );
