import { type Kysely, sql } from 'kysely';

// item.made_id and reading.operation_id point to tables of the next migrations: SQLite looks for them when a row is written.
const statements = [
  `create table project (
    id integer primary key, make text not null, model text not null, what text not null, size text not null, year text not null,
    serial text not null, mark text not null unique check (mark <> ''), notes text not null,
    opened_on text not null, closed_on text, rev integer not null default 1) strict`,
  `create table assembly (
    id integer primary key, project_id integer not null references project, within_id integer references assembly check (within_id <> id),
    name text not null, serial text not null, notes text not null, rev integer not null default 1) strict`,
  `create index assembly_of_project on assembly (project_id, id)`,
  `create index assembly_within on assembly (within_id)`,
  `create table wheel_set (
    id integer primary key, assembly_id integer not null references assembly, name text not null,
    sets text not null check (sets in ('threads', 'feeds', 'tooth counts', 'speeds', 'other')),
    pattern text check (pattern is null or json_valid(pattern)), notes text not null, rev integer not null default 1) strict`,
  `create index wheel_set_of_assembly on wheel_set (assembly_id, id)`,
  `create table bore (
    id integer primary key, form text not null check (form in ('plain', 'keyed', 'splined')),
    diameter_nm integer not null check (diameter_nm > 0), diameter_form text not null,
    minor_nm integer check (minor_nm > 0), minor_form text, splines integer check (splines > 0),
    key_width_nm integer check (key_width_nm > 0), key_width_form text, key_depth_nm integer check (key_depth_nm > 0), key_depth_form text,
    check ((minor_nm is null) = (minor_form is null)),
    check ((key_width_nm is null) = (key_width_form is null)),
    check ((key_depth_nm is null) = (key_depth_form is null)),
    check ((form = 'splined') = (minor_nm is not null)),
    check ((form = 'splined') = (splines is not null)),
    check ((form = 'plain') = (key_width_nm is null)),
    check ((form = 'keyed') = (key_depth_nm is not null))) strict`,
  `create table gear (
    id integer primary key, teeth integer not null check (teeth > 0),
    pitch_num integer not null check (pitch_num > 0), pitch_den integer not null check (pitch_den > 0),
    pitch_kind text not null check (pitch_kind in ('DP', 'module', 'CP')),
    system_name text not null, system_angle_mas integer not null check (system_angle_mas > 0),
    addendum real not null check (addendum > 0), dedendum real not null check (dedendum > 0), extra_nm integer not null,
    helix_angle_mas integer check (helix_angle_mas > 0), helix_hand text check (helix_hand in ('right', 'left')),
    face_nm integer check (face_nm > 0), face_form text, bore_id integer unique references bore,
    body_known integer not null check (body_known in (0, 1)),
    check ((helix_angle_mas is null) = (helix_hand is null)), check ((face_nm is null) = (face_form is null))) strict`,
  `create table recess (
    gear_id integer not null references gear on delete cascade, place_no integer not null,
    side text not null check (side in ('marked', 'other', 'both')),
    inner_nm integer not null check (inner_nm >= 0), inner_form text not null,
    outer_nm integer not null check (outer_nm > inner_nm), outer_form text not null,
    primary key (gear_id, place_no)) strict, without rowid`,
  `create table opening (
    gear_id integer not null references gear on delete cascade, place_no integer not null,
    what text not null check (what in ('holes', 'spokes')),
    inner_nm integer not null check (inner_nm >= 0), inner_form text not null,
    outer_nm integer not null check (outer_nm > inner_nm), outer_form text not null,
    primary key (gear_id, place_no)) strict, without rowid`,
  `create table item (
    id integer primary key, kind text not null check (kind in ('wheel', 'stock', 'casting', 'other')), name text not null,
    gear_id integer unique references gear, set_id integer references wheel_set, kept_in text not null,
    from_project_id integer references project, trust text not null check (trust in ('original', 'replacement', 'unknown')),
    condition text not null, hardness text not null, material text not null,
    length_nm integer check (length_nm >= 0), length_form text, diameter_nm integer check (diameter_nm > 0), diameter_form text,
    made_id integer unique references made, added_on text not null, gone_on text,
    gone_why text check (gone_why in ('cut', 'scrap', 'used up', 'sold', 'given away', 'lost')),
    notes text not null, rev integer not null default 1,
    check ((gone_on is null) = (gone_why is null)), check ((kind = 'wheel') = (gear_id is not null)),
    check ((length_nm is null) = (length_form is null)), check ((diameter_nm is null) = (diameter_form is null))) strict`,
  `create index item_of_set on item (set_id, id)`,
  `create index item_kept on item (kind, id) where gone_on is null`,
  `create index item_of_kind on item (kind, id)`,
  `create table part (
    id integer primary key, project_id integer not null references project, assembly_id integer not null references assembly,
    set_id integer references wheel_set, name text not null, mark text not null unique check (mark <> ''),
    gear_id integer unique references gear, material text not null, way text, why text not null,
    item_id integer references item, notes text not null, rev integer not null default 1) strict`,
  `create index part_of_project on part (project_id, id)`,
  `create index part_of_assembly on part (assembly_id, id)`,
  `create index part_of_set on part (set_id, id)`,
  // Not a plain unique column: missing parts would then be looked up by it, all of the shop's at once.
  `create unique index one_place on part (item_id) where item_id is not null`,
  `create index part_missing on part (project_id, id) where item_id is null`,
  `create table reading (
    id integer primary key, item_id integer references item, operation_id integer references operation,
    what text not null check (what <> ''), over_k integer check (over_k > 0), pin_nm integer check (pin_nm > 0), place_no integer,
    value integer not null, unit text not null, form text not null, error integer check (error >= 0),
    read_on text not null, instrument text not null,
    check ((item_id is null) <> (operation_id is null))) strict`,
  `create index reading_of_item on reading (item_id, id)`,
  `create index reading_of_operation on reading (operation_id, id)`,
];

export const machinesAndParts = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
