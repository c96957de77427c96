import { inv } from './involute.formulas.ts';

/** Base and tip radius of a gear, in the plane of the wheels. */
type Tips = { readonly base: number; readonly tip: number };

const tipAngle = ({ base, tip }: Tips): number => Math.acos(Math.min(1, base / tip));

/**
 * The largest tip radius with which a mate's tips still meet involute, and not the foot below the base circle: √(Rb2² + (C sin aw)²).
 * Source: Machine Elements in Mechanical Design, 4th ed., interference (value from memory); derived: the line of action touches the other base circle there.
 * Example: 60 teeth against 12, m 1, 14½°: 30.411, and the tips at 31 foul.
 */
export const largestTip = (mateBase: number, C: number, aw: number): number => Math.hypot(mateBase, C * Math.sin(aw));

/**
 * Smallest pinion, not rounded, that a wheel of G times as many teeth does not foul: N = 2 h / (G (√(1 + (1/G)(1/G + 2) sin² a) − 1)), h the
 * wheel's addendum in modules, standard centres. Source: nptel, Kinematics of Machines, "Gears: minimum number of teeth" (the relation); textbooks print
 * it so. A rack is G without end: 2 h / sin² a. Throws RangeError unless G ≥ 1. Example: G 1, h 1, 20°: 12.32; G 3: 14.98.
 */
export function leastPinion(h: number, a: number, G: number): number {
  if (!(G >= 1)) throw new RangeError(`the wheel has fewer teeth than the pinion: ratio ${G}`);
  const root = Math.sqrt(1 + (1 / G) * (1 / G + 2) * Math.sin(a) ** 2);
  return (2 * h) / (G * (root - 1));
}

/** A wheel inside a ring: both gears' radii and counts, centre distance and working angle. */
export type Inside = {
  readonly one: Tips & { readonly N: number };
  readonly ring: Tips & { readonly N: number };
  readonly C: number;
  readonly aw: number;
};

/**
 * Room left against involute interference, the ring's tips against the foot of the wheel: N1/N2 − (1 − tan aa2/tan aw). Below 0 they foul.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-43, equation 5-3 (value from memory). A ring whose tips lie inside its own base circle
 * has no involute there: minus without end. Example: 16 in 24, m 3, v2 1.5: −0.0014, they just foul
 */
export function involuteRoom({ one, ring, aw }: Inside): number {
  if (ring.tip < ring.base) return Number.NEGATIVE_INFINITY;
  return one.N / ring.N - (1 - Math.tan(tipAngle(ring)) / Math.tan(aw));
}

const within = (x: number): number => Math.min(1, Math.max(-1, x));

/**
 * Room left against trochoid interference, the wheel's tips against the ring's as they leave: q1 N1/N2 + inv aw − inv aa2 − q2, radians;
 *   cos(q1 − inv aa1 + inv aw) = (Ra2² − Ra1² − C²)/(2 C Ra1),  cos q2 = (C² + Ra2² − Ra1²)/(2 C Ra2).
 * Below 0 they foul. Where the tip circles do not cross there is nothing to foul: the cosines are held at ±1.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-45, equations 5-6 and 5-7.
 */
export function trochoidRoom({ one, ring, C, aw }: Inside): number {
  const cos1 = within((ring.tip ** 2 - one.tip ** 2 - C ** 2) / (2 * C * one.tip));
  const cos2 = within((C ** 2 + ring.tip ** 2 - one.tip ** 2) / (2 * C * ring.tip));
  const q1 = Math.acos(cos1) + inv(tipAngle(one)) - inv(aw);
  return (q1 * one.N) / ring.N + inv(aw) - inv(tipAngle(ring)) - Math.acos(cos2);
}

/**
 * Room left for moving the wheel straight in, tooth into ring (trimming when it is the cutter): q1 + inv aa1 − inv aw − (N2/N1)(q2 + inv aa2 − inv aw);
 *   sin q1 = √((1 − (cos aa1/cos aa2)²)/(1 − (N1/N2)²)),  sin q2 = √(((cos aa2/cos aa1)² − 1)/((N2/N1)² − 1)).
 * Below 0 it goes in only along the axis, and a pinion cutter of this size takes the ring's tips off.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-45, equations 5-9 and 5-10.
 */
export function trimmingRoom({ one, ring, aw }: Inside): number {
  const [a1, a2] = [tipAngle(one), tipAngle(ring)];
  const ratio = Math.cos(a1) / Math.cos(a2);
  const part = one.N / ring.N;
  const q1 = Math.asin(Math.sqrt(within(Math.max(0, 1 - ratio ** 2) / (1 - part ** 2))));
  const q2 = Math.asin(Math.sqrt(within(Math.max(0, 1 / ratio ** 2 - 1) / (1 / part ** 2 - 1))));
  return q1 + inv(a1) - inv(aw) - (q2 + inv(a2) - inv(aw)) / part;
}
