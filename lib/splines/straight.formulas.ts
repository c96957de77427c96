/**
 * What a straight-sided spline carries on the sides of its keys, in inch-pounds for each inch that hub and shaft bear on one another.
 *   T = p × N × h × (D + d) ÷ 4
 * p pressure on the sides in lb/in² (1000 in the standard), N splines, h = (D − d)/2, D outside, d small diameter in inches.
 * Source: SAE J499a, Parallel Side Splines for Soft Broached Holes in Fittings, equation 1 (pressure × splines × mean radius × h).
 * True when all keys bear alike, which new ones seldom do. Example: p 1000, N 6, D 1, d 0.85: 208.1.
 */
export const torquePerInch = (p: number, N: number, D: number, d: number): number => (p * N * ((D - d) / 2) * (D + d)) / 4;

/**
 * Half the angle that a key of width w takes up on the circle of diameter d, in radians: asin(w ÷ d).
 * Source: derived: its corner lies w/2 off the key's middle line. Throws RangeError where the key is as wide as the circle.
 * Example: w 0.3125, d 1.0625: 17.10°.
 */
function keyHalfAngle(w: number, d: number): number {
  if (!(w > 0 && w < d)) throw new RangeError(`a key ${w} wide does not stand on a circle of ${d}`);
  return Math.asin(w / d);
}

/**
 * Half the angle between two neighbouring keys on the small diameter: 180°/N − asin(w ÷ d), in radians; nothing or less when they meet.
 * Source: derived. Example: N 6, w 0.3125, d 1.0625: 12.90°.
 */
export const gapHalfAngle = (N: number, w: number, d: number): number => Math.PI / N - keyHalfAngle(w, d);
