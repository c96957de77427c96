import { DomainError } from '../figure/domain-error.ts';
import type { Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inv } from '../gears/involute.formulas.ts';
import { radians } from '../values/angle.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength, printNumber } from '../values/print.ts';
import type { InvoluteSpline } from './involute.formulas.ts';
import { type NamedSpline, PRESSURE, unitOfSpline } from './involute-spline.ts';
import { betweenPins, overPins, pinAngleHub, pinAngleShaft, pinContact } from './pins.formulas.ts';
import { countGiven, splineFigure, splineLength } from './spline-figure.ts';
import { pinNearby, type UsualPin, usualPin } from './usual-pin.ts';

type Asked = { readonly named: NamedSpline; readonly thinner?: Length; readonly pinShaft?: Length; readonly pinHub?: Length };
type Side = {
  readonly part: 'shaft' | 'hub';
  readonly unit: LengthUnit;
  readonly spline: InvoluteSpline;
  /** Tooth or space along the pitch circle, and the pin, both whole nanometres. */
  readonly t: Length;
  readonly k: Length;
  /** Where the pin's size is from; null: typed. */
  readonly by: string | null;
};

const OVER = 'SDP/SI, Elements of Metric Gear Technology, over-pin measurement (external)';
const BETWEEN = 'SDP/SI, inch section, p. T60 (internal gears), written for the space';

/** Tooth, pin and over-pin figures of the shaft, space and between-pin figures of the hub, and what is wrong with the pins. */
export function pinFigures(asked: Asked, spline: InvoluteSpline): { figures: Record<string, Figure>; cautions: readonly Caution[] } {
  const unit = unitOfSpline(asked.named);
  const thinner = checkedThinner(asked.thinner, spline, unit);
  const nominal = ofUnit(spline.t, unit);
  const pin = (typed: Length | undefined, usual: () => UsualPin): Pick<Side, 'k' | 'by'> => {
    if (typed !== undefined) return { k: typed, by: null };
    const { k, by } = usual();
    return { k: ofUnit(k, unit), by };
  };
  const shaft: Side = {
    part: 'shaft',
    unit,
    spline,
    t: ofUnit(spline.t - thinner, unit),
    ...pin(asked.pinShaft, () => usualPin('shaft', asked.named, spline)),
  };
  const hub: Side = { part: 'hub', unit, spline, t: nominal, ...pin(asked.pinHub, () => usualPin('hub', asked.named, spline)) };
  const [over, between] = [sideFigures(shaft), sideFigures(hub)];
  return {
    figures: {
      tooth: toothFigure(nominal, asked.thinner, shaft),
      pinShaft: over.pin,
      overPins: over.across,
      pinContactShaft: over.contact,
      pinHub: between.pin,
      betweenPins: between.across,
      pinContactHub: between.contact,
    },
    cautions: [...pinCautions(shaft, over), ...pinCautions(hub, between)],
  };
}

function checkedThinner(thinner: Length | undefined, { t }: InvoluteSpline, unit: LengthUnit): number {
  const b = thinner === undefined ? 0 : inUnit(thinner, unit);
  if (b >= 0 && b < t / 4) return b;
  throw new DomainError({
    given: `Teeth thinner by ${text(b, unit)}.`,
    limit: `That is more than a quarter of a tooth, ${text(t, unit)}.`,
    tryThis: 'A few thousandths let a shaft slide.',
    about: ['thinner'],
  });
}

