import { inv, inverseInv } from '../gears/involute.formulas.ts';

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
 * The pin that touches a shaft's flanks on the pitch circle when its teeth are half a pitch thick:
 *   D cos a (tan(a + 90°/N) − tan a)
 * Source: derived from the condition; it gives the pins printed in Omni Gear and Machine, Involute Splines, Old American Standard, to seven
 * places. Example: N 6, a 30°, D 1: 0.3660254.
 */
export const pinAtPitch = (N: number, a: number, D: number): number => D * Math.cos(a) * (Math.tan(a + Math.PI / (2 * N)) - Math.tan(a));
