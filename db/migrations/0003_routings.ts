import { type Kysely, sql } from 'kysely';

const statements = [
  `create table routing (
    id integer primary key, part_id integer not null references part, way text not null check (way <> ''),
    opened_on text not null, closed_on text, stale integer not null default 0 check (stale in (0, 1)), notes text not null,
    rev integer not null default 1) strict`,
  `create unique index one_open_routing on routing (part_id) where closed_on is null`,
  `create index routing_open on routing (id) where closed_on is null`,
  `create index routing_of_part on routing (part_id, id)`,
  `create table blank (
    routing_id integer not null references routing, item_id integer not null references item,
    role text not null check (role in ('whole', 'hub', 'ring')), takes_nm integer check (takes_nm > 0), takes_form text,
    released integer not null default 0 check (released in (0, 1)),
    primary key (routing_id, item_id), check ((takes_nm is null) = (takes_form is null))) strict, without rowid`,
  `create unique index one_promise on blank (item_id) where takes_nm is null and released = 0`,
  `create index blank_of_item on blank (item_id)`,
  `create table set_up (
    id integer primary key, key text not null unique, place text not null check (place in ('bench', 'lathe', 'mill', 'oven', 'machine under repair')),
    machine_id integer references machine, says text not null) strict`,
  `create table operation (
    id integer primary key, routing_id integer not null references routing, place_no integer not null, key text, title text not null,
    must integer not null check (must in (0, 1)), set_up_id integer not null references set_up,
    steps text not null check (json_valid(steps)), measures text not null check (json_valid(measures)),
    cautions text not null check (json_valid(cautions)), minutes_planned integer not null check (minutes_planned >= 0),
    minutes_taken integer check (minutes_taken >= 0), done_on text, struck_on text,
    held_for_id integer references operation check (held_for_id <> id), notes text not null, rev integer not null default 1,
    unique (routing_id, key)) strict`,
  `create index operation_of_routing on operation (routing_id, place_no)`,
  `create index operation_to_do_by_set_up on operation (set_up_id, id) where done_on is null and struck_on is null`,
  `create index operation_held_for on operation (held_for_id) where held_for_id is not null`,
  `create table follows (
    operation_id integer not null references operation on delete cascade,
    after_id integer not null references operation on delete cascade check (after_id <> operation_id),
    primary key (operation_id, after_id)) strict, without rowid`,
  `create index follows_after on follows (after_id)`,
  `create table figure (
    operation_id integer not null references operation on delete cascade, key text not null, place_no integer not null, unit text not null,
    computed integer, typed integer, typed_unit text, typed_words text, measured integer, low integer, high integer,
    form text not null, printed text not null check (json_valid(printed)), primary key (operation_id, key),
    check ((typed is null and typed_words is null) = (typed_unit is null)), check (typed is null or typed_words is null)) strict, without rowid`,
  `create table need (
    id integer primary key, operation_id integer not null references operation on delete cascade,
    kind text not null check (kind in ('cutter', 'mandrel', 'head', 'circle', 'arbor', 'chuck', 'other')),
    pitch_num integer, pitch_den integer, pitch_kind text check (pitch_kind in ('DP', 'module', 'CP')), angle_mas integer, teeth integer,
    bore_id integer unique references bore, turns integer, holes integer, diameter_nm integer, jaws integer, name text,
    tool_id integer references tool,
    check ((kind = 'cutter') = (pitch_num is not null and pitch_den is not null and pitch_kind is not null and angle_mas is not null and teeth is not null)),
    check ((kind = 'mandrel') = (bore_id is not null)), check ((kind = 'head') = (turns is not null)),
    check ((kind = 'circle') = (holes is not null)), check ((kind = 'arbor') = (diameter_nm is not null)),
    check ((kind = 'chuck') = (jaws is not null)), check ((kind = 'other') = (name is not null))) strict`,
  `create index need_of_operation on need (operation_id)`,
  `create index need_waiting on need (kind, id) where tool_id is null`,
  `create index need_met_by on need (tool_id) where tool_id is not null`,
  `create table tick (
    operation_id integer not null references operation on delete cascade, tooth integer not null check (tooth > 0), at text not null,
    primary key (operation_id, tooth)) strict, without rowid`,
  `create table bookmark (
    routing_id integer primary key references routing, operation_id integer references operation on delete set null,
    note text not null, at text not null) strict`,
  `create index bookmark_newest on bookmark (at, routing_id)`,
];

export const routings = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
