import { type Kysely, sql } from 'kysely';

const TOOTH = ['pitch_num', 'pitch_den', 'pitch_kind', 'system_name', 'system_angle_mas', 'addendum', 'dedendum', 'extra_nm'] as const;
const anew = (name: string): string => `${name}_anew`;
/** All of the tooth is known, or nothing of it; a helix is one of a known pitch. */
const together = `(pitch_num_anew is not null or helix_angle_mas is null) and ${TOOTH.slice(0, -1)
  .map((name) => `(${anew(name)} is null) = (extra_nm_anew is null)`)
  .join(' and ')}`;

const statements = [
  // Columns that may be empty take the place of those that may not: a table that others point to is not made anew.
  `alter table gear add column pitch_num_anew integer check (pitch_num_anew > 0)`,
  `alter table gear add column pitch_den_anew integer check (pitch_den_anew > 0)`,
  `alter table gear add column pitch_kind_anew text check (pitch_kind_anew in ('DP', 'module', 'CP'))`,
  `alter table gear add column system_name_anew text`,
  `alter table gear add column system_angle_mas_anew integer check (system_angle_mas_anew > 0)`,
  `alter table gear add column addendum_anew real check (addendum_anew > 0)`,
  `alter table gear add column dedendum_anew real check (dedendum_anew > 0)`,
  `alter table gear add column extra_nm_anew integer`,
  `update gear set ${TOOTH.map((name) => `${anew(name)} = ${name}`).join(', ')}`,
  `alter table gear add column found_by text not null default '' check (${together})`,
  ...TOOTH.flatMap((name) => [`alter table gear drop column ${name}`, `alter table gear rename column ${anew(name)} to ${name}`]),
  // A reading is of a thing, of an operation, or of a part: of the wheel that somebody holds for it.
  `create table reading_anew (
    id integer primary key, item_id integer references item, operation_id integer references operation, part_id integer references part,
    what text not null check (what <> ''), over_k integer check (over_k > 0), pin_nm integer check (pin_nm > 0), place_no integer,
    mate_teeth integer check (mate_teeth > 0),
    value integer not null, unit text not null, form text not null, error integer check (error >= 0),
    read_on text not null, instrument text not null,
    check ((item_id is not null) + (operation_id is not null) + (part_id is not null) = 1)) strict`,
  `insert into reading_anew (id, item_id, operation_id, what, over_k, pin_nm, place_no, value, unit, form, error, read_on, instrument)
    select id, item_id, operation_id, what, over_k, pin_nm, place_no, value, unit, form, error, read_on, instrument from reading`,
  `drop table reading`,
  `alter table reading_anew rename to reading`,
  `create index reading_of_item on reading (item_id, id)`,
  `create index reading_of_operation on reading (operation_id, id)`,
  `create index reading_of_part on reading (part_id, id)`,
];

/** A wheel whose teeth are counted and whose pitch nobody knows yet; how a pitch was found; readings noted on the part. */
export const unknownGears = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
