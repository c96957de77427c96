import type { StoredFigure } from '../../db/figures.ts';
import type { MeasuredNow, OperationLine } from '../../db/operations.ts';
import type { Value } from '../../lib/figure/figure.ts';
import { printValue } from '../../lib/figure/print-value.ts';
import type { Measure, PlannedOperation } from '../../lib/routing/operation.ts';
import { METAL_LEFT } from '../../lib/routing/written.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { printLength } from '../../lib/values/print.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { cell, heads } from '../cells.ts';
import { countField, type Field, lengthField, optional } from '../forms/field.ts';
import type { Typed } from '../forms/form.ts';
import type { TableView } from '../page.ts';

const MOST: Readonly<Record<LengthUnit, number>> = { in: 200, mm: 5000 };
const PLACES: Readonly<Record<LengthUnit, number>> = { in: 4, mm: 3 };

const sized = (length: Length, unit: LengthUnit): string => `${printLength(length, { unit, places: PLACES[unit] })} ${unit}`;

/** A measure with the figure that it answers to, where that is a length. */
type Measurable = { readonly measure: Measure; readonly stored: StoredFigure };

/** What can be written down at an operation. */
export const measurable = ({ measures, figures }: OperationLine): Measurable[] =>
  measures.flatMap((measure) => {
    const stored = figures.find(({ key }) => key === measure.figure);
    return stored && 'length' in stored.computed ? [{ measure, stored }] : [];
  });

/** "2.9975 to 3.0000 in", "at most 0.0010 in", "not under 3.0000 in"; '' where there is no limit. */
export function limitsOf({ low, high }: Measure, unit: LengthUnit): string {
  if (low !== null && low > 0 && high !== null) return `${printLength(low, { unit, places: PLACES[unit] })} to ${sized(high, unit)}`;
  if (high !== null) return `at most ${sized(high, unit)}`;
  return low === null || low === 0 ? '' : `not under ${sized(low, unit)}`;
}

/** What a measured size means, in plain words. within: true when nothing is amiss, or when there is nothing to hold it against. */
export function verdictOf({ low, high, below, above }: Measure, length: Length): { readonly within: boolean; readonly says: string } {
  if (low !== null && length < low) return { within: false, says: below || 'Under its limit.' };
  if (high !== null && length > high) return { within: false, says: above || 'Over its limit.' };
  return { within: true, says: low === null && high === null ? 'Written down.' : 'Within its limits.' };
}

const fieldName = ({ key }: Measure): string => `m-${key}`;

const words = (value: Value, unit: LengthUnit): string => {
  const printed = printValue(value, unit);
  return `${printed.text} ${printed.unit}`;
};

/** A run-out, a shift or lash may be nothing; a diameter, a span or a bore is always something. */
const LEAST_SIZE: Readonly<Record<LengthUnit, number>> = { in: 0.01, mm: 0.25 };
const mayBeNothing = ({ low, high }: Measure): boolean => high !== null && (low === null || low === 0);

function measureField({ measure, stored }: Measurable): Field<TypedLength | null> {
  const { unit } = stored.figure;
  const last = stored.measured ? `read ${words(stored.measured, unit)}; type again to change it` : '';
  const hint = [limitsOf(measure, unit), last].filter((part) => part !== '').join(' · ');
  return optional(
    lengthField({ label: measure.name, hint, unit, limits: { least: mayBeNothing(measure) ? 0 : LEAST_SIZE[unit], most: MOST[unit] } }),
  );
}

const MOST_MINUTES = 100_000;

/** One box for each thing to measure; any may stay empty. */
export const measureFields = (line: OperationLine): Readonly<Record<string, Field<TypedLength | null>>> =>
  Object.fromEntries(measurable(line).map((one) => [fieldName(one.measure), measureField(one)]));

export const minutesField = optional(
  countField({ label: 'Minutes taken', hint: 'For the next time.', unit: 'min', limits: { least: 0, most: MOST_MINUTES } }),
);

