import { DomainError } from '../figure/domain-error.ts';
import type { Angle } from '../values/angle.ts';
import { toRadians } from '../values/angle.ts';
import { inches, type Length, toMm } from '../values/length.ts';

/** A slot: how near to the pivot and how far from it a stud can be clamped, and its angle from the first slot, plus = anticlockwise. */
export type Slot = { readonly nearest: Length; readonly farthest: Length; readonly angle: Angle };

/**
 * A quadrant or banjo as measured once. between: from the shaft that drives the train to the shaft that is driven, both fixed.
 * pivot: the shaft about which the quadrant swings. swing: least and greatest angle of the first slot from the line of the two shafts.
 * stud, collar: diameters. widest: the widest wheel that goes under the cover. abreast: how many wheels stand side by side on a stud.
 */
export type Quadrant = {
  readonly between: Length;
  readonly pivot: 'driver' | 'driven';
  readonly slots: readonly Slot[];
  readonly swing: readonly [Angle, Angle];
  readonly stud: Length;
  readonly collar: Length;
  readonly widest: Length;
  readonly abreast: number;
};

/** Foreign collars and wheels are kept this far off. */
export const FREE: Length = inches(0.01);
/** How far a mesh is opened for its lash: value from memory, about 0.1 mm for change wheels. */
export const USUAL_OPENING: Length = inches(0.004);

/** The quadrant as plain millimetres and radians for the formulas of reach. */
export type Plain = {
  readonly C: number;
  readonly fromDriver: boolean;
  readonly slots: readonly { readonly nearest: number; readonly farthest: number; readonly angle: number }[];
  readonly swing: readonly [number, number];
  readonly collar: number;
  readonly widest: number;
  readonly abreast: number;
};

const MOST_SLOTS = 4;
const MOST_ABREAST = 3;

/** Throws DomainError where the measurements make no sense together. */
export function plainQuadrant(quadrant: Quadrant): Plain {
  checkQuadrant(quadrant);
  return {
    C: toMm(quadrant.between),
    fromDriver: quadrant.pivot === 'driver',
    slots: quadrant.slots.map(({ nearest, farthest, angle }) => ({
      nearest: toMm(nearest),
      farthest: toMm(farthest),
      angle: toRadians(angle),
    })),
    swing: [toRadians(quadrant.swing[0]), toRadians(quadrant.swing[1])],
    collar: toMm(quadrant.collar),
    widest: toMm(quadrant.widest),
    abreast: quadrant.abreast,
  };
}

function checkQuadrant({ between, slots, swing, stud, collar, abreast }: Quadrant): void {
  const wrong = (given: string, limit: string, about: string): never => {
    throw new DomainError({ given, limit, tryThis: 'Measure the quadrant again.', about: [about] });
  };
  if (between <= 0) wrong('The two fixed shafts stand in one place.', 'There must be a distance between them.', 'between');
  if (slots.length === 0 || slots.length > MOST_SLOTS)
    wrong(`The quadrant has ${slots.length} slots.`, `It may have from 1 to ${MOST_SLOTS}.`, 'slots');
  if (slots.some(({ nearest, farthest }) => nearest <= 0 || farthest < nearest))
    wrong('A slot ends before it begins.', 'Its farthest stud is at least as far from the pivot as its nearest.', 'slots');
  if (swing[1] < swing[0]) wrong('The swing ends before it begins.', 'The greater angle comes second.', 'swing');
  if (collar < stud) wrong('The collar is smaller than the stud.', 'A collar goes over its stud.', 'collar');
  if (!Number.isInteger(abreast) || abreast < 1 || abreast > MOST_ABREAST)
    wrong(`${abreast} wheels stand side by side.`, `From 1 to ${MOST_ABREAST} may.`, 'abreast');
}
