import { assembly } from '../../db/assemblies.ts';
import type { Row } from '../../db/executor.ts';
import { type ItemLine, itemsOfSet, spareWheels } from '../../db/items.ts';
import { type PartLine, partsOfSet } from '../../db/parts.ts';
import { project } from '../../db/projects.ts';
import { readingsOfItems } from '../../db/readings-of-items.ts';
import { wheelSet } from '../../db/sets.ts';
import { shopNow } from '../../db/shop-now.ts';
import { spareOf } from '../../db/spares/spare-of.ts';
import type { SpareWheel } from '../../lib/blanks/spare-wheel.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { samePitch } from '../../lib/gears/pitch.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import type { Db } from '../visit.ts';

/** A place of the set that a wheel belongs in; a wheel that lies somewhere, as lib takes it. */
export type Place = PartLine & { readonly gear: Gear };
export type Wheel = { readonly item: ItemLine; readonly spare: SpareWheel };

/** A set laid out on the bench: what belongs, what lies in its drawer, and other spare wheels of the shop. */
export type Bench = {
  readonly set: Row<'wheel_set'>;
  readonly assembly: Row<'assembly'>;
  readonly project: Row<'project'>;
  readonly places: readonly Place[];
  readonly drawer: readonly Wheel[];
  readonly elsewhere: readonly Wheel[];
  /** Of unknown pitch: places and things whose teeth are counted. Nothing is reckoned with them. */
  readonly unknown: { readonly places: readonly PartLine[]; readonly drawer: readonly ItemLine[] };
  readonly shop: ShopNow;
};

const MOST_ELSEWHERE = 100;

export async function wheelsOf(db: Db, items: readonly ItemLine[]): Promise<Wheel[]> {
  const readings = await readingsOfItems(
    db,
    items.map(({ id }) => id),
  );
  return items.flatMap((item) => {
    const spare = spareOf(item, readings.get(item.id) ?? []);
    return spare ? [{ item, spare }] : [];
  });
}

const byTeeth =
  <T>(teethOf: (one: T) => number, idOf: (one: T) => number) =>
  (a: T, b: T) =>
    teethOf(a) - teethOf(b) || idOf(a) - idOf(b);

/** Throws RecordNotFound. */
export async function benchOf(db: Db, setId: number): Promise<Bench> {
  const set = await wheelSet(db, setId);
  const within = await assembly(db, set.assembly_id);
  const parts = await partsOfSet(db, setId);
  const things = await itemsOfSet(db, setId);
  const drawer = await wheelsOf(db, things);
  const others = (await spareWheels(db, { before: null, size: MOST_ELSEWHERE })).rows.filter((one) => one.set_id !== setId);
  return {
    set,
    assembly: within,
    project: await project(db, within.project_id),
    places: parts
      .flatMap((part) => (part.stored ? [{ ...part, gear: part.stored.gear }] : []))
      .sort(
        byTeeth(
          (one) => one.gear.teeth,
          (one) => one.id,
        ),
      ),
    drawer: drawer.sort(
      byTeeth(
        (one) => one.spare.gear.teeth,
        (one) => one.item.id,
      ),
    ),
    elsewhere: await wheelsOf(db, others),
    unknown: { places: parts.filter((part) => part.unknown), drawer: things.filter((thing) => thing.unknown) },
    shop: await shopNow(db),
  };
}

export const isMissing = (place: Pick<Place, 'item_id'>): boolean => place.item_id === null;
/** Missing, nothing is being done about it yet, and a routing could be opened: none is worked out for helical teeth. */
export const isToBeChosen = (place: Place): boolean =>
  isMissing(place) && place.routing_id === null && place.way !== 'do without' && place.gear.helix === null;

const leanAlike = (a: Gear['helix'], b: Gear['helix']): boolean => a?.angle === b?.angle && a?.hand === b?.hand;

export const isLike = (a: Gear, b: Gear): boolean =>
  a.teeth === b.teeth && samePitch(a.pitch, b.pitch) && a.system.angle === b.system.angle && leanAlike(a.helix, b.helix);

/** The wheels that run with the set: of its pitch and angle. A metric one may lie in the same drawer. */
export function ofTheSet({ places, drawer }: Bench): readonly Wheel[] {
  const model = places[0]?.gear;
  if (!model) return drawer;
  return drawer.filter(({ spare: { gear } }) => samePitch(gear.pitch, model.pitch) && gear.system.angle === model.system.angle);
}

/** What was never looked at on a wheel, in words; empty when all was. */
export function neverMeasured({ gear, hardness }: SpareWheel): string[] {
  return [
    ...(gear.bore === null ? ['bore'] : []),
    ...(gear.face === null ? ['face'] : []),
    ...(gear.body.known ? [] : ['where the metal is']),
    ...(hardness === 'not tried' ? ['file test'] : []),
  ];
}
