import { type Kysely, sql } from 'kysely';

const statements = [
  `alter table head add column dial_lines integer check (dial_lines > 1)`,
  `alter table head add column dial_vernier integer check (dial_vernier > 0 and (dial_vernier is null) = (dial_lines is null))`,
  `alter table head add column dial_near integer not null default 0 check (dial_near in (0, 1))`,
  `alter table head add column dial_only integer not null default 0 check (dial_only in (0, 1))`,
  `alter table head add column lash_num integer check (lash_num >= 0)`,
  `alter table head add column lash_den integer check (lash_den > 0 and (lash_den is null) = (lash_num is null))`,
  ...['cross', 'depth'].map(
    (dial) =>
      `alter table machine add column ${dial}_lash_nm integer check (${dial}_lash_nm is null or (${dial}_lash_nm >= 0 and ${dial}_division_nm is not null))`,
  ),
  `create index operation_plate_done on operation (done_on, id) where key = 'plate' and done_on is not null`,
];

/** Rotary tables that are divided by the lines of their handwheel; the lash of crank or handwheel before the spindle moves, and of a feed screw’s dial. */
export const tableDialsAndLash = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
