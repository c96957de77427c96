import type { Figure, Given, Value } from '../figure/figure.ts';
import { ofUnit } from '../values/length.ts';
import type { Tooth } from './tooth.ts';

export type Said = { readonly name: string; readonly symbol: string; readonly formula: string; readonly source: string };

/** A length of a wheel with its working. size: in the unit of the wheel's pitch. */
export const wheelFigure = (tooth: Tooth, said: Said, size: number, given: readonly Given[]): Figure => ({
  ...said,
  value: { length: ofUnit(size, tooth.unit) },
  unit: tooth.unit,
  given,
});

/** Least and greatest acceptable size, as a figure's limits. */
export const between = ({ unit }: Tooth, least: number, most: number): readonly [Value, Value] => [
  { length: ofUnit(least, unit) },
  { length: ofUnit(most, unit) },
];
