import type { Figure } from '../lib/figure/figure.ts';
import { meets } from '../lib/routing/needs.ts';
import type { PlannedOperation } from '../lib/routing/operation.ts';
import { type Executor, together } from './executor.ts';
import { acceptFigures } from './figures.ts';
import { addNeeds, settleNeeds } from './needs.ts';
import { addPlanned, type OperationLine, operationsOf, strikeOut } from './operations.ts';
import { putAt } from './order.ts';
import { type Changed, changesSince, refreshStale, replan, type Today } from './replan.ts';
import { setUpId } from './set-ups.ts';

/** The figures of an operation with those accepted in place of what was printed. */
function figuresAfter(line: OperationLine, now: PlannedOperation, accepted: ReadonlySet<string>): Record<string, Figure> {
  const takes = (key: string): boolean => accepted.has(`${now.key}/${key}`);
  const kept = line.figures.filter(({ key }) => !takes(key)).map(({ key, figure }) => [key, figure] as const);
  const changed = Object.entries(now.figures).filter(([key]) => takes(key));
  const found = new Map([...kept, ...changed]);
  const order = [...Object.keys(now.figures), ...line.figures.map(({ key }) => key)];
  return Object.fromEntries([...new Set(order)].flatMap((key) => (found.has(key) ? [[key, found.get(key) as Figure]] : [])));
}

/** Set-up, needs, limits and cautions of the plan; what the owner may have written himself stays: title, steps, notes. */
async function takeOver(db: Executor, line: OperationLine, now: PlannedOperation): Promise<void> {
  const columns = {
    set_up_id: await setUpId(db, now.setUp),
    measures: JSON.stringify(now.measures),
    cautions: JSON.stringify(now.cautions),
    minutes_planned: Math.round(now.minutes),
  };
  await db.updateTable('operation').set(columns).where('id', '=', line.id).execute();
  await db.deleteFrom('need').where('operation_id', '=', line.id).execute();
  await addNeeds(db, line.id, now.needs);
}

async function acceptOf(db: Executor, line: OperationLine, now: PlannedOperation, accepted: ReadonlySet<string>): Promise<void> {
  await acceptFigures(db, line.id, line.rev, figuresAfter(line, now, accepted));
  await takeOver(db, line, now);
}

/** A further operation goes behind the last of those that it follows. */
async function addFurther(db: Executor, routingId: number, now: PlannedOperation): Promise<void> {
  const lines = await operationsOf(db, routingId);
  const before = lines.filter(({ key }) => key !== null && now.after.includes(key)).map((line) => line.place_no);
  const at = Math.max(0, ...before) + 1;
  await putAt(db, routingId, await addPlanned(db, routingId, at, now), at);
}

/** One operation of the plan, as far as its changes were accepted. */
async function acceptPlanned(
  db: Executor,
  routingId: number,
  { lines }: Today,
  now: PlannedOperation,
  open: readonly Changed[],
): Promise<void> {
  const line = lines.find((one) => one.key === now.key);
  if (!line && open.some(({ key }) => key === now.key)) await addFurther(db, routingId, now);
  if (line && open.some(({ operationId }) => operationId === line.id)) await acceptOf(db, line, now, new Set(open.map(({ key }) => key)));
}

/** What is no longer wanted is struck out: it may come back. */
async function strikeDropped(db: Executor, { lines, plan }: Today, open: readonly Changed[], on: string): Promise<void> {
  const wanted = (key: string | null): boolean => plan?.operations.some((one) => one.key === key) ?? true;
  for (const line of lines) {
    const accepted = open.some(({ key, operationId }) => operationId === line.id && key === line.key);
    if (accepted && !wanted(line.key)) await strikeOut(db, line.id, line.rev, on);
  }
}

/**
 * Accepts what lib says today in place of what was printed: these changes by their keys, or all. What is done, typed or measured stays.
 * Throws RecordNotFound.
 */
export const acceptChanges = (db: Executor, routingId: number, keys: readonly string[] | 'all', now: string): Promise<void> =>
  together(db, async (trx) => {
    const today = await replan(trx, routingId);
    const open = changesSince(today).filter(({ key }) => keys === 'all' || keys.includes(key));
    for (const planned of today.plan?.operations ?? []) await acceptPlanned(trx, routingId, today, planned, open);
    await strikeDropped(trx, today, open, now);
    await settleNeeds(trx, meets);
    await refreshStale(trx, routingId);
  });
