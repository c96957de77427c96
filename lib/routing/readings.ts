import type { Figure, From, Value } from '../figure/figure.ts';
import { printValue } from '../figure/print-value.ts';
import type { Length } from '../values/length.ts';
import type { FigureReading, Readings } from './asked.ts';
import type { PlannedOperation } from './operation.ts';

/** A length as it stands, and where it came from. */
export type Standing = { readonly length: Length; readonly from: From };

export const readingAt = (readings: Readings, operation: string, figure: string): FigureReading | null =>
  readings[`${operation}/${figure}`] ?? null;

/** The length measured or typed for a figure; null when nobody did either. */
export function lengthRead(readings: Readings, operation: string, figure: string): Standing | null {
  const found = readingAt(readings, operation, figure);
  return found && 'length' in found.value ? { length: found.value.length, from: found.from } : null;
}

/** The length measured; a typed one does not count. */
export function lengthMeasured(readings: Readings, operation: string, figure: string): Length | null {
  const found = lengthRead(readings, operation, figure);
  return found?.from === 'measured' ? found.length : null;
}

const lengthOf = (value: Value): Length | null => ('length' in value ? value.length : null);

/** What feeds the figures after it: the reading, else what was worked out. */
export function standing(readings: Readings, operation: string, key: string, figure: Figure): Standing {
  const found = lengthRead(readings, operation, key);
  const own = lengthOf(figure.value);
  if (found) return found;
  if (own === null) throw new Error(`${operation}/${key} is no length`);
  return { length: own, from: 'worked out' };
}

/** The same figure with some of its givens said to come from elsewhere than the sum supposes. */
export function withFrom(figure: Figure, from: Readonly<Record<string, From>>): Figure {
  return { ...figure, given: figure.given.map((given) => ({ ...given, from: from[given.symbol] ?? given.from })) };
}

function withTyped(figure: Figure, found: FigureReading | null): Figure {
  if (found?.from !== 'typed') return figure;
  const { text, unit } = printValue(found.value, figure.unit, figure.places);
  const says = `Typed over: ${[text, unit].filter((part) => part !== '').join(' ')} stands.`;
  return { ...figure, note: figure.note ? `${says} ${figure.note}` : says };
}

/** Says on every figure that was typed over what stands in its place; the worked-out value stays beside it. */
export function sayTyped(operation: PlannedOperation, readings: Readings): PlannedOperation {
  const figures = Object.entries(operation.figures).map(([key, figure]) => [
    key,
    withTyped(figure, readingAt(readings, operation.key, key)),
  ]);
  return { ...operation, figures: Object.fromEntries(figures) };
}
