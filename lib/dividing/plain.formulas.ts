import type { Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import { plus, type Ratio, ratio } from '../values/ratio.ts';

/** A circle on which the pin can be set, where it is, and the move on it. side: 0 for the first or only side of the plate. */
export type CircleThatServes = { readonly plate: Plate; readonly side: number; readonly circle: number; readonly move: IndexMove };

/**
 * How far the crank goes for one division.
 *   turns = R ÷ N
 * R: turns of the crank for one turn of the spindle; N: divisions.
 * Source: Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, plain indexing (scan pages 58 to 60).
 * True for plain indexing: the plate stands still. Throws RangeError when either is no whole number or N is 0.
 * Example: R 40, N 22: 20/11 of a turn, which is 1 turn and 9/11.
 */
export const turnsPerDivision = (R: number, N: number): Ratio => ratio(R, N);

/**
 * The move on a circle of c holes, or null when the pin would fall between two holes.
 *   T = floor(t);  s = c × (t − T)
 * t: turns of the crank, exact; T: whole turns; s: SPACES on the circle, which must come out whole: c a multiple of t's lower number.
 * Source: as turnsPerDivision. Example: 20/11 on 33: 1 turn + 27 spaces.
 */
export function moveOn(c: number, [num, den]: Ratio): IndexMove | null {
  if (c % den !== 0) return null;
  const turns = Math.floor(num / den);
  return { turns, spaces: (num - turns * den) * (c / den), circle: c };
}

/**
 * Every circle that serves N divisions on a head of R turns, plate by plate and side by side in the order given, fewest holes first on
 * each side: one serves when R × its holes divides by N. Source as moveOn. None when no plate has such a circle.
 */
export function circlesThatServe(R: number, N: number, plates: readonly Plate[]): CircleThatServes[] {
  const turns = turnsPerDivision(R, N);
  return plates.flatMap((plate) =>
    plate.sides.flatMap((circles, side) =>
      [...new Set(circles)]
        .sort((a, b) => a - b)
        .flatMap((circle) => {
          const move = moveOn(circle, turns);
          return move ? [{ plate, side, circle, move }] : [];
        }),
    ),
  );
}

/**
 * Holes that the sector shows between its arms: one more than the spaces, since it counts the hole that the pin stands in.
 *   holes = s + 1
 * Source: rotary table manual of the 221 series, p. 5: 10 spaces on a 34 circle, arms set to hold 11 holes. Example: 27 spaces: 28 holes.
 */
export const sectorHoles = (s: number): number => s + 1;

/**
 * The hole in which the pin lands for tooth n, hole 0 being where it stands for tooth 1, counted the way of cranking.
 *   hole = ((n − 1) × s) mod c
 * Whole turns bring the pin back to the same hole. Source: derived: spaces counted round the circle. Example: 27 on 33, tooth 3: hole 21.
 */
export const landingHole = (n: number, { spaces, circle }: IndexMove): number => ((n - 1) * spaces) % circle;

/**
 * Turns of the crank that n moves make together, exact. The proof of a set-up: N moves make exactly R.
 *   n × (T + s ÷ c)
 * Source: derived. Example: 22 moves of 1 turn + 27 on 33: 40.
 */
export const turnsMade = (n: number, { turns, spaces, circle }: IndexMove): Ratio => plus(ratio(n * turns), ratio(n * spaces, circle));
