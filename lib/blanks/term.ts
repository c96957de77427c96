import type { Figure, From, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Length, LengthUnit } from '../values/length.ts';

/** A piece of a formula in plain text with the numbers that it uses, so that a printed formula always goes back to what was put in. */
export type Term = { readonly text: string; readonly given: readonly Given[] };

const given = (symbol: string, name: string, value: Value, from: From, where?: string): Given => ({
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

/** A single length as a term, printed with all the decimals that it has. */
export const oneLength = (symbol: string, name: string, length: Length, unit: LengthUnit, from: From, where?: string): Term => ({
  text: symbol,
  given: [givenLength(symbol, name, length, unit, from, where)],
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
