import { wheelName } from '../../db/spares/spare-of.ts';
import { gearWords } from '../../lib/drawing/gear-drawing.ts';
import { to } from '../addresses.ts';
import type { TitleCell } from '../page.ts';
import type { Views } from '../views.ts';
import { operationRows, type SheetOperation } from './operation-rows.ts';
import { onSheet, type Printed, paperBlock, titleCell } from './paper.ts';
import { operationTall, SET_UP_TALL, shareOut } from './sides.ts';
import { summaryOf } from './summary.ts';
import { type PaperDrawing, wheelDrawing } from './wheel-drawing.ts';
import { machineName, type Work } from './work.ts';

/** Room on a side between its edges, in millimetres, less head line, table head and title block. */
const SIDE = { whole: 254, title: 13, goesOn: 10, tableHead: 8, block: 33, slimBlock: 20, gap: 6 } as const;
const FIRST = SIDE.whole - SIDE.title - SIDE.tableHead - SIDE.block - SIDE.gap;
const LATER = SIDE.whole - SIDE.goesOn - SIDE.tableHead - SIDE.slimBlock - SIDE.gap;
const CAPTION = 8;

function blankWords({ blanks }: Work): string {
  const words = blanks.map(({ role, thing }) => (role === 'whole' ? wheelName(thing) : `${role}: ${wheelName(thing)}`));
  return words.join(', ') || 'not chosen yet';
}

export function partCells(work: Work): TitleCell[] {
  const { part } = work;
  const wheel = part.stored ? gearWords(part.stored.gear) : 'no wheel on record';
  return [
    titleCell('Machine', machineName(work)),
    titleCell('Part', part.name),
    titleCell('Wheel', wheel),
    titleCell('From', blankWords(work)),
  ];
}

const openSetUp = (row: SheetOperation, opens: boolean): SheetOperation =>
  opens && row.setUp === '' ? { ...row, setUp: `${row.setUpNow} (goes on)` } : row;

const tallOf = (row: SheetOperation, opens: boolean): number => operationTall(row) + (openSetUp(row, opens).setUp === '' ? 0 : SET_UP_TALL);

function sidesOf(rows: readonly SheetOperation[], drawing: PaperDrawing | null, summary: number): SheetOperation[][] {
  const top = Math.max(drawing ? drawing.tall + CAPTION : 0, summary) + SIDE.gap;
  const sides = shareOut(rows, tallOf, FIRST - top, LATER);
  return sides.map((side) => side.map((row, at) => openSetUp(row, at === 0)));
}

const SUMMARY_LINE = 16;

export function routeSheet(work: Work, printed: Printed): Views['sheets/route-sheet'] {
  const { part, operations, machines, now, routing } = work;
  const [drawing, summary] = [wheelDrawing(work), summaryOf(work)];
  const rows = operationRows(operations, { machines, now, withNotes: printed.withNotes });
  const sides = sidesOf(rows, drawing, (summary.length + 1) * SUMMARY_LINE);
  const cells = partCells(work);
  const title = `${part.mark} ${part.name}`;
  return {
    ...onSheet(`Route sheet ${title}`, { says: part.mark, href: to.part(part.id) }),
    heading: title,
    says: routing ? '' : 'No routing is open for this part: the figures below stand by themselves.',
    drawing,
    summary,
    sides: sides.map((side, at) => ({
      first: at === 0,
      rows: side,
      paper: paperBlock({ cells, mark: part.mark, leadsTo: to.part(part.id) }, printed, at + 1, sides.length),
    })),
  };
}