/** As the record would fill the boxes in now. */
export function typedNow(line: OperationLine): Typed {
  const sizes = measurable(line).map(({ measure, stored: { measured, form, figure } }) => {
    if (!measured || !('length' in measured)) return [fieldName(measure), ''] as const;
    const text = printLength(measured.length, form);
    return [fieldName(measure), form.unit === figure.unit ? text : `${text} ${form.unit}`] as const;
  });
  return { ...Object.fromEntries(sizes), minutes: line.minutes_taken === null ? '' : String(line.minutes_taken) };
}

type Values = Readonly<Record<string, unknown>>;
const lengthIn = (values: Values, measure: Measure): TypedLength | null =>
  (values[fieldName(measure)] as TypedLength | null | undefined) ?? null;

/** What was typed into the boxes, as readings to keep. */
export const readingsIn = (line: OperationLine, values: Values, on: string): MeasuredNow[] =>
  measurable(line).flatMap(({ measure, stored }) => {
    const typed = lengthIn(values, measure);
    if (!typed) return [];
    const reading = { what: measure.name, value: { length: typed.length }, form: typed.form, read_on: on, instrument: '' };
    return [{ figure: stored.key, reading }];
  });

/** What the readings just taken say: "Outside diameter: Metal left: another cut." Only what lies outside its limits is told. */
export const outsideLimits = (line: OperationLine, values: Values): string[] =>
  measurable(line).flatMap(({ measure }) => {
    const typed = lengthIn(values, measure);
    const verdict = typed ? verdictOf(measure, typed.length) : null;
    return verdict && !verdict.within ? [`${measure.name}: ${verdict.says}`] : [];
  });

type Left = { readonly key: string; readonly length: Length; readonly says: string };

/** Sizes, just typed or read before, that lie outside their limits where metal is left that this operation could still take. */
export const metalLeft = (line: OperationLine, values: Values): Left[] =>
  measurable(line).flatMap(({ measure, stored: { measured, figure } }) => {
    const last = measured && 'length' in measured ? measured.length : null;
    const length = lengthIn(values, measure)?.length ?? last;
    const verdict = length === null ? null : verdictOf(measure, length);
    if (length === null || !verdict || verdict.within || !verdict.says.startsWith(METAL_LEFT)) return [];
    const says = `${measure.name} ${sized(length, figure.unit)} (${limitsOf(measure, figure.unit)}): ${verdict.says}`;
    return [{ key: measure.key, length, says }];
  });

/** What could have been written down and never was, in words; '' when all of it is there. What was measured on the wheel in the drawer counts. */
export function notMeasured(line: OperationLine, now: readonly MeasuredNow[], planned: PlannedOperation | null): string {
  const onItem = (figure: string): boolean => planned?.figures[figure]?.name.endsWith(', measured') ?? false;
  const left = measurable(line).filter(
    ({ stored }) => !stored.measured && !onItem(stored.key) && !now.some(({ figure }) => figure === stored.key),
  );
  return left.length === 0 ? '' : `Not measured: ${left.map(({ measure }) => measure.name).join('; ')}.`;
}

/** What has been measured at an operation, against its limits; null while nothing was. */
export function measuredTable(line: OperationLine): TableView | null {
  const rows = measurable(line).flatMap(({ measure, stored }) => {
    if (!stored.measured || !('length' in stored.measured)) return [];
    const { unit } = stored.figure;
    const verdict = verdictOf(measure, stored.measured.length);
    return [
      {
        id: `read-${measure.key}`,
        cells: [
          cell(measure.name),
          cell(printLength(stored.measured.length, { unit, places: PLACES[unit] }), unit),
          cell(limitsOf(measure, unit) || 'no limit'),
          cell(verdict.says),
        ],
      },
    ];
  });
  if (rows.length === 0) return null;
  return {
    title: '',
    heads: heads(['Measured', 'name'], ['Read', 'figure'], ['Limits', 'words'], ['It says', 'words']),
    rows,
    empty: '',
  };
}
