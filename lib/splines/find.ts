import { type Length, ofUnit, toInches, toMm } from '../values/length.ts';
import { ANSI_PITCHES, DIN_MODULES, ISO_MODULES, OLD_COUNTS, OLD_DEPTHS, ROOTS } from './involute.data.ts';
import { toothChord } from './involute.formulas.ts';
import { type NamedSpline, nameOfSpline, sizesOf, sourceOfSpline, unitOfSpline, usualShift } from './involute-spline.ts';
import { INCH_FITS } from './straight.data.ts';
import { inchStraight, METRIC_CHOICES, nearestSixteenth, type StandardStraight } from './straight-choice.ts';

export const SIDES = ['parallel', 'curved or tapering', 'not looked at'] as const;
type Sides = (typeof SIDES)[number];

/** What a caliper gives: of a hub across the grooves and across the tops, of a shaft across the keys and across the bottoms. */
export type SplineRead = {
  readonly part: 'bore' | 'shaft';
  readonly splines: number;
  readonly outside: Length;
  readonly inside: Length;
  readonly width: Length;
  readonly sides: Sides;
};

/** Read less nominal, each; worst: the largest as a multiple of what it may be. */
type Misfits = { readonly outside: Length; readonly inside: Length; readonly width: Length; readonly worst: number };
export type Candidate = {
  readonly form: 'straight' | 'involute';
  readonly name: string;
  readonly source: string;
  readonly outside: Length;
  readonly inside: Length;
  readonly width: Length;
  readonly misfits: Misfits;
  readonly straight: StandardStraight | null;
  readonly involute: NamedSpline | null;
};

/**
 * How far a reading may lie from its standard and still be it, in inches: wear, limits of make and a caliper's error together (judgement).
 * A shaft's bottoms are commonly cut deeper than the standard for room. An involute space is read at no certain height: its width may be off by
 * this part of itself.
 */
const MAY_BE_OFF = { outside: 0.006, inside: 0.006, width: 0.005 } as const;
const BOTTOMS_OFF = 0.015;
const INVOLUTE_WIDTH_OFF = 0.15;

type Nominal = Omit<Candidate, 'misfits'>;

function judged(read: SplineRead, one: Nominal): Candidate {
  const off = { outside: read.outside - one.outside, inside: read.inside - one.inside, width: read.width - one.width } as Record<
    'outside' | 'inside' | 'width',
    Length
  >;
  const inside = read.part === 'shaft' && off.inside < 0 ? BOTTOMS_OFF : MAY_BE_OFF.inside;
  const width = one.form === 'involute' ? Math.max(MAY_BE_OFF.width, INVOLUTE_WIDTH_OFF * toInches(one.width)) : MAY_BE_OFF.width;
  const parts = [toInches(off.outside) / MAY_BE_OFF.outside, toInches(off.inside) / inside, toInches(off.width) / width];
  return { ...one, misfits: { ...off, worst: Math.max(...parts.map(Math.abs)) } };
}

const ofStraight = (straight: StandardStraight): Nominal => ({
  form: 'straight',
  name: straight.name,
  source: straight.source,
  outside: straight.outside,
  inside: straight.inside,
  width: straight.width,
  straight,
  involute: null,
});

function ofInvolute(read: SplineRead, named: NamedSpline): Nominal {
  const [spline, unit] = [sizesOf(named), unitOfSpline(named)];
  const part = read.part === 'bore' ? spline.hub : spline.shaft;
  return {
    form: 'involute',
    name: nameOfSpline(named),
    source: sourceOfSpline(named),
    outside: ofUnit(part.outside, unit),
    inside: ofUnit(part.inside, unit),
    width: ofUnit(toothChord(spline, (part.outside + part.inside) / 2), unit),
    straight: null,
    involute: named,
  };
}

function straightOf({ splines, outside }: SplineRead): StandardStraight[] {
  const inch = INCH_FITS.flatMap((fit) => inchStraight(splines, fit, nearestSixteenth(outside)) ?? []);
  return [...inch, ...METRIC_CHOICES.filter((one) => one.splines === splines)];
}

const LEAST_TEETH = 4;

function involutesOf({ splines: teeth, outside }: SplineRead): NamedSpline[] {
  if (teeth < LEAST_TEETH) return [];
  const reference = Math.max(1, Math.round(toMm(outside)));
  const ansi = ROOTS.flatMap((root) => ANSI_PITCHES.map((P): NamedSpline => ({ standard: 'ANSI', root, teeth, P })));
  const iso = ROOTS.flatMap((root) => ISO_MODULES.map((m): NamedSpline => ({ standard: 'ISO', root, teeth, m })));
  const din = DIN_MODULES.flatMap((m): NamedSpline[] =>
    [reference, reference + 1]
      .filter((B) => usualShift(B, m, teeth))
      .map((B): NamedSpline => ({ standard: 'DIN', teeth, m, reference: B })),
  );
  const nominal = toInches(nearestSixteenth(outside));
  const old = OLD_COUNTS.includes(teeth)
    ? OLD_DEPTHS.map(({ name }): NamedSpline => ({ standard: 'old', depth: name, teeth, outside: nominal }))
    : [];
  return [...ansi, ...iso, ...din, ...old];
}

/**
 * Every standard spline of this count, nearest first. Sides that were seen parallel leave out the involute ones, sides that were seen not to
 * be leave out the straight. Source: the standards that each names; the order is by the largest misfit against what it may be (judgement).
 */
export function candidatesFor(read: SplineRead): readonly Candidate[] {
  const straight = read.sides === 'curved or tapering' ? [] : straightOf(read).map(ofStraight);
  const involute = read.sides === 'parallel' ? [] : involutesOf(read).map((named) => ofInvolute(read, named));
  return [...straight, ...involute].map((one) => judged(read, one)).sort((a, b) => a.misfits.worst - b.misfits.worst);
}

/** Whether a candidate is near enough to be it. */
export const fitsRead = ({ misfits }: Candidate): boolean => misfits.worst <= 1;
