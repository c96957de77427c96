/**
 * Involute splines. major, minor: diameters as multiples of 1/P (of the module m) beyond N: (N + major)/P. All have the pressure angle 30°.
 */
export const ROOTS = ['flat', 'fillet'] as const;
export type Root = (typeof ROOTS)[number];

type Proportions = {
  readonly shaftOutside: number;
  readonly shaftInside: number;
  /** From this diametral pitch on, the other depth. */
  readonly fine?: { readonly from: number; readonly shaftInside: number };
  readonly hubOutside: number;
};

/**
 * ANSI B92.1-1970, R1993, 30° side fit, equations for basic dimensions as printed at engineersedge.com, "American National Standard Involute
 * Splines". That page prints (N − 1.2)/P for the fillet root of 16/32 and finer, in the column of 45°; a fillet lies deeper than a flat root,
 * so it cannot belong here: 2 is a value from memory.
 */
export const ANSI: Readonly<Record<Root, Proportions>> = {
  flat: { shaftOutside: 1, shaftInside: -1.35, hubOutside: 1.35 },
  fillet: { shaftOutside: 1, shaftInside: -1.8, fine: { from: 16, shaftInside: -2 }, hubOutside: 1.8 },
};
export const ANSI_SOURCE = 'ANSI B92.1-1970, R1993, Involute Splines, equations of basic dimensions, 30° side fit';

/** ISO 4156, 30°. Source: value from memory. */
export const ISO: Readonly<Record<Root, Proportions>> = {
  flat: { shaftOutside: 1, shaftInside: -1.5, hubOutside: 1.5 },
  fillet: { shaftOutside: 1, shaftInside: -1.8, hubOutside: 1.8 },
};
export const ISO_SOURCE = 'ISO 4156, 30° side fit, value from memory';

/**
 * DIN 5480: the shift makes the hub's root circle the reference diameter. Rack addendum 0.45 m and dedendum 0.55 m: worked sheet of a spline
 * 6 × 0.8 × 30° × 6, xueke.org document 311542. The diameters that follow from them: value from memory.
 */
export const DIN_ADDENDUM = 0.45;
export const DIN_DEDENDUM = 0.55;
export const DIN_SOURCE = 'DIN 5480: addendum 0.45 m, dedendum 0.55 m (worked sheet of 6 × 0.8 × 30° × 6); the shift, value from memory';
/** Least and greatest shift x that the series uses. Source: value from memory. */
export const DIN_SHIFT = { least: -0.05, most: 0.45 } as const;

/** Depth of tooth as a fraction of the outside diameter. Source: as OLD_SOURCE, tables of 6, 10 and 16 splines. */
export const OLD_DEPTHS = [
  { name: 'deep', h: 0.05 },
  { name: 'intermediate', h: 0.0425 },
  { name: 'shallow', h: 0.035 },
] as const;
export type OldDepth = (typeof OLD_DEPTHS)[number]['name'];
export const OLD_COUNTS: readonly number[] = [6, 10, 16, 24, 36];
export const OLD_SOURCE = 'Omni Gear and Machine, Involute Splines, Old American Standard; its geometry worked back from its pins';

/** Diametral pitches of ANSI B92.1 (the second number of 16/32 is twice the first) and modules of ISO 4156 and DIN 5480. Source: value from memory. */
export const ANSI_PITCHES: readonly number[] = [2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48];
export const ISO_MODULES: readonly number[] = [0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10];
export const DIN_MODULES: readonly number[] = [0.5, 0.6, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10];

/** Pins as multiples of 1/P: over a shaft and between the teeth of a hub. Source: value from memory (1.92 and 1.728). */
export const PIN_SHAFT = 1.92;
export const PIN_HUB = 1.728;
