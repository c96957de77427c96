import type { Head, Plate } from '../tooling/tooling.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import type { BottomCuts } from './bottom-cuts.ts';
import { highestLeft, type ShaftToMill } from './mill.formulas.ts';
import { checkedCuts } from './mill-checks.ts';
import { type Clearances, type Locating, type StraightBore, shaftSizes } from './shaft-sizes.ts';

export type MillAsked = {
  readonly bore: StraightBore;
  readonly locates: Locating;
  readonly clearances: Clearances;
  readonly cutterWidth: Length;
  /** The shaft's outside as turned, where it differs from what was wanted; depths are dialled from touching it. */
  readonly turned?: Length;
  readonly head: Pick<Head, 'turns' | 'name'>;
  readonly plates: readonly Plate[];
  readonly circle?: number;
  readonly unit: LengthUnit;
};

export type MillPlan = {
  readonly shaft: ShaftToMill;
  readonly cuts: BottomCuts;
  /** Across the highest metal left at the bottoms. */
  readonly highest: number;
  /** How much the outside as turned is over the bore's grooves; nothing or less when it goes in. */
  readonly tooLarge: number;
  /** Whether both go into the bore. */
  readonly enters: boolean;
  readonly sizes: ReturnType<typeof shaftSizes>;
};

/** The sizes and the cuts without their working: for the sum, its drawing and the tests. Throws DomainError as the checks say. */
export function millPlan(asked: MillAsked): MillPlan {
  const { bore, unit } = asked;
  const sizes = shaftSizes(bore, asked.locates, asked.clearances, unit);
  const D = inUnit(asked.turned ?? sizes.D, unit);
  const shaft = { N: bore.splines, D, d: inUnit(sizes.d, unit), w: inUnit(sizes.w, unit), c: inUnit(asked.cutterWidth, unit) };
  const cuts = checkedCuts(shaft, asked);
  const highest = Math.max(shaft.d, highestLeft(shaft, cuts.turned));
  const tooLarge = D - inUnit(bore.outside, unit);
  return { shaft, cuts, highest, tooLarge, enters: highest <= inUnit(bore.inside, unit) + 1e-9 && tooLarge <= 1e-9, sizes };
}
