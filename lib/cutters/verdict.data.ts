/**
 * How much error of form at the tips is put up with, as a part of the module (of 1/P), when a cutter is used outside its range.
 * All judgement, no source: a cutter used inside its own range leaves up to 0.095 at the end of No. 8 and 0.05 to 0.065 in the others,
 * so 0.08 too thin is still of the order that the trade lives with; metal left at the tips meets the mate's flank first, so hardly any is.
 */
export const FORM_JUDGEMENT = {
  hairThin: 0.02,
  thin: 0.08,
  hairFull: 0.005,
} as const;

/** Stamped depth and the system's depth further apart than this are asked about (judgement). Inches. */
export const STAMP_APART_INCHES = 0.002;
