import type { Generated } from 'kysely';
import type { WAYS } from '../../lib/routing/operation.ts';

/** SQLite has no truth values: 1 is yes. */
export type Flag = 0 | 1;

/** rev goes up by one at every saved change; a save names the rev that it started from. Rows without one are saved with their owner. */
export interface ProjectTable {
  id: Generated<number>;
  make: string;
  model: string;
  what: string;
  size: string;
  year: string;
  serial: string;
  /** Short stem of the marks of its parts: "H12". */
  mark: string;
  notes: string;
  opened_on: string;
  closed_on: string | null;
  rev: Generated<number>;
}

export interface AssemblyTable {
  id: Generated<number>;
  project_id: number;
  within_id: number | null;
  name: string;
  serial: string;
  notes: string;
  rev: Generated<number>;
}

/**
 * sets: what its wheels set on the machine. chart: threads or feeds as typed, screw: what equal wheels cut, quadrant: the boxes of its form as typed, JSON.
 * pattern: a Gear without its teeth as JSON, to fill in forms with; nothing is worked from it.
 */
export interface WheelSetTable {
  id: Generated<number>;
  assembly_id: number;
  name: string;
  sets: 'threads' | 'feeds' | 'tooth counts' | 'speeds' | 'other';
  pattern: string | null;
  notes: string;
  rev: Generated<number>;
  chart: Generated<string>;
  screw: Generated<string>;
  quadrant: Generated<string>;
}

/** A place on a machine that must be filled. item_id null: missing. */
export interface PartTable {
  id: Generated<number>;
  project_id: number;
  assembly_id: number;
  set_id: number | null;
  name: string;
  mark: string;
  gear_id: number | null;
  material: string;
  way: (typeof WAYS)[number] | null;
  why: string;
  item_id: number | null;
  notes: string;
  rev: Generated<number>;
}
