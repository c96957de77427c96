import type { Executor } from './executor.ts';

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

/** The teeth ticked off, in order. */
export async function ticksOf(db: Executor, operationId: number): Promise<number[]> {
  const rows = await db.selectFrom('tick').select('tooth').where('operation_id', '=', operationId).orderBy('tooth').execute();
  return rows.map((row) => row.tooth);
}
