import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { angleGivenOf, angleOf, countGiven, lengthOf, sizedGiven, told } from '../figure/told.ts';
import { addendumTerm, dedendumTerm, extraTerm, pitchTerm } from '../gears/givens.ts';
import type { Angle } from '../values/angle.ts';
import { angleUnder, apexToCrown, atSmallEnd, backConeTeeth, bevelOutside } from './bevel.formulas.ts';
import { type BevelPair, type Cones, checkedCones } from './pair.ts';

const NAVY = 'US Navy, Machinery Repairman (14345), ch. 14, bevel gears';
const DERIVED = 'derived: right triangles of the pitch cone';

export type BevelKey =
  | 'pitchAngle'
  | 'pitchDiameter'
  | 'outsideDiameter'
  | 'coneDistance'
  | 'face'
  | 'faceAngle'
  | 'rootAngle'
  | 'wholeDepth'
  | 'depthSmallEnd'
  | 'apexToCrown'
  | 'backConeTeeth'
  | 'matePitchAngle'
  | 'mateOutside';

type Terms = { readonly pair: BevelPair; readonly cones: Cones };

const teeth = ({ pair }: Terms): Given => countGiven('N', 'teeth', pair.teeth);
const mate = ({ pair }: Terms): Given => countGiven('N2', "mate's teeth", pair.mate);
const shafts = (S: Angle): Given => ({ symbol: 'S', name: 'angle between the shafts', value: { angle: S }, from: 'typed' });

const pitchCone = ({ cones }: Terms): Given => angleGivenOf('g', 'pitch angle', cones.g1);
const apexGiven = ({ cones }: Terms): Given => sizedGiven('Ao', 'cone distance', cones.Ao, cones.unit);
const faceGiven = ({ cones, pair }: Terms): Given => ({
  ...sizedGiven('F', 'face', cones.F, cones.unit),
  from: pair.face === null ? 'guess' : 'typed',
  ...(pair.face === null ? { where: 'a third of the cone distance, common practice' } : {}),
});

type Term = { readonly text: string; readonly given: readonly Given[] };

/** Addendum, dedendum and whole depth at the large end, as they stand in a formula. */
function addendum({ pair }: Terms): Term {
  const [pitch, A] = [pitchTerm(pair.pitch), addendumTerm(pair.system)];
  return { text: pitch.of(A.text), given: [pitch.given, ...A.given] };
}

function dedendum({ pair, cones }: Terms): Term {
  const [pitch, B, e] = [pitchTerm(pair.pitch), dedendumTerm(pair.system), extraTerm(pair.system, cones.unit)];
  return { text: pitch.of(B.text) + (e ? ` + ${e.text}` : ''), given: [pitch.given, ...B.given, ...(e?.given ?? [])] };
}

function depth(terms: Terms): Term {
  const [A, B] = [addendum(terms), dedendum(terms)];
  const seen = new Set(A.given.map(({ symbol }) => symbol));
  return { text: `${A.text} + ${B.text}`, given: [...A.given, ...B.given.filter(({ symbol }) => !seen.has(symbol))] };
}

function cones3(terms: Terms): Pick<Record<BevelKey, Figure>, 'pitchAngle' | 'matePitchAngle' | 'coneDistance' | 'face'> {
  const { cones, pair } = terms;
  const tooth = pitchTerm(pair.pitch);
  const asked = [teeth(terms), mate(terms), shafts(pair.shafts)];
  const own = { name: 'Pitch angle', symbol: 'g', formula: 'atan(sin(S) ÷ (N2 ÷ N + cos(S)))', source: NAVY };
  const other = { name: "Mate's pitch angle", symbol: 'g2', formula: 'atan(sin(S) ÷ (N ÷ N2 + cos(S)))', source: NAVY };
  const apart = { name: 'Cone distance', symbol: 'Ao', formula: `${tooth.of('N')} ÷ (2 × sin(g))`, source: NAVY };
  const third = { name: 'Face', symbol: 'F', formula: 'Ao ÷ 3', source: 'common practice, no source: a third of the cone distance' };
  const typed = { name: 'Face', symbol: 'F', formula: '', source: 'as typed' };
  return {
    pitchAngle: told(cones.unit, own, angleOf(cones.g1), asked),
    matePitchAngle: told(cones.unit, other, angleOf(cones.g2), asked),
    coneDistance: told(cones.unit, apart, lengthOf(cones.Ao, cones.unit), [teeth(terms), tooth.given, pitchCone(terms)]),
    face: told(cones.unit, pair.face === null ? third : typed, lengthOf(cones.F, cones.unit), pair.face === null ? [apexGiven(terms)] : []),
  };
}

