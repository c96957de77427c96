import type { DrawerPage } from '../../db/drawer.ts';
import type { ItemLine } from '../../db/items.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { read, unread } from '../../lib/values/read.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { choiceField, optional, readField, tickField } from '../forms/field.ts';
import { fieldGroup } from '../forms/field-view.ts';
import { type FoldedForm, foldedForm } from '../forms/folded-form.ts';
import type { Problems, Typed } from '../forms/form.ts';
import type { EmptyView, FormView, LinkView, PagerView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import { ITEM_KINDS, KIND_WORDS } from './forms.ts';
import { itemKnownBy, itemName, itemState } from './item-words.ts';

/** What the list may be asked for, and where a page of it begins. */
export const askFields = {
  kind: optional(choiceField({ label: 'Show', choices: ITEM_KINDS.map((kind) => [kind, KIND_WORDS[kind].many] as const) })),
  pitch: optional(readField({ label: 'Pitch', hint: 'As 8 DP, module 2.5 or 5/16 CP', read: (text) => readPitch(text) })),
  spares: tickField({ label: 'Spares only' }),
  gone: tickField({ label: 'What is gone instead' }),
  by: choiceField({
    label: 'In order of',
    choices: [
      ['teeth', 'teeth'],
      ['newest', 'newest first'],
    ],
  }),
  after: optional(
    readField({
      label: 'After',
      read: (text) => {
        const found = /^(\d{1,7})\.([1-9]\d{0,14})$/.exec(text);
        return found ? read({ teeth: Number(found[1]), id: Number(found[2]) }) : unread('This page of the list is not known.');
      },
    }),
  ),
};

const SHOWN = ['kind', 'pitch', 'spares', 'gone', 'by'] as const;

type Listing = {
  readonly page: DrawerPage | null;
  readonly typed: Typed;
  readonly problems: Problems;
  readonly empty: boolean;
  readonly trusted: boolean;
};

const rowOf = (line: ItemLine) => ({
  id: `item-${line.id}`,
  cells: [
    linkCell(itemName(line), to.item(line.id)),
    stateCell(itemState(line)),
    cell(
      [`no. ${line.id}`, itemKnownBy(line), line.trust === 'unknown' ? '' : line.trust, line.kept_in]
        .filter((text) => text !== '')
        .join(' · '),
    ),
  ],
});

const tableOf = (page: DrawerPage): TableView => ({
  title: '',
  heads: heads(['Thing', 'name'], ['State', 'state'], ['Known by', 'words']),
  rows: page.rows.map(rowOf),
  empty: 'Nothing in the drawer is like that.',
});

const asked = (typed: Typed): Record<string, string> =>
  Object.fromEntries(SHOWN.flatMap((name) => (typed[name] ? [[name, typed[name]] as const] : [])));

function pagerOf({ page, typed }: Listing): PagerView | null {
  const again = asked(typed);
  const first = !typed['after'];
  if (!page || (first && page.next === null)) return null;
  const by = typed['by'] === 'newest' ? 'newest first' : 'by their teeth';
  return {
    says: by.charAt(0).toUpperCase() + by.slice(1),
    earlier: first ? '' : to.drawerBy(again),
    later: page.next ? to.drawerBy({ ...again, after: `${page.next.teeth}.${page.next.id}` }) : '',
  };
}

/** In the way of the list as little as may be: folded while nothing special is asked for. */
function filterForm({ typed, problems }: Listing): FoldedForm {
  const special = ['kind', 'pitch', 'spares', 'gone'].some((name) => (typed[name] ?? '') !== '') || typed['by'] === 'newest';
  const form: FormView = {
    id: 'filter',
    action: to.drawer,
    method: 'get',
    hidden: [],
    problem: '',
    groups: [fieldGroup('', askFields, typed, problems, SHOWN)],
    act: 'Show',
    kind: 'main',
    confirm: '',
    back: special ? { says: 'Show all', href: to.drawer } : null,
  };
  return foldedForm('Show only some, or in another order', form, special);
}

const EMPTY: EmptyView = {
  title: 'The drawer is empty',
  says: 'Tip out the loose wheels and count their teeth: one line puts them all in, as 19x2, 22, 25-31 odd. Bars and castings go in by themselves.',
  act: null,
  drawing: '',
};

const ADDS: readonly LinkView[] = [
  { says: 'Put in loose wheels by one line', href: to.drawerQuick },
  { says: 'Add a wheel with its sizes', href: to.itemNew('wheel') },
  { says: 'Add a bar of stock', href: to.itemNew('stock') },
  { says: 'Add a casting', href: to.itemNew('casting') },
  { says: 'Add something else', href: to.itemNew('other') },
];

export function listView(listing: Listing): PageData<'drawer/list'> {
  const { page, empty, trusted } = listing;
  return {
    title: 'Drawer',
    place: 'Drawer',
    back: null,
    titleBlock: [],
    empty: empty ? { ...EMPTY, act: trusted ? (ADDS[0] ?? null) : null } : null,
    filter: empty ? null : filterForm(listing),
    table: page && !empty ? tableOf(page) : null,
    pager: pagerOf(listing),
    adds: trusted ? (empty ? ADDS.slice(1) : ADDS) : [],
  };
}
