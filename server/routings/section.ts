import type { Row } from '../../db/executor.ts';
import { leftOffOf } from '../../db/left-off.ts';
import type { OperationLine } from '../../db/operations.ts';
import { changesSince, replan, type Today } from '../../db/replan.ts';
import { openRoutingOf } from '../../db/routings.ts';
import { timeWords } from '../../lib/figure/time-words.ts';
import { keyWords } from '../../lib/routing/key-words.ts';
import { needWords } from '../../lib/routing/needs.ts';
import type { Need } from '../../lib/routing/operation.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { dayOf } from '../forms/date-field.ts';
import type { CellView, EmptyView, LinkView, TableView } from '../page.ts';
import type { Visit } from '../visit.ts';
import { gearsView } from './gears-view.ts';
import { leaveForm } from './leave-form.ts';
import { staleView } from './stale-view.ts';
import type { LeftOffView, OperationRow, RoutingSection, SetUpRows } from './view-model.ts';
import { firstOfAll, lackedBy, stateView } from './words.ts';

const rowOf = (line: OperationLine, at: number): OperationRow => ({
  id: `operation-${line.id}`,
  number: String(at + 1),
  title: line.title,
  href: to.operation(line.id),
  state: stateView(line),
  minutes: line.minutes_taken === null ? timeWords(line.minutes_planned) : `took ${timeWords(line.minutes_taken)}`,
  offered: line.must === 0 && line.key !== null,
});

