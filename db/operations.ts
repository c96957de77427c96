import { DomainError } from '../lib/figure/domain-error.ts';
import type { Caution } from '../lib/figure/figure.ts';
import type { Measure, Need, PlannedOperation, SetUp } from '../lib/routing/operation.ts';
import { rowOf, saveRow } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { figureRow, figuresOf, type StoredFigure, setMeasured } from './figures.ts';
import { addNeeds, needsOf, type StoredNeed } from './needs.ts';
import { bridge, putAt } from './order.ts';
import { ownRows } from './own-rows.ts';
import { type OperationState, statesOf, type Wait } from './readiness.ts';
import { addReading, type NewReading } from './readings.ts';
import { setUpId, setUpsById } from './set-ups.ts';
import { untilChanged } from './until-changed.ts';

/** An operation as it stands, with all that its sheet shows. after: ids of those that come first. */
export type OperationLine = Omit<Row<'operation'>, 'steps' | 'measures' | 'cautions'> & {
  readonly setUp: SetUp;
  readonly steps: readonly string[];
  readonly measures: readonly Measure[];
  readonly cautions: readonly Caution[];
  readonly figures: readonly StoredFigure[];
  readonly needs: readonly StoredNeed[];
  readonly after: readonly number[];
  readonly state: OperationState;
  readonly waits: readonly Wait[];
};

/** What to do, and what is to be said of blank and tools by what is on record so far. */
export const stepsShown = ({ steps, verdict }: Pick<OperationLine, 'steps' | 'verdict'>): readonly string[] =>
  verdict === '' ? steps : [...steps, verdict];

/** Writes one planned operation at its place; gives its id. */
export async function addPlanned(db: Executor, routingId: number, place_no: number, planned: PlannedOperation): Promise<number> {
  const row = {
    routing_id: routingId,
    place_no,
    key: planned.key,
    title: planned.title,
    must: planned.must ? (1 as const) : (0 as const),
    set_up_id: await setUpId(db, planned.setUp),
    steps: JSON.stringify(planned.steps),
    verdict: planned.verdict ?? '',
    measures: JSON.stringify(planned.measures),
    cautions: JSON.stringify(planned.cautions),
    minutes_planned: Math.round(planned.minutes),
    notes: '',
  };
  const { id } = await db.insertInto('operation').values(row).returning('id').executeTakeFirstOrThrow();
  const figures = Object.entries(planned.figures).map(([key, figure], at) => figureRow(id, key, at, figure));
  if (figures.length > 0) await db.insertInto('figure').values(figures).execute();
  await addNeeds(db, id, planned.needs);
  return id;
}

/** An operation that the owner adds. at: its place in the routing, 1 the first. */
export type OwnOperation = {
  readonly title: string;
  readonly setUp: SetUp;
  readonly steps: readonly string[];
  readonly needs: readonly Need[];
  readonly minutes: number;
  readonly notes: string;
  readonly at: number;
};

export const addOperation = (db: Executor, routingId: number, own: OwnOperation): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    await rowOf(trx, 'routing', routingId);
    const row = {
      routing_id: routingId,
      place_no: own.at,
      key: null,
      title: own.title,
      must: 0 as const,
      set_up_id: await setUpId(trx, own.setUp),
      steps: JSON.stringify(own.steps),
      measures: '[]',
      cautions: '[]',
      minutes_planned: Math.round(own.minutes),
      notes: own.notes,
    };
    const { id } = await trx.insertInto('operation').values(row).returning('id').executeTakeFirstOrThrow();
    await addNeeds(trx, id, own.needs);
    await putAt(trx, routingId, id, own.at);
    return rowOf(trx, 'operation', id);
  });

type Editing = { readonly title: string; readonly steps: readonly string[]; readonly minutes: number; readonly notes: string };
/** Throws RecordNotFound, RecordChanged; so do all below. */
export const editOperation = (
  db: Executor,
  id: number,
  rev: number,
  { title, steps, minutes, notes }: Editing,
): Promise<Row<'operation'>> =>
  saveRow(db, 'operation', id, rev, { title, steps: JSON.stringify(steps), minutes_planned: Math.round(minutes), notes });

/** place: where it shall stand in its routing, 1 the first. */
export const moveOperation = (db: Executor, id: number, rev: number, place: number): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'operation', id, rev, {});
    await putAt(trx, row.routing_id, id, place);
    return rowOf(trx, 'operation', id);
  });

/** Struck out, it holds nothing up: what followed it follows what came before it. */
export const strikeOut = (db: Executor, id: number, rev: number, on: string): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    await bridge(trx, id);
    return saveRow(trx, 'operation', id, rev, { struck_on: on });
  });

export const restoreOperation = (db: Executor, id: number, rev: number): Promise<Row<'operation'>> =>
  saveRow(db, 'operation', id, rev, { struck_on: null });

