import { type Executor, type Row, together } from './executor.ts';
import { type Meets, settleNeeds } from './needs.ts';
import { isReady, stillToDo } from './readiness.ts';
import { refreshAllStale, strikeAllOffered } from './replan.ts';
import { untilChanged } from './until-changed.ts';

/** What became of the work after the tools had changed: how many operations are ready that were not, and the other way round. */
export type Settled = { readonly ready: number; readonly waiting: number };

const open = (db: Executor) =>
  db.selectFrom('operation').innerJoin('routing', 'routing.id', 'operation.routing_id').where('routing.closed_on', 'is', null);

async function readyIds(db: Executor): Promise<ReadonlySet<number>> {
  const rows = await open(db).select('operation.id').where(isReady).execute();
  return new Set(rows.map((row) => row.id));
}

/** Asks anew which tool meets which need and which figures are out of date, where a tool was saved, and counts what that changed. */
export const settleAndCount = (db: Executor, meets: Meets, now: string): Promise<Settled> =>
  together(db, async (trx) => {
    await strikeAllOffered(trx, now);
    const before = await readyIds(trx);
    await settleNeeds(trx, meets);
    await refreshAllStale(trx);
    const after = await readyIds(trx);
    const only = (some: ReadonlySet<number>, others: ReadonlySet<number>) => [...some].filter((id) => !others.has(id)).length;
    return { ready: only(after, before), waiting: only(before, after) };
  });

export type ToolUse = Pick<Row<'operation'>, 'id' | 'title' | 'routing_id'> & {
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
};

/** The operations still to be done that count on a tool, oldest first; 500 at most. */
export const workThatWants = untilChanged(
  (db: Executor, toolId: number): Promise<ToolUse[]> =>
    open(db)
      .innerJoin('part', 'part.id', 'routing.part_id')
      .innerJoin('need', 'need.operation_id', 'operation.id')
      .select(['operation.id', 'operation.title', 'operation.routing_id', 'part.id as part_id'])
      .select(['part.mark as part_mark', 'part.name as part_name'])
      .where('need.tool_id', '=', toolId)
      .where(stillToDo)
      .distinct()
      .orderBy('operation.id')
      .limit(500)
      .execute(),
);
