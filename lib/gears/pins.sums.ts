import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { inches, inUnit, type Length, ofUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { hobbedFlank, usableFlank } from './base-tangent.formulas.ts';
import { baseOf, type Flanks, pitchOf, psibOf, tipOf, transverseThickness } from './flanks.formulas.ts';
import { inverseInv } from './involute.formulas.ts';
import { checkedFlanks, type ParallelGear } from './parallel.ts';
import { type Terms, termsOf, told, toldAngle, toldLength, workedAngle, workedLength } from './parallel-terms.ts';
import { bestPin, idealPin, type Pin, type PinLies, pinHides, pinLies } from './pin-check.ts';
import { involuteAtPin, overPins, pinCircle, pinContactRadius, thicknessFromPins } from './pins.formulas.ts';
import { flatCautions, flatFigures } from './pins-flat.sums.ts';
import { checkedThinning } from './thinning.ts';
import { UNDERCUT_THERE } from './wheel.cautions.ts';

const SDP = 'SDP/SI, Technical section, p. T60, and Elements of Metric Gear Technology, T-85';
/** What a span may read small is what a reading over pins may, in thickness (judgement). */
const THINNER = inches(0.001);

export type PinsAsked = { readonly gear: ParallelGear; readonly pin?: Length; readonly backlash?: Length; readonly reading?: Length };
type Work = { readonly flanks: Flanks; readonly terms: Terms; readonly st: number; readonly pin: Pin; readonly at: readonly Given[] };

const says = (size: number, { unit }: Flanks): string => `${printNumber(size, unit === 'in' ? 4 : 3)} ${unit}`;

const WHY: Readonly<Record<Exclude<PinLies, 'on the flank' | 'on a flank that a hob cuts away'>, string>> = {
  'falls through': 'It falls through between the flanks to where there is no involute.',
  'bottoms in the root': 'It bottoms in the root before it touches the flanks.',
  'touches below the flank': 'It touches below the flank, where the fillet is.',
  'sits on the tips': 'It sits on the tips and touches no flank.',
  'hidden below the tips': 'It does not stand out past the tips: nothing can be laid on it.',
};

function checkedPin(flanks: Flanks, st: number, asked?: Length): Pin {
  const best = bestPin(flanks, st);
  if (asked === undefined) {
    if (best) return best;
    throw new DomainError({
      given: `A gear of ${flanks.N} teeth of this system and shift.`,
      limit: 'No pin of the usual series lies on its flanks.',
      tryThis: 'Type the diameter of a pin, or measure the chordal thickness.',
      about: ['pin'],
    });
  }
  const size = inUnit(asked, flanks.unit);
  const lies = size > 0 ? pinLies(flanks, st, size) : 'falls through';
  if (lies === 'on the flank' || lies === 'on a flank that a hob cuts away') return { size, name: 'typed' };
  const ideal = best?.size ?? idealPin(flanks, st);
  throw new DomainError({
    given: `A pin of ${says(size, flanks)}.`,
    limit: WHY[lies],
    tryThis: ideal === null ? 'Measure the chordal thickness instead.' : `Take one near ${says(ideal, flanks)}.`,
    about: ['pin'],
  });
}

const across = ({ N }: Flanks): string => (N % 2 === 0 ? '' : ' × cos(90° ÷ N)');

function numbersAt({ flanks, terms, st, pin }: Omit<Work, 'at'>): readonly Given[] {
  const { unit } = flanks;
  return [
    ...terms.given,
    workedLength('s', 'thickness in the plane of the wheel, at the pitch circle', st, unit),
    workedLength('D', 'pitch diameter', pitchOf(flanks), unit),
    workedLength('Db', 'base diameter', baseOf(flanks), unit),
    { ...workedLength('w', 'pin', pin.size, unit), from: pin.name === 'typed' ? 'typed' : 'table' },
    workedAngle('Hb', 'helix angle on the base circle', psibOf(flanks)),
    workedAngle('f', 'pressure angle at the middle of the pin', inverseInv(involuteAtPin(flanks, st, pin.size))),
  ];
}

/** Written the same for wheel and ring but for the signs; straight teeth have no base helix to write. */
const pinAngle = ({ psi }: Flanks): string => (psi === 0 ? 'w ÷ Db' : 'w ÷ (Db × cos(Hb))');

function involuteFigure({ flanks, st, pin, at }: Work): Figure {
  const formula = flanks.ring ? `inv(at) + π ÷ N − s ÷ D − ${pinAngle(flanks)}` : `s ÷ D + inv(at) + ${pinAngle(flanks)} − π ÷ N`;
  const said = { name: 'Involute at the middle of the pin', symbol: 'i', formula, source: SDP };
  return told(flanks.unit, said, { number: involuteAtPin(flanks, st, pin.size), unit: '', places: 7 }, at);
}

function pinFigures(work: Work) {
  const { flanks, st, pin, at } = work;
  const { unit, ring } = flanks;
  const ideal = idealPin(flanks, st);
  const size = {
    name: ring ? 'Pins or balls between' : 'Pins or balls over',
    symbol: 'w',
    formula: '',
    source: pin.name === 'typed' ? 'as typed' : `wire series: ${pin.name}`,
  };
  const middle = {
    name: 'Pressure angle at the middle of the pin',
    symbol: 'f',
    formula: '',
    source: 'the angle whose involute is i; common practice, no source',
  };
  const touch = {
    name: 'Pins touch at diameter',
    symbol: 'Dc',
    formula: `√(Db^2 + (Db × tan(f) ${ring ? '+' : '−'} w${flanks.psi === 0 ? '' : ' × cos(Hb)'})^2)`,
    source: 'ISO 21771:2007, contact diameter of balls (value from memory)',
  };
  const bestSaid = {
    name: 'Pin that would touch at the pitch circle',
    symbol: 'wi',
    formula: '',
    source: 'SDP/SI, Elements of Metric Gear Technology, T-84 (value from memory)',
  };
  return {
    pin: toldLength(unit, size, pin.size, at),
    involute: involuteFigure(work),
    pinAngle: toldAngle(unit, middle, inverseInv(involuteAtPin(flanks, st, pin.size)), at),
    contactDiameter: toldLength(unit, touch, 2 * pinContactRadius(flanks, st, pin.size), at),
    ...(ideal === null ? {} : { idealPin: toldLength(unit, bestSaid, ideal, at) }),
  };
}

function readingFigure({ flanks, st, pin, at }: Work): Figure {
  const M = overPins(flanks, st, pin.size);
  const less = st - inUnit(THINNER, flanks.unit) / Math.cos(flanks.an) / Math.cos(flanks.psi);
  const other = less > 0 && involuteAtPin(flanks, less, pin.size) > 0 ? overPins(flanks, less, pin.size) : M;
  const said = {
    name: flanks.ring ? 'Between pins' : 'Over pins',
    symbol: 'M',
    formula: `Db ÷ cos(f)${across(flanks)} ${flanks.ring ? '−' : '+'} w`,
    source: SDP,
  };
  const [low, high] = [Math.min(M, other), Math.max(M, other)].map((x) => ({ length: ofUnit(x, flanks.unit) }));
  return { ...toldLength(flanks.unit, said, M, at), ...(low && high && other !== M ? { limits: [low, high] as const } : {}) };
}

/** What a reading says of the thickness, and how much thinner than without backlash that is. */
function readBack({ flanks, pin, at }: Work, reading: Length): { thicknessRead: Figure; thinner: Figure } {
  const { unit, ring } = flanks;
  const M = inUnit(reading, unit);
  const st = thicknessRead(flanks, M, pin);
  const f = `inv(acos(Db${across(flanks)} ÷ (M ${ring ? '+' : '−'} w)))`;
  const formula = ring ? `D × (π ÷ N + inv(at) − ${f} − ${pinAngle(flanks)})` : `D × (π ÷ N + ${f} − inv(at) − ${pinAngle(flanks)})`;
  const given: readonly Given[] = [
    ...at.filter(({ symbol }) => symbol !== 's'),
    { ...workedLength('M', 'as read', M, unit), from: 'measured' },
    workedLength('s', 'thickness without backlash', transverseThickness(flanks), unit),
    workedLength('sr', 'thickness as read', st, unit),
  ];
  return {
    thicknessRead: toldLength(unit, { name: 'Thickness by the reading', symbol: 'sr', formula, source: SDP }, st, given),
    thinner: toldLength(
      unit,
      { name: 'Thinner than without backlash', symbol: 'b', formula: 's − sr', source: 'derived: both along the pitch circle' },
      transverseThickness(flanks) - st,
      given,
    ),
  };
}

/** What the gear reads without backlash, in words; nothing where the pin would fall between its full teeth. */
function usual(flanks: Flanks, { size }: Pin): string {
  const st = transverseThickness(flanks);
  return involuteAtPin(flanks, st, size) >= 0
    ? `Without backlash this gear reads ${says(overPins(flanks, st, size), flanks)};`
    : 'These pins fall between its full teeth;';
}

function thicknessRead(flanks: Flanks, M: number, pin: Pin): number {
  const refuse = (): DomainError =>
    new DomainError({
      given: `A reading of ${says(M, flanks)} with pins of ${says(pin.size, flanks)}.`,
      limit: `${usual(flanks, pin)} no tooth of it could read so.`,
      tryThis: 'Measure again, or look whether count, pitch and pins are right.',
      about: ['reading'],
    });
  const cos = baseOf(flanks) / (M - (flanks.ring ? -1 : 1) * pin.size);
  if (!(cos > 0 && cos * (flanks.N % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * flanks.N))) <= 1)) throw refuse();
  const st = thicknessFromPins(flanks, M, pin.size);
  if (!(st > 0 && st < (Math.PI * pitchOf(flanks)) / flanks.N)) throw refuse();
  return st;
}

