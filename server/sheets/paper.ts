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

export const titleCell = (label: string, says: string): TitleCell => ({ label, says, href: '', state: null });

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
