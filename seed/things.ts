import type { Executor, Row } from '../db/executor.ts';
import type { AnyGear } from '../db/gears.ts';
import { addItem, type NewItem } from '../db/items.ts';
import { addPart } from '../db/parts.ts';
import { addReading } from '../db/readings.ts';
import { conditionText } from '../db/spares/condition.ts';
import { READING_NAMES } from '../db/spares/reading-names.ts';
import type { Gear, Material } from '../lib/gears/gear.ts';
import { systemByKey } from '../lib/gears/systems.ts';
import { inches } from '../lib/values/length.ts';
import { ratio } from '../lib/values/ratio.ts';

/** Where a part belongs: its machine, its assembly and, of a wheel, its set. */
export type Place = { readonly projectId: number; readonly assemblyId: number; readonly setId: number | null };

const SOLID: Gear['body'] = { known: true, recesses: [], openings: [] };
export const plainBore = (inch: number): Gear['bore'] => ({ form: 'plain', diameter: inches(inch) });
export const keyedBore = (inch: number, width: number, depth: number): Gear['bore'] => ({
  form: 'keyed',
  diameter: inches(inch),
  keyWidth: inches(width),
  keyDepth: inches(depth),
});

/** A 14½° wheel of old machines as a pattern without its teeth. */
export function oldInchWheel(pitch: number, faceIn: number, bore: Gear['bore']): Omit<Gear, 'teeth'> {
  const named = systemByKey('full-14.5');
  if (!named) throw new Error('the 14½° system has gone');
  const of = { kind: 'DP', size: ratio(pitch) } as const;
  return { pitch: of, system: named.system, helix: null, face: inches(faceIn), bore, body: SOLID };
}

const HERE = {
  gear: null,
  set_id: null,
  kept_in: '',
  from_project_id: null,
  trust: 'unknown',
  condition: '',
  hardness: 'not tried',
  length_nm: null,
  length_form: null,
  diameter_nm: null,
  diameter_form: null,
  notes: '',
} as const;

type About = Partial<Omit<NewItem, 'kind' | 'gear' | 'set_id'>>;
const LOOKED_AT = conditionText({ teeth: 'good', bore: 'good' });

/** A loose wheel of steel that a file bites, looked at and found good unless said otherwise. */
export const addWheel = (db: Executor, gear: Gear, setId: number | null, addedOn: string, about: About = {}): Promise<Row<'item'>> => {
  const usual = { ...HERE, kind: 'wheel', name: '', material: 'steel', hardness: 'file bites', condition: LOOKED_AT } as const;
  return addItem(db, { ...usual, added_on: addedOn, ...about, gear, set_id: setId });
};

/** A bar or disc, in inches. */
export const addStock = (
  db: Executor,
  name: string,
  material: Material,
  diameter: number,
  length: number,
  addedOn: string,
  keptIn: string,
): Promise<Row<'item'>> => {
  const sizes = { diameter_nm: inches(diameter), diameter_form: 'in.3', length_nm: inches(length), length_form: 'in.3' };
  return addItem(db, { ...HERE, kind: 'stock', name, material, ...sizes, kept_in: keptIn, added_on: addedOn });
};

/** Any other thing on record: a casting, a bought spring. */
export const addThing = (
  db: Executor,
  kind: 'casting' | 'other',
  name: string,
  material: Material,
  addedOn: string,
  about: About = {},
): Promise<Row<'item'>> => addItem(db, { ...HERE, kind, name, material, added_on: addedOn, ...about });

type Wanted = Partial<Pick<Row<'part'>, 'material' | 'way' | 'why' | 'notes'>>;

export const addPlace = (db: Executor, { projectId, assemblyId, setId }: Place, name: string, about: Wanted = {}): Promise<Row<'part'>> =>
  addPart(db, {
    project_id: projectId,
    assembly_id: assemblyId,
    set_id: setId,
    name,
    material: '',
    way: null,
    why: '',
    notes: '',
    ...about,
  });

export const addWheelPlace = (db: Executor, { projectId, assemblyId, setId }: Place, gear: AnyGear, name: string, about: Wanted = {}) =>
  addPart(db, {
    ...{ project_id: projectId, assembly_id: assemblyId, set_id: setId, name, gear },
    ...{ material: 'steel', way: null, why: '', notes: '' },
    ...about,
  });

/** The old roots of a wheel, as the least of six walls and the bore beside it, in inches. */
export async function readRoots(db: Executor, itemId: number, wall: number, bore: number, on: string): Promise<void> {
  const how = { read_on: on, instrument: 'ball micrometer', error: { length: inches(0.001) }, form: { unit: 'in', places: 3 } } as const;
  await addReading(db, { itemId }, { ...how, what: READING_NAMES.wall, value: { length: inches(wall) } });
  await addReading(db, { itemId }, { ...how, what: READING_NAMES.bore, value: { length: inches(bore) }, instrument: 'plug gauge' });
}
