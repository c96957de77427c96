import { blanksOf } from '../../db/blanks.ts';
import { RecordNotFound, rowOf, rowsOf } from '../../db/changes.ts';
import type { Executor, Row } from '../../db/executor.ts';
import type { StoredFigure } from '../../db/figures.ts';
import { type ItemLine, itemsById } from '../../db/items.ts';
import { machines } from '../../db/machines.ts';
import { type OperationLine, operationsOf } from '../../db/operations.ts';
import { type PartLine, part } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { todayOf } from '../../db/replan.ts';
import { openRoutingOf, routing, routingsOfPart } from '../../db/routings.ts';
import { shopNow } from '../../db/shop-now.ts';
import { untilChanged } from '../../db/until-changed.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import type { Machine } from '../../lib/tooling/tooling.ts';
import type { FiguresNow } from './sheet-figure.ts';

/** One part with all that its sheets show. own: the operation asked for, if one was. blanks: what it is made from. now: what lib would say today. */
export type Work = {
  readonly part: PartLine;
  readonly project: Row<'project'>;
  readonly routing: Row<'routing'> | null;
  readonly operations: readonly OperationLine[];
  readonly own: OperationLine | null;
  readonly blanks: readonly { readonly role: Row<'blank'>['role']; readonly thing: ItemLine }[];
  readonly machines: readonly Machine[];
  readonly now: FiguresNow;
};

async function blanksWith(db: Executor, routingId: number): Promise<Work['blanks']> {
  const blanks = await blanksOf(db, routingId);
  const things = await itemsById(
    db,
    blanks.map(({ item_id }) => item_id),
  );
  return blanks.flatMap(({ item_id, role }) => things.filter(({ id }) => id === item_id).map((thing) => ({ role, thing })));
}

const firstShown = (operation_id: number, key: string, figure: Figure): StoredFigure => {
  const { value, unit, places } = figure;
  const [low, high] = figure.limits ?? [null, null];
  const form = { unit: unit === 'mm' ? ('mm' as const) : ('in' as const), places: places ?? 4 };
  return {
    operation_id,
    key,
    figure,
    computed: value,
    typed: null,
    measured: null,
    shown: value,
    shownFrom: 'worked out',
    low,
    high,
    form,
  };
};

/** What became known after the routing was opened, as with a cutter that came in, stands on paper too. */
function withNewFigures(line: OperationLine, planned: readonly PlannedOperation[]): OperationLine {
  const now = line.done_on === null && line.key !== null ? planned.find(({ key }) => key === line.key) : undefined;
  const added = Object.entries(now?.figures ?? {}).filter(([key]) => !line.figures.some((stored) => stored.key === key));
  return { ...line, figures: [...line.figures, ...added.map(([key, figure]) => firstShown(line.id, key, figure))] };
}

/** A wheel that was changed to helical after its routing was opened: what is written there holds for straight teeth. */
function refuseStraight({ mark, stored }: PartLine, row: Row<'routing'> | null, lines: readonly OperationLine[]): void {
  if (!stored?.gear.helix || row === null || row.closed_on !== null || lines.every(({ key }) => key === null)) return;
  throw new DomainError({
    given: `${mark} was made a helical wheel after its routing was opened.`,
    limit: 'The figures written there are those of straight teeth: none of them is printed.',
    tryThis: 'Give the routing up. Its sizes, its cutter and how to mill its teeth stand on the page of the part.',
    about: ['helix'],
  });
}

async function workOn(db: Executor, partId: number, row: Row<'routing'> | null, shop?: ShopNow): Promise<Work> {
  const own = await part(db, partId);
  const written = row && { routing: row, part: own, lines: await operationsOf(db, row.id) };
  const today = written ? await todayOf(db, written, shop) : { lines: [], plan: null };
  refuseStraight(own, row, today.lines);
  const planned = today.plan?.operations ?? [];
  const now = planned.flatMap(({ key, figures }) => Object.entries(figures).map(([figure, value]) => [`${key}/${figure}`, value] as const));
  return {
    part: own,
    project: await project(db, own.project_id),
    routing: row,
    operations: today.lines.map((line) => withNewFigures(line, planned)),
    own: null,
    blanks: row ? await blanksWith(db, row.id) : [],
    machines: (await machines(db)).map(({ machine }) => machine),
    now: new Map(now),
  };
}