/** Whether one operation waits, by any way through holds and order, for another. */
async function waitsFor(db: Executor, id: number, other: number): Promise<boolean> {
  const seen = new Set<number>();
  for (let edge = [id]; edge.length > 0; ) {
    if (edge.includes(other)) return true;
    for (const one of edge) seen.add(one);
    const after = await db.selectFrom('follows').select('after_id as next').where('operation_id', 'in', edge).execute();
    const held = await db.selectFrom('operation').select('held_for_id as next').where('id', 'in', edge).execute();
    edge = [...new Set([...after, ...held].flatMap((row) => row.next ?? []))].filter((next) => !seen.has(next));
  }
  return false;
}

/** Keeps an operation back until another is done, or (null) no longer. Throws DomainError when the other waits for this one. */
export const holdFor = (db: Executor, id: number, rev: number, otherId: number | null): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    const other = otherId === null ? null : await rowOf(trx, 'operation', otherId);
    if (other && (await waitsFor(trx, other.id, id)))
      throw new DomainError({
        given: `“${other.title}” itself waits for this operation.`,
        limit: 'Two operations cannot be kept back for each other.',
        tryThis: 'Hold it for another one.',
        about: ['held_for'],
      });
    return saveRow(trx, 'operation', id, rev, { held_for_id: otherId });
  });

/** figure: the key of the figure that the reading answers to, null if it answers to none. */
export type MeasuredNow = { readonly figure: string | null; readonly reading: NewReading };

async function noteReadings(db: Executor, id: number, measured: readonly MeasuredNow[]): Promise<void> {
  for (const { figure, reading } of measured) {
    await addReading(db, { operationId: id }, reading);
    if (figure !== null) await setMeasured(db, id, figure, reading.value);
  }
}

/** Notes what was measured, without saying that the operation is done. */
export const noteMeasured = (db: Executor, id: number, rev: number, measured: readonly MeasuredNow[]): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    await noteReadings(trx, id, measured);
    return saveRow(trx, 'operation', id, rev, {});
  });

type Done = { readonly on: string; readonly minutes: number | null; readonly measured: readonly MeasuredNow[] };
export const markDone = (db: Executor, id: number, rev: number, { on, minutes, measured }: Done): Promise<Row<'operation'>> =>
  together(db, async (trx) => {
    await noteReadings(trx, id, measured);
    return saveRow(trx, 'operation', id, rev, { done_on: on, minutes_taken: minutes });
  });

/** Not done after all; readings stay. */
export const markUndone = (db: Executor, id: number, rev: number): Promise<Row<'operation'>> =>
  saveRow(db, 'operation', id, rev, { done_on: null, minutes_taken: null });

const listOf = <T>(text: string): readonly T[] => JSON.parse(text) as readonly T[];

/** These operations with everything on them, in the order given. */
async function operationLines(db: Executor, rows: readonly Row<'operation'>[]): Promise<OperationLine[]> {
  const ids = rows.map((row) => row.id);
  const needs = await needsOf(db, ids);
  const [figuresOn, needsOn] = [ownRows(await figuresOf(db, ids)), ownRows(needs)];
  const follows = ids.length === 0 ? [] : await db.selectFrom('follows').selectAll().where('operation_id', 'in', ids).execute();
  const setUp = await setUpsById(db, [...new Set(rows.map((row) => row.set_up_id))]);
  const states = await statesOf(db, ids, needs);
  const afterOn = ownRows(follows);
  return rows.map((row) => ({
    ...row,
    setUp: setUp(row.set_up_id),
    steps: listOf<string>(row.steps),
    measures: listOf<Measure>(row.measures),
    cautions: listOf<Caution>(row.cautions),
    figures: figuresOn(row.id),
    needs: needsOn(row.id),
    after: afterOn(row.id).map((one) => one.after_id),
    ...states(row.id),
  }));
}

/** Throws RecordNotFound. */
export const operation = untilChanged(async (db: Executor, id: number): Promise<OperationLine> => {
  const [line] = await operationLines(db, [await rowOf(db, 'operation', id)]);
  return line as OperationLine;
});

/** All operations of several routings, those of each in order; 500 for each routing at most. */
export const operationsOfAll = untilChanged(
  async (db: Executor, routingIds: readonly number[]): Promise<(routingId: number) => readonly OperationLine[]> => {
    if (routingIds.length === 0) return () => [];
    const query = db.selectFrom('operation').selectAll().where('routing_id', 'in', routingIds);
    const lines = await operationLines(
      db,
      await query
        .orderBy('routing_id')
        .orderBy('place_no')
        .limit(500 * routingIds.length)
        .execute(),
    );
    return (routingId) => lines.filter((line) => line.routing_id === routingId);
  },
);

/** All operations of a routing in order, the struck ones among them. */
export const operationsOf = untilChanged(async (db: Executor, routingId: number): Promise<OperationLine[]> => {
  const rows = await db.selectFrom('operation').selectAll().where('routing_id', '=', routingId).orderBy('place_no').limit(500).execute();
  return operationLines(db, rows);
});
