import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { inches, inUnit, type Length, ofUnit } from '../values/length.ts';
import { bestSpanCount, hobbedFlank, leastFaceForSpan, spanContactRadius, spanOver } from './base-tangent.formulas.ts';
import { atOf, baseOf, type Flanks, leastTeethOf, mtOf, normalThickness, pitchOf, psibOf, rootOf, tipOf } from './flanks.formulas.ts';
import { axialPitch, lead, overlapRatio, virtualTeethByBase } from './helical.formulas.ts';
import { checkedFlanks, type ParallelGear } from './parallel.ts';
import { type Terms, termsOf, told, toldAngle, toldLength, toldNumber, workedAngle, workedLength, workedNumber } from './parallel-terms.ts';
import { spanSays } from './span-says.ts';
import { chordalAddendum, chordalThickness, virtualTeeth } from './spur.formulas.ts';
import { checkedThinning } from './thinning.ts';
import { UNDERCUT_THERE } from './wheel.cautions.ts';

const ISO = 'ISO 21771:2007, clauses 4 and 5 (value from memory)';
const SDP = 'SDP/SI, Elements of Metric Gear Technology, T-81 to T-87';

/** Span limits, one-sided: metal left may still come off (judgement). */
const SPAN_LIMIT = inches(0.001);

const depthAs = ({ of, A, B, plusE }: Terms): string => `${of(`(${A} + ${B})`)}${plusE.replace('2 × ', '')}`;

type Sized = { readonly flanks: Flanks; readonly terms: Terms };

const sizes = ({ flanks, terms }: Sized) => {
  const D = terms.across('N');
  const say = (name: string, symbol: string, formula: string) => ({ name, symbol, formula, source: ISO });
  const length = (name: string, symbol: string, formula: string, size: number): Figure =>
    toldLength(flanks.unit, say(name, symbol, formula), size, terms.given);
  return {
    outsideDiameter: length('Outside diameter', 'Do', `${D} + 2 × ${terms.of(`(${terms.A}${terms.plusX})`)}`, tipOf(flanks)),
    pitchDiameter: length('Pitch diameter', 'D', D, pitchOf(flanks)),
    rootDiameter: length(
      'Root diameter',
      'Dr',
      `${D} − 2 × ${terms.of(`(${terms.B}${terms.minusX})`)}${terms.plusE.replace('+', '−')}`,
      rootOf(flanks),
    ),
    baseDiameter: length('Base diameter', 'Db', `${D} × cos(at)`, baseOf(flanks)),
    wholeDepth: length('Whole depth', 'Wd', depthAs(terms), flanks.A + flanks.B),
  };
};

function angles(gear: ParallelGear, { flanks, terms }: Sized) {
  const normal = gear.plane === 'normal';
  const other = normal
    ? { name: 'Pressure angle in the plane of the wheel', symbol: 'at', formula: 'atan(tan(a) ÷ cos(H))', source: ISO }
    : { name: 'Pressure angle square to the teeth', symbol: 'an', formula: 'atan(tan(a) × cos(H))', source: ISO };
  const base = { name: 'Helix angle on the base circle', symbol: 'Hb', formula: `asin(sin(H) × cos(${normal ? 'a' : 'an'}))`, source: ISO };
  return {
    otherAngle: toldAngle(flanks.unit, other, normal ? atOf(flanks) : flanks.an, terms.given),
    baseHelix: toldAngle(flanks.unit, base, psibOf(flanks), terms.given),
  };
}

function pitches({ flanks, terms }: Sized) {
  const { unit, mn, psi, N } = flanks;
  const navy = 'US Navy, Machinery Repairman (14345), cutter selection for helical gears';
  const length = (name: string, symbol: string, formula: string, size: number, source = ISO): Figure =>
    toldLength(unit, { name, symbol, formula, source }, size, terms.given);
  return {
    lead: length('Lead', 'L', `π × ${terms.across('N')} ÷ tan(H)`, lead(pitchOf(flanks), psi), navy),
    axialPitch: length('Axial pitch', 'px', `${terms.square('π')} ÷ sin(H)`, axialPitch(mn, psi)),
    transversePitch: length('Circular pitch in the plane of the wheel', 'pt', terms.across('π'), Math.PI * mtOf(flanks)),
    normalPitch: length('Circular pitch square to the teeth', 'pn', terms.square('π'), Math.PI * mn),
    virtualTeeth: toldNumber(
      unit,
      { name: 'Virtual count, for the cutter', symbol: 'Nv', formula: 'N ÷ cos(H)^3', source: navy },
      virtualTeeth(N, psi),
      terms.given,
      4,
    ),
    virtualByBase: toldNumber(
      unit,
      { name: 'Virtual count by the base helix', symbol: 'Nb', formula: 'N ÷ (cos(asin(sin(H) × cos(an)))^2 × cos(H))', source: ISO },
      virtualTeethByBase(N, psi, flanks.an),
      terms.given,
      4,
    ),
  };
}

