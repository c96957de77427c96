import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { angleGivenOf, angleOf, countGiven, lengthOf, told } from '../figure/told.ts';
import type { Hand, Pitch, ToothSystem } from '../gears/gear.ts';
import { addendumTerm, pitchTerm } from '../gears/givens.ts';
import { virtualTeeth } from '../gears/spur.formulas.ts';
import type { Tooth } from '../gears/tooth.ts';
import { checkedTooth } from '../gears/wheel.ts';
import { type Angle, toDegrees, toRadians } from '../values/angle.ts';
import { printDegrees, printShort } from '../values/print.ts';
import { diameterByNormal, leadOf, mateHelix, slidingShare } from './crossed.formulas.ts';

/** Two helical wheels on shafts that cross without meeting. pitch: in the normal section, which both share. helix, hand: of the first wheel. */
export type CrossedAsked = {
  readonly teeth: number;
  readonly mate: number;
  readonly pitch: Pitch;
  readonly system: ToothSystem;
  readonly shafts: Angle;
  readonly helix: Angle;
  readonly hand: Hand;
};

type Side = '1' | '2';
export type CrossedKey = 'centre' | 'mateHelix' | 'sliding' | `${'pitchDiameter' | 'outside' | 'lead' | 'virtual'}${Side}`;

const ELEMENTS = 'SDP/SI, Elements of Metric Gear Technology, crossed helical gears, equations 7-2 to 7-7';
const NAVY = 'US Navy, Machinery Repairman (14345), ch. 14, helical gears';
const MOST_HELIX = Math.PI / 2 - 0.05;

type Worked = { readonly asked: CrossedAsked; readonly tooth: Tooth; readonly S: number; readonly b1: number; readonly b2: number };

function worked(asked: CrossedAsked): Worked {
  const tooth = checkedTooth({ teeth: asked.teeth, pitch: asked.pitch, system: asked.system });
  checkedTooth({ teeth: asked.mate, pitch: asked.pitch, system: asked.system });
  const [S, b1] = [toRadians(asked.shafts), toRadians(asked.helix)];
  const b2 = mateHelix(S, b1);
  if (S > 0 && S <= Math.PI / 2 + 1e-12 && b1 > 0 && b1 < MOST_HELIX && Math.abs(b2) < MOST_HELIX) return { asked, tooth, S, b1, b2 };
  throw new DomainError({
    given: `Shafts at ${printDegrees(asked.shafts, 2)}° and a helix of ${printDegrees(asked.helix, 2)}°: the mate would have ${printShort(toDegrees(asked.shafts) - toDegrees(asked.helix), 2)}°.`,
    limit: 'Shafts cross at up to 90°, and each helix lies between 0° and 87°.',
    tryThis: 'Parallel shafts take the helical sum; at 90° helices of 45° and 45° slide least.',
    about: ['helix', 'shafts'],
  });
}

const helixName = (b: number, hand: Hand): Hand => (b >= 0 ? hand : hand === 'right' ? 'left' : 'right');

/** One wheel of the pair with the words and terms that its figures are written in. d: its pitch diameter; across: its formula. */
type Wheel = {
  readonly work: Worked;
  readonly at: Side;
  readonly whose: string;
  readonly N: number;
  readonly b: number;
  readonly d: number;
  readonly pitch: ReturnType<typeof pitchTerm>;
  readonly across: string;
  /** Its count and its helix. */
  readonly own: readonly Given[];
};

function wheelAt(work: Worked, at: Side): Wheel {
  const { asked, tooth } = work;
  const [N, b, whose, counts] =
    at === '1' ? ([asked.teeth, work.b1, 'First wheel', 'teeth'] as const) : ([asked.mate, work.b2, 'Mate', "mate's teeth"] as const);
  const pitch = pitchTerm(asked.pitch);
  return {
    ...{ work, at, whose, N, b, pitch },
    d: diameterByNormal(N, tooth.m, b),
    across: `${pitch.of(`N${at}`)} ÷ cos(b${at})`,
    own: [countGiven(`N${at}`, counts, N), angleGivenOf(`b${at}`, 'helix angle', b)],
  };
}

function diameters({ work: { asked, tooth }, at, whose, d, pitch, across, own }: Wheel): Record<string, Figure> {
  const A = addendumTerm(asked.system);
  const given = [...own, pitch.given];
  return {
    [`pitchDiameter${at}`]: told(
      tooth.unit,
      { name: `${whose}, pitch diameter`, symbol: `d${at}`, formula: across, source: ELEMENTS },
      lengthOf(d, tooth.unit),
      given,
    ),
    [`outside${at}`]: told(
      tooth.unit,
      { name: `${whose}, outside diameter`, symbol: `do${at}`, formula: `${across} + 2 × ${pitch.of(A.text)}`, source: ELEMENTS },
      lengthOf(d + 2 * tooth.A, tooth.unit),
      [...given, ...A.given],
    ),
  };
}

