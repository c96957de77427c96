import { type OneIdler, trainWords } from '../dividing/idlers.ts';
import { type CircleThatServes, circlesThatServe, turnsPerDivision } from '../dividing/plain.formulas.ts';
import { plainIndexing } from '../dividing/plain.sums.ts';
import { wayAnswer } from '../dividing/ways.sums.ts';
import { changesFrom, circleOfWay, type DividingTools, type Way, waysToDivide } from '../dividing/ways.ts';
import { whereOn } from '../dividing/where-on.ts';
import type { Answer, Caution } from '../figure/figure.ts';
import type { Head, Plate } from '../tooling/tooling.ts';
import type { Ratio } from '../values/ratio.ts';
import type { ChosenCircle } from './asked.ts';
import { type ByDial, dialAnswer, dialsFor, dialWould } from './by-dial.ts';
import type { Need } from './operation.ts';
import type { Dividing } from './set-ups.ts';
import type { ShopNow } from './shop-now.ts';

/** The usual head, taken while none is on record. */
const USUAL_TURNS = 40;

type HeadChosen = Pick<Head, 'turns' | 'name'> & Partial<Pick<Head, 'backPin' | 'reached' | 'gears' | 'oneIdler' | 'dialOnly' | 'lash'>>;

/** way: by two pins or with gears, where no circle serves plainly; by: a table by its dial, where nothing on plates does; else null. lash: of the head. */
export type ChosenDividing = {
  readonly head: HeadChosen;
  readonly answer: Answer | null;
  readonly way: Exclude<Way, { method: 'direct' }> | null;
  readonly by: ByDial | null;
  readonly circle: number | null;
  readonly oneIdler: OneIdler;
  readonly lash: Ratio | null;
  readonly needs: readonly Need[];
  readonly at: Dividing;
};

/** The heads to choose from: those here; while none is, one that is away, or the usual one. */
function headsOf({ heads }: ShopNow): readonly HeadChosen[] {
  const here = heads.filter((head) => head.here);
  if (here.length > 0) return here;
  return [heads[0] ?? { turns: USUAL_TURNS, name: `dividing head of ${USUAL_TURNS} to 1` }];
}

const withPlates = (shop: ShopNow): readonly HeadChosen[] => headsOf(shop).filter(({ dialOnly }) => !dialOnly);
const mountedOn = ({ turns }: HeadChosen, { mounted }: ShopNow) => (mounted?.turns === turns ? { mounted } : {});

/** What can be divided with on one head. The gears that turn the plate need the shafts that a helix needs. */
function toolsOn(head: HeadChosen, plates: readonly Plate[], shop: ShopNow, helical: boolean): DividingTools {
  const { turns, backPin = false, reached = [], gears = [] } = head;
  return {
    ...{ turns, plates, direct: [], backPin, gears: helical ? [] : gears },
    ...{ reached: reached.length > 0 ? reached : null },
    ...mountedOn(head, shop),
  };
}

const first = (a: boolean, b: boolean): number => Number(b) - Number(a);

/** The circle chosen with other parts, if it divides; else one of the plate that is on, the circle the pin is in before others; else the fewest holes. */
function circleOn(
  head: HeadChosen,
  teeth: number,
  plates: readonly Plate[],
  shop: ShopNow,
  chosen?: ChosenCircle,
): CircleThatServes | null {
  const { mounted } = mountedOn(head, shop);
  const joint = ({ plate, side, circle }: CircleThatServes) =>
    plate.id === chosen?.plateId && side === chosen.side && circle === chosen.circle;
  const stands = ({ plate, side }: CircleThatServes) => plate.id === mounted?.plateId && side === mounted.side;
  const [best] = circlesThatServe(head.turns, teeth, plates).sort(
    (a, b) =>
      first(joint(a), joint(b)) ||
      first(stands(a), stands(b)) ||
      first(stands(a) && a.circle === mounted?.circle, stands(b) && b.circle === mounted?.circle) ||
      a.circle - b.circle,
  );
  return best ?? null;
}

const lashOf = ({ lash }: HeadChosen): Ratio | null => lash ?? null;
const headNeed = ({ turns }: HeadChosen): Need => ({ kind: 'head', turns });
const circleNeed = (holes: number): Need => ({ kind: 'circle', holes });

/** The name of the note that says what may stay as it stands. */
export const ON_THE_HEAD = 'On the head now';
const onAlready = (name: string, says: string): Caution => ({
  name: ON_THE_HEAD,
  says: `${name} was set last: if it still stands on the head, ${says}.`,
  weight: 'note',
  about: 'crank',
});

/** By one pin on a circle; null when no circle of these plates serves. */
function onCircle(teeth: number, plates: readonly Plate[], shop: ShopNow, chosen?: ChosenCircle): ChosenDividing | null {
  const found = withPlates(shop).flatMap((head) => {
    const on = circleOn(head, teeth, plates, shop, chosen);
    return on ? [{ head, on }] : [];
  });
  const [best] = found;
  if (!best) return null;
  const { head, on } = best;
  const { mounted } = mountedOn(head, shop);
  const plain = plainIndexing({ divisions: teeth, head, plates, circle: on.circle, plateId: on.plate.id });
  const name = whereOn(on.plate, on.side);
  const stands = mounted?.plateId === on.plate.id && mounted.side === on.side;
  const pin = mounted?.circle === on.circle ? 'the pin’s circle stays, set the sector' : 'set pin and sector';
  const gears = (mounted?.gears ?? []).length > 0 ? ', take the gears off and put the plate stop in' : '';
  return {
    ...{ head, way: null, by: null, circle: on.circle, oneIdler: null, lash: lashOf(head) },
    answer: stands ? { ...plain, cautions: [...plain.cautions, onAlready(name, `${pin}${gears}`)] } : plain,
    needs: [headNeed(head), circleNeed(on.circle)],
    at: { turns: head.turns, headName: head.name, plate: { id: on.plate.id, name, side: on.side }, gears: '' },
  };
}

