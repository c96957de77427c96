import type { Stock } from '../blanks/from-stock.ts';
import type { SpareWheel } from '../blanks/spare-wheel.ts';
import type { Value } from '../figure/figure.ts';
import type { Gear, Material } from '../gears/gear.ts';
import type { Length } from '../values/length.ts';
import type { ShopNow } from './shop-now.ts';

/**
 * The wheel to make. slides: it is pushed into mesh along its shaft. fixedCentres: the studs cannot be moved, so the lash must be cut in;
 * backlash: the circular thinning of this wheel, all that the pair wants less what the mate gives.
 */
export type WantedPart = {
  readonly name: string;
  readonly mark: string;
  readonly gear: Gear;
  readonly material?: Material;
  readonly slides?: boolean;
  readonly fixedCentres?: boolean;
  readonly backlash?: Length;
};

/** A figure as the owner has it by now: read off the work, or typed over what was worked out. */
export type FigureReading = { readonly value: Value; readonly from: 'measured' | 'typed' };
/** Keyed `${operation key}/${figure key}`. */
export type Readings = Readonly<Record<string, FigureReading>>;

/** A circle chosen for this part together with others. side: 0 for the first or only side of the plate. */
export type ChosenCircle = { readonly plateId: number; readonly side: number; readonly circle: number };

/** The ways for which Backgear writes a routing. */
export const PLANNED_WAYS = ['re-cut a spare', 'make from stock', 'ring and hub'] as const;
export type PlannedWay = (typeof PLANNED_WAYS)[number];

export type RingAndHub = { readonly hub: SpareWheel; readonly ring: Stock };
export type PlanBlank =
  | { readonly way: 're-cut a spare'; readonly blank: SpareWheel }
  | { readonly way: 'make from stock'; readonly blank: Stock }
  | { readonly way: 'ring and hub'; readonly blank: RingAndHub };

export type PlanAsked = PlanBlank & {
  readonly wanted: WantedPart;
  readonly shop: ShopNow;
  readonly readings: Readings;
  readonly circle?: ChosenCircle;
};
