import type { Caution, Figure, Given } from '../figure/figure.ts';
import { baseOf, type Flanks, pitchOf } from './flanks.formulas.ts';
import { circleFromFlat, overFlatAnvils, slidApart } from './flat-anvils.formulas.ts';
import { toldLength, workedAngle, workedLength } from './parallel-terms.ts';
import { pinCircle, thicknessFromPins } from './pins.formulas.ts';

const DERIVED = 'derived: the shortest distance between two helices; no published form of it was found';

/** What of a pin measure this needs: w the pin, st the thickness, reading as typed, all in the unit of the gear. */
export type FlatAsked = {
  readonly flanks: Flanks;
  readonly st: number;
  readonly w: number;
  readonly reading?: number;
  readonly at: readonly Given[];
};

/** A helical wheel of odd count reads otherwise over balls in one plane than over long pins, or balls, that a flat anvil lets slide. */
const slides = ({ psi, N, ring }: Flanks): boolean => psi > 0 && N % 2 === 1 && !ring;

function readBack({ flanks, w, reading, at }: FlatAsked): Record<string, Figure> {
  const Rc = reading === undefined ? null : circleFromFlat(flanks, reading, w);
  if (Rc === null || Rc * 2 < baseOf(flanks)) return {};
  const inPlane = 2 * Rc * Math.cos(Math.PI / (2 * flanks.N)) + w;
  const said = {
    name: 'Thickness if the reading is over pins that slide',
    symbol: 'sf',
    formula: '',
    source: DERIVED,
    note: 'Between flat anvils. The thickness above is that of a reading over balls held in one plane.',
  };
  return { thicknessFlat: toldLength(flanks.unit, said, thicknessFromPins(flanks, inPlane, w), at) };
}

/** The reading between flat anvils over pins that slide; nothing for other gears, nor where they would slide off. */
export function flatFigures(asked: FlatAsked): Record<string, Figure> {
  const { flanks, st, w, at } = asked;
  const Rc = pinCircle(flanks, st, w);
  const M = slides(flanks) ? overFlatAnvils(flanks, Rc, w) : null;
  const nearest = slidApart(flanks, Rc);
  if (M === null || nearest === null) return {};
  const numbers: readonly Given[] = [
    ...at,
    workedAngle('hf', 'half the angle past opposite at which the pins stand nearest', nearest.h),
    workedLength('Dp', 'circle of the pins’ middles', 2 * Rc, flanks.unit),
    workedLength('D', 'pitch diameter', pitchOf(flanks), flanks.unit),
  ];
  const said = {
    name: 'Over pins that slide, between flat anvils',
    symbol: 'Mf',
    formula: 'Dp × cos(hf) × √(1 + (tan(H) × Dp ÷ D × sin(hf))^2) + w',
    source: DERIVED,
  };
  return { overFlatAnvils: toldLength(flanks.unit, said, M, numbers), ...readBack(asked) };
}

const PLANE = 'This holds for balls held in one plane across the axis.';

/** Which of the two readings is meant, in words. */
export function flatCautions({ flanks, st, w }: Pick<FlatAsked, 'flanks' | 'st' | 'w'>): readonly Caution[] {
  if (!(flanks.psi > 0 && flanks.N % 2 === 1)) return [];
  const says = (): string => {
    if (flanks.ring) return PLANE;
    return overFlatAnvils(flanks, pinCircle(flanks, st, w), w) === null
      ? `${PLANE} At this helix long pins between flat anvils slide off: use balls.`
      : `${PLANE} Flat anvils let pins and balls slide along their spaces, and read the smaller figure below.`;
  };
  return [{ name: 'Odd count, helical', says: says(), weight: 'beware', about: 'overPins' }];
}
