import { addAssembly, assembliesOf, assembly } from '../../db/assemblies.ts';
import { RecordChanged } from '../../db/changes.ts';
import type { Row } from '../../db/executor.ts';
import { project } from '../../db/projects.ts';
import { addSet, madeThoughThere, saveSet, patternOf as storedPattern, wheelSet } from '../../db/sets.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { formsOf, patternOf, patternProblems, unitSent } from '../forms/gear-form.ts';
import { sizesHidden, typedOfPattern } from '../forms/gear-typed.ts';
import { quadrantText } from '../forms/quadrant-form.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { addWheels } from './add-wheels.ts';
import { followPattern } from './follow-pattern.ts';
import { addLinesPage, editSetPage, newSetPage } from './form-view.ts';
import { chartProblems, countProblems, editSetFields, freshSet, lineFields, newSetFields, typedOfSet } from './forms.ts';

type Where = { readonly machine: Row<'project'>; readonly all: readonly Row<'assembly'>[]; readonly unit: LengthUnit };

async function whereOf(visit: Visit): Promise<Where> {
  const machine = await project(visit.db, recordId('machine', visit.params['id']));
  return { machine, all: await assembliesOf(visit.db, machine.id), unit: unitSent({ ...visit.query, ...visit.body }) };
}

export async function askNew(visit: Visit): Promise<Result> {
  const where = await whereOf(visit);
  const typed = { ...freshSet, ...(where.all.length === 1 ? { assembly: String(where.all[0]?.id), newAssembly: '' } : {}) };
  return show('sets/form', newSetPage(where, { typed, problems: {} }));
}

type NewSetValues = Extract<ReturnType<typeof readForm<ReturnType<typeof newSetFields>>>, { ok: true }>['value'];

function problemsOf(value: NewSetValues): Problems {
  const between = patternProblems(value);
  if (Object.keys(between).length > 0) return between;
  const nowhere = value.assembly === null && value.newAssembly === '';
  return {
    ...countProblems(patternOf(value), value),
    ...(nowhere ? { newAssembly: 'Type which part of the machine it belongs to, for instance change gears.' } : {}),
  };
}

async function assemblyFor(visit: Visit, { machine }: Where, { assembly: chosen, newAssembly }: NewSetValues): Promise<number> {
  if (newAssembly === '') return Number(chosen);
  const row = { project_id: machine.id, within_id: chosen === null ? null : Number(chosen), name: newAssembly, serial: '', notes: '' };
  return (await addAssembly(visit.db, row)).id;
}

/** Puts a set on record with all that belongs to it and all that lies in its drawer. */
export async function add(visit: Visit): Promise<Result> {
  const where = await whereOf(visit);
  const read = readForm(visit.body, newSetFields(where.all, where.unit));
  if (!read.ok) return show('sets/form', newSetPage(where, read), 422);
  const problems = problemsOf(read.value);
  if (Object.keys(problems).length > 0) return show('sets/form', newSetPage(where, { typed: read.typed, problems }), 422);
  const { value } = read;
  const assemblyId = await assemblyFor(visit, where, value);
  const pattern = patternOf(value);
  const set = await addSet(visit.db, { assembly_id: assemblyId, name: value.name, sets: value.sets, notes: value.notes, pattern });
  const into = { projectId: where.machine.id, assemblyId, setId: set.id, pattern, forms: formsOf(value), now: visit.now };
  const filled = await addWheels(visit.db, value, into);
  return { go: to.set(set.id), saved: `${set.name}: ${value.belongs.length} belong, ${filled} of them lie in the drawer.` };
}

const NO_PATTERN: Typed = { system: 'full-14.5', body: 'unknown' };

const unitOf = (pattern: Omit<Gear, 'teeth'> | null): LengthUnit => (pattern ? unitOfPitch(pattern.pitch) : 'in');

async function found(visit: Visit) {
  const set = await wheelSet(visit.db, recordId('wheel set', visit.params['id']));
  const within = await assembly(visit.db, set.assembly_id);
  const pattern = storedPattern(set);
  const unit = unitSent({ ...visit.query, ...visit.body }, unitOf(pattern));
  const stands: Typed = { ...typedOfSet(set), ...(pattern ? typedOfPattern({ gear: pattern, forms: {} }, unit) : NO_PATTERN) };
  return { set, pattern, unit, stands, machine: await project(visit.db, within.project_id) };
}

