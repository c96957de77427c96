import type { DialMove } from '../values/move.ts';
import { minus, type Ratio, ratio } from '../values/ratio.ts';

/**
 * A rotary table's handwheel. turns: of the handwheel for one of the table; perTurn: lines on its dial; vernier: parts into which the
 * vernier divides one line, 1 without.
 */
export type TableDial = { readonly turns: number; readonly perTurn: number; readonly vernier: number };

/** A setting counted from zero. move: whole turns and lines; error: set less true, in turns of the handwheel, exact. */
export type DialSetting = { readonly move: DialMove; readonly error: Ratio };

/**
 * The nearest setting for a place t turns from zero.
 *   i = round(t × D × v);  turns + lines = i ÷ (D × v)
 * D: lines on the dial; v: parts of the vernier. Half a part is rounded down. Counted from zero, never added up from rounded moves.
 * Source: derived. Example: t 90/17 turn at D 240, v 12: 5 turns + 70.583 lines; 0.000007 turn off.
 */
export function dialSetting(turns: Ratio, { perTurn, vernier }: Pick<TableDial, 'perTurn' | 'vernier'>): DialSetting {
  const [num, den] = turns;
  const small = perTurn * vernier;
  const parts = Math.ceil((2 * num * small - den) / (2 * den));
  const whole = Math.floor(parts / small);
  return { move: { turns: whole, divisions: (parts - whole * small) / vernier, perTurn }, error: minus(ratio(parts, small), turns) };
}

/** Where the handwheel stands for tooth n of N, from zero at tooth 1: (n − 1) × R ÷ N turns. Source: derived. */
export const turnsAt = (n: number, R: number, N: number): Ratio => ratio((n - 1) * R, N);

/** What one part of the vernier stands for, in degrees of the table: 360 ÷ (R × D × v). Example: 90, 240, 12: 1/720 degree, 5 seconds. */
export const leastReading = ({ turns, perTurn, vernier }: TableDial): number => 360 / (turns * perTurn * vernier);
