import type { AnswerView, CautionView, DrawingView, EmptyView, FigureView, FormView, LinkView, Page, TableView } from '../page.ts';
import type { ChartView } from './chart.ts';

/** A missing wheel: what it would be cut from, drawn and figured, and every spare held against it. */
export type BlankView = {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly drawing: DrawingView | null;
  /** The few to look at first; `more` is folded behind them. */
  readonly figures: readonly FigureView[];
  readonly more: readonly FigureView[];
  readonly cautions: readonly CautionView[];
  readonly spares: TableView;
};

/** says: what becomes what. forced: what comes of the pair that was asked for, and the first rule that it breaks. */
export type BlanksView = {
  readonly says: string;
  readonly forced: string;
  readonly wheels: readonly BlankView[];
  readonly open: FormView | null;
  readonly force: FormView | null;
};

export type CostView = { readonly refusal: string; readonly drawing: DrawingView | null; readonly answer: AnswerView | null };

export interface SetViews {
  'sets/one': Page & {
    says: string;
    problem: string;
    first: EmptyView | null;
    /** The same wheels hung for a phone and for a desk; one of them is shown. */
    drawings: { readonly phone: DrawingView; readonly desk: DrawingView } | null;
    wheels: TableView | null;
    cost: CostView | null;
    blanks: BlanksView | null;
    /** Threads, feeds or leads that the machine's chart lists, with today's drawer. */
    chart: ChartView | null;
    notes: string;
    links: readonly LinkView[];
  };
  'sets/form': Page & { says: string; links: readonly LinkView[]; form: FormView };
}
