import { addAssembly } from '../../db/assemblies.ts';
import type { AnyGear } from '../../db/gears.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { type Problems, readForm, type Typed } from '../forms/form.ts';
import { type GearForms, readGear } from '../forms/gear-form.ts';
import type { Db } from '../visit.ts';
import { type Belongs, otherPartFields, type Sort, wheelPartFields } from './forms.ts';

/** A part as it was typed. assembly: the id of one that is there, or the name of a new one. */
export type PartRead = {
  readonly name: string;
  readonly assembly: number | string;
  readonly setId: number | null;
  readonly material: string;
  readonly notes: string;
  readonly wheel: { readonly gear: AnyGear; readonly forms: GearForms } | null;
};
type Read =
  | { readonly ok: true; readonly part: PartRead; readonly typed: Typed }
  | { readonly ok: false; readonly problems: Problems; readonly typed: Typed };

const NOWHERE = { newAssembly: 'Choose an assembly, or type which part of the machine it belongs to.' };

function readOther(sent: unknown, belongs: Belongs): Read {
  const read = readForm(sent, otherPartFields(belongs));
  if (!read.ok) return read;
  const { name, material, notes, assembly, newAssembly } = read.value;
  const where = newAssembly || (assembly === null ? '' : Number(assembly));
  if (where === '') return { ok: false, problems: NOWHERE, typed: read.typed };
  return { ok: true, typed: read.typed, part: { name, material, notes, assembly: where, setId: null, wheel: null } };
}

function readWheel(sent: unknown, belongs: Belongs, unit: LengthUnit): Read {
  const [read, wheel] = [readForm(sent, wheelPartFields(belongs)), readGear(sent, unit)];
  const typed = { ...read.typed, ...wheel.typed };
  if (!read.ok || !wheel.ok)
    return { ok: false, typed, problems: { ...(read.ok ? {} : read.problems), ...(wheel.ok ? {} : wheel.problems) } };
  const { name, material, notes, assembly, newAssembly, set } = read.value;
  const chosen = belongs.sets.find(({ id }) => String(id) === set);
  const where = newAssembly || (assembly === null ? (chosen?.assembly_id ?? '') : Number(assembly));
  if (where === '') return { ok: false, problems: NOWHERE, typed };
  const { gear, forms } = wheel;
  return {
    ok: true,
    typed,
    part: { name, material: material ?? '', notes, assembly: where, setId: chosen?.id ?? null, wheel: { gear, forms } },
  };
}

/** Reads a part of either sort, all problems at once. */
export const readPart = (sent: unknown, sort: Sort, belongs: Belongs, unit: LengthUnit): Read =>
  sort === 'wheel' ? readWheel(sent, belongs, unit) : readOther(sent, belongs);

/** The assembly that was chosen, or a new one of the name that was typed. */
export async function assemblyOf(db: Db, projectId: number, { assembly }: PartRead): Promise<number> {
  if (typeof assembly === 'number') return assembly;
  return (await addAssembly(db, { project_id: projectId, within_id: null, name: assembly, serial: '', notes: '' })).id;
}
