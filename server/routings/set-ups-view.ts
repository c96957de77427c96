import type { SharedSetUp as SharedLines, WorkLine } from '../../db/today.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { holdingDelays } from '../../lib/planning/holding.ts';
import type { ShopOperation } from '../../lib/planning/today.ts';
import { type PlannedPart, sharedSetUps as whatDiffers } from '../../lib/routing/shared-set-ups.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import type { EmptyView, StateView, TableView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { SharedView } from './view-model.ts';
import { timeWords } from './words.ts';

type Differing = ReturnType<typeof whatDiffers>[number];

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
function differsTable(differing: Differing | undefined): TableView {
  const parts = differing?.parts ?? [];
  const names = [...new Set(parts.flatMap(({ figures }) => figures.map(({ key }) => key)))];
  const nameOf = (key: string): string => parts.flatMap(({ figures }) => figures).find((one) => one.key === key)?.name ?? key;
  const row = (id: string, name: string, shown: readonly string[]) => ({ id, cells: [cell(name), ...shown.map((text) => cell(text))] });
  const tools = parts.some(({ needs }) => needs.length > 0)
    ? [
        row(
          'differs-tools',
          'tools',
          parts.map(({ needs }) => needs.join(', ') || 'none more'),
        ),
      ]
    : [];
  const figures = names.map((key, at) =>
    row(
      `differs-${at}`,
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

/** Whether holding the one that is nearer for the other delays anything, pair by pair of parts. */
function holdingWords(work: readonly WorkLine[], operations: readonly ShopOperation[]): string[] {
  const firsts = [...new Map([...work].reverse().map((line) => [line.part_id, line])).values()].reverse();
  const pairs = firsts.flatMap((one) => firsts.filter((other) => other !== one).map((other) => [one, other] as const));
  return pairs.flatMap(([one, other]) => {
    try {
      const { why, delays, choices } = holdingDelays({ hold: one.operation_id, heldFor: other.operation_id, operations });
      const asks = `Does holding ${one.part_mark} for ${other.part_mark} delay anything?`;
      return [delays ? `${asks} ${why} ${choices.now} ${choices.hold}` : `${asks} ${why}`];
    } catch (error) {
      if (error instanceof DomainError) return [];
      throw error;
    }
  });
}

const MOST_PAIRS = 6;

function sharedView({ setUp, work }: SharedLines, differing: Differing | undefined, operations: readonly ShopOperation[]): SharedView {
  return {
    says: setUp.says,
    common: commonWords(differing),
    differs: differsTable(differing),
    work: workTable(work),
    holding: holdingWords(work, operations).slice(0, MOST_PAIRS),
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

export function setUpsView(
  shared: readonly SharedLines[],
  parts: readonly PlannedPart[],
  operations: readonly ShopOperation[],
): PageData<'routings/set-ups'> {
  const differing = whatDiffers(parts);
  const atMachines = shared.filter(({ setUp }) => setUp.place !== 'bench');
  const groups = atMachines.map((one) =>
    sharedView(
      one,
      differing.find(({ setUp }) => setUp.key === one.setUp.key),
      operations,
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
