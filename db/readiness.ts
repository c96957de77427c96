import { type SqlBool, sql } from 'kysely';
import type { Need } from '../lib/routing/operation.ts';
import type { Executor } from './executor.ts';
import { needsOf, type StoredNeed } from './needs.ts';
import { ownRows } from './own-rows.ts';

/** done and struck: as marked. held: kept back for a named operation. waiting: for what `waits` says. */
export type OperationState = 'done' | 'struck out' | 'held' | 'waiting' | 'ready';
/** A blank with a `why` is there, and will not do. */
export type Wait =
  | { readonly for: 'tool'; readonly needId: number; readonly need: Need }
  | { readonly for: 'blank'; readonly why?: string }
  | { readonly for: 'operation'; readonly operationId: number; readonly title: string }
  | { readonly for: 'held'; readonly operationId: number; readonly title: string; readonly partMark: string };

/** Each is true of a row of `operation` joined with its `routing`. */
export const stillToDo = sql<SqlBool>`operation.done_on is null and operation.struck_on is null`;
const isHeld = sql<SqlBool>`exists (select 1 from operation as other where other.id = operation.held_for_id
  and other.done_on is null and other.struck_on is null)`;
const lacksTool = sql<SqlBool>`exists (select 1 from need where need.operation_id = operation.id and need.tool_id is null)`;
const lacksBlank = sql<SqlBool>`routing.way in ('re-cut a spare', 'make from stock')
  and not exists (select 1 from blank where blank.routing_id = operation.routing_id and blank.released = 0)`;
/** After the blank was measured, whatever goes to the lathe, the mill or the oven with it; a mandrel may be proved for the next one. */
export const blankWillNotDo = sql<SqlBool>`routing.blank_fails <> '' and coalesce(operation.key, '') <> 'prove-mandrel'
  and (select place from set_up where set_up.id = operation.set_up_id) in ('lathe', 'mill', 'oven')
  and exists (select 1 from operation as measuring where measuring.routing_id = operation.routing_id
    and measuring.key in ('sound', 'stock') and measuring.place_no < operation.place_no)`;
const comesAfter = sql<SqlBool>`exists (select 1 from follows join operation as earlier on earlier.id = follows.after_id
  where follows.operation_id = operation.id and earlier.done_on is null and earlier.struck_on is null)`;

/** The state of a row of `operation` joined with its `routing`. */
export const stateOfRow = sql<OperationState>`case when operation.done_on is not null then 'done' when operation.struck_on is not null then 'struck out'
  when ${isHeld} then 'held' when ${lacksTool} or ${lacksBlank} or (${blankWillNotDo}) or ${comesAfter} then 'waiting' else 'ready' end`;
export const isReady = sql<SqlBool>`${stillToDo} and not (${isHeld}) and not (${lacksTool}) and not (${lacksBlank}) and not (${blankWillNotDo})
  and not (${comesAfter})`;

async function earlierOf(db: Executor, ids: readonly number[]): Promise<{ operation_id: number; id: number; title: string }[]> {
  return db
    .selectFrom('follows')
    .innerJoin('operation as earlier', 'earlier.id', 'follows.after_id')
    .select(['follows.operation_id', 'earlier.id', 'earlier.title'])
    .where('follows.operation_id', 'in', ids)
    .where('earlier.done_on', 'is', null)
    .where('earlier.struck_on', 'is', null)
    .orderBy('earlier.place_no')
    .execute();
}

const heldOf = (db: Executor, ids: readonly number[]) =>
  db
    .selectFrom('operation')
    .innerJoin('operation as other', 'other.id', 'operation.held_for_id')
    .innerJoin('routing', 'routing.id', 'other.routing_id')
    .innerJoin('part', 'part.id', 'routing.part_id')
    .select(['operation.id as operation_id', 'other.id', 'other.title', 'part.mark'])
    .where('operation.id', 'in', ids)
    .where('other.done_on', 'is', null)
    .where('other.struck_on', 'is', null)
    .execute();

/** What each of these operations waits for. A tool comes first: it can be got while something else is done. needs: theirs, where they are read already. */
export async function waitsOf(db: Executor, ids: readonly number[], needs?: readonly StoredNeed[]): Promise<(id: number) => Wait[]> {
  if (ids.length === 0) return () => [];
  const lacking = ownRows((needs ?? (await needsOf(db, ids))).filter(({ tool_id }) => tool_id === null));
  const [earlier, held] = [ownRows(await earlierOf(db, ids)), ownRows(await heldOf(db, ids))];
  const from = db.selectFrom('operation').innerJoin('routing', 'routing.id', 'operation.routing_id').select('operation.id');
  const blankless = new Set((await from.where('operation.id', 'in', ids).where(lacksBlank).execute()).map((row) => row.id));
  const failing = await from.select('routing.blank_fails').where('operation.id', 'in', ids).where(blankWillNotDo).execute();
  const fails = new Map(failing.map((row) => [row.id, row.blank_fails]));
  return (id) => [
    ...[fails.get(id)].flatMap((why) => (why ? [{ for: 'blank', why } as const] : [])),
    ...held(id).map((row): Wait => ({ for: 'held', operationId: row.id, title: row.title, partMark: row.mark })),
    ...lacking(id).map((one): Wait => ({ for: 'tool', needId: one.id, need: one.need })),
    ...(blankless.has(id) ? [{ for: 'blank' } as const] : []),
    ...earlier(id).map((row): Wait => ({ for: 'operation', operationId: row.id, title: row.title })),
  ];
}

type Standing = { readonly state: OperationState; readonly waits: readonly Wait[] };
/** The state of each of these operations and what it waits for; one that is done or struck out waits for nothing. */
export async function statesOf(db: Executor, ids: readonly number[], needs: readonly StoredNeed[]): Promise<(id: number) => Standing> {
  if (ids.length === 0) return () => ({ state: 'ready', waits: [] });
  const from = db.selectFrom('operation').innerJoin('routing', 'routing.id', 'operation.routing_id');
  const rows = await from
    .select(['operation.id', stateOfRow.as('state')])
    .where('operation.id', 'in', ids)
    .execute();
  const states = new Map(rows.map((row) => [row.id, row.state]));
  const waits = await waitsOf(db, ids, needs);
  return (id) => {
    const state = states.get(id) ?? 'ready';
    return { state, waits: state === 'held' || state === 'waiting' ? waits(id) : [] };
  };
}
