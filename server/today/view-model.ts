import type { LeftOff } from '../../db/bookmarks.ts';
import type { Page as Rows } from '../../db/page.ts';
import type { OpenWork, SharedSetUp } from '../../db/today.ts';
import { to } from '../addresses.ts';
import type { CellView, EmptyView, LinkView, Page, PagerView, StateView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import { gatherWaits } from './waits.ts';

export type LeftView = {
  readonly mark: string;
  readonly says: string;
  readonly note: string;
  readonly when: string;
  readonly href: string;
};

export interface TodayViews {
  'today/today': Page & {
    left: readonly LeftView[];
    ready: TableView | null;
    waits: TableView | null;
    shared: TableView | null;
    empty: EmptyView | null;
    pager: PagerView | null;
    links: readonly LinkView[];
  };
}

const cell = (text: string, href = '', state: StateView | null = null, unit = ''): CellView => ({ text, unit, href, state });

const leftView = (left: LeftOff, trusted: boolean): LeftView => ({
  mark: left.part_mark,
  says: left.operation_title ?? left.part_name,
  note: trusted ? left.note : '',
  when: left.at.slice(0, 10),
  href: left.operation_id === null ? to.part(left.part_id) : to.operation(left.operation_id),
});

/** withMore: some part has more than one thing ready. */
function readyRow(work: OpenWork, withMore: boolean) {
  const next = work.next;
  const more = work.ready > 1 ? `${work.ready - 1} more` : 'nothing else';
  return {
    id: `ready-${work.routing_id}`,
    cells: [
      cell(`${work.part_mark} · ${work.part_name}`, to.part(work.part_id)),
      cell('', '', { kind: 'ready', says: 'ready' }),
      cell(next?.title ?? '', next ? to.operation(next.operation_id) : ''),
      ...(withMore ? [cell(more)] : []),
      cell(`${work.done} of ${work.operations}`),
    ],
  };
}

/** Parts with something to do now; the nearest to being finished first. */
function readyTable(rows: readonly OpenWork[]): TableView | null {
  const ready = rows.filter((work) => work.next?.state === 'ready').sort((a, b) => b.done / b.operations - a.done / a.operations);
  if (ready.length === 0) return null;
  const withMore = ready.some((work) => work.ready > 1);
  return {
    title: '',
    heads: [
      { says: 'Part', as: 'name' },
      { says: 'State', as: 'state' },
      { says: 'Do this', as: 'words' },
      ...(withMore ? [{ says: 'Ready too', as: 'words' as const }] : []),
      { says: 'Done', as: 'figure' },
    ],
    rows: ready.map((work) => readyRow(work, withMore)),
    empty: '',
  };
}

function waitsTable(rows: readonly OpenWork[]): TableView | null {
  const gathered = gatherWaits(rows);
  if (gathered.length === 0) return null;
  return {
    title: '',
    heads: [
      { says: 'Waits for', as: 'name' },
      { says: 'State', as: 'state' },
      { says: 'Parts', as: 'words' },
      { says: 'First needed at', as: 'words' },
    ],
    rows: gathered.map((one, index) => ({
      id: `waits-${index}`,
      cells: [
        cell(one.says, one.href),
        cell('', '', { kind: one.held ? 'held' : 'waits', says: one.held ? 'held' : 'waits' }),
        cell(one.marks.join(', ')),
        cell(one.at),
      ],
    })),
    empty: '',
  };
}

/** Set-ups at a shop machine that several parts share, each with the sheet that serves them all. */
function sharedTable(shared: readonly SharedSetUp[]): TableView | null {
  const at = shared.filter(({ setUp }) => setUp.place === 'lathe' || setUp.place === 'mill');
  if (at.length === 0) return null;
  return {
    title: '',
    heads: [
      { says: 'Set-up sheet', as: 'name' },
      { says: 'Parts', as: 'words' },
    ],
    rows: at.map(({ setUpId, setUp, work }) => ({
      id: `set-up-${setUpId}`,
      cells: [
        cell(setUp.says, to.setUpSheet(work.map((line) => line.operation_id))),
        cell([...new Set(work.map((line) => line.part_mark))].join(', ')),
      ],
    })),
    empty: '',
  };
}

const nothing: EmptyView = {
  title: 'Nothing is being made',
  says: 'Open a set of change gears or a missing part, and choose how to get it. What can be done today then stands here.',
  act: { says: 'Go to the machines', href: to.machines },
  drawing: '',
};

/** trusted: may see what was noted to oneself. */
type TodayShown = {
  readonly work: Rows<OpenWork>;
  readonly left: readonly LeftOff[];
  readonly shared: readonly SharedSetUp[];
  readonly trusted: boolean;
};

export const todayView = ({ work, left, shared, trusted }: TodayShown): PageData<'today/today'> => ({
  title: 'Today',
  place: 'Today',
  back: null,
  titleBlock: [],
  left: left.map((one) => leftView(one, trusted)),
  ready: readyTable(work.rows),
  waits: waitsTable(work.rows),
  shared: sharedTable(shared),
  empty: work.rows.length === 0 ? nothing : null,
  pager: work.next === null ? null : { says: '', earlier: '', later: `${to.today}?before=${work.next}` },
  links: [
    { says: 'What was made', href: to.madeList },
    { says: 'Settings', href: to.settings },
    { says: 'Devices', href: to.devices },
  ],
});
