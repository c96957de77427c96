import { RecordChanged } from '../../db/changes.ts';
import { finishRouting } from '../../db/finish-routing.ts';
import { routingsOfPart } from '../../db/routings.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import { recordId } from '../record-id.ts';
import { measurable, verdictOf } from '../routings/measured.ts';
import { type WrittenWork, workHead, writtenWork } from '../routings/work.ts';
import type { PageData } from '../views.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { centsOf, finishFields, firstTyped } from './forms.ts';

/** What is still to be done, not measured, or outside its limits: told, never in the way. */
function stillOpen({ lines }: WrittenWork): string[] {
  const open = lines.filter(({ key, state, must }) => key !== 'record' && state !== 'done' && state !== 'struck out' && must === 1);
  const outside = lines.flatMap((line) =>
    measurable(line).flatMap(({ measure, stored: { measured } }) => {
      const verdict = measured && 'length' in measured ? verdictOf(measure, measured.length) : null;
      return verdict && !verdict.within ? [`${measure.name} (${line.title}): ${verdict.says}`] : [];
    }),
  );
  const titles = open.slice(0, 3).map(({ title }) => `“${title}”`);
  const more = open.length > 3 ? ` and ${open.length - 3} more` : '';
  return [...(open.length > 0 ? [`Not marked done: ${titles.join(', ')}${more}.`] : []), ...outside];
}

function finishPage(work: WrittenWork, typed: Typed, problems: Problems, rev: number): PageData<'made/form'> {
  return {
    ...workHead(work, 'Made, or spoilt', null),
    says: 'The record keeps every figure as it was printed, what was measured against its limits, and what it was made from. Later changes never touch it.',
    still: stillOpen(work),
    form: {
      id: 'finish',
      action: to.routingFinish(work.routing.id),
      method: 'post',
      hidden: [{ name: 'rev', value: String(rev) }, formMark()],
      problem: '',
      groups: [fieldGroup('', finishFields, typed, problems)],
      act: 'Write the record',
      kind: 'main',
      confirm: '',
      back: { says: 'Not yet', href: to.part(work.part.id) },
    },
  };
}

const taken = ({ lines }: WrittenWork): number => lines.reduce((sum, line) => sum + (line.minutes_taken ?? 0), 0);

export async function askFinish(visit: Visit): Promise<Result> {
  const work = await writtenWork(visit.db, recordId('routing', visit.params['id']));
  if (work.routing.closed_on !== null) return { go: to.part(work.part.id) };
  return show('made/form', finishPage(work, firstTyped(taken(work)), {}, work.routing.rev));
}

/** Closed by another device meanwhile: what was typed stays on the page, and it says so. */
async function closedMeanwhile(visit: Visit, work: WrittenWork, typed: Typed): Promise<Result> {
  const page = finishPage(work, typed, {}, work.routing.rev);
  const last = (await routingsOfPart(visit.db, work.part.id, { before: null, size: 1 })).rows[0];
  const gone = work.routing.closed_on !== null;
  const problem = gone
    ? 'This routing was closed on another device meanwhile. Nothing of yours was saved; what you typed still stands below.'
    : 'Something was changed on another device meanwhile. Look at the routing; send this again if it still holds.';
  const back = gone && last ? { says: 'Go to the part', href: to.part(work.part.id) } : page.form.back;
  return show('made/form', { ...page, form: { ...page.form, problem, back } }, 409);
}

export async function finish(visit: Visit): Promise<Result> {
  const work = await writtenWork(visit.db, recordId('routing', visit.params['id']));
  const read = readForm(visit.body, finishFields);
  if (!read.ok) return show('made/form', finishPage(work, read.typed, read.problems, sentRev(visit)), 422);
  const { outcome, minutes, cost, notes } = read.value;
  const rev = sentRev(visit);
  if (work.routing.closed_on !== null) return closedMeanwhile(visit, work, read.typed);
  try {
    const making = { routingId: work.routing.id, rev, outcome, finishedOn: visit.now, minutes, costCents: centsOf(cost), notes };
    const made = await finishRouting(visit.db, making);
    if (outcome === 'good') return { go: to.made(made.id), saved: `${work.part.mark} is made and in its place.` };
    const act = { says: 'Choose again what it is made from', href: to.part(work.part.id) };
    return { go: to.made(made.id), saved: `Written down as spoilt. ${work.part.mark} is still missing.`, act };
  } catch (error) {
    if (error instanceof RecordChanged) return closedMeanwhile(visit, work, read.typed);
    throw error;
  }
}
