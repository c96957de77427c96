import type { Plate } from '../tooling/tooling.ts';
import { gcd, plus, type Ratio, ratio } from '../values/ratio.ts';

/**
 * Two moves for one division, on one side of one plate: the crank's pin over `front` spaces of its circle, the plate still; then the
 * plate with the crank on it over `back` spaces of the circle that the back pin stands in. back: plus = the way of cranking, minus = against.
 * front counts whole turns too: 25 spaces on 21 are 1 turn + 4.
 */
export type CompoundMove = { readonly front: number; readonly frontCircle: number; readonly back: number; readonly backCircle: number };

/**
 * Turns of the crank that both moves make together.
 *   t = x ÷ a + y ÷ b
 * x spaces on a circle of a holes; y (with its sign) on a circle of b holes.
 * Source: F. D. Jones, Milling Machines Part II (Machinery's Reference Series 97, 1912), compound indexing. Example: 5 on 15 and 7 on 19: 40/57.
 */
export const compoundTurns = ({ front, frontCircle, back, backCircle }: CompoundMove): Ratio =>
  plus(ratio(front, frontCircle), ratio(back, backCircle));

/**
 * The moves on circles a (crank) and b (back pin) that make t turns together: the fewest spaces of the back pin each way, or none.
 *   x × b/d + y × a/d = t × a × b/d,   d the greatest common measure of a and b
 * Solvable when the right side is whole, since a/d and b/d share no factor; y is settled but for whole b/d. y = 0 is plain and left out;
 * so are moves for which the crank would have to go backwards. Source: derived (linear equation in whole numbers). Example: 40/57 on 15 and 19:
 * 5 and 7 with it; 20 and 12 against it.
 */
export function compoundMoves([num, den]: Ratio, a: number, b: number): CompoundMove[] {
  const d = gcd(a, b);
  const [stepA, stepB] = [a / d, b / d];
  if ((a * stepB) % den !== 0) return [];
  const all = num * ((a * stepB) / den);
  const onTheWay = (y: number): CompoundMove | null => {
    const front = (all - y * stepA) / stepB;
    return front > 0 ? { front, frontCircle: a, back: y, backCircle: b } : null;
  };
  for (let y = 0; y < stepB; y++) {
    if ((((all - y * stepA) % stepB) + stepB) % stepB !== 0) continue;
    return y === 0 ? [] : [onTheWay(y), onTheWay(y - stepB)].flatMap((move) => (move ? [move] : []));
  }
  return [];
}

export type CompoundSetting = { readonly plate: Plate; readonly side: number; readonly move: CompoundMove };

/** Whether the back pin reaches a circle; before it has been tried (null), any may be. */
const reaches = (reached: readonly number[] | null, circle: number): boolean => reached === null || reached.includes(circle);

/**
 * Every compound set-up: both circles on one side of one plate, which is the one mounted, and the back pin's circle within its reach.
 * turns: of the crank for one move; with several divisions in one move, that many times one division's.
 * Example: 40/57 on plates 15 to 20: 5 on 15 and 7 on 19, one of eight.
 */
export function compoundSettings(turns: Ratio, plates: readonly Plate[], reached: readonly number[] | null): CompoundSetting[] {
  return plates.flatMap((plate) =>
    plate.sides.flatMap((circles, side) => {
      const different = [...new Set(circles)];
      return different.flatMap((a) =>
        different
          .filter((b) => b !== a && reaches(reached, b))
          .flatMap((b) => compoundMoves(turns, a, b).map((move) => ({ plate, side, move }))),
      );
    }),
  );
}

const around = (spaces: number, circle: number): number => ((spaces % circle) + circle) % circle;

/** Where both pins stand for tooth n, hole 0 of each circle being where it stood for tooth 1. Counted the way of cranking. Source: derived. */
export const compoundHoles = (
  n: number,
  { front, frontCircle, back, backCircle }: CompoundMove,
): { readonly front: number; readonly back: number } => ({
  front: around((n - 1) * front, frontCircle),
  back: around((n - 1) * back, backCircle),
});
