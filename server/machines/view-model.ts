import type { ButtonView, EmptyView, FormView, LinkView, Page, PagerView, TableView } from '../page.ts';

export interface MachineViews {
  /** sorts: the one in use has no href. */
  'machines/list': Page & {
    sorts: readonly LinkView[];
    table: TableView | null;
    empty: EmptyView | null;
    pager: PagerView | null;
    add: LinkView | null;
  };
  'machines/one': Page & {
    facts: readonly { readonly label: string; readonly says: string }[];
    notes: string;
    first: EmptyView | null;
    sets: TableView | null;
    parts: TableView | null;
    pager: PagerView | null;
    assemblies: TableView;
    made: TableView | null;
    links: readonly LinkView[];
    close: ButtonView | null;
  };
  'machines/form': Page & { says: string; form: FormView };
}
