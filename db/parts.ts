import type { Forms } from './bores.ts';
import { type Changes, RecordNotFound, rowOf, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { type AnyGear, addGear, gearById, gearsOfRows, PITCH_UNKNOWN, replaceGear, type WheelOfRow } from './gears.ts';
import { isSpare } from './items.ts';
import { newPartMark } from './marks.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { makeFindable } from './search.ts';
import { untilChanged } from './until-changed.ts';

type OwnColumns = 'id' | 'rev' | 'gear_id' | 'mark' | 'item_id';
export type NewPart = Omit<NewRow<'part'>, OwnColumns> & { readonly gear?: AnyGear | null; readonly forms?: Forms };
/**
 * stored: its wheel; unknown: its wheel while only the teeth of that are counted. routing_id: the open routing, if any.
 * blank_fails: why the blank of that will not do.
 */
export type PartLine = Row<'part'> &
  WheelOfRow & {
    readonly routing_id: number | null;
    readonly blank_fails: string | null;
  };

/** The item is gone, promised, or in another part already. */
export class ItemTaken extends Error {
  readonly itemId: number;
  constructor(itemId: number) {
    super('This one is taken: it is fitted, promised to another part, or gone. Choose another, or release it first.');
    this.name = 'ItemTaken';
    this.itemId = itemId;
  }
}

/** The part is being made already. */
export class RoutingOpen extends Error {
  readonly partId: number;
  constructor(partId: number) {
    super('This part is being made: its routing is open. Finish it (made, or spoilt) or give the routing up first.');
    this.name = 'RoutingOpen';
    this.partId = partId;
  }
}

async function findable(db: Executor, row: Row<'part'>): Promise<Row<'part'>> {
  const unknown = row.gear_id !== null && (await gearById(db, row.gear_id)).gear.pitch === null;
  await makeFindable(db, {
    kind: 'part',
    ref: row.id,
    title: `${row.mark} ${row.name}`,
    text: [row.material, ...(unknown ? [PITCH_UNKNOWN] : [])],
    notes: [row.why, row.notes],
  });
  return row;
}

/** A place to be filled; it gets a mark of its own and starts as missing. */
export const addPart = (db: Executor, { gear = null, forms = {}, ...part }: NewPart): Promise<Row<'part'>> =>
  together(db, async (trx) => {
    const { mark: stem } = await rowOf(trx, 'project', part.project_id);
    const mark = await newPartMark(trx, stem, part.name, gear?.teeth ?? null);
    const gear_id = gear ? await addGear(trx, gear, forms) : null;
    return findable(
      trx,
      await trx
        .insertInto('part')
        .values({ ...part, mark, gear_id })
        .returningAll()
        .executeTakeFirstOrThrow(),
    );
  });

const lines = (db: Executor) =>
  db
    .selectFrom('part')
    .leftJoin('routing', (join) => join.onRef('routing.part_id', '=', 'part.id').on('routing.closed_on', 'is', null))
    .selectAll('part')
    .select(['routing.id as routing_id', 'routing.blank_fails']);

async function withGears(db: Executor, rows: readonly Omit<PartLine, keyof WheelOfRow>[]): Promise<PartLine[]> {
  const gear = await gearsOfRows(db, rows);
  return rows.map((row) => ({ ...row, ...gear(row.gear_id) }));
}

/** Throws RecordNotFound. */
export const part = untilChanged(async (db: Executor, id: number): Promise<PartLine> => {
  const [found] = await withGears(db, await lines(db).where('part.id', '=', id).execute());
  if (!found) throw new RecordNotFound('part', id);
  return found;
});

/** Many parts at once, in the order asked for. Throws RecordNotFound. */
export const partsById = untilChanged(async (db: Executor, ids: readonly number[]): Promise<PartLine[]> => {
  if (ids.length === 0) return [];
  const found = new Map((await withGears(db, await lines(db).where('part.id', 'in', ids).execute())).map((one) => [one.id, one]));
  return ids.map((id) => {
    const one = found.get(id);
    if (!one) throw new RecordNotFound('part', id);
    return one;
  });
});

export const partByMark = untilChanged(async (db: Executor, mark: string): Promise<PartLine | null> => {
  const [found] = await withGears(db, await lines(db).where('part.mark', '=', mark.trim().toUpperCase()).execute());
  return found ?? null;
});

/** While a part is being made, nothing else fills it and its way stays: what was promised and done would hang in the air. Throws RoutingOpen. */
async function refuseWhileMade(db: Executor, id: number): Promise<void> {
  const open = await db.selectFrom('routing').select('id').where('part_id', '=', id).where('closed_on', 'is', null).executeTakeFirst();
  if (open) throw new RoutingOpen(id);
}

/** Saves a part, and its gear when one is given (a part without one gets it). Throws RecordNotFound, RecordChanged, RoutingOpen (another way, or a pitch no longer known). */
export const savePart = (
  db: Executor,
  id: number,
  rev: number,
  changes: Omit<Changes<'part'>, 'gear_id' | 'mark' | 'item_id'>,
  wheel: { readonly gear: AnyGear; readonly forms?: Forms; readonly foundBy?: string } | null = null,
): Promise<Row<'part'>> =>
  together(db, async (trx) => {
    const { way, gear_id } = await rowOf(trx, 'part', id);
    const forgets = wheel?.gear.pitch === null && gear_id !== null && (await gearById(trx, gear_id)).gear.pitch !== null;
    if (forgets || (changes.way !== undefined && changes.way !== way)) await refuseWhileMade(trx, id);
    const row = await saveRow(trx, 'part', id, rev, changes);
    if (!wheel) return findable(trx, row);
    if (row.gear_id !== null) await replaceGear(trx, row.gear_id, wheel.gear, wheel.forms, wheel.foundBy);
    else
      await trx
        .updateTable('part')
        .set({ gear_id: await addGear(trx, wheel.gear, wheel.forms) })
        .where('id', '=', id)
        .execute();
    return findable(trx, await rowOf(trx, 'part', id));
  });

/** Puts a spare in its place. Throws RecordNotFound, RecordChanged, ItemTaken, RoutingOpen. */
export const fitItem = (db: Executor, id: number, rev: number, itemId: number): Promise<Row<'part'>> =>
  together(db, async (trx) => {
    await refuseWhileMade(trx, id);
    await rowOf(trx, 'item', itemId);
    const spare = await trx.selectFrom('item').select('id').where('id', '=', itemId).where(isSpare).executeTakeFirst();
    if (!spare) throw new ItemTaken(itemId);
    return saveRow(trx, 'part', id, rev, { item_id: itemId });
  });

/** Takes out what fills a part: the part is missing again, the item a spare. Throws RecordNotFound, RecordChanged. */
export const takeOut = (db: Executor, id: number, rev: number): Promise<Row<'part'>> => saveRow(db, 'part', id, rev, { item_id: null });

/** Parts of a machine, newest first; only the missing ones if wanted. */
export const partsOfProject = untilChanged(
  async (db: Executor, projectId: number, only: 'all' | 'missing', ask: PageAsk): Promise<Page<PartLine>> => {
    const rows = await lines(db)
      .where('part.project_id', '=', projectId)
      .where('part.id', '<', startOf(ask))
      .$if(only === 'missing', (query) => query.where('part.item_id', 'is', null))
      .orderBy('part.id', 'desc')
      .limit(ask.size + 1)
      .execute();
    return pageOf(await withGears(db, rows), ask, (row) => row.id);
  },
);

export const partsOfAssembly = untilChanged(async (db: Executor, assemblyId: number, ask: PageAsk): Promise<Page<PartLine>> => {
  const query = lines(db).where('part.assembly_id', '=', assemblyId).where('part.id', '<', startOf(ask));
  const rows = await query
    .orderBy('part.id', 'desc')
    .limit(ask.size + 1)
    .execute();
  return pageOf(await withGears(db, rows), ask, (row) => row.id);
});

const MOST_OF_SET = 200;

/** All wheels that belong to each of several sets, filled or missing; 200 of each at most. */
export const partsOfSets = untilChanged(async (db: Executor, setIds: readonly number[]): Promise<(setId: number) => PartLine[]> => {
  if (setIds.length === 0) return () => [];
  const rows = await lines(db)
    .where('part.set_id', 'in', setIds)
    .orderBy('part.id')
    .limit(MOST_OF_SET * setIds.length)
    .execute();
  const found = await withGears(db, rows);
  return (setId) => found.filter((one) => one.set_id === setId).slice(0, MOST_OF_SET);
});

/** The same of one. */
export const partsOfSet = async (db: Executor, setId: number): Promise<PartLine[]> => (await partsOfSets(db, [setId]))(setId);
