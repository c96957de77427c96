import { type Kysely, sql } from 'kysely';

const statements = [
  `alter table wheel_set add column chart text not null default ''`,
  `alter table wheel_set add column screw text not null default ''`,
  `alter table wheel_set add column quadrant text not null default '{}' check (json_valid(quadrant))`,
  `alter table machine add column quadrant text not null default '{}' check (json_valid(quadrant))`,
];

/** What a set is to cut, on which screw, and the quadrant that its wheels stand on. */
export const chartsAndQuadrants = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
