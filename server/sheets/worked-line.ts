import type { Figure, Given } from '../../lib/figure/figure.ts';
import { printValue } from '../../lib/figure/print-value.ts';

/** Words of a formula that are no symbols. */
const WORKED = new Set(['sin', 'cos', 'tan', 'acos', 'inv', 'min', 'max', 'floor', 'ceil', 'round', 'abs']);

function putIn(given: Given, figure: Figure): string {
  const { text, unit } = printValue(given.value, figure.unit);
  const number = unit === '°' ? `${text}°` : text;
  return text.startsWith('−') ? `(${number})` : number;
}

/** A figure's working in one line, the numbers in place of the symbols: "(22 + 2) ÷ 8". Empty when it has no formula. */
export function workedLine(figure: Figure): string {
  const numbers = new Map(figure.given.map((given) => [given.symbol, putIn(given, figure)]));
  return figure.formula.replace(/[A-Za-zα-ω][A-Za-z0-9]*/g, (word) => (WORKED.has(word) ? word : (numbers.get(word) ?? word)));
}
