import { gapHalfAngle } from './straight.formulas.ts';

/**
 * Milling a straight-sided shaft with a side-and-face cutter. N keys, D outside as turned, d small diameter wanted, w key width,
 * c cutter width, all in one unit. Lines are looked at from the end of the shaft, the cutter above, the key's middle line upright.
 */
export type ShaftToMill = { readonly N: number; readonly D: number; readonly d: number; readonly w: number; readonly c: number };

/**
 * How far the cutter's middle stands off the shaft's for one side of a key, so that its near face is half a key off: (w + c) ÷ 2.
 * Source: derived. Example: w 0.3125, c 0.1875: 0.2500.
 */
export const sideOffset = ({ w, c }: ShaftToMill): number => (w + c) / 2;

/**
 * Height over the shaft's middle at which the floor of a side cut lies, when its inner corner is to lie on the small diameter:
 *   √((d/2)² − (w/2)²)
 * Source: derived. Example: d 1.058, w 0.3125: 0.5054.
 */
const sideFloor = ({ d, w }: ShaftToMill): number => Math.sqrt(d * d - w * w) / 2;

/** Depth of the side cuts from touching the outside: D/2 less the floor. Source: derived. Example: D 1.25, d 1.058, w 0.3125: 0.1196. */
export const sideDepth = (shaft: ShaftToMill): number => shaft.D / 2 - sideFloor(shaft);

/**
 * Depth of the bottom cuts from touching the outside, when both corners of the cutter are to lie on the small diameter:
 *   D/2 − √((d/2)² − (c/2)²)
 * Source: derived. The middle of the cut lies under the circle: room, not a fault. Example: D 1.25, d 1.058, c 0.1875: 0.1044.
 */
export const bottomDepth = ({ D, d, c }: ShaftToMill): number => D / 2 - Math.sqrt(d * d - c * c) / 2;

/**
 * The widest cutter that clears the bottom of a space in one cut without touching a key: d × sin(180°/N − asin(w ÷ d)).
 * Source: derived: chord of the gap on the small diameter. Example: N 6, d 1.0625, w 0.3125: 0.2371.
 */
export const widestForOneCut = ({ N, d, w }: ShaftToMill): number => d * Math.sin(gapHalfAngle(N, w, d));

/**
 * The widest cutter whose far corner clears the next key while it cuts the side of this one:
 *   (y sin 2u − w/2) ÷ cos 2u − w/2,   u = 180°/N, y the floor of the side cut; no limit from four keys down.
 * Source: derived: the far corner (w/2 + c, y) keeps w/2 off the next key's middle line. Example: N 6, d 1.0625, w 0.3125: 0.41.
 */
export function widestForSides(shaft: ShaftToMill): number {
  const [turn, y] = [(2 * Math.PI) / shaft.N, sideFloor(shaft)];
  if (Math.cos(turn) <= 1e-12) return Number.POSITIVE_INFINITY;
  return (y * Math.sin(turn) - shaft.w / 2) / Math.cos(turn) - shaft.w / 2;
}

/** Half the angle that a bottom cut takes up on the small diameter: asin(c ÷ d). Source: derived. Example: c 0.1875, d 1.058: 10.21°. */
const cutHalfAngle = ({ c, d }: ShaftToMill): number => Math.asin(c / d);

/**
 * Half the angle that a cut takes up where it leaves the outside: asin(c ÷ D). Two cuts turned by no more than twice this leave nothing
 * standing between them, at the outside least of all. Source: derived. Example: c 0.1875, D 1.25: 8.63°.
 */
export const outerHalfAngle = ({ c, D }: ShaftToMill): number => Math.asin(c / D);

/**
 * How far from the middle of a space the outermost bottom cut may be turned before its corner meets a key's foot, in radians:
 *   180°/N − asin(w ÷ d) − asin(c ÷ d)
 * Source: derived. Below zero: the cutter is too wide for the space. Example: N 6, d 1.058, w 0.3125, c 0.1875: 2.61°.
 */
export const mostTurned = (shaft: ShaftToMill): number => gapHalfAngle(shaft.N, shaft.w, shaft.d) - cutHalfAngle(shaft);

