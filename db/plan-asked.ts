import { DomainError } from '../lib/figure/domain-error.ts';
import type { ChosenCircle, PlanAsked, PlanBlank, Readings, WantedPart } from '../lib/routing/asked.ts';
import type { ShopNow } from '../lib/routing/shop-now.ts';
import type { Length } from '../lib/values/length.ts';
import { blanksOf } from './blanks.ts';
import type { Executor, Row } from './executor.ts';
import { type ItemLine, itemsById } from './items.ts';
import { type OperationLine, operationsOf } from './operations.ts';
import { type PartLine, partsById } from './parts.ts';
import { circlesOf } from './planned.ts';
import { readingsOf } from './readings.ts';
import { backlashNow } from './shop-now.ts';
import { spareOf, wheelName } from './spares/spare-of.ts';
import { stockOf } from './spares/stock-of.ts';
import { untilChanged } from './until-changed.ts';

/** The wheel to make, as lib takes it. Throws DomainError while nobody has said what the part is. */
export function wantedOf({ name, mark, stored, unknown, material }: PartLine, backlash: Length): WantedPart {
  if (unknown)
    throw new DomainError({
      given: `${mark} is a wheel of ${unknown.gear.teeth} teeth of which nobody knows the pitch yet.`,
      limit: 'Nothing can be planned or cut by a pitch that is not known.',
      tryThis: 'Identify it first, on the page of the part.',
      about: ['part'],
    });
  if (!stored)
    throw new DomainError({
      given: `${mark} has no wheel on record.`,
      limit: 'A routing with figures needs its teeth and pitch.',
      tryThis: 'Type them on the page of the part first.',
      about: ['part'],
    });
  const known = material === '' ? {} : { material: material as NonNullable<WantedPart['material']> };
  return { name, mark, gear: stored.gear, backlash, ...known };
}

/** The spare as lib takes it. Throws DomainError for a thing without teeth. */
async function spareFrom(db: Executor, thing: ItemLine) {
  const spare = spareOf(thing, await readingsOf(db, { itemId: thing.id }));
  if (spare) return spare;
  if (thing.unknown)
    throw new DomainError({
      given: `Nobody knows the pitch of ${wheelName(thing)} yet.`,
      limit: 'Whether another wheel can be cut from it follows from its root.',
      tryThis: 'Identify it first, on its own page in the drawer.',
      about: ['item'],
    });
  throw new DomainError({
    given: `${thing.name || `Drawer ${thing.id}`} has no teeth on record.`,
    limit: 'Only a wheel can be cut again as one.',
    tryThis: 'Choose a wheel, or make the part from stock.',
    about: ['item'],
  });
}

type Claimed = { readonly thing: ItemLine; readonly role: Row<'blank'>['role'] };

/** What the part is made from, by the things promised to it; null when nothing is promised yet. */
export async function blankFrom(db: Executor, claimed: readonly Claimed[]): Promise<PlanBlank | null> {
  const by = (role: Claimed['role']) => claimed.find((one) => one.role === role)?.thing;
  const [whole, hub, ring] = [by('whole'), by('hub'), by('ring')];
  if (hub && ring) return { way: 'ring and hub', blank: { hub: await spareFrom(db, hub), ring: stockOf(ring) } };
  if (!whole) return null;
  if (whole.kind === 'wheel') return { way: 're-cut a spare', blank: await spareFrom(db, whole) };
  return { way: 'make from stock', blank: stockOf(whole) };
}

async function claimedBy(db: Executor, routingId: number): Promise<Claimed[]> {
  const blanks = await blanksOf(db, routingId);
  const things = await itemsById(
    db,
    blanks.map((blank) => blank.item_id),
  );
  return blanks.flatMap(({ item_id, role }) => things.filter(({ id }) => id === item_id).map((thing) => ({ thing, role })));
}

/** What was measured or typed at the operations of a routing, by operation and figure. */
function readingsOfRouting(lines: readonly OperationLine[]): Readings {
  const found = lines.flatMap(({ key, figures }) =>
    figures.flatMap(({ key: figure, shown, shownFrom }) =>
      key === null || shownFrom === 'worked out' ? [] : [[`${key}/${figure}`, { value: shown, from: shownFrom }] as const],
    ),
  );
  return Object.fromEntries(found);
}

