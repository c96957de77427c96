import type { Page as Rows } from '../../db/page.ts';
import type { Found, FoundKind } from '../../db/search.ts';
import { to } from '../addresses.ts';
import type { EmptyView, Page, PagerView, TableView } from '../page.ts';
import type { Sum } from '../sums/sum.ts';
import type { PageData } from '../views.ts';

export interface SearchViews {
  'search/results': Page & {
    says: string;
    table: TableView | null;
    sums: TableView | null;
    empty: EmptyView | null;
    pager: PagerView | null;
  };
}

const KINDS: Readonly<Record<FoundKind, { readonly says: string; readonly href: (ref: number) => string }>> = {
  project: { says: 'machine under restoration', href: to.machine },
  part: { says: 'part', href: to.part },
  item: { says: 'in the drawer', href: to.item },
  tool: { says: 'tool', href: to.tool },
  machine: { says: 'shop machine', href: to.shopMachine },
  made: { says: 'made record', href: to.made },
};

const row = (found: Found) => ({
  id: `found-${found.at}`,
  cells: [
    { text: found.title, unit: '', href: KINDS[found.kind].href(found.ref), state: null },
    { text: `${KINDS[found.kind].says}${found.kind === 'item' ? `, no. ${found.ref}` : ''}`, unit: '', href: '', state: null },
  ],
});

const nothing = (typed: string): EmptyView => ({
  title: typed ? 'Nothing holds these words' : 'What are you looking for?',
  says: 'Type the beginning of a word: a maker, a tooth count, a cutter, or the mark on a tag such as H12-22T.',
  act: null,
  drawing: '',
});

const sumRow = (sum: Sum) => ({
  id: '',
  cells: [
    { text: sum.title, unit: '', href: to.sum(sum.path), state: null },
    { text: sum.tells, unit: '', href: '', state: null },
  ],
});

const sumTable = (sums: readonly Sum[]): TableView => ({
  title: 'Sums',
  heads: [
    { says: 'Sum', as: 'name' },
    { says: 'What it tells', as: 'words' },
  ],
  rows: sums.map(sumRow),
  empty: '',
});

export function searchView(typed: string, { rows, next }: Rows<Found>, sums: readonly Sum[]): PageData<'search/results'> {
  const table: TableView = {
    title: '',
    heads: [
      { says: 'Found', as: 'name' },
      { says: 'What it is', as: 'words' },
    ],
    rows: rows.map(row),
    empty: '',
  };
  const any = rows.length > 0;
  return {
    title: typed ? `Found for “${typed}”` : 'Search',
    place: '',
    back: null,
    titleBlock: [],
    says: any ? 'Newest first.' : '',
    table: any ? table : null,
    sums: sums.length > 0 ? sumTable(sums) : null,
    empty: any || sums.length > 0 ? null : nothing(typed),
    pager:
      next === null ? null : { says: '', earlier: '', later: `${to.search}?${new URLSearchParams({ q: typed, before: String(next) })}` },
  };
}
