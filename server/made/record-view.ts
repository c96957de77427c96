import type { madeRecord } from '../../db/made.ts';
import { type FigureKept, type MadeSheet, type MeasuredKept, type OperationKept, sheetOf } from '../../db/made-sheet.ts';
import { timeWords } from '../../lib/figure/time-words.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import type { Length } from '../../lib/values/length.ts';
import { printLength, printWhole } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import { cell, heads } from '../cells.ts';
import { dayOf } from '../forms/date-field.ts';
import type { FigureView, LinkView, StateView, TableView, TitleCell } from '../page.ts';
import { limitsOf, verdictOf } from '../routings/measured.ts';
import type { PageData } from '../views.ts';
import type { DoneView } from './view-model.ts';

type MadeRecord = Awaited<ReturnType<typeof madeRecord>>;

export const outcomeState = (outcome: MadeRecord['outcome']): StateView =>
  outcome === 'good' ? { kind: 'done', says: 'good' } : { kind: 'off', says: 'spoilt' };

/** "12.50", out of cents. */
/** What it cost; an empty box was kept as nothing spent or nothing written, which nobody can tell apart. */
export const moneyWords = (cents: number): string => (cents === 0 ? 'none written' : printWhole(cents, 100, 2));

function figureOf(figure: FigureKept, at: string): FigureView {
  return {
    key: `${at}-${figure.key}`,
    name: figure.name,
    symbol: figure.symbol,
    text: figure.text,
    unit: figure.unit,
    other: figure.other,
    words: !/^[\d.,−]+$/.test(figure.text),
    mark: figure.mark,
    was: '',
    revision: '',
    limits: '',
    working: {
      formula: figure.formula ? `${figure.symbol} = ${figure.formula}` : '',
      given: [],
      source: figure.source,
      error: '',
      limits: '',
      note: figure.workedOut ? `Worked out: ${figure.workedOut}.` : '',
    },
  };
}

const asMeasure = ({ name, low, high, below, above }: MeasuredKept) => ({
  key: name,
  name,
  figure: name,
  low: low as Length | null,
  high: high as Length | null,
  below,
  above,
});

const PLACES = { in: 4, mm: 3 } as const;

const measuredRow = (title: string, one: MeasuredKept, at: number) => ({
  id: `measured-${at}`,
  cells: [
    cell(one.name),
    cell(printLength(one.nm as Length, { unit: one.unit, places: PLACES[one.unit] }), one.unit),
    cell(limitsOf(asMeasure(one), one.unit) || 'no limit'),
    cell(verdictOf(asMeasure(one), one.nm as Length).says),
    cell(title),
  ],
});

function measuredTable({ operations }: MadeSheet): TableView {
  const all = operations.flatMap(({ title, measured }) => measured.map((one) => ({ title, one })));
  return {
    title: '',
    heads: heads(['Measured', 'name'], ['Read', 'figure'], ['Limits', 'words'], ['It says', 'words'], ['At', 'words']),
    rows: all.map(({ title, one }, at) => measuredRow(title, one, at)),
    empty: 'Nothing was measured.',
  };
}

function toolsTable({ operations }: MadeSheet): TableView {
  const used = operations.filter(({ struck }) => !struck).flatMap(({ tools }) => tools);
  const once = used.filter((one, at) => used.findIndex(({ need }) => need === one.need) === at);
  return {
    title: '',
    heads: heads(['Needed', 'name'], ['Used', 'words']),
    rows: once.map(({ need, tool }, at) => ({ id: `tool-${at}`, cells: [cell(need), cell(tool || 'none on record')] })),
    empty: 'None on record.',
  };
}

function doneWords(one: OperationKept): string {
  const when = one.struck ? 'struck out' : one.doneOn ? `done ${dayOf(one.doneOn)}` : 'not marked done';
  const took = one.minutesTaken === null ? `planned ${timeWords(one.minutesPlanned)}` : `took ${timeWords(one.minutesTaken)}`;
  return `${one.setUp} · ${when} · ${took}`;
}

/** Seen before it is opened: this operation was never marked done. */
const leftOut = ({ struck, doneOn }: OperationKept): string => (struck ? ' · struck out' : doneOn ? '' : ' · not marked done');

const doneView = (one: OperationKept, at: number, trusted: boolean): DoneView => ({
  title: `${at + 1}. ${one.title}${leftOut(one)}`,
  says: doneWords(one),
  figures: one.figures.map((figure) => figureOf(figure, String(at + 1))),
  notes: trusted ? one.notes : '',
});

const ROLES = { whole: '', hub: ' as the hub', ring: ' as the ring' } as const;

const takesWords = (nm: number | null): string => (nm === null ? '' : `, ${printLength(nm as Length, { unit: 'in', places: 3 })} in of it`);

function factsOf(record: MadeRecord, sheet: MadeSheet | null, trusted: boolean) {
  const fact = (what: string, says: string, href = '') => ({ what, says, href });
  const gear = sheet?.gear;
  return [
    ...(gear ? [fact('Wheel', `${gear.teeth} teeth, ${printPitch(gear.pitch)}, ${gear.system.name}`)] : []),
    ...(sheet?.blanks ?? []).map(({ name, role, takesNm, itemId }) =>
      fact('From', `${name}${ROLES[role]}${takesWords(takesNm)}`, to.item(itemId)),
    ),
    ...(sheet ? [fact('Way', sheet.way), fact('Begun', dayOf(sheet.openedOn))] : []),
    fact('Finished', dayOf(record.finished_on)),
    fact('Time', timeWords(record.minutes)),
    ...(trusted ? [fact('Cost', moneyWords(record.cost_cents))] : []),
    ...(record.item_id === null ? [] : [fact('Now', gear ? `wheel of ${gear.teeth} teeth` : record.part_name, to.item(record.item_id))]),
  ];
}

const titleCell = (label: string, says: string, href = '', state: StateView | null = null): TitleCell => ({ label, says, href, state });

const linksOf = (record: MadeRecord, sheet: MadeSheet | null, trusted: boolean): LinkView[] => [
  ...(trusted && sheet
    ? [{ says: record.outcome === 'good' ? 'Make it again' : 'Try again from this record', href: to.madeAgain(record.id) }]
    : []),
  { says: 'The part', href: to.part(record.part_id) },
  { says: 'All that was made', href: to.madeList },
];

export function recordView(record: MadeRecord, trusted: boolean): PageData<'made/record'> {
  const sheet = sheetOf(record.sheet);
  return {
    title: `Made: ${record.part_name}`,
    place: 'Machines',
    back: { says: `${record.part_mark} ${record.part_name}`, href: to.part(record.part_id) },
    titleBlock: [
      titleCell('Machine', sheet?.machine ?? 'see the part', to.machine(record.project_id)),
      titleCell('Part', record.part_name, to.part(record.part_id)),
      titleCell('State', '', '', outcomeState(record.outcome)),
      titleCell('Mark', record.part_mark, to.part(record.part_id)),
    ],
    says: sheet ? '' : 'This record holds no sheet of its making: only when it was finished and how long it took.',
    facts: factsOf(record, sheet, trusted),
    // A note may hold a name or a price.
    notes: trusted ? record.notes : '',
    measured: sheet ? measuredTable(sheet) : null,
    tools: sheet ? toolsTable(sheet) : null,
    operations: sheet ? sheet.operations.map((one, at) => doneView(one, at, trusted)) : [],
    links: linksOf(record, sheet, trusted),
  };
}
