/** Base radius, pitch radius and outside radius of a wheel, one unit, in the plane of the wheels. */
export type Radii = { readonly base: number; readonly pitch: number; readonly outside: number };

/** How far along the line of action, from where it touches its own base circle, a wheel's tips reach: √(Ro² − Rb²). */
const reach = ({ base, outside }: Radii): number => Math.sqrt(Math.max(0, outside ** 2 - base ** 2));

/** A length of contact as base pitches: g ÷ (π m cos a). */
const inBasePitches = (g: number, a: number, m: number): number => g / (Math.PI * m * Math.cos(a));

/**
 * Length of contact of two wheels whose line of action is T long between the base circles: the piece of it that lies within both outsides
 * and between the two points of touch, beyond which there is no involute. T = C sin aw.
 * g = min(√(Ro1² − Rb1²), T) + min(√(Ro2² − Rb2²), T) − T
 */
const lengthOfContact = (one: Radii, mate: Radii, T: number): number => Math.max(0, Math.min(reach(one), T) + Math.min(reach(mate), T) - T);

/**
 * Transverse contact ratio of two wheels at a centre distance C: (√(Ro1² − Rb1²) + √(Ro2² − Rb2²) − C sin aw) ÷ (π m cos a), neither root
 * longer than C sin aw. a and m transverse pressure angle and module, cos aw = (Rb1 + Rb2)/C.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-109, table 11-1 (without the bounds, which are derived). Undercut shortens it further.
 * Throws RangeError when the base circles overlap. Example: mn 3, 20°, 30°, 12 and 60 at 125: 1.2939.
 */
export function contactRatioAt(one: Radii, mate: Radii, C: number, a: number, m: number): number {
  if (!(C >= (one.base + mate.base) * (1 - 1e-12))) throw new RangeError(`two wheels do not run at a centre distance of ${C}`);
  return inBasePitches(lengthOfContact(one, mate, Math.sqrt(Math.max(0, C ** 2 - (one.base + mate.base) ** 2))), a, m);
}

/**
 * Contact ratio of two wheels on their true centres: the same with C sin aw = (R1 + R2) sin a. Example: 28 and 45 teeth, 14½°: 2.007.
 * Source: as contactRatioAt.
 */
export const contactRatio = (one: Radii, mate: Radii, a: number, m: number): number =>
  inBasePitches(lengthOfContact(one, mate, (one.pitch + mate.pitch) * Math.sin(a)), a, m);

/**
 * Contact ratio with a rack whose teeth stand A above the pitch line that rolls on the standard pitch circle (for a shifted wheel: the rack's
 * addendum less the shift): (√(Ro² − Rb²) − R sin a + min(A ÷ sin a, R sin a)) ÷ (π m cos a).
 * Source: SDP/SI, Elements of Metric Gear Technology, table 11-1, spur gear and rack (value from memory); the bound is derived.
 * Example: 32 teeth at 14½° with a rack: 2.096.
 */
export function contactRatioWithRack(one: Radii, A: number, a: number, m: number): number {
  const foot = one.pitch * Math.sin(a);
  return inBasePitches(Math.max(0, reach(one) - foot + Math.min(A / Math.sin(a), foot)), a, m);
}

/**
 * Contact ratio of a wheel inside a ring at a centre distance C: (√(Ro1² − Rb1²) − √(Ri2² − Rb2²) + C sin aw) ÷ (π m cos a), cos aw = (Rb2 − Rb1)/C.
 * `ring.outside` is the radius to the tips of the ring, inward. Contact begins no nearer than where the line touches the wheel's base circle.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-46, table 5-4 (the formula and its worked pairs); the bound is derived.
 * Throws RangeError when C is less than the base radii differ. Example: 16 in 24, m 3, v2 1.5: 1.676.
 */
export function contactRatioInRing(one: Radii, ring: Radii, C: number, a: number, m: number): number {
  const apart = ring.base - one.base;
  if (!(C >= apart * (1 - 1e-12) && apart > 0)) throw new RangeError(`a wheel does not run in the ring at a centre distance of ${C}`);
  const T = Math.sqrt(Math.max(0, C ** 2 - apart ** 2));
  return inBasePitches(Math.max(0, reach(one) - Math.max(0, reach(ring) - T)), a, m);
}
