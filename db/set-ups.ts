import type { SetUp } from '../lib/routing/operation.ts';
import { RecordNotFound } from './changes.ts';
import type { Executor, Row } from './executor.ts';

/** The row of a set-up, by its key; made when it is new. Its words become those of the last plan. */
export async function setUpId(db: Executor, { key, place, machineId, says }: SetUp): Promise<number> {
  const row = { key, place, machine_id: machineId, says };
  const saved = await db
    .insertInto('set_up')
    .values(row)
    .onConflict((on) => on.column('key').doUpdateSet({ place, machine_id: machineId, says }))
    .returning('id')
    .executeTakeFirstOrThrow();
  return saved.id;
}

const setUpOf = (row: Row<'set_up'>): SetUp => ({ key: row.key, place: row.place, machineId: row.machine_id, says: row.says });

export async function setUpsById(db: Executor, ids: readonly number[]): Promise<(id: number) => SetUp> {
  const rows = ids.length === 0 ? [] : await db.selectFrom('set_up').selectAll().where('id', 'in', ids).execute();
  const byId = new Map(rows.map((row) => [row.id, setUpOf(row)]));
  return (id) => {
    const found = byId.get(id);
    if (!found) throw new RecordNotFound('set_up', id);
    return found;
  };
}