/** Operations in order, a heading wherever the set-up changes. */
function bySetUp(lines: readonly OperationLine[]): SetUpRows[] {
  const groups: { key: string; says: string; rows: OperationRow[] }[] = [];
  for (const [at, line] of lines.entries()) {
    const last = groups.at(-1);
    if (last?.key === line.setUp.key) last.rows.push(rowOf(line, at));
    else groups.push({ key: line.setUp.key, says: line.setUp.says, rows: [rowOf(line, at)] });
  }
  return groups;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

function minutesOf(lines: readonly OperationLine[]): string {
  const live = lines.filter(({ state }) => state !== 'struck out');
  const done = live.filter(({ state }) => state === 'done');
  const planned = `Planned ${timeWords(sum(live.map((line) => line.minutes_planned)))}`;
  if (done.length === 0) return `${planned}; nothing is done yet.`;
  const timed = done.filter((line) => line.minutes_taken !== null);
  const took = timed.length === 0 ? '' : `; taken so far ${timeWords(sum(timed.map((line) => line.minutes_taken ?? 0)))}`;
  return `${planned}${took}; ${done.length} of ${live.length} done.`;
}

/** What to do about a tool that is lacking. One of no kind is known by the words in its name: they are said, and typed beforehand. */
function lackingCell(need: Need, trusted: boolean): CellView {
  if (need.kind !== 'other') return cell('nothing yet');
  const says = `nothing yet: any tool whose name holds ${keyWords(need.name).join(' and ')}`;
  return trusted ? linkCell(`${says}. Add one`, to.toolNew('other', need.name)) : cell(says);
}

/** Every need of the work still to be done, once, in the order in which it is needed, and the tool that meets it. */
export function needsTable(lines: readonly OperationLine[], title: string, of: 'one' | 'all', trusted: boolean): TableView | null {
  const open = lines.filter(({ state }) => state !== 'done' && state !== 'struck out');
  const all = open.flatMap((line) => line.needs.map((need) => ({ line, need, says: needWords(need.need) })));
  const once = all.filter((one, at) => all.findIndex(({ says }) => says === one.says) === at);
  if (once.length === 0) return null;
  return {
    title,
    heads: heads(['Needs', 'name'], ['State', 'state'], ['Met by', 'words'], ...(of === 'all' ? [['First at', 'words'] as const] : [])),
    rows: once.map(({ line, need, says }, at) => ({
      id: `need-${at}`,
      cells: [
        cell(says),
        stateCell(need.tool_id === null ? { kind: 'waits', says: 'waited for' } : { kind: 'here', says: 'here' }),
        need.tool_id === null ? lackingCell(need.need, trusted) : linkCell(need.tool_name ?? '', to.tool(need.tool_id)),
        ...(of === 'all' ? [cell(line.title)] : []),
      ],
    })),
    empty: '',
  };
}

function standingOf(lines: readonly OperationLine[]): string {
  const open = lines.filter(({ state }) => state !== 'done' && state !== 'struck out');
  if (lines.length > 0 && open.length === 0) return 'Everything is done: write the record.';
  const next = open.find(({ state }) => state === 'ready');
  const ready = next ? `Ready: ${next.title.charAt(0).toLowerCase()}${next.title.slice(1)}.` : '';
  return [firstOfAll(lackedBy(lines)), ready].filter((part) => part !== '').join(' ');
}

async function leftOff({ db, trusted }: Visit, row: Row<'routing'>, lines: readonly OperationLine[], back: string): Promise<LeftOffView> {
  const mark = await leftOffOf(db, row.id);
  const form = trusted && row.closed_on === null ? leaveForm(row.id, lines, mark?.operation_id ?? null, back) : null;
  if (!mark) return { says: '', note: '', href: '', form };
  const at = lines.find(({ id }) => id === mark.operation_id);
  return {
    says: `Left at ${at ? `“${at.title}”` : 'no operation in particular'} on ${dayOf(mark.at)}.`,
    note: trusted ? mark.note : '',
    href: at ? to.operation(at.id) : '',
    form,
  };
}

const nothing = (row: Row<'routing'>): EmptyView => ({
  title: 'No operations yet',
  says: `Nothing is worked out for “${row.way}”. Write down what has to be done, one operation after another.`,
  act: { says: 'Add an operation', href: to.operationNew(row.id, 0) },
  drawing: '',
});

function linksOf({ trusted }: Visit, row: Row<'routing'>, lines: readonly OperationLine[]): LinkView[] {
  const open = lines.filter(({ state }) => state !== 'done' && state !== 'struck out');
  const next = open.find(({ state, figures }) => state === 'ready' && figures.length > 0);
  const [nick, last] = [lines.find(({ key }) => key === 'nick'), lines.at(-1)];
  if (row.closed_on !== null) return [];
  return [
    ...(next ? [{ says: `At the machine: ${next.title}`, href: to.atMachine(next.id) }] : []),
    ...(lines.length > 0 ? [{ says: 'Print the route sheet', href: to.partSheet(row.part_id) }] : []),
    ...(nick ? [{ says: 'Print the index table, a box for every tooth', href: to.indexSheet(nick.id) }] : []),
    { says: 'What shares a set-up with other parts', href: to.setUps },
    ...(trusted
      ? [
          { says: 'Add an operation', href: to.operationNew(row.id, last?.id ?? 0) },
          { says: open.length === 0 ? 'Write the record' : 'Finish: made, or spoilt', href: to.routingFinish(row.id) },
          { says: 'Give this routing up', href: to.routingGiveUp(row.id) },
        ]
      : []),
  ];
}

/** A blank that will not do, and the way to another. */
const blankOf = ({ trusted }: Visit, row: Row<'routing'>): Pick<RoutingSection, 'blankFails' | 'chooseAnew'> => {
  const fails = row.closed_on === null && row.blank_fails !== '';
  return {
    blankFails: fails ? `Choose the blank anew. ${row.blank_fails}` : '',
    chooseAnew: fails && trusted ? { says: 'Give this blank back, and choose another', href: to.routingGiveUp(row.id) } : null,
  };
};

/** A ring on a hub is got by cutting a spare again, and made otherwise: its routing is called what it is. */
const wayWords = ({ way }: Row<'routing'>, lines: readonly OperationLine[]): string =>
  lines.some(({ key }) => key === 'bore-ring') ? 'ring and hub' : way;

/** One routing, open or closed. back: the path that its forms come back to. */
export async function sectionOf(visit: Visit, row: Row<'routing'>, today: Today, back: string): Promise<RoutingSection> {
  const { lines } = today;
  const way = wayWords(row, lines);
  return {
    title: row.closed_on === null ? `Routing: ${way}` : `Routing: ${way}, closed ${dayOf(row.closed_on)}`,
    says: row.closed_on === null ? standingOf(lines) : '',
    refusal: today.refusal,
    ...blankOf(visit, row),
    minutes: lines.length === 0 ? '' : minutesOf(lines),
    stale: staleView(changesSince(today), { routing: row, trusted: visit.trusted && row.closed_on === null, back }),
    groups: bySetUp(lines),
    empty: lines.length === 0 && visit.trusted ? nothing(row) : null,
    needs: needsTable(lines, 'Tooling it needs', 'all', visit.trusted),
    gears: gearsView(lines),
    leftOff: await leftOff(visit, row, lines, back),
    links: linksOf(visit, row, lines),
  };
}

/** The open routing of a part for its page; null when nothing is being made. */
export async function routingSection(visit: Visit, partId: number): Promise<RoutingSection | null> {
  const row = await openRoutingOf(visit.db, partId);
  return row ? sectionOf(visit, row, await replan(visit.db, row.id), to.part(partId)) : null;
}
