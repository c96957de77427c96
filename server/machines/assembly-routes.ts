import { addAssembly, assembliesOf, assembly, saveAssembly } from '../../db/assemblies.ts';
import { RecordChanged } from '../../db/changes.ts';
import type { Row } from '../../db/executor.ts';
import { project } from '../../db/projects.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { readForm, type Typed, type ValuesOf } from '../forms/form.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { FRESH, formPage, type Tried } from './form-view.ts';
import { assemblyFields, typedOfAssembly } from './forms.ts';
import { machineName } from './list-view.ts';

type Assemblies = readonly Row<'assembly'>[];

const newPage = (machine: Row<'project'>, all: Assemblies, tried: Tried) =>
  formPage({
    title: 'An assembly of the machine',
    says: 'A machine is divided as its maker divided it: bed, headstock, feed box. Each may have a serial number of its own.',
    back: { says: machineName(machine), href: to.machine(machine.id) },
    action: to.assemblies(machine.id),
    act: 'Add it',
    fields: assemblyFields(all, null),
    tried,
  });

const editPage = (machine: Row<'project'>, all: Assemblies, row: Row<'assembly'>, tried: Tried) =>
  formPage({
    title: row.name,
    back: { says: machineName(machine), href: to.machine(machine.id) },
    action: to.assembly(row.id),
    act: 'Save',
    fields: assemblyFields(all, row.id),
    tried,
    rev: row.rev,
  });

const columns = ({ name, within, serial, notes }: ValuesOf<ReturnType<typeof assemblyFields>>) => ({
  name,
  serial,
  notes,
  within_id: within === null ? null : Number(within),
});

export async function askNew(visit: Visit): Promise<Result> {
  const machine = await project(visit.db, recordId('machine', visit.params['id']));
  return show('machines/form', newPage(machine, await assembliesOf(visit.db, machine.id), FRESH));
}

export async function add(visit: Visit): Promise<Result> {
  const machine = await project(visit.db, recordId('machine', visit.params['id']));
  const all = await assembliesOf(visit.db, machine.id);
  const read = readForm(visit.body, assemblyFields(all, null));
  if (!read.ok) return show('machines/form', newPage(machine, all, read), 422);
  const row = await addAssembly(visit.db, { project_id: machine.id, ...columns(read.value) });
  return { go: to.machine(machine.id), saved: `${row.name} is on record.` };
}

async function found(visit: Visit) {
  const row = await assembly(visit.db, recordId('assembly', visit.params['id']));
  return { row, machine: await project(visit.db, row.project_id), all: await assembliesOf(visit.db, row.project_id) };
}

export async function askEdit(visit: Visit): Promise<Result> {
  const { row, machine, all } = await found(visit);
  return show('machines/form', editPage(machine, all, row, { typed: typedOfAssembly(row), problems: {} }));
}

async function twoVersions(visit: Visit, yours: Typed): Promise<Result> {
  const { row, machine, all } = await found(visit);
  const view = conflictView({
    what: row.name,
    place: 'Machines',
    back: { says: machineName(machine), href: to.machine(machine.id) },
    action: to.assembly(row.id),
    fields: assemblyFields(all, row.id),
    yours,
    theirs: typedOfAssembly(row),
    hidden: [{ name: 'rev', value: String(row.rev) }],
  });
  return show('conflict', view, 409);
}

export async function save(visit: Visit): Promise<Result> {
  const { row, machine, all } = await found(visit);
  const read = readForm(visit.body, assemblyFields(all, row.id));
  if (!read.ok) return show('machines/form', editPage(machine, all, { ...row, rev: sentRev(visit) }, read), 422);
  try {
    await saveAssembly(visit.db, row.id, sentRev(visit), columns(read.value));
    return { go: to.machine(machine.id), saved: 'Saved.' };
  } catch (error) {
    if (error instanceof RecordChanged) return twoVersions(visit, read.typed);
    throw error;
  }
}
