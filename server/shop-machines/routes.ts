import { RecordChanged, saveRow } from '../../db/changes.ts';
import { feedFormOf } from '../../db/machine-feeds.ts';
import { addMachine, type MachineLine, machine, machines, retireMachine, saveMachine } from '../../db/machines.ts';
import { refreshAllStale } from '../../db/replan.ts';
import { setSetting } from '../../db/settings.ts';
import { usualAmong } from '../../db/shop-now.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { dayOf } from '../forms/date-field.ts';
import { readForm } from '../forms/form.ts';
import { unitSent } from '../forms/gear-form.ts';
import { recordId } from '../record-id.ts';
import { usualUnit } from '../settings/defaults.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { editConflict, editView, newView } from './form-view.ts';
import { type MachineValues, machineFields, machineOf, machineProblems, typedOfShopMachine } from './forms.ts';
import { listView, machineView, type Usual } from './view-model.ts';

async function usualOf(db: Db, all: readonly MachineLine[]): Promise<Usual> {
  const { lathe, mill } = await usualAmong(
    db,
    all.map((line) => line.machine),
  );
  return { latheId: lathe?.id ?? null, millId: mill?.id ?? null };
}

/** The shop's own machines. */
export async function list({ db, trusted }: Visit): Promise<Result> {
  const all = await machines(db);
  return show('shop-machines/list', listView(all, await usualOf(db, all), trusted));
}

export const ask = async ({ db }: Visit): Promise<Result> => show('shop-machines/form', newView(await usualUnit(db)));

/** The whole form, with what does not agree between its fields. */
function readMachine(visit: Visit) {
  const unit = unitSent(visit.body);
  const read = readForm(visit.body, machineFields(unit));
  if (!read.ok) return { ...read, unit };
  const problems = machineProblems(read.value as MachineValues, read.typed);
  return Object.keys(problems).length > 0 ? { ok: false as const, problems, typed: read.typed, unit } : { ...read, unit };
}

export async function add(visit: Visit): Promise<Result> {
  const read = readMachine(visit);
  if (!read.ok) return show('shop-machines/form', newView(read.unit, read.typed, read.problems), 422);
  const row = await addMachine(visit.db, machineOf(read.value, read.typed));
  await refreshAllStale(visit.db);
  return { go: to.shopMachine(row.id), saved: `${row.name} is on record.` };
}

const asked = (visit: Visit): Promise<MachineLine> => machine(visit.db, recordId('shop machine', visit.params['id']));

export async function one(visit: Visit): Promise<Result> {
  const line = await asked(visit);
  const form = await feedFormOf(visit.db, line.row.id);
  return show('shop-machines/machine', machineView(line, form, await usualOf(visit.db, await machines(visit.db)), visit.trusted));
}

export async function edit(visit: Visit): Promise<Result> {
  const line = await asked(visit);
  const unit = await usualUnit(visit.db);
  const form = await feedFormOf(visit.db, line.row.id);
  return show('shop-machines/form', editView(line, line.row.rev, unit, typedOfShopMachine(line, form, unit)));
}

export async function save(visit: Visit): Promise<Result> {
  const line = await asked(visit);
  const { id } = line.row;
  const read = readMachine(visit);
  if (!read.ok) return show('shop-machines/form', editView(line, sentRev(visit), read.unit, read.typed, read.problems), 422);
  try {
    const row = await saveMachine(visit.db, id, sentRev(visit), machineOf(read.value, read.typed));
    await refreshAllStale(visit.db);
    return { go: to.shopMachine(id), saved: `${row.name} is saved.` };
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return show('conflict', editConflict(line, await feedFormOf(visit.db, id), read.unit, read.typed), 409);
  }
}

/** Makes it the lathe or the mill that routings are planned on. */
export async function makeUsual(visit: Visit): Promise<Result> {
  const { row } = await asked(visit);
  await setSetting(visit.db, `usual ${row.kind}`, String(row.id));
  await refreshAllStale(visit.db);
  return { go: to.shopMachine(row.id), saved: `${row.name} is the usual ${row.kind} now.` };
}

export async function retire(visit: Visit): Promise<Result> {
  const row = await retireMachine(visit.db, recordId('shop machine', visit.params['id']), sentRev(visit), dayOf(visit.now));
  await refreshAllStale(visit.db);
  return { go: to.shopMachine(row.id), saved: `${row.name} has left the shop; its records stay.` };
}

export async function putBack(visit: Visit): Promise<Result> {
  const row = await saveRow(visit.db, 'machine', recordId('shop machine', visit.params['id']), sentRev(visit), { gone_on: null });
  await refreshAllStale(visit.db);
  return { go: to.shopMachine(row.id), saved: `${row.name} is in the shop again.` };
}
