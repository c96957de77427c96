import type { Page as Rows } from '../../db/page.ts';
import type { ToolLine } from '../../db/tools.ts';
import { to } from '../addresses.ts';
import type { EmptyView, LinkView, PagerView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { KindForm } from './kinds/kind-form.ts';
import { stateOf } from './state.ts';

type ToolRows = { readonly kind: KindForm; readonly page: Rows<ToolLine> };

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Who has it and until when; names only for those who may see them. */
function loanWords({ row }: ToolLine, trusted: boolean): string {
  const due = row.due_on ? `due ${row.due_on}` : '';
  const who = row.here === 0 ? `lent to ${row.lent_to}` : row.owner === '' ? '' : `of ${row.owner}`;
  return [trusted ? who : '', due].filter((text) => text !== '').join(', ');
}

function rowOf(kind: KindForm, line: ToolLine, trusted: boolean) {
  const cell = (text: string) => ({ text, unit: '', href: '', state: null });
  const lacks = kind.kind === 'cutter' && kind.lacks(line.tool as never) !== '' ? 'offered for nothing yet' : '';
  const words = [kind.short(line.tool as never), loanWords(line, trusted), line.row.kept_in, lacks].filter((text) => text !== '');
  return {
    id: `tool-${line.row.id}`,
    cells: [
      { text: line.row.name, unit: '', href: to.tool(line.row.id), state: null },
      { text: '', unit: '', href: '', state: stateOf(line) },
      cell(words.join(' · ') || 'nothing more on record'),
    ],
  };
}

function tableOf({ kind, page }: ToolRows, trusted: boolean): TableView {
  return {
    title: '',
    heads: [
      { says: 'Tool', as: 'name' },
      { says: 'State', as: 'state' },
      { says: 'Known by', as: 'words' },
    ],
    rows: page.rows.map((line) => rowOf(kind, line, trusted)),
    empty: `No ${lower(kind.one)} on record yet.`,
  };
}

function sectionOf(rows: ToolRows, trusted: boolean) {
  const { kind, page } = rows;
  const more: LinkView[] = page.next === null ? [] : [{ says: `All ${lower(kind.many)}`, href: to.toolsOfKind(kind.kind) }];
  const add: LinkView[] = trusted ? [{ says: `Add: ${lower(kind.one)}`, href: to.toolNew(kind.kind) }] : [];
  return { title: kind.many, id: `kind-${kind.kind}`, table: tableOf(rows, trusted), links: [...more, ...add] };
}

const BESIDE: readonly LinkView[] = [
  { says: 'Shop machines: lathe, mill and their dials', href: to.shopMachines },
  { says: 'The shop’s own defaults', href: to.settings },
];

const nothing = (trusted: boolean): EmptyView => ({
  title: 'No tools yet',
  says: 'Put the form cutters on record first: what can be cut today hangs on them. Then the index plates, circle by circle, and the dividing head.',
  act: trusted ? { says: 'Add a form cutter', href: to.toolNew('cutter') } : null,
  drawing: '',
});

export function listView(all: readonly ToolRows[], trusted: boolean): PageData<'tools/list'> {
  const any = all.some(({ page }) => page.rows.length > 0);
  return {
    title: 'Tools',
    place: 'Tools',
    back: null,
    titleBlock: [],
    empty: any ? null : nothing(trusted),
    sections: all.filter(({ page }) => any || trusted || page.rows.length > 0).map((rows) => sectionOf(rows, trusted)),
    pager: null,
    links: BESIDE,
  };
}

export function kindView(kind: KindForm, page: Rows<ToolLine>, later: boolean, trusted: boolean): PageData<'tools/list'> {
  const pager: PagerView = {
    says: 'Newest first',
    earlier: later ? to.toolsOfKind(kind.kind) : '',
    later: page.next === null ? '' : to.toolsOfKind(kind.kind, page.next),
  };
  const section = sectionOf({ kind, page: { ...page, next: null } }, trusted);
  return {
    title: kind.many,
    place: 'Tools',
    back: { says: 'Tools', href: to.tools },
    titleBlock: [],
    empty: null,
    sections: [{ ...section, title: '' }],
    pager: later || page.next !== null ? pager : null,
    links: [],
  };
}
