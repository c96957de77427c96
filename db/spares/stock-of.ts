import type { Stock } from '../../lib/blanks/from-stock.ts';
import type { Length } from '../../lib/values/length.ts';
import { nanometres } from '../../lib/values/length.ts';
import type { ItemLine } from '../items.ts';

/** A bar or disc as lib holds it against a wanted wheel. Pieces on record are solid: a hole is not kept. */
export const stockOf = ({ id, name, material, diameter_nm, length_nm }: ItemLine): Stock => ({
  id,
  name: name || `stock ${id}`,
  material,
  diameter: diameter_nm as Length | null,
  length: length_nm as Length | null,
  hole: nanometres(0),
});

/** The same while nobody has taken it: only what no part was promised is there to cut from. */
export const stockFree = (line: ItemLine): Stock => {
  const stock = stockOf(line);
  return stock.length === null ? stock : { ...stock, length: nanometres(Math.max(0, stock.length - line.cut_nm)) };
};
