import type { Figure } from '../figure/figure.ts';

/** A figure that is counted, not worked. source: how those that are counted were found. */
export const countedFrom =
  (source: string) =>
  (name: string, symbol: string, count: number): Figure => ({ name, symbol, value: { count }, unit: 'in', formula: '', source, given: [] });
