import { sql } from 'kysely';
import type { Executor } from './executor.ts';

/** What waited for an operation waits for what that one waited for. */
export async function bridge(db: Executor, operationId: number): Promise<void> {
  await sql`insert or ignore into follows (operation_id, after_id)
    select later.operation_id, earlier.after_id from follows as later join follows as earlier on earlier.operation_id = later.after_id
    where later.after_id = ${operationId}`.execute(db);
}

/** Takes an operation out of the order; those before and after it stay in order. */
async function unlink(db: Executor, operationId: number): Promise<void> {
  await bridge(db, operationId);
  await db.deleteFrom('follows').where('operation_id', '=', operationId).execute();
  await db.deleteFrom('follows').where('after_id', '=', operationId).execute();
}

async function follow(db: Executor, operation_id: number | undefined, after_id: number | undefined): Promise<void> {
  if (operation_id === undefined || after_id === undefined) return;
  await db
    .insertInto('follows')
    .values({ operation_id, after_id })
    .onConflict((on) => on.doNothing())
    .execute();
}

/**
 * Puts an operation at a place of its routing (1 is the first) and numbers the routing anew. It then follows the one before it, and the
 * one after it follows it. Order by place and order by `follows` agree before and after, so no loop can arise.
 */
export async function putAt(db: Executor, routingId: number, operationId: number, place: number): Promise<void> {
  const rows = await db
    .selectFrom('operation')
    .select('id')
    .where('routing_id', '=', routingId)
    .orderBy('place_no')
    .orderBy('id')
    .execute();
  const others = rows.map((row) => row.id).filter((id) => id !== operationId);
  const at = Math.min(Math.max(place, 1), others.length + 1) - 1;
  const order = [...others.slice(0, at), operationId, ...others.slice(at)];
  await sql`update operation set place_no = placed.key + 1
    from json_each(${JSON.stringify(order)}) as placed where operation.id = placed.value`.execute(db);
  await unlink(db, operationId);
  await follow(db, operationId, order[at - 1]);
  await follow(db, order[at + 1], operationId);
}
