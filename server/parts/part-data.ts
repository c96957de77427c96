import { assembliesOf } from '../../db/assemblies.ts';
import { blanksOf } from '../../db/blanks.ts';
import type { Row } from '../../db/executor.ts';
import { type ItemLine, item, items, spareWheels } from '../../db/items.ts';
import { type MadeLine, madeOfPart } from '../../db/made.ts';
import { type PartLine, part, partsOfProject } from '../../db/parts.ts';
import { circleOfPart } from '../../db/plan-asked.ts';
import { project } from '../../db/projects.ts';
import { type Reading, readingsOf } from '../../db/readings.ts';
import { routing } from '../../db/routings.ts';
import { type SetLine, setsOfProject } from '../../db/sets.ts';
import { shopNow } from '../../db/shop-now.ts';
import { stockFree } from '../../db/spares/stock-of.ts';
import { untilChanged } from '../../db/until-changed.ts';
import type { Stock } from '../../lib/blanks/from-stock.ts';
import type { ChosenCircle } from '../../lib/routing/asked.ts';
import type { Way } from '../../lib/routing/operation.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { type Wheel, wheelsOf } from '../sets/bench.ts';
import type { Db } from '../visit.ts';

/** Everything that the page of a part is made from. promised: what its open routing claims. way: of that routing. fitted: what fills it. */
export type PartData = {
  readonly part: PartLine;
  readonly project: Row<'project'>;
  readonly assemblies: readonly Row<'assembly'>[];
  readonly set: SetLine | null;
  readonly fitted: ItemLine | null;
  /** What was read on the one that fills it. */
  readonly readings: readonly Reading[];
  /** What is noted on the part itself: read on the wheel that somebody holds for it. */
  readonly noted: readonly Reading[];
  readonly promised: readonly ItemLine[];
  readonly way: Way | null;
  readonly promisedWheel: Wheel | null;
  readonly spares: readonly Wheel[];
  readonly stock: readonly Stock[];
  readonly others: readonly ItemLine[];
  readonly shop: ShopNow;
  /** What its teeth are divided on, while it is being made. */
  readonly circle: ChosenCircle | null;
  readonly made: readonly MadeLine[];
  /** For a part without teeth that is not in its place: parts of its machine, the wheels that it may go into among them. */
  readonly mates: readonly PartLine[];
};

const MOST_SPARES = 60;
const MOST_STOCK = 40;
const MOST_MADE = 20;
const MOST_MATES = 200;

async function promisedTo(db: Db, { routing_id }: PartLine): Promise<ItemLine[]> {
  if (routing_id === null) return [];
  const things: ItemLine[] = [];
  for (const { item_id } of await blanksOf(db, routing_id)) things.push(await item(db, item_id));
  return things;
}

/** Spare wheels of the shop, those of the part's own drawer first. */
const sparesFor = untilChanged(async (db: Db, { set_id, stored }: PartLine): Promise<Wheel[]> => {
  if (!stored) return [];
  const { rows } = await spareWheels(db, { before: null, size: 200 });
  const ownFirst = [...rows.filter((row) => row.set_id === set_id), ...rows.filter((row) => row.set_id !== set_id)];
  return wheelsOf(db, ownFirst.slice(0, MOST_SPARES));
});

const sparesOfKind = async (db: Db, kind: ItemLine['kind'], size: number): Promise<readonly ItemLine[]> =>
  (await items(db, kind, 'spares', { before: null, size })).rows;

/** What may fill a part that nothing is worked out for: a thing without teeth; of a wheel that is only counted, any of its count. */
async function othersFor(db: Db, { stored, unknown }: PartLine): Promise<readonly ItemLine[]> {
  if (stored) return [];
  if (!unknown) return [...(await sparesOfKind(db, 'other', MOST_STOCK)), ...(await sparesOfKind(db, 'casting', MOST_STOCK))];
  const { rows } = await spareWheels(db, { before: null, size: 200 });
  return rows.filter((row) => (row.stored ?? row.unknown)?.gear.teeth === unknown.gear.teeth).slice(0, MOST_SPARES);
}

/** Throws RecordNotFound. */
export const partData = untilChanged(async (db: Db, id: number): Promise<PartData> => {
  const one = await part(db, id);
  const promised = await promisedTo(db, one);
  const [promisedWheel = null] = await wheelsOf(
    db,
    promised.filter(({ kind }) => kind === 'wheel'),
  );
  const shop = await shopNow(db);
  const missing = one.item_id === null && one.routing_id === null;
  return {
    part: one,
    project: await project(db, one.project_id),
    assemblies: await assembliesOf(db, one.project_id),
    set: one.set_id === null ? null : ((await setsOfProject(db, one.project_id)).find((set) => set.id === one.set_id) ?? null),
    fitted: one.item_id === null ? null : await item(db, one.item_id),
    readings: one.item_id === null ? [] : await readingsOf(db, { itemId: one.item_id }),
    noted: await readingsOf(db, { partId: id }),
    promised,
    way: one.routing_id === null ? null : (await routing(db, one.routing_id)).way,
    promisedWheel,
    spares: missing ? await sparesFor(db, one) : [],
    stock: missing ? (await sparesOfKind(db, 'stock', MOST_STOCK)).map(stockFree) : [],
    others: missing ? await othersFor(db, one) : [],
    shop,
    circle: await circleOfPart(db, one, shop),
    mates:
      one.stored || one.unknown || one.item_id !== null
        ? []
        : (await partsOfProject(db, one.project_id, 'all', { before: null, size: MOST_MATES })).rows.filter((row) => row.stored),
    made: (await madeOfPart(db, id, { before: null, size: MOST_MADE })).rows,
  };
});
