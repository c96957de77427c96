import type { Candidate, CutterChoice } from '../cutters/choice.ts';
import { chooseCutter, needOf } from '../cutters/choose.ts';
import { type OneIdler, trainWords } from '../dividing/idlers.ts';
import { chooseCircles, type JointChoice } from '../dividing/joint.ts';
import { circlesThatServe, turnsPerDivision } from '../dividing/plain.formulas.ts';
import { plainIndexing } from '../dividing/plain.sums.ts';
import { wayAnswer } from '../dividing/ways.sums.ts';
import { type DividingTools, type Way, waysToDivide } from '../dividing/ways.ts';
import { whereOn } from '../dividing/where-on.ts';
import type { Answer } from '../figure/figure.ts';
import type { Gear } from '../gears/gear.ts';
import type { Head } from '../tooling/tooling.ts';
import type { ChosenCircle, WantedPart } from './asked.ts';
import type { Need } from './operation.ts';
import type { Dividing } from './set-ups.ts';
import type { ShopNow } from './shop-now.ts';

/** The usual head, taken while none is on record. */
const USUAL_TURNS = 40;

/** The cutter that the figures go by: the right one, here or not; null while it is only a description. */
export type ChosenCutter = { readonly choice: CutterChoice; readonly right: Candidate | null; readonly need: Need };

export function chosenCutter(gear: Gear, { cutters, arbors, convention }: ShopNow): ChosenCutter {
  const choice = chooseCutter({ gear, cutters, arbors, convention });
  return { choice, right: choice.right, need: { kind: 'cutter', ...needOf(gear) } };
}

type HeadChosen = Pick<Head, 'turns' | 'name'> & Partial<Pick<Head, 'backPin' | 'reached' | 'gears' | 'oneIdler'>>;

/** way: by two pins or with gears, where no circle serves plainly; else null. */
export type ChosenDividing = {
  readonly head: HeadChosen;
  readonly answer: Answer | null;
  readonly way: Way | null;
  readonly oneIdler: OneIdler;
  readonly needs: readonly Need[];
  readonly at: Dividing;
};

/** What can be divided with on one head. The gears that turn the plate need the shafts that a helix needs. */
const toolsOn = (
  { turns, backPin = false, reached = [], gears = [] }: HeadChosen,
  plates: ShopNow['plates'],
  helical: boolean,
): DividingTools => ({
  ...{ turns, plates, direct: [], backPin, gears: helical ? [] : gears },
  reached: reached.length > 0 ? reached : null,
});

/** The head of the shop that serves: one that is here and whose circles divide, else one that does so by two pins or gears, else any, else the usual one. */
function headFor({ heads, plates }: ShopNow, teeth: number, helical = false): HeadChosen {
  const here = heads.filter((head) => head.here);
  const serves =
    here.find((head) => circlesThatServe(head.turns, teeth, plates).length > 0) ??
    here.find((head) => waysToDivide(teeth, toolsOn(head, plates, helical)).length > 0);
  return serves ?? here[0] ?? heads[0] ?? { turns: USUAL_TURNS, name: `dividing head of ${USUAL_TURNS} to 1` };
}

/** Circles for several parts at once, so that they stay on one plate: by the mark of each part. */
export function circlesFor(
  parts: readonly WantedPart[],
  shop: ShopNow,
): { readonly choice: JointChoice; readonly byMark: ReadonlyMap<string, ChosenCircle> } {
  const jobs = parts.map(({ mark, gear }) => ({ key: mark, divisions: gear.teeth, head: headFor(shop, gear.teeth) }));
  const choice = chooseCircles(jobs, shop.plates);
  const byMark = new Map(choice.jobs.map(({ key, plate, side, circle }) => [key, { plateId: plate.id, side, circle }]));
  return { choice, byMark };
}

/** The circle chosen with other parts, if it still stands on a plate of the shop and divides; else the fewest holes on a plate here. */
function circleOf(head: Pick<Head, 'turns'>, teeth: number, shop: ShopNow, chosen?: ChosenCircle) {
  const serving = circlesThatServe(head.turns, teeth, shop.plates);
  const joint = serving.find(({ plate, side, circle }) => plate.id === chosen?.plateId && side === chosen.side && circle === chosen.circle);
  const byUse = [...serving].sort((a, b) => Number(b.plate.here) - Number(a.plate.here) || a.circle - b.circle);
  return joint ?? byUse[0] ?? null;
}

const trainOf = (way: Way): string => (way.method === 'differential' ? trainWords(way.train) : '');

/** By two pins or with gears, the easiest first: its figures, its circles and its plate. */
function byWay(teeth: number, head: HeadChosen, way: Exclude<Way, { method: 'direct' }>, tools: DividingTools): ChosenDividing {
  const oneIdler = head.oneIdler ?? null;
  const answer = wayAnswer({ divisions: teeth, tools, oneIdler, only: null, nearest: false }, way);
  const circles = way.method === 'compound' ? [way.move.frontCircle, way.move.backCircle] : [way.move.circle];
  const needs: Need[] = [{ kind: 'head', turns: head.turns }, ...circles.map((holes): Need => ({ kind: 'circle', holes }))];
  const plate = { id: way.plate.id, name: whereOn(way.plate, way.side), side: way.side };
  return { head, answer, way, oneIdler, needs, at: { turns: head.turns, headName: head.name, plate, gears: trainOf(way) } };
}

/** Head, plate and circle for so many teeth; by two pins or with gears where no circle serves. answer is null while no plate is on record. */
export function chosenDividing(teeth: number, shop: ShopNow, chosen?: ChosenCircle, helical = false): ChosenDividing {
  const head = headFor(shop, teeth, helical);
  const on = circleOf(head, teeth, shop, chosen);
  const hasPlates = shop.plates.some(({ sides }) => sides.flat().length > 0);
  if (hasPlates && !on) {
    const tools = toolsOn(head, shop.plates, helical);
    const way = waysToDivide(teeth, tools).find(({ method }) => method === 'compound' || method === 'differential');
    if (way && way.method !== 'direct') return byWay(teeth, head, way, tools);
  }
  const headNeed: Need = { kind: 'head', turns: head.turns };
  const holes = on?.circle ?? turnsPerDivision(head.turns, teeth)[1];
  const needs: Need[] = holes > 1 ? [headNeed, { kind: 'circle', holes }] : [headNeed];
  const answer = hasPlates
    ? plainIndexing({ divisions: teeth, head, plates: shop.plates, ...(on ? { circle: on.circle, plateId: on.plate.id } : {}) })
    : null;
  const plate = on ? { id: on.plate.id, name: whereOn(on.plate, on.side), side: on.side } : null;
  return { head, answer, way: null, oneIdler: null, needs, at: { turns: head.turns, headName: head.name, plate, gears: '' } };
}
