import { type Flanks, pitchOf } from './flanks.formulas.ts';
import { crossing } from './profile.formulas.ts';

/** Pins that have slid along their spaces until they stand nearest: h half the angle past opposite, across their distance over twice their circle. */
type Nearest = { readonly h: number; readonly across: number };

/** Tangent of the helix angle on a circle of radius R. */
const leanAt = (flanks: Flanks, R: number): number => (Math.tan(flanks.psi) * 2 * R) / pitchOf(flanks);

/**
 * How two pins or balls stand in a helical wheel of odd count when nothing holds them in one plane: a flat anvil lets each slide along its space, and the
 * micrometer closes on the shortest distance between the two helices.
 *   δ − tan² H sin δ = π/N,  h = δ/2,  distance = 2 Rc cos h √(1 + tan² H sin² h)
 * Rc the circle on which the pins' middles stand, H the helix angle there. Derived: a pin moved z along the axis stands 2π z/L further round; of two long
 * pins the anvils take the common perpendicular of their middle lines, of two balls the line between their middles, and both are least at the same δ.
 * No published form of it was found. Straight teeth: h = 90°/N, and the distance is that in one plane. From 45° at the circle on there is no least: null.
 * Example: 25 teeth, 15° at the pitch circle, Rc the pitch circle: h 3.8775°, across 0.997875.
 */
export function slidApart(flanks: Flanks, Rc: number): Nearest | null {
  const t2 = leanAt(flanks, Rc) ** 2;
  if (t2 >= 1) return null;
  const step = Math.PI / flanks.N;
  const h = crossing((x) => x - t2 * Math.sin(x) - step, step, Math.PI) / 2;
  return { h, across: Math.cos(h) * Math.sqrt(1 + t2 * Math.sin(h) ** 2) };
}

/**
 * Over two pins or balls between flat anvils, free to slide along their spaces, in a helical wheel of odd count: M = 2 Rc cos h √(1 + tan² H sin² h) + w.
 * Source and limits: slidApart. Less than over balls held in one plane, by about Rc (π/(2 N))² tan² H/(1 − tan² H).
 * Example: mn 2, 20°, 25 teeth, 15°, pins 3.5: 56.6176, where balls in one plane read 56.6262.
 */
export function overFlatAnvils(flanks: Flanks, Rc: number, w: number): number | null {
  const nearest = slidApart(flanks, Rc);
  return nearest === null ? null : 2 * Rc * nearest.across + w;
}

/**
 * Radius of the pins' circle from such a reading: the turn-about of overFlatAnvils, by halving. null where no circle below 45° of helix reads so.
 * Example: 56.6176 over pins of 3.5, mn 2, 25 teeth, 15°: 26.6156.
 */
export function circleFromFlat(flanks: Flanks, M: number, w: number): number | null {
  const low = (M - w) / 2;
  const high = Math.min(1.5 * low, (pitchOf(flanks) / (2 * Math.tan(flanks.psi))) * (1 - 1e-9));
  const over = (R: number): number => (overFlatAnvils(flanks, R, w) ?? Number.POSITIVE_INFINITY) - M;
  return low > 0 && over(high) >= 0 ? crossing(over, low, high) : null;
}
