/**
 * What the templates are given: types only. Every string here is finished: escaped by the template, never worked on there.
 * An empty string or null means "there is none"; nothing is ever left undefined.
 */

/** Text that is already HTML or SVG and may be placed as it is. Made only where the server writes markup itself. */
export type Markup = string & { readonly is: 'markup' };

export type LinkView = { readonly says: string; readonly href: string };

/** The line kinds and signs of LOOK: the same in drawings, borders and on paper, always with the word beside. */
export type StateKind = 'here' | 'missing' | 'spare' | 'doubtful' | 'waits' | 'held' | 'ready' | 'done' | 'old' | 'off';
export type StateView = { readonly kind: StateKind; readonly says: string };

/** The five places of the bar. */
export type Place = 'Today' | 'Machines' | 'Drawer' | 'Tools' | 'Sums';

/** One ruled cell of the title block: Machine, Part, State or Mark. href and state may be '' and null. */
export type TitleCell = { readonly label: string; readonly says: string; readonly href: string; readonly state: StateView | null };

/** A line that tells what has just happened. `act` is a way back, if there is one. */
export type NoticeView = { readonly kind: 'saved' | 'problem'; readonly says: string; readonly act: LinkView | null };

/** Common to all pages; one hook fills it in. */
export type Furniture = {
  readonly places: readonly { readonly says: Place; readonly href: string }[];
  readonly searchHref: string;
  readonly searchText: string;
  readonly styles: readonly string[];
  readonly script: string;
  readonly icon: string;
  readonly shopName: string;
  readonly version: string;
  /** True while the invented shop is open; demoOut leads back to one's own. */
  readonly demo: boolean;
  readonly demoOut: LinkView | null;
  /** False on a device that may look but not change; `lookOnly` then says how to pair it. */
  readonly canChange: boolean;
  readonly lookOnly: LinkView | null;
  readonly notice: NoticeView | null;
};

/** What each page says about itself. `place` is '' on pages that stand outside the five places. */
export type PageHead = {
  readonly title: string;
  readonly place: Place | '';
  readonly back: LinkView | null;
  readonly titleBlock: readonly TitleCell[];
};

export type Page = Furniture & PageHead;

/** What a page hands over itself: its whole data without the furniture. */
export type WithoutFurniture<T> = Omit<T, keyof Furniture>;

// ---- figures --------------------------------------------------------------------------------------------------------------

export type GivenView = {
  readonly symbol: string;
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  /** "typed", "measured", "table", "worked out", "guess", with where when known: "table, cutter list". */
  readonly from: string;
};

/** How a figure was reached. Any of the strings may be ''. */
export type WorkingView = {
  /** The whole line: "Do = (N + 2) ÷ P". */
  readonly formula: string;
  readonly given: readonly GivenView[];
  readonly source: string;
  readonly error: string;
  readonly limits: string;
  readonly note: string;
};

export type FigureView = {
  /** Unique on the page: the anchor, and what tests read by. */
  readonly key: string;
  readonly name: string;
  readonly symbol: string;
  readonly text: string;
  readonly unit: string;
  readonly other: string;
  /** True when `text` is words, such as "1 turn + 27 spaces on 33": set smaller, on as many lines as it needs. */
  readonly words: boolean;
  readonly mark: '' | 'typed' | 'measured';
  /** The old printed figure when this one has changed since; `revision` then numbers the triangle. */
  readonly was: string;
  readonly revision: string;
  /** Limits in short, "2.980 to 3.000 in", shown beside the figure; '' if none. */
  readonly limits: string;
  readonly working: WorkingView | null;
};

export type CautionView = {
  readonly name: string;
  readonly says: string;
  readonly weight: 'note' | 'beware' | 'danger';
  /** "Danger", "Beware" or "Note": the word first. */
  readonly word: string;
};

export type AnswerView = {
  readonly says: string;
  readonly figures: readonly FigureView[];
  readonly cautions: readonly CautionView[];
  readonly tables: readonly TableView[];
};

// ---- tables ---------------------------------------------------------------------------------------------------------------

