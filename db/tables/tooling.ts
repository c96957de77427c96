import type { Generated } from 'kysely';
import type { PitchKind } from '../../lib/gears/gear.ts';
import type { AnyTool, CutterSteel, MachineKind } from '../../lib/tooling/tooling.ts';
import type { Flag } from './machines.ts';

/** owner '' is this shop. here 0: lent out or sent away. gone_on: no longer to be had; the row stays for the records that name it. */
export interface ToolTable {
  id: Generated<number>;
  kind: AnyTool['kind'];
  name: string;
  owner: string;
  here: Flag;
  lent_to: string;
  due_on: string | null;
  wear: 'sharp' | 'dull' | 'worn out';
  kept_in: string;
  notes: string;
  gone_on: string | null;
  rev: Generated<number>;
}

/** teeth_to null with teeth_from given: up to a rack. */
export interface CutterTable {
  tool_id: number;
  kind: Generated<'cutter'>;
  pitch_num: number | null;
  pitch_den: number | null;
  pitch_kind: PitchKind | null;
  angle_mas: number | null;
  number_text: string;
  teeth_from: number | null;
  teeth_to: number | null;
  hole_nm: number | null;
  hole_form: string | null;
  diameter_nm: number | null;
  diameter_form: string | null;
  width_nm: number | null;
  width_form: string | null;
  stamped_depth_nm: number | null;
  stamped_depth_form: string | null;
  steel: CutterSteel;
  exact_for: number | null;
}

export interface PlateCircleTable {
  tool_id: number;
  kind: Generated<'plate'>;
  side: number;
  holes: number;
}

/**
 * one_idler: which way the plate turns with a simple train and one idler, once tried. gears: change gears, a JSON list; reached: circles
 * that the back pin reaches, a JSON list, null while it has not been tried. dial_lines: once round the handwheel of a rotary table, null
 * without a divided dial; dial_near: 1 where the owner divides by it also what only comes near; dial_only: it takes no index plate.
 * lash: turns of the crank before the spindle moves, a ratio; null while not measured.
 */
export interface HeadTable {
  tool_id: number;
  kind: Generated<'head'>;
  turns: number;
  back_pin: Flag;
  one_idler: 'with' | 'against' | null;
  gears: Generated<string>;
  reached: string | null;
  dial_lines: number | null;
  dial_vernier: number | null;
  dial_near: Generated<Flag>;
  dial_only: Generated<Flag>;
  lash_num: number | null;
  lash_den: number | null;
}

export interface MandrelTable {
  tool_id: number;
  kind: Generated<'mandrel'>;
  bore_id: number;
  holding: string;
  run_out_nm: number | null;
  run_out_form: string | null;
}

export interface ArborTable {
  tool_id: number;
  kind: Generated<'arbor'>;
  diameter_nm: number;
  diameter_form: string;
}

export interface ChuckTable {
  tool_id: number;
  kind: Generated<'chuck'>;
  jaws: number;
  diameter_nm: number;
  diameter_form: string;
  run_out_nm: number | null;
  run_out_form: string | null;
  top_speed_rpm: number | null;
}

/** The four columns of a dial are all set or all null. lash: as the dial reads; null while not measured. */
export interface MachineTable {
  id: Generated<number>;
  name: string;
  kind: MachineKind;
  feeds_per: 'turn' | 'minute';
  cross_reads: 'travel' | 'diameter' | null;
  cross_unit: 'in' | 'mm' | null;
  cross_division_nm: number | null;
  cross_per_turn: number | null;
  depth_reads: 'travel' | 'diameter' | null;
  depth_unit: 'in' | 'mm' | null;
  depth_division_nm: number | null;
  depth_per_turn: number | null;
  screwed_nose: Flag;
  nose: string;
  notes: string;
  gone_on: string | null;
  rev: Generated<number>;
  quadrant: Generated<string>;
  cross_lash_nm: number | null;
  depth_lash_nm: number | null;
}

export interface MachineSpeedTable {
  machine_id: number;
  rpm: number;
}

export interface MachineFeedTable {
  machine_id: number;
  feed_nm: number;
  feed_form: string;
}