/** Thickness square to the teeth, and what gear-tooth vernier and span should read, less what a backlash takes off. */
export function thicknessFigures({ flanks, terms }: Sized, bn: number) {
  const { unit, N, mn, an, psi, v, A } = flanks;
  const sn = normalThickness(flanks);
  const shifted = v === 0 ? '' : ` + 2 × ${terms.of('X')} × tan(an)`;
  const thickness = toldLength(
    unit,
    { name: 'Thickness square to the teeth', symbol: 'sn', formula: `${terms.square('π ÷ 2')}${shifted}`, source: SDP },
    sn,
    terms.given,
  );
  const s = sn - bn;
  const Nv = virtualTeeth(N, psi);
  const at = [
    ...terms.given,
    workedLength('s', 'thickness wanted', s, unit),
    workedLength('mn', 'module square to the teeth', mn, unit),
    workedNumber('Nv', 'virtual count', Nv, 6),
    workedLength('ha', 'addendum as it stands', A + v, unit),
  ];
  const half = '180° × s ÷ (π × Nv × mn)';
  const chord = { name: 'Chordal thickness', symbol: 't', formula: `Nv × mn × sin(${half})`, source: SDP };
  const height = { name: 'Chordal addendum', symbol: 'hc', formula: `ha + Nv × mn ÷ 2 × (1 − cos(${half}))`, source: SDP };
  return {
    thickness,
    chordalThickness: toldLength(unit, chord, chordalThickness(Nv * mn, s), at),
    chordalAddendum: toldLength(unit, height, chordalAddendum(Nv * mn, s, A + v), at),
    ...spanFigures({ flanks, terms }, s, an),
  };
}

/** What must be said of the span at a normal thickness s: that there is none, or that a hob cuts away the flank that it touches. */
export function spanCautions(flanks: Flanks, s: number): readonly Caution[] {
  const k = bestSpanCount(flanks, s);
  if (k === null)
    return [
      {
        name: 'No span',
        says: 'No span of these teeth touches their flanks: measure over pins or the chordal thickness.',
        weight: 'note',
        about: 'thickness',
      },
    ];
  const left = hobbedFlank(flanks);
  const clear = left !== null && spanContactRadius(flanks, spanOver(flanks, s, k)) > left.from;
  return clear ? [] : [{ name: 'Undercut, span', says: UNDERCUT_THERE, weight: 'beware', about: 'span' }];
}

function spanFigures({ flanks, terms }: Sized, s: number, an: number): { span?: Figure; leastFace?: Figure } {
  const k = bestSpanCount(flanks, s);
  if (k === null) return {};
  const { unit, mn } = flanks;
  const W = spanOver(flanks, s, k);
  const at = [
    ...terms.given,
    workedLength('s', 'thickness wanted', s, unit),
    workedLength('mn', 'module square to the teeth', mn, unit),
    { symbol: 'k', name: 'teeth between the jaws', value: { count: k }, from: 'worked out' } as const,
    workedLength('W', 'span', W, unit),
    workedAngle('Hb', 'helix angle on the base circle', psibOf(flanks)),
  ];
  const say = {
    name: `Span over ${k} ${k === 1 ? 'tooth' : 'teeth'}`,
    symbol: 'W',
    formula: 'cos(an) × (s + (k − 1) × π × mn + N × mn × inv(at))',
    source: SDP,
  };
  const less = inUnit(SPAN_LIMIT, unit);
  const span = { ...toldLength(unit, say, W, at), limits: [{ length: ofUnit(W - less, unit) }, { length: ofUnit(W, unit) }] as const };
  if (flanks.psi === 0 || an === 0) return { span };
  const face = {
    name: 'Least face to lay the span on',
    symbol: 'F',
    formula: 'W × sin(Hb)',
    source: SDP,
    note: 'The jaws need about 1/8 in (3 mm) more to rest on.',
  };
  return { span, leastFace: toldLength(unit, face, leastFaceForSpan(flanks, W), at) };
}