/**
 * Twice the distance from the middle of the highest metal left between a side cut and the bottom cut next to it:
 *   2 √(y² + (c/2)²),   y = (f − (c/2) sin q) ÷ cos q
 * q: angle between the key's middle line and that of the bottom cut (180°/N − how far it is turned), f floor of the side cut: the corner
 * where the cutter's wall meets that floor. Source: derived. Holds while the wall meets the floor outside the small diameter; where keys are
 * few and thin the side cut of the next key may take that corner off too, and the metal stands lower than said.
 * Example: N 6, d 1.058, w 0.3125, c 0.1875, turned 2.4545°: 1.0590.
 */
export function highestLeft(shaft: ShaftToMill, turned: number): number {
  const q = Math.PI / shaft.N - turned;
  const y = (sideFloor(shaft) - (shaft.c / 2) * Math.sin(q)) / Math.cos(q);
  return 2 * Math.hypot(y, shaft.c / 2);
}

/**
 * Whether a fin as high as the keys stays standing between the wall of the outermost bottom cut and the side cut: the wall, where it leaves the
 * outside, lies further than w/2 + c from the key's middle line, or under the floor of the side cut. Source: derived.
 */
export function leavesFin(shaft: ShaftToMill, turned: number): boolean {
  const q = Math.PI / shaft.N - turned;
  const y = Math.sqrt(shaft.D ** 2 - shaft.c ** 2) / 2;
  const aside = y * Math.sin(q) - (shaft.c / 2) * Math.cos(q);
  const up = y * Math.cos(q) + (shaft.c / 2) * Math.sin(q);
  return aside > shaft.w / 2 + shaft.c + 1e-12 || up < sideFloor(shaft) - 1e-12;
}

/**
 * One cut per space, (D − d)/2 deep, with the same cutter: how far its corners stand outside the small diameter,
 *   √((d/2)² + (c/2)²) − d/2
 * because a flat floor that touches the circle in its middle lies outside it everywhere else. True while the side cuts leave the corners
 * standing (leftBySingleCut says so). Source: derived. Example: d 1.0625, c 0.1875: 0.0082.
 */
export const singleCutEdge = ({ d, c }: ShaftToMill): number => (Math.hypot(d, c) - d) / 2;

/**
 * What meets the side cut beside that one cut. wall: its wall meets the side cut's floor, a ridge stands between. floor: the side cut has taken
 * its corner off, the two floors meet. fin: they do not meet at all, and the blank's outside is left standing between them.
 */
export type SingleCutLeaves = 'wall' | 'floor' | 'fin';

/** Which of the three it is. Source: derived: heights of the corner and of the side cut's floor, and leavesFin with nothing turned. */
export function leftBySingleCut(shaft: ShaftToMill): SingleCutLeaves {
  if (leavesFin(shaft, 0)) return 'fin';
  const u = Math.PI / shaft.N;
  const wallMeets = (sideFloor(shaft) - (shaft.c / 2) * Math.sin(u)) / Math.cos(u);
  return wallMeets >= shaft.d / 2 ? 'wall' : 'floor';
}

/**
 * How far the metal beside that one cut stands outside the small diameter. wall: highestLeft with nothing turned, less d/2; fin: (D − d)/2;
 * floor: √(x² + (d/2)²) − d/2 with x = (f − (d/2) cos u) ÷ sin u, u = 180°/N, f floor of the side cut, nothing when x is below 0.
 * Source: derived. Examples: d 1.0625, w 0.3125, c 0.1875: 0.0091 (wall); d 10.988, w 2.911, c 2.693: 0.1048 (floor).
 */
export function singleCutRidge(shaft: ShaftToMill): number {
  const left = leftBySingleCut(shaft);
  if (left === 'fin') return (shaft.D - shaft.d) / 2;
  if (left === 'wall') return (highestLeft(shaft, 0) - shaft.d) / 2;
  const u = Math.PI / shaft.N;
  const x = Math.max(0, (sideFloor(shaft) - (shaft.d / 2) * Math.cos(u)) / Math.sin(u));
  return Math.hypot(x, shaft.d / 2) - shaft.d / 2;
}
