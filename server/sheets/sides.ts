import type { SheetOperation } from './operation-rows.ts';

/** Heights in millimetres, as paper.css sets them, judged on the generous side. */
const TALL = { setUp: 5.6, head: 7.1, figure: 7.1, box: 8.6, line: 4, caution: 4.4, pad: 0.6 } as const;
/** Letters that surely stand on one line across the table. */
const ACROSS = 104;
const HEAD_ACROSS = 78;
const NAME_ACROSS = 27;
const WORKED_ACROSS = 28;

const linesOf = (text: string, across: number): number => Math.ceil(text.length / across);

function figureTall({ name, symbol, limits, worked, box, text, words }: SheetOperation['figures'][number]): number {
  const beside = (limits ? 1 : 0) + linesOf(worked, WORKED_ACROSS);
  const lines = Math.max(linesOf(`${name} ${symbol}`, NAME_ACROSS), beside, words ? linesOf(text, 26) * 1.3 : 1);
  return Math.max(box ? TALL.box : TALL.figure, lines * TALL.line + TALL.pad * 2);
}

/** How high an operation stands on paper, its set-up line not counted. */
export function operationTall({ title, needs, says, cautions, figures, small }: SheetOperation): number {
  const need = needs.map((one) => one.says + (one.lacking ? ' lacking' : '')).join(', ');
  const lines =
    linesOf(title, HEAD_ACROSS) -
    1 +
    linesOf(need, HEAD_ACROSS) +
    linesOf(small, ACROSS) +
    says.reduce((sum, one) => sum + linesOf(one, ACROSS), 0);
  const warned = cautions.reduce((sum, { word, says: words }) => sum + linesOf(`${word}. ${words}`, ACROSS) * TALL.caution + TALL.pad, 0);
  return TALL.head + lines * TALL.line + warned + figures.reduce((sum, one) => sum + figureTall(one), 0);
}

export const SET_UP_TALL = TALL.setUp;

/**
 * Shares rows out over sides of paper: each whole, in order, a new side when it no longer fits. first and later: room in millimetres.
 * A row taller than a side stands on one alone. head: what a row needs when it opens a side.
 */
export function shareOut<T>(rows: readonly T[], tall: (row: T, opens: boolean) => number, first: number, later: number): T[][] {
  const sides: T[][] = [[]];
  let left = first;
  for (const row of rows) {
    const side = sides[sides.length - 1] as T[];
    const needed = tall(row, side.length === 0);
    if (needed <= left) {
      side.push(row);
      left -= needed;
      continue;
    }
    sides.push([row]);
    left = later - tall(row, true);
  }
  return sides;
}
