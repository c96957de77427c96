import type { DialMove } from '../values/move.ts';
import { gcd, minus, type Ratio, ratio } from '../values/ratio.ts';

/**
 * A rotary table's handwheel. turns: of the handwheel for one of the table; perTurn: lines on its dial; vernier: parts into which the
 * vernier divides one line, 1 without.
 */
export type TableDial = { readonly turns: number; readonly perTurn: number; readonly vernier: number };

/**
 * A setting counted from zero. move: whole turns and lines; the same as it is read: line, and part, the line of the vernier that falls on one
 * of the dial, 0 for none. error: set less true, in turns of the handwheel, exact.
 */
export type DialSetting = { readonly move: DialMove; readonly line: number; readonly part: number; readonly error: Ratio };

/**
 * The nearest setting for a place t turns from zero.
 *   i = round(t × D × v);  turns + lines = i ÷ (D × v)
 * D: lines on the dial; v: parts of the vernier. Half a part is rounded down. Counted from zero, never added up from rounded moves.
 * Source: derived. Example: t 90/17 turn at D 240, v 12: 5 turns + 70.583 lines; 0.000007 turn off.
 */
export function dialSetting(turns: Ratio, { perTurn, vernier }: Pick<TableDial, 'perTurn' | 'vernier'>): DialSetting {
  const [num, den] = turns;
  const small = perTurn * vernier;
  const parts = Math.ceil((2 * num * small - den) / (2 * den)) + 0;
  const whole = Math.floor(parts / small);
  const left = parts - whole * small;
  return {
    move: { turns: whole, divisions: left / vernier, perTurn },
    line: Math.floor(left / vernier),
    part: left % vernier,
    error: minus(ratio(parts, small), turns),
  };
}

/** Where the handwheel stands for tooth n of N, from zero at tooth 1: (n − 1) × R ÷ N turns. Source: derived. */
export const turnsAt = (n: number, R: number, N: number): Ratio => ratio((n - 1) * R, N);

/** What one part of the vernier stands for, in degrees of the table: 360 ÷ (R × D × v). Example: 90, 240, 12: 1/720 degree, 5 seconds. */
export const leastReading = ({ turns, perTurn, vernier }: TableDial): number => 360 / (turns * perTurn * vernier);

/** Whether every one of N divisions falls on a line, of dial or vernier: R × D × v divides by N. Source: derived. Example: 24 on 90 and 240: yes. */
export const dialServes = ({ turns, perTurn, vernier }: TableDial, N: number): boolean => (turns * perTurn * vernier) % N === 0;

/**
 * The largest error of any division, in turns of the handwheel: half of what the true places can stand apart within one part.
 *   e = floor(q ÷ 2) ÷ (q × D × v),  q = N ÷ gcd(N, R × D × v)
 * Source: derived, as for the nearest hole of a circle. Example: 17 on 90, 240 and 12: q 17, 8/48960 of a turn.
 */
export function worstOnDial({ turns, perTurn, vernier }: TableDial, N: number): Ratio {
  const small = perTurn * vernier;
  const q = N / gcd(N, turns * small);
  return ratio(Math.floor(q / 2), q * small);
}
