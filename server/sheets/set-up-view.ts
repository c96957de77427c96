import { to } from '../addresses.ts';
import type { TitleCell } from '../page.ts';
import { cutNothing } from '../routings/blank-words.ts';
import type { Views } from '../views.ts';
import type { Ticked } from './index-columns.ts';
import { indexBlock } from './index-view.ts';
import { onSheet, type Printed, paperBlock, titleCell } from './paper.ts';
import { type Compared, compared, setRows } from './set-up-rows.ts';
import { shareOut } from './sides.ts';
import type { IndexBlock } from './view-types.ts';
import { walkOf } from './walk.ts';
import { machineName, type Work } from './work.ts';

/** One part in the set-up, with its ticks. */
export type PartInSetUp = { readonly work: Work; readonly all: readonly Ticked[] };

/** Heights in millimetres, as paper.css sets them. */
const TALL = { whole: 254, head: 21, block: 36, gap: 8, line: 4.5, pad: 1.6, blockHead: 26, row: 5.3 } as const;
const LATER = TALL.whole - TALL.head - TALL.block - TALL.gap;

const blockTall = ({ columns }: IndexBlock): number =>
  TALL.blockHead + TALL.row * (1 + Math.max(0, ...columns.columns.map((column) => column.length)));

/** A table longer than a side of paper is left to the index sheet. */
const onOneSide = (block: IndexBlock): IndexBlock =>
  blockTall(block) <= LATER
    ? block
    : {
        ...block,
        proof: `${block.proof} The table is longer than this sheet: print the index sheet.`,
        columns: { ...block.columns, columns: [] },
      };

const atMill = ({ work }: PartInSetUp): boolean =>
  work.operations.some(({ key }) => key === 'plate' || key === 'nick') && walkOf(work) !== null;

/** Letters that surely stand on one line of a cell, in a fact of two columns and in a column of the table. */
const FACT_ACROSS = 24;
const TABLE_ACROSS = 60;

const linesIn = (text: string, across: number): number => Math.ceil(text.length / across);

function factsTall({ common, differing }: Compared): number {
  const tallest = (texts: readonly string[], across: number): number =>
    Math.max(...texts.map((text) => linesIn(text, across))) * TALL.line + TALL.pad;
  const pairs = common
    .filter((_, at) => at % 2 === 0)
    .map((fact, at) => [fact, common[at * 2 + 1] ?? fact].flatMap(({ name, text }) => [name, text]));
  const facts = pairs.reduce((sum, texts) => sum + tallest(texts, FACT_ACROSS), 0);
  const rows = differing.reduce((sum, { name, cells }) => sum + tallest([name, ...cells], Math.floor(TABLE_ACROSS / cells.length)), 0);
  return facts + rows + 4 * (TALL.line + TALL.pad);
}

/** Said of each part whose blank will not do. */
const blankWillNotDo = ({ part, operations }: Work): string[] =>
  operations.some((one) => cutNothing(one) !== '') ? [`${part.mark}: cut nothing, choose the blank anew.`] : [];

/** The machines that the parts are of: a cell each for one or two, their number beyond that. */
function machineCells(works: readonly Work[]): TitleCell[] {
  const names = [...new Set(works.map(machineName))];
  return names.length > 2
    ? [titleCell('Machines', `${names.length}, named by their marks`)]
    : names.map((name) => titleCell('Machine', name));
}

export function setUpSheet(parts: readonly PartInSetUp[], printed: Printed): Views['sheets/set-up-sheet'] {
  const first = parts[0]?.work as Work;
  const says = compared(parts.map(({ work }) => setRows(work)));
  const blocks = parts.filter(atMill).map(({ work, all }) => onOneSide(indexBlock(work, all)));
  const anew = parts.flatMap(({ work }) => blankWillNotDo(work));
  const top = factsTall(says) + TALL.gap * (1 + anew.length);
  const sides = shareOut(blocks, blockTall, LATER - top, LATER);
  const marks = parts.map(({ work }) => work.part.mark);
  const leadsTo = to.part(first.part.id);
  const cells = [...machineCells(parts.map(({ work }) => work)), titleCell('Parts', marks.join(', '))];
  return {
    ...onSheet(`Set-up sheet ${marks.join(', ')}`, { says: marks[0] ?? '', href: leadsTo }),
    heading: `${parts.length} parts in one set-up`,
    setUp: first.operations[0]?.setUp.says ?? '',
    common: says.common,
    differs: { heads: marks, rows: says.differing },
    cautions: [
      ...anew,
      ...(atMill(parts[0] as PartInSetUp)
        ? ['Cutter changed: set it central again, and prove it.', 'Circle changed: set the sector anew, and nick all and one more.']
        : []),
    ],
    sides: sides.map((side, at) => ({
      first: at === 0,
      blocks: side,
      paper: paperBlock({ cells, mark: marks[0] ?? '', leadsTo }, printed, at + 1, sides.length),
    })),
  };
}
