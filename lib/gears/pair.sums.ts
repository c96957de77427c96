import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import type { Length } from '../values/length.ts';
import { type CoupleAsked, type PairTerms, pairTerms, type Settled, settled } from './couple.ts';
import { baseOf, type Flanks, leastShift, pointedDiameter, rootOf, thicknessAt, tipOf, transverseThickness } from './flanks.formulas.ts';
import {
  backlashAngle,
  backlashOfCentre,
  backlashSquare,
  involuteOfWorkingAngle,
  shiftsFor,
  standardCentre,
  tipShortening,
  workingBacklash,
  workingDiameters,
} from './pair.formulas.ts';
import { toldAngle, toldLength, toldNumber, workedLength, workedNumber } from './parallel-terms.ts';
import { checkedThinning } from './thinning.ts';
import { moduleOf } from './tooth.ts';

const ISO = 'ISO 21771:2007, clause 6 (value from memory)';
const SHIFTED = 'SDP/SI, Elements of Metric Gear Technology, profile-shifted gears (value from memory)';

export type PairAsked = CoupleAsked & { readonly backlash?: Length };
type Work = { readonly asked: PairAsked; readonly at: Settled; readonly terms: PairTerms; readonly thinned: number };

function angles({ at, terms }: Work): Record<string, Figure> {
  const { couple, C, aw, from } = at;
  const { unit } = couple.one;
  const a0 = { name: 'Centre distance unshifted', symbol: 'a0', formula: terms.across(`${terms.teeth} ÷ 2`), source: ISO };
  const standard = toldLength(unit, a0, standardCentre(couple), terms.numbers);
  if (from === 'shifts') {
    const i = {
      name: 'Involute of the working angle',
      symbol: 'i',
      formula: `inv(at) + 2 × tan(a) × ${terms.shifts} ÷ ${terms.teeth}`,
      source: ISO,
    };
    const found = {
      name: 'Working pressure angle',
      symbol: 'aw',
      formula: '',
      source: 'the angle whose involute is i; common practice, no source',
    };
    const centre = { name: 'Centre distance', symbol: 'C', formula: 'a0 × cos(at) ÷ cos(aw)', source: ISO, note: 'Without backlash.' };
    return {
      centre: toldLength(unit, centre, C, terms.numbers),
      standardCentre: standard,
      involute: toldNumber(unit, i, involuteOfWorkingAngle(couple), terms.numbers, 7),
      workingAngle: toldAngle(unit, found, aw, terms.numbers),
    };
  }
  const angle = { name: 'Working pressure angle', symbol: 'aw', formula: 'acos(a0 × cos(at) ÷ C)', source: ISO };
  return { standardCentre: standard, workingAngle: toldAngle(unit, angle, aw, terms.numbers) };
}

function shifts({ asked, at, terms }: Work): Record<string, Figure> {
  const { couple, aw } = at;
  const { unit } = couple.one;
  const m = moduleOf(asked.gear.pitch);
  const sum = {
    name: couple.mate.ring ? 'Shift of the ring less that of the wheel' : 'Sum of shifts for no backlash',
    symbol: 'Xs',
    formula: `${terms.teeth} × (inv(aw) − inv(at)) ÷ (2 × tan(a))`,
    source: ISO,
  };
  const each = (name: string, symbol: string): { name: string; symbol: string; formula: string; source: string } => ({
    name,
    symbol,
    formula: '',
    source: 'judgement: the smaller wheel has the greater part; any two of the same sum serve',
  });
  return {
    sumOfShifts: toldNumber(unit, sum, shiftsFor(couple, aw) / m, terms.numbers, 4),
    ...(at.from === 'centre'
      ? {
          shift: toldNumber(unit, each('Shift of the wheel', 'X1'), couple.one.v / m, [], 4),
          mateShift: toldNumber(unit, each(couple.mate.ring ? 'Shift of the ring' : 'Shift of the mate', 'X2'), couple.mate.v / m, [], 4),
        }
      : {}),
  };
}

function diameters({ at, terms }: Work): Record<string, Figure> {
  const { couple, C } = at;
  const { unit } = couple.one;
  const K = tipShortening(couple, C);
  const numbers: readonly Given[] = [...terms.numbers, workedLength('K', 'tips turned down', K, unit)];
  const less = K === 0 ? '' : ' − 2 × K';
  const ring = couple.mate.ring;
  const length = (name: string, symbol: string, formula: string, size: number, source = SHIFTED): Figure =>
    toldLength(unit, { name, symbol, formula, source }, size, numbers);
  const [w1, w2] = workingDiameters(couple, C);
  const roots = (X: string, sign: string) => terms.of(`(${terms.B} ${sign} ${X})`);
  const e = terms.plusE;
  return {
    ...(ring ? {} : { tipShortening: length('Tips turned down by', 'K', `max(0, ${terms.of(terms.shifts)} − (C − a0))`, K) }),
    outsideDiameter: length(
      'Outside of the wheel',
      'Do1',
      `${terms.across('N1')} + 2 × ${terms.of(`(${terms.A} + X1)`)}${less}`,
      tipOf(couple.one) - 2 * K,
    ),
    mateOutside: ring
      ? length('Inside of the ring', 'Di', `${terms.across('N2')} − 2 × ${terms.of(`(${terms.A} − X2)`)}`, tipOf(couple.mate))
      : length(
          'Outside of the mate',
          'Do2',
          `${terms.across('N2')} + 2 × ${terms.of(`(${terms.A} + X2)`)}${less}`,
          tipOf(couple.mate) - 2 * K,
        ),
    rootDiameter: length(
      'Root of the wheel',
      'Dr1',
      `${terms.across('N1')} − 2 × ${roots('X1', '−')}${e.replace('+', '−')}`,
      rootOf(couple.one),
    ),
    mateRoot: ring
      ? length('Root of the ring', 'Dr2', `${terms.across('N2')} + 2 × ${roots('X2', '+')}${e}`, rootOf(couple.mate))
      : length('Root of the mate', 'Dr2', `${terms.across('N2')} − 2 × ${roots('X2', '−')}${e.replace('+', '−')}`, rootOf(couple.mate)),
    workingDiameter: length('Working pitch diameter of the wheel', 'Dw1', `2 × C × N1 ÷ ${terms.teeth}`, w1, ISO),
    mateWorking: length(`Working pitch diameter of the ${ring ? 'ring' : 'mate'}`, 'Dw2', `2 × C × N2 ÷ ${terms.teeth}`, w2, ISO),
  };
}

