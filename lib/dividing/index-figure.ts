import type { Figure, From, Given, Value } from '../figure/figure.ts';

export const count = (n: number, unit?: string): Value => (unit === undefined ? { count: n } : { count: n, unit });
export const given = (symbol: string, name: string, value: Value, from: From = 'worked out'): Given => ({ symbol, name, value, from });

type Shape = Partial<Pick<Figure, 'formula' | 'source' | 'given' | 'note' | 'unit' | 'places' | 'error'>>;

/** A figure of this room; what is not said is left out. source: the book that all figures of one sum go by. */
export const figuresFrom =
  (source: string) =>
  (name: string, symbol: string, value: Value, shape: Shape = {}): Figure => ({
    name,
    symbol,
    value,
    unit: 'in',
    formula: '',
    source,
    given: [],
    ...shape,
  });
