import type { Executor } from './executor.ts';

const DAYS_KEPT = 90;
const DAY_MS = 86_400_000;

/** The address that a form with this mark was answered with, or null when it was never acted on. */
export async function answeredWith(db: Executor, mark: string): Promise<string | null> {
  const before = await db.selectFrom('sent').select('answered_with').where('mark', '=', mark).executeTakeFirst();
  return before?.answered_with ?? null;
}

/**
 * Remembers that a form has been acted on; in the transaction that did what it asked. Marks of ninety days ago go: no form stays open so
 * long. at: ISO text in UTC.
 */
export async function rememberSent(db: Executor, mark: string, answered_with: string, at: string): Promise<void> {
  const before = new Date(Date.parse(at) - DAYS_KEPT * DAY_MS).toISOString();
  await db.deleteFrom('sent').where('at', '<', before).execute();
  await db.insertInto('sent').values({ mark, answered_with, at }).execute();
}
