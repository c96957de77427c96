import { meets } from '../lib/routing/needs.ts';
import { rowOf } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { type Making, recordMade } from './made.ts';
import { photograph } from './made-sheet.ts';
import { settleNeeds } from './needs.ts';
import { refreshAllStale } from './replan.ts';

/**
 * Ends a routing, good or spoilt: takes its photograph, writes the record, uses up the blanks and, when it is good, fits what was made.
 * Throws RecordNotFound, RecordChanged.
 */
export const finishRouting = (db: Executor, making: Omit<Making, 'sheet'>): Promise<Row<'made'>> =>
  together(db, async (trx) => {
    const sheet = await photograph(trx, await rowOf(trx, 'routing', making.routingId));
    const made = await recordMade(trx, { ...making, sheet });
    await settleNeeds(trx, meets);
    await refreshAllStale(trx);
    return made;
  });
