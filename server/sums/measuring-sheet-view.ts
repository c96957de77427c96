import { remembered } from '../../db/remembered.ts';
import { measuringDrawing } from '../../lib/drawing/measuring-drawing.ts';
import { firstSpanCount } from '../../lib/identify/first-span.ts';
import { to } from '../addresses.ts';
import { toSvg } from '../drawing/svg.ts';
import type { LinkView, Markup, PaperBlock } from '../page.ts';
import { onSheet, type Printed, paperBlock, titleCell } from '../sheets/paper.ts';
import type { Layouts } from '../views.ts';

/** One thing to measure: its letter in the drawing, what, how, and boxes for the reading and for how far it may be off. */
type MeasureRow = {
  readonly letter: string;
  readonly what: string;
  readonly how: string;
  /** A second thing to write down: the pin, the teeth of the mate; '' where there is none. */
  readonly also: string;
  readonly off: boolean;
};

export type MeasuringSheet = Omit<Layouts['sheet-layout'], 'body'> & {
  readonly heading: string;
  readonly drawing: Markup;
  readonly rows: readonly MeasureRow[];
  readonly blanks: readonly string[];
  readonly paper: PaperBlock;
};

/** Whose wheel the sheet is for; leadsTo and mark are empty where it is nobody's of this shop. */
export type SheetFor = {
  readonly teeth: number | null;
  readonly what: string;
  readonly mark: string;
  readonly leadsTo: string;
  readonly back: LinkView;
};

const row = (letter: string, what: string, how: string, also = '', off = true): MeasureRow => ({ letter, what, how, also, off });

const spanWords = (teeth: number | null): readonly [string, string] => {
  if (teeth === null) return ['Span over some teeth', 'Span over one tooth more'];
  const k = firstSpanCount(teeth);
  return [`Span over ${k} ${k === 1 ? 'tooth' : 'teeth'}`, `Span over ${k + 1} teeth`];
};

function rowsFor(teeth: number | null): MeasureRow[] {
  const [short, long] = spanWords(teeth);
  const some = teeth === null ? 'Over as many as teeth ÷ 12, rounded up. ' : '';
  return [
    row('–', 'Teeth', teeth === null ? 'Count twice, from a chalk mark.' : `${teeth} by our count. Please count yours twice.`, '', false),
    row('A', 'Outside diameter', 'Over opposite tips, jaws flat across several tips. Of an odd count say so.'),
    row('B', 'Root diameter', 'Across opposite bottoms, thin jaws. Only where the count is even.'),
    row('C', 'Depth of a space', 'Tip to bottom, with a depth gauge or the tail of the caliper.'),
    row('D', short, `${some}Jaws square to the wheel, closed on the flanks: the least of a few places.`, teeth === null ? 'over' : ''),
    row('E', long, 'The same place, one more tooth between the jaws.', teeth === null ? 'over' : ''),
    row('F', 'Over two pins', 'In opposite spaces, or nearly so. Pin about 1.7 × A ÷ (teeth + 2).', 'pin'),
    row('G', 'Centre distance', 'If it stands with its mate: from shaft to shaft, middle to middle.', 'mate’s teeth'),
    row('H', 'Lean of a print', 'Ink the teeth, roll them along a straight edge. Straight teeth: 0°.', 'hand'),
  ];
}

/** The same on every sheet: drawn for the first one. */
const drawn = remembered<Markup>();
const whereToMeasure = (): Markup => drawn('', () => toSvg(measuringDrawing(), { toScale: 'paper' }) as Markup);

const BLANKS = [
  'Bore, and its keyway or splines',
  'Face (width of the teeth)',
  'Stamped on it',
  'From which machine, and where in it',
  'Measured with, by, on',
  'Please return to',
];

/** One side of paper on which the owner of a wheel, here or elsewhere, writes down what it reads. */
export function measuringSheet({ teeth, what, mark, leadsTo, back }: SheetFor, printed: Printed): MeasuringSheet {
  const sheet = onSheet(`Measuring sheet ${what}`.trim(), back);
  const block = paperBlock({ cells: [titleCell('Wheel', what || 'a gear of unknown pitch')], mark, leadsTo }, printed, 1, 1);
  return {
    ...sheet,
    styles: [...sheet.styles, to.asset('measuring.css')],
    heading: 'What gear is this? Measuring sheet',
    drawing: whereToMeasure(),
    rows: rowsFor(teeth),
    blanks: BLANKS,
    paper: leadsTo === '' ? { ...block, qr: '', address: '' } : block,
  };
}
