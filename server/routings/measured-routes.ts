import { type MeasuredNow, noteMeasured } from '../../db/operations.ts';
import { refreshStale } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { type Fields, type FormRead, readForm, type Typed } from '../forms/form.ts';
import type { LinkView } from '../page.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { blankCaution } from './blank-words.ts';
import { closedMeanwhile } from './closed-meanwhile.ts';
import { listedAgain } from './listed.ts';
import { measureFields, minutesField, outsideLimits, readingsIn, typedNow } from './measured.ts';
import { operationView, revOf } from './operation-view.ts';
import { operationHead, operationWork, type Work } from './work.ts';

const fieldsOf = ({ line }: Work): Fields => ({ ...measureFields(line), minutes: minutesField });

const conflict = (visit: Visit, work: Work, yours: Typed, action: string): Result =>
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
      hidden: [revOf(work.line), listedAgain(visit)],
    }),
    409,
  );

type Good = Extract<FormRead<Fields>, { ok: true }>;
/** value: as readings are read from what was typed. */
export type Ask = (visit: Visit, work: Work, typed: Typed, value: Good['value']) => Promise<Result | null>;
type Save = (work: Work, measured: readonly MeasuredNow[], minutes: number | null) => Promise<string>;

const sentence = (saved: string, outside: readonly string[]): string => [saved, ...outside].join(' ');

/** Reads the boxes, refuses what another device overtook, saves, and says what the sizes mean. */
export async function withMeasured(
  visit: Visit,
  action: (id: number) => string,
  save: Save,
  next: (work: Work) => LinkView | null,
  ask: Ask = async () => null,
): Promise<Result> {
  const work = await operationWork(visit);
  const closed = closedMeanwhile(work, visit, fieldsOf(work), operationHead(work, work.line.title));
  if (closed) return closed;
  const read = readForm(visit.body, fieldsOf(work));
  if (!read.ok) return show('routings/operation', operationView(work, visit, read), 422);
  const { line } = work;
  if (line.rev !== sentRev(visit)) return conflict(visit, work, read.typed, action(line.id));
  const { value } = read as Good;
  const asked = await ask(visit, work, read.typed, value);
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
