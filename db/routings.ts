import type { PlannedOperation, Way } from '../lib/routing/operation.ts';
import { type NewBlank, promise } from './blanks.ts';
import { rowOf, saveRow } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { addPlanned } from './operations.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { RoutingOpen } from './parts.ts';
import { isUnique } from './problems.ts';
import { untilChanged } from './until-changed.ts';

export type NewRouting = {
  readonly partId: number;
  readonly way: Way;
  readonly openedOn: string;
  readonly blanks: readonly NewBlank[];
  readonly operations: readonly PlannedOperation[];
  readonly notes?: string;
};

async function openRow(db: Executor, { partId, way, openedOn, notes = '' }: NewRouting): Promise<number> {
  try {
    const row = { part_id: partId, way, opened_on: openedOn, notes };
    return (await db.insertInto('routing').values(row).returning('id').executeTakeFirstOrThrow()).id;
  } catch (error) {
    throw isUnique(error, 'routing.part_id') ? new RoutingOpen(partId) : error;
  }
}

/** An operation may only follow one planned before it: so there are no loops. */
async function addOperations(db: Executor, routingId: number, operations: readonly PlannedOperation[]): Promise<void> {
  const ids = new Map<string, number>();
  for (const [at, planned] of operations.entries()) {
    const operation_id = await addPlanned(db, routingId, at + 1, planned);
    for (const key of new Set(planned.after)) {
      const after_id = ids.get(key);
      if (after_id === undefined) throw new Error(`operation ${planned.key} follows ${key}, which is not planned before it`);
      await db.insertInto('follows').values({ operation_id, after_id }).execute();
    }
    ids.set(planned.key, operation_id);
  }
}

/**
 * Opens a routing with all its operations and promises its blanks, all or nothing; gives its id. The part's way becomes this one.
 * Needs are not yet settled: call settleNeeds in the same transaction. Throws RecordNotFound, RoutingOpen, ItemTaken.
 */
export const openRouting = (db: Executor, routing: NewRouting): Promise<number> =>
  together(db, async (trx) => {
    const part = await rowOf(trx, 'part', routing.partId);
    const id = await openRow(trx, routing);
    for (const blank of routing.blanks) await promise(trx, id, blank);
    await addOperations(trx, id, routing.operations);
    if (part.way !== routing.way) await saveRow(trx, 'part', part.id, part.rev, { way: routing.way });
    return id;
  });

/** Throws RecordNotFound. */
export const routing = (db: Executor, id: number): Promise<Row<'routing'>> => rowOf(db, 'routing', id);

export const openRoutingOf = untilChanged(async (db: Executor, partId: number): Promise<Row<'routing'> | null> => {
  const found = db.selectFrom('routing').selectAll().where('part_id', '=', partId).where('closed_on', 'is', null);
  return (await found.executeTakeFirst()) ?? null;
});

/** All routings that a part has had, newest first. */
export const routingsOfPart = untilChanged(async (db: Executor, partId: number, ask: PageAsk): Promise<Page<Row<'routing'>>> => {
  const query = db.selectFrom('routing').selectAll().where('part_id', '=', partId).where('id', '<', startOf(ask));
  return pageOf(
    await query
      .orderBy('id', 'desc')
      .limit(ask.size + 1)
      .execute(),
    ask,
    (row) => row.id,
  );
});

/** Gives a routing up: it is closed, its blanks are spares again. Throws RecordNotFound, RecordChanged. */
export const closeRouting = (db: Executor, id: number, rev: number, on: string): Promise<Row<'routing'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'routing', id, rev, { closed_on: on });
    await trx.updateTable('blank').set({ released: 1 }).where('routing_id', '=', id).execute();
    await trx.deleteFrom('bookmark').where('routing_id', '=', id).execute();
    return row;
  });

/** Sets the flag that lists read: whether lib would say something else by now than what is printed. Needs no rev: it is worked out. */
export async function setStale(db: Executor, id: number, stale: boolean): Promise<void> {
  await db
    .updateTable('routing')
    .set({ stale: stale ? 1 : 0 })
    .where('id', '=', id)
    .execute();
}

/** Why the blank of a routing will not do, '' while nothing stands against it. Needs no rev: it is worked out. */
export async function setBlankFails(db: Executor, id: number, blank_fails: string): Promise<void> {
  await db.updateTable('routing').set({ blank_fails }).where('id', '=', id).where('blank_fails', '<>', blank_fails).execute();
}
