import { ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { type Drawing, line, type Mark, text } from './drawing.ts';
import { lettersFor } from './lettering.ts';
import { extentOf, profileMarks, reachOf, type ToolDrawn } from './space-profile-drawing.ts';

/** What fits Letter and A4 alike, in millimetres; the check line stands below, in a strip of its own. */
const SHEET = { wide: 190, high: 255, head: 20, checkLine: 11 } as const;
const COLUMNS = 4;
const ROW = { letters: 2.6, high: 3.7 } as const;
const GAP = 6;
/** Times its own size at which a tool is drawn on paper. */
export const SHEET_SCALES: readonly number[] = [1, 2, 5, 10, 20];

const LETTERS = lettersFor('paper', () => SHEET.wide);
const LOW = SHEET.head + SHEET.checkLine - SHEET.high;

const tableHigh = (rows: number): number => (Math.ceil(rows / COLUMNS) + 1.5) * ROW.high;
/** Where the table of widths begins, under the profile and its dimensions. */
const tableTop = (tool: ToolDrawn): number => reachOf(extentOf(tool), LETTERS)[1] - LETTERS.label - GAP;

function fits(tool: ToolDrawn): boolean {
  const [right] = reachOf(extentOf(tool), LETTERS);
  return right <= SHEET.wide / 2 && tableTop(tool) - tableHigh(tool.rows.length) >= LOW;
}

/** The largest scale, not above the one asked for, at which the tool and its widths fit one sheet; null when none does. */
function scaleFor(tool: ToolDrawn): number | null {
  return SHEET_SCALES.filter((times) => times <= tool.times).findLast((times) => fits({ ...tool, times })) ?? null;
}

/** Distance from the tip, half width and width of every listed place, in columns side by side. */
function widths(tool: ToolDrawn, top: number): Mark[] {
  const [each, wide] = [Math.ceil(tool.rows.length / COLUMNS), SHEET.wide / COLUMNS];
  const size = (x: number): string => printLength(ofUnit(x, tool.unit), { unit: tool.unit, places: tool.unit === 'in' ? 4 : 3 });
  const right = (column: number, at: number): number => -SHEET.wide / 2 + column * wide + at * 14.5;
  const cells = (column: number, y: number, says: readonly string[]): Mark[] =>
    says.map((one, at) => text([right(column, at + 1), y], one, ROW.letters, 'end'));
  const heads = Array.from({ length: Math.ceil(tool.rows.length / each) }, (_, column) => [
    ...cells(column, top - ROW.high, ['from tip', 'half', 'width']),
    line([right(column, 0), top - ROW.high - 1], [right(column, 3), top - ROW.high - 1], 'edge'),
  ]);
  const rows = tool.rows.map(([x, y], i) =>
    cells(Math.floor(i / each), top - ROW.high * (2.2 + (i % each)), [size(y), size(x), size(2 * x)]),
  );
  return [...heads.flat(), ...rows.flat()];
}

/**
 * The tool's own sheet for Letter and A4: its profile at the scale asked for, or the largest below it that fits, which is said; all listed widths as
 * coordinates; room for the check line. null when the tool does not fit a sheet at its own size.
 */
export function groundToolSheet(asked: ToolDrawn): Drawing | null {
  const times = scaleFor(asked);
  if (times === null) return null;
  const tool = { ...asked, times };
  const scale = `Scale ${times} : 1${times === asked.times ? '' : ` (${asked.times} : 1 does not fit a sheet)`}`;
  const left = -SHEET.wide / 2;
  const unit = tool.unit === 'in' ? 'inches' : 'millimetres';
  return {
    title: tool.says,
    describes: `${tool.says}: its cutting edge ${times} times its size, tip up, and ${tool.rows.length} widths of it as coordinates.`,
    low: [left, LOW],
    high: [-left, SHEET.head],
    toScale: true,
    marks: [
      text([left, 15], tool.says, LETTERS.figure, 'start'),
      text([left, 9.5], `${scale}, tip up.`, LETTERS.label, 'start'),
      text([left, 5], 'Print at 100 % and measure the check line below before grinding by it.', LETTERS.label, 'start'),
      ...profileMarks(tool, LETTERS),
      text([left, tableTop(tool) + 1], `Sizes of the tool itself, in ${unit}; half: from its middle line.`, LETTERS.label, 'start'),
      ...widths(tool, tableTop(tool)),
    ],
  };
}
