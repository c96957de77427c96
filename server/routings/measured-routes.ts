import { type MeasuredNow, noteMeasured } from '../../db/operations.ts';
import { refreshStale } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { type Fields, type FormRead, readForm, type Typed } from '../forms/form.ts';
import type { LinkView } from '../page.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { blankCaution } from './blank-words.ts';
import { listedAgain } from './listed.ts';
import { measureFields, minutesField, outsideLimits, readingsIn, typedNow } from './measured.ts';
import { operationView, revOf } from './operation-view.ts';
import { operationWork, refuseClosed, type Work } from './work.ts';

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
export type Ask = (visit: Visit, work: Work, typed: Typed) => Promise<Result | null>;
type Save = (work: Work, measured: readonly MeasuredNow[], minutes: number | null) => Promise<string>;

const sentence = (saved: string, outside: readonly string[]): string => [saved, ...outside].join(' ');

/** A routing closed meanwhile takes nothing more; what was typed is said back, so that it is not lost with the page. Throws DomainError. */
function refuseClosedWith(work: Work, { body }: Visit): Work {
  const fields = fieldsOf(work);
  const typed = Object.entries(readForm(body, fields).typed).filter(([, text]) => text.trim() !== '');
  try {
    return refuseClosed(work);
  } catch (error) {
    if (!(error instanceof DomainError) || typed.length === 0) throw error;
    const words = typed.map(([name, text]) => `${fields[name]?.label ?? name} ${text.slice(0, 60)}`);
    const { given, limit, tryThis, about } = error;
    throw new DomainError({ given, limit: `${limit} You typed: ${words.join('; ')}.`, tryThis, about });
  }
}

/** Reads the boxes, refuses what another device overtook, saves, and says what the sizes mean. */
export async function withMeasured(
  visit: Visit,
  action: (id: number) => string,
  save: Save,
  next: (work: Work) => LinkView | null,
  ask: Ask = async () => null,
): Promise<Result> {
  const work = refuseClosedWith(await operationWork(visit), visit);
  const read = readForm(visit.body, fieldsOf(work));
  if (!read.ok) return show('routings/operation', operationView(work, visit, read), 422);
  const { line } = work;
  if (line.rev !== sentRev(visit)) return conflict(visit, work, read.typed, action(line.id));
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
