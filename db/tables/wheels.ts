import type { Generated } from 'kysely';
import type { Hand, Hardness, Material, Opening, PitchKind, Recess, Trust } from '../../lib/gears/gear.ts';
import type { Flag } from './machines.ts';

/** Every `_nm` is whole nanometres; its `_form` is how it was typed: "in.3", "in/64", "mm.2". Every `_mas` is thousandths of an arc second. */
export interface BoreTable {
  id: Generated<number>;
  form: 'plain' | 'keyed' | 'splined';
  diameter_nm: number;
  diameter_form: string;
  minor_nm: number | null;
  minor_form: string | null;
  splines: number | null;
  key_width_nm: number | null;
  key_width_form: string | null;
  key_depth_nm: number | null;
  key_depth_form: string | null;
}

/**
 * One row per owner (a part or an item), never shared: to change one wheel changes one wheel. Pitch and system null: its teeth are
 * counted, and nobody knows yet what they are. found_by: how the pitch came to be known, where it was found out by measurement.
 */
export interface GearTable {
  id: Generated<number>;
  teeth: number;
  helix_angle_mas: number | null;
  helix_hand: Hand | null;
  face_nm: number | null;
  face_form: string | null;
  bore_id: number | null;
  body_known: Flag;
  pitch_num: number | null;
  pitch_den: number | null;
  pitch_kind: PitchKind | null;
  system_name: string | null;
  system_angle_mas: number | null;
  addendum: number | null;
  dedendum: number | null;
  extra_nm: number | null;
  found_by: Generated<string>;
}

export interface RecessTable {
  gear_id: number;
  place_no: number;
  side: Recess['side'];
  inner_nm: number;
  inner_form: string;
  outer_nm: number;
  outer_form: string;
}

export interface OpeningTable {
  gear_id: number;
  place_no: number;
  what: Opening['what'];
  inner_nm: number;
  inner_form: string;
  outer_nm: number;
  outer_form: string;
}

/**
 * One physical thing; never deleted. A spare is an item that no part holds, no open blank claims, and that is not gone.
 * length: what is left of a bar. set_id: the drawer that it lies in.
 */
export interface ItemTable {
  id: Generated<number>;
  kind: 'wheel' | 'stock' | 'casting' | 'other';
  name: string;
  gear_id: number | null;
  set_id: number | null;
  kept_in: string;
  from_project_id: number | null;
  trust: Trust;
  condition: string;
  hardness: Hardness;
  material: Material;
  length_nm: number | null;
  length_form: string | null;
  diameter_nm: number | null;
  diameter_form: string | null;
  made_id: number | null;
  added_on: string;
  gone_on: string | null;
  gone_why: 'cut' | 'scrap' | 'used up' | 'sold' | 'given away' | 'lost' | null;
  notes: string;
  rev: Generated<number>;
}

/** What an instrument showed, on an item, at an operation, or on the wheel held for a part. mate_teeth: of the wheel it ran with. value is whole, in unit (see amounts.ts). error: how far off it may be. */
export interface ReadingTable {
  id: Generated<number>;
  item_id: number | null;
  operation_id: number | null;
  part_id: number | null;
  what: string;
  over_k: number | null;
  pin_nm: number | null;
  place_no: number | null;
  mate_teeth: number | null;
  value: number;
  unit: string;
  form: string;
  error: number | null;
  read_on: string;
  instrument: string;
}
