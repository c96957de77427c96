import { RecordNotFound } from './changes.ts';
import type { Executor } from './executor.ts';
import { untilChanged } from './until-changed.ts';

/** The owner's defaults by key. A key that was never set is not there; the reader knows the default. */
export const settings = untilChanged(async (db: Executor): Promise<Readonly<Record<string, string>>> => {
  const rows = await db.selectFrom('setting').select(['key', 'value']).orderBy('key').execute();
  return Object.fromEntries(rows.map((row) => [row.key, row.value]));
});

/** The last one stands: a default is one small thing, and its page shows what stands. */
export async function setSetting(db: Executor, key: string, value: string): Promise<void> {
  if (key === '') throw new RecordNotFound('setting', key);
  await db
    .insertInto('setting')
    .values({ key, value })
    .onConflict((on) => on.column('key').doUpdateSet((eb) => ({ value, rev: eb('setting.rev', '+', 1) })))
    .execute();
}
