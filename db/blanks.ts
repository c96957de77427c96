import type { Length } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';
import { rowOf } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { formText, usualForm } from './forms.ts';
import { ItemTaken } from './parts.ts';
import { isUnique } from './problems.ts';
import { untilChanged } from './until-changed.ts';

/** takes null: the whole item; else so much of a bar. */
export type NewBlank = {
  readonly itemId: number;
  readonly role: Row<'blank'>['role'];
  readonly takes: { readonly length: Length; readonly form?: LengthForm } | null;
};

/** Promises of an item that are still to be kept: not released, of open routings. */
const openPromises = (db: Executor, itemId: number) =>
  db
    .selectFrom('blank')
    .innerJoin('routing', 'routing.id', 'blank.routing_id')
    .where('blank.item_id', '=', itemId)
    .where('blank.released', '=', 0)
    .where('routing.closed_on', 'is', null)
    .select(['blank.routing_id', 'blank.takes_nm']);

/** Throws ItemTaken when the item is gone, fitted, promised as a whole, or too short for what is asked. */
async function refuseTaken(db: Executor, routingId: number, { itemId, takes }: NewBlank): Promise<void> {
  const item = await rowOf(db, 'item', itemId);
  const holder = await db.selectFrom('part').select('id').where('item_id', '=', itemId).executeTakeFirst();
  if (item.gone_on !== null || holder) throw new ItemTaken(itemId);
  const others = (await openPromises(db, itemId).execute()).filter((row) => row.routing_id !== routingId);
  if (takes ? others.some((row) => row.takes_nm === null) : others.some((row) => row.takes_nm !== null)) throw new ItemTaken(itemId);
  const promised = others.reduce((sum, row) => sum + (row.takes_nm ?? 0), 0);
  if (takes && (item.length_nm ?? 0) - promised < takes.length) throw new ItemTaken(itemId);
}

/** Promises an item to a routing. A second promise of the same whole item fails by the table's own index. Throws ItemTaken. */
export const promise = (db: Executor, routingId: number, blank: NewBlank): Promise<void> =>
  together(db, async (trx) => {
    await refuseTaken(trx, routingId, blank);
    const takes_form = blank.takes ? formText(blank.takes.form ?? usualForm('in')) : null;
    const claim = { role: blank.role, takes_nm: blank.takes?.length ?? null, takes_form, released: 0 as const };
    try {
      await trx
        .insertInto('blank')
        .values({ routing_id: routingId, item_id: blank.itemId, ...claim })
        .onConflict((on) => on.columns(['routing_id', 'item_id']).doUpdateSet(claim))
        .execute();
    } catch (error) {
      throw isUnique(error, 'blank.item_id') ? new ItemTaken(blank.itemId) : error;
    }
  });

/** Gives a promised item back: it is a spare again. */
export async function release(db: Executor, routingId: number, itemId: number): Promise<void> {
  await db.updateTable('blank').set({ released: 1 }).where('routing_id', '=', routingId).where('item_id', '=', itemId).execute();
}

export const blanksOf = untilChanged(
  (db: Executor, routingId: number): Promise<Row<'blank'>[]> =>
    db.selectFrom('blank').selectAll().where('routing_id', '=', routingId).where('released', '=', 0).orderBy('role').execute(),
);
