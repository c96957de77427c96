import { DomainError } from '../lib/figure/domain-error.ts';
import type { Figure, Value } from '../lib/figure/figure.ts';
import { printFigure } from '../lib/figure/print-value.ts';
import { meets, needWords } from '../lib/routing/needs.ts';
import type { Need, PlannedOperation } from '../lib/routing/operation.ts';
import type { Plan } from '../lib/routing/plan.ts';
import type { ShopNow } from '../lib/routing/shop-now.ts';
import { type FigureChanged, type StoredOperation, whatChanged } from '../lib/routing/stale.ts';
import { rowOf } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { addNeeds, settleNeeds } from './needs.ts';
import { type OperationLine, operationsOf, strikeOut } from './operations.ts';
import { type PartLine, part } from './parts.ts';
import { planAsked } from './plan-asked.ts';
import { planOf } from './planned.ts';
import { setBlankFails, setStale } from './routings.ts';
import { shopNow } from './shop-now.ts';
import { untilChanged } from './until-changed.ts';

/** What stands in the routing and what lib says of it today. plan null: nothing is planned for this way, or `refusal` says why not. */
export type Today = { readonly lines: readonly OperationLine[]; readonly plan: Plan | null; readonly refusal: string };

/** One thing that lib says otherwise by now. key: what it is accepted by. was, now: as printed; '' where there was or is none. */
export type Changed = {
  readonly key: string;
  readonly operationId: number | null;
  readonly operation: string;
  readonly figure: string | null;
  readonly name: string;
  readonly was: string;
  readonly now: string;
};

const isOpen = ({ state }: OperationLine): boolean => state !== 'done' && state !== 'struck out';

/**
 * Cautions, and what is said of blank and tools, are always those of today: a warning is not accepted first, and none outlives its reason,
 * at an operation that is done neither.
 */
function saidToday(line: OperationLine, plan: Plan): OperationLine {
  const now = line.key === null ? undefined : plan.operations.find(({ key }) => key === line.key);
  return now ? { ...line, cautions: now.cautions, verdict: now.verdict ?? '' } : line;
}

/** A routing as it is written: the part that it makes, and its operations. */
export type Written = { readonly routing: Row<'routing'>; readonly part: PartLine; readonly lines: readonly OperationLine[] };

/** The plan of today, with what was measured and typed fed forward. shop: as it stands, where it is read already. */
export async function todayOf(db: Executor, written: Written, shop?: ShopNow): Promise<Today> {
  const { routing, lines } = written;
  try {
    const asked = routing.closed_on === null ? await planAsked(db, written, shop ?? (await shopNow(db))) : null;
    const plan = asked ? planOf(asked) : null;
    return { lines: plan ? lines.map((line) => saidToday(line, plan)) : lines, plan, refusal: '' };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { lines, plan: null, refusal: error.message };
  }
}

/** The same, of the routing with this id. Throws RecordNotFound. */
export const replan = untilChanged(async (db: Executor, routingId: number): Promise<Today> => {
  const routing = await rowOf(db, 'routing', routingId);
  return todayOf(db, { routing, part: await part(db, routing.part_id), lines: await operationsOf(db, routingId) });
});

/** A figure with its unit, as it is printed. */
export function figureWords(figure: Figure): string {
  const { text, unit } = printFigure(figure);
  return unit ? `${text} ${unit}` : text;
}

const inWords = (value: Value | null, like: Figure): string => (value === null ? '' : figureWords({ ...like, value }));

/** What was printed, as lib compares it. What is done or struck out keeps its figures, as do those that were measured or typed. */
const storedAs = ({ key, state, figures }: OperationLine & { readonly key: string }): StoredOperation => ({
  key,
  done: state === 'done' || state === 'struck out',
  figures: figures.map((one) => ({ key: one.key, shown: one.figure.value, shownFrom: one.shownFrom })),
});

type Planned = OperationLine & { readonly key: string };
const isPlanned = (line: OperationLine): line is Planned => line.key !== null;

function figureChange(lines: readonly Planned[], plan: Plan, { operation, figure, was, now }: FigureChanged): Changed[] {
  const line = lines.find((one) => one.key === operation);
  const planned = plan.operations.find(({ key }) => key === operation)?.figures[figure];
  const like = planned ?? line?.figures.find(({ key }) => key === figure)?.figure;
  if (!line || !like) return [];
  const words = { name: like.name, was: inWords(was, like), now: inWords(now, like) };
  return [{ key: `${operation}/${figure}`, operationId: line.id, operation: line.title, figure, ...words }];
}

function changedSetUp(line: Planned, now: PlannedOperation): Changed[] {
  if (line.setUp.key === now.setUp.key) return [];
  const words = { name: 'set-up', was: line.setUp.says, now: now.setUp.says };
  return [{ key: `${now.key}/`, operationId: line.id, operation: line.title, figure: null, ...words }];
}

const further = (now: PlannedOperation): Changed => ({
  ...{ key: now.key, operationId: null, operation: now.title, figure: null },
  ...{ name: 'a further operation', was: '', now: now.title },
});

