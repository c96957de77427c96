import type { Cutter } from '../tooling/tooling.ts';
import { HALF_NUMBERS, type NumberedCutter, WHOLE_NUMBERS } from './ranges.data.ts';

/** Which opinion to follow on the count that a numbered cutter is exact for, where the cutter itself does not say. */
export const CONVENTIONS = ['low end', 'treatise'] as const;
export type Convention = (typeof CONVENTIONS)[number];

/** The count that a form is taken to be exact for, and on what ground. */
export type ExactCount = { readonly count: number; readonly from: 'typed' | Convention };

type Range = { readonly from: number; readonly to: number | null };

/**
 * Whether a tooth count lies in a range; to null is up to a rack. A helical gear's virtual count goes by the nearest whole count
 * (common practice, no source). Example: 34 is in 26 to 34, 35 is not.
 */
export function inRange({ from, to }: Range, teeth: number): boolean {
  const whole = Math.round(teeth);
  return whole >= from && (to === null || whole <= to);
}

/** The whole number (No. 1 to No. 8) for a count; null below 12 teeth, where the sets end. Example: 25 gives No. 5, 26 No. 4. */
export const wholeNumberFor = (teeth: number): NumberedCutter | null => WHOLE_NUMBERS.find((one) => inRange(one, teeth)) ?? null;

/** The half number for a count, where there is one. Example: 34 gives No. 3½, 35 none. */
export const halfNumberFor = (teeth: number): NumberedCutter | null => HALF_NUMBERS.find((one) => inRange(one, teeth)) ?? null;

const sameRange = (one: NumberedCutter, { from, to }: Range): boolean => one.from === from && one.to === to;

/**
 * The count that a range's form is exact for under a convention. The treatise speaks only of the eight whole numbers; a range that
 * is none of those falls back to its low end. Ranges decide, never numbers: some makers number their sets the other way round.
 */
export function exactCountOf(range: Range, convention: Convention): ExactCount {
  const treatise = WHOLE_NUMBERS.find((one) => sameRange(one, range))?.treatiseCount;
  if (convention === 'treatise' && treatise) return { count: treatise, from: 'treatise' };
  return { count: range.from, from: 'low end' };
}

/** The same for an owned cutter, where a count typed in for it stands over both conventions; null when no range is typed in. */
export function exactCountOfCutter(cutter: Cutter, convention: Convention): ExactCount | null {
  if (cutter.exactFor !== null) return { count: cutter.exactFor, from: 'typed' };
  if (cutter.teethFrom === null) return null;
  return exactCountOf({ from: cutter.teethFrom, to: cutter.teethTo }, convention);
}
