import type { CleanUp } from '../blanks/clean-up.ts';
import type { Convention } from '../cutters/ranges.ts';
import type { Mounted } from '../dividing/ways.ts';
import type { Arbor, Chuck, Cutter, Head, Machine, Mandrel, OtherTool, Plate } from '../tooling/tooling.ts';
import type { Length, LengthUnit } from '../values/length.ts';

/**
 * The shop as it stands: what is owned or lent to it, the lathe and the mill that this work is done on, and the owner's defaults.
 * convention: on which count a numbered cutter is exact. cleanUp: as the owner typed it. paper: the slip used for touching.
 * unit: of turning, speeds and times; null takes the unit of the gear's pitch. mounted: what stands on the dividing head; left out while
 * nothing does.
 */
export type ShopNow = {
  readonly cutters: readonly Cutter[];
  readonly plates: readonly Plate[];
  readonly heads: readonly Head[];
  readonly mandrels: readonly Mandrel[];
  readonly arbors: readonly Arbor[];
  readonly chucks: readonly Chuck[];
  readonly others: readonly OtherTool[];
  readonly lathe: Machine | null;
  readonly mill: Machine | null;
  readonly convention: Convention;
  readonly cleanUp: CleanUp;
  readonly paper: Length;
  readonly unit: LengthUnit | null;
  readonly mounted?: MountedNow;
};

/** The plate, circle and gears that the last wheel was divided by, on a head of so many turns. */
export type MountedNow = Mounted & { readonly turns: number };
