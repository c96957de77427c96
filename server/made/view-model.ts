import type { EmptyView, FigureView, FormView, LinkView, Page, PagerView, TableView } from '../page.ts';

/** An operation as it was done. */
export type DoneView = {
  readonly title: string;
  readonly says: string;
  readonly figures: readonly FigureView[];
  readonly notes: string;
};

export interface MadeViews {
  'made/list': Page & { says: string; table: TableView | null; empty: EmptyView | null; pager: PagerView | null };
  'made/record': Page & {
    says: string;
    facts: readonly { readonly what: string; readonly says: string; readonly href: string }[];
    notes: string;
    measured: TableView | null;
    tools: TableView | null;
    operations: readonly DoneView[];
    links: readonly LinkView[];
  };
  'made/form': Page & { says: string; still: readonly string[]; form: FormView };
}
