import type { Insertable, Kysely, Selectable } from 'kysely';
import type { Schema } from './schema.ts';

/** The shop, or a transaction in it. Inside a transaction always hand on the transaction: there is one connection, and the shop would wait for itself. */
export type Executor = Kysely<Schema>;

export type Row<T extends keyof Schema> = Selectable<Schema[T]>;
export type NewRow<T extends keyof Schema> = Insertable<Schema[T]>;

/** All of it or nothing: in the transaction that is open, else in one of its own. */
export const together = <T>(db: Executor, work: (trx: Executor) => Promise<T>): Promise<T> =>
  db.isTransaction ? work(db) : db.transaction().execute(work);
