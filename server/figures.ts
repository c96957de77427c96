import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../lib/figure/figure.ts';
import { printFigure, printValue } from '../lib/figure/print-value.ts';
import type { LengthUnit } from '../lib/values/length.ts';
import type { AnswerView, CautionView, CellView, FigureView, GivenView, TableView, WorkingView } from './page.ts';

const inOne = (value: Value, unit: LengthUnit, places?: number): string => {
  const printed = printValue(value, unit, places);
  return printed.unit ? `${printed.text} ${printed.unit}` : printed.text;
};

function givenView(given: Given, unit: LengthUnit): GivenView {
  const printed = printValue(given.value, unit);
  const from = given.where ? `${given.from}, ${given.where}` : given.from;
  return { symbol: given.symbol, name: given.name, text: printed.text, unit: printed.unit, from };
}

const limitsOf = (figure: Figure): string =>
  figure.limits ? `${inOne(figure.limits[0], figure.unit, figure.places)} to ${inOne(figure.limits[1], figure.unit, figure.places)}` : '';

function workingView(figure: Figure): WorkingView {
  return {
    formula: figure.formula ? `${figure.symbol} = ${figure.formula}` : '',
    given: figure.given.map((given) => givenView(given, figure.unit)),
    source: figure.source,
    error: figure.error ? inOne(figure.error, figure.unit) : '',
    limits: limitsOf(figure),
    note: figure.note ?? '',
  };
}

type Plain = Omit<FigureView, 'key'>;

function plainView(figure: Figure): Plain {
  const printed = printFigure(figure);
  return {
    name: figure.name,
    symbol: figure.symbol,
    text: printed.text,
    unit: printed.unit,
    other: printed.other,
    words: 'words' in figure.value || 'move' in figure.value || 'dial' in figure.value,
    mark: '',
    was: '',
    revision: '',
    limits: limitsOf(figure),
    working: workingView(figure),
  };
}

/** A figure never changes, so it is printed once for as long as anybody holds it. */
const printedOnce = new WeakMap<Figure, Plain>();

/** A figure of lib as the page's partial takes it. */
export function figureView(key: string, figure: Figure, more: Partial<FigureView> = {}): FigureView {
  const plain = printedOnce.get(figure) ?? plainView(figure);
  printedOnce.set(figure, plain);
  return { key, ...plain, ...more };
}

const WORDS = { danger: 'Danger', beware: 'Beware', note: 'Note' } as const;

export const cautionView = (caution: Caution): CautionView => ({
  name: caution.name,
  says: caution.says,
  weight: caution.weight,
  word: WORDS[caution.weight],
});

function cellView(cell: Value | string, unit: LengthUnit): CellView {
  if (typeof cell === 'string') return { text: cell, unit: '', href: '', state: null };
  const printed = printValue(cell, unit);
  return { text: printed.text, unit: printed.unit, href: '', state: null };
}

function tableView(table: AnswerTable, place: number): TableView {
  const first = table.rows[0];
  return {
    title: table.title,
    heads: table.heads.map((says, column) => ({
      says,
      as: column === 0 ? 'name' : typeof first?.[column] === 'string' ? 'words' : 'figure',
    })),
    rows: table.rows.map((row, index) => ({ id: `row-${place}-${index}`, cells: row.map((cell) => cellView(cell, table.unit)) })),
    empty: 'None.',
  };
}

/** A whole answer for the page. */
export const answerView = (answer: Answer): AnswerView => ({
  says: answer.says ?? '',
  figures: Object.entries<Figure>(answer.figures).map(([key, figure]) => figureView(key, figure)),
  cautions: answer.cautions.map(cautionView),
  tables: (answer.tables ?? []).map(tableView),
});
