import type { Page as Rows } from '../../db/page.ts';
import type { ProjectLine } from '../../db/projects.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import type { EmptyView, RowView, StateView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';

const SORTS = ['newest', 'name'] as const;
export type Sort = (typeof SORTS)[number];

/** How a machine is spoken of: its maker and model, else what it is. */
export const machineName = (row: { readonly make: string; readonly model: string; readonly what: string }): string =>
  [row.make, row.model].filter((word) => word !== '').join(' ') || row.what || 'Machine';

export const missingState = (missing: number, parts: number): StateView => {
  if (parts === 0) return { kind: 'waits', says: 'no parts yet' };
  return missing === 0 ? { kind: 'here', says: 'all there' } : { kind: 'missing', says: `${missing} missing` };
};

const stateOf = (row: ProjectLine): StateView =>
  row.closed_on === null ? missingState(row.missing, row.parts) : { kind: 'done', says: `done ${row.closed_on.slice(0, 10)}` };

const row = (one: ProjectLine): RowView => ({
  id: `machine-${one.id}`,
  cells: [
    linkCell(machineName(one), to.machine(one.id)),
    stateCell(stateOf(one)),
    cell(one.what),
    cell(String(one.parts)),
    cell(String(one.missing)),
    cell(String(one.open_routings)),
  ],
});

const table = (rows: readonly ProjectLine[]): TableView => ({
  title: '',
  heads: heads(
    ['Machine', 'name'],
    ['State', 'state'],
    ['What it is', 'words'],
    ['Parts', 'figure'],
    ['Missing', 'figure'],
    ['Being made', 'figure'],
  ),
  rows: rows.map(row),
  empty: '',
});

const nothing = (trusted: boolean): EmptyView => ({
  title: 'No machine yet',
  says: 'Begin with the one on your floor: its maker and model. Its change gears and what is missing from it come next.',
  act: trusted ? { says: 'Put your machine on record', href: to.machineNew } : null,
  drawing: '',
});

type Listed = { readonly page: Rows<ProjectLine>; readonly sort: Sort; readonly first: boolean; readonly trusted: boolean };

/** All machines under restoration. */
export function machinesView({ page, sort, first, trusted }: Listed): PageData<'machines/list'> {
  const any = page.rows.length > 0;
  const later = page.next === null ? '' : to.machinesBy(sort, page.next);
  return {
    title: 'Machines',
    place: 'Machines',
    back: null,
    titleBlock: [],
    sorts: any
      ? SORTS.map((one) => ({ says: one === 'name' ? 'Sort by name' : 'Sort by newest', href: one === sort ? '' : to.machinesBy(one) }))
      : [],
    table: any ? table(page.rows) : null,
    empty: any ? null : nothing(trusted),
    pager: first && !later ? null : { says: '', earlier: first ? '' : to.machinesBy(sort), later },
    add: any && trusted ? { says: 'Put another machine on record', href: to.machineNew } : null,
  };
}
