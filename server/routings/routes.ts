import type { OperationLine } from '../../db/operations.ts';
import { operationsOfAll } from '../../db/operations.ts';
import { type PartLine, partsById } from '../../db/parts.ts';
import { closeRouting } from '../../db/routings.ts';
import { type SharedSetUp, sharedSetUps } from '../../db/today.ts';
import { untilChanged } from '../../db/until-changed.ts';
import { workOperations } from '../../db/work-operations.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import type { PlannedPart } from '../../lib/routing/shared-set-ups.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { recordId } from '../record-id.ts';
import type { PageData } from '../views.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { formPage } from './form-page.ts';
import { machinePage } from './machine-view.ts';
import { operationView } from './operation-view.ts';
import { ratiosWithAll } from './ratios.ts';
import { sectionOf } from './section.ts';
import { setUpsView } from './set-ups-view.ts';
import { openRoutingWork, operationWork, routingWork, workHead } from './work.ts';

/** One routing on a page of its own; a closed one too. */
export async function one(visit: Visit): Promise<Result> {
  const work = await routingWork(visit.db, recordId('routing', visit.params['id']));
  const { routing: row } = work;
  const section = await sectionOf(visit, row, work.today, to.routing(row.id));
  return show('routings/routing', { ...workHead(work, `${work.part.mark}: ${row.way}`, null), section });
}

export const operation = async (visit: Visit): Promise<Result> =>
  show('routings/operation', operationView(await operationWork(visit), visit));

/** One figure at a time; an operation without figures is shown whole. */
export async function machineSide(visit: Visit): Promise<Result> {
  const work = await operationWork(visit);
  const page = await machinePage(visit.db, work, Number(visit.query['step']) || 1);
  return page ? show('routings/at-machine', page) : { go: to.operation(work.line.id) };
}

/** What is printed, as lib looks at it: the figures as they stand. */
const asPlanned = (line: OperationLine): PlannedOperation => ({
  key: line.key ?? `own ${line.id}`,
  title: line.title,
  must: line.must === 1,
  setUp: line.setUp,
  steps: line.steps,
  figures: Object.fromEntries(line.figures.map(({ key, figure, shown }) => [key, { ...figure, value: shown }])),
  measures: line.measures,
  needs: line.needs.map(({ need }) => need),
  cautions: line.cautions,
  minutes: line.minutes_planned,
  after: [],
});

type Making = { readonly routingId: number; readonly own: PartLine };

async function plannedParts(db: Db, making: readonly Making[]): Promise<PlannedPart[]> {
  const operations = await operationsOfAll(
    db,
    making.map(({ routingId }) => routingId),
  );
  return making.map(({ routingId, own }) => {
    const open = operations(routingId).filter(({ state }) => state !== 'done' && state !== 'struck out');
    return { mark: own.mark, name: own.name, operations: open.map(asPlanned) };
  });
}

/** What is being made in these set-ups: each routing once. */
async function makingIn(db: Db, shared: readonly SharedSetUp[]): Promise<Making[]> {
  const lines = shared.flatMap(({ work }) => work);
  const parts = new Map(lines.map((line) => [line.routing_id, line.part_id]));
  const own = await partsById(db, [...parts.values()]);
  return [...parts.keys()].map((routingId, at) => ({ routingId, own: own[at] as PartLine }));
}

const MOST_SET_UPS = 20;

const atMachine = ({ setUp }: SharedSetUp): boolean => setUp.place === 'lathe' || setUp.place === 'mill';

/** What is shared, what differs, and what holding one for another would delay: it follows from the shop alone. */
const sharedNow = untilChanged(async (db: Db): Promise<PageData<'routings/set-ups'>> => {
  const shared = (await sharedSetUps(db, MOST_SET_UPS)).filter(atMachine);
  const making = await makingIn(db, shared);
  const ratios = await ratiosWithAll(
    db,
    making.map(({ own }) => own),
  );
  const operations = shared.length > 0 ? await workOperations(db) : [];
  return setUpsView({ shared, parts: await plannedParts(db, making), operations, ratios });
});

/** Operations of different parts that share a set-up at a machine. */
export const setUps = async ({ db }: Visit): Promise<Result> => show('routings/set-ups', await sharedNow(db));

/** Asks once more before a routing is given up. */
export async function askGiveUp(visit: Visit): Promise<Result> {
  const work = await openRoutingWork(visit.db, recordId('routing', visit.params['id']));
  const page = formPage({
    head: workHead(work, 'Give this routing up?', null),
    says: 'Its blank is a spare again, and the part still missing. What was done and measured stays on record under the part.',
    action: to.routingGiveUp(work.routing.id),
    act: 'Give it up',
    kind: 'stop',
    fields: {},
    tried: { typed: {}, problems: {} },
    hidden: [{ name: 'rev', value: String(work.routing.rev) }],
    back: { says: 'Keep it', href: to.part(work.part.id) },
  });
  return show('routings/form', page);
}

export async function giveUp(visit: Visit): Promise<Result> {
  const { routing: row } = await openRoutingWork(visit.db, recordId('routing', visit.params['id']));
  await closeRouting(visit.db, row.id, sentRev(visit), visit.now);
  return { go: to.part(row.part_id), saved: 'Given up. The blank is a spare again.' };
}
