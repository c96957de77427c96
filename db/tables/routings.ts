import type { Generated } from 'kysely';
import type { PitchKind } from '../../lib/gears/gear.ts';
import type { Need, SetUp, Way } from '../../lib/routing/operation.ts';
import type { Flag } from './machines.ts';

/** How one part is being got. closed_on null: open; a part has at most one open. stale 1: lib would say something else by now. blank_fails: why its blank will not do. */
export interface RoutingTable {
  id: Generated<number>;
  part_id: number;
  way: Way;
  opened_on: string;
  closed_on: string | null;
  stale: Generated<Flag>;
  notes: string;
  rev: Generated<number>;
  blank_fails: Generated<string>;
}

/** An item promised to a routing. takes_nm null: the whole item; else so much of a bar. */
export interface BlankTable {
  routing_id: number;
  item_id: number;
  role: 'whole' | 'hub' | 'ring';
  takes_nm: number | null;
  takes_form: string | null;
  released: Generated<Flag>;
}

/** Operations with one set-up key share a set-up. */
export interface SetUpTable {
  id: Generated<number>;
  key: string;
  place: SetUp['place'];
  machine_id: number | null;
  says: string;
}

/** key null: added by hand. steps, measures, cautions: JSON, as lib planned them. struck_on: struck out by the owner, may come back. verdict: of its blank. */
export interface OperationTable {
  id: Generated<number>;
  routing_id: number;
  place_no: number;
  key: string | null;
  title: string;
  must: Flag;
  set_up_id: number;
  steps: string;
  measures: string;
  cautions: string;
  minutes_planned: number;
  minutes_taken: number | null;
  done_on: string | null;
  struck_on: string | null;
  held_for_id: number | null;
  notes: string;
  rev: Generated<number>;
  verdict: Generated<string>;
}

export interface FollowsTable {
  operation_id: number;
  after_id: number;
}

/** shown = measured, else typed, else computed. The numbers are whole, in the units beside them (see amounts.ts). printed: the Figure as JSON. */
export interface FigureTable {
  operation_id: number;
  key: string;
  place_no: number;
  unit: string;
  computed: number | null;
  typed: number | null;
  typed_unit: string | null;
  typed_words: string | null;
  measured: number | null;
  low: number | null;
  high: number | null;
  form: string;
  printed: string;
}

/** A description that any fitting tool meets. tool_id null: waited for. */
export interface NeedTable {
  id: Generated<number>;
  operation_id: number;
  kind: Need['kind'];
  pitch_num: number | null;
  pitch_den: number | null;
  pitch_kind: PitchKind | null;
  angle_mas: number | null;
  teeth: number | null;
  bore_id: number | null;
  turns: number | null;
  holes: number | null;
  diameter_nm: number | null;
  jaws: number | null;
  name: string | null;
  tool_id: number | null;
}

/** One tooth space cut and ticked off. */
export interface TickTable {
  operation_id: number;
  tooth: number;
  at: string;
}

/** Where work was left: one to a routing. */
export interface BookmarkTable {
  routing_id: number;
  operation_id: number | null;
  note: string;
  at: string;
}
