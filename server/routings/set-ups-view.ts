import type { SharedSetUp as SharedLines, WorkLine } from '../../db/today.ts';
import type { KeyedWork } from '../../db/work-operations.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { timeWords } from '../../lib/figure/time-words.ts';
import { type Holding, holdingFor } from '../../lib/planning/holding.ts';
import { statesOf } from '../../lib/planning/states.ts';
import type { OperationState } from '../../lib/planning/work.ts';
import { type PlannedPart, sharedSetUps as whatDiffers } from '../../lib/routing/shared-set-ups.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import type { EmptyView, StateView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { SharedView } from './view-model.ts';

type Differing = ReturnType<typeof whatDiffers>[number];

type Planning = {
  readonly operations: readonly KeyedWork[];
  readonly states: ReadonlyMap<number, OperationState>;
  /** What keeping an operation of a part back would mean, asked of any other. */
  readonly holding: (hold: number, partId: number) => (heldFor: number) => Holding;
};

const STATES: Readonly<Record<WorkLine['state'], StateView>> = {
  ready: { kind: 'ready', says: 'ready' },
  waiting: { kind: 'waits', says: 'waits' },
  held: { kind: 'held', says: 'held' },
  done: { kind: 'done', says: 'done' },
  'struck out': { kind: 'off', says: 'struck out' },
};

const workTable = (work: readonly WorkLine[]): TableView => ({
  title: 'What is done in it',
  heads: heads(['Operation', 'name'], ['State', 'state'], ['Part', 'words'], ['Time', 'figure']),
  rows: work.map((line) => ({
    id: `work-${line.operation_id}`,
    cells: [
      linkCell(line.title, to.operation(line.operation_id)),
      stateCell(STATES[line.state]),
      cell(line.part_mark),
      cell(timeWords(line.minutes_planned)),
    ],
  })),
  empty: '',
});

/** One line for each thing that is changed from part to part. */
function differsTable(setUpId: number, differing: Differing | undefined): TableView {
  const parts = differing?.parts ?? [];
  const names = [...new Set(parts.flatMap(({ figures }) => figures.map(({ key }) => key)))];
  const nameOf = (key: string): string => parts.flatMap(({ figures }) => figures).find((one) => one.key === key)?.name ?? key;
  const row = (id: string, name: string, shown: readonly string[]) => ({ id, cells: [cell(name), ...shown.map((text) => cell(text))] });
  const tools = parts.some(({ needs }) => needs.length > 0)
    ? [
        row(
          `differs-${setUpId}-tools`,
          'tools',
          parts.map(({ needs }) => needs.join(', ') || 'none more'),
        ),
      ]
    : [];
  const figures = names.map((key, at) =>
    row(
      `differs-${setUpId}-${at}`,
      nameOf(key),
      parts.map((one) => one.figures.find((other) => other.key === key)?.shown ?? '–'),
    ),
  );
  return {
    title: 'What differs',
    heads: heads(['Set', 'name'], ...parts.map(({ mark }) => [mark, 'words'] as const)),
    rows: [...tools, ...figures],
    empty: 'Nothing: both are done alike.',
  };
}

function commonWords(differing: Differing | undefined): string {
  const { needs = [], figures = [] } = differing?.common ?? {};
  return [...needs, ...figures.map(({ name, shown }) => `${name} ${shown}`)].join(' · ');
}

/** The work of one part in a set-up, in order. */
type Mine = { readonly partId: number; readonly mark: string; readonly lines: readonly KeyedWork[] };

function byPart(work: readonly WorkLine[], operations: readonly KeyedWork[]): Mine[] {
  const parts = new Map(work.map((line) => [line.part_id, line.part_mark]));
  return [...parts].map(([partId, mark]) => {
    const ids = work.filter((line) => line.part_id === partId).map((line) => line.operation_id);
    return { partId, mark, lines: operations.filter(({ id }) => ids.includes(id)) };
  });
}

