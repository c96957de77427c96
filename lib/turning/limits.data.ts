/** Limits that the shop works to unless the owner types others: judgement, no source. Inches, full indicator readings where run-outs. */

/** A blank's outside: nothing over, this much ÷ P under. */
export const OUTSIDE_UNDER_BY_PITCH_IN = 0.02;
/** Run-out of a blank up to the diameter below, and above it. */
export const BLANK_RUN_OUT_SMALL_IN = 0.001;
export const BLANK_RUN_OUT_LARGE_IN = 0.002;
export const BLANK_SMALL_UP_TO_IN = 4;
/** Run-out of a face, for each inch of diameter. */
export const FACE_RUN_OUT_PER_IN = 0.001;
export const MANDREL_RUN_OUT_IN = 0.0005;
export const CUTTER_RIM_RUN_OUT_IN = 0.002;
/** A span may be this much under the wanted one, never over. */
export const SPAN_UNDER_IN = 0.001;
/** A pin in six spaces, read on the mandrel. */
export const PIN_RUN_OUT_IN = 0.002;
