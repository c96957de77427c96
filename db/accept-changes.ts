import type { Figure } from '../lib/figure/figure.ts';
import { meets } from '../lib/routing/needs.ts';
import type { Measure, PlannedOperation } from '../lib/routing/operation.ts';
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

/** The limits of what is measured go with the figures that were accepted; those of other figures stay as they are printed. */
function measuresAfter(line: OperationLine, now: PlannedOperation, accepted: ReadonlySet<string>): readonly Measure[] {
  const kept = (one: Measure): boolean => !accepted.has(`${now.key}/${one.figure}`);
  return now.measures.map((fresh) => line.measures.find((one) => one.key === fresh.key && kept(one)) ?? fresh);
}

/** Needs and limits of the plan, and its set-up once that was accepted; what the owner may have written himself stays: title, steps, notes. */
async function takeOver(db: Executor, line: OperationLine, now: PlannedOperation, accepted: ReadonlySet<string>): Promise<void> {
  const columns = {
    ...(accepted.has(`${now.key}/`) ? { set_up_id: await setUpId(db, now.setUp) } : {}),
    measures: JSON.stringify(measuresAfter(line, now, accepted)),
    minutes_planned: Math.round(now.minutes),
  };
  await db.updateTable('operation').set(columns).where('id', '=', line.id).execute();
  await db.deleteFrom('need').where('operation_id', '=', line.id).execute();
  await addNeeds(db, line.id, now.needs);
}

async function acceptOf(db: Executor, line: OperationLine, now: PlannedOperation, accepted: ReadonlySet<string>): Promise<void> {
  await acceptFigures(db, line.id, line.rev, figuresAfter(line, now, accepted));
  await takeOver(db, line, now, accepted);
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

/** A change as a page listed it. now: as it was printed there. */
export type Listed = Pick<Changed, 'key' | 'name' | 'now'>;
/** What was listed, and what stands in its place by now; null when nothing is worked out otherwise any more. */
export type Overtaken = { readonly listed: Listed; readonly now: string | null };

/** What a page listed is worked out otherwise by now, as when a reading was noted meanwhile. */
export class ListOvertaken extends Error {
  readonly changes: readonly Overtaken[];
  constructor(changes: readonly Overtaken[]) {
    super('What was listed is worked out otherwise by now.');
    this.name = 'ListOvertaken';
    this.changes = changes;
  }
}

/** The changes that a page listed, every one as it was listed there. Throws ListOvertaken. */
export function asListed(changes: readonly Changed[], listed: readonly Listed[]): readonly Changed[] {
  const found = listed.map((one) => ({ listed: one, change: changes.find(({ key }) => key === one.key) }));
  const overtaken = found.filter((one) => one.change?.now !== one.listed.now);
  if (overtaken.length === 0) return found.flatMap(({ change }) => change ?? []);
  throw new ListOvertaken(overtaken.map((one) => ({ listed: one.listed, now: one.change?.now ?? null })));
}

/**
 * Accepts what lib says today in place of what was printed: these changes, exactly as they were listed, or all. What is done, typed or
 * measured stays. Throws RecordNotFound, ListOvertaken (and nothing is written).
 */
export const acceptChanges = (db: Executor, routingId: number, listed: readonly Listed[] | 'all', now: string): Promise<void> =>
  together(db, async (trx) => {
    const today = await replan(trx, routingId);
    const all = changesSince(today);
    const open = listed === 'all' ? all : asListed(all, listed);
    for (const planned of today.plan?.operations ?? []) await acceptPlanned(trx, routingId, today, planned, open);
    await strikeDropped(trx, today, open, now);
    await settleNeeds(trx, meets);
    await refreshStale(trx, routingId);
  });
