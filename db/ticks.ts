import type { Executor } from './executor.ts';
import { ownRows } from './own-rows.ts';
import { untilChanged } from './until-changed.ts';

/** Ticks a tooth space off as cut; twice is once. */
export async function tick(db: Executor, operation_id: number, tooth: number, at: string): Promise<void> {
  await db
    .insertInto('tick')
    .values({ operation_id, tooth, at })
    .onConflict((on) => on.doNothing())
    .execute();
}

export async function untick(db: Executor, operationId: number, tooth: number): Promise<void> {
  await db.deleteFrom('tick').where('operation_id', '=', operationId).where('tooth', '=', tooth).execute();
}

/** The teeth ticked off at each of several operations, in order. */
export const ticksOfAll = untilChanged(
  async (db: Executor, operationIds: readonly number[]): Promise<(operationId: number) => number[]> => {
    if (operationIds.length === 0) return () => [];
    const rows = await db
      .selectFrom('tick')
      .select(['operation_id', 'tooth'])
      .where('operation_id', 'in', operationIds)
      .orderBy('tooth')
      .execute();
    const own = ownRows(rows);
    return (id) => own(id).map((row) => row.tooth);
  },
);

/** The same at one. */
export const ticksOf = async (db: Executor, operationId: number): Promise<number[]> => (await ticksOfAll(db, [operationId]))(operationId);
