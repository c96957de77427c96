import type { Gear, Hardness, Material, Trust } from '../gears/gear.ts';
import type { Length } from '../values/length.ts';

/** What a look at teeth or bore told. */
export const CONDITIONS = ['good', 'worn', 'broken', 'not looked at'] as const;
export type Condition = (typeof CONDITIONS)[number];

/**
 * How the old root was measured.
 * wall: least of six walls from bore to root, and the measured bore. across roots: over knife edges in two opposite (odd counts: nearly
 * opposite) roots. depth: from tip to root, with the outside as the jaws read it. pin: over two pins that touch the bottoms.
 * jaws: outside between flat jaws, nothing else.
 */
export type RootReading =
  | { readonly by: 'wall'; readonly wall: Length; readonly bore: Length }
  | { readonly by: 'across roots'; readonly across: Length }
  | { readonly by: 'depth'; readonly depth: Length; readonly jaws: Length }
  | { readonly by: 'pin'; readonly over: Length; readonly pin: Length }
  | { readonly by: 'jaws'; readonly jaws: Length };

/** A loose wheel that something may be cut from. runOut: full indicator reading of the old roots against the bore; null when not tried. */
export type SpareWheel = {
  readonly id: number;
  readonly name: string;
  readonly gear: Gear;
  readonly reading: RootReading | null;
  readonly runOut: Length | null;
  readonly trust: Trust;
  readonly condition: { readonly teeth: Condition; readonly bore: Condition };
  readonly material: Material;
  readonly hardness: Hardness;
  readonly caseDepth: Length | null;
};

/** A wheel that belongs and is not there. */
export type Wanted = { readonly id: number; readonly name: string; readonly gear: Gear };
