import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { angleGivenOf, angleOf, lengthOf, numberGiven, sizedGiven, told } from '../figure/told.ts';
import { dedendumTerm, extraTerm, pitchTerm } from '../gears/givens.ts';
import { checkedWormAndWheel, type Worked, type WormAsked } from './asked.ts';
import { wheelAcross, wheelFigures } from './wheel-figures.ts';
import { bearingFace, throatDiameter, wormEfficiency, wormHolds, wormLength } from './worm.formulas.ts';
import { addendum, BOOK, leadAngleGiven, startsGiven, type Term, type Terms, wormGiven } from './worm-terms.ts';

export type WormKey =
  | 'axialPitch'
  | 'lead'
  | 'leadAngle'
  | 'normalPitch'
  | 'wormOutside'
  | 'wormRoot'
  | 'wheelPitchDiameter'
  | 'throatDiameter'
  | 'throatRadius'
  | 'overCorners'
  | 'centre'
  | 'wholeDepth'
  | 'wormLength'
  | 'wheelFace'
  | 'ratio'
  | 'efficiency';

const JINDAL = 'U. C. Jindal, Machine Design, ex 28-4 and 28-5';

/** Circular pitch as it stands in a formula: a typed one by its own symbol. */
const axial = ({ asked }: Worked): string => (asked.pitch.kind === 'CP' ? 'p' : pitchTerm(asked.pitch).of('π'));

function thread(terms: Terms): Pick<Record<WormKey, Figure>, 'axialPitch' | 'lead' | 'leadAngle' | 'normalPitch'> {
  const { asked, p, l, of, length } = terms;
  const pitch = pitchTerm(asked.pitch).given;
  const lead = asked.starts * p;
  return {
    lead: of({ name: 'Lead', symbol: 'L', formula: `n × ${axial(terms)}`, source: BOOK }, length(lead), [startsGiven(terms), pitch]),
    axialPitch: of({ name: 'Axial pitch', symbol: 'px', formula: axial(terms), source: BOOK }, length(p), [pitch]),
    leadAngle: of(
      {
        name: 'Lead angle',
        symbol: 'l',
        formula: `atan(n × ${axial(terms)} ÷ (π × d))`,
        source: BOOK,
        note: `The table is swung by it to gash the wheel; ${asked.hand}-hand.`,
      },
      angleOf(l),
      [startsGiven(terms), pitch, wormGiven(terms)],
    ),
    normalPitch: of({ name: 'Normal pitch', symbol: 'pn', formula: `${axial(terms)} × cos(l)`, source: BOOK }, length(p * Math.cos(l)), [
      pitch,
      leadAngleGiven(terms),
    ]),
  };
}

function dedendum({ asked, tooth }: Worked): Term {
  const [pitch, B, e] = [pitchTerm(asked.pitch), dedendumTerm(asked.system), extraTerm(asked.system, tooth.unit)];
  return { text: pitch.of(B.text) + (e ? ` + ${e.text}` : ''), given: [pitch.given, ...B.given, ...(e?.given ?? [])] };
}
const once = (given: readonly Given[]): readonly Given[] =>
  given.filter((one, at) => given.findIndex(({ symbol }) => symbol === one.symbol) === at);

function worm(terms: Terms): Pick<Record<WormKey, Figure>, 'wormOutside' | 'wormRoot' | 'wholeDepth'> {
  const { d, tooth, of, length } = terms;
  const [A, B] = [addendum(terms), dedendum(terms)];
  const bottom = `d − 2 × (${B.text})`;
  return {
    wormOutside: of({ name: 'Worm, outside', symbol: 'do', formula: `d + 2 × (${A.text})`, source: BOOK }, length(d + 2 * tooth.A), [
      wormGiven(terms),
      ...A.given,
    ]),
    wormRoot: of({ name: 'Worm, root', symbol: 'dr', formula: bottom, source: BOOK }, length(d - 2 * tooth.B), [
      wormGiven(terms),
      ...B.given,
    ]),
    wholeDepth: of(
      { name: 'Whole depth', symbol: 'h', formula: `${A.text} + ${B.text}`, source: BOOK },
      length(tooth.A + tooth.B),
      once([...A.given, ...B.given]),
    ),
  };
}

