import { nearestSpanCount } from '../gears/spur.formulas.ts';

const RADIANS = Math.PI / 180;

/**
 * Over how many teeth to span a wheel of which only the count is known: what suits 14½°; a larger angle is then spanned low on the flank, but on it.
 * Common practice, no source. Example: 22 teeth: over 2, then over 3.
 */
export const firstSpanCount = (teeth: number): number => Math.max(1, nearestSpanCount(teeth, 14.5 * RADIANS));
