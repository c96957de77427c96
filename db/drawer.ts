import { type ExpressionBuilder, sql } from 'kysely';
import type { Pitch } from '../lib/gears/gear.ts';
import type { Executor, Row } from './executor.ts';
import { type ItemLine, isSpare, itemsById } from './items.ts';
import type { Schema } from './schema.ts';
import { untilChanged } from './until-changed.ts';

/** What to show of the drawer. kind, pitch null: any. gone: only what is no longer there. */
export type DrawerAsk = {
  readonly kind: Row<'item'>['kind'] | null;
  readonly pitch: Pitch | null;
  readonly sparesOnly: boolean;
  readonly gone: boolean;
  readonly by: 'newest' | 'teeth';
  /** The place after which the page begins: the last row of the page before. */
  readonly after: { readonly id: number; readonly teeth: number } | null;
  readonly size: number;
};

/** next: what to ask for as `after`; null on the last page. */
export type DrawerPage = { readonly rows: readonly ItemLine[]; readonly next: { readonly id: number; readonly teeth: number } | null };

/** Things without teeth come after all wheels. */
const teethOf = sql<number>`coalesce(gear.teeth, 1000000)`;

function asked(db: Executor, { kind, pitch, sparesOnly, gone }: DrawerAsk) {
  let query = db
    .selectFrom('item')
    .leftJoin('gear', 'gear.id', 'item.gear_id')
    .select(['item.id', teethOf.as('teeth')]);
  query = gone ? query.where('item.gone_on', 'is not', null) : query.where('item.gone_on', 'is', null);
  if (kind) query = query.where('item.kind', '=', kind);
  if (sparesOnly) query = query.where((eb) => isSpare(eb as unknown as ExpressionBuilder<Schema, 'item'>));
  if (!pitch) return query;
  const [num, den] = pitch.size;
  return query.where('gear.pitch_kind', '=', pitch.kind).where('gear.pitch_num', '=', num).where('gear.pitch_den', '=', den);
}

function ordered(db: Executor, ask: DrawerAsk) {
  const { by, after } = ask;
  const query = asked(db, ask);
  if (by === 'newest') return (after ? query.where('item.id', '<', after.id) : query).orderBy('item.id', 'desc');
  const later = after ? query.where(sql<boolean>`(${teethOf}, item.id) > (${after.teeth}, ${after.id})`) : query;
  return later.orderBy(teethOf).orderBy('item.id');
}

/** One page of the drawer: wheels, bars, castings and the rest, by their teeth or newest first. */
export const drawerPage = untilChanged(async (db: Executor, ask: DrawerAsk): Promise<DrawerPage> => {
  const found = await ordered(db, ask)
    .limit(ask.size + 1)
    .execute();
  const shown = found.slice(0, ask.size);
  const last = shown.at(-1);
  const rows = await itemsById(
    db,
    shown.map((row) => row.id),
  );
  return { rows, next: found.length > ask.size && last ? { id: last.id, teeth: last.teeth } : null };
});

/** Whether anything was ever put in. */
export const drawerIsEmpty = untilChanged(
  async (db: Executor): Promise<boolean> => (await db.selectFrom('item').select('id').limit(1).executeTakeFirst()) === undefined,
);