/** How long the threads, how wide the face. */
function lengths(terms: Terms): Pick<Record<WormKey, Figure>, 'wormLength' | 'wheelFace'> {
  const { d, tooth, of, length } = terms;
  const D = wheelAcross(terms);
  const [Dt, outside] = [throatDiameter(D, tooth.A), d + 2 * tooth.A];
  const size = (symbol: string, name: string, x: number): Given => sizedGiven(symbol, name, x, tooth.unit);
  return {
    wormLength: of(
      {
        name: 'Worm, threads at least so long',
        symbol: 'lw',
        formula: '2 × √((Dt ÷ 2)^2 − (D ÷ 2 − ha)^2)',
        source: 'derived: chord of the throat circle along the worm’s outside',
        note: 'Half a pitch more at each end leaves room for a thin first thread.',
      },
      length(wormLength(Dt, D, tooth.A)),
      [size('Dt', 'throat diameter', Dt), size('D', "wheel's pitch diameter", D), size('ha', 'addendum', tooth.A)],
    ),
    wheelFace: of(
      {
        name: 'Wheel, face that bears',
        symbol: 'b',
        formula: '√(do^2 − d^2)',
        source: 'derived: chord of the worm’s outside along its pitch line',
        note: 'More than that carries nothing.',
      },
      length(bearingFace(outside, d)),
      [size('do', "worm's outside", outside), wormGiven(terms)],
    ),
  };
}

function power(terms: Terms): Pick<Record<WormKey, Figure>, 'efficiency'> {
  const { asked, tooth, l, of } = terms;
  const formula = '100 × (cos(a) − f × tan(l)) ÷ (cos(a) + f ÷ tan(l))';
  return {
    efficiency: of(
      { name: 'Of the power comes out', symbol: 'E', formula, source: JINDAL },
      { number: 100 * wormEfficiency(l, tooth.a, asked.friction), unit: '%', places: 1 },
      [
        angleGivenOf('a', 'pressure angle', tooth.a, 'table'),
        numberGiven('f', 'friction', asked.friction, 3, 'guess'),
        leadAngleGiven(terms),
      ],
    ),
  };
}

function cautions({ asked, tooth, l }: Worked): readonly Caution[] {
  const holds = wormHolds(l, tooth.a, asked.friction);
  const says = holds
    ? 'By this friction the wheel cannot turn the worm; shake and oil can free it all the same. Never trust it to hold a load over a person.'
    : 'By this friction the wheel can turn the worm: it does not hold a load by itself.';
  return [
    { name: holds ? 'Holds, but' : 'Does not hold', says, weight: 'beware', about: 'efficiency' },
    {
      name: 'Cut the wheel to the worm',
      says: 'The hob, or the fly tool in its bar, is made to this worm: its diameter, lead and hand. Gash first, then hob until the worm turns freely at the centre distance.',
      weight: 'note',
    },
  ];
}

/**
 * Worm and wheel from counts, pitch and the worm's pitch diameter. Throws DomainError for one that cannot be.
 * Example: 60 teeth, 1 start, 6 DP, worm 2.000 in: lead angle 4.76°, centre distance 6.000 in.
 */
export function wormAndWheel(asked: WormAsked): Answer<WormKey> {
  const work = checkedWormAndWheel(asked);
  const terms: Terms = {
    ...work,
    of: (about, value, given = []) => told(work.tooth.unit, about, value, given),
    length: (size) => lengthOf(size, work.tooth.unit),
  };
  return {
    figures: {
      ...thread(terms),
      ...worm(terms),
      ...wheelFigures(terms),
      ...lengths(terms),
      ...power(terms),
    },
    cautions: cautions(work),
  };
}
