import { type Length, toMm } from '../values/length.ts';
import { type Clash, clash, type Middle, type PlacedWheel, placing, planeChoices } from './clash.ts';
import { type Plain, plainQuadrant, type Quadrant } from './quadrant.ts';
import { type NoPlace, type StudPlaces, studPlaces } from './stud-places.formulas.ts';
import type { TrainShaft } from './train-shaft.ts';

/** moduleMm: pitch diameter per tooth, millimetres. addendum: in modules. opening: how far each mesh is opened for lash. */
export type WheelSizes = { readonly moduleMm: number; readonly addendum?: number; readonly opening: Length };

/** at: middles in millimetres, the first shaft at 0, 0 and the last on the line to the right of it. */
export type Reach =
  | {
      readonly fits: true;
      readonly at: readonly Middle[];
      readonly planes: readonly number[];
      readonly swingDegrees: number;
      readonly slots: readonly number[];
      readonly radii: readonly number[];
    }
  | { readonly fits: false; readonly why: string };

const WHY: Readonly<Record<NoPlace, string>> = {
  distance: 'The wheels do not bridge the distance between the shafts.',
  slot: 'A stud would stand beyond the end of its slot.',
  swing: 'The quadrant would have to swing farther than it can.',
};

/** Whether a train with these shafts, in this order, can be set up on the quadrant, and where the studs then stand; else why not. */
export function reachOf(shafts: readonly TrainShaft[], quadrant: Quadrant, sizes: WheelSizes): Reach {
  const plain = plainQuadrant(quadrant);
  const wide = widestOf(shafts, sizes);
  if (wide.across > plain.widest) return { fits: false, why: `The ${wide.teeth} is wider than what goes under the cover.` };
  const idlers = shafts.slice(1, -1).map(({ idler }) => idler ?? false);
  const choices = planeChoices(idlers, plain.abreast);
  if (choices.length === 0) return { fits: false, why: 'Two wheels do not stand side by side on a stud there.' };
  const distances = meshDistances(shafts, sizes);
  const places = studPlaces(plain.fromDriver ? distances : [...distances].reverse(), plain);
  if (typeof places === 'string') return { fits: false, why: WHY[places] };
  return firstClear(places, choices, shafts, plain, sizes);
}

/** Whether the meshes laid end to end can span the distance between the shafts at all, wherever the slots are: no side of a closed figure is longer than the others together. */
export function bridges(shafts: readonly TrainShaft[], { between }: Quadrant, sizes: WheelSizes): boolean {
  const sides = [toMm(between), ...meshDistances(shafts, sizes)];
  return 2 * Math.max(...sides) <= sides.reduce((all, side) => all + side, 0);
}

export const NO_BRIDGE = WHY.distance;

function firstClear(
  places: readonly StudPlaces[],
  choices: readonly number[][],
  shafts: readonly TrainShaft[],
  plain: Plain,
  sizes: WheelSizes,
): Reach {
  const placings = choices.map((planes) => placing(placedOf(shafts, planes, sizes), planes));
  let inWay: Clash | null = null;
  for (const place of places) {
    const at = middlesOf(place, plain);
    for (const one of placings) {
      inWay = clash(one, at, plain.collar);
      if (inWay === null)
        return { fits: true, at, planes: one.planes, swingDegrees: (place.swing * 180) / Math.PI, ...slotsOf(place, plain) };
    }
  }
  return { fits: false, why: inWay ? clashWords(inWay, shafts) : '' };
}

const clashWords = ({ wheel, other, shaft }: Clash, shafts: readonly TrainShaft[]): string =>
  `The ${wheel.teeth} meets the ${other ? other.teeth : 'collar'} on the ${shafts[shaft]?.name}.`;

/** In the order of the train, whichever shaft is the pivot. */
const slotsOf = ({ studs }: StudPlaces, { fromDriver }: Plain) => {
  const inOrder = fromDriver ? studs : [...studs].reverse();
  return { slots: inOrder.map(({ slot }) => slot), radii: inOrder.map(({ r }) => r) };
};

/** The middles from the first shaft on; about the driven shaft the picture is turned half round, never mirrored, so that the first stays at 0, 0. */
function middlesOf({ studs }: StudPlaces, { C, fromDriver }: Plain): Middle[] {
  const about = studs.map(({ r, angle }) => ({ x: r * Math.cos(angle), y: r * Math.sin(angle) }));
  if (fromDriver) return [{ x: 0, y: 0 }, ...about, { x: C, y: 0 }];
  return [{ x: 0, y: 0 }, ...about.map(({ x, y }) => ({ x: C - x, y: -y })).reverse(), { x: C, y: 0 }];
}

/** Middles apart: half the sum of the pitch diameters, opened for lash. */
function meshDistances(shafts: readonly TrainShaft[], { moduleMm, opening }: WheelSizes): number[] {
  return shafts.slice(1).map((shaft, n) => (((shafts[n]?.driver ?? 0) + (shaft.driven ?? 0)) * moduleMm) / 2 + toMm(opening));
}

const outsideOf = (teeth: number, { moduleMm, addendum = 1 }: WheelSizes): number => (teeth / 2 + addendum) * moduleMm;

export const goesUnder = (teeth: number, { widest }: Quadrant, sizes: WheelSizes): boolean => 2 * outsideOf(teeth, sizes) <= toMm(widest);

function widestOf(shafts: readonly TrainShaft[], sizes: WheelSizes): { teeth: number; across: number } {
  const teeth = Math.max(...shafts.flatMap(({ driven, driver }) => [driven ?? 0, driver ?? 0]));
  return { teeth, across: 2 * outsideOf(teeth, sizes) };
}

function placedOf(shafts: readonly TrainShaft[], planes: readonly number[], sizes: WheelSizes): PlacedWheel[] {
  return shafts.flatMap(({ driven, driver, idler }, shaft) => {
    const wheel = (teeth: number, mesh: number): PlacedWheel => ({
      teeth,
      outside: outsideOf(teeth, sizes),
      shaft,
      plane: planes[mesh] ?? 0,
    });
    return [...(driven === null ? [] : [wheel(driven, shaft - 1)]), ...(driver === null || idler ? [] : [wheel(driver, shaft)])];
  });
}
