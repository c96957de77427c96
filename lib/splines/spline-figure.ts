import type { Figure, From, Given, Value } from '../figure/figure.ts';
import { type LengthUnit, ofUnit } from '../values/length.ts';

export type SplineSaid = {
  readonly name: string;
  readonly symbol: string;
  readonly formula: string;
  readonly source: string;
  readonly note?: string;
};

/** A length of a spline with its working. size: in `unit`. */
export const splineLength = (unit: LengthUnit, said: SplineSaid, size: number, given: readonly Given[]): Figure => ({
  ...said,
  value: { length: ofUnit(size, unit) },
  unit,
  given,
});

/** A figure that is no length, with its working. */
export const splineFigure = (unit: LengthUnit, said: SplineSaid, value: Value, given: readonly Given[] = []): Figure => ({
  ...said,
  value,
  unit,
  given,
});

export const countGiven = (symbol: string, name: string, count: number, from: From = 'typed'): Given => ({
  symbol,
  name,
  value: { count },
  from,
});
