import { type Executor, together } from './executor.ts';

/** The address that a form with this mark was answered with, or null when it was never acted on. */
export async function answeredWith(db: Executor, mark: string): Promise<string | null> {
  const before = await db.selectFrom('sent').select('answered_with').where('mark', '=', mark).executeTakeFirst();
  return before?.answered_with ?? null;
}

/** Remembers that a form has been acted on; in the transaction that did what it asked. */
export async function rememberSent(db: Executor, mark: string, answered_with: string, at: string): Promise<void> {
  await db.insertInto('sent').values({ mark, answered_with, at }).execute();
}

/**
 * Acts on a form once. mark: the form's one-time mark. work: does everything in the transaction and gives the address to answer with.
 * Sent again, nothing is done and the same address is given. When work throws, nothing has happened and the form may be sent again.
 */
export const once = (db: Executor, mark: string, at: string, work: (trx: Executor) => Promise<string>): Promise<string> =>
  together(db, async (trx) => {
    const before = await answeredWith(trx, mark);
    if (before) return before;
    const answered = await work(trx);
    await rememberSent(trx, mark, answered, at);
    return answered;
  });

/** Drops marks from before that day; no form stays open so long. */
export async function forgetSent(db: Executor, before: string): Promise<void> {
  await db.deleteFrom('sent').where('at', '<', before).execute();
}