const dropped = (line: Planned): Changed => ({
  ...{ key: line.key, operationId: line.id, operation: line.title, figure: null },
  ...{ name: 'no longer wanted', was: line.title, now: '' },
});

function worked({ lines: all, plan }: Today): Changed[] {
  if (!plan) return [];
  const lines = all.filter(isPlanned);
  const { figures, added, removed } = whatChanged(lines.map(storedAs), plan);
  const open = lines.filter(isOpen);
  const setUps = open.flatMap((line) => plan.operations.filter(({ key }) => key === line.key).flatMap((now) => changedSetUp(line, now)));
  return [
    ...plan.operations.filter(({ key }) => added.includes(key)).map(further),
    ...open.filter(({ key }) => removed.includes(key)).map(dropped),
    ...setUps,
    ...figures.flatMap((one) => figureChange(lines, plan, one)),
  ];
}

const workedOnce = new WeakMap<Today, readonly Changed[]>();

/** Everything that lib says otherwise than what is printed, in the order of the work; of one plan it is worked out once. */
export function changesSince(today: Today): readonly Changed[] {
  const changes = workedOnce.get(today) ?? worked(today);
  workedOnce.set(today, changes);
  return changes;
}

const arborsIn = (needs: readonly Need[]): Need[] => needs.filter(({ kind }) => kind === 'arbor');

/** The arbor follows the cutter: when one with another hole has come in, its operation waits for an arbor of that size. Gives whether any changed. */
async function followArbors(db: Executor, { lines, plan }: Today): Promise<boolean> {
  let changed = false;
  for (const line of lines.filter(isOpen)) {
    const now = plan?.operations.find(({ key }) => key === line.key);
    const [had, wants] = [arborsIn(line.needs.map(({ need }) => need)), arborsIn(now?.needs ?? [])];
    if (!now || had.map(needWords).join() === wants.map(needWords).join()) continue;
    await db.deleteFrom('need').where('operation_id', '=', line.id).where('kind', '=', 'arbor').execute();
    await addNeeds(db, line.id, wants);
    changed = true;
  }
  return changed;
}

/** What is said today is kept, so that a routing that is closed, which plans nothing any more, ends with what still had a reason. */
async function keepSaid(db: Executor, routingId: number, { lines }: Today): Promise<void> {
  const kept = await db.selectFrom('operation').select(['id', 'cautions', 'verdict']).where('routing_id', '=', routingId).execute();
  const stood = new Map(kept.map((row) => [row.id, row]));
  for (const { id, verdict, ...line } of lines) {
    const cautions = JSON.stringify(line.cautions);
    const [had, said] = [stood.get(id), { cautions, verdict }];
    if (had?.cautions === cautions && had.verdict === verdict) continue;
    await db.updateTable('operation').set(said).where('id', '=', id).execute();
  }
}

/** What measuring says of the blank is kept: lists read whether it will do. While the readings make no sense, what stood there stays. */
async function judgeBlank(db: Executor, routingId: number, { plan, refusal }: Today): Promise<void> {
  if (refusal === '') await setBlankFails(db, routingId, plan?.blankFails ?? '');
}

/** Sets the flag that lists read, to be called in the transaction of every change that figures hang on. */
export const refreshStale = (db: Executor, routingId: number): Promise<void> =>
  together(db, async (trx) => {
    const today = await replan(trx, routingId);
    if (await followArbors(trx, today)) await settleNeeds(trx, meets);
    await judgeBlank(trx, routingId, today);
    await keepSaid(trx, routingId, today);
    await setStale(trx, routingId, changesSince(today).length > 0);
  });

/** What is only offered goes by itself once nothing asks for it, as the making of a mandrel when one that fits is in the shop. */
async function strikeOffered(db: Executor, routingId: number, on: string): Promise<void> {
  const { lines, plan } = await replan(db, routingId);
  const offered = lines.filter((line) => isOpen(line) && line.must === 0 && line.key !== null);
  for (const line of plan ? offered : []) {
    if (plan?.operations.some(({ key }) => key === line.key)) continue;
    await strikeOut(db, line.id, line.rev, on);
  }
}

/** The same in everything that is being made, after a change of tools. */
export async function strikeAllOffered(db: Executor, on: string): Promise<void> {
  const open = await db.selectFrom('routing').select('id').where('closed_on', 'is', null).execute();
  for (const { id } of open) await strikeOffered(db, id, on);
}

/** The flag of everything that is being made, anew: after a change of tools, machines or defaults. */
export async function refreshAllStale(db: Executor): Promise<void> {
  const open = await db.selectFrom('routing').select('id').where('closed_on', 'is', null).execute();
  for (const { id } of open) await refreshStale(db, id);
}

/** The same for the routing that makes a part, if there is one: after a change of its wheel. */
export async function refreshStaleOfPart(db: Executor, partId: number): Promise<void> {
  const open = await db.selectFrom('routing').select('id').where('part_id', '=', partId).where('closed_on', 'is', null).executeTakeFirst();
  if (open) await refreshStale(db, open.id);
}
