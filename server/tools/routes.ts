import { RecordChanged } from '../../db/changes.ts';
import { workThatWants } from '../../db/needs-again.ts';
import type { ToolDetails, ToolForms } from '../../db/tool-details.ts';
import { addTool, allTools, saveTool, type ToolLine, tool, toolsOfKind } from '../../db/tools.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { to } from '../addresses.ts';
import { askedBefore, sentRev } from '../asked.ts';
import { dayOf } from '../forms/date-field.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { unitSent } from '../forms/gear-form.ts';
import { recordId } from '../record-id.ts';
import { usualUnit } from '../settings/defaults.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { type CommonValues, freshTyped, lendFields, toolFields, typedOfTool } from './forms.ts';
import type { KindForm } from './kinds/kind-form.ts';
import { formOfKind, KINDS, kindOf } from './kinds/kinds.ts';
import { kindView, listView } from './list-view.ts';
import { settle } from './settled.ts';
import { editConflict, editView, lendConflict, newView, toolView } from './view-model.ts';

const SHORT_LIST = 12;
const PAGE = 40;

/** All tools by kind; one kind alone, page by page, when the address asks for it. */
export async function list(visit: Visit): Promise<Result> {
  const asked = visit.query['kind'];
  if (typeof asked === 'string') {
    const kind = kindOf(asked);
    const before = askedBefore(visit);
    return show(
      'tools/list',
      kindView(kind, await toolsOfKind(visit.db, kind.kind, { before, size: PAGE }), before !== null, visit.trusted),
    );
  }
  const pages = [];
  for (const kind of KINDS) pages.push({ kind, page: await toolsOfKind(visit.db, kind.kind, { before: null, size: SHORT_LIST }) });
  return show('tools/list', listView(pages, visit.trusted));
}

const LONGEST_NAME = 120;

/** A new tool; its name may come with the address, from where such a tool is waited for. */
export async function ask(visit: Visit): Promise<Result> {
  const kind = kindOf(visit.params['kind']);
  const name = visit.query['name'];
  const typed = typeof name === 'string' ? { ...freshTyped(kind), name: name.slice(0, LONGEST_NAME) } : freshTyped(kind);
  return show('tools/form', newView(kind, await usualUnit(visit.db), typed, {}));
}

type Read =
  | { readonly ok: true; readonly common: CommonValues; readonly details: ToolDetails; readonly forms: ToolForms; readonly typed: Typed }
  | { readonly ok: false; readonly problems: Problems; readonly typed: Typed };

/** The whole form, with what does not agree between its fields. */
function readTool(sent: Visit['body'], kind: KindForm, unit: 'in' | 'mm'): Read {
  const read = readForm(sent, toolFields(kind, unit));
  if (!read.ok) return read;
  const detailed = kind.details(read.value as never);
  if (!detailed.ok) return { ...detailed, typed: read.typed };
  return { ok: true, common: read.value as CommonValues, details: detailed.details, forms: detailed.forms, typed: read.typed };
}

const columns = (kind: KindForm, { name, wear, keptIn, owner, dueOn, notes }: CommonValues, details: ToolDetails) => ({
  name: name || kind.name(details as never),
  wear,
  kept_in: keptIn,
  owner,
  due_on: dueOn,
  notes,
});

export async function add(visit: Visit): Promise<Result> {
  const kind = kindOf(visit.params['kind']);
  const unit = unitSent(visit.body);
  const read = readTool(visit.body, kind, unit);
  if (!read.ok) return show('tools/form', newView(kind, unit, read.typed, read.problems), 422);
  const { common, details, forms } = read;
  const row = await addTool(visit.db, { ...columns(kind, common, details), here: 1, lent_to: '', details, forms });
  return { go: to.tool(row.id), saved: `${row.name} is on record.${await settle(visit)}` };
}

const askedTool = (visit: Visit): Promise<ToolLine> => tool(visit.db, recordId('tool', visit.params['id']));

async function onePage(visit: Visit, line: ToolLine, typed: Typed, problems: Problems, status: number): Promise<Result> {
  const use = await workThatWants(visit.db, line.row.id);
  const arbors = line.tool.kind === 'cutter' ? (await allTools(visit.db)).filter((one) => one.kind === 'arbor') : [];
  return show('tools/tool', toolView(line, { use, arbors, trusted: visit.trusted, typed, problems }), status);
}

export const one = async (visit: Visit): Promise<Result> => onePage(visit, await askedTool(visit), {}, {}, 200);

export async function edit(visit: Visit): Promise<Result> {
  const line = await askedTool(visit);
  const kind = formOfKind(line.row.kind);
  const unit = await usualUnit(visit.db);
  return show('tools/form', editView(kind, line, line.row.rev, unit, typedOfTool(kind, line, unit), {}));
}

export async function save(visit: Visit): Promise<Result> {
  const line = await askedTool(visit);
  const { id } = line.row;
  const kind = formOfKind(line.row.kind);
  const unit = unitSent(visit.body);
  const read = readTool(visit.body, kind, unit);
  if (!read.ok) return show('tools/form', editView(kind, line, sentRev(visit), unit, read.typed, read.problems), 422);
  const { details } = read;
  try {
    const row = await saveTool(visit.db, id, sentRev(visit), columns(kind, read.common, details), { details, forms: read.forms });
    return { go: to.tool(id), saved: `${row.name} is saved.${await settle(visit)}` };
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return show('conflict', editConflict(kind, line, unit, read.typed), 409);
  }
}

/** Saves a change of standing and decides anew what waits. */
async function stand(visit: Visit, says: string, changes: Parameters<typeof saveTool>[3]): Promise<Result> {
  const id = recordId('tool', visit.params['id']);
  const row = await saveTool(visit.db, id, sentRev(visit), changes);
  return { go: to.tool(id), saved: `${row.name} ${says}.${await settle(visit)}` };
}

export async function lend(visit: Visit): Promise<Result> {
  const line = await askedTool(visit);
  const read = readForm(visit.body, lendFields);
  // Lent meanwhile: its page has no such form any more, and what was wrong would be said nowhere.
  if (line.row.rev !== sentRev(visit)) return show('conflict', lendConflict(line, read.typed), 409);
  if (!read.ok) return onePage(visit, line, read.typed, read.problems, 422);
  const { lentTo, dueOn } = read.value;
  try {
    return await stand(visit, 'is lent out', { here: 0, lent_to: lentTo, due_on: dueOn });
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return show('conflict', lendConflict(line, read.typed), 409);
  }
}

export const comeBack = (visit: Visit): Promise<Result> => stand(visit, 'is back', { here: 1, lent_to: '', due_on: null });

const WEAR = { sharp: 'is sharp', dull: 'is blunt', 'worn out': 'is worn out' } as const;
const isWear = (asked: string): asked is keyof typeof WEAR => Object.hasOwn(WEAR, asked);

export async function wear(visit: Visit): Promise<Result> {
  const asked = String(visit.body['wear'] ?? '');
  if (!isWear(asked))
    throw new DomainError({
      given: `A condition “${asked.slice(0, 40)}”.`,
      limit: 'A tool is sharp, dull or worn out.',
      tryThis: 'Go back and press one of the buttons.',
      about: [],
    });
  return stand(visit, WEAR[asked], { wear: asked });
}

export const retire = (visit: Visit): Promise<Result> =>
  stand(visit, 'is taken off the list; its records stay', { gone_on: dayOf(visit.now) });

export const putBack = (visit: Visit): Promise<Result> => stand(visit, 'is on the list again', { gone_on: null });
