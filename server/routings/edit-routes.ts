import { RecordChanged, RecordNotFound, saveRow } from '../../db/changes.ts';
import { type StoredFigure, setMeasured, typeFigure } from '../../db/figures.ts';
import { settleNeeds } from '../../db/needs.ts';
import { addOperation, editOperation } from '../../db/operations.ts';
import { refreshStale } from '../../db/replan.ts';
import { meets } from '../../lib/routing/needs.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { type Fields, readForm, type Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { ButtonView } from '../page.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { closedMeanwhile } from './closed-meanwhile.ts';
import { figuresShown } from './figure-shown.ts';
import { formPage, type Tried } from './form-page.ts';
import { editFields, linesOf, ownFields, setUpsFor, typedOfOperation, typedOver, valueField } from './forms.ts';
import { revOf } from './operation-view.ts';
import {
  openOperation,
  openRoutingWork,
  openWritten,
  operationHead,
  operationWork,
  type Work,
  type WrittenOperation,
  type WrittenWork,
  workHead,
  writtenOperation,
  writtenWork,
} from './work.ts';

type TwoVersions = {
  readonly work: WrittenOperation;
  readonly action: string;
  readonly fields: Fields;
  readonly yours: Typed;
  readonly theirs: Typed;
};

const conflict = ({ work: { line }, action, fields, yours, theirs }: TwoVersions): Result => {
  const back = { says: line.title, href: to.operation(line.id) };
  return show(
    'conflict',
    conflictView({ what: line.title, place: 'Machines', back, action, fields, yours, theirs, hidden: [revOf(line)] }),
    409,
  );
};

const editPage = (work: WrittenOperation, tried: Tried, rev: number) =>
  formPage({
    head: operationHead(work, 'Edit the operation'),
    action: to.operationEdit(work.line.id),
    act: 'Save',
    fields: editFields,
    tried,
    hidden: [{ name: 'rev', value: String(rev) }],
    back: { says: 'Back', href: to.operation(work.line.id) },
  });

export async function askEdit(visit: Visit): Promise<Result> {
  const work = await openWritten(visit);
  return show('routings/form', editPage(work, { typed: typedOfOperation(work.line), problems: {} }, work.line.rev));
}

export async function edit(visit: Visit): Promise<Result> {
  const work = await writtenOperation(visit);
  const closed = closedMeanwhile(work, visit, editFields, operationHead(work, 'Edit the operation'));
  if (closed) return closed;
  const read = readForm(visit.body, editFields);
  if (!read.ok) return show('routings/form', editPage(work, read, sentRev(visit)), 422);
  const { title, steps, minutes, notes } = read.value;
  try {
    await editOperation(visit.db, work.line.id, sentRev(visit), { title, steps: linesOf(steps), minutes, notes });
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return conflict({
      work,
      action: to.operationEdit(work.line.id),
      fields: editFields,
      yours: read.typed,
      theirs: typedOfOperation(work.line),
    });
  }
  return { go: to.operation(work.line.id), saved: 'Saved.' };
}

const OWN = 'An operation of your own';

const newPage = (work: WrittenWork, tried: Tried) =>
  formPage({
    head: workHead(work, OWN, null),
    says: 'It is done in its place: after the one that you name, before the one that stood there.',
    action: to.operations(work.routing.id),
    act: 'Add it',
    fields: ownFields(work.lines),
    tried,
    back: { says: 'Back', href: to.part(work.part.id) },
  });

const asText = (sent: unknown): string => (typeof sent === 'string' ? sent : '');

export async function askNew(visit: Visit): Promise<Result> {
  const work = await openRoutingWork(visit.db, recordId('routing', visit.params['id']));
  const after = asText(visit.query['after']) || '0';
  const place = work.lines.find(({ id }) => String(id) === after)?.setUp.key ?? 'bench';
  return show('routings/form', newPage(work, { typed: { after, setUp: place, minutes: '15' }, problems: {} }));
}

