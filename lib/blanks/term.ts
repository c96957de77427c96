import type { Figure, From, Given, Value } from '../figure/figure.ts';
import type { Length, LengthUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';

/** A piece of a formula in plain text with the numbers that it uses, so that a printed formula always goes back to what was put in. */
export type Term = { readonly text: string; readonly given: readonly Given[] };

/** Decimals that print a typed number whole, six at most. */
export function placesOf(x: number): number {
  for (let places = 0; places < 6; places++) if (Math.abs(Number(printNumber(Math.abs(x), places)) - Math.abs(x)) < 1e-9) return places;
  return 6;
}

export const plainNumber = (x: number, unit = ''): Value => ({ number: x, unit, places: placesOf(x) });

export const given = (symbol: string, name: string, value: Value, from: From, where?: string): Given => ({
  symbol,
  name,
  value,
  from,
  ...(where ? { where } : {}),
});

/** A single given as a term. */
export const one = (symbol: string, name: string, value: Value, from: From, where?: string): Term => ({
  text: symbol,
  given: [given(symbol, name, value, from, where)],
});

/** Terms put together by a template, each given named once: join`(${a} − ${b}) ÷ 2`. */
export function join(parts: TemplateStringsArray, ...terms: readonly Term[]): Term {
  const text = parts.reduce((said, part, at) => said + (terms[at - 1]?.text ?? '') + part);
  const bySymbol = new Map(terms.flatMap((term) => term.given).map((each) => [each.symbol, each]));
  return { text, given: [...bySymbol.values()] };
}

type Says = { readonly name: string; readonly symbol: string; readonly source: string; readonly note?: string };

/** A length with its working. */
export const lengthFigure = (says: Says, length: Length, unit: LengthUnit, term: Term): Figure => ({
  ...says,
  value: { length },
  unit,
  formula: term.text,
  given: term.given,
});
