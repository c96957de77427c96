import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, Value } from '../figure/figure.ts';
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

/** The circle whose holes stand closest. */
const closest = ({ circles, unit }: HoleCirclesAsked): HoleCircle =>
  circles.reduce((a, b) => (chordBetween(b.holes, inUnit(b.diameter, unit)) < chordBetween(a.holes, inUnit(a.diameter, unit)) ? b : a));

/** Metal between the two circles that lie closest; null for one circle. */
function betweenCircles({ circles, hole }: HoleCirclesAsked): Length | null {
  const rising = circles.map(({ diameter }) => diameter).sort((a, b) => a - b);
  const gaps = rising.slice(1).map((diameter, at) => (diameter - (rising[at] as number)) / 2 - hole);
  return gaps.length === 0 ? null : nanometres(gaps.reduce((a, b) => Math.min(a, b)));
}

/**
 * Holes on circles for a drilling job: an index plate or a bolt circle; coordinates, and the metal left between holes.
 * Throws DomainError for no hole or more than 600. Example: 6 holes on 4 in, hole 1 to the right: 2, 0; 1, 1.7321; …; 2 in from hole to hole.
 */
export function holeCircles(asked: HoleCirclesAsked): Answer<HoleCirclesKey> {
  check(asked);
  const { circles, hole, unit, start } = asked;
  const [close, between] = [closest(asked), betweenCircles(asked)];
  const D = givenLength('D', 'diameter through the hole middles', close.diameter, unit, 'typed');
  const n = given('n', 'holes in that circle', count(close.holes), 'typed');
  const d = givenLength('d', 'diameter of a hole', hole, unit, 'typed');
  const chord = chordBetween(close.holes, inUnit(close.diameter, unit));
  const wall = chord - inUnit(hole, unit);
  const words = (name: string, symbol: string, says: string): Figure => figure(name, symbol, { words: says }, { unit });
  const single = close.holes < 2;
  return {
    figures: {
      holes: figure(
        'Holes in all',
        'n',
        count(
          circles.reduce((sum, one) => sum + one.holes, 0),
          'holes',
        ),
        { unit },
      ),
      chord: single
        ? words('From hole to hole, straight', 'c', 'one hole only')
        : figure(
            'From hole to hole, straight',
            'c',
            { length: ofUnit(chord, unit) },
            { unit, formula: 'D × sin(180° ÷ n)', given: [D, n] },
          ),
      wall: single
        ? words('Metal between neighbouring holes', 'w', 'one hole only')
        : figure(
            'Metal between neighbouring holes',
            'w',
            { length: ofUnit(wall, unit) },
            { unit, formula: 'D × sin(180° ÷ n) − d', given: [D, n, d] },
          ),
      between:
        between === null
          ? words('Metal between the closest circles', 'b', 'one circle only')
          : figure('Metal between the closest circles', 'b', { length: between }, { unit }),
    },
    cautions: [
      ...(wall <= 0 && !single
        ? [
            {
              name: 'Holes meet',
              says: 'The holes run into each other: a larger circle, or smaller holes.',
              weight: 'danger' as const,
              about: 'wall',
            },
          ]
        : []),
      ...(between !== null && between <= 0
        ? [{ name: 'Circles meet', says: 'Holes of two circles run into each other.', weight: 'danger' as const, about: 'between' }]
        : []),
      {
        name: 'Spot first',
        says: 'Centre-drill every hole before any is drilled through: a plate copies its own errors into all that is divided on it.',
        weight: 'note' as const,
        about: 'holes',
      },
    ],
    says: `Hole 1 at ${toDegrees(start)}°, from the right against the clock; the next ones on against the clock.`,
    tables: [
      {
        title: 'Coordinates, x to the right, y up',
        unit,
        heads: ['circle', 'hole', 'angle', 'x', 'y'],
        rows: placedHoles(asked).map(({ circle, hole: k, angle, at }): (Value | string)[] => [
          `${circles[circle]?.holes ?? ''} holes`,
          count(k),
          { number: angle, unit: '°', places: 4 },
          { length: at[0] },
          { length: at[1] },
        ]),
      },
    ],
  };
}
