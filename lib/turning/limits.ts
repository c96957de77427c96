import { inches, type Length, nanometres, toInches } from '../values/length.ts';
import {
  BLANK_RUN_OUT_LARGE_IN,
  BLANK_RUN_OUT_SMALL_IN,
  BLANK_SMALL_UP_TO_IN,
  FACE_RUN_OUT_PER_IN,
  OUTSIDE_UNDER_BY_PITCH_IN,
  SPAN_UNDER_IN,
} from './limits.data.ts';

/** Least and greatest that a measured size may be. */
export type LowHigh = { readonly low: Length; readonly high: Length };

/** A blank's outside diameter: +0 −0.02/P. moduleInches: 1/P, the pitch diameter of one tooth, in inches. */
export const outsideLimits = (outside: Length, moduleInches: number): LowHigh => ({
  low: nanometres(outside - inches(OUTSIDE_UNDER_BY_PITCH_IN * moduleInches)),
  high: outside,
});

/** A blank's run-out against the bore: 0.001 in to 4 in of diameter, 0.002 above. */
export const blankRunOutLimit = (diameter: Length): Length =>
  inches(toInches(diameter) <= BLANK_SMALL_UP_TO_IN ? BLANK_RUN_OUT_SMALL_IN : BLANK_RUN_OUT_LARGE_IN);

/** A face's run-out: 0.001 in for each inch of diameter. */
export const faceRunOutLimit = (diameter: Length): Length => inches(FACE_RUN_OUT_PER_IN * toInches(diameter));

/** A span: +0 −0.001 in from the wanted. */
export const spanLimits = (wanted: Length): LowHigh => ({ low: nanometres(wanted - inches(SPAN_UNDER_IN)), high: wanted });

/** Whether metal is left, gone, or right, in one word of the trade. */
export function standing(measured: Length, { low, high }: LowHigh): 'metal left' | 'metal gone' | 'within limits' {
  if (measured > high) return 'metal left';
  return measured < low ? 'metal gone' : 'within limits';
}
