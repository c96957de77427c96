import { minus, over, plus, type Ratio, ratio, times } from '../values/ratio.ts';

/**
 * How far the plate must turn while the spindle turns once, so that N moves of t turns against the plate come round.
 *   g = R − N × t
 * R: turns of the crank for one turn of the spindle; N: divisions; t: turns of the crank, against the plate, for one division.
 * Plus: the plate turns with the crank, seen from the crank; minus: against it; 0: it stands still and the division is plain.
 * Source: Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, differential indexing (scan pages 60 to 63).
 * True for gears from spindle to plate, the plate stop out, and no helix lead (which needs the same shafts).
 * Throws RangeError when R or N is no whole number. Example: R 40, N 71, t 10/18: 40 − 39 4/9 = 5/9.
 */
export const plateTurns = (R: number, N: number, t: Ratio): Ratio => minus(ratio(R), times(ratio(N), t));

/**
 * The same by the count that the crank is set for.
 *   g = R × (A − N) ÷ A
 * A: the count that the move makes with the plate still, A = R ÷ t; it need not be whole. The rest as plateTurns. Example: A 72, N 71: 5/9.
 */
export const gearRatio = (R: number, N: number, A: Ratio): Ratio => over(times(ratio(R), minus(A, ratio(N))), A);

/** The count that a move of t makes with the plate still: A = R ÷ t. Source as plateTurns. Example: 10 on 18 at 40 to 1: 72. */
export const setFor = (R: number, t: Ratio): Ratio => over(ratio(R), t);

/** How the plate may really go: as wanted, the other way (an idler too few or too many), or not at all (stop left in, gears off). */
export type PlateGoes = 'right' | 'wrong' | 'locked';

/**
 * The count that comes out of a set-up of move t and gears g.
 *   right (R − g) ÷ t;  wrong way (R + g) ÷ t;  locked R ÷ t
 * Symbols as plateTurns. A count that is not whole never closes: the last space comes out odd.
 * Source: derived: one turn of the spindle carries the crank R turns, of which the plate gives g. Example: 40, 5/9 and 5/9: 71, 73, 72.
 */
export function countMade(R: number, t: Ratio, g: Ratio, goes: PlateGoes): Ratio {
  const against = { right: minus(ratio(R), g), wrong: plus(ratio(R), g), locked: ratio(R) }[goes];
  return over(against, t);
}
