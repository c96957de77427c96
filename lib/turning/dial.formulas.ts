import type { DialMove } from '../values/move.ts';

/** What a movement is counted as, and what a dial counts: the tool's travel, or what comes off the diameter. */
export type Counted = 'travel' | 'diameter';

/**
 * A movement as the dial counts it. Off the diameter = 2 × tool travel. x movement, as it is given; gives it in the dial's own counting.
 * Source: johnfsworkshop.org, "Lathe – making very fine cuts" (a cross-slide movement takes twice its amount off the diameter).
 * Example: 0.030 off the diameter is 0.015 on a dial that reads travel.
 */
export function asDialCounts(x: number, given: Counted, reads: Counted): number {
  if (given === reads) return x;
  return reads === 'travel' ? x / 2 : x * 2;
}

/** The turn-about: what a dial's reading is, counted as wanted. */
export const fromDialCounts = (x: number, reads: Counted, wanted: Counted): number => asDialCounts(x, reads, wanted);

/** Nearer than this to a line (in divisions) nobody can tell from being on it. */
const ON_THE_LINE = 0.001;

/** A count of divisions with one that lies on a line, but for rounding, put on it. */
export function settle(divisions: number): number {
  const line = Math.round(divisions);
  return Math.abs(divisions - line) < ON_THE_LINE ? line : divisions;
}

/**
 * Divisions as whole turns and what is left. n = turns × perTurn + left. Source: common practice, no source.
 * Throws RangeError unless n ≥ 0 and perTurn a whole number above 0. Example: 562.5 divisions at 100 a turn: 5 turns + 62.5.
 */
export function dialMoveOf(n: number, perTurn: number): DialMove {
  if (!(n >= 0) || !Number.isSafeInteger(perTurn) || perTurn < 1) throw new RangeError(`no dial move of ${n} at ${perTurn} a turn`);
  const settled = settle(n);
  const turns = Math.floor(settled / perTurn);
  return { turns, divisions: settled - turns * perTurn, perTurn };
}

/** All the divisions of a move. */
export const divisionsIn = ({ turns, divisions, perTurn }: DialMove): number => turns * perTurn + divisions;

/** The line at or next below: what leaves metal rather than takes it. */
export const lineBelow = (n: number): number => Math.floor(settle(n));
