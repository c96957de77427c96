import { blanksOf } from '../../db/blanks.ts';
import { RecordNotFound, rowOf } from '../../db/changes.ts';
import type { Row } from '../../db/executor.ts';
import { type OperationLine, operationsOf } from '../../db/operations.ts';
import { part } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { type Changed, changesSince, type Today, todayOf, type Written } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { untilChanged } from '../../db/until-changed.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { dayOf } from '../forms/date-field.ts';
import { machineName } from '../machines/list-view.ts';
import type { PageHead, StateView, TitleCell } from '../page.ts';
import { recordId } from '../record-id.ts';
import type { Db, Visit } from '../visit.ts';

/** The figures of an operation that are worked out otherwise by now than they are printed. */
export const figuresChanged = ({ changes, line }: Work): readonly Changed[] =>
  changes.filter(({ operationId, figure }) => operationId === line.id && figure !== null);

/** A routing as it is written, with the part that it makes and the machine that the part belongs to. */
export type WrittenWork = Written & { readonly machine: Row<'project'> };
/** The same, and what lib says of it today. */
export type RoutingWork = WrittenWork & { readonly today: Today; readonly changes: readonly Changed[] };

/** at: counted from 0. */
type Placed = { readonly line: OperationLine; readonly at: number };
/** An operation within its routing, as it is written. */
export type WrittenOperation = WrittenWork & Placed;
/** The same; now: as lib would plan it today, null for one that was added by hand. spareId: the wheel that it is cut from. */
export type Work = RoutingWork & Placed & { readonly now: PlannedOperation | null; readonly spareId: number | null };

/** For pages that show nothing of today's plan. Throws RecordNotFound. */
export const writtenWork = untilChanged(async (db: Db, id: number): Promise<WrittenWork> => {
  const row = await routing(db, id);
  const own = await part(db, row.part_id);
  return { routing: row, part: own, machine: await project(db, own.project_id), lines: await operationsOf(db, id) };
});

/** Throws RecordNotFound. */
export const routingWork = untilChanged(async (db: Db, id: number): Promise<RoutingWork> => {
  const written = await writtenWork(db, id);
  const today = await todayOf(db, written);
  return { ...written, lines: today.lines, today, changes: changesSince(today) };
});

/** The operation that an address names, in its routing. Throws RecordNotFound. */
async function placed<W extends WrittenWork>({ db, params }: Visit, workOf: (db: Db, id: number) => Promise<W>): Promise<W & Placed> {
  const asked = await rowOf(db, 'operation', recordId('operation', params['id']));
  const work = await workOf(db, asked.routing_id);
  const at = work.lines.findIndex(({ id }) => id === asked.id);
  const line = work.lines[at];
  if (!line) throw new RecordNotFound('operation', asked.id);
  return { ...work, line, at };
}

/** The operation that an address names. Throws RecordNotFound. */
export async function operationWork(visit: Visit): Promise<Work> {
  const work = await placed(visit, routingWork);
  const spare = (await blanksOf(visit.db, work.routing.id)).find(({ role }) => role !== 'ring');
  return { ...work, spareId: spare?.item_id ?? null, now: work.today.plan?.operations.find(({ key }) => key === work.line.key) ?? null };
}

/** A closed routing is history: its record stands. Throws DomainError. */
export function refuseClosed<W extends Pick<Written, 'routing' | 'part'>>(work: W): W {
  if (work.routing.closed_on === null) return work;
  throw new DomainError({
    given: `The routing of ${work.part.mark} was closed on ${dayOf(work.routing.closed_on)}.`,
    limit: 'What it says stays as it is.',
    tryThis: 'Open a new routing on the page of the part, or make it again from its record.',
    about: ['routing'],
  });
}

/** The same as it is written. Throws RecordNotFound. */
export const writtenOperation = (visit: Visit): Promise<WrittenOperation> => placed(visit, writtenWork);

/** The same for a change: refused once the routing is closed. Throws RecordNotFound, DomainError. */
export const openOperation = async (visit: Visit): Promise<Work> => refuseClosed(await operationWork(visit));
export const openWritten = async (visit: Visit): Promise<WrittenOperation> => refuseClosed(await writtenOperation(visit));
export const openRoutingWork = async (db: Db, id: number): Promise<WrittenWork> => refuseClosed(await writtenWork(db, id));

const cell = (label: string, says: string, href = '', state: StateView | null = null): TitleCell => ({ label, says, href, state });

/** The title block of everything about a routing, leading back to its part. */
export const workHead = ({ part: own, machine }: WrittenWork, title: string, state: StateView | null): PageHead => ({
  title,
  place: 'Machines',
  back: { says: `${own.mark} ${own.name}`, href: to.part(own.id) },
  titleBlock: [
    cell('Machine', machineName(machine), to.machine(machine.id)),
    cell('Part', own.name, to.part(own.id)),
    ...(state ? [cell('State', '', '', state)] : []),
    cell('Mark', own.mark, to.part(own.id)),
  ],
});

/** The same, leading back to an operation. */
export const operationHead = (work: WrittenOperation, title: string): PageHead => ({
  ...workHead(work, title, null),
  back: { says: work.line.title, href: to.operation(work.line.id) },
});
