import { to } from '../addresses.ts';
import type { Views } from '../views.ts';
import type { Ticked } from './index-columns.ts';
import { indexBlock, sectorWords } from './index-view.ts';
import { operationRows, type SheetOperation } from './operation-rows.ts';
import { onSheet, type Printed, paperBlock, titleCell } from './paper.ts';
import { moveOf } from './passes.ts';
import { shareOut } from './sides.ts';
import type { FactView, IndexBlock } from './view-types.ts';
import { machineName, type Work } from './work.ts';

/** One part in the set-up, with its ticks. */
export type PartInSetUp = { readonly work: Work; readonly all: readonly Ticked[] };

type Row = { readonly key: string; readonly name: string; readonly text: string };

/** Everything that is set or read for one part, in the order of the work; a figure that comes back is named once. */
function rowsOf({ operations, machines, now, part: { stored } }: Work): Row[] {
  const rows = operationRows(operations, { machines, now, withNotes: false });
  const needs = rows.flatMap((row) =>
    row.needs.map(({ says, lacking }) => ({ key: needKey(says), name: needKey(says), text: says + (lacking ? ' — lacking' : '') })),
  );
  const move = moveOf(operations);
  const sector = move ? [{ key: 'sector', name: 'Sector', text: sectorWords(move) }] : [];
  const teeth = stored ? [{ key: 'teeth', name: 'Teeth', text: String(stored.gear.teeth) }] : [];
  const found = [...teeth, ...needs, ...rows.flatMap(figureRows), ...sector];
  return found.filter((row, at) => found.findIndex(({ key }) => key === row.key) === at);
}

const KINDS = ['cutter', 'mandrel', 'dividing head', 'index plate', 'chuck'] as const;
const needKey = (says: string): string => KINDS.find((kind) => says.toLowerCase().includes(kind)) ?? says;

const figureRows = ({ figures, title }: SheetOperation): Row[] =>
  figures
    .filter(({ key }) => !key.endsWith('-sector'))
    .map(({ key, name, was, text, unit, typed, limits }) => ({
      key: key.replace(/^.*-(crank)$/, '$1'),
      name: name === 'dial' ? title : name,
      text: [was ? `${was} →` : '', limits.startsWith('at most') ? 'at most' : '', text, unit, typed ? '(typed)' : '']
        .filter((part) => part !== '')
        .join(' '),
    }));

type Compared = {
  readonly common: readonly FactView[];
  readonly differing: readonly { readonly name: string; readonly cells: readonly string[] }[];
};

/** What all parts say alike stands once; the rest side by side. */
function compared(parts: readonly (readonly Row[])[]): Compared {
  const keys = [...new Map(parts.flat().map(({ key, name }) => [key, name]))];
  const cellsOf = (key: string): string[] => parts.map((rows) => rows.find((row) => row.key === key)?.text ?? '—');
  const same = (key: string): boolean => parts.length > 1 && new Set(cellsOf(key)).size === 1;
  return {
    common: keys.filter(([key]) => same(key)).map(([key, name]) => ({ key, name, text: cellsOf(key)[0] ?? '' })),
    differing: keys.filter(([key]) => !same(key)).map(([key, name]) => ({ name, cells: cellsOf(key) })),
  };
}

/** Heights in millimetres, as paper.css sets them. */
const TALL = { whole: 254, head: 24, block: 36, gap: 8, line: 6.6, blockHead: 32, row: 5.9 } as const;
const LATER = TALL.whole - TALL.head - TALL.block - TALL.gap;

const blockTall = ({ columns }: IndexBlock): number =>
  TALL.blockHead + TALL.row * (1 + Math.max(...columns.columns.map((column) => column.length)));

const atMill = ({ work }: PartInSetUp): boolean =>
  work.operations.some(({ key }) => key === 'plate' || key === 'nick') && moveOf(work.operations) !== null;

const factLines = ({ common, differing }: Compared): number => Math.ceil(common.length / 2) + differing.length + 2;

export function setUpSheet(parts: readonly PartInSetUp[], printed: Printed): Views['sheets/set-up-sheet'] {
  const first = parts[0]?.work as Work;
  const says = compared(parts.map(({ work }) => rowsOf(work)));
  const blocks = parts.filter(atMill).map(({ work, all }) => indexBlock(work, all, 3));
  const top = factLines(says) * TALL.line + TALL.gap;
  const sides = shareOut(blocks, blockTall, LATER - top, LATER);
  const marks = parts.map(({ work }) => work.part.mark);
  const leadsTo = to.part(first.part.id);
  const cells = [titleCell('Machine', machineName(first)), titleCell('Parts', marks.join(', '))];
  return {
    ...onSheet(`Set-up sheet ${marks.join(', ')}`, { says: marks[0] ?? '', href: leadsTo }),
    heading: `${parts.length} parts in one set-up`,
    setUp: first.operations[0]?.setUp.says ?? '',
    common: says.common,
    differs: { heads: marks, rows: says.differing },
    cautions: atMill(parts[0] as PartInSetUp)
      ? ['Cutter changed: set it central again, and prove it.', 'Circle changed: set the sector anew, and nick all and one more.']
      : [],
    sides: sides.map((side, at) => ({
      first: at === 0,
      blocks: side,
      paper: paperBlock({ cells, mark: marks[0] ?? '', leadsTo }, printed, at + 1, sides.length),
    })),
  };
}
