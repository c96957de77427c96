import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { inUnit, type Length } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import {
  baseOf,
  type Flanks,
  leastShift,
  leastTeethOf,
  normalThickness,
  pitchOf,
  pointedDiameter,
  pointedShift,
  rootOf,
  shiftForThickness,
  thicknessAt,
  tipOf,
  transverseThickness,
} from './flanks.formulas.ts';
import { spanCautions, thicknessFigures } from './helical.sums.ts';
import { checkedFlanks, type ParallelGear } from './parallel.ts';
import { type Terms, termsOf, toldLength, toldNumber, workedAngle, workedLength } from './parallel-terms.ts';
import { hobbedFormDiameter, rackFor } from './profile-rack.formulas.ts';
import { checkedThinning } from './thinning.ts';
import { moduleOf } from './tooth.ts';

const ISO = 'ISO 21771:2007, undercut and root form diameter (value from memory)';
const PAIR = 'Machine Elements in Mechanical Design, 4th ed., p. 320; with helix and shift: ISO 21771:2007 (value from memory)';
const SDP = 'SDP/SI, Elements of Metric Gear Technology, profile-shifted gears (value from memory)';
const DERIVED = 'derived: both flanks are involutes of the one base circle';
const MOST = 2;

type Sized = { readonly gear: ParallelGear; readonly flanks: Flanks; readonly terms: Terms };

function sized(gear: ParallelGear): Sized {
  const flanks = checkedFlanks({ ...gear, ring: false });
  return { gear, flanks, terms: termsOf(gear, flanks) };
}

/** What a length of shift is in 1/P or modules of the gear's own plane. */
const inPitches = ({ gear }: Sized, v: number): number => v / moduleOf(gear.pitch);

function limits(of: Sized): Record<string, Figure> {
  const { flanks, terms } = of;
  const { unit } = flanks;
  const helix = flanks.psi > 0;
  const cos = helix && of.gear.plane === 'normal' ? ' × cos(H)' : '';
  const least = {
    name: 'Least teeth that a hob leaves whole',
    symbol: 'Nm',
    formula: `2 × (${terms.A}${terms.minusX})${cos} ÷ sin(at)^2`,
    source: PAIR,
  };
  const under = helix && of.gear.plane === 'normal' ? '(2 × cos(H))' : '2';
  const shift = {
    name: 'Least shift that a hob leaves whole',
    symbol: 'Xm',
    formula: `${terms.A} − N × sin(at)^2 ÷ ${under}`,
    source: PAIR,
  };
  const pointed = pointedShift(flanks, MOST * flanks.mn);
  const point = { name: 'Shift at which the tips become points', symbol: 'Xp', formula: '', source: DERIVED };
  return {
    leastTeeth: toldNumber(unit, least, leastTeethOf(flanks, flanks.A), terms.given, 3),
    leastShift: toldNumber(unit, shift, inPitches(of, leastShift(flanks, flanks.A)), terms.given, 4),
    ...(pointed === null ? {} : { pointedShift: toldNumber(unit, point, inPitches(of, pointed), [], 4) }),
  };
}

/** Where a hob or rack begins the involute: the end of its straight side or, undercut, where the trochoid of its corner crosses. Nothing where no flank is left. */
function formFigure(flanks: Flanks, numbers: readonly Given[]): { formDiameter?: Figure } {
  const { corner, undercuts } = rackFor(flanks);
  const form = hobbedFormDiameter(flanks);
  if (form === null) return {};
  const name = { name: 'Involute begins at diameter', symbol: 'Df' };
  const said = undercuts
    ? {
        ...name,
        formula: '',
        source: 'derived: the trochoid of the rack’s rounded corner crosses the involute there, found by halving',
        note: `Of a hob or rack with corners of ${printNumber(corner, flanks.unit === 'in' ? 4 : 3)} ${flanks.unit}. A form cutter leaves more.`,
      }
    : { ...name, formula: '√(Db^2 + max(0, D × sin(at) − 2 × h ÷ sin(at))^2)', source: ISO };
  return { formDiameter: toldLength(flanks.unit, said, form, numbers) };
}

function flankFigures({ flanks, terms }: Sized): Record<string, Figure> {
  const { unit, N } = flanks;
  const [D, Db, tip] = [pitchOf(flanks), baseOf(flanks), tipOf(flanks)];
  const st = transverseThickness(flanks);
  const numbers: readonly Given[] = [
    ...terms.given,
    workedLength('D', 'pitch diameter', D, unit),
    workedLength('Db', 'base diameter', Db, unit),
    workedLength('Do', 'outside diameter', tip, unit),
    workedLength('s', 'thickness in the plane of the wheel, at the pitch circle', st, unit),
    workedLength('h', 'straight side of the rack, below the pitch circle', rackFor(flanks).straight, unit),
    workedAngle('ap', 'angle where the flanks meet', Math.acos(Math.min(1, Db / pointedDiameter(flanks)))),
  ];
  const point = { name: 'Flanks would meet at diameter', symbol: 'Dp', formula: 'Db ÷ cos(ap)', source: DERIVED };
  const land = {
    name: 'Tip thickness along the outside',
    symbol: 'sa',
    formula: 'Do × (s ÷ D + inv(at) − inv(acos(Db ÷ Do)))',
    source: DERIVED,
  };
  return {
    ...formFigure(flanks, numbers),
    pointedDiameter: toldLength(unit, point, pointedDiameter(flanks), numbers),
    ...(tip >= Db && N > 0 ? { tipThickness: toldLength(unit, land, thicknessAt(flanks, st, tip), numbers) } : {}),
  };
}