export async function askEdit(visit: Visit): Promise<Result> {
  const { set, unit, stands } = await found(visit);
  return show('sets/form', editSetPage(set, unit, { typed: stands, problems: {} }));
}

async function twoVersions(visit: Visit, yours: Typed): Promise<Result> {
  const { set, unit, stands } = await found(visit);
  const view = conflictView({
    what: set.name,
    place: 'Machines',
    back: { says: set.name, href: to.set(set.id) },
    action: to.set(set.id),
    fields: editSetFields(unit),
    yours,
    theirs: stands,
    hidden: [{ name: 'rev', value: String(set.rev) }, sizesHidden(unit)],
  });
  return show('conflict', view, 409);
}

export async function save(visit: Visit): Promise<Result> {
  const { set, pattern: old, unit } = await found(visit);
  const read = readForm(visit.body, editSetFields(unit));
  const problems = read.ok ? { ...patternProblems(read.value), ...chartProblems(read.typed) } : read.problems;
  if (!read.ok || Object.keys(problems).length > 0)
    return show('sets/form', editSetPage({ ...set, rev: sentRev(visit) }, unit, { typed: read.typed, problems }), 422);
  const { name, sets, notes } = read.value;
  const train = {
    chart: (read.typed['chart'] ?? '').trim(),
    screw: (read.typed['screw'] ?? '').trim(),
    quadrant: quadrantText(read.typed),
  };
  const pattern = patternOf(read.value);
  try {
    await saveSet(visit.db, set.id, sentRev(visit), { name, sets, notes, pattern, ...train });
  } catch (error) {
    if (error instanceof RecordChanged) return twoVersions(visit, read.typed);
    throw error;
  }
  const many = await followPattern(visit.db, set.id, old, pattern, formsOf(read.value));
  return { go: to.set(set.id), saved: many === 0 ? 'Saved.' : `Saved. ${many} wheels and places followed the pattern.` };
}

export async function askWheels(visit: Visit): Promise<Result> {
  const { set, pattern } = await found(visit);
  return show(
    'sets/form',
    addLinesPage(set, pattern, { typed: { material: 'unknown', hardness: 'not tried', trust: 'unknown' }, problems: {} }),
  );
}

/** A wheel has turned up that is being made already: the owner decides which of the two it is to be. */
async function stillMade({ db }: Visit, setId: number): Promise<string[]> {
  const marks = await madeThoughThere(db, setId);
  if (marks.length === 0) return [];
  return [
    `Being made, and so not filled: ${marks.join(', ')}. Finish the routing, or give it up, to put the wheel that lies there in its place.`,
  ];
}

/** Further wheels, cut as the pattern says. */
export async function saveWheels(visit: Visit): Promise<Result> {
  const { set, pattern, machine } = await found(visit);
  const read = readForm(visit.body, lineFields);
  if (!read.ok) return show('sets/form', addLinesPage(set, pattern, read), 422);
  const { belongs, drawer } = read.value;
  const wrong = pattern ? countProblems(pattern, read.value) : {};
  const none = belongs.length + drawer.length === 0 ? { belongs: 'Both lines are empty: type at least one wheel.' } : {};
  const problems = { ...none, ...wrong, ...(pattern ? {} : { belongs: 'Say first of what pitch they are: “Change the set”.' }) };
  if (!pattern || Object.keys(problems).length > 0)
    return show('sets/form', addLinesPage(set, pattern, { typed: read.typed, problems }), 422);
  const into = { projectId: machine.id, assemblyId: set.assembly_id, setId: set.id, pattern, forms: {}, now: visit.now };
  const filled = await addWheels(visit.db, read.value, into);
  const says = `${belongs.length} places and ${drawer.length} wheels added; ${filled} places filled.`;
  return { go: to.set(set.id), saved: [says, ...(await stillMade(visit, set.id))].join(' ') };
}