export async function add(visit: Visit): Promise<Result> {
  const work = await writtenWork(visit.db, recordId('routing', visit.params['id']));
  const { lines } = work;
  const closed = closedMeanwhile(work, visit, ownFields(lines), workHead(work, OWN, null));
  if (closed) return closed;
  const read = readForm(visit.body, ownFields(lines));
  if (!read.ok) return show('routings/form', newPage(work, read), 422);
  const { title, after, setUp: key, steps, need, minutes, notes } = read.value;
  const setUp = setUpsFor(lines).find((one) => one.key === key);
  if (!setUp) throw new RecordNotFound('set_up', key);
  const at = lines.findIndex(({ id }) => String(id) === after) + 2;
  const needs = need ? [{ kind: 'other' as const, name: need }] : [];
  const row = await addOperation(visit.db, work.routing.id, {
    title,
    setUp,
    steps: linesOf(steps),
    needs,
    minutes,
    notes,
    at: after === '0' ? 1 : at,
  });
  await settleNeeds(visit.db, meets);
  return { go: to.operation(row.id), saved: 'It has its place.' };
}

function figureOf(work: WrittenOperation, { params }: Visit) {
  const key = params['key'] ?? '';
  const stored = work.line.figures.find((one) => one.key === key);
  if (!stored) throw new RecordNotFound('figure', key.slice(0, 40));
  return stored;
}

/** Takes back what stands in place of what was worked out: first of all what was measured. */
function takeBacks(work: WrittenOperation, { key, typed, measured }: StoredFigure): ButtonView[] {
  const action = to.operationFigureBack(work.line.id, key);
  const button = (what: 'measured' | 'typed'): ButtonView => ({
    action,
    hidden: [revOf(work.line), { name: 'what', value: what }, formMark()],
    says: `Take back what was ${what}`,
    kind: 'other',
    confirm: '',
  });
  return [...(measured ? [button('measured')] : []), ...(typed ? [button('typed')] : [])];
}

function figurePage(work: Work, visit: Visit, tried: Tried, rev: number) {
  const stored = figureOf(work, visit);
  return formPage({
    head: operationHead(work, `Type over: ${stored.figure.name}`),
    says: 'What you type stands on page and sheet, underlined and marked “typed”, whatever is worked out later. Figures after it go by it.',
    figures: figuresShown(work.line, work.now).filter(({ key }) => key === stored.key),
    action: to.operationFigure(work.line.id, stored.key),
    act: 'Type it over',
    fields: { value: valueField(stored) },
    tried,
    hidden: [{ name: 'rev', value: String(rev) }],
    back: { says: 'Back', href: to.operation(work.line.id) },
    buttons: takeBacks(work, stored),
  });
}

export async function askFigure(visit: Visit): Promise<Result> {
  const work = await openOperation(visit);
  const typed = { value: typedOver(figureOf(work, visit)) };
  return show('routings/form', figurePage(work, visit, { typed, problems: {} }, work.line.rev));
}

export async function figure(visit: Visit): Promise<Result> {
  const work = await operationWork(visit);
  const stored = figureOf(work, visit);
  const fields = { value: valueField(stored) };
  const closed = closedMeanwhile(work, visit, fields, operationHead(work, `Type over: ${stored.figure.name}`));
  if (closed) return closed;
  const read = readForm(visit.body, fields);
  if (!read.ok) return show('routings/form', figurePage(work, visit, read, sentRev(visit)), 422);
  try {
    await typeFigure(visit.db, work.line.id, sentRev(visit), stored.key, read.value.value);
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    const action = to.operationFigure(work.line.id, stored.key);
    return conflict({ work, action, fields, yours: read.typed, theirs: { value: typedOver(stored) } });
  }
  await refreshStale(visit.db, work.line.routing_id);
  return { go: to.operation(work.line.id), saved: `${stored.figure.name} is typed over.` };
}

/** Takes back what was measured or typed; the reading itself stays on record. */
export async function figureBack(visit: Visit): Promise<Result> {
  const work = await openWritten(visit);
  const stored = figureOf(work, visit);
  const rev = sentRev(visit);
  if (visit.body['what'] === 'measured') {
    await saveRow(visit.db, 'operation', work.line.id, rev, {});
    await setMeasured(visit.db, work.line.id, stored.key, null);
  } else await typeFigure(visit.db, work.line.id, rev, stored.key, null);
  await refreshStale(visit.db, work.line.routing_id);
  return { go: to.operation(work.line.id), saved: 'Taken back.' };
}
