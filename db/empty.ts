import { sql } from 'kysely';
import { type Executor, together } from './executor.ts';

/** The tables that hold rows of ours; not SQLite's, not the migrator's, not those behind the full text. */
async function tablesOf(db: Executor): Promise<string[]> {
  const { rows } = await sql<{ name: string }>`
    select name from pragma_table_list where schema = 'main' and type in ('table', 'virtual')
      and substr(name, 1, 7) not in ('sqlite_', 'kysely_')`.execute(db);
  return rows.map((row) => row.name);
}

/** Takes every row out of a shop's file; its tables stay. For the invented shop alone. */
export const emptyShop = (db: Executor): Promise<void> =>
  together(db, async (trx) => {
    await sql`pragma defer_foreign_keys = on`.execute(trx);
    for (const table of await tablesOf(trx)) await sql`delete from ${sql.table(table)}`.execute(trx);
  });