function blank(terms: Terms): Pick<Record<BevelKey, Figure>, 'pitchDiameter' | 'outsideDiameter' | 'apexToCrown' | 'mateOutside'> {
  const { cones, pair } = terms;
  const [D, D2, tooth, A] = [cones.N1 * cones.m, cones.N2 * cones.m, pitchTerm(pair.pitch), addendum(terms)];
  const across = { name: 'Pitch diameter, large end', symbol: 'D', formula: tooth.of('N'), source: NAVY };
  const over = { name: 'Outside diameter', symbol: 'Do', formula: `${tooth.of('N')} + 2 × ${A.text} × cos(g)`, source: NAVY };
  const mateOver = {
    name: "Mate's outside diameter",
    symbol: 'Do2',
    formula: `${tooth.of('N2')} + 2 × ${A.text} × cos(g2)`,
    source: NAVY,
  };
  const crown = {
    name: 'Apex to crown, along the axis',
    symbol: 'Zc',
    formula: `${tooth.of('N')} ÷ (2 × tan(g)) − ${A.text} × sin(g)`,
    source: DERIVED,
    note: 'From where the two axes meet to the sharp outside corner: the blank is faced and mounted by it.',
  };
  return {
    outsideDiameter: told(cones.unit, over, lengthOf(bevelOutside(D, cones.A, cones.g1), cones.unit), [
      teeth(terms),
      ...A.given,
      pitchCone(terms),
    ]),
    pitchDiameter: told(cones.unit, across, lengthOf(D, cones.unit), [teeth(terms), tooth.given]),
    apexToCrown: told(cones.unit, crown, lengthOf(apexToCrown(D, cones.A, cones.g1), cones.unit), [
      teeth(terms),
      ...A.given,
      pitchCone(terms),
    ]),
    mateOutside: told(cones.unit, mateOver, lengthOf(bevelOutside(D2, cones.A, cones.g2), cones.unit), [
      mate(terms),
      ...A.given,
      angleGivenOf('g2', "mate's pitch angle", cones.g2),
    ]),
  };
}

function angles(terms: Terms): Pick<Record<BevelKey, Figure>, 'faceAngle' | 'rootAngle' | 'backConeTeeth'> {
  const { cones } = terms;
  const [A, B] = [addendum(terms), dedendum(terms)];
  const face = { name: 'Face angle', symbol: 'gf', formula: `g + atan((${A.text}) ÷ Ao)`, source: NAVY };
  const root = {
    name: 'Root angle',
    symbol: 'gr',
    formula: `g − atan((${B.text}) ÷ Ao)`,
    source: NAVY,
    note: 'The dividing head is tilted to it, so that the bottom of the space lies along the table.',
  };
  const form = { name: 'Teeth for the cutter', symbol: 'Nv', formula: 'N ÷ cos(g)', source: NAVY };
  return {
    faceAngle: told(cones.unit, face, angleOf(cones.g1 + angleUnder(cones.A, cones.Ao)), [pitchCone(terms), ...A.given, apexGiven(terms)]),
    rootAngle: told(cones.unit, root, angleOf(cones.g1 - angleUnder(cones.B, cones.Ao)), [pitchCone(terms), ...B.given, apexGiven(terms)]),
    backConeTeeth: told(cones.unit, form, { number: backConeTeeth(cones.N1, cones.g1), unit: 'teeth', places: 2 }, [
      teeth(terms),
      pitchCone(terms),
    ]),
  };
}

function depths(terms: Terms): Pick<Record<BevelKey, Figure>, 'wholeDepth' | 'depthSmallEnd'> {
  const { cones } = terms;
  const h = depth(terms);
  const large = { name: 'Whole depth, large end', symbol: 'h', formula: h.text, source: NAVY };
  const small = { name: 'Whole depth, small end', symbol: 'hs', formula: `(${h.text}) × (Ao − F) ÷ Ao`, source: DERIVED };
  return {
    wholeDepth: told(cones.unit, large, lengthOf(cones.A + cones.B, cones.unit), h.given),
    depthSmallEnd: told(cones.unit, small, lengthOf(atSmallEnd(cones.A + cones.B, cones.Ao, cones.F), cones.unit), [
      ...h.given,
      apexGiven(terms),
      faceGiven(terms),
    ]),
  };
}

const wide = ({ F, Ao }: Cones): readonly Caution[] =>
  F <= Ao / 3 + 1e-9
    ? []
    : [
        {
          name: 'Wide face',
          says: 'Over a third of the cone distance a milled tooth gets poor at the small end.',
          weight: 'beware',
          about: 'face',
        },
      ];

/**
 * All sizes of a straight bevel wheel from its pair. Depths taper to the apex. Throws DomainError for a pair that no cones can make.
 * Example: 16 and 48 teeth, 8 DP, 20°, shafts at 90°: pitch angle 18.43°, outside 2.2372 in, cone distance 3.1623 in.
 */
export function bevelPair(pair: BevelPair): Answer<BevelKey> {
  const terms = { pair, cones: checkedCones(pair) };
  return { figures: { ...blank(terms), ...cones3(terms), ...angles(terms), ...depths(terms) }, cautions: wide(terms.cones) };
}
