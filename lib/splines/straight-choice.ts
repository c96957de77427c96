import { DomainError } from '../figure/domain-error.ts';
import { inches, type Length, type LengthUnit, millimetres, ofUnit, toInches } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { INCH_STRAIGHT, type InchFit, METRIC_SOURCES, METRIC_STRAIGHT, type MetricSeries } from './straight.data.ts';

/** A standard straight-sided spline: its nominal sizes, what it is called, where they stand. */
export type StandardStraight = {
  readonly kind: 'inch' | 'metric';
  readonly name: string;
  readonly splines: number;
  readonly outside: Length;
  readonly inside: Length;
  readonly width: Length;
  readonly unit: LengthUnit;
  readonly source: string;
  /** Fractions of the outside (inch kind): width and small diameter. */
  readonly fractions?: { readonly w: number; readonly d: number };
};

const shown = (length: Length, unit: LengthUnit): string => printLength(length, { unit, places: 3 });

/** Inch spline of any outside diameter by the fractions; null where no row has this count and fit. */
export function inchStraight(splines: number, fit: InchFit, outside: Length): StandardStraight | null {
  const row = INCH_STRAIGHT.find((one) => one.splines === splines);
  const by = row?.fits.find((one) => one.fit === fit);
  if (!row || !by) return null;
  const D = toInches(outside);
  return {
    kind: 'inch',
    name: `inch, ${splines} splines, ${fit}, ${shown(outside, 'in')}`,
    splines,
    outside,
    inside: inches(by.d * D),
    width: inches(row.w * D),
    unit: 'in',
    source: row.source,
    fractions: { w: row.w, d: by.d },
  };
}

/** All metric splines, as the series print them. */
export const METRIC_CHOICES: readonly StandardStraight[] = METRIC_STRAIGHT.map(({ series, splines, d, D, B }) => ({
  kind: 'metric',
  name: `metric ${series}, ${splines} × ${d} × ${D}`,
  splines,
  outside: millimetres(D),
  inside: millimetres(d),
  width: millimetres(B),
  unit: 'mm',
  source: METRIC_SOURCES[series],
}));

/** The inch spline asked for. Throws DomainError where the standard has none of this count or fit. */
export function chosenInch(splines: number, fit: InchFit, outside: Length): StandardStraight {
  const found = inchStraight(splines, fit, outside);
  if (found && outside > 0) return found;
  const fits = INCH_STRAIGHT.find((one) => one.splines === splines)?.fits.map((one) => one.fit);
  throw new DomainError({
    given: `${splines} splines, ${fit}.`,
    limit: fits ? `With ${splines} splines there are: ${fits.join(', ')}.` : 'The inch splines have 4, 6, 10 or 16 keys.',
    tryThis: fits ? 'Choose one of these.' : 'Count again, or look among the metric series.',
    about: [fits ? 'standard' : 'splines'],
  });
}

/** The metric spline asked for, by its count and outside. Throws DomainError that names the nearest of the series. */
export function chosenMetric(splines: number, series: MetricSeries, outside: Length): StandardStraight {
  const ofSeries = METRIC_CHOICES.filter((one) => one.name.startsWith(`metric ${series}`));
  const found = ofSeries.find((one) => one.splines === splines && one.outside === outside);
  if (found) return found;
  const away = (one: StandardStraight): number => Math.abs(one.outside - outside) + (one.splines === splines ? 0 : 1);
  const near = [...ofSeries].sort((a, b) => away(a) - away(b)).slice(0, 3);
  throw new DomainError({
    given: `${splines} splines, ${printLength(outside, { unit: 'mm', places: 2 })} mm outside.`,
    limit: `The ${series} series has none of these sizes.`,
    tryThis: `Nearest: ${near.map(({ name }) => name.replace(`metric ${series}, `, '')).join('; ')}.`,
    about: ['outside', 'splines'],
  });
}

/** The nearest sixteenth of an inch: the outside diameters in which inch splines are made (judgement). */
export const nearestSixteenth = (length: Length): Length => ofUnit(Math.max(1, Math.round(toInches(length) * 16)) / 16, 'in');
