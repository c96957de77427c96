import { RecordNotFound, rowOf } from '../../db/changes.ts';
import type { Row } from '../../db/executor.ts';
import type { OperationLine } from '../../db/operations.ts';
import { type PartLine, part } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { type Changed, changesSince, replan, type Today } from '../../db/replan.ts';
import { routing } from '../../db/routings.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { dayOf } from '../forms/date-field.ts';
import { machineName } from '../machines/list-view.ts';
import type { PageHead, StateView, TitleCell } from '../page.ts';
import { recordId } from '../record-id.ts';
import type { Db, Visit } from '../visit.ts';

/** A routing with the part that it makes and what lib says of it today. */
export type RoutingWork = {
  readonly routing: Row<'routing'>;
  readonly part: PartLine;
  readonly machine: Row<'project'>;
  readonly today: Today;
  readonly changes: readonly Changed[];
};
/** An operation within its routing. now: as lib would plan it today; null for one that was added by hand. at: counted from 0. */
export type Work = RoutingWork & { readonly line: OperationLine; readonly at: number; readonly now: PlannedOperation | null };

/** Throws RecordNotFound. */
export async function routingWork(db: Db, id: number): Promise<RoutingWork> {
  const row = await routing(db, id);
  const own = await part(db, row.part_id);
  const today = await replan(db, id);
  return { routing: row, part: own, machine: await project(db, own.project_id), today, changes: changesSince(today) };
}

/** The operation that an address names. Throws RecordNotFound. */
export async function operationWork({ db, params }: Visit): Promise<Work> {
  const asked = await rowOf(db, 'operation', recordId('operation', params['id']));
  const work = await routingWork(db, asked.routing_id);
  const at = work.today.lines.findIndex(({ id }) => id === asked.id);
  const line = work.today.lines[at];
  if (!line) throw new RecordNotFound('operation', asked.id);
  return { ...work, line, at, now: work.today.plan?.operations.find(({ key }) => key === line.key) ?? null };
}

/** A closed routing is history: its record stands. Throws DomainError. */
function refuseClosed<W extends RoutingWork>(work: W): W {
  if (work.routing.closed_on === null) return work;
  throw new DomainError({
    given: `The routing of ${work.part.mark} was closed on ${dayOf(work.routing.closed_on)}.`,
    limit: 'What it says stays as it is.',
    tryThis: 'Open a new routing on the page of the part, or make it again from its record.',
    about: ['routing'],
  });
}

/** The same for a change: refused once the routing is closed. Throws RecordNotFound, DomainError. */
export const openOperation = async (visit: Visit): Promise<Work> => refuseClosed(await operationWork(visit));
export const openRoutingWork = async (db: Db, id: number): Promise<RoutingWork> => refuseClosed(await routingWork(db, id));

const cell = (label: string, says: string, href = '', state: StateView | null = null): TitleCell => ({ label, says, href, state });

/** The title block of everything about a routing, leading back to its part. */
export const workHead = ({ part: own, machine }: RoutingWork, title: string, state: StateView | null): PageHead => ({
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
export const operationHead = (work: Work, title: string): PageHead => ({
  ...workHead(work, title, null),
  back: { says: work.line.title, href: to.operation(work.line.id) },
});
