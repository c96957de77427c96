/**
 * Cross movement that brings a cutter central after its side has touched the side of round work. s = (D + w)/2 + paper.
 * D diameter of the work, w width of the cutter, paper the slip held between them. Source: US Army TC 9-524, Fundamentals of Machine
 * Tools, ch. 8, "Alignment of milling cutters": radius of the shaft plus half the width of the cutter. Example: 3.000, 0.300, 0.002 gives 1.652.
 */
export const centralTravel = (D: number, w: number, paper: number): number => (D + w) / 2 + paper;

/**
 * How far off centre a cutter stands, from the shift of the gash when the mandrel is turned end for end. e = s/2.
 * Source: derived: turned about, a gash that stood e to one side stands e to the other. Example: 0.006 gives 0.003.
 */
export const offCentre = (shift: number): number => shift / 2;

/**
 * How far every tooth leans when the cutter is e off centre. q = asin(e/R), in radians, which is e/R while e is small; R pitch radius.
 * Source: derived: a plane e beside the axis meets the circle R at that angle from the radius. Example: 0.003 at 1.375 gives 0.0022 (0.125°).
 */
export function leanOfTeeth(e: number, R: number): number {
  if (!(R > 0 && Math.abs(e) < R)) throw new RangeError(`no lean for ${e} at ${R}`);
  return Math.asin(e / R);
}
