import type { Angle } from '../values/angle.ts';
import type { Length } from '../values/length.ts';
import type { Ratio } from '../values/ratio.ts';

/** DP: teeth per inch of pitch diameter. module: millimetres of pitch diameter per tooth. CP: inches along the pitch circle per tooth. */
export type PitchKind = 'DP' | 'module' | 'CP';
export type Pitch = { readonly kind: PitchKind; readonly size: Ratio };

/**
 * What a tooth is like beside its pitch. addendum and dedendum are multiples of 1/P (of the module); `extra` is added to the
 * dedendum whatever the pitch (0.002 in in the fine system). Each may be overtyped by measurement.
 */
export type ToothSystem = {
  readonly name: string;
  readonly angle: Angle;
  readonly addendum: number;
  readonly dedendum: number;
  readonly extra: Length;
};

/** diameter: of a plain or keyed bore; of a splined bore the diameter at the bottom of its grooves. minor: across the splines' tops. */
export type Bore =
  | { readonly form: 'plain'; readonly diameter: Length }
  | { readonly form: 'keyed'; readonly diameter: Length; readonly keyWidth: Length; readonly keyDepth: Length }
  | { readonly form: 'splined'; readonly diameter: Length; readonly minor: Length; readonly splines: number; readonly keyWidth: Length };

/** A ring-shaped hollow in one or both faces, between two diameters. */
export type Recess = { readonly side: 'marked' | 'other' | 'both'; readonly inner: Length; readonly outer: Length };
/** A ring of holes or spokes: nothing solid between the two diameters. */
export type Opening = { readonly what: 'holes' | 'spokes'; readonly inner: Length; readonly outer: Length };

/** Where the metal is. 'unknown' means that it has to be measured first; it never counts as solid. */
export type Body =
  | { readonly known: false }
  | { readonly known: true; readonly recesses: readonly Recess[]; readonly openings: readonly Opening[] };

export type Hand = 'right' | 'left';

/** A spur or helical wheel as drawn. face and bore are null when nobody has measured them. */
export type Gear = {
  readonly teeth: number;
  readonly pitch: Pitch;
  readonly system: ToothSystem;
  readonly helix: { readonly angle: Angle; readonly hand: Hand } | null;
  readonly face: Length | null;
  readonly bore: Bore | null;
  readonly body: Body;
};

export const MATERIALS = ['steel', 'cast iron', 'bronze', 'brass', 'aluminium', 'phenolic', 'zinc', 'unknown'] as const;
export type Material = (typeof MATERIALS)[number];
/** As tried with a file on tip, root, web and bore. */
export const HARDNESSES = ['file bites', 'case hard', 'hard through', 'not tried'] as const;
export type Hardness = (typeof HARDNESSES)[number];
export const TRUSTS = ['original', 'replacement', 'unknown'] as const;
export type Trust = (typeof TRUSTS)[number];