type OnPlate = Exclude<Way, { method: 'direct' }>;
const trainOf = (way: OnPlate): string => (way.method === 'differential' ? trainWords(way.train) : '');

/** By two pins or with gears: one way, beside the table of all that work. */
function byWay(teeth: number, head: HeadChosen, way: OnPlate, tools: DividingTools, ways: readonly Way[]): ChosenDividing {
  const oneIdler = head.oneIdler ?? null;
  const answer = wayAnswer({ divisions: teeth, tools, oneIdler, only: null, nearest: false }, way, ways);
  const circles = way.method === 'compound' ? [way.move.frontCircle, way.move.backCircle] : [way.move.circle];
  const name = whereOn(way.plate, way.side);
  const stands = tools.mounted && changesFrom(tools.mounted, way) <= 1;
  const both = way.method === 'differential' ? `${name} with these gears` : name;
  const note = onAlready(both, way.method === 'differential' ? 'look which way the plate turns, then set pin and sector' : 'set the pins');
  return {
    ...{ head, way, by: null, circle: circles[0] ?? null, oneIdler, lash: lashOf(head) },
    answer: stands ? { ...answer, cautions: [...answer.cautions, note] } : answer,
    needs: [headNeed(head), ...circles.map(circleNeed)],
    at: { turns: head.turns, headName: head.name, plate: { id: way.plate.id, name, side: way.side }, gears: trainOf(way) },
  };
}

/** What was begun is gone on with: the way on the circle that this part has been divided on already, before an easier one. */
const begunOn = (way: Way, chosen?: ChosenCircle): boolean =>
  way.method !== 'direct' && way.plate.id === chosen?.plateId && way.side === chosen.side && circleOfWay(way) === chosen.circle;

/** By two pins or with gears, the easiest first; null when no head here does so. */
function byPinsOrGears(
  teeth: number,
  plates: readonly Plate[],
  shop: ShopNow,
  helical: boolean,
  chosen?: ChosenCircle,
): ChosenDividing | null {
  for (const head of withPlates(shop)) {
    const tools = toolsOn(head, plates, shop, helical);
    const ways = waysToDivide(teeth, tools).filter((way): way is OnPlate => way.method !== 'direct');
    const way = ways.find((one) => begunOn(one, chosen)) ?? ways[0];
    if (way) return byWay(teeth, head, way, tools, ways);
  }
  return null;
}

function onDial(teeth: number, by: ByDial): ChosenDividing {
  const { head } = by;
  return {
    ...{ head, way: null, by, circle: null, oneIdler: null, lash: lashOf(head), answer: dialAnswer(teeth, by), needs: [headNeed(head)] },
    at: { turns: head.turns, headName: head.name, plate: null, gears: '', byDial: true },
  };
}

/** Nothing divides exactly: why, and what a dial would do that its owner has not asked for. answer is null while neither plate nor dial is on record. */
function refused(teeth: number, { plates, ...shop }: ShopNow): ChosenDividing {
  const [head] = [...withPlates({ ...shop, plates }), ...headsOf({ ...shop, plates })];
  if (!head) throw new Error('there is always a head');
  const holes = turnsPerDivision(head.turns, teeth)[1];
  const [dial] = dialsFor(teeth, shop.heads);
  const hasPlates = plates.some(({ sides }) => sides.flat().length > 0);
  const plain = hasPlates ? plainIndexing({ divisions: teeth, head, plates }) : null;
  const would = dial ? dialWould(teeth, dial) : '';
  return {
    ...{ head, way: null, by: null, circle: null, oneIdler: null, lash: null },
    answer: plain && would ? { ...plain, says: `${plain.says ?? ''} ${would}`.trim() } : plain,
    needs: holes > 1 ? [headNeed(head), circleNeed(holes)] : [headNeed(head)],
    at: { turns: head.turns, headName: head.name, plate: null, gears: '' },
  };
}

/**
 * How so many teeth are divided in this shop: on a circle of a plate here; by two pins or with gears; by a dial whose lines all serve; on a
 * circle of a plate that is away; by a dial between its lines, where its owner wants that; else not at all. What stands on the head is kept
 * wherever it serves. helical: the gears that would turn the plate are wanted for the lead.
 */
export function chosenDividing(teeth: number, shop: ShopNow, chosen?: ChosenCircle, helical = false): ChosenDividing {
  const here = shop.plates.filter((plate) => plate.here);
  const dials = dialsFor(teeth, shop.heads);
  const exact = dials.find((one) => one.exact);
  const near = dials.find(({ head }) => head.dial?.near);
  return (
    onCircle(teeth, here, shop, chosen) ??
    byPinsOrGears(teeth, here, shop, helical, chosen) ??
    (exact ? onDial(teeth, exact) : null) ??
    onCircle(teeth, shop.plates, shop, chosen) ??
    (near ? onDial(teeth, near) : null) ??
    refused(teeth, shop)
  );
}