function lash({ at, terms, thinned }: Work): Record<string, Figure> {
  const { couple, C, aw } = at;
  const { unit, psi } = couple.one;
  const jw = workingBacklash(couple, C, thinned);
  const numbers: readonly Given[] = [
    ...terms.numbers,
    workedLength('b', 'both wheels thinner by', thinned, unit),
    workedLength('jw', 'backlash along the working circles', jw, unit),
    workedNumber('i', 'involute of the angle without backlash', involuteOfWorkingAngle(couple), 9),
    workedLength('Dw1', 'working pitch diameter of the wheel', workingDiameters(couple, C)[0], unit),
  ];
  const sign = couple.mate.ring ? '−' : '+';
  const source = 'derived: what the working pitch has over both thicknesses there';
  const along = {
    name: 'Backlash along the working circles',
    symbol: 'jw',
    formula: `cos(at) ÷ cos(aw) × (b ${sign} ${terms.across(terms.teeth)} × (inv(aw) − i))`,
    source,
  };
  const square = {
    name: 'Backlash square to the flanks',
    symbol: 'jn',
    formula: `jw × cos(aw)${psi === 0 ? '' : ' × cos(asin(sin(H) × cos(an)))'}`,
    source: ISO,
  };
  const nearer = {
    name: 'The same as distance of centres',
    symbol: 'jr',
    formula: 'jw ÷ (2 × tan(aw))',
    source: ISO,
    note: 'While it is small.',
  };
  const turned = { name: 'The wheel turns, its mate held', symbol: 'jt', formula: '2 × jw ÷ Dw1', source: ISO };
  return {
    backlash: toldLength(unit, along, jw, numbers),
    backlashSquare: toldLength(unit, square, backlashSquare(couple, jw, aw), numbers),
    backlashOfCentre: toldLength(unit, nearer, backlashOfCentre(jw, aw), numbers),
    backlashAngle: toldAngle(unit, turned, backlashAngle(jw, workingDiameters(couple, C)[0]), numbers),
  };
}

function tipCaution(name: string, flanks: Flanks, tip: number, about: string): readonly Caution[] {
  if (flanks.ring) return [];
  if (tip <= baseOf(flanks))
    return [
      {
        name: 'No flank',
        says: `The ${name} ends inside its base circle: nothing of its teeth is an involute, and they do not drive evenly.`,
        weight: 'danger',
        about,
      },
    ];
  if (tip >= pointedDiameter(flanks))
    return [
      {
        name: 'Pointed tip',
        says: `The flanks of the ${name} meet before its outside: the tooth ends in a point.`,
        weight: 'beware',
        about,
      },
    ];
  const land = thicknessAt(flanks, transverseThickness(flanks), tip);
  if (land >= 0.25 * flanks.mn) return [];
  return [
    {
      name: 'Thin tip',
      says: `The tips of the ${name} are under a quarter of the module thick: too thin to harden through.`,
      weight: 'note',
      about,
    },
  ];
}

const undercutCaution = (name: string, flanks: Flanks, about: string): readonly Caution[] =>
  !flanks.ring && flanks.v < leastShift(flanks, flanks.A) - 1e-9
    ? [{ name: 'Undercut', says: `A hob or rack cuts into the foot of the ${name} at this shift.`, weight: 'beware', about }]
    : [];

function cautions({ at, thinned }: Work): readonly Caution[] {
  const { one, mate } = at.couple;
  const K = tipShortening(at.couple, at.C);
  const jw = workingBacklash(at.couple, at.C, thinned);
  return [
    ...tipCaution('wheel', one, tipOf(one) - 2 * K, 'outsideDiameter'),
    ...tipCaution('mate', mate, tipOf(mate) - 2 * K, 'mateOutside'),
    ...undercutCaution('wheel', one, 'rootDiameter'),
    ...undercutCaution('mate', mate, 'mateRoot'),
    ...(jw < -1e-9 * one.mn
      ? [
          {
            name: 'Binds',
            says: 'At this centre distance the teeth are too thick: they bind. Cut deeper or set the centres apart.',
            weight: 'danger',
            about: 'backlash',
          } as const,
        ]
      : []),
  ];
}

/**
 * A pair at its centre distance: shifts from the centres, or centres from the shifts, or the backlash where both are typed. `backlash` is what both
 * wheels together are thinner, along their pitch circles in the plane of the wheels.
 * Throws DomainError when no shift reaches the centres. Example: 12 and 24, m 3, 20° at 56.5: shifts come to 0.9600.
 */
export function pairAnswer(asked: PairAsked): Answer {
  const at = settled(asked);
  const work: Work = {
    asked,
    at,
    terms: pairTerms(asked, at),
    thinned: checkedThinning(at.couple.one, asked.backlash),
  };
  return { figures: { ...angles(work), ...shifts(work), ...diameters(work), ...lash(work) }, cautions: cautions(work) };
}
