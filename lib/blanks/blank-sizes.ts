import { printValue } from '../figure/print-value.ts';
import type { Gear, Pitch } from '../gears/gear.ts';
import { exact } from '../gears/givens.ts';
import { outsideDiameter, rootDiameter, type Tooth, toothOf, wholeDepth } from '../gears/tooth.ts';
import { toRadians } from '../values/angle.ts';
import { type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { toNumber } from '../values/ratio.ts';
import { join, one, oneLength, type Term } from './term.ts';

/** The three sizes of a wheel that decide what it can be cut from. */
export type BlankSizes = { readonly outside: Length; readonly root: Length; readonly depth: Length; readonly unit: LengthUnit };

/** A helical wheel's pitch circle is larger by 1 ÷ cos(helix); its pitch is the normal one (judgement: as the cutter is stamped). */
export function plainTooth(gear: Gear): Tooth {
  const tooth = toothOf(gear);
  return gear.helix ? { ...tooth, N: tooth.N / Math.cos(toRadians(gear.helix.angle)) } : tooth;
}

export function sizesOf(gear: Gear): BlankSizes {
  const tooth = plainTooth(gear);
  const length = (size: number) => ofUnit(size, tooth.unit);
  return {
    outside: length(outsideDiameter(tooth)),
    root: length(rootDiameter(tooth)),
    depth: length(wholeDepth(tooth)),
    unit: tooth.unit,
  };
}

/** Symbols of one wheel: plain for the wanted one, with an o for the old one. */
const NAMES = { new: { of: 'new wheel', tail: '' }, old: { of: 'old wheel', tail: 'o' } } as const;
export type Wheel = keyof typeof NAMES;

function pitchTerm(pitch: Pitch, unit: LengthUnit, wheel: Wheel): (of: Term) => Term {
  const { of, tail } = NAMES[wheel];
  const letter = { DP: 'P', module: 'm', CP: 'p' }[pitch.kind];
  const kind = { DP: 'teeth per inch of pitch diameter', module: 'module', CP: 'circular pitch' }[pitch.kind];
  const size = one(letter + tail, `${kind}, ${of}`, exact(toNumber(pitch.size)), 'typed');
  const natural = pitch.kind === 'module' ? 'mm' : 'in';
  const scale = { text: natural === unit ? '' : unit === 'mm' ? ' × 25.4' : ' ÷ 25.4', given: [] };
  if (pitch.kind === 'DP') return (term) => join`(${term}) ÷ ${size}${scale}`;
  if (pitch.kind === 'module') return (term) => join`(${term}) × ${size}${scale}`;
  return (term) => join`(${term}) × ${size} ÷ π${scale}`;
}

/** The teeth in a formula; of a helical wheel divided by the cosine of its helix. */
export function teethTerm(gear: Gear, wheel: Wheel): Term {
  const { of, tail } = NAMES[wheel];
  const N = one(`N${tail}`, `teeth, ${of}`, { count: gear.teeth }, 'typed');
  if (!gear.helix) return N;
  return join`${N} ÷ cos(${one(`h${tail}`, `helix angle, ${of}`, { angle: gear.helix.angle }, 'typed')})`;
}

/** Formula of the outside diameter, in `unit`. */
export function outsideTerm(gear: Gear, wheel: Wheel, unit: LengthUnit): Term {
  const { of, tail } = NAMES[wheel];
  const k = one(`k${tail}`, `addendum, ${of}`, exact(gear.system.addendum), 'table', gear.system.name);
  return pitchTerm(gear.pitch, unit, wheel)(join`${teethTerm(gear, wheel)} + 2 × ${k}`);
}

const extraOf = (extra: Length, wheel: Wheel, unit: LengthUnit): Term | null =>
  extra === 0 ? null : oneLength(`f${NAMES[wheel].tail}`, `added to the dedendum, ${NAMES[wheel].of}`, extra, unit, 'table');

/** Formula of the root diameter, in `unit`. */
export function rootTerm(gear: Gear, wheel: Wheel, unit: LengthUnit): Term {
  const { of, tail } = NAMES[wheel];
  const j = one(`j${tail}`, `dedendum, ${of}`, exact(gear.system.dedendum), 'table', gear.system.name);
  const plain = pitchTerm(gear.pitch, unit, wheel)(join`${teethTerm(gear, wheel)} − 2 × ${j}`);
  const extra = extraOf(gear.system.extra, wheel, unit);
  return extra ? join`(${plain} − 2 × ${extra})` : plain;
}

/** Formula of the whole depth, in `unit`. */
export function depthTerm(gear: Gear, wheel: Wheel, unit: LengthUnit): Term {
  const { of, tail } = NAMES[wheel];
  const k = one(`k${tail}`, `addendum, ${of}`, exact(gear.system.addendum), 'table', gear.system.name);
  const j = one(`j${tail}`, `dedendum, ${of}`, exact(gear.system.dedendum), 'table', gear.system.name);
  const plain = pitchTerm(gear.pitch, unit, wheel)(join`${k} + ${j}`);
  const extra = extraOf(gear.system.extra, wheel, unit);
  return extra ? join`(${plain} + ${extra})` : plain;
}

/** "3.5858 in": a length in a sentence. */
export const inWords = (length: Length, unit: LengthUnit): string => `${printValue({ length }, unit).text} ${unit}`;
