import { inches } from '../values/length.ts';

/** Defaults that the owner may change. All are judgement, unless a source is named. */

/** Taken off the diameter so that no trace of the old roots stays. */
export const CLEAN_UP = inches(0.01);
/** How deep a case is where nobody knows: a guess. */
export const CASE_DEPTH = inches(0.04);
/** Two bores, two splines or two faces this near are the same. */
export const SAME_WITHIN = inches(0.002);
/** Less than this share of the whole depth left a side, after cleaning up, is only just enough. */
export const ONLY_JUST_SHARE = 0.2;
/** Metal under the new roots, in whole depths: accepted from the first, refused below the second (value from memory). */
export const WALL_WANTED = 1.2;
export const WALL_LEAST = 1;
/** The trade's rule of thumb. */
export const THUMB_TEETH = 5;
/** Taken off a bar's diameter to true it, off its two faces, and lost to the parting tool. */
export const STOCK = { truing: inches(0.06), facing: inches(0.06), parting: inches(0.125) } as const;