/** A part's open routing; when there is none, the last one it had; none at all: the wheel alone. Throws RecordNotFound. */
export const workOfPart = untilChanged(async (db: Executor, partId: number): Promise<Work> => {
  const row = (await openRoutingOf(db, partId)) ?? (await routingsOfPart(db, partId, { before: null, size: 1 })).rows[0] ?? null;
  return workOn(db, partId, row);
});

/** The operation with this id among those of its work. Throws RecordNotFound. */
function among(operations: readonly OperationLine[], id: number): OperationLine {
  const own = operations.find((one) => one.id === id);
  if (!own) throw new RecordNotFound('operation', id);
  return own;
}

/** The routing that an operation belongs to. Throws RecordNotFound. */
const routingWith = async (db: Executor, operationId: number): Promise<Row<'routing'>> =>
  routing(db, (await rowOf(db, 'operation', operationId)).routing_id);

/** The work that an operation belongs to. Throws RecordNotFound. */
export const workOfOperation = untilChanged(
  async (db: Executor, operationId: number): Promise<{ readonly work: Work; readonly own: OperationLine }> => {
    const row = await routingWith(db, operationId);
    const work = await workOn(db, row.part_id, row);
    const own = among(work.operations, operationId);
    return { work: { ...work, own }, own };
  },
);

/** What the count at the mill needs of the work: nothing is worked out anew for it. */
export type Counting = Pick<Work, 'part' | 'routing' | 'operations' | 'own'>;

/** The same, without what lib would say today: quick to come by for every tooth. Throws RecordNotFound. */
export async function countingOf(db: Executor, operationId: number): Promise<{ readonly work: Counting; readonly own: OperationLine }> {
  const row = await routingWith(db, operationId);
  const operations = await operationsOf(db, row.id);
  const own = among(operations, operationId);
  return { work: { part: await part(db, row.part_id), routing: row, operations, own }, own };
}

/** What this part is called on paper. */
export const machineName = ({ project: { make, model, what } }: Work): string =>
  [make, model, what].filter((word) => word !== '').join(' ');

/** The teeth of the part. Throws DomainError for a part that is no wheel. */
export function teethOf({ part: { mark, stored } }: Pick<Work, 'part'>): number {
  if (stored) return stored.gear.teeth;
  throw new DomainError({
    given: `${mark} has no wheel on record.`,
    limit: 'Only a wheel has teeth to index.',
    tryThis: 'Type its teeth and pitch on the page of the part.',
  });
}

const MOST_PARTS = 8;

/** Of the operations asked for the first that is still to be done; when none is, the first. */
function nextAsked(operations: readonly OperationLine[], ids: readonly number[]): OperationLine | null {
  const asked = operations.filter(({ id }) => ids.includes(id));
  return asked.find(({ done_on }) => done_on === null) ?? asked[0] ?? null;
}

/** The parts of some operations with those of their operations that share the set-up; own: the next one to be done of those asked for. Throws RecordNotFound, DomainError. */
export const sharedWork = untilChanged(async (db: Executor, ids: readonly number[]): Promise<readonly Work[]> => {
  if (ids.length === 0) throw new RecordNotFound('operation', '');
  const rows = await rowsOf(db, 'operation', ids);
  const setUp = rows[0]?.set_up_id;
  if (rows.some((one) => one.set_up_id !== setUp)) throw notShared();
  const routings = [...new Set(rows.map((one) => one.routing_id))];
  if (routings.length > MOST_PARTS) throw tooMany(routings.length);
  const [shop, shared] = [await shopNow(db), [] as Work[]];
  for (const row of await rowsOf(db, 'routing', routings)) shared.push(await workOn(db, row.part_id, row, shop));
  return shared.map((work) => ({
    ...work,
    own: nextAsked(work.operations, ids),
    operations: work.operations.filter((one) => one.set_up_id === setUp && one.struck_on === null),
  }));
});

const notShared = (): DomainError =>
  new DomainError({
    given: 'These operations are done in different set-ups.',
    limit: 'A set-up sheet is for operations that share one.',
    tryThis: 'Print their route sheets, or choose operations of one set-up.',
  });

const tooMany = (parts: number): DomainError =>
  new DomainError({
    given: `A set-up sheet for ${parts} parts was asked for.`,
    limit: `It holds ${MOST_PARTS} at most.`,
    tryThis: 'Print it for fewer parts at a time.',
  });
