import type { Gear, Material } from '../gears/gear.ts';
import { add, type Length, type LengthUnit } from '../values/length.ts';
import { inWords, sizesOf } from './blank-sizes.ts';
import { STOCK } from './judgements.data.ts';

/** A bar or disc. length and diameter as measured; null when nobody measured. hole: through it, 0 when solid. */
export type Stock = {
  readonly id: number;
  readonly name: string;
  readonly material: Material;
  readonly diameter: Length | null;
  readonly length: Length | null;
  readonly hole: Length;
};

/** takes: what the blank uses up of the bar's length, parting included; null when not known. */
export type StockVerdict = {
  readonly verdict: 'serves' | 'refused' | 'measure first';
  readonly says: string;
  readonly diameterWanted: Length;
  readonly takes: Length | null;
};

function tooSmall(is: Length, want: Length, what: string, unit: LengthUnit): string | null {
  return is >= want ? null : `${what} ${inWords(is, unit)}, and ${inWords(want, unit)} is wanted.`;
}

/** What stands against a piece of stock whose sizes are known. */
function against(wanted: Gear, stock: Stock, diameter: Length, takes: Length, unit: LengthUnit): string[] {
  const bore = wanted.bore?.form === 'splined' ? wanted.bore.minor : wanted.bore?.diameter;
  const small = tooSmall(stock.diameter ?? diameter, diameter, 'Diameter', unit);
  const short = tooSmall(stock.length ?? takes, takes, 'Length', unit);
  const hole = bore !== undefined && stock.hole > bore ? `Its hole of ${inWords(stock.hole, unit)} is larger than the bore.` : null;
  return [small, short, hole].filter((says) => says !== null);
}

/**
 * Does a piece of stock serve for a wheel? Diameter at least the new outside and what trueing takes; length at least the face, both
 * faces cleaned, and the parting tool.
 */
export function testStock({ wanted, stock }: { wanted: Gear; stock: Stock }): StockVerdict {
  const { outside, unit } = sizesOf(wanted);
  const diameterWanted = add(outside, STOCK.truing);
  const takes = wanted.face === null ? null : add(add(wanted.face, STOCK.facing), STOCK.parting);
  const known = { diameterWanted, takes };
  const unknown = [
    ...(wanted.face === null ? ['the face that is wanted'] : []),
    ...(wanted.bore === null ? ['the bore that is wanted'] : []),
    ...(stock.diameter === null ? ['the diameter of the stock'] : []),
    ...(stock.length === null ? ['the length of the stock'] : []),
  ];
  const reasons = against(wanted, stock, diameterWanted, takes ?? (0 as Length), unit);
  if (reasons.length > 0) return { ...known, verdict: 'refused', says: reasons.join(' ') };
  if (unknown.length > 0) return { ...known, verdict: 'measure first', says: `Measure first: ${unknown.join(', ')}.` };
  const length = takes === null ? '' : `, and ${inWords(takes, unit)} of its length`;
  return { ...known, verdict: 'serves', says: `Serves: it takes ${inWords(diameterWanted, unit)} of diameter${length}.` };
}
