import { inUnit, type Length, type LengthUnit, NM_PER_INCH, NM_PER_MM } from '../values/length.ts';
import { printWhole } from '../values/print.ts';
import type { From, Given } from './figure.ts';

const USUAL_PLACES: Readonly<Record<LengthUnit, number>> = { in: 4, mm: 3 };
const MOST_PLACES = 6;

/** The fewest decimals, from the usual ones up, that print this length whole; at most six. */
function placesFor(length: Length, unit: LengthUnit): number {
  const per = unit === 'in' ? NM_PER_INCH : NM_PER_MM;
  const fewest = USUAL_PLACES[unit];
  const full = printWhole(length, per, MOST_PLACES);
  const zeros = /0*$/.exec(full)?.[0].length ?? 0;
  return Math.max(fewest, MOST_PLACES - zeros);
}

/** A length put into a formula, printed with enough decimals that the formula can be worked from the print. */
export function givenLength(symbol: string, name: string, length: Length, unit: LengthUnit, from: From, where?: string): Given {
  const places = placesFor(length, unit);
  const value = places === USUAL_PLACES[unit] ? { length } : { number: inUnit(length, unit), unit, places };
  return { symbol, name, value, from, ...(where === undefined ? {} : { where }) };
}
