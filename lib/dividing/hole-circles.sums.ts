import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { type Angle, toDegrees } from '../values/angle.ts';
import { inUnit, type Length, type LengthUnit, nanometres, ofUnit } from '../values/length.ts';
import { chordBetween, holePlaces } from './hole-circle.formulas.ts';
import { count, figuresFrom, given } from './index-figure.ts';

const figure = figuresFrom('common practice, no source');
const MOST_HOLES = 600;

export type HoleCircle = { readonly holes: number; readonly diameter: Length };
/** start: angle of hole 1, from the right, against the clock. middle: of all circles. */
export type HoleCirclesAsked = {
  readonly circles: readonly HoleCircle[];
  readonly hole: Length;
  readonly start: Angle;
  readonly middle: readonly [Length, Length];
  readonly unit: LengthUnit;
};

export type HoleCirclesKey = 'holes' | 'chord' | 'wall' | 'between';
export type PlacedHole = { readonly circle: number; readonly hole: number; readonly angle: number; readonly at: readonly [Length, Length] };

/** Every hole by coordinates, circle by circle. */
export function placedHoles({ circles, start, middle, unit }: HoleCirclesAsked): PlacedHole[] {
  const [X, Y] = [inUnit(middle[0], unit), inUnit(middle[1], unit)];
  return circles.flatMap(({ holes, diameter }, at) =>
    holePlaces(holes, inUnit(diameter, unit), toDegrees(start), [X, Y]).map(({ hole, angle, x, y }) => ({
      circle: at,
      hole,
      angle,
      at: [ofUnit(x, unit), ofUnit(y, unit)] as const,
    })),
  );
}

function check({ circles, hole }: HoleCirclesAsked): void {
  const all = circles.reduce((sum, { holes }) => sum + holes, 0);
  const odd = circles.find(({ holes, diameter }) => holes < 1 || diameter <= 0);
  if (all > 0 && all <= MOST_HOLES && !odd && hole > 0) return;
  throw new DomainError({
    given: `${all} holes were asked for.`,
    limit: `From 1 to ${MOST_HOLES} holes are listed, on circles above 0.`,
    tryThis: 'Take fewer circles at once.',
    about: ['circles'],
  });
}

/** The circle whose holes stand closest: from hole to hole, and the metal between two of them, in the unit asked for. */
type Closest = { readonly circle: HoleCircle; readonly chord: number; readonly wall: number };

function closest({ circles, hole, unit }: HoleCirclesAsked): Closest {
  const chordOf = ({ holes, diameter }: HoleCircle): number => chordBetween(holes, inUnit(diameter, unit));
  const circle = circles.reduce((a, b) => (chordOf(b) < chordOf(a) ? b : a));
  return { circle, chord: chordOf(circle), wall: chordOf(circle) - inUnit(hole, unit) };
}

const isSingle = ({ circle }: Closest): boolean => circle.holes < 2;

/** Metal between the two circles that lie closest; null for one circle. */
function betweenCircles({ circles, hole }: HoleCirclesAsked): Length | null {
  const rising = circles.map(({ diameter }) => diameter).sort((a, b) => a - b);
  const gaps = rising.slice(1).map((diameter, at) => (diameter - (rising[at] as number)) / 2 - hole);
  return gaps.length === 0 ? null : nanometres(gaps.reduce((a, b) => Math.min(a, b)));
}

const NAMES: Readonly<Record<HoleCirclesKey, readonly [string, string]>> = {
  holes: ['Holes in all', 'n'],
  chord: ['From hole to hole, straight', 'c'],
  wall: ['Metal between neighbouring holes', 'w'],
  between: ['Metal between the closest circles', 'b'],
};

const told = (key: HoleCirclesKey, value: Value, unit: LengthUnit, shape: Parameters<typeof figure>[3] = {}): Figure =>
  figure(NAMES[key][0], NAMES[key][1], value, { unit, ...shape });

function holesFigure({ circles, unit }: HoleCirclesAsked): Figure {
  const all = circles.reduce((sum, { holes }) => sum + holes, 0);
  return told('holes', count(all, 'holes'), unit);
}

function neighbourFigures({ hole, unit }: HoleCirclesAsked, close: Closest): Record<'chord' | 'wall', Figure> {
  const { circle, chord, wall } = close;
  if (isSingle(close)) {
    const alone: Value = { words: 'one hole only' };
    return { chord: told('chord', alone, unit), wall: told('wall', alone, unit) };
  }
  const D = givenLength('D', 'diameter through the hole middles', circle.diameter, unit, 'typed');
  const n = given('n', 'holes in that circle', count(circle.holes), 'typed');
  const d = givenLength('d', 'diameter of a hole', hole, unit, 'typed');
  return {
    chord: told('chord', { length: ofUnit(chord, unit) }, unit, { formula: 'D × sin(180° ÷ n)', given: [D, n] }),
    wall: told('wall', { length: ofUnit(wall, unit) }, unit, { formula: 'D × sin(180° ÷ n) − d', given: [D, n, d] }),
  };
}

const HOLES_MEET: Caution = {
  name: 'Holes meet',
  says: 'The holes run into each other: a larger circle, or smaller holes.',
  weight: 'danger',
  about: 'wall',
};
const CIRCLES_MEET: Caution = {
  name: 'Circles meet',
  says: 'Holes of two circles run into each other.',
  weight: 'danger',
  about: 'between',
};
const SPOT_FIRST: Caution = {
  name: 'Spot first',
  says: 'Centre-drill every hole before any is drilled through: a plate copies its own errors into all that is divided on it.',
  weight: 'note',
  about: 'holes',
};

const cautionsOf = (close: Closest, between: Length | null): Caution[] => [
  ...(close.wall <= 0 && !isSingle(close) ? [HOLES_MEET] : []),
  ...(between !== null && between <= 0 ? [CIRCLES_MEET] : []),
  SPOT_FIRST,
];

const coordinates = (asked: HoleCirclesAsked): AnswerTable => ({
  title: 'Coordinates, x to the right, y up',
  unit: asked.unit,
  heads: ['circle', 'hole', 'angle', 'x', 'y'],
  rows: placedHoles(asked).map(({ circle, hole, angle, at }) => [
    `${asked.circles[circle]?.holes ?? ''} holes`,
    count(hole),
    { number: angle, unit: '°', places: 4 },
    { length: at[0] },
    { length: at[1] },
  ]),
});

/**
 * Holes on circles for a drilling job: an index plate or a bolt circle; coordinates, and the metal left between holes.
 * Throws DomainError for no hole or more than 600. Example: 6 holes on 4 in, hole 1 to the right: 2, 0; 1, 1.7321; …; 2 in from hole to hole.
 */
export function holeCircles(asked: HoleCirclesAsked): Answer<HoleCirclesKey> {
  check(asked);
  const [close, between] = [closest(asked), betweenCircles(asked)];
  return {
    figures: {
      holes: holesFigure(asked),
      ...neighbourFigures(asked, close),
      between: told('between', between === null ? { words: 'one circle only' } : { length: between }, asked.unit),
    },
    cautions: cautionsOf(close, between),
    says: `Hole 1 at ${toDegrees(asked.start)}°, from the right against the clock; the next ones on against the clock.`,
    tables: [coordinates(asked)],
  };
}
