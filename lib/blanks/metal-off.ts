import type { Gear } from '../gears/gear.ts';
import { toInches } from '../values/length.ts';
import { sizesOf } from './blank-sizes.ts';

/**
 * Metal turned off a spare down to a new outside, in millionths of a cubic inch (a whole number, so that equal is equal):
 * π ÷ 4 × (Do² − D²) × F. The old gaps are not counted off. Source: derived (a ring). An unknown face counts as 1 in.
 * Example: 4.125 to 3.000 over 0.875 is 5.508 in³.
 */
export function metalOff(wanted: Gear, spare: Gear): number {
  const [Do, D] = [toInches(sizesOf(spare).outside), toInches(sizesOf(wanted).outside)];
  const face = spare.face === null ? 1 : toInches(spare.face);
  return Math.max(0, Math.round((Math.PI / 4) * (Do ** 2 - D ** 2) * face * 1e6));
}
