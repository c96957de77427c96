import { rowOf } from './changes.ts';
import { type Executor, together } from './executor.ts';
import { forgetFound } from './search.ts';

/** The part is filled, or was made or begun once: its history stays. */
export class PartStays extends Error {
  readonly partId: number;
  constructor(partId: number) {
    super('Something fills this part, or work on it has begun once: it stays on record. “Do without” says that it is not wanted.');
    this.name = 'PartStays';
    this.partId = partId;
  }
}

/** Takes a place off the list that was put there by mistake. Throws RecordNotFound, PartStays. */
export const removePart = (db: Executor, id: number): Promise<void> =>
  together(db, async (trx) => {
    const part = await rowOf(trx, 'part', id);
    const begun = await trx.selectFrom('routing').select('id').where('part_id', '=', id).executeTakeFirst();
    if (part.item_id !== null || begun) throw new PartStays(id);
    await trx.deleteFrom('reading').where('part_id', '=', id).execute();
    await trx.deleteFrom('part').where('id', '=', id).execute();
    if (part.gear_id !== null) await removeGear(trx, part.gear_id);
    await forgetFound(trx, 'part', id);
  });

/** A wheel has one owner: it goes with its part, and its bore with it. */
async function removeGear(db: Executor, id: number): Promise<void> {
  await db.deleteFrom('recess').where('gear_id', '=', id).execute();
  await db.deleteFrom('opening').where('gear_id', '=', id).execute();
  const gear = await db.deleteFrom('gear').where('id', '=', id).returning('bore_id').executeTakeFirst();
  if (gear && gear.bore_id !== null) await db.deleteFrom('bore').where('id', '=', gear.bore_id).execute();
}
