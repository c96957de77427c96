import type { SheetOperation } from './operation-rows.ts';

/** Heights in millimetres, as sheets.css sets them, judged on the generous side. */
const TALL = { setUp: 5.6, head: 6.8, figure: 6.9, box: 8.2, line: 3.9, worked: 3.65, caution: 4.3, pad: 0.6 } as const;
/** Letters that surely stand on one line: across the table, of a title, of a name, of a working, of words large. */
const ACROSS = { table: 104, head: 78, setUp: 92, name: 26, worked: 28, words: 20, long: 32 } as const;

const linesOf = (text: string, across: number): number => Math.ceil(text.length / across);

type SheetFigure = SheetOperation['figures'][number];

function valueLines({ was, text, words, long }: SheetFigure): number {
  if (was) return linesOf(`${was} → ${text}`, ACROSS.words) * 1.2;
  if (long) return linesOf(text, ACROSS.long);
  return words ? linesOf(text, ACROSS.words) * 1.35 : 1;
}

function figureTall(figure: SheetFigure): number {
  const { name, limits, worked, box } = figure;
  const beside = (limits && limits !== 'at most' ? 1 : 0) + linesOf(worked, ACROSS.worked);
  const lines = Math.max(linesOf(name, ACROSS.name), valueLines(figure));
  return Math.max(box ? TALL.box : TALL.figure, lines * TALL.line + TALL.pad, beside * TALL.worked + TALL.pad);
}

function headTall({ title, needs, says, cautions, goesOn }: SheetOperation): number {
  if (goesOn) return TALL.head;
  const need = needs.map((one) => one.says + (one.lacking ? ' lacking: ' : '  ')).join('   ');
  const lines =
    linesOf(title, ACROSS.head) - 1 + linesOf(need, ACROSS.head) + says.reduce((sum, one) => sum + linesOf(one, ACROSS.head), 0);
  const warned = cautions.reduce(
    (sum, { word, says: words }) => sum + linesOf(`${word}. ${words}`, ACROSS.table) * TALL.caution + TALL.pad,
    0,
  );
  return TALL.head + lines * TALL.line + warned;
}

/** How high an operation, or a piece of one, stands on paper with its set-up line. */
function tall(row: SheetOperation): number {
  const setUp = row.setUp === '' ? 0 : TALL.setUp * linesOf(row.setUp, ACROSS.setUp);
  const small = row.small === '' ? 0 : linesOf(row.small, ACROSS.table) * TALL.line + TALL.pad;
  return setUp + headTall(row) + row.figures.reduce((sum, one) => sum + figureTall(one), 0) + small;
}

/**
 * Shares rows out over sides of paper: each whole, in order, a new side when it no longer fits. first and later: room in millimetres.
 * A row taller than a side stands on one alone.
 */
export function shareOut<T>(rows: readonly T[], tallOf: (row: T) => number, first: number, later: number): T[][] {
  const sides: T[][] = [[]];
  let left = first;
  for (const row of rows) {
    const needed = tallOf(row);
    if (needed > left) {
      sides.push([]);
      left = later;
    }
    sides[sides.length - 1]?.push(row);
    left -= needed;
  }
  return sides;
}

/** What of an operation stands on this side, and what goes on overleaf: figures are never parted, nor is a head left without its first. */
function parted(row: SheetOperation, room: number): readonly [SheetOperation | null, SheetOperation | null] {
  if (tall(row) <= room) return [row, null];
  for (let kept = row.figures.length - 1; kept >= 1; kept--) {
    const here = { ...row, figures: row.figures.slice(0, kept), small: '' };
    if (tall(here) <= room) return [here, { ...row, goesOn: true, setUp: '', figures: row.figures.slice(kept) }];
  }
  return [null, row];
}

/** At the head of a side the set-up is named once more. */
const opening = (row: SheetOperation): SheetOperation => (row.setUp === '' ? { ...row, setUp: `${row.setUpNow}, goes on` } : row);

/** Operations over sides of paper; one that does not fit whole goes on overleaf under its own head. */
export function operationSides(rows: readonly SheetOperation[], first: number, later: number): SheetOperation[][] {
  const sides: SheetOperation[][] = [[]];
  let left = first;
  const waiting = [...rows];
  for (let row = waiting.shift(); row; row = waiting.shift()) {
    const side = sides[sides.length - 1] as SheetOperation[];
    const opened = side.length === 0 ? opening(row) : row;
    const [here, overleaf] = parted(opened, left);
    const alone = here === null && side.length === 0 && left === later;
    if (here || alone) side.push(here ?? opened);
    left -= here ? tall(here) : 0;
    if (!overleaf || alone) continue;
    waiting.unshift(overleaf);
    sides.push([]);
    left = later;
  }
  return sides.filter((side, at) => at === 0 || side.length > 0);
}
