import type { Row } from '../../db/executor.ts';
import { PITCH_UNKNOWN } from '../../db/gears.ts';
import type { MadeLine } from '../../db/made.ts';
import type { Page as Rows } from '../../db/page.ts';
import type { PartLine } from '../../db/parts.ts';
import type { ProjectLine } from '../../db/projects.ts';
import type { SetLine } from '../../db/sets.ts';
import { gearWords } from '../../lib/drawing/gear-drawing.ts';
import { to } from '../addresses.ts';
import { cell, counted, heads, linkCell, stateCell } from '../cells.ts';
import { formMark } from '../once.ts';
import type { ButtonView, EmptyView, LinkView, RowView, StateView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import { assemblyPath } from './forms.ts';
import { machineName, missingState } from './list-view.ts';

/** Everything on one machine. parts: one page of them, the missing ones first. */
export type MachineShown = {
  readonly project: ProjectLine;
  readonly assemblies: readonly Row<'assembly'>[];
  readonly sets: readonly SetLine[];
  readonly parts: Rows<PartLine>;
  readonly firstPage: boolean;
  readonly made: Rows<MadeLine>;
  readonly trusted: boolean;
};

/** How a part stands: there, being made, done without, or missing. */
export function partState(part: Pick<PartLine, 'item_id' | 'routing_id' | 'way'>): StateView {
  if (part.item_id !== null) return { kind: 'here', says: 'here' };
  if (part.routing_id !== null) return { kind: 'waits', says: 'being made' };
  return part.way === 'do without' ? { kind: 'missing', says: 'done without' } : { kind: 'missing', says: 'missing' };
}

function knownBy({ stored, unknown, material }: PartLine): string {
  if (stored) return gearWords(stored.gear);
  return unknown ? `${unknown.gear.teeth} teeth, ${PITCH_UNKNOWN}` : material || '–';
}

const partRow =
  (assemblies: readonly Row<'assembly'>[]) =>
  (part: PartLine): RowView => ({
    id: `part-${part.id}`,
    cells: [
      linkCell(`${part.mark} · ${part.name}`, to.part(part.id)),
      stateCell(partState(part)),
      cell(knownBy(part)),
      cell(assemblyPath(assemblies, part.assembly_id)),
    ],
  });

const partsTable = ({ parts, assemblies }: MachineShown): TableView => ({
  title: '',
  heads: heads(['Part', 'name'], ['State', 'state'], ['What', 'words'], ['Assembly', 'words']),
  rows: parts.rows.map(partRow(assemblies)),
  empty: 'No part is on record yet.',
});

const setsTable = ({ sets, assemblies }: MachineShown): TableView => ({
  title: '',
  heads: heads(['Set', 'name'], ['State', 'state'], ['Sets', 'words'], ['Wheels', 'figure'], ['Assembly', 'words']),
  rows: sets.map((set) => ({
    id: `set-${set.id}`,
    cells: [
      linkCell(set.name, to.set(set.id)),
      stateCell(missingState(set.missing, set.belong)),
      cell(set.sets),
      cell(String(set.belong)),
      cell(assemblyPath(assemblies, set.assembly_id)),
    ],
  })),
  empty: 'No change-gear set is on record yet.',
});

/** A note may hold a name or a price: it is for those who may see them. */
const assembliesTable = ({ assemblies, trusted }: MachineShown): TableView => ({
  title: '',
  heads: heads(['Assembly', 'name'], ['Serial number', 'words'], ...(trusted ? [['Notes', 'words'] as const] : [])),
  rows: [...assemblies]
    .map((row) => ({ row, path: assemblyPath(assemblies, row.id) }))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ row, path }) => ({
      id: `assembly-${row.id}`,
      cells: trusted
        ? [linkCell(path, to.assemblyEdit(row.id)), cell(row.serial || '–'), cell(row.notes || '–')]
        : [cell(path), cell(row.serial || '–')],
    })),
  empty: 'Not divided into assemblies yet.',
});

const madeTable = ({ made }: MachineShown): TableView => ({
  title: '',
  heads: heads(['Made', 'name'], ['State', 'state'], ['On', 'words']),
  rows: made.rows.map((one) => ({
    id: `made-${one.id}`,
    cells: [
      linkCell(`${one.part_mark} ${one.part_name}`, to.made(one.id)),
      stateCell(one.outcome === 'good' ? { kind: 'done', says: 'good' } : { kind: 'off', says: 'scrap' }),
      cell(one.finished_on.slice(0, 10)),
    ],
  })),
  empty: 'Nothing has been made for it yet.',
});

const openOrClose = ({ id, rev, closed_on }: ProjectLine): ButtonView => ({
  action: closed_on === null ? to.machineClose(id) : to.machineReopen(id),
  hidden: [{ name: 'rev', value: String(rev) }, formMark()],
  says: closed_on === null ? 'The machine is done: put it away' : 'Take it up again',
  kind: 'other',
  confirm: '',
});

function factsOf({ project }: MachineShown): { label: string; says: string }[] {
  const named = [
    ['What it is', project.what],
    ['Size', project.size],
    ['Year, as known', project.year],
    ['Serial number', project.serial],
  ] as const;
  return named.filter(([, says]) => says !== '').map(([label, says]) => ({ label, says }));
}

const firstStep = ({ id }: ProjectLine, trusted: boolean): EmptyView => ({
  title: 'What belongs to it?',
  says: 'Write down its change gears in one line, as the plate on the door lists them, and in a second what lies in the drawer. Single parts come the same way.',
  act: trusted ? { says: 'Add its change gears', href: to.setNew(id) } : null,
  drawing: '',
});

const waysOn = ({ id }: ProjectLine): LinkView[] => [
  { says: 'Add a change-gear set', href: to.setNew(id) },
  { says: 'Add a part', href: to.partNew(id) },
  { says: 'Add an assembly', href: to.assemblyNew(id) },
  { says: 'Change what is said of the machine', href: to.machineEdit(id) },
];

/** One machine under restoration. */
export function machineView(shown: MachineShown): PageData<'machines/one'> {
  const { project, parts, sets, firstPage, trusted } = shown;
  const bare = project.parts === 0 && sets.length === 0;
  const later = parts.next === null ? '' : to.machineParts(project.id, parts.next);
  const state: StateView =
    project.closed_on === null
      ? missingState(project.missing, project.parts)
      : { kind: 'done', says: `done ${project.closed_on.slice(0, 10)}` };
  return {
    title: machineName(project),
    place: 'Machines',
    back: { says: 'Machines', href: to.machines },
    titleBlock: [
      { label: 'Machine', says: project.what || machineName(project), href: '', state: null },
      { label: 'Parts', says: counted(project.parts, 'part'), href: '', state: null },
      { label: 'State', says: state.says, href: '', state },
      { label: 'Mark', says: project.mark, href: '', state: null },
    ],
    facts: factsOf(shown),
    notes: trusted ? project.notes : '',
    first: bare ? firstStep(project, trusted) : null,
    sets: bare ? null : setsTable(shown),
    parts: bare ? null : partsTable(shown),
    pager: firstPage && !later ? null : { says: '', earlier: firstPage ? '' : to.machine(project.id), later },
    assemblies: assembliesTable(shown),
    made: bare ? null : madeTable(shown),
    links: trusted ? waysOn(project) : [],
    close: trusted ? openOrClose(project) : null,
  };
}
