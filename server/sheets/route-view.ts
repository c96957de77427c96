import { PITCH_UNKNOWN } from '../../db/gears.ts';
import { wheelName } from '../../db/spares/spare-of.ts';
import { gearWords } from '../../lib/drawing/gear-drawing.ts';
import { to } from '../addresses.ts';
import type { TitleCell } from '../page.ts';
import type { Views } from '../views.ts';
import { gearedBy } from './geared.ts';
import { operationRows, type SheetOperation } from './operation-rows.ts';
import { blockOver, onSheet, type Printed, paperBlock, titleCell } from './paper.ts';
import { operationSides } from './sides.ts';
import { type SummaryLine, summaryOf } from './summary.ts';
import { drawnTall, inked, type Sketch, wheelSketches } from './wheel-drawing.ts';
import { machineName, type Work } from './work.ts';

/** Room on a side between its edges, in millimetres, less head line, table head and title block. */
const SIDE = { whole: 254, title: 13, goesOn: 10, tableHead: 7, block: 30, slimBlock: 18, gap: 5 } as const;
const FIRST = SIDE.whole - SIDE.title - SIDE.tableHead - SIDE.block - SIDE.gap;
const LATER = SIDE.whole - SIDE.goesOn - SIDE.tableHead - SIDE.slimBlock - SIDE.gap;
const CAPTION = 6;
/** The picture of the gears that turn the plate. */
const GEARS_TALL = 44;

function blankWords({ blanks }: Work): string {
  const words = blanks.map(({ role, thing }) => (role === 'whole' ? wheelName(thing) : `${role}: ${wheelName(thing)}`));
  return words.join(', ') || 'not chosen yet';
}

export function partCells(work: Work): TitleCell[] {
  const { part } = work;
  const counted = part.unknown ? `${part.unknown.gear.teeth} teeth, ${PITCH_UNKNOWN}` : 'no wheel on record';
  const wheel = part.stored ? gearWords(part.stored.gear) : counted;
  return [
    titleCell('Machine', machineName(work)),
    titleCell('Part', part.name),
    titleCell('Wheel', wheel),
    titleCell('From', blankWords(work)),
  ];
}

/** Letters of the heading on one line of the first side and of those after it, with the height of such a line. */
const HEADING = { first: 40, later: 62, firstLine: 9, laterLine: 6 } as const;
const moreLines = (text: string, across: number): number => Math.max(0, Math.ceil(text.length / across) - 1);

/** What stands above the operations and beside them: the longer it is, the less room there is. */
type Around = { readonly title: string; readonly cells: readonly TitleCell[]; readonly summary: number; readonly gears: number };

function sidesOf(rows: readonly SheetOperation[], drawing: Sketch | null, { title, cells, summary, gears }: Around): SheetOperation[][] {
  const top =
    gears +
    Math.max(drawing ? drawing.tall + CAPTION : 0, summary) +
    blockOver(cells) +
    moreLines(title, HEADING.first) * HEADING.firstLine;
  return operationSides(rows, FIRST - top, LATER - moreLines(title, HEADING.later) * HEADING.laterLine);
}

/** A line of the summary: its name above a large number, or above words that may take more lines. */
const LINE_TALL = { number: 13, name: 5, words: 6.2, across: 24 } as const;
const lineTall = ({ words, text }: SummaryLine): number =>
  words ? LINE_TALL.name + LINE_TALL.words * Math.ceil(text.length / LINE_TALL.across) : LINE_TALL.number;
const summaryTall = (lines: readonly SummaryLine[]): number => lines.reduce((sum, line) => sum + lineTall(line), 0);

/** A line of text above everything. */
const SAYS = { line: 6, across: 80 } as const;
const linesTall = (says: string): number => Math.ceil(says.length / SAYS.across) * SAYS.line;

/** A blank that will not do is said before anything is cut by this paper. */
function aboveAll(routing: Work['routing']): string {
  if (!routing) return 'No routing is open for this part: the figures below stand by themselves.';
  return routing.closed_on === null && routing.blank_fails !== ''
    ? `Turn and cut nothing: choose the blank anew. ${routing.blank_fails}`
    : '';
}

/** The largest scale that costs no further side of paper. */
function fewestSides(drawings: readonly Sketch[], rows: readonly SheetOperation[], around: Around) {
  const tried = (drawings.length > 0 ? drawings : [null]).map((drawing) => ({ drawing, sides: sidesOf(rows, drawing, around) }));
  return tried.reduce((best, one) => (one.sides.length < best.sides.length ? one : best));
}

export function routeSheet(work: Work, printed: Printed): Views['sheets/route-sheet'] {
  const { part, operations, machines, now, routing } = work;
  const summary = summaryOf(work);
  const [cells, title] = [partCells(work), `${part.mark} ${part.name}`];
  const rows = operationRows(operations, { machines, now, withNotes: printed.withNotes });
  const says = aboveAll(routing);
  const geared = gearedBy(operations);
  const around = { title, cells, summary: summaryTall(summary) + linesTall(says), gears: geared ? GEARS_TALL + CAPTION : 0 };
  const { drawing, sides } = fewestSides(wheelSketches(work), rows, around);
  return {
    ...onSheet(`Route sheet ${title}`, { says: part.mark, href: to.part(part.id) }),
    heading: title,
    says,
    drawing: drawing ? inked(drawing) : null,
    gears: geared ? drawnTall(geared.draw, GEARS_TALL) : null,
    summary,
    sides: sides.map((side, at) => ({
      first: at === 0,
      rows: side,
      paper: paperBlock({ cells, mark: part.mark, leadsTo: to.part(part.id) }, printed, at + 1, sides.length),
    })),
  };
}
