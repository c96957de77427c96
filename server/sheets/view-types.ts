import type { AtMachineView, ButtonView, LinkView, Page, PaperBlock } from '../page.ts';
import type { Layouts } from '../views.ts';
import type { IndexColumns } from './index-columns.ts';
import type { SheetOperation } from './operation-rows.ts';
import type { SummaryLine } from './summary.ts';
import type { PaperDrawing } from './wheel-drawing.ts';

type InLayout = Omit<Layouts['sheet-layout'], 'body'>;

/** A line of facts: what it is, what it says. */
export type FactView = { readonly key: string; readonly name: string; readonly text: string };

/** The index table of one part: what is set, and its rows. */
export type IndexBlock = {
  readonly id: string;
  readonly title: string;
  readonly facts: readonly FactView[];
  readonly proof: string;
  readonly clamp: string;
  readonly columns: IndexColumns;
};

/** What differs between parts: a line for each fact, a cell for each part. */
export type DiffersView = {
  readonly heads: readonly string[];
  readonly rows: readonly { readonly key: string; readonly name: string; readonly cells: readonly string[] }[];
};

/** The sheets on paper, and the count of teeth at the machine. */
export interface SheetViews {
  'sheets/route-sheet': InLayout & {
    heading: string;
    says: string;
    drawing: PaperDrawing | null;
    /** Gears that turn the plate. */
    gears: PaperDrawing | null;
    summary: readonly SummaryLine[];
    sides: readonly { readonly first: boolean; readonly rows: readonly SheetOperation[]; readonly paper: PaperBlock }[];
  };
  'sheets/index-sheet': InLayout & {
    heading: string;
    setUp: string;
    block: Omit<IndexBlock, 'columns'>;
    /** The circle with its sector; none where a dial is read. */
    plate: PaperDrawing | null;
    place: 'hole' | 'line';
    /** How far back to go past the lash. */
    lash: string;
    /** Facts that stand under the plate where the gears take the room of the others. */
    beside: readonly FactView[];
    /** Gears that turn the plate. */
    gears: PaperDrawing | null;
    sides: readonly { readonly first: boolean; readonly columns: IndexColumns; readonly paper: PaperBlock }[];
  };
  'sheets/set-up-sheet': InLayout & {
    heading: string;
    setUp: string;
    common: readonly FactView[];
    differs: DiffersView;
    cautions: readonly string[];
    sides: readonly { readonly first: boolean; readonly blocks: readonly IndexBlock[]; readonly paper: PaperBlock }[];
  };
  'sheets/index-columns': { columns: IndexColumns };
  'sheets/operations': { rows: readonly SheetOperation[] };
  'sheets/teeth': Page & {
    at: AtMachineView;
    cut: ButtonView | null;
    backOne: ButtonView | null;
    passes: readonly { readonly says: string; readonly href: string; readonly here: boolean; readonly counted: string }[];
    links: readonly LinkView[];
  };
}
