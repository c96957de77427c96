import { to } from '../addresses.ts';
import { qrOf } from '../devices/view-model.ts';
import type { LinkView, PaperBlock, TitleCell } from '../page.ts';
import type { Visit } from '../visit.ts';

/** What the layout of paper wants beside the sheet. */
export const onSheet = (title: string, back: LinkView) => ({
  title,
  back,
  styles: [to.asset('paper.css'), to.asset('drawing.css'), to.asset('sheets.css')],
  script: to.asset('page.js'),
  icon: to.asset('icon.svg'),
});

/** A cell of the title block holds so much; the whole name stands over the sheet. */
const CELL_HOLDS = 40;
export const titleCell = (label: string, says: string): TitleCell => ({
  label,
  says: says.length > CELL_HOLDS ? `${says.slice(0, CELL_HOLDS - 1)}…` : says,
  href: '',
  state: null,
});

/** Letters on a line of a cell, and the height of such a line in millimetres, as paper.css sets them. */
const CELL = { across: 18, line: 4.7 } as const;

/** How much higher than usual a block of four cells stands, because their words take more lines. */
export function blockOver(cells: readonly TitleCell[]): number {
  const lines = (some: readonly TitleCell[]): number => Math.max(1, ...some.map(({ says }) => Math.ceil(says.length / CELL.across)));
  return Math.max(0, lines(cells.slice(0, 3)) + lines(cells.slice(3)) - 3) * CELL.line;
}

/** Paper as it is printed today, leading back to where it came from. leadsTo: the path that the QR code opens. */
export type Printed = { readonly shopAddress: string; readonly now: string; readonly withNotes: boolean };
export const printedBy = ({ shopAddress, now, trusted }: Visit): Printed => ({ shopAddress, now, withNotes: trusted });

type Block = { readonly cells: readonly TitleCell[]; readonly mark: string; readonly leadsTo: string };

export const paperBlock = ({ cells, mark, leadsTo }: Block, { shopAddress, now }: Printed, side: number, of: number): PaperBlock => ({
  cells,
  mark,
  qr: qrOf(`${shopAddress}${leadsTo}`),
  address: `${shopAddress}${leadsTo}`,
  printedOn: now.slice(0, 10),
  sheetOf: `${side} of ${of}`,
});
