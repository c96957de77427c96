import { type Kysely, sql } from 'kysely';

const statements = [
  `alter table head add column gears text not null default '[]' check (json_valid(gears))`,
  `alter table head add column reached text check (reached is null or json_valid(reached))`,
];

export const headGears = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
