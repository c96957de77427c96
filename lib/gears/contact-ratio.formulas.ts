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

/** Length of the line of action between the base circles of two wheels: C sin aw = √(C² − (Rb1 + Rb2)²). Throws RangeError when they overlap. */
function lineBetween(one: Radii, mate: Radii, C: number): number {
  if (!(C >= (one.base + mate.base) * (1 - 1e-12))) throw new RangeError(`two wheels do not run at a centre distance of ${C}`);
  return Math.sqrt(Math.max(0, C ** 2 - (one.base + mate.base) ** 2));
}

/**
 * Transverse contact ratio of two wheels at a centre distance C, as standards have it: (√(Ro1² − Rb1²) + √(Ro2² − Rb2²) − C sin aw) ÷ (π m cos a).
 * a and m transverse pressure angle and module, cos aw = (Rb1 + Rb2)/C. Where tips foul it counts contact that is none: see involuteContactAt.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-109, table 11-1. Below 0 tips do not reach each other: 0 is given.
 * Throws RangeError when the base circles overlap. Example: mn 3, 20°, 30°, 12 and 60 at 125: 1.2939.
 */
export const contactRatioAt = (one: Radii, mate: Radii, C: number, a: number, m: number): number =>
  inBasePitches(Math.max(0, reach(one) + reach(mate) - lineBetween(one, mate, C)), a, m);

/** The same with neither reach longer than the line between the base circles: what is left where tips foul. Source: derived. Example: 12 and 24 unshifted: 1.4054. */
export const involuteContactAt = (one: Radii, mate: Radii, C: number, a: number, m: number): number =>
  inBasePitches(lengthOfContact(one, mate, lineBetween(one, mate, C)), a, m);

/**
 * The same with no flank below where each wheel's own hob begins it: what is left of hobbed wheels that are undercut.
 *   (min(√(Ro1² − Rb1²), T − L2) − max(T − √(Ro2² − Rb2²), L1)) ÷ (π m cos a),  T = C sin aw,  L = √(RF² − Rb²)
 * forms: the radii RF at which the involutes begin, of one and mate. Source: derived: only what lies on both flanks touches.
 * Example: 12 and 60, m 1, 14½°, 1/1.157, RF 5.87554 and 29.25665: 0.9941, where a form cutter leaves 1.2842.
 */
export function hobbedContactAt(one: Radii, mate: Radii, forms: readonly [number, number], C: number, a: number, m: number): number {
  const T = lineBetween(one, mate, C);
  const [L1, L2] = [Math.sqrt(Math.max(0, forms[0] ** 2 - one.base ** 2)), Math.sqrt(Math.max(0, forms[1] ** 2 - mate.base ** 2))];
  return inBasePitches(Math.max(0, Math.min(reach(one), T - L2) - Math.max(T - reach(mate), L1)), a, m);
}

/**
 * Contact ratio of two wheels on their true centres: the same with C sin aw = (R1 + R2) sin a. Example: 28 and 45 teeth, 14½°: 2.007.
 * Source: as contactRatioAt.
 */
export const contactRatio = (one: Radii, mate: Radii, a: number, m: number): number =>
  inBasePitches(lengthOfContact(one, mate, (one.pitch + mate.pitch) * Math.sin(a)), a, m);

/** How far the wheel's tips and a rack's, A above the pitch circle's tangent, reach from the pitch point, the rack's held to `most`. */
const alongRack = (one: Radii, A: number, a: number, most: number): number =>
  Math.max(0, reach(one) - one.pitch * Math.sin(a) + Math.min(A / Math.sin(a), most));

/**
 * Contact ratio with a rack whose teeth stand A above the line that rolls on the standard pitch circle (for a shifted wheel: the rack's
 * addendum less the shift): (√(Ro² − Rb²) − R sin a + A ÷ sin a) ÷ (π m cos a).
 * Source: SDP/SI, Elements of Metric Gear Technology, table 11-1, spur gear and rack (value from memory). Example: 32 teeth at 14½°: 2.299.
 */
export const contactRatioOnRack = (one: Radii, A: number, a: number, m: number): number =>
  inBasePitches(alongRack(one, A, a, Number.POSITIVE_INFINITY), a, m);

/** The same with the rack's reach no longer than R sin a, beyond which there is no involute. Source: derived. Example: 12 teeth, 14½°: 1.284. */
export const contactRatioWithRack = (one: Radii, A: number, a: number, m: number): number =>
  inBasePitches(alongRack(one, A, a, one.pitch * Math.sin(a)), a, m);

/**
 * The same with a wheel that a hob has undercut, its involute beginning at the radius `form`: the rack's reach no longer than R sin a − √(form² − Rb²).
 * Source: derived. Example: 12 teeth, m 1, 14½°, 1/1.157, form 5.8755405: 0.9941, where a form cutter leaves 1.284.
 */
export const hobbedContactWithRack = (one: Radii, A: number, form: number, a: number, m: number): number =>
  inBasePitches(alongRack(one, A, a, one.pitch * Math.sin(a) - Math.sqrt(Math.max(0, form ** 2 - one.base ** 2))), a, m);

/** Length of the line of action from one point of touch to the other in a ring: C sin aw = √(C² − (Rb2 − Rb1)²). */
function lineInRing(one: Radii, ring: Radii, C: number): number {
  const apart = ring.base - one.base;
  if (!(C >= apart * (1 - 1e-12) && apart > 0)) throw new RangeError(`a wheel does not run in the ring at a centre distance of ${C}`);
  return Math.sqrt(Math.max(0, C ** 2 - apart ** 2));
}

/**
 * Contact ratio of a wheel inside a ring at a centre distance C, as standards have it: (√(Ro1² − Rb1²) − √(Ri2² − Rb2²) + C sin aw) ÷ (π m cos a),
 * cos aw = (Rb2 − Rb1)/C. `ring.outside` is the radius to the tips of the ring, inward.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-46, table 5-4 (the formula and its worked pairs).
 * Throws RangeError when C is less than the base radii differ. Example: 18 in 40, 8 DP, 20°: 2.1365.
 */
export const contactRatioInRing = (one: Radii, ring: Radii, C: number, a: number, m: number): number =>
  inBasePitches(Math.max(0, reach(one) - reach(ring) + lineInRing(one, ring, C)), a, m);

/** The same, beginning no nearer than where the line touches the wheel's base circle: what is left where tips foul. Source: derived. Example: 16 in 24, m 3, v2 1.5: 1.6762. */
export const involuteContactInRing = (one: Radii, ring: Radii, C: number, a: number, m: number): number =>
  inBasePitches(Math.max(0, reach(one) - Math.max(0, reach(ring) - lineInRing(one, ring, C))), a, m);
