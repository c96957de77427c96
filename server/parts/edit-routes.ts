import { assembliesOf } from '../../db/assemblies.ts';
import { RecordChanged } from '../../db/changes.ts';
import { addPart, type PartLine, part as partById, savePart } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { refreshStaleOfPart } from '../../db/replan.ts';
import { patternOf, setsOfProject, wheelSet } from '../../db/sets.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import type { Typed } from '../forms/form.ts';
import { unitSent } from '../forms/gear-form.ts';
import { sizesHidden, typedOfPattern } from '../forms/gear-typed.ts';
import { takenWords, withTaken } from '../forms/taken.ts';
import { recordId } from '../record-id.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { editPartPage, newPartPage } from './form-view.ts';
import { allWheelFields, type Belongs, freshPart, otherPartFields, type Sort, typedOfPart } from './forms.ts';
import { assemblyOf, readPart } from './read-part.ts';

const given = ({ query, body }: Visit): Readonly<Record<string, unknown>> => ({ ...query, ...body });
const sortAsked = (visit: Visit, usual: Sort): Sort => {
  const as = given(visit)['as'];
  return as === 'other' || as === 'wheel' ? as : usual;
};

const belongsTo = async (db: Db, projectId: number): Promise<Belongs> => ({
  assemblies: await assembliesOf(db, projectId),
  sets: await setsOfProject(db, projectId),
});

/** What a fresh form holds: the pattern of the set that it was opened from, the only assembly that there is. */
async function freshTyped(visit: Visit, belongs: Belongs): Promise<{ readonly typed: Typed; readonly unit: LengthUnit }> {
  const chosen = belongs.sets.find(({ id }) => String(id) === visit.query['set']);
  const pattern = chosen ? patternOf(await wheelSet(visit.db, chosen.id)) : null;
  const unit = unitSent(given(visit), pattern ? unitOfPitch(pattern.pitch) : 'in');
  const [only] = belongs.assemblies.length === 1 ? belongs.assemblies : [];
  const where = chosen?.assembly_id ?? only?.id;
  const filled = pattern ? typedOfPattern({ gear: pattern, forms: {} }, unit) : freshPart;
  return { unit, typed: { ...filled, set: chosen ? String(chosen.id) : '', assembly: where === undefined ? '' : String(where) } };
}

export async function askNew(visit: Visit): Promise<Result> {
  const machine = await project(visit.db, recordId('machine', visit.params['id']));
  const belongs = await belongsTo(visit.db, machine.id);
  const { typed, unit } = await freshTyped(visit, belongs);
  return show('parts/form', newPartPage(machine, { sort: sortAsked(visit, 'wheel'), belongs, unit, tried: { typed, problems: {} } }));
}

export async function add(visit: Visit): Promise<Result> {
  const machine = await project(visit.db, recordId('machine', visit.params['id']));
  const belongs = await belongsTo(visit.db, machine.id);
  const [sort, unit] = [sortAsked(visit, 'wheel'), unitSent(given(visit))];
  const read = readPart(visit.body, sort, belongs, unit);
  if (!read.ok) return show('parts/form', newPartPage(machine, { sort, belongs, unit, tried: read }), 422);
  const { name, material, notes, setId, wheel } = read.part;
  const assembly_id = await assemblyOf(visit.db, machine.id, read.part);
  const row = { project_id: machine.id, assembly_id, set_id: setId, name, material, notes, way: null, why: '' };
  const added = await addPart(visit.db, { ...row, ...(wheel ?? {}) });
  return { go: to.part(added.id), saved: `${added.mark} is on record, as missing.` };
}

export type PartAsked = { readonly part: PartLine; readonly belongs: Belongs; readonly sort: Sort; readonly unit: LengthUnit };

/** The part that is asked for, and how its form is to be read. */
export async function found(visit: Visit): Promise<PartAsked> {
  const one = await partById(visit.db, recordId('part', visit.params['id']));
  const usual = one.stored ? unitOfPitch(one.stored.gear.pitch) : 'in';
  return {
    part: one,
    belongs: await belongsTo(visit.db, one.project_id),
    sort: one.stored || one.unknown ? 'wheel' : sortAsked(visit, 'other'),
    unit: unitSent(given(visit), usual),
  };
}

export async function askEdit(visit: Visit): Promise<Result> {
  const { part, ...asking } = await found(visit);
  return show(
    'parts/form',
    editPartPage(
      part,
      part.rev,
      { ...asking, tried: { typed: withTaken(typedOfPart(part, asking.unit), visit.query), problems: {} } },
      takenWords(visit.query),
    ),
  );
}

/** Saved meanwhile on another device: what was to be saved, and what stands. */
export function twoVersions(yours: Typed, { part, belongs, sort, unit }: PartAsked): Result {
  const view = conflictView({
    what: `${part.mark} ${part.name}`,
    place: 'Machines',
    back: { says: part.name, href: to.part(part.id) },
    action: to.part(part.id),
    fields: sort === 'wheel' ? allWheelFields(belongs, unit) : otherPartFields(belongs),
    yours,
    theirs: typedOfPart(part, unit),
    hidden: [{ name: 'as', value: sort }, { name: 'rev', value: String(part.rev) }, sizesHidden(unit)],
  });
  return show('conflict', view, 409);
}

export async function save(visit: Visit): Promise<Result> {
  const { part, ...asking } = await found(visit);
  const read = readPart(visit.body, asking.sort, asking.belongs, asking.unit);
  if (!read.ok) return show('parts/form', editPartPage(part, sentRev(visit), { ...asking, tried: read }), 422);
  const { name, material, notes, setId, wheel } = read.part;
  try {
    const assembly_id = await assemblyOf(visit.db, part.project_id, read.part);
    await savePart(visit.db, part.id, sentRev(visit), { name, material, notes, assembly_id, set_id: setId }, wheel);
  } catch (error) {
    if (error instanceof RecordChanged) return twoVersions(read.typed, await found(visit));
    throw error;
  }
  await refreshStaleOfPart(visit.db, part.id);
  return { go: to.part(part.id), saved: 'Saved.' };
}
