import type { From, Given, Value } from '../figure/figure.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { ratio } from '../values/ratio.ts';
import type { Pitch, ToothSystem } from './gear.ts';
import type { Wheel } from './wheel.ts';

const MOST_PLACES = 6;

/** The fewest decimals that write x fully, between the two; null when the most do not. */
function placesFor(x: number, least: number, most: number): number | null {
  for (let places = least; places <= most; places++)
    if (Math.abs(Number(printNumber(Math.abs(x), places)) - Math.abs(x)) < 1e-12) return places;
  return null;
}

/** A plain number so that it prints in full: 1.157, or the fraction 7/6 where no decimal ends. */
export function exact(x: number, unit = ''): Value {
  const places = placesFor(x, 0, MOST_PLACES);
  if (places !== null) return { number: x, unit, places };
  for (let den = 3; den <= 400; den++)
    if (Math.abs(x * den - Math.round(x * den)) < 1e-11) return { ratio: ratio(Math.round(x * den), den) };
  return { number: x, unit, places: 9 };
}

/** A length so that what is printed is what was put in: a Length where the usual decimals hold it, else with the decimals it needs. */
function fully(length: Length, unit: LengthUnit): Value {
  const [size, usual] = [inUnit(length, unit), unit === 'in' ? 4 : 3];
  if (placesFor(size, usual, usual) !== null) return { length };
  return { number: size, unit, places: placesFor(size, usual, MOST_PLACES) ?? MOST_PLACES };
}

export const lengthGiven = (symbol: string, name: string, length: Length, unit: LengthUnit, from: From): Given => ({
  symbol,
  name,
  value: fully(length, unit),
  from,
});

export const teethGiven = ({ teeth }: Wheel): Given => ({ symbol: 'N', name: 'teeth', value: { count: teeth }, from: 'typed' });
export const angleGiven = ({ system }: Wheel): Given => ({
  symbol: 'a',
  name: 'pressure angle',
  value: { angle: system.angle },
  from: 'table',
  where: system.name,
});

/** The pitch as a given, and any expression measured in it: x ÷ P, x × m, x × p ÷ π. */
export type PitchTerm = { readonly given: Given; readonly of: (x: string) => string };

const pitchValue = ({ size: [num, den] }: Pitch): Value => (den === 1 ? { count: num } : exact(num / den));

export function pitchTerm(pitch: Pitch): PitchTerm {
  const given = (symbol: string, name: string): Given => ({ symbol, name, value: pitchValue(pitch), from: 'typed' });
  if (pitch.kind === 'DP') return { given: given('P', 'diametral pitch'), of: (x) => `${x} ÷ P` };
  if (pitch.kind === 'module') return { given: given('m', 'module'), of: (x) => `${x} × m` };
  return { given: given('p', 'circular pitch'), of: (x) => `${x} × p ÷ π` };
}

/** A part of the tooth as it stands in a formula: the number put in, or nothing to put in when it is 1. */
export type PartTerm = { readonly given: readonly Given[]; readonly text: string };

export function addendumTerm({ addendum, name }: ToothSystem): PartTerm {
  if (addendum === 1) return { given: [], text: '1' };
  return { text: 'A', given: [{ symbol: 'A', name: 'addendum, of 1/P or module', value: exact(addendum), from: 'table', where: name }] };
}

export const dedendumTerm = ({ dedendum, name }: ToothSystem): PartTerm => ({
  text: 'B',
  given: [{ symbol: 'B', name: 'dedendum, of 1/P or module', value: exact(dedendum), from: 'table', where: name }],
});

/** What the dedendum has more whatever the pitch: nothing in most systems. */
export function extraTerm({ extra, name }: ToothSystem, unit: LengthUnit): PartTerm | null {
  if (extra === 0) return null;
  return { text: 'e', given: [{ symbol: 'e', name: 'more depth at any pitch', value: fully(extra, unit), from: 'table', where: name }] };
}

const HALF_LASH: Readonly<Record<Pitch['kind'], string>> = {
  DP: '180° × b × P ÷ (π × N)',
  module: '180° × b ÷ (π × N × m)',
  CP: '180° × b ÷ (N × p)',
};

/** Half of the angle that a backlash b along the pitch circle takes off a tooth, in degrees. */
export const halfLashAngle = ({ kind }: Pitch): string => HALF_LASH[kind];