const text = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(x, unit), { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

function toothFigure(nominal: Length, thinner: Length | undefined, { unit, t }: Side): Figure {
  const given = [givenLength('s', 'space of the hub along the pitch circle', nominal, unit, 'worked out')];
  const less = thinner === undefined || thinner === 0;
  return splineLength(
    unit,
    {
      name: 'Tooth of the shaft along the pitch circle',
      symbol: 't',
      formula: less ? 's' : 's − b',
      source: 'derived: the space less the room to slide',
    },
    inUnit(t, unit),
    less ? given : [...given, givenLength('b', 'thinner by', thinner, unit, 'typed')],
  );
}

/** The pin's angle, with a pin that cannot lie between the flanks refused. */
function pinAngle({ part, unit, spline, t, k }: Side): number {
  const { N, a, m } = spline;
  const pins = { N, a, D: N * m, k: inUnit(k, unit) };
  try {
    const p = part === 'shaft' ? pinAngleShaft({ ...pins, t: inUnit(t, unit) }) : pinAngleHub({ ...pins, s: inUnit(t, unit) });
    pinContact(part, pins, p);
    return p;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new DomainError({
      given: `Pins of ${text(pins.k, unit)} ${part === 'shaft' ? 'over the shaft' : 'in the hub'}.`,
      limit:
        part === 'shaft' ? 'They fall through between the flanks, or touch inside the base circle.' : 'They do not go into the spaces.',
      tryThis: `Take pins of about ${text(pinNearby(part, spline), unit)}.`,
      about: [part === 'shaft' ? 'pinShaft' : 'pinHub'],
    });
  }
}

type SideFigures = {
  readonly pin: Figure;
  readonly across: Figure;
  readonly contact: Figure;
  readonly middle: number;
  readonly touches: number;
};

/** A side with its angle at the middle of a pin, its sizes in its unit, and what the figures are worked from. */
type Pinned = {
  readonly side: Side;
  readonly p: number;
  readonly pins: { readonly N: number; readonly a: number; readonly D: number; readonly k: number };
  readonly givens: readonly Given[];
};

function pinned(side: Side): Pinned {
  const { N, a, m } = side.spline;
  const p = pinAngle(side);
  return { side, p, pins: { N, a, D: N * m, k: inUnit(side.k, side.unit) }, givens: pinGivens(side, p) };
}

function pinFigure({ part, unit, k, by }: Side): Figure {
  const [name, symbol] = part === 'shaft' ? ['Pin over the shaft', 'k'] : ['Pin in the hub', 'j'];
  return splineFigure(unit, { name, symbol, formula: '', source: by ?? 'typed' }, { length: k });
}

function acrossFigure({ side: { part, unit, t }, p, pins, givens }: Pinned): Figure {
  const [shaft, even, size] = [part === 'shaft', pins.N % 2 === 0, inUnit(t, unit)];
  const said = {
    name: shaft ? 'Over two pins' : 'Between two pins',
    symbol: 'M',
    formula: `D × cos(a) ÷ cos(p)${even ? '' : ' × cos(90° ÷ N)'} ${shaft ? '+' : '−'} k`,
    source: shaft ? OVER : BETWEEN,
    note: angleNote(part, p),
  };
  const reading = shaft ? overPins({ ...pins, t: size }) : betweenPins({ ...pins, s: size });
  return splineLength(unit, said, reading, even ? givens : [...givens, countGiven('N', 'teeth', pins.N)]);
}

function contactFigure({ side: { part, unit }, givens }: Pinned, touches: number): Figure {
  const shaft = part === 'shaft';
  const said = {
    name: shaft ? 'Pins touch the shaft’s flanks at' : 'Pins touch the hub’s flanks at',
    symbol: 'C',
    formula: `√((D × cos(a))^2 + (D × cos(a) × tan(p) ${shaft ? '−' : '+'} k)^2)`,
    source: 'derived: along the line that is tangent to the base circle',
  };
  return splineLength(unit, said, touches, givens);
}

function sideFigures(side: Side): SideFigures {
  const own = pinned(side);
  const { pins, p } = own;
  const touches = pinContact(side.part, pins, p);
  return {
    pin: pinFigure(side),
    across: acrossFigure(own),
    contact: contactFigure(own, touches),
    middle: (pins.D * Math.cos(pins.a)) / Math.cos(p),
    touches,
  };
}

const angleNote = (part: 'shaft' | 'hub', p: number): string =>
  `p is the angle whose tan p − p is ${part === 'shaft' ? 't ÷ D + inv(a) + k ÷ (D × cos(a)) − π ÷ N' : 's ÷ D + inv(a) − k ÷ (D × cos(a))'} = ${printNumber(inv(p), 7)}.`;

function pinGivens({ spline: { N, m }, unit, k, by }: Side, p: number): readonly Given[] {
  return [
    givenLength('D', 'pitch diameter', ofUnit(N * m, unit), unit, 'worked out'),
    { symbol: 'a', name: 'pressure angle', value: { angle: PRESSURE }, from: 'table' },
    { symbol: 'p', name: 'angle at the middle of a pin', value: { angle: radians(p) }, from: 'worked out' },
    givenLength('k', 'pin', k, unit, by === null ? 'typed' : 'table'),
  ];
}

/** A pin that is to touch at the very edge of a flank is rounded to a nanometre: so much beside it is still on it. */
const ROUNDED = 1e-6;

/** A pin that stands on the bottom, stands under the outside, or touches off the flank reads nothing that is worth anything. */
function pinCautions({ part, unit, spline, k }: Side, { middle, touches }: SideFigures): readonly Caution[] {
  const [size, { inside, outside }] = [inUnit(k, unit), spline[part]];
  const about = part === 'shaft' ? 'overPins' : 'betweenPins';
  const says = (name: string, sentence: string): Caution => ({ name, says: sentence, weight: 'beware', about });
  const bottoms = part === 'shaft' ? middle - size < inside : middle + size > outside;
  const sinks = part === 'shaft' ? middle + size <= outside : middle - size >= inside;
  const off = touches < inside * (1 - ROUNDED) || touches > outside * (1 + ROUNDED);
  return [
    ...(off ? [says('Off the flank', 'The pins touch outside the part of the flank that is there: take another size.')] : []),
    ...(bottoms
      ? [says('Pin on the bottom', 'A whole pin would stand on the bottom of the space: grind a flat on it, or take a larger one.')]
      : []),
    ...(sinks
      ? [says('Pin too small', 'The pins lie wholly between the teeth: the micrometer meets the teeth first. Take larger ones.')]
      : []),
  ];
}
