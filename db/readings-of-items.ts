import type { Executor } from './executor.ts';
import { asRead, type Reading } from './readings.ts';
import { untilChanged } from './until-changed.ts';

/** The readings on many things at once, by thing, each in the order in which they were taken; 5,000 at most. */
export const readingsOfItems = untilChanged(
  async (db: Executor, itemIds: readonly number[]): Promise<ReadonlyMap<number, readonly Reading[]>> => {
    if (itemIds.length === 0) return new Map();
    const rows = await db.selectFrom('reading').selectAll().where('item_id', 'in', itemIds).orderBy('id').limit(5000).execute();
    return new Map(itemIds.map((id) => [id, rows.filter((row) => row.item_id === id).map(asRead)]));
  },
);
