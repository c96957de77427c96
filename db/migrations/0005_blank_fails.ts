import { type Kysely, sql } from 'kysely';

/** What was said of the blank stood as the last step of the measuring operation: there it could not follow what was measured. */
const said = `key in ('sound', 'stock') and json_array_length(steps) > 1 and (${[
  'Cleans up.',
  'Only just cleans up.',
  'The old gaps stay.',
  'Will not do.',
  'Measure this first.',
  'Ring and hub.',
  'Will not carry a ring.',
  'Serves:',
  'Measure first:',
]
  .map((opening) => `json_extract(steps, '$[#-1]') like '${opening}%'`)
  .join(' or ')})`;

const statements = [
  `alter table routing add column blank_fails text not null default ''`,
  `alter table operation add column verdict text not null default ''`,
  `update operation set verdict = json_extract(steps, '$[#-1]'), steps = json_remove(steps, '$[#-1]') where ${said}`,
];

export const blankFails = {
  up: async (db: Kysely<unknown>): Promise<void> => {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
