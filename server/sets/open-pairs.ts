import { item } from '../../db/items.ts';
import { openRoutings } from '../../db/open-routing.ts';
import { fitItem, part, takeOut } from '../../db/parts.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Db } from '../visit.ts';
import { type Bench, isLike, isToBeChosen } from './bench.ts';

export type OpenPair = { readonly partId: number; readonly itemId: number };

const MOST_PAIRS = 20;

/** "12:34,13:35" as pairs of part and spare; null for anything else. */
export function readPairs(text: unknown): readonly OpenPair[] | null {
  if (typeof text !== 'string' || !/^\d{1,15}:\d{1,15}(,\d{1,15}:\d{1,15})*$/.test(text)) return null;
  const pairs = text.split(',').map((pair) => {
    const [partId = 0, itemId = 0] = pair.split(':').map(Number);
    return { partId, itemId };
  });
  return pairs.length <= MOST_PAIRS ? pairs : null;
}

const refuse = (given: string, limit: string): DomainError =>
  new DomainError({ given, limit, tryThis: 'Look at the set as it stands now, and choose again.', about: ['choices'] });

/** A wheel that is to be cut though it stands on the machine: its like from the drawer takes its place first. */
async function putLikeInPlace(db: Db, bench: Bench, itemId: number, kept: ReadonlySet<number>): Promise<void> {
  const { state, part_id } = await item(db, itemId);
  if (state !== 'fitted' || part_id === null) return;
  const own = bench.drawer.find((wheel) => wheel.item.id === itemId);
  const like = bench.drawer.find(
    (wheel) => own && wheel.item.state === 'spare' && !kept.has(wheel.item.id) && isLike(wheel.spare.gear, own.spare.gear),
  );
  if (!like) throw refuse(`Drawer ${itemId} stands on the machine.`, 'No like wheel of the drawer can take its place.');
  const place = await takeOut(db, part_id, (await part(db, part_id)).rev);
  await fitItem(db, part_id, place.rev, like.item.id);
}

/** Promises each blank to its part and opens the routings together. Throws DomainError, ItemTaken, RoutingOpen. */
export async function openPairs(db: Db, bench: Bench, pairs: readonly OpenPair[], now: string): Promise<void> {
  const open = new Set(bench.places.filter(isToBeChosen).map(({ id }) => id));
  const stray = pairs.find(({ partId }) => !open.has(partId));
  if (stray) throw refuse('One of these wheels is no longer to be chosen for.', 'It is there, being made, or no part of this set.');
  const cut = new Set(pairs.map(({ itemId }) => itemId));
  for (const { itemId } of pairs) await putLikeInPlace(db, bench, itemId, cut);
  const way = 're-cut a spare' as const;
  await openRoutings(
    db,
    pairs.map(({ partId, itemId }) => ({ partId, way, itemIds: [itemId] })),
    now,
  );
}
