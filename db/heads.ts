import type { Executor, Row } from './executor.ts';

/** Which way the plate of a head turns with a simple train and one idler; null when it was never tried. */
export async function oneIdlerOf(db: Executor, toolId: number): Promise<Row<'head'>['one_idler']> {
  const row = await db.selectFrom('head').select('one_idler').where('tool_id', '=', toolId).executeTakeFirst();
  return row?.one_idler ?? null;
}
