import type { Plate } from '../tooling/tooling.ts';
import { type Angle, MAS_PER_DEGREE } from '../values/angle.ts';
import type { IndexMove } from '../values/move.ts';
import { compareRatios, minus, plus, type Ratio, ratio } from '../values/ratio.ts';

const MAS_PER_ROUND = 360 * MAS_PER_DEGREE;

/**
 * Turns of the crank for an angle of the work, exact.
 *   t = R × A ÷ 360
 * R: turns of the crank for one turn of the spindle; A: degrees, kept in thousandths of a second.
 * Source: Machinery's Handbook, 1916 edition, angular indexing; Brown & Sharpe, Practical Treatise, scan page 60.
 * Throws RangeError when R is no whole number. Example: 35 degrees at 40 to 1: 3 8/9 turns.
 */
export const turnsForAngle = (R: number, angle: Angle): Ratio => ratio(R * angle, MAS_PER_ROUND);

/** The angle of so many turns, in degrees: A = 360 × t ÷ R. Source as turnsForAngle. Example: 1/27 turn at 40 to 1: 1/3 degree. */
export const degreesOfTurns = (R: number, [num, den]: Ratio): number => (360 * num) / den / R;

/** A move near a wanted one. error: made less wanted, in turns of the crank, exact; plus = too far. */
export type NearMove = { readonly plate: Plate; readonly side: number; readonly move: IndexMove; readonly error: Ratio };

/** The spaces of a circle of c holes that come nearest to t turns; of two equally near the fewer. s = ceil(c × t − 1/2). Source: derived. */
export function nearestOn(c: number, turns: Ratio): { readonly move: IndexMove; readonly error: Ratio } {
  const [num, den] = turns;
  const holes = Math.ceil((2 * c * num - den) / (2 * den));
  return { move: { turns: Math.floor(holes / c), spaces: holes % c, circle: c }, error: minus(ratio(holes, c), turns) };
}

const size = ([num, den]: Ratio): Ratio => [Math.abs(num), den];

/** The nearest move on each circle, nearest first; of equally near ones the circle of fewest holes. Exact ones have the error 0. Source: derived. */
export function nearMoves(turns: Ratio, plates: readonly Plate[]): NearMove[] {
  const all = plates.flatMap((plate) =>
    plate.sides.flatMap((circles, side) => [...new Set(circles)].map((c): NearMove => ({ plate, side, ...nearestOn(c, turns) }))),
  );
  return all.sort((a, b) => compareRatios(size(a.error), size(b.error)) || a.move.circle - b.move.circle);
}

/** Two moves that together come near a wanted one: front and back as in a compound move, both circles on one side of one plate. */
export type NearPair = {
  readonly plate: Plate;
  readonly side: number;
  readonly front: number;
  readonly frontCircle: number;
  readonly back: number;
  readonly backCircle: number;
  readonly error: Ratio;
};

/**
 * The nearest setting of two circles for a move of t turns: x on a, then y more or less on b.
 * Every pair of circles and every y is gone through, with the nearest x for each. Of equally near ones the first.
 * Source: derived; tables of accurate angular indexing are made so (Machinery's Handbook, 27th ed., p. 1995).
 * Example: 0.1910 of a turn on the two-sided plate 24 to 66: 21 on 57 less 11 on 62 is within 0.000002.
 */
export function nearestPair(turns: Ratio, plates: readonly Plate[], reached: readonly number[] | null): NearPair | null {
  const t = turns[0] / turns[1];
  let best: Omit<NearPair, 'error'> | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const plate of plates)
    plate.sides.forEach((circles, side) => {
      for (const a of circles)
        for (const b of circles) {
          if (a === b || (reached !== null && !reached.includes(b))) continue;
          for (let y = 1 - b; y < b; y++) {
            const front = Math.round((t - y / b) * a);
            const off = Math.abs(front / a + y / b - t);
            if (front < 0 || off >= least) continue;
            [least, best] = [off, { plate, side, front, frontCircle: a, back: y, backCircle: b }];
          }
        }
    });
  const found = best as Omit<NearPair, 'error'> | null;
  return found && { ...found, error: minus(plus(ratio(found.front, found.frontCircle), ratio(found.back, found.backCircle)), turns) };
}