/** The first operation at which all is lacking that the part lacks in this set-up: what the other would have to wait for. */
function lackingMost({ lines }: Mine, states: ReadonlyMap<number, OperationState>): KeyedWork | undefined {
  const lacks = ({ id }: KeyedWork): number => states.get(id)?.waits.filter((wait) => wait.for === 'tool').length ?? 0;
  return [...lines].sort((a, b) => lacks(b) - lacks(a) || a.place - b.place)[0];
}

function pairWords(mine: Mine, theirs: Mine, { states, holding }: Planning): string[] {
  const other = lackingMost(theirs, states);
  const own = mine.lines.find(({ key }) => key !== null && key === other?.key) ?? mine.lines[0];
  if (!own || !other) return [];
  try {
    const { why, delays, choices } = holding(own.id, mine.partId)(other.id);
    return [`Hold ${mine.mark} for ${theirs.mark}: does that delay anything? ${why}${delays ? ` ${choices.now} ${choices.hold}` : ''}`];
  } catch (error) {
    if (error instanceof DomainError) return [];
    throw error;
  }
}

const MOST_PAIRS = 6;

/** Whether holding one part for another delays anything, pair by pair; no more are worked out than are shown. */
function holdingWords(work: readonly WorkLine[], planning: Planning): string[] {
  const parts = byPart(work, planning.operations);
  const words: string[] = [];
  for (const mine of parts)
    for (const theirs of parts) {
      if (words.length >= MOST_PAIRS) return words;
      if (theirs !== mine) words.push(...pairWords(mine, theirs, planning));
    }
  return words;
}

function sharedView({ setUpId, setUp, work }: SharedLines, differing: Differing | undefined, planning: Planning): SharedView {
  return {
    says: setUp.says,
    common: commonWords(differing),
    differs: differsTable(setUpId, differing),
    work: workTable(work),
    holding: holdingWords(work, planning),
    links: [
      { says: 'Print one set-up sheet for these parts', href: to.setUpSheet(work.map((line) => line.operation_id)) },
      ...work
        .slice(0, 1)
        .map((line) => ({ says: `Hold “${line.title}” of ${line.part_mark} for another`, href: to.operationHold(line.operation_id) })),
    ],
  };
}

const nothing: EmptyView = {
  title: 'Nothing shares a set-up yet',
  says: 'When two parts are being made, the operations that need the same machine, mandrel and plate stand here together, with what differs between them.',
  act: { says: 'See what is being made', href: to.today },
  drawing: '',
};

/** ratios: of the set of each part, today and with it made. */
export type Asked = {
  readonly shared: readonly SharedLines[];
  readonly parts: readonly PlannedPart[];
  readonly operations: readonly KeyedWork[];
  readonly ratios: ReadonlyMap<number, { readonly today: number; readonly withIt: number } | null>;
};

/** Each operation's once, however many it could be held for. */
function onceEach({ operations, ratios }: Pick<Asked, 'operations' | 'ratios'>, states: Planning['states']): Planning['holding'] {
  const known = new Map<number, (heldFor: number) => Holding>();
  return (hold, partId) => {
    const one = known.get(hold) ?? holdingFor({ hold, operations, ratios: ratios.get(partId) ?? null }, states);
    known.set(hold, one);
    return one;
  };
}

export function setUpsView({ shared, parts, operations, ratios }: Asked): PageData<'routings/set-ups'> {
  const differing = whatDiffers(parts);
  const states = new Map(statesOf(operations).map((state) => [state.id, state]));
  const planning = { operations, holding: onceEach({ operations, ratios }, states), states };
  const groups = shared.map((one) =>
    sharedView(
      one,
      differing.find(({ setUp }) => setUp.key === one.setUp.key),
      planning,
    ),
  );
  return {
    title: 'Shared set-ups',
    place: 'Today',
    back: { says: 'Today', href: to.today },
    titleBlock: [],
    says:
      groups.length > 0
        ? 'Operations of different parts that can be done in one setting-up. After every change of cutter it is set central again.'
        : '',
    groups,
    empty: groups.length === 0 ? nothing : null,
  };
}