/** The circle on which this part has been divided already: from then on it stays. */
function circleInUse(lines: readonly OperationLine[], { plates }: ShopNow): ChosenCircle | null {
  const begun = lines.filter((line) => line.done_on !== null).flatMap((line) => line.needs);
  for (const { need, tool_id } of begun) {
    const plate = plates.find((one) => one.id === tool_id);
    if (need.kind !== 'circle' || !plate) continue;
    const side = plate.sides.findIndex((circles) => circles.includes(need.holes));
    if (side >= 0) return { plateId: plate.id, side, circle: need.holes };
  }
  return null;
}

const MOST_TOGETHER = 60;

/** Parts of open routings that are still to be divided, the oldest routing first. */
const partsToDivide = untilChanged(async (db: Executor): Promise<PartLine[]> => {
  const rows = await db
    .selectFrom('routing')
    .select('routing.part_id')
    .where('routing.closed_on', 'is', null)
    .where(({ exists, selectFrom }) =>
      exists(
        selectFrom('operation')
          .innerJoin('need', 'need.operation_id', 'operation.id')
          .select('operation.id')
          .whereRef('operation.routing_id', '=', 'routing.id')
          .where('need.kind', '=', 'circle')
          .where('operation.done_on', 'is', null)
          .where('operation.struck_on', 'is', null),
      ),
    )
    .orderBy('routing.id', 'desc')
    .limit(MOST_TOGETHER - 1)
    .execute();
  return partsById(
    db,
    rows.reverse().map((row) => row.part_id),
  );
});

/** Circles for these parts together with all that are being made, so that they stay on one plate: by the part's mark. */
export async function circlesNow(
  db: Executor,
  more: readonly WantedPart[],
  { shop, backlash }: { readonly shop: ShopNow; readonly backlash: Length },
): Promise<ReadonlyMap<string, ChosenCircle>> {
  const open = (await partsToDivide(db)).flatMap((one) => (one.stored ? [wantedOf(one, backlash)] : []));
  const others = open.filter(({ mark }) => !more.some((one) => one.mark === mark));
  const all = [...others, ...more].slice(-MOST_TOGETHER);
  const anyCircle = shop.plates.some(({ sides }) => sides.flat().length > 0);
  return all.length === 0 || !anyCircle ? new Map() : circlesOf(all, shop).byMark;
}

/** The circle that a wheel in the making is divided on: the one begun on, else the one chosen together with all that are being made. */
const circleFor = async (
  db: Executor,
  { wanted, lines, shop, backlash }: { wanted: WantedPart; lines: readonly OperationLine[]; shop: ShopNow; backlash: Length },
): Promise<ChosenCircle | undefined> => circleInUse(lines, shop) ?? (await circlesNow(db, [wanted], { shop, backlash })).get(wanted.mark);

/** The same for the page of its part; null while it is not being made. */
export async function circleOfPart(db: Executor, of: PartLine, shop: ShopNow): Promise<ChosenCircle | null> {
  if (of.routing_id === null || !of.stored) return null;
  const [backlash, lines] = [await backlashNow(db), await operationsOf(db, of.routing_id)];
  return (await circleFor(db, { wanted: wantedOf(of, backlash), lines, shop, backlash })) ?? null;
}

type Asking = { readonly routing: Row<'routing'>; readonly part: PartLine; readonly lines: readonly OperationLine[] };

/**
 * A stored routing as it would be asked for today, with what was measured and typed since; null for one that Backgear plans nothing for:
 * bought, repaired, or without its blank.
 */
export async function planAsked(db: Executor, { routing, part: of, lines }: Asking, shop: ShopNow): Promise<PlanAsked | null> {
  const blank = await blankFrom(db, await claimedBy(db, routing.id));
  if (!of.stored || !blank) return null;
  const backlash = await backlashNow(db);
  const wanted = wantedOf(of, backlash);
  const circle = await circleFor(db, { wanted, lines, shop, backlash });
  return { ...blank, wanted, shop, readings: readingsOfRouting(lines), ...(circle ? { circle } : {}) };
}
