import { sql } from 'kysely';
import type { SetUp } from '../lib/routing/operation.ts';
import type { Executor, Row } from './executor.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { isReady, type OperationState, stateOfRow, stillToDo, type Wait, waitsOf } from './readiness.ts';
import { setUpsById } from './set-ups.ts';
import { untilChanged } from './until-changed.ts';

/** An operation in a list over the whole shop. */
export type WorkLine = {
  readonly operation_id: number;
  readonly title: string;
  readonly place_no: number;
  readonly minutes_planned: number;
  readonly state: OperationState;
  readonly set_up_id: number;
  readonly set_up_says: string;
  readonly set_up_place: SetUp['place'];
  readonly routing_id: number;
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
  readonly project_id: number;
};

/** In SQLite a cross join keeps its order: from the few open routings to their operations, never through all operations of the shop. */
const work = (db: Executor) =>
  db
    .selectFrom('routing')
    .crossJoin('operation')
    .innerJoin('part', 'part.id', 'routing.part_id')
    .innerJoin('set_up', 'set_up.id', 'operation.set_up_id')
    .select(['operation.id as operation_id', 'operation.title', 'operation.place_no', 'operation.minutes_planned'])
    .select(['operation.set_up_id', 'set_up.says as set_up_says', 'set_up.place as set_up_place', 'operation.routing_id'])
    .select(['part.id as part_id', 'part.mark as part_mark', 'part.name as part_name', 'part.project_id', stateOfRow.as('state')])
    .whereRef('operation.routing_id', '=', 'routing.id')
    .where('routing.closed_on', 'is', null);

/** What can be done today: operations that wait for nothing, by routing, the newest routing first. */
export const readyWork = untilChanged(
  (db: Executor, most: number): Promise<WorkLine[]> =>
    work(db).where(isReady).orderBy('routing.id', 'desc').orderBy('operation.place_no').limit(most).execute(),
);

/** A part that is being made. next: its first operation still to be done; waits: what that one waits for. */
export type OpenWork = {
  readonly routing_id: number;
  readonly rev: number;
  readonly way: Row<'routing'>['way'];
  readonly opened_on: string;
  readonly stale: 0 | 1;
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
  readonly project_id: number;
  readonly done: number;
  readonly operations: number;
  readonly ready: number;
  readonly next: { readonly operation_id: number; readonly title: string; readonly state: OperationState } | null;
  readonly waits: readonly (Wait & { readonly at: string })[];
};

async function operationsOfRoutings(db: Executor, ids: readonly number[]) {
  if (ids.length === 0) return [];
  return db
    .selectFrom('routing')
    .innerJoin('operation', 'operation.routing_id', 'routing.id')
    .select(['operation.id as operation_id', 'operation.routing_id', 'operation.title', stateOfRow.as('state')])
    .where('routing.id', 'in', ids)
    .orderBy('operation.routing_id')
    .orderBy('operation.place_no')
    .execute();
}
type Step = Awaited<ReturnType<typeof operationsOfRoutings>>[number];

/** Every tool, blank or hold that a routing lacks, first needed first; waiting for an operation of its own goes without saying. */
function outsideWaits(steps: readonly Step[], waits: (id: number) => Wait[]): (Wait & { at: string })[] {
  const blank = { said: false };
  return steps.flatMap((step) =>
    waits(step.operation_id).flatMap((wait) => {
      if (wait.for === 'operation' || (wait.for === 'blank' && blank.said)) return [];
      if (wait.for === 'blank') blank.said = true;
      return [{ ...wait, at: step.title }];
    }),
  );
}

function standing(
  steps: readonly Step[],
  waits: (id: number) => Wait[],
): Pick<OpenWork, 'done' | 'operations' | 'ready' | 'next' | 'waits'> {
  const live = steps.filter((step) => step.state !== 'struck out');
  const open = live.filter((step) => step.state !== 'done');
  const next = open.find((step) => step.state === 'ready') ?? open[0];
  return {
    done: live.length - open.length,
    operations: live.length,
    ready: open.filter((step) => step.state === 'ready').length,
    next: next ? { operation_id: next.operation_id, title: next.title, state: next.state } : null,
    waits: outsideWaits(open, waits),
  };
}

/** Everything that is being made, newest first, with what each part waits for from outside its own routing. */
export const openWork = untilChanged(async (db: Executor, ask: PageAsk): Promise<Page<OpenWork>> => {
  const rows = await db
    .selectFrom('routing')
    .innerJoin('part', 'part.id', 'routing.part_id')
    .select(['routing.id as routing_id', 'routing.rev', 'routing.way', 'routing.opened_on', 'routing.stale'])
    .select(['part.id as part_id', 'part.mark as part_mark', 'part.name as part_name', 'part.project_id'])
    .where('routing.closed_on', 'is', null)
    .where('routing.id', '<', startOf(ask))
    .orderBy('routing.id', 'desc')
    .limit(ask.size + 1)
    .execute();
  const page = pageOf(rows, ask, (row) => row.routing_id);
  const steps = await operationsOfRoutings(
    db,
    page.rows.map((row) => row.routing_id),
  );
  const waits = await waitsOf(
    db,
    steps.filter((step) => step.state === 'waiting' || step.state === 'held').map((step) => step.operation_id),
  );
  const own = (id: number): Step[] => steps.filter((step) => step.routing_id === id);
  return { rows: page.rows.map((row) => ({ ...row, ...standing(own(row.routing_id), waits) })), next: page.next };
});

/** A set-up that operations of several parts share. */
export type SharedSetUp = { readonly setUpId: number; readonly setUp: SetUp; readonly work: readonly WorkLine[] };

/** Operations still to be done of different parts that share a set-up, together; set-ups that most parts share come first. 500 operations at most. */
export const sharedSetUps = untilChanged(async (db: Executor, most: number): Promise<SharedSetUp[]> => {
  const shared = await db
    .selectFrom('routing')
    .crossJoin('operation')
    .select('operation.set_up_id')
    .whereRef('operation.routing_id', '=', 'routing.id')
    .where('routing.closed_on', 'is', null)
    .where(stillToDo)
    .groupBy('operation.set_up_id')
    .having(sql<number>`count(distinct operation.routing_id)`, '>', 1)
    .orderBy(sql`count(distinct operation.routing_id)`, 'desc')
    .orderBy('operation.set_up_id')
    .limit(most)
    .execute();
  const ids = shared.map((row) => row.set_up_id);
  if (ids.length === 0) return [];
  const setUp = await setUpsById(db, ids);
  const lines = await work(db)
    .where(stillToDo)
    .where('operation.set_up_id', 'in', ids)
    .orderBy('routing.id', 'desc')
    .orderBy('operation.place_no')
    .limit(500)
    .execute();
  return ids.map((id) => ({ setUpId: id, setUp: setUp(id), work: lines.filter((line) => line.set_up_id === id) }));
});
