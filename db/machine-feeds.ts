import type { LengthForm } from '../lib/values/print.ts';
import type { Executor } from './executor.ts';
import { formOfText } from './forms.ts';
import { untilChanged } from './until-changed.ts';

/** How the feeds of a shop machine were typed; null when it has none. */
export const feedFormOf = untilChanged(async (db: Executor, machineId: number): Promise<LengthForm | null> => {
  const row = await db.selectFrom('machine_feed').select('feed_form').where('machine_id', '=', machineId).executeTakeFirst();
  return row ? formOfText(row.feed_form) : null;
});
