import { assembliesOf } from '../../db/assemblies.ts';
import { RecordChanged, RecordNotFound } from '../../db/changes.ts';
import { partsMissingFirst } from '../../db/part-lists.ts';
import { countsOfProject, madeOfProject, projectsByName } from '../../db/project-lists.ts';
import { addProject, project, projects, saveProject } from '../../db/projects.ts';
import { setsOfProject } from '../../db/sets.ts';
import { to } from '../addresses.ts';
import { askedBefore, sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { readForm, type Typed } from '../forms/form.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { editMachinePage, FRESH, newMachinePage } from './form-view.ts';
import { machineFields, typedOfMachine } from './forms.ts';
import { machineName, machinesView, type Sort } from './list-view.ts';
import { machineView } from './machine-view.ts';

const PAGE = 50;
const MADE_SHOWN = 5;

/** All machines, by name or newest first. */
export async function list(visit: Visit): Promise<Result> {
  const sort: Sort = visit.query['sort'] === 'name' ? 'name' : 'newest';
  const before = askedBefore(visit);
  const page = sort === 'name' ? await projectsByName(visit.db, before, PAGE) : await projects(visit.db, { before, size: PAGE });
  return show('machines/list', machinesView({ page, sort, first: before === null, trusted: visit.trusted }));
}

export const askNew = (): Result => show('machines/form', newMachinePage(FRESH));

export async function add(visit: Visit): Promise<Result> {
  const read = readForm(visit.body, machineFields);
  if (!read.ok) return show('machines/form', newMachinePage(read), 422);
  const row = await addProject(visit.db, { ...read.value, opened_on: visit.now });
  return { go: to.machine(row.id), saved: `${machineName(row)} is on record. Now what belongs to it.` };
}

/** One machine with its sets, parts, assemblies and what was made for it. */
export async function one(visit: Visit): Promise<Result> {
  const id = recordId('machine', visit.params['id']);
  const row = await countsOfProject(visit.db, id);
  if (!row) throw new RecordNotFound('machine', id);
  const before = askedBefore(visit);
  return show(
    'machines/one',
    machineView({
      project: row,
      assemblies: await assembliesOf(visit.db, id),
      sets: await setsOfProject(visit.db, id),
      parts: await partsMissingFirst(visit.db, id, { before, size: PAGE }),
      firstPage: before === null,
      made: await madeOfProject(visit.db, id, { before: null, size: MADE_SHOWN }),
      trusted: visit.trusted,
    }),
  );
}

export async function askEdit(visit: Visit): Promise<Result> {
  const row = await project(visit.db, recordId('machine', visit.params['id']));
  return show('machines/form', editMachinePage(row, { typed: typedOfMachine(row), problems: {} }));
}

async function twoVersions(visit: Visit, id: number, yours: Typed): Promise<Result> {
  const now = await project(visit.db, id);
  const view = conflictView({
    what: machineName(now),
    place: 'Machines',
    back: { says: machineName(now), href: to.machine(id) },
    action: to.machine(id),
    fields: machineFields,
    yours,
    theirs: typedOfMachine(now),
    hidden: [{ name: 'rev', value: String(now.rev) }],
  });
  return show('conflict', view, 409);
}

export async function save(visit: Visit): Promise<Result> {
  const id = recordId('machine', visit.params['id']);
  const read = readForm(visit.body, machineFields);
  if (!read.ok) return show('machines/form', editMachinePage({ ...(await project(visit.db, id)), rev: sentRev(visit) }, read), 422);
  try {
    await saveProject(visit.db, id, sentRev(visit), read.value);
    return { go: to.machine(id), saved: 'Saved.' };
  } catch (error) {
    if (error instanceof RecordChanged) return twoVersions(visit, id, read.typed);
    throw error;
  }
}

async function setClosed(visit: Visit, closed_on: string | null, saved: string): Promise<Result> {
  const id = recordId('machine', visit.params['id']);
  const row = await project(visit.db, id);
  if ((row.closed_on === null) === (closed_on === null)) return { go: to.machine(id) };
  await saveProject(visit.db, id, row.rev, { closed_on });
  return { go: to.machine(id), saved };
}

/** Puts a finished machine away; it stays in the list and can be taken up again. */
export const close = (visit: Visit): Promise<Result> => setClosed(visit, visit.now, 'Put away as done. Taking it up again is below.');
export const reopen = (visit: Visit): Promise<Result> => setClosed(visit, null, 'Taken up again.');
