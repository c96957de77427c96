import type { Executor } from './executor.ts';
import { untilChanged } from './until-changed.ts';

/** A wheel of a set whose place is empty. set_name: of the set that it belongs to. */
export type MissingWheel = { readonly id: number; readonly mark: string; readonly teeth: number; readonly set_name: string };

const MOST = 10;

/** Wheels of these numbers that are missing from a set of the shop, and not done without: the first ten. */
export const missingWheels = untilChanged(async (db: Executor, teeth: readonly number[]): Promise<MissingWheel[]> => {
  if (teeth.length === 0) return [];
  return db
    .selectFrom('part')
    .innerJoin('gear', 'gear.id', 'part.gear_id')
    .innerJoin('wheel_set', 'wheel_set.id', 'part.set_id')
    .select(['part.id', 'part.mark', 'gear.teeth', 'wheel_set.name as set_name'])
    .where('part.item_id', 'is', null)
    .where('gear.teeth', 'in', teeth)
    .where('part.way', 'is not', 'do without')
    .orderBy('gear.teeth')
    .orderBy('part.id')
    .limit(MOST)
    .execute();
});
