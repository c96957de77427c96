import { minus, over, type Ratio, ratio, times } from '../values/ratio.ts';

/**
 * Turns of the table screw for one tooth of a rack, or one line of a scale.
 *   t = p ÷ L
 * p: pitch of the rack or distance of the lines; L: lead of the table screw; same unit. Source: common practice, no source.
 * Example: 8 DP, p 0.392699, L 0.2: 1.963495 turns.
 */
export const screwTurns = (p: number, L: number): number => p / L;

/** A table position. divisions: of the dial, from zero; error: set less true, in the unit of the pitch. */
export type RackPlace = { readonly divisions: number; readonly error: number };

/**
 * The dial for tooth n counted from zero, to the line or part of a line that can be set.
 *   i = round((n − 1) × p ÷ d);  e = i × d − (n − 1) × p
 * d: what one line (or part that can be judged) moves the table. The error never passes d ÷ 2, whatever the length. Source: derived.
 */
export function placeFromZero(n: number, p: number, d: number): RackPlace {
  const i = Math.round(((n - 1) * p) / d);
  return { divisions: i, error: i * d - (n - 1) * p };
}

/**
 * The same with one rounded move repeated, its error adding up.
 *   e = (n − 1) × (round(p ÷ d) × d − p)
 * Source: derived. Example: p 0.392699, d 0.001: 393 each, 0.0003 too far; by tooth 21 it is 0.0060.
 */
export function placeByMoves(n: number, p: number, d: number): RackPlace {
  const each = Math.round(p / d);
  return { divisions: (n - 1) * each, error: (n - 1) * (each * d - p) };
}

/**
 * Turns of the index crank for one line of a scale, the head geared to the table screw.
 *   t = R × s ÷ (x × L)
 * R: turns of the crank for one of the spindle; s: distance of the lines; L: lead of the screw, in one unit, exact ratios; x: turns of the
 * screw for one of the spindle. Source: Brown & Sharpe, Practical Treatise, graduating (scan page 190): 1 to 1 on a 1/4 in screw at
 * 40 to 1 a turn of the crank moves the table 0.00625 in. Example: s 1/64 in, L 1/4 in, R 40, x 1: 2 1/2 turns.
 */
export const graduatingTurns = (R: number, s: Ratio, L: Ratio, x: Ratio): Ratio => over(times(ratio(R), s), times(x, L));

/** What one turn of the crank moves the table: x × L ÷ R. Source as graduatingTurns. */
export const movePerCrankTurn = (R: number, L: Ratio, x: Ratio): Ratio => over(times(x, L), ratio(R));

/** Line n stands so far off when the crank is set by the nearest spaces each time from zero; in turns of the crank. Source: derived. */
export function lineError(n: number, turns: Ratio, circle: number): Ratio {
  const true_ = times(ratio(n), turns);
  const holes = Math.ceil((2 * circle * true_[0] - true_[1]) / (2 * true_[1]));
  return minus(ratio(holes, circle), true_);
}
