import { addItem } from '../../db/items.ts';
import { addPart } from '../../db/parts.ts';
import { fillFromDrawer } from '../../db/sets.ts';
import type { Gear, Hardness, Material, Trust } from '../../lib/gears/gear.ts';
import type { GearForms } from '../forms/gear-form.ts';
import type { Db } from '../visit.ts';

/** Wheels to put on record for a set, each cut as the pattern says. */
export type Lines = {
  readonly belongs: readonly number[];
  readonly drawer: readonly number[];
  readonly material: Material;
  readonly hardness: Hardness;
  readonly trust: Trust;
};
export type Into = {
  readonly projectId: number;
  readonly assemblyId: number;
  readonly setId: number;
  readonly pattern: Omit<Gear, 'teeth'>;
  readonly forms: GearForms;
  readonly now: string;
};

async function addPlace(db: Db, teeth: number, { projectId, assemblyId, setId, pattern, forms }: Into): Promise<void> {
  const row = {
    project_id: projectId,
    assembly_id: assemblyId,
    set_id: setId,
    name: `Change gear ${teeth}`,
    material: '',
    why: '',
    notes: '',
  };
  await addPart(db, { ...row, way: null, gear: { ...pattern, teeth }, forms });
}

async function addLoose(db: Db, teeth: number, { setId, pattern, forms, now }: Into, lines: Lines): Promise<void> {
  const nothing = { name: '', kept_in: '', from_project_id: null, condition: '', length_nm: null, length_form: null, notes: '' };
  const { material, hardness, trust } = lines;
  const row = { ...nothing, kind: 'wheel' as const, set_id: setId, diameter_nm: null, diameter_form: null, added_on: now };
  await addItem(db, { ...row, material, hardness, trust, gear: { ...pattern, teeth }, forms });
}

/** What belongs becomes a place to be filled, what lies there a thing; like ones are put in their place. Gives how many were. */
export async function addWheels(db: Db, lines: Lines, into: Into): Promise<number> {
  for (const teeth of lines.belongs) await addPlace(db, teeth, into);
  for (const teeth of lines.drawer) await addLoose(db, teeth, into, lines);
  return fillFromDrawer(db, into.setId);
}
