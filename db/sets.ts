import type { Gear } from '../lib/gears/gear.ts';
import type { Changes } from './changes.ts';
import { rowOf, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { type ItemLine, itemsOfSet } from './items.ts';
import { fitItem, type PartLine, partsOfSet } from './parts.ts';
import { untilChanged } from './until-changed.ts';

export type NewSet = Omit<NewRow<'wheel_set'>, 'id' | 'rev' | 'pattern'> & { readonly pattern: Omit<Gear, 'teeth'> | null };
export type SetLine = Row<'wheel_set'> & { readonly project_id: number; readonly belong: number; readonly missing: number };

const asText = (pattern: Omit<Gear, 'teeth'> | null): string | null => (pattern ? JSON.stringify(pattern) : null);

export const addSet = (db: Executor, { pattern, ...set }: NewSet): Promise<Row<'wheel_set'>> =>
  db
    .insertInto('wheel_set')
    .values({ ...set, pattern: asText(pattern) })
    .returningAll()
    .executeTakeFirstOrThrow();

export const wheelSet = (db: Executor, id: number): Promise<Row<'wheel_set'>> => rowOf(db, 'wheel_set', id);

/** What to fill a new wheel's form in with. */
export const patternOf = (set: Row<'wheel_set'>): Omit<Gear, 'teeth'> | null =>
  set.pattern === null ? null : (JSON.parse(set.pattern) as Omit<Gear, 'teeth'>);

/** Throws RecordNotFound, RecordChanged. */
export const saveSet = (
  db: Executor,
  id: number,
  rev: number,
  { pattern, ...changes }: Omit<Changes<'wheel_set'>, 'pattern'> & { readonly pattern: Omit<Gear, 'teeth'> | null },
): Promise<Row<'wheel_set'>> => saveRow(db, 'wheel_set', id, rev, { ...changes, pattern: asText(pattern) });

/** The change-gear sets of a machine with how many wheels belong and how many are missing; 100 at most. */
export const setsOfProject = untilChanged(
  (db: Executor, projectId: number): Promise<SetLine[]> =>
    db
      .selectFrom('assembly')
      .innerJoin('wheel_set', 'wheel_set.assembly_id', 'assembly.id')
      .selectAll('wheel_set')
      .select((eb) => [
        'assembly.project_id',
        eb
          .selectFrom('part')
          .whereRef('part.set_id', '=', 'wheel_set.id')
          .select(eb.fn.countAll<number>().as('n'))
          .$asScalar()
          .$notNull()
          .as('belong'),
        eb
          .selectFrom('part')
          .whereRef('part.set_id', '=', 'wheel_set.id')
          .where('part.item_id', 'is', null)
          .select(eb.fn.countAll<number>().as('n'))
          .$asScalar()
          .$notNull()
          .as('missing'),
      ])
      .where('assembly.project_id', '=', projectId)
      .orderBy('assembly.id')
      .orderBy('wheel_set.id')
      .limit(100)
      .execute(),
);

const sameTooth = (a: Gear, b: Gear): boolean =>
  a.teeth === b.teeth &&
  a.pitch.kind === b.pitch.kind &&
  a.pitch.size[0] * b.pitch.size[1] === b.pitch.size[0] * a.pitch.size[1] &&
  a.system.angle === b.system.angle;

/** Of like wheels the original stays on the machine; then the one that was put in the drawer first. */
const TRUST_ORDER = ['original', 'unknown', 'replacement'];
const best = (spares: readonly ItemLine[]): ItemLine | undefined =>
  [...spares].sort((a, b) => TRUST_ORDER.indexOf(a.trust) - TRUST_ORDER.indexOf(b.trust) || a.id - b.id)[0];

const likes = (place: PartLine, drawer: readonly ItemLine[]): ItemLine[] => {
  const want = place.stored?.gear;
  return want ? drawer.filter((item) => item.state === 'spare' && item.stored && sameTooth(item.stored.gear, want)) : [];
};

async function fillOne(db: Executor, place: PartLine, drawer: readonly ItemLine[]): Promise<number | null> {
  if (place.item_id !== null || place.routing_id !== null) return null;
  const chosen = best(likes(place, drawer));
  if (!chosen) return null;
  await fitItem(db, place.id, place.rev, chosen.id);
  return chosen.id;
}

/** The marks of places for which a like wheel lies in the drawer, and which stay empty because they are being made. */
export const madeThoughThere = untilChanged(async (db: Executor, setId: number): Promise<string[]> => {
  const drawer = await itemsOfSet(db, setId);
  const made = (await partsOfSet(db, setId)).filter((place) => place.item_id === null && place.routing_id !== null);
  return made.filter((place) => likes(place, drawer).length > 0).map(({ mark }) => mark);
});

/** Gives every missing place of a set the like wheel from its drawer, if one lies there. One that is being made stays. Gives how many were filled. */
export const fillFromDrawer = (db: Executor, setId: number): Promise<number> =>
  together(db, async (trx) => {
    let drawer = await itemsOfSet(trx, setId);
    const before = drawer.length;
    for (const place of await partsOfSet(trx, setId)) {
      const used = await fillOne(trx, place, drawer);
      drawer = drawer.filter((item) => item.id !== used);
    }
    return before - drawer.length;
  });
