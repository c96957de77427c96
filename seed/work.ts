import { leaveOff } from '../db/bookmarks.ts';
import { RecordNotFound } from '../db/changes.ts';
import type { Executor, Row } from '../db/executor.ts';
import { type MeasuredNow, markDone } from '../db/operations.ts';
import type { Measure } from '../lib/routing/operation.ts';
import { inches } from '../lib/values/length.ts';

/** What was read at an operation, in inches, by the figure that it answers to. */
type ReadInches = Readonly<Record<string, number>>;
export type ReadAt = Readonly<Record<string, ReadInches>>;

const rowsOf = (db: Executor, routingId: number): Promise<Row<'operation'>[]> =>
  db.selectFrom('operation').selectAll().where('routing_id', '=', routingId).orderBy('place_no').execute();

/** The operation with this key of lib, or with this title where it was added by hand. */
export async function lineOf(db: Executor, routingId: number, key: string): Promise<Row<'operation'>> {
  const found = (await rowsOf(db, routingId)).find((row) => row.key === key || row.title === key);
  if (!found) throw new RecordNotFound('operation', key);
  return found;
}

function readings(found: ReadInches, row: Row<'operation'>, on: string): MeasuredNow[] {
  const measures = JSON.parse(row.measures) as readonly Measure[];
  return Object.entries(found).map(([figure, inch]) => {
    const what = measures.find((one) => one.figure === figure)?.name ?? figure;
    const reading = {
      what,
      value: { length: inches(inch) },
      form: { unit: 'in', places: 4 },
      read_on: on,
      instrument: 'micrometer',
    } as const;
    return { figure, reading };
  });
}

const doneAs = (db: Executor, row: Row<'operation'>, on: string, found: ReadInches): Promise<unknown> =>
  markDone(db, row.id, row.rev, { on, minutes: row.minutes_planned, measured: readings(found, row, on) });

/** Marks an operation done in the time planned for it, with what was read. */
export async function did(db: Executor, routingId: number, key: string, on: string, found: ReadInches = {}): Promise<void> {
  await doneAs(db, await lineOf(db, routingId, key), on, found);
}

/** Everything of a routing in its order, up to and without an operation; all of it when none is named. found: what was read, by operation. */
export async function didUpTo(db: Executor, routingId: number, end: string | null, on: string, found: ReadAt = {}): Promise<void> {
  for (const row of await rowsOf(db, routingId)) {
    if (row.key === end) return;
    if (row.done_on === null && row.struck_on === null) await doneAs(db, row, on, found[row.key ?? ''] ?? {});
  }
}

/** Where work was left, with a note. */
export async function leftAt(db: Executor, routingId: number, key: string, note: string, at: string): Promise<void> {
  const { id } = await lineOf(db, routingId, key);
  await leaveOff(db, { routing_id: routingId, operation_id: id, note, at });
}
