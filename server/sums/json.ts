import type { Answer, Figure, Given, Value } from '../../lib/figure/figure.ts';
import { printFigure, printValue } from '../../lib/figure/print-value.ts';
import { type LengthUnit, toInches, toMm } from '../../lib/values/length.ts';

/** A value as JSON: what is printed, and for lengths the exact nanometres beside both units. */
function valueJson(value: Value, unit: LengthUnit, places?: number) {
  const { text, unit: printedUnit } = printValue(value, unit, places);
  const exact = 'length' in value ? { nanometres: value.length, inches: toInches(value.length), millimetres: toMm(value.length) } : value;
  return { printed: text, unit: printedUnit, ...exact };
}

const givenJson = (given: Given, unit: LengthUnit) => ({
  symbol: given.symbol,
  name: given.name,
  from: given.from,
  ...(given.where ? { where: given.where } : {}),
  value: valueJson(given.value, unit),
});

const figureJson = (figure: Figure) => ({
  name: figure.name,
  symbol: figure.symbol,
  printed: printFigure(figure).text,
  unit: printFigure(figure).unit,
  value: valueJson(figure.value, figure.unit, figure.places),
  formula: figure.formula,
  given: figure.given.map((given) => givenJson(given, figure.unit)),
  source: figure.source,
  ...(figure.error ? { error: valueJson(figure.error, figure.unit) } : {}),
  ...(figure.limits ? { limits: figure.limits.map((limit) => valueJson(limit, figure.unit, figure.places)) } : {}),
  ...(figure.note ? { note: figure.note } : {}),
});

/** An answer as it is given under `.json`. */
export const answerJson = (answer: Answer) => ({
  ...(answer.says ? { says: answer.says } : {}),
  figures: Object.fromEntries(Object.entries<Figure>(answer.figures).map(([key, figure]) => [key, figureJson(figure)])),
  cautions: answer.cautions,
  tables: (answer.tables ?? []).map((table) => ({
    title: table.title,
    heads: table.heads,
    rows: table.rows.map((row) => row.map((cell) => (typeof cell === 'string' ? cell : valueJson(cell, table.unit)))),
  })),
});
