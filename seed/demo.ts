import type { Executor } from '../db/executor.ts';
import { together } from '../db/executor.ts';
import { fillAshdownLyle } from './ashdown-lyle.ts';
import { fillDunmarrow } from './dunmarrow.ts';
import { fillFinished } from './finished.ts';
import { fillHalvorsen } from './halvorsen.ts';
import { fillThornburyPell } from './thornbury-pell.ts';
import { fillTooling } from './tooling.ts';

/** Somebody's records are in the file already: the invented shop is only ever written into an empty one. */
export class NotEmpty extends Error {
  constructor() {
    super('The demo shop is only filled into an empty file.');
    this.name = 'NotEmpty';
  }
}

async function refuseFilled(db: Executor): Promise<void> {
  for (const table of ['project', 'item', 'tool', 'machine'] as const)
    if (await db.selectFrom(table).select('id').limit(1).executeTakeFirst()) throw new NotEmpty();
}

/** Fills an empty file with the invented shop, all or nothing. now: the present as ISO text. Throws NotEmpty. */
export const fillDemo = (db: Executor, now: string): Promise<void> =>
  together(db, async (trx) => {
    await refuseFilled(trx);
    await fillTooling(trx, now);
    await fillFinished(trx, now);
    await fillHalvorsen(trx, now);
    await fillDunmarrow(trx, now);
    await fillAshdownLyle(trx, now);
    await fillThornburyPell(trx, now);
  });
