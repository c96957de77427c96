import type { Figure } from '../../lib/figure/figure.ts';

/** A figure that is counted or chosen, not worked by a formula: its name, symbol and value, all from one source. */
export const toldFigures =
  (source: string) =>
  (name: string, symbol: string, value: Figure['value']): Figure => ({ name, symbol, value, unit: 'in', formula: '', source, given: [] });
