import { RecordNotFound, rowOf, saveRow } from './changes.ts';
import { type Executor, type Row, together } from './executor.ts';
import { gearById } from './gears.ts';
import { addItem, type ItemLine, item } from './items.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { makeFindable } from './search.ts';
import { untilChanged } from './until-changed.ts';

/** sheet: all that was printed and measured, to be kept as it is. rev: the routing's. */
export type Making = {
  readonly routingId: number;
  readonly rev: number;
  readonly outcome: 'good' | 'scrap';
  readonly finishedOn: string;
  readonly minutes: number;
  readonly costCents: number;
  readonly notes: string;
  readonly sheet: unknown;
};
export type MadeLine = Omit<Row<'made'>, 'sheet'> & { readonly part_mark: string; readonly part_name: string; readonly project_id: number };

/** What a blank is afterwards: the whole of it gone, or a bar so much shorter (gone when nothing is left). */
async function useUp(db: Executor, blank: Row<'blank'>, on: string, outcome: Making['outcome']): Promise<void> {
  const old = await rowOf(db, 'item', blank.item_id);
  if (blank.takes_nm === null) {
    await saveRow(db, 'item', old.id, old.rev, { gone_on: on, gone_why: outcome === 'good' ? 'cut' : 'scrap' });
    return;
  }
  const length_nm = Math.max(0, (old.length_nm ?? 0) - blank.takes_nm);
  await saveRow(db, 'item', old.id, old.rev, length_nm === 0 ? { length_nm, gone_on: on, gone_why: 'used up' } : { length_nm });
}

/** The new thing, of the metal of its blank, put in its place. */
async function fitNew(db: Executor, made: Row<'made'>, part: Row<'part'>, blank: Row<'item'> | null): Promise<void> {
  const wheel = part.gear_id === null ? null : await gearById(db, part.gear_id);
  const { id } = await addItem(db, {
    kind: wheel ? 'wheel' : 'other',
    name: part.name,
    ...(wheel ? { gear: wheel.gear, forms: wheel.forms } : {}),
    set_id: part.set_id,
    kept_in: '',
    from_project_id: null,
    trust: 'replacement',
    condition: 'new',
    hardness: blank?.hardness ?? 'not tried',
    material: blank?.material ?? 'unknown',
    made_id: made.id,
    added_on: made.finished_on,
    notes: '',
  });
  await saveRow(db, 'part', part.id, part.rev, { item_id: id });
}

async function writeRecord(db: Executor, making: Making, part: Row<'part'>): Promise<Row<'made'>> {
  const { routingId, outcome, finishedOn, minutes, costCents, notes } = making;
  const row = { part_id: part.id, routing_id: routingId, outcome, finished_on: finishedOn, minutes, cost_cents: costCents, notes };
  const made = await db
    .insertInto('made')
    .values({ ...row, sheet: JSON.stringify(making.sheet) })
    .returningAll()
    .executeTakeFirstOrThrow();
  await makeFindable(db, {
    kind: 'made',
    ref: made.id,
    title: `${part.mark} ${part.name}, ${outcome}, ${finishedOn.slice(0, 10)}`,
    text: [],
    notes: [notes],
  });
  return made;
}

/**
 * Records what came of a routing and closes it. Good: the blanks are gone as cut, a new item fills the part. Scrap: the blanks are gone,
 * the part is still missing and may be begun again. Throws RecordNotFound, RecordChanged (the routing was closed meanwhile).
 */
export const recordMade = (db: Executor, making: Making): Promise<Row<'made'>> =>
  together(db, async (trx) => {
    const routing = await saveRow(trx, 'routing', making.routingId, making.rev, { closed_on: making.finishedOn });
    const part = await rowOf(trx, 'part', routing.part_id);
    const blanks = await trx.selectFrom('blank').selectAll().where('routing_id', '=', routing.id).where('released', '=', 0).execute();
    const made = await writeRecord(trx, making, part);
    const main = blanks.find((blank) => blank.role !== 'hub') ?? blanks[0];
    const metal = main ? await rowOf(trx, 'item', main.item_id) : null;
    for (const blank of blanks) await useUp(trx, blank, making.finishedOn, making.outcome);
    if (making.outcome === 'good') await fitNew(trx, made, part, metal);
    await trx.deleteFrom('bookmark').where('routing_id', '=', routing.id).execute();
    return made;
  });

/** What an item was cut from: one blank, or a hub and a ring; nothing if it was not made here. */
export const cutFrom = untilChanged(async (db: Executor, itemId: number): Promise<ItemLine[]> => {
  const rows = await db
    .selectFrom('item')
    .innerJoin('made', 'made.id', 'item.made_id')
    .innerJoin('blank', 'blank.routing_id', 'made.routing_id')
    .select('blank.item_id')
    .where('item.id', '=', itemId)
    .where('blank.released', '=', 0)
    .orderBy('blank.role')
    .execute();
  const items: ItemLine[] = [];
  for (const row of rows) items.push(await item(db, row.item_id));
  return items;
});

export const MADE_COLUMNS = [
  'made.id',
  'made.part_id',
  'made.routing_id',
  'made.outcome',
  'made.finished_on',
  'made.minutes',
  'made.cost_cents',
  'made.notes',
  'part.mark as part_mark',
  'part.name as part_name',
  'part.project_id',
] as const;

const lines = (db: Executor) => db.selectFrom('made').innerJoin('part', 'part.id', 'made.part_id').select(MADE_COLUMNS);

/** All made records, newest first, without their sheets. */
export const madeRecords = untilChanged(async (db: Executor, ask: PageAsk): Promise<Page<MadeLine>> => {
  const rows = await lines(db)
    .where('made.id', '<', startOf(ask))
    .orderBy('made.id', 'desc')
    .limit(ask.size + 1)
    .execute();
  return pageOf(rows, ask, (row) => row.id);
});

export const madeOfPart = untilChanged(async (db: Executor, partId: number, ask: PageAsk): Promise<Page<MadeLine>> => {
  const query = lines(db).where('made.part_id', '=', partId).where('made.id', '<', startOf(ask));
  return pageOf(
    await query
      .orderBy('made.id', 'desc')
      .limit(ask.size + 1)
      .execute(),
    ask,
    (row) => row.id,
  );
});

/** One record with its sheet as it was kept. item_id: what came of it, null when scrap. Throws RecordNotFound. */
export const madeRecord = untilChanged(async (db: Executor, id: number): Promise<MadeLine & { sheet: unknown; item_id: number | null }> => {
  const query = lines(db).leftJoin('item', 'item.made_id', 'made.id').select(['made.sheet', 'item.id as item_id']);
  const row = await query.where('made.id', '=', id).executeTakeFirst();
  if (!row) throw new RecordNotFound('made record', id);
  return { ...row, sheet: JSON.parse(row.sheet) as unknown };
});
