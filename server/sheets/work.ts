import { blanksOf } from '../../db/blanks.ts';
import { RecordNotFound } from '../../db/changes.ts';
import type { Executor, Row } from '../../db/executor.ts';
import type { StoredFigure } from '../../db/figures.ts';
import { type ItemLine, item } from '../../db/items.ts';
import { machines } from '../../db/machines.ts';
import { type OperationLine, operation, operationsOf } from '../../db/operations.ts';
import { type PartLine, part } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { replan } from '../../db/replan.ts';
import { openRoutingOf, routing, routingsOfPart } from '../../db/routings.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import type { Machine } from '../../lib/tooling/tooling.ts';
import type { FiguresNow } from './sheet-figure.ts';

/** One part with all that its sheets show. blanks: what it is made from. now: what lib would say today. */
export type Work = {
  readonly part: PartLine;
  readonly project: Row<'project'>;
  readonly routing: Row<'routing'> | null;
  readonly operations: readonly OperationLine[];
  readonly blanks: readonly { readonly role: Row<'blank'>['role']; readonly thing: ItemLine }[];
  readonly machines: readonly Machine[];
  readonly now: FiguresNow;
};

async function blanksWith(db: Executor, routingId: number): Promise<Work['blanks']> {
  const blanks = [];
  for (const { item_id, role } of await blanksOf(db, routingId)) blanks.push({ role, thing: await item(db, item_id) });
  return blanks;
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

async function workOn(db: Executor, partId: number, row: Row<'routing'> | null): Promise<Work> {
  const own = await part(db, partId);
  const today = row ? await replan(db, row.id) : { lines: [], plan: null };
  const planned = today.plan?.operations ?? [];
  const now = planned.flatMap(({ key, figures }) => Object.entries(figures).map(([figure, value]) => [`${key}/${figure}`, value] as const));
  return {
    part: own,
    project: await project(db, own.project_id),
    routing: row,
    operations: today.lines.map((line) => withNewFigures(line, planned)),
    blanks: row ? await blanksWith(db, row.id) : [],
    machines: (await machines(db)).map(({ machine }) => machine),
    now: new Map(now),
  };
}

/** A part's open routing; when there is none, the last one it had; none at all: the wheel alone. Throws RecordNotFound. */
export async function workOfPart(db: Executor, partId: number): Promise<Work> {
  const row = (await openRoutingOf(db, partId)) ?? (await routingsOfPart(db, partId, { before: null, size: 1 })).rows[0] ?? null;
  return workOn(db, partId, row);
}

/** The work that an operation belongs to. Throws RecordNotFound. */
export async function workOfOperation(db: Executor, operationId: number): Promise<{ readonly work: Work; readonly own: OperationLine }> {
  const own = await operation(db, operationId);
  const row = await routing(db, own.routing_id);
  return { work: await workOn(db, row.part_id, row), own };
}

/** What the count at the mill needs of the work: nothing is worked out anew for it. */
export type Counting = Pick<Work, 'part' | 'routing' | 'operations'>;

/** The same, without what lib would say today: quick to come by for every tooth. Throws RecordNotFound. */
export async function countingOf(db: Executor, operationId: number): Promise<{ readonly work: Counting; readonly own: OperationLine }> {
  const own = await operation(db, operationId);
  const row = await routing(db, own.routing_id);
  return { work: { part: await part(db, row.part_id), routing: row, operations: await operationsOf(db, row.id) }, own };
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

/** The parts of some operations with those of their operations that share the set-up. Throws RecordNotFound, DomainError. */
export async function sharedWork(db: Executor, ids: readonly number[]): Promise<readonly Work[]> {
  const first = ids[0];
  if (first === undefined) throw new RecordNotFound('operation', '');
  const setUp = (await operation(db, first)).set_up_id;
  const routings = new Map<number, number>();
  for (const id of ids) {
    const one = await operation(db, id);
    if (one.set_up_id !== setUp) throw notShared();
    routings.set(one.routing_id, one.set_up_id);
  }
  if (routings.size > MOST_PARTS) throw tooMany(routings.size);
  const shared: Work[] = [];
  for (const id of routings.keys()) {
    const row = await routing(db, id);
    shared.push(await workOn(db, row.part_id, row));
  }
  return shared.map((work) => ({
    ...work,
    operations: work.operations.filter((one) => one.set_up_id === setUp && one.struck_on === null),
  }));
}

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
