/**
 * What is left on for the measured last cuts, off the diameter: 0.030 in, which is 0.015 a side, taken as two equal cuts of 0.015 off
 * the diameter (0.0075 a side), each measured. "0.015 a side left" and "0.030 in two measured cuts of 0.015" are this one rule: the
 * first counts by the side, the second by the diameter. Judgement, no source; of a kind with Machine Shop Practice (finish cuts under
 * 0.015 deep; for accuracy two, the first short, then measure).
 */
export const LAST_OFF_DIAMETER_IN = 0.03;
export const LAST_CUTS = 2;

/** Depth of one roughing pass, a side: machine tool speeds and feeds (teaching sheet), depth of cut, lathe, high-speed steel, plain steel. */
export const ROUGHING_DEPTH_IN = 0.03;

/** What comes off one side between two diameters. h = (D − d)/2. Example: 4.125 to 3.000 is 0.5625. */
export const perSide = (D: number, d: number): number => (D - d) / 2;

/** Less than this part of a pass is no pass of its own: the others take it. */
const SLACK = 0.001;

/**
 * Equal passes for a depth t at no more than p a pass. n = ceil(t/p − 0.001); the slack lets a sum that is whole but for rounding stay whole.
 * Source: common practice, no source. Throws RangeError unless p is above 0. Example: 0.2696 at 0.030 gives 9.
 */
export function passesFor(t: number, p: number): number {
  if (!(p > 0)) throw new RangeError(`no passes of ${p}`);
  return Math.max(0, Math.ceil(t / p - SLACK));
}

/** The diameters between which a blank is roughed and finished. All in one unit. */
export type Stages = { readonly start: number; readonly root: number; readonly rough: number; readonly end: number };

/**
 * Where roughing over gaps ends, and where roughing ends. D old outside, R old root (D without old teeth), d new outside, last: to be
 * left for the last cuts. A blank with too little solid metal for the whole of it is still rough at the gaps when they begin.
 * Example: 4.125, 3.5858, 3.000, 0.030: over gaps to 3.5858, solid to 3.030.
 */
export function stagesOf(D: number, R: number, d: number, last: number): Stages {
  const rough = Math.min(D, d + last);
  return { start: D, root: Math.min(D, Math.max(R, rough)), rough, end: d };
}
