import { inv, inverseInv } from '../gears/involute.formulas.ts';
import { type InvoluteSpline, toothHalfAngle } from './involute.formulas.ts';

/**
 * What is measured with two pins on an involute spline. N teeth, a pressure angle in radians, D pitch diameter, k pin diameter, t thickness of a
 * shaft's tooth or s width of a hub's space, both along the pitch circle; all lengths in one unit.
 */
export type PinShaft = { readonly N: number; readonly a: number; readonly D: number; readonly k: number; readonly t: number };
export type PinHub = { readonly N: number; readonly a: number; readonly D: number; readonly k: number; readonly s: number };

/** An odd count has no space opposite a space: the pins stand 90°/N off the diameter, each. */
const across = (N: number): number => (N % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * N)));

/**
 * Pressure angle at the middle of a pin in a shaft's space, in radians: inv p = t/D + inv a + k/(D cos a) − π/N.
 * Source: SDP/SI, Elements of Metric Gear Technology, section on over-pin measurement (external). Throws RangeError where the right side is
 * below zero: the pin falls through between the flanks. Example: N 20, a 20°, D 20, k 1.7, t π/2: 24.135°.
 */
export const pinAngleShaft = ({ N, a, D, k, t }: PinShaft): number => inverseInv(t / D + inv(a) + k / (D * Math.cos(a)) - Math.PI / N);

/**
 * Over two pins on a shaft: D cos a ÷ cos p + k, for an odd count the first term times cos(90°/N).
 * Source: as pinAngleShaft. Example: N 20, a 20°, D 20, k 1.7, t π/2: 22.294.
 */
export const overPins = (pins: PinShaft): number => ((pins.D * Math.cos(pins.a)) / Math.cos(pinAngleShaft(pins))) * across(pins.N) + pins.k;

/**
 * Pressure angle at the middle of a pin in a hub's space, in radians: inv p = s/D + inv a − k/(D cos a).
 * Source: SDP/SI, inch section, p. T60 (internal gears), written for the space instead of the tooth. Throws RangeError where it is below
 * zero: the pin is too big for the space. Example: N 20, a 20°, D 20, k 1.44, s π/2: 15.5°.
 */
export const pinAngleHub = ({ a, D, k, s }: PinHub): number => inverseInv(s / D + inv(a) - k / (D * Math.cos(a)));

/**
 * Between two pins in a hub: D cos a ÷ cos p − k, for an odd count the first term times cos(90°/N). Source: as pinAngleHub.
 * Example: N 20, a 20°, D 20, k 1.44, s π/2: 18.6635.
 */
export const betweenPins = (pins: PinHub): number => ((pins.D * Math.cos(pins.a)) / Math.cos(pinAngleHub(pins))) * across(pins.N) - pins.k;

/**
 * Diameter at which a pin touches the flanks. The line of contact is tangent to the base circle; along it lies D cos a tan p ÷ 2 to the pin's
 * middle, half a pin less for a shaft and more for a hub. Source: derived. Throws RangeError where a shaft's pin would touch inside the base circle.
 */
export function pinContact(part: 'shaft' | 'hub', { a, D, k }: Omit<PinHub, 's'>, p: number): number {
  const base = D * Math.cos(a);
  const along = base * Math.tan(p) + (part === 'shaft' ? -k : k);
  if (along < 0) throw new RangeError('the pin touches inside the base circle');
  return Math.hypot(base, along);
}

/**
 * The pin that touches the flanks at diameter Q:
 *   shaft: D cos a (tan p − tan q), p = q + 180°/N − h;   hub: D cos a (tan q − tan p), p = q − h
 * cos q = D cos a ÷ Q, h half the angle that a shaft's tooth (a hub's space) takes up at Q. Source: derived: the pin's middle lies on the line
 * that is tangent to the base circle through the point it touches. Throws RangeError where Q lies inside the base circle, or the hub's space is so
 * wide there that the line does not meet its middle. Example: shaft N 6, a 30°, D 1, Q 1, teeth half a pitch: 0.3660254; hub the same: 0.2320508.
 */
export function pinTouching(part: 'shaft' | 'hub', spline: Pick<InvoluteSpline, 'N' | 'm' | 'a' | 't'>, Q: number): number {
  const { N, m, a } = spline;
  const base = N * m * Math.cos(a);
  if (Q < base) throw new RangeError('there is no flank inside the base circle');
  const [q, h] = [Math.acos(base / Q), toothHalfAngle(spline, Q / 2)];
  const p = part === 'shaft' ? q + Math.PI / N - h : q - h;
  const k = base * Math.abs(Math.tan(p) - Math.tan(q));
  if (p >= 0 && p < Math.PI / 2 && k > 0) return k;
  throw new RangeError('no pin touches the flanks there');
}