function cautions({ flanks, st, pin }: Work): readonly Caution[] {
  const R = pinContactRadius(flanks, st, pin.size);
  const hobbed = pinLies(flanks, st, pin.size) === 'on the flank';
  const { from, to } = (hobbed ? hobbedFlank(flanks) : null) ?? usableFlank(flanks);
  const near = Math.min(R - from, to - R) < 0.05 * flanks.A;
  return [
    ...(hobbed ? [] : [{ name: 'Undercut', says: UNDERCUT_THERE, weight: 'beware', about: 'contactDiameter' } as const]),
    ...(near
      ? [
          {
            name: 'Near the end of the flank',
            says: 'The pins touch close to where the flank ends; a worn or rounded tooth misleads there.',
            weight: 'beware',
            about: 'contactDiameter',
          } as const,
        ]
      : []),
    ...flatCautions({ flanks, st, w: pin.size }),
    ...(flanks.ring && pinHides(flanks, pinCircle(flanks, st, pin.size), pin.size)
      ? [
          {
            name: 'Pins below the tips',
            says: 'The pins lie between the teeth, below the tips: measure with rounded ends narrow enough to reach them.',
            weight: 'note',
            about: 'overPins',
          } as const,
        ]
      : []),
    ...(flanks.ring && tipOf(flanks) < baseOf(flanks)
      ? [
          {
            name: 'Tips inside the base circle',
            says: 'The tips of this ring stand where there is no involute. Measure nearer the root.',
            weight: 'note',
            about: 'pin',
          } as const,
        ]
      : []),
  ];
}

/**
 * What a micrometer reads over two pins or balls (of a ring: between them), with limits for a chosen backlash; and back from a reading to the thickness.
 * Throws DomainError when the pin does not lie on the flank. Example: 22 teeth, 8 DP, 14½°, 1.728/P wires.
 */
export function pinsAnswer({ gear, pin: asked, backlash, reading }: PinsAsked): Answer {
  const flanks = checkedFlanks(gear);
  const st = transverseThickness(flanks) - checkedThinning(flanks, backlash);
  const pin = checkedPin(flanks, st, asked);
  const part = { flanks, terms: termsOf(gear, flanks), st, pin };
  const work: Work = { ...part, at: numbersAt(part) };
  return {
    figures: {
      overPins: readingFigure(work),
      ...pinFigures(work),
      ...(reading === undefined ? {} : readBack(work, reading)),
      ...flatFigures({ ...work, w: pin.size, ...(reading === undefined ? {} : { reading: inUnit(reading, flanks.unit) }) }),
    },
    cautions: cautions(work),
  };
}