function leadFigure({ work: { asked, tooth }, at, whose, b, d, pitch, across, own }: Wheel): Figure {
  const [name, symbol] = [`${whose}, lead`, `L${at}`];
  if (Math.abs(b) < 1e-9) return told(tooth.unit, { name, symbol, formula: '', source: NAVY }, { words: 'none: its teeth are straight' });
  return told(
    tooth.unit,
    { name, symbol, formula: `π × ${across} ÷ abs(tan(b${at}))`, source: NAVY, note: `${helixName(b, asked.hand)}-hand` },
    lengthOf(leadOf(d, b), tooth.unit),
    [...own, pitch.given],
  );
}

function virtualFigure({ work: { tooth }, at, whose, N, b, own }: Wheel): Figure {
  const said = { name: `${whose}, teeth for the cutter`, symbol: `Nv${at}`, formula: `N${at} ÷ cos(b${at})^3`, source: NAVY };
  return told(tooth.unit, said, { number: virtualTeeth(N, b), unit: 'teeth', places: 2 }, own);
}

function side(work: Worked, at: Side): Record<string, Figure> {
  const wheel = wheelAt(work, at);
  return { ...diameters(wheel), [`lead${at}`]: leadFigure(wheel), [`virtual${at}`]: virtualFigure(wheel) };
}

const firstHelix = ({ b1 }: Worked): Given => angleGivenOf('b1', 'helix angle', b1, 'typed');
const matesHelix = ({ b2 }: Worked): Given => angleGivenOf('b2', "mate's helix angle", b2);
const shaftsGiven = ({ S }: Worked): Given => angleGivenOf('S', 'angle between the shafts', S, 'typed');

function centreFigure(work: Worked): Figure {
  const { asked, tooth, b1, b2 } = work;
  const pitch = pitchTerm(asked.pitch);
  const said = {
    name: 'Centre distance',
    symbol: 'C',
    formula: `(${pitch.of('N1')} ÷ cos(b1) + ${pitch.of('N2')} ÷ cos(b2)) ÷ 2`,
    source: ELEMENTS,
  };
  const [d1, d2] = [diameterByNormal(asked.teeth, tooth.m, b1), diameterByNormal(asked.mate, tooth.m, b2)];
  const counts = [countGiven('N1', 'teeth', asked.teeth), countGiven('N2', "mate's teeth", asked.mate)];
  return told(tooth.unit, said, lengthOf((d1 + d2) / 2, tooth.unit), [...counts, pitch.given, firstHelix(work), matesHelix(work)]);
}

function mateHelixFigure(work: Worked): Figure {
  const { asked, tooth, b2 } = work;
  const note = `${helixName(b2, asked.hand)}-hand; the first wheel is ${asked.hand}-hand.`;
  return told(
    tooth.unit,
    { name: "Mate's helix angle", symbol: 'b2', formula: 'abs(S − b1)', source: ELEMENTS, note },
    angleOf(Math.abs(b2)),
    [shaftsGiven(work), firstHelix(work)],
  );
}

const slidingFigure = (work: Worked): Figure =>
  told(
    work.tooth.unit,
    {
      name: 'Teeth slide, of the pitch line speed',
      symbol: 'vs',
      formula: 'sin(S) ÷ cos(b2)',
      source: 'derived: both velocities in the pitch plane',
    },
    { number: slidingShare(work.S, work.b2), unit: '', places: 3 },
    [shaftsGiven(work), matesHelix(work)],
  );

const pair = (work: Worked): Pick<Record<CrossedKey, Figure>, 'centre' | 'mateHelix' | 'sliding'> => ({
  centre: centreFigure(work),
  mateHelix: mateHelixFigure(work),
  sliding: slidingFigure(work),
});

const CAUTIONS: readonly Caution[] = [
  {
    name: 'Point contact',
    says: 'Crossed helical wheels touch at a point and slide: for light loads, well oiled, hard against bronze or iron.',
    weight: 'note',
  },
];

/**
 * A pair of helical wheels on crossed shafts. Throws DomainError for angles that make no pair.
 * Example: 24 and 24 teeth, normal module 3, shafts at 90°, helix 45°: centre distance 101.823 mm.
 */
export function crossedPair(asked: CrossedAsked): Answer<CrossedKey> {
  const work = worked(asked);
  return { figures: { ...pair(work), ...side(work, '1'), ...side(work, '2') } as Record<CrossedKey, Figure>, cautions: CAUTIONS };
}