/** name and state stand on the upper line at 360 px; figures, words and acts on the lower. */
export type ColumnKind = 'name' | 'state' | 'figure' | 'words';
export type HeadView = { readonly says: string; readonly as: ColumnKind };
export type CellView = { readonly text: string; readonly unit: string; readonly href: string; readonly state: StateView | null };
export type RowView = { readonly id: string; readonly cells: readonly CellView[] };
/** `empty` stands in place of the rows when there are none. */
export type TableView = {
  readonly title: string;
  readonly heads: readonly HeadView[];
  readonly rows: readonly RowView[];
  readonly empty: string;
};

export type PagerView = { readonly says: string; readonly earlier: string; readonly later: string };

// ---- forms ----------------------------------------------------------------------------------------------------------------

export type ChoiceView = { readonly value: string; readonly says: string; readonly hint: string; readonly chosen: boolean };

/**
 * line: one line of text; area: several lines; list: a drop-down; rows: one of a few, each a row to touch; ticks: any of a few.
 * inputmode 'decimal' for sizes, 'numeric' for counts. `unit` stands in a cell of its own on the right. `problem` is '' when all is well.
 */
export type FieldView = {
  readonly kind: 'line' | 'area' | 'list' | 'rows' | 'ticks';
  readonly name: string;
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  readonly hint: string;
  readonly problem: string;
  readonly inputmode: 'text' | 'decimal' | 'numeric';
  readonly choices: readonly ChoiceView[];
};

export type HiddenView = { readonly name: string; readonly value: string };

/** A group has a heading of its own when `legend` is not ''. `folded` groups open on touch, and stand open when they hold a problem. */
export type FieldGroup = {
  readonly legend: string;
  readonly hint: string;
  readonly folded: boolean;
  readonly fields: readonly FieldView[];
};

/** `hidden` carries the form's one-time mark, the revision and the like. `confirm` is asked by the script before sending; '' for none. */
export type FormView = {
  readonly id: string;
  readonly action: string;
  readonly method: 'get' | 'post';
  readonly hidden: readonly HiddenView[];
  readonly problem: string;
  readonly groups: readonly FieldGroup[];
  /** '' where nothing can be sent any more, and what was typed is only given back. */
  readonly act: string;
  readonly kind: 'main' | 'stop';
  readonly confirm: string;
  readonly back: LinkView | null;
};

/** A single button that posts, such as "Mark done". */
export type ButtonView = {
  readonly action: string;
  readonly hidden: readonly HiddenView[];
  readonly says: string;
  readonly kind: 'main' | 'other' | 'stop';
  readonly confirm: string;
};

export type ConflictRow = {
  readonly name: string;
  readonly label: string;
  readonly differs: boolean;
  /** Which of the two is chosen until another is. */
  readonly stands: 'yours' | 'theirs';
  readonly yours: HiddenView & { readonly says: string };
  readonly theirs: HiddenView & { readonly says: string };
};

// ---- other pieces ---------------------------------------------------------------------------------------------------------

/** An empty page: what will stand here, and the first step to it. drawing '' gives the dashed wheel. */
export type EmptyView = { readonly title: string; readonly says: string; readonly act: LinkView | null; readonly drawing: Markup | '' };

/** `links` are for instance "DXF" and "Full size". */
export type DrawingView = { readonly title: string; readonly svg: Markup; readonly says: string; readonly links: readonly LinkView[] };

/** The page at the machine: one number in the dial's own unit. */
export type AtMachineView = {
  readonly step: string;
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  readonly words: boolean;
  readonly limits: string;
  readonly says: string;
  readonly caution: CautionView | null;
  readonly earlier: LinkView | null;
  readonly later: LinkView | null;
};

/** An index table on paper: "Tooth", "Hole", "Cut" over rows in columns side by side. */
export type TicksView = {
  readonly what: string;
  readonly where: string;
  readonly tick: string;
  readonly columns: readonly (readonly { readonly what: string; readonly where: string }[])[];
};

/** The title block of a printed sheet; `qr` is drawn, and `mark` stands beside it in letters. */
export type PaperBlock = {
  readonly cells: readonly TitleCell[];
  readonly mark: string;
  readonly qr: Markup | '';
  readonly address: string;
  readonly printedOn: string;
  readonly sheetOf: string;
};