function cautions(flanks: Flanks, hand: 'right' | 'left', face: number | null, leastFace: number | null): readonly Caution[] {
  const least = Math.ceil(leastTeethOf(flanks, flanks.A) - 1e-9);
  const says: Caution[] = [
    {
      name: 'Hand',
      says: `Its mate on a parallel shaft has the same helix and is ${hand === 'right' ? 'left' : 'right'}-hand. Prove the lead with a scratch line.`,
      weight: 'note',
      about: 'lead',
    },
  ];
  if (flanks.N < least)
    says.push({
      name: 'Undercut',
      says: `Under ${least} teeth a hob or rack of this system cuts into the foot of the tooth.`,
      weight: 'beware',
      about: 'rootDiameter',
    });
  if (face !== null && leastFace !== null && face <= leastFace)
    says.push({
      name: 'Face too narrow',
      says: 'The span runs off the end of the teeth. Measure over balls or the chordal thickness.',
      weight: 'beware',
      about: 'span',
    });
  return says;
}

/** Leads beyond this are no milling machine's, and longer than any length that is kept. */
const LONGEST_LEAD = { in: 3600, mm: 90_000 } as const;

function checkLead(flanks: Flanks): void {
  if (lead(pitchOf(flanks), flanks.psi) <= LONGEST_LEAD[flanks.unit]) return;
  throw new DomainError({
    given: 'A helix so slight that its lead is over 90 m.',
    limit: 'Over the face of a wheel such teeth are straight.',
    tryThis: 'Measure the helix again, or see the spur gear.',
    about: ['helix'],
  });
}

export type HelicalAsked = { readonly gear: ParallelGear; readonly face?: Length; readonly backlash?: Length };

/**
 * Every size of a helical wheel, of a system that holds square to the teeth or in the plane of the wheel.
 * Throws DomainError without a helix, or where sizes make no wheel. Example: 18 teeth, 6 DP transverse, 25°, 20° square: lead 20.212.
 */
export function helicalAnswer({ gear, face, backlash }: HelicalAsked): Answer {
  const flanks = checkedFlanks(gear);
  if (!(flanks.psi > 0) || !gear.helix)
    throw new DomainError({
      given: 'A helix angle of 0°.',
      limit: 'Straight teeth have no lead and no axial pitch.',
      tryThis: 'See the spur gear, or type the helix angle.',
      about: ['helix'],
    });
  checkLead(flanks);
  const sized = { flanks, terms: termsOf(gear, flanks) };
  const b = checkedThinning(flanks, backlash);
  const bn = b * Math.cos(flanks.psi);
  const measured = thicknessFigures(sized, bn);
  const wide = face === undefined ? null : inUnit(face, flanks.unit);
  const amiss = spanCautions(flanks, normalThickness(flanks) - bn);
  const leastFace =
    measured.leastFace && 'length' in measured.leastFace.value ? inUnit(measured.leastFace.value.length, flanks.unit) : null;
  return {
    figures: {
      ...sizes(sized),
      ...pitches(sized),
      ...angles(gear, sized),
      ...measured,
      ...(wide === null ? {} : { overlap: overlapFigure(sized, wide) }),
    },
    cautions: [...cautions(flanks, gear.helix.hand, wide, leastFace), ...amiss],
    says: amiss.length === 0 ? spanSays(measured.span, leastFace, wide, flanks.unit) : '',
  };
}

function overlapFigure({ flanks, terms }: Sized, face: number): Figure {
  const at = [
    ...terms.given,
    workedLength('F', 'face', face, flanks.unit),
    workedLength('mn', 'module square to the teeth', flanks.mn, flanks.unit),
  ];
  const said = { name: 'Overlap ratio', symbol: 'eb', formula: 'F × sin(H) ÷ (π × mn)', source: 'Norton, Machine Design, ch. 12' };
  return told(flanks.unit, said, { number: overlapRatio(face, flanks.mn, flanks.psi), unit: '', places: 3 }, at);
}
