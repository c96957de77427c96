/**
 * What is assumed of readings and of wear. Every number here is a judgement; reading errors can be typed over.
 * Errors are those that two readings in three stay within. in: inches; m: parts of the module.
 */
export const READING_ERROR_IN = {
  outside: 0.002,
  root: 0.005,
  depth: 0.004,
  wall: 0.003,
  span: 0.001,
  'over pins': 0.001,
  centres: 0.003,
} as const;

/** A rolled print read with a protractor. */
export const HELIX_ERROR_DEG = 1;

/** Thinning of the tooth along the pitch circle by wear and by the lash that was cut in: half of a bell of this width, inch + m. */
export const WEAR_SPREAD = { inch: 0.003, m: 0.02 } as const;
/** Wear is never quite even along the flank: this part of it comes on top of the reading error of a span. */
export const UNEVEN = 0.1;

/** How much of the outside diameter may be gone (turned down, worn, blank under size): in m, how often, and how wide each step stands. */
export const TIP_LOSS: readonly { readonly gone: number; readonly often: number; readonly wide: number }[] = [
  { gone: 0, often: 0.3, wide: 0.005 },
  { gone: 0.012, often: 0.22, wide: 0.006 },
  { gone: 0.03, often: 0.16, wide: 0.008 },
  { gone: 0.06, often: 0.12, wide: 0.012 },
  { gone: 0.11, often: 0.09, wide: 0.02 },
  { gone: 0.2, often: 0.06, wide: 0.04 },
  { gone: 0.4, often: 0.03, wide: 0.08 },
  { gone: 0.7, often: 0.02, wide: 0.12 },
];

/** How far a root lies from where the system puts it: stamped depths differ (m, on the diameter). */
export const ROOT_SPREAD_M = 0.02;
/** How far centres in an old casting lie from the sum of the pitch radii (m). */
export const CENTRES_SPREAD_M = 0.03;
/** What a composite flank may do to a span, away from the pitch line (m). */
export const COMPOSITE_SPREAD_M = 0.006;

/** How far off a span may be whose jaws would touch beyond the tips, and a pin that falls to the bottom of the space (m). */
export const OFF_FLANK_SPREAD_M = 0.2;
export const BOTTOM_SPREAD_M = 0.05;

/** A wheel whose rack was shifted, and how far (m). */
export const SHIFTED_OFTEN = 0.06;
export const SHIFTS: readonly number[] = Array.from({ length: 15 }, (_, i) => -0.28 + i * 0.06).filter((x) => Math.abs(x) > 0.03);
export const SHIFT_STEP = 0.06;
/** A helical wheel whose pitch is standard in the plane of rotation and not square to the tooth. */
export const TRANSVERSE_OFTEN = 0.25;
/** A print under this angle is that of straight teeth. */
export const STRAIGHT_DEG = 0.75;

/** Cycloidal and odd old forms, damaged wheels, slips in counting: none of the candidates. */
export const NONE_OFTEN = 0.04;
/** A second wheel that came from elsewhere. */
export const STRANGER_OFTEN = 0.08;

/** The list of candidates, and from which chance on a rival is worth a measurement. */
export const LISTED = 8;
export const RIVAL = 0.01;
/** A reading that is further off than so many of its errors contradicts a candidate. */
export const CONTRADICTS = 2.5;
/** Pitches closer together than this part are near misses. */
export const NEAR_MISS = 0.02;
