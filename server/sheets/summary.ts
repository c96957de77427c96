import type { StoredFigure } from '../../db/figures.ts';
import type { OperationLine } from '../../db/operations.ts';
import { sectorHoles } from '../../lib/dividing/plain.formulas.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import { printFigure } from '../../lib/figure/print-value.ts';
import { mainSizes } from '../../lib/gears/wheel-sizes.sums.ts';
import { needWords } from '../../lib/routing/needs.ts';
import { dialUnit } from './operation-rows.ts';
import { type SheetFigure, sheetFigure, standsFor } from './sheet-figure.ts';
import type { Work } from './work.ts';

/** One line of what the wheel is cut by, at a glance. */
export type SummaryLine = {
  readonly key: string;
  readonly name: string;
  readonly was: string;
  readonly text: string;
  readonly unit: string;
  readonly words: boolean;
  readonly typed: boolean;
};

/** Operation and figure, in the order of the work. The sector is put together with its holes. */
const LINES = [
  ['blank', 'outside'],
  ['blank', 'rootDiameter'],
  ['touch', 'depth'],
  ['plate', 'crank'],
  ['plate', 'sector'],
  ['first-span', 'span'],
] as const;

const BARE = { was: '', unit: '', typed: false } as const;

const fromSheet = ({ key, name, was, text, unit, words, typed }: SheetFigure): SummaryLine => ({
  key,
  name,
  was,
  text,
  unit,
  words,
  typed,
});

/** Spaces, and the holes that the sector shows, in one line: nobody sets one for the other. */
function sectorLine(stored: StoredFigure, line: SummaryLine): SummaryLine {
  const value = standsFor(stored);
  if (!('count' in value)) return line;
  const text = `${value.count} spaces = ${sectorHoles(value.count)} holes`;
  return { ...line, name: 'Sector, counting the pin’s hole', text, unit: '', words: true };
}

function lineOf(work: Work, operation: OperationLine, figure: string): SummaryLine[] {
  const stored = operation.figures.find(({ key }) => key === figure);
  if (!stored) return [];
  const line = fromSheet(sheetFigure(operation, stored, dialUnit(operation, work.machines), work.now));
  return [figure === 'sector' ? sectorLine(stored, line) : line];
}

function cutterLine({ operations }: Work): SummaryLine[] {
  const need = operations.flatMap(({ needs }) => needs).find((one) => one.need.kind === 'cutter');
  if (!need) return [];
  const text = `${needWords(need.need).replace(/^cutter /, '')}${need.tool_id === null ? ': lacking' : ''}`;
  return [{ ...BARE, key: 'cutter', name: 'Cutter', text, words: true }];
}

const ofWheel = (key: string, figure: Figure): SummaryLine => {
  const { text, unit } = printFigure(figure);
  return { ...BARE, key, name: figure.name, text, unit, words: false };
};

/** What stands for a wheel without a routing: its own figures. */
function bareWheel({ part: { stored } }: Work): SummaryLine[] {
  if (!stored) return [];
  const { outsideDiameter, rootDiameter, wholeDepth } = mainSizes(stored.gear).figures;
  const named = [
    ['outside', outsideDiameter],
    ['rootDiameter', rootDiameter],
    ['wholeDepth', wholeDepth],
  ] as const;
  return named.flatMap(([key, figure]) => (figure ? [ofWheel(key, figure)] : []));
}

/** The big figures that a wheel is cut by, for the first side. */
export function summaryOf(work: Work): SummaryLine[] {
  const lines = LINES.flatMap(([key, figure]) =>
    work.operations.filter((one) => one.key === key && one.struck_on === null).flatMap((operation) => lineOf(work, operation, figure)),
  );
  return lines.length > 0 ? [...lines, ...cutterLine(work)] : bareWheel(work);
}
