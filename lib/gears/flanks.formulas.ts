import type { LengthUnit } from '../values/length.ts';
import { baseHelix, transverseAngle, transverseModule } from './helical.formulas.ts';
import { inv, inverseInv } from './involute.formulas.ts';
import { crossing } from './profile.formulas.ts';

/**
 * The teeth of a gear for parallel shafts as plain numbers, all lengths in `unit`. Straight teeth are those of helix 0.
 * N teeth; mn module and an pressure angle (radians) square to the teeth; psi helix angle at the standard pitch circle, radians;
 * v profile shift as a length, plus = away from the gear's middle, of a ring as of a wheel;
 * A addendum and B dedendum of the unshifted tooth; ring: teeth on the inside.
 * Sign of v: ISO 21771 counts the teeth of a ring as minus, and its shift is minus this one.
 */
export type Flanks = {
  readonly N: number;
  readonly mn: number;
  readonly an: number;
  readonly psi: number;
  readonly v: number;
  readonly A: number;
  readonly B: number;
  readonly ring: boolean;
  readonly unit: LengthUnit;
};

const out = ({ ring }: Pick<Flanks, 'ring'>): 1 | -1 => (ring ? -1 : 1);

// Source of the sizes: ISO 21771:2007, clauses 4 and 5 (value from memory); worked values: SDP/SI, Elements of Metric Gear Technology,
// profile-shifted spur, internal and helical gears, recalled in tests as such.
export const mtOf = ({ mn, psi }: Flanks): number => transverseModule(mn, psi);
export const atOf = ({ an, psi }: Flanks): number => transverseAngle(an, psi);
export const psibOf = ({ an, psi }: Flanks): number => baseHelix(psi, an);
/** Standard pitch diameter: d = N mn / cos ψ. Example: 12 teeth, mn 3, 30° gives 41.569. */
export const pitchOf = (flanks: Flanks): number => flanks.N * mtOf(flanks);
/** Base diameter: db = d cos at. Example: 12 teeth, mn 3, 20°, 30° gives 38.322. */
export const baseOf = (flanks: Flanks): number => pitchOf(flanks) * Math.cos(atOf(flanks));
/** Tip diameter: d + 2 (A + v), of a ring d − 2 (A − v); no tip shortened. Example: ring of 24, m 3, v 1.5 gives 69. */
export const tipOf = (flanks: Flanks): number => pitchOf(flanks) + 2 * (out(flanks) * flanks.A + flanks.v);
/** Root diameter: d − 2 (B − v), of a ring d + 2 (B + v). Example: ring of 24, m 3, v 1.5 gives 82.5. */
export const rootOf = (flanks: Flanks): number => pitchOf(flanks) - 2 * (out(flanks) * flanks.B - flanks.v);

/**
 * Thickness along the standard pitch circle, square to the teeth, without backlash: sn = π mn/2 + 2 v tan an; of a ring's tooth the same with − 2 v.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-81, table 10-1. Example: m 10, 20°, x 0.3 gives 17.8918.
 */
export const normalThickness = (flanks: Flanks): number => (Math.PI * flanks.mn) / 2 + out(flanks) * 2 * flanks.v * Math.tan(flanks.an);

/** The shift that gives a tooth this normal thickness: the turn-about of normalThickness. v = ±(sn − π mn/2)/(2 tan an). Example: 17.8918 at m 10, 20° gives 3. */
export const shiftForThickness = (flanks: Flanks, sn: number): number =>
  (out(flanks) * (sn - (Math.PI * flanks.mn) / 2)) / (2 * Math.tan(flanks.an));

/**
 * Thickness in the plane of the wheel, as an arc of the circle of diameter dy: sy = dy (st/d + inv at − inv ay), cos ay = db/dy; of a ring
 * the two involutes change their signs. st the same at the standard pitch circle. Source: ISO 21771:2007, thickness at the
 * y-cylinder (value from memory). Throws RangeError inside the base circle. Example: 22 teeth, 8 DP, 14.5° at its outside gives 0.1098.
 */
export function thicknessAt(flanks: Flanks, st: number, dy: number): number {
  const cos = baseOf(flanks) / dy;
  if (!(cos <= 1 + 1e-12)) throw new RangeError(`there is no involute at ${dy}, inside the base circle`);
  const turned = inv(atOf(flanks)) - inv(Math.acos(Math.min(1, cos)));
  return dy * (st / pitchOf(flanks) + out(flanks) * turned);
}

/** Transverse thickness at the standard pitch circle: st = sn / cos ψ. */
export const transverseThickness = (flanks: Flanks): number => normalThickness(flanks) / Math.cos(flanks.psi);

/**
 * Diameter at which the flanks of a wheel meet in a point: db / cos x, inv x = st/d + inv at. Source: derived: thicknessAt gives nothing there.
 * Example: 12 teeth, m 1, 20°, no shift gives 14.8047. Of a ring's tooth there is none outside its base circle.
 */
export const pointedDiameter = (flanks: Flanks): number =>
  baseOf(flanks) / Math.cos(inverseInv(Math.max(0, transverseThickness(flanks) / pitchOf(flanks) + inv(atOf(flanks)))));

/**
 * Least teeth (not rounded) that a rack with a straight side h deep leaves whole: N = 2 (h − v) cos ψ / (mn sin² at).
 * Source: ISO 21771:2007, undercut (value from memory); straight teeth: Machine Elements in Mechanical Design, 4th ed., p. 320.
 * Example: h 1, v 0, m 1, 20°, straight gives 17.10; 30° of helix 11.54.
 */
export const leastTeethOf = ({ mn, an, psi, v }: Flanks, h: number): number =>
  (2 * (h - v) * Math.cos(psi)) / (mn * Math.sin(transverseAngle(an, psi)) ** 2);

/**
 * Least shift, as a length, at which such a rack does not undercut: v = h − N mn sin² at / (2 cos ψ). Below 0: the rack may come in by so much.
 * Source: as leastTeethOf. Example: 12 teeth, m 1, 20° gives 0.298; of helix 30° −0.040.
 */
export const leastShift = ({ N, mn, an, psi }: Flanks, h: number): number =>
  h - (N * mn * Math.sin(transverseAngle(an, psi)) ** 2) / (2 * Math.cos(psi));

/**
 * Diameter at which a rack with a straight side h deep first touches a flank: √(db² + (d sin at − 2 (h − v)/sin at)²), the base circle where the
 * bracket is below 0. A form cutter leaves involute down to there; a hob that undercuts does not: hobbedFormDiameter.
 * Source: ISO 21771:2007, root form diameter (value from memory). Example: 30 teeth, m 1, 20°: 28.534.
 */
export function straightSideEnds(flanks: Flanks, h: number): number {
  const sin = Math.sin(atOf(flanks));
  return Math.hypot(baseOf(flanks), Math.max(0, pitchOf(flanks) * sin - (2 * (h - flanks.v)) / sin));
}

/**
 * The shift, as a length, at which a wheel's tips become points, its addendum standing as it is: thicknessAt(tip) is nothing there.
 * Source: derived. null where it lies beyond `most`. Example: 12 teeth, m 1, 20°: 0.820.
 */
export function pointedShift(flanks: Flanks, most: number): number | null {
  const land = (v: number): number => {
    const shifted = { ...flanks, v };
    return tipOf(shifted) > baseOf(shifted) ? thicknessAt(shifted, transverseThickness(shifted), tipOf(shifted)) : 1;
  };
  return land(most) > 0 || land(-most / 4) <= 0 ? null : crossing(land, -most / 4, most);
}