function cautions({ flanks }: Sized): readonly Caution[] {
  const least = Math.ceil(leastTeethOf(flanks, flanks.A) - 1e-9);
  const says: Caution[] = [];
  if (flanks.v < leastShift(flanks, flanks.A) - 1e-9 * flanks.mn)
    says.push({
      name: 'Undercut',
      says: `A hob or rack cuts into the foot of the tooth: at this shift it leaves ${least} teeth and more whole.`,
      weight: 'beware',
      about: hobbedFormDiameter(flanks) === null ? 'pointedDiameter' : 'formDiameter',
    });
  if (hobbedFormDiameter(flanks) === null)
    says.push({
      name: 'No flank',
      says: 'A hob or rack of this system would leave no involute on these teeth.',
      weight: 'danger',
      about: 'pointedDiameter',
    });
  if (tipOf(flanks) > pointedDiameter(flanks))
    says.push({
      name: 'Pointed tip',
      says: 'The flanks meet before they reach the outside diameter: turn the blank smaller.',
      weight: 'beware',
      about: 'pointedDiameter',
    });
  return says;
}

/**
 * How few teeth, or how little shift, a hob or rack of this system leaves whole, and where the involute begins and ends.
 * Throws DomainError for a gear that makes none. Example: 12 teeth, 8 DP, 14½°: least teeth 31.903, least shift 0.6239.
 */
export function undercutAnswer(gear: ParallelGear): Answer {
  const of = sized(gear);
  return { figures: { ...limits(of), ...flankFigures(of) }, cautions: cautions(of) };
}

export type ShiftAsked = { readonly gear: ParallelGear; readonly thickness?: Length; readonly backlash?: Length };

/** The gear at the shift that gives it the thickness that was measured or wanted, square to the teeth. */
function atThickness(gear: ParallelGear, thickness: Length): ParallelGear {
  const flanks = checkedFlanks({ ...gear, ring: false, shift: 0 });
  const v = shiftForThickness(flanks, inUnit(thickness, flanks.unit));
  const shift = v / moduleOf(gear.pitch);
  if (Math.abs(shift) <= MOST) return { ...gear, shift };
  throw new DomainError({
    given: 'A tooth of this thickness.',
    limit: 'It would ask for a shift of more than 2 of 1/P or module.',
    tryThis: 'Measure along the standard pitch circle, square to the teeth, and look whether the pitch is right.',
    about: ['thickness'],
  });
}

function shiftFigure({ gear, flanks, terms }: Sized, sn: number): Figure {
  const numbers: readonly Given[] = [
    ...terms.given,
    { ...workedLength('sn', 'thickness wanted', sn, flanks.unit), from: 'measured' },
    workedLength('mn', 'module square to the teeth', flanks.mn, flanks.unit),
    workedLength('mo', 'module', moduleOf(gear.pitch), flanks.unit),
  ];
  const said = { name: 'Shift for that thickness', symbol: 'X', formula: '(sn − π × mn ÷ 2) ÷ (2 × mo × tan(an))', source: SDP };
  return toldNumber(flanks.unit, said, gear.shift, numbers, 4);
}

/**
 * What a profile shift does to every size, and what vernier and span then read; or the shift that a measured thickness asks for.
 * Throws DomainError for a gear that makes none. Example: 24 teeth, m 3, 20°, 0.4: outside 80.4, span over 4 32.827.
 */
export function shiftAnswer({ gear: asked, thickness, backlash }: ShiftAsked): Answer {
  const gear = thickness === undefined ? asked : atThickness(asked, thickness);
  const of = sized(gear);
  const { flanks, terms } = of;
  const length = (name: string, symbol: string, formula: string, size: number): Figure =>
    toldLength(flanks.unit, { name, symbol, formula, source: SDP }, size, terms.given);
  const D = terms.across('N');
  const bn = checkedThinning(flanks, backlash) * Math.cos(flanks.psi);
  const found = thickness === undefined ? {} : { shift: shiftFigure(of, inUnit(thickness, flanks.unit)) };
  return {
    figures: {
      ...found,
      outsideDiameter: length('Outside diameter', 'Do', `${D} + 2 × ${terms.of(`(${terms.A}${terms.plusX})`)}`, tipOf(flanks)),
      rootDiameter: length(
        'Root diameter',
        'Dr',
        `${D} − 2 × ${terms.of(`(${terms.B}${terms.minusX})`)}${terms.plusE.replace('+', '−')}`,
        rootOf(flanks),
      ),
      pitchDiameter: length('Pitch diameter', 'D', D, pitchOf(flanks)),
      ...thicknessFigures(of, bn),
      ...flankFigures(of),
    },
    cautions: [...cautions(of), ...spanCautions(flanks, normalThickness(flanks) - bn)],
  };
}
