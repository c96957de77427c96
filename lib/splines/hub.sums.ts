import { plainIndexing } from '../dividing/plain.sums.ts';
import type { Answer, Figure, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Head, Plate } from '../tooling/tooling.ts';
import { inches, inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { BURRS, MAKER } from './cautions.ts';
import { cornersOut, grooveFeed, grooveToTop } from './hub.formulas.ts';
import { checkBore, type StraightBore } from './shaft-sizes.ts';
import { splineLength } from './spline-figure.ts';
import { HOLE_UNDER } from './straight.data.ts';

export type HubAsked = {
  readonly bore: StraightBore;
  /** The bore as bored, where it differs: the feed is counted from touching it. */
  readonly bored?: Length;
  readonly head: Pick<Head, 'turns' | 'name'>;
  readonly plates: readonly Plate[];
  readonly circle?: number;
  readonly unit: LengthUnit;
};

const LIMITS = 'limits: SAE J499-2014, 1 in row (D 0.999 to 1.000, W 0.248 to 0.250, d 0.001 under); for other sizes judgement';

/**
 * The splined bore of a hub, slotted: what to bore, the width of the tool, how far to feed it, how to turn from groove to groove, and what
 * to measure within which limits. Throws DomainError for a bore that is no spline, a bored size that is none, or plates that do not serve.
 * Example: 1.250 × 1.0625 × 0.3125, six grooves: feed 0.1172 from touching with the corners.
 */
export function splinedHub(asked: HubAsked): Answer {
  const { bore, unit, bored } = asked;
  checkBore({ ...bore, inside: bored ?? bore.inside }, unit);
  const indexing = plainIndexing({
    divisions: bore.splines,
    head: asked.head,
    plates: asked.plates,
    ...(asked.circle === undefined ? {} : { circle: asked.circle }),
  });
  const { crank, sector, sectorHoles, proof } = indexing.figures;
  return {
    figures: {
      ...measured(bore, unit),
      ...fed(asked),
      crank: { ...crank, name: 'Crank from groove to groove' },
      sector,
      sectorHoles,
      proof,
    },
    cautions: [
      ...indexing.cautions,
      {
        name: 'Grooves last',
        says: 'Bore and face first; teeth after the grooves, on a mandrel that fits them.',
        weight: 'note',
        about: 'inside',
      },
      { ...BURRS, about: 'width' },
      MAKER,
    ],
    says: `${bore.splines} grooves. Bore first, then the grooves from the bore, each tried with a plug of the key’s width before the next size of cut.`,
  };
}

const under = (size: Length, less: number): readonly [Value, Value] => [{ length: (size - inches(less)) as Length }, { length: size }];

function measured({ outside, inside, width }: StraightBore, unit: LengthUnit): Record<string, Figure> {
  const one = (name: string, symbol: string, size: Length, less: number, note: string): Figure => ({
    ...splineLength(unit, { name, symbol, formula: '', source: LIMITS, note }, inUnit(size, unit), []),
    limits: under(size, less),
  });
  return {
    inside: one('Bore across the tops', 'd', inside, HOLE_UNDER.inside, 'With a plug or a telescopic gauge, before slotting.'),
    width: one('Width of a groove, and of the tool', 'w', width, HOLE_UNDER.width, 'With a flat plug, at the top and at the bottom.'),
    outside: one('Across the grooves', 'D', outside, HOLE_UNDER.outside, 'Groove to opposite groove, for an even count.'),
  };
}

const NOSE = 'derived: a flat nose meets the bore with its corners and ends with its middle on the outside';

function fed({ bore, bored, unit }: HubAsked): Record<string, Figure> {
  const inside = bored ?? bore.inside;
  const [D, d, w] = [inUnit(bore.outside, unit), inUnit(inside, unit), inUnit(bore.width, unit)];
  const givens = {
    D: givenLength('D', 'across the grooves', bore.outside, unit, 'typed'),
    d: givenLength(
      'd',
      bored === undefined ? 'bore across the tops' : 'bore as bored',
      inside,
      unit,
      bored === undefined ? 'typed' : 'measured',
    ),
    w: givenLength('w', 'width of the tool', bore.width, unit, 'typed'),
  };
  return {
    feed: splineLength(
      unit,
      { name: 'Feed from touching the bore', symbol: 'f', formula: 'D ÷ 2 − √(d^2 − w^2) ÷ 2', source: NOSE },
      grooveFeed(D, d, w),
      [givens.D, givens.d, givens.w],
    ),
    corners: splineLength(
      unit,
      { name: 'Corners of the groove lie outside by', symbol: 'e', formula: '(√(D^2 + w^2) − D) ÷ 2', source: NOSE },
      cornersOut(D, w),
      [givens.D, givens.w],
    ),
    toTop: splineLength(
      unit,
      {
        name: 'Bottom of a groove to the bore opposite',
        symbol: 'g',
        formula: '(D + d) ÷ 2',
        source: 'derived: half of each',
        note: 'As read where a top lies opposite a groove, or to a plug that fills the bore.',
      },
      grooveToTop(D, d),
      [givens.D, givens.d],
    ),
  };
}
