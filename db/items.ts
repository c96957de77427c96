import { type ExpressionBuilder, type SqlBool, sql } from 'kysely';
import type { Forms } from './bores.ts';
import { type Changes, RecordNotFound, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { type AnyGear, addGear, gearById, gearsOfRows, PITCH_UNKNOWN, replaceGear, type WheelOfRow } from './gears.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import type { Schema } from './schema.ts';
import { makeFindable } from './search.ts';
import { untilChanged } from './until-changed.ts';

/** Worked out, never stored. gone: used, sold or lost. fitted: a part holds it. promised: an open blank claims the whole of it. */
type ItemState = 'gone' | 'fitted' | 'promised' | 'spare';

type OwnColumns = 'id' | 'rev' | 'gear_id' | 'made_id' | 'gone_on' | 'gone_why';
/** made_id: the record that it came of, when it was made here. */
export type NewItem = Omit<NewRow<'item'>, OwnColumns> & {
  readonly gear?: AnyGear | null;
  readonly forms?: Forms;
  readonly made_id?: number;
};
/**
 * part: the mark and id of the part that holds it or that it is promised to. cut_nm, cut_marks: of a bar, the length that is promised
 * to parts, and their marks; 0 and null while none is.
 */
export type ItemLine = Row<'item'> &
  WheelOfRow & {
    readonly state: ItemState;
    readonly part_id: number | null;
    readonly part_mark: string | null;
    readonly cut_nm: number;
    readonly cut_marks: string | null;
  };

const openBlank = sql<SqlBool>`exists (select 1 from blank where blank.item_id = item.id and blank.takes_nm is null and blank.released = 0)`;
const heldByPart = sql<SqlBool>`exists (select 1 from part where part.item_id = item.id)`;

/** True for a row of `item` that is a spare. */
export const isSpare = (eb: ExpressionBuilder<Schema, 'item'>) =>
  eb.and([eb('item.gone_on', 'is', null), eb.not(heldByPart), eb.not(openBlank)]);

const state = sql<ItemState>`case when item.gone_on is not null then 'gone' when ${heldByPart} then 'fitted'
  when ${openBlank} then 'promised' else 'spare' end`;

/** The promised lengths of a bar; those of closed routings are cut off it already. */
const cuts = sql`from blank cut join routing cutting on cutting.id = cut.routing_id join part cut_for on cut_for.id = cutting.part_id
  where cut.item_id = item.id and cut.released = 0 and cut.takes_nm is not null and cutting.closed_on is null`;
const cutLength = sql<number>`(select coalesce(sum(cut.takes_nm), 0) ${cuts})`;
const cutMarks = sql<string | null>`(select group_concat(cut_for.mark, ', ' order by cut_for.mark) ${cuts})`;

const MOST_OF_SET = 200;

const lines = (db: Executor) =>
  db
    .selectFrom('item')
    .leftJoin('part as holder', 'holder.item_id', 'item.id')
    .leftJoin('blank', (join) =>
      join
        .onRef('blank.item_id', '=', 'item.id')
        .on('blank.released', '=', 0)
        .on('blank.takes_nm', 'is', null)
        .on('item.gone_on', 'is', null),
    )
    .leftJoin('routing', 'routing.id', 'blank.routing_id')
    .leftJoin('part as promised', 'promised.id', 'routing.part_id')
    .selectAll('item')
    .select((eb) => [
      state.as('state'),
      eb.fn.coalesce('holder.id', 'promised.id').as('part_id'),
      eb.fn.coalesce('holder.mark', 'promised.mark').as('part_mark'),
      cutLength.as('cut_nm'),
      cutMarks.as('cut_marks'),
    ]);

type BareLine = Omit<ItemLine, keyof WheelOfRow>;
async function withGears(db: Executor, rows: readonly BareLine[]): Promise<ItemLine[]> {
  const gear = await gearsOfRows(db, rows);
  return rows.map((row) => ({ ...row, ...gear(row.gear_id) }));
}

async function findable(db: Executor, row: Row<'item'>): Promise<Row<'item'>> {
  const wheel = row.gear_id === null ? null : await gearById(db, row.gear_id);
  const teeth = wheel ? `${wheel.gear.teeth}T` : '';
  const title = row.name || (wheel ? `${wheel.gear.teeth} teeth` : row.kind);
  await makeFindable(db, {
    kind: 'item',
    ref: row.id,
    title,
    text: [teeth, ...(wheel?.gear.pitch === null ? [PITCH_UNKNOWN] : []), row.kind, row.material, row.kept_in, row.condition],
    notes: [row.notes],
  });
  return row;
}

/** Puts a thing on record; a wheel with its gear. */
export const addItem = (db: Executor, { gear = null, forms = {}, ...item }: NewItem): Promise<Row<'item'>> =>
  together(db, async (trx) => {
    const gear_id = gear ? await addGear(trx, gear, forms) : null;
    const row = await trx
      .insertInto('item')
      .values({ ...item, gear_id })
      .returningAll()
      .executeTakeFirstOrThrow();
    return findable(trx, row);
  });

/** Throws RecordNotFound. */
export const item = untilChanged(async (db: Executor, id: number): Promise<ItemLine> => {
  const [found] = await withGears(db, await lines(db).where('item.id', '=', id).execute());
  if (!found) throw new RecordNotFound('item', id);
  return found;
});

/** Many things at once, in the order asked for; those that are not there are left out. */
export const itemsById = untilChanged(async (db: Executor, ids: readonly number[]): Promise<ItemLine[]> => {
  if (ids.length === 0) return [];
  const found = new Map((await withGears(db, await lines(db).where('item.id', 'in', ids).execute())).map((one) => [one.id, one]));
  return ids.flatMap((id) => found.get(id) ?? []);
});

/** Saves a thing, and its gear when one is given. Throws RecordNotFound, RecordChanged. */
export const saveItem = (
  db: Executor,
  id: number,
  rev: number,
  changes: Omit<Changes<'item'>, 'gear_id' | 'made_id'>,
  wheel: { readonly gear: AnyGear; readonly forms?: Forms; readonly foundBy?: string } | null = null,
): Promise<Row<'item'>> =>
  together(db, async (trx) => {
    const row = await saveRow(trx, 'item', id, rev, changes);
    if (wheel && row.gear_id !== null) await replaceGear(trx, row.gear_id, wheel.gear, wheel.forms, wheel.foundBy);
    return findable(trx, row);
  });

/** What lies in the drawer of a set, gone things left out; a drawer holds 200 at most. */
export const itemsOfSet = async (db: Executor, setId: number): Promise<ItemLine[]> => (await itemsOfSets(db, [setId]))(setId);

/** The same of several sets. */
export const itemsOfSets = untilChanged(async (db: Executor, setIds: readonly number[]): Promise<(setId: number) => ItemLine[]> => {
  if (setIds.length === 0) return () => [];
  const rows = await lines(db)
    .where('item.set_id', 'in', setIds)
    .where('item.gone_on', 'is', null)
    .orderBy('item.id')
    .limit(MOST_OF_SET * setIds.length)
    .execute();
  const found = await withGears(db, rows);
  return (setId) => found.filter((one) => one.set_id === setId).slice(0, MOST_OF_SET);
});

/** Things still here, newest first, of one kind; only spares if wanted. */
export const items = untilChanged(
  async (db: Executor, kind: Row<'item'>['kind'], only: 'all' | 'spares', ask: PageAsk): Promise<Page<ItemLine>> => {
    const rows = await lines(db)
      .where('item.kind', '=', kind)
      .where('item.gone_on', 'is', null)
      .where('item.id', '<', startOf(ask))
      .$if(only === 'spares', (query) => query.where((eb) => isSpare(eb as unknown as ExpressionBuilder<Schema, 'item'>)))
      .orderBy('item.id', 'desc')
      .limit(ask.size + 1)
      .execute();
    return pageOf(await withGears(db, rows), ask, (row) => row.id);
  },
);

/** The spare wheels of the whole shop, whatever drawer they lie in: candidates for a blank. Newest first. */
export const spareWheels = (db: Executor, ask: PageAsk): Promise<Page<ItemLine>> => items(db, 'wheel', 'spares', ask);
