import { testStock } from '../lib/blanks/from-stock.ts';
import { DomainError } from '../lib/figure/domain-error.ts';
import { PLANNED_WAYS, type PlannedWay } from '../lib/routing/asked.ts';
import { meets } from '../lib/routing/needs.ts';
import type { PlannedOperation, Way } from '../lib/routing/operation.ts';
import type { ShopNow } from '../lib/routing/shop-now.ts';
import type { TypedLength } from '../lib/values/read.ts';
import type { NewBlank } from './blanks.ts';
import { type Executor, type Row, together } from './executor.ts';
import { type ItemLine, item } from './items.ts';
import { settleNeeds } from './needs.ts';
import { type PartLine, part } from './parts.ts';
import { blankFrom, circlesNow, wantedOf } from './plan-asked.ts';
import { planOf } from './planned.ts';
import { refreshAllStale } from './replan.ts';
import { openRouting as writeRouting } from './routings.ts';
import { backlashNow, shopNow } from './shop-now.ts';
import { stockOf } from './spares/stock-of.ts';

/**
 * A part to be made, how, and from what. itemIds: the one blank; for a ring on a hub first the hub, then the ring; none while nothing is chosen.
 * takes: the length of bar that goes into a part without teeth; of a wheel it is worked out, and without either the whole bar is promised.
 */
export type RoutingChoice = {
  readonly partId: number;
  readonly way: Way | PlannedWay;
  readonly itemIds: readonly number[];
  readonly takes?: TypedLength | null;
};

type Chosen = RoutingChoice & { readonly part: PartLine; readonly things: readonly ItemLine[] };

/** What is kept of the way: a ring on a hub is a spare cut again. */
const wayKept = (way: Way | PlannedWay): Way => (way === 'ring and hub' ? 're-cut a spare' : way);

const isPlanned = (way: Way | PlannedWay): way is PlannedWay => PLANNED_WAYS.some((one) => one === way);

function roleOf({ way }: RoutingChoice, at: number): Row<'blank'>['role'] {
  if (way !== 'ring and hub') return 'whole';
  return at === 0 ? 'hub' : 'ring';
}

/** How much of a bar is promised; null takes the whole thing. */
function takesOf({ part: { stored }, way, takes: typed }: Chosen, thing: ItemLine): NewBlank['takes'] {
  if (thing.kind !== 'stock' || way === 'ring and hub') return null;
  if (!stored) return typed ?? null;
  const { takes } = testStock({ wanted: stored.gear, stock: stockOf(thing) });
  return takes === null || thing.length_nm === null || takes > thing.length_nm ? null : { length: takes };
}

const blanksFor = (chosen: Chosen): NewBlank[] =>
  chosen.things.map((thing, at) => ({ itemId: thing.id, role: roleOf(chosen, at), takes: takesOf(chosen, thing) }));

/** Without a wheel nothing is worked out: the owner writes down the operations himself. */
const isOwnWork = ({ way, part: { stored, unknown } }: Chosen): boolean =>
  !isPlanned(way) || (stored === null && unknown === null && way === 'make from stock');

/** Throws DomainError when more or fewer blanks were chosen than the way takes. */
function checkBlanks({ way, itemIds, part: { mark } }: Chosen): void {
  const wanted = way === 'ring and hub' ? 2 : 1;
  if (!isPlanned(way) || itemIds.length === wanted) return;
  throw new DomainError({
    given: `${itemIds.length} things were chosen to make ${mark} from.`,
    limit: way === 'ring and hub' ? 'A ring on a hub is made from two: the hub and the ring.' : 'It is made from one.',
    tryThis: 'Choose the blank again.',
    about: ['item'],
  });
}

type Joint = { readonly shop: ShopNow; readonly circles: Awaited<ReturnType<typeof circlesNow>> };

async function planned(db: Executor, chosen: Chosen, { shop, circles }: Joint): Promise<readonly PlannedOperation[]> {
  if (isOwnWork(chosen)) return [];
  const blank = await blankFrom(
    db,
    chosen.things.map((thing, at) => ({ thing, role: roleOf(chosen, at) })),
  );
  if (!blank) return [];
  const wanted = wantedOf(chosen.part, await backlashNow(db));
  const circle = circles.get(wanted.mark);
  return planOf({ ...blank, wanted, shop, readings: {}, ...(circle ? { circle } : {}) }).operations;
}

async function openOne(db: Executor, chosen: Chosen, joint: Joint, now: string): Promise<number> {
  const operations = await planned(db, chosen, joint);
  return writeRouting(db, {
    partId: chosen.partId,
    way: wayKept(chosen.way),
    openedOn: now,
    blanks: blanksFor(chosen),
    operations,
  });
}

async function look(db: Executor, choice: RoutingChoice): Promise<Chosen> {
  const things: ItemLine[] = [];
  for (const id of choice.itemIds) things.push(await item(db, id));
  const chosen = { ...choice, part: await part(db, choice.partId), things };
  checkBlanks(chosen);
  return chosen;
}

/**
 * Opens routings for several parts at once: promises their blanks, chooses the circles for all of them together with what is being made
 * already, plans and stores every operation, and sees which tools meet what they need. All or nothing; gives the ids in the order asked.
 * Throws RecordNotFound, RoutingOpen, ItemTaken, DomainError.
 */
export const openRoutings = (db: Executor, choices: readonly RoutingChoice[], now: string): Promise<number[]> =>
  together(db, async (trx) => {
    const [shop, all] = [await shopNow(trx), [] as Chosen[]];
    for (const choice of choices) all.push(await look(trx, choice));
    const backlash = await backlashNow(trx);
    const wheels = all.filter(({ way, part: { stored } }) => stored !== null && isPlanned(way));
    const circles = await circlesNow(
      trx,
      wheels.map((one) => wantedOf(one.part, backlash)),
      { shop, backlash },
    );
    const ids: number[] = [];
    for (const chosen of all) ids.push(await openOne(trx, chosen, { shop, circles }, now));
    await settleNeeds(trx, meets);
    await refreshAllStale(trx);
    return ids;
  });

/** The same for one part. */
export async function openRouting(db: Executor, choice: RoutingChoice, now: string): Promise<number> {
  const [id] = await openRoutings(db, [choice], now);
  return id as number;
}
