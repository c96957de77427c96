import { type Executor, together } from './executor.ts';
import type { MadeSheet, OperationKept } from './made-sheet.ts';
import { openRouting, type RoutingChoice } from './open-routing.ts';
import { addOperation, type OperationLine, operationsOf, strikeOut } from './operations.ts';

/** An operation that was added by hand stands again behind the one that it stood behind. */
async function addOwn(db: Executor, routingId: number, lines: readonly OperationLine[], kept: OperationKept, at: number): Promise<void> {
  const setUp = { key: 'bench', place: 'bench', machineId: null, says: 'Bench' } as const;
  const { title, steps, notes, minutesPlanned: minutes } = kept;
  const known = lines.find((line) => line.setUp.says === kept.setUp);
  await addOperation(db, routingId, { title, setUp: known?.setUp ?? setUp, steps, needs: [], minutes, notes, at });
}

/** Notes of the last time, and the minutes that it really took, come along; what was struck out is struck out again. */
async function asLastTime(db: Executor, line: OperationLine, kept: OperationKept, now: string): Promise<void> {
  const columns = { notes: kept.notes, minutes_planned: kept.minutesTaken ?? line.minutes_planned };
  await db.updateTable('operation').set(columns).where('id', '=', line.id).execute();
  if (kept.struck) await strikeOut(db, line.id, line.rev, now);
}

/**
 * Opens a routing for the same part again, from a record: planned by the part and the blank of today, with the notes, the times taken, the
 * operations struck out and those added by hand of the last time. What was measured or typed then belongs to the old wheel and stays there.
 * Throws as openRouting does.
 */
export const makeAgain = (db: Executor, sheet: MadeSheet, choice: RoutingChoice, now: string): Promise<number> =>
  together(db, async (trx) => {
    const id = await openRouting(trx, choice, now);
    const lines = await operationsOf(trx, id);
    for (const kept of sheet.operations) {
      const line = lines.find((one) => one.key !== null && one.key === kept.key);
      if (line) await asLastTime(trx, line, kept, now);
    }
    for (const [at, kept] of sheet.operations.entries()) if (kept.key === null && !kept.struck) await addOwn(trx, id, lines, kept, at + 1);
    return id;
  });
