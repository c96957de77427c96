import { type Kysely, sql } from 'kysely';

/** A table that widens one kind of tool: the pair of keys keeps a plate's circles off a chuck. */
const widens = (kind: string): string => `kind text not null default '${kind}' check (kind = '${kind}')`;
const OF_TOOL = 'foreign key (tool_id, kind) references tool (id, kind) on delete cascade';

const dial = (name: string): string => `${name}_reads text check (${name}_reads in ('travel', 'diameter')),
    ${name}_unit text check (${name}_unit in ('in', 'mm')), ${name}_division_nm integer check (${name}_division_nm > 0),
    ${name}_per_turn integer check (${name}_per_turn > 0)`;
const wholeDial = (name: string): string => `check ((${name}_reads is null) = (${name}_unit is null)
      and (${name}_reads is null) = (${name}_division_nm is null) and (${name}_reads is null) = (${name}_per_turn is null))`;

const statements = [
  `create table tool (
    id integer primary key, kind text not null check (kind in ('cutter', 'plate', 'head', 'mandrel', 'arbor', 'chuck', 'other')),
    name text not null, owner text not null, here integer not null check (here in (0, 1)), lent_to text not null, due_on text,
    wear text not null check (wear in ('sharp', 'dull', 'worn out')), kept_in text not null, notes text not null, gone_on text,
    rev integer not null default 1, unique (id, kind)) strict`,
  `create index tool_kept on tool (kind, id) where gone_on is null`,
  `create table cutter (
    tool_id integer primary key, ${widens('cutter')},
    pitch_num integer check (pitch_num > 0), pitch_den integer check (pitch_den > 0), pitch_kind text check (pitch_kind in ('DP', 'module', 'CP')),
    angle_mas integer check (angle_mas > 0), number_text text not null,
    teeth_from integer check (teeth_from > 0), teeth_to integer check (teeth_to >= teeth_from),
    hole_nm integer check (hole_nm > 0), hole_form text, diameter_nm integer check (diameter_nm > 0), diameter_form text,
    width_nm integer check (width_nm > 0), width_form text, stamped_depth_nm integer check (stamped_depth_nm > 0), stamped_depth_form text,
    steel text not null check (steel in ('high-speed', 'carbon', 'carbide', 'unknown')), exact_for integer check (exact_for > 0),
    check ((pitch_num is null) = (pitch_den is null) and (pitch_num is null) = (pitch_kind is null)),
    check (teeth_to is null or teeth_from is not null), check ((hole_nm is null) = (hole_form is null)),
    check ((diameter_nm is null) = (diameter_form is null)), check ((width_nm is null) = (width_form is null)),
    check ((stamped_depth_nm is null) = (stamped_depth_form is null)), ${OF_TOOL}) strict`,
  `create table plate_circle (
    tool_id integer not null, ${widens('plate')}, side integer not null check (side > 0), holes integer not null check (holes > 1),
    primary key (tool_id, side, holes), ${OF_TOOL}) strict, without rowid`,
  `create table head (
    tool_id integer primary key, ${widens('head')}, turns integer not null check (turns > 0),
    back_pin integer not null check (back_pin in (0, 1)), one_idler text check (one_idler in ('with', 'against')), ${OF_TOOL}) strict`,
  `create table mandrel (
    tool_id integer primary key, ${widens('mandrel')}, bore_id integer not null unique references bore, holding text not null,
    run_out_nm integer check (run_out_nm >= 0), run_out_form text, check ((run_out_nm is null) = (run_out_form is null)), ${OF_TOOL}) strict`,
  `create table arbor (
    tool_id integer primary key, ${widens('arbor')}, diameter_nm integer not null check (diameter_nm > 0), diameter_form text not null,
    ${OF_TOOL}) strict`,
  `create table chuck (
    tool_id integer primary key, ${widens('chuck')}, jaws integer not null check (jaws > 0),
    diameter_nm integer not null check (diameter_nm > 0), diameter_form text not null,
    run_out_nm integer check (run_out_nm >= 0), run_out_form text, top_speed_rpm integer check (top_speed_rpm > 0),
    check ((run_out_nm is null) = (run_out_form is null)), ${OF_TOOL}) strict`,
  `create table machine (
    id integer primary key, name text not null, kind text not null check (kind in ('lathe', 'mill', 'drill', 'shaper', 'planer', 'other')),
    feeds_per text not null check (feeds_per in ('turn', 'minute')), ${dial('cross')}, ${dial('depth')},
    screwed_nose integer not null check (screwed_nose in (0, 1)), nose text not null, notes text not null, gone_on text,
    rev integer not null default 1, ${wholeDial('cross')}, ${wholeDial('depth')}) strict`,
  `create table machine_speed (
    machine_id integer not null references machine on delete cascade, rpm real not null check (rpm > 0),
    primary key (machine_id, rpm)) strict, without rowid`,
  `create table machine_feed (
    machine_id integer not null references machine on delete cascade, feed_nm integer not null check (feed_nm > 0), feed_form text not null,
    primary key (machine_id, feed_nm)) strict, without rowid`,
];

export const tooling = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
