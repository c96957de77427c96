import { acceptChanges } from '../../db/accept-changes.ts';
import { rowOf } from '../../db/changes.ts';
import { type MeasuredNow, markDone, noteMeasured } from '../../db/operations.ts';
import { changesSince, refreshStale } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { ticksOf } from '../../db/ticks.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { confirmView } from '../forms/confirm-view.ts';
import { conflictView } from '../forms/conflict.ts';
import { type Fields, type FormRead, readForm, type Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { LinkView } from '../page.ts';
import { passesOf } from '../sheets/passes.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { blankCaution } from './blank-words.ts';
import { measureFields, minutesField, notMeasured, outsideLimits, readingsIn, typedNow } from './measured.ts';
import { operationView, revOf } from './operation-view.ts';
import { openOperation, type Work } from './work.ts';

const fieldsOf = ({ line }: Work): Fields => ({ ...measureFields(line), minutes: minutesField });

const conflict = (work: Work, yours: Typed, action: string): Result =>
  show(
    'conflict',
    conflictView({
      what: work.line.title,
      place: 'Machines',
      back: { says: work.line.title, href: to.operation(work.line.id) },
      action,
      fields: fieldsOf(work),
      yours,
      theirs: typedNow(work.line),
      hidden: [revOf(work.line)],
    }),
    409,
  );

type Good = Extract<FormRead<Fields>, { ok: true }>;
type Ask = (visit: Visit, work: Work, typed: Typed) => Promise<Result | null>;
type Save = (work: Work, measured: readonly MeasuredNow[], minutes: number | null) => Promise<string>;

const sentence = (saved: string, outside: readonly string[]): string => [saved, ...outside].join(' ');

/** Reads the boxes, refuses what another device overtook, saves, and says what the sizes mean. */
async function withMeasured(
  visit: Visit,
  action: (id: number) => string,
  save: Save,
  next: (work: Work) => LinkView | null,
  ask: Ask = async () => null,
): Promise<Result> {
  const work = await openOperation(visit);
  const read = readForm(visit.body, fieldsOf(work));
  if (!read.ok) return show('routings/operation', operationView(work, visit, read), 422);
  const { line } = work;
  if (line.rev !== sentRev(visit)) return conflict(work, read.typed, action(line.id));
  const { value } = read as Good;
  const asked = await ask(visit, work, read.typed);
  if (asked) return asked;
  const saved = await save(work, readingsIn(line, value, visit.now), value['minutes'] as number | null);
  await refreshStale(visit.db, line.routing_id);
  const found = blankCaution({ routing: await routing(visit.db, line.routing_id) }, line).map(({ says }) => says);
  const act = next(work);
  return { go: to.operation(line.id), saved: sentence(saved, [...found, ...outsideLimits(line, value)]), ...(act ? { act } : {}) };
}

/** What was measured is written down; the operation goes on. */
export const measured = (visit: Visit): Promise<Result> =>
  withMeasured(
    visit,
    to.operationMeasured,
    async ({ line }, readings) => {
      await noteMeasured(visit.db, line.id, line.rev, readings);
      return readings.length === 0 ? 'Nothing was typed.' : 'Written down.';
    },
    () => null,
  );

/**
 * An operation that is marked done was cut by the figures of today, as its page says where they differ from those printed: so they are
 * taken in before it is closed, and the record is true. Gives the operation's revision, and what was taken in words.
 */
async function takeToday(visit: Visit, { line, today }: Work): Promise<{ rev: number; says: string }> {
  const own = changesSince(today).filter(({ operationId, figure }) => operationId === line.id && figure !== null);
  if (own.length === 0) return { rev: line.rev, says: '' };
  await acceptChanges(
    visit.db,
    line.routing_id,
    own.map(({ key }) => key),
    visit.now,
  );
  const told = own.filter(({ was, now }) => was !== '' && now !== '').map(({ name, was, now }) => `${name} ${now}, no longer ${was}`);
  const says = told.length === 0 ? '' : `Kept as cut by the figures of today: ${told.join('; ')}.`;
  return { rev: (await rowOf(visit.db, 'operation', line.id)).rev, says };
}

/** A reading whose figure is no length any more is kept as a reading alone. */
const stillAnswering = ({ now }: Work, readings: readonly MeasuredNow[]): MeasuredNow[] =>
  readings.map((one) => {
    const figure = one.figure === null ? undefined : now?.figures[one.figure];
    return figure && !('length' in figure.value) ? { ...one, figure: null } : one;
  });

/** Counted tooth by tooth and not through: asked once more before it is done, with all that was typed. None ticked: the count was not used. */
async function askWhenHalfCounted(visit: Visit, { line, part: own }: Work, typed: Typed): Promise<Result | null> {
  const [pass] = own.stored ? passesOf([line], own.stored.gear.teeth) : [];
  if (!pass) return null;
  const ticked = (await ticksOf(visit.db, line.id)).length;
  if (ticked === 0 || ticked >= pass.marks || visit.body['ticked'] === String(ticked)) return null;
  const back = { says: line.title, href: to.operation(line.id) };
  const view = confirmView({
    id: 'half-counted',
    title: `Done with ${ticked} of ${pass.marks} ticked?`,
    place: 'Machines',
    back,
    says: `On the count of teeth ${ticked} of ${pass.marks} are ticked off. Look that every space is cut before the work leaves the head.`,
    action: to.operationDone(line.id),
    act: 'All are cut: mark it done',
    keep: { says: 'Not yet: count on', href: to.teeth(line.id) },
  });
  const values = Object.entries(typed).map(([name, value]) => ({ name, value: String(value ?? '') }));
  return show('confirm', {
    ...view,
    form: { ...view.form, hidden: [revOf(line), ...values, { name: 'ticked', value: String(ticked) }, formMark()] },
  });
}

/** Done, with what was measured. */
export const done = (visit: Visit): Promise<Result> =>
  withMeasured(
    visit,
    to.operationDone,
    async (work, readings, minutes) => {
      const { line } = work;
      const { rev, says } = await takeToday(visit, work);
      await markDone(visit.db, line.id, rev, { on: visit.now, minutes, measured: stillAnswering(work, readings) });
      return ['Done.', says, notMeasured(line, readings, work.now)].filter((part) => part !== '').join(' ');
    },
    ({ today, at }) => {
      const next = today.lines.slice(at + 1).find(({ state }) => state !== 'done' && state !== 'struck out');
      return next
        ? { says: `Next: ${next.title}`, href: to.operation(next.id) }
        : { says: 'The whole routing', href: to.routing(today.lines[0]?.routing_id ?? 0) };
    },
    askWhenHalfCounted,
  );
