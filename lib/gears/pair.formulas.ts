import { atOf, type Flanks, mtOf } from './flanks.formulas.ts';
import { inv, inverseInv } from './involute.formulas.ts';

/** A wheel, and what it runs with on a parallel shaft: another wheel, or a ring around it. Module, angle and helix are the same. */
export type Couple = { readonly one: Flanks; readonly mate: Flanks };

// Source of all below: ISO 21771:2007, clause 6, gear pairs (value from memory; the worked values of the tests are published).
// With a ring the signs of N1 and v1 turn, because ISO counts a ring's teeth and its shift as minus.

const sign = ({ mate }: Couple): 1 | -1 => (mate.ring ? -1 : 1);
/** N1 + N2, of a ring N2 − N1. */
const sumOfTeeth = (couple: Couple): number => couple.mate.N + sign(couple) * couple.one.N;
/** v1 + v2, of a ring v2 − v1. */
export const sumOfShifts = (couple: Couple): number => couple.mate.v + sign(couple) * couple.one.v;
/** Centre distance of the standard pitch circles: a0 = (N1 + N2) mt/2. Example: 12 and 24, m 3 gives 54. */
export const standardCentre = (couple: Couple): number => (sumOfTeeth(couple) * mtOf(couple.one)) / 2;

/**
 * The involute of the working angle from the shifts: inv aw = inv at + 2 tan at (v1 + v2)/((N1 + N2) mt). Two wheels so stand without backlash.
 * Example: 12 and 24, m 3, 20°, v 1.8 and 1.08 gives 0.034316. Below 0 no distance lets them run.
 */
export const involuteOfWorkingAngle = (couple: Couple): number => {
  const at = atOf(couple.one);
  return inv(at) + (2 * Math.tan(at) * sumOfShifts(couple)) / (sumOfTeeth(couple) * mtOf(couple.one));
};

/** Working pressure angle from the shifts, no backlash. Throws RangeError when the involute is below 0. Example: as above 26.0886°. */
export const workingAngle = (couple: Couple): number => inverseInv(involuteOfWorkingAngle(couple));

/**
 * Working pressure angle at a given centre distance: cos aw = a0 cos at / C. Throws RangeError when C is nearer than the base circles
 * allow (of a ring nearer than their radii differ). Example: 31 and 30, mn 3.5, 21°, C 116.5 gives 23.87076°.
 */
export function workingAngleAt(couple: Couple, C: number): number {
  const cos = (standardCentre(couple) * Math.cos(atOf(couple.one))) / C;
  if (!(cos > 0 && cos <= 1)) throw new RangeError(`no working angle at a centre distance of ${C}`);
  return Math.acos(cos);
}

/** Centre distance at a working angle: C = a0 cos at / cos aw. Example: 12 and 24, m 3, 26.0886° gives 56.4999. */
export const centreAt = (couple: Couple, aw: number): number => (standardCentre(couple) * Math.cos(atOf(couple.one))) / Math.cos(aw);

/**
 * Sum of the shifts that makes a pair run without backlash at a working angle: V = (N1 + N2) mt (inv aw − inv at)/(2 tan at); of a ring V = v2 − v1.
 * Example: 31 and 30, mn 3.5, 20°, 21°, C 116.5 gives 0.6518771312 mn.
 */
export const shiftsFor = (couple: Couple, aw: number): number => {
  const at = atOf(couple.one);
  return (sumOfTeeth(couple) * mtOf(couple.one) * (inv(aw) - inv(at))) / (2 * Math.tan(at));
};

/**
 * How much each tip of a pair of wheels is turned down so that the full clearance stays at the mate's root: K = v1 + v2 − (C − a0).
 * Source: SDP/SI, Elements of Metric Gear Technology, profile-shifted spur gear, ha1 = (1 + y − x2) m (value from memory); ISO 21771 gives the same as
 * −k mn. Never below 0. A ring is not shortened so. Example: 12 and 24, m 3, x 0.6 and 0.36: 0.380.
 */
export const tipShortening = (couple: Couple, C: number): number =>
  couple.mate.ring ? 0 : Math.max(0, sumOfShifts(couple) - (C - standardCentre(couple)));

/** Working pitch diameters at a centre distance: dw = 2 C N/(N1 + N2). Example: 12 and 24 at 56.5: 37.667, 75.333. */
export const workingDiameters = (couple: Couple, C: number): readonly [number, number] => {
  const each = (2 * C) / sumOfTeeth(couple);
  return [each * couple.one.N, each * couple.mate.N];
};

/**
 * Circumferential backlash at the working circles, in the plane of the wheels: what the working pitch has over both thicknesses there.
 *   j = (cos at/cos aw) (t ± (N1 + N2) mt (inv aw − inv a0)),  inv a0 = involuteOfWorkingAngle; minus with a ring
 * t what both teeth together are thinner than their shifts make them, transverse, at the standard pitch circles. Below 0 they bind.
 * Source: derived: thickness at the working circle of each, from the same involute. Near the standard centre it is 2 Δ tan at, Δ the
 * centres further apart. Example: 20 and 40, m 2, 20°, 0.1 further apart: 0.0734.
 */
export function workingBacklash(couple: Couple, C: number, thinned: number): number {
  const aw = workingAngleAt(couple, C);
  const loose = sumOfTeeth(couple) * mtOf(couple.one) * (inv(aw) - involuteOfWorkingAngle(couple));
  return (Math.cos(atOf(couple.one)) / Math.cos(aw)) * (thinned + sign(couple) * loose);
}

/** Backlash square to the flanks: jn = jw cos aw cos ψb. Example: 0.1 at 20°, straight gives 0.0940. */
export const backlashSquare = (couple: Couple, jw: number, aw: number): number =>
  jw * Math.cos(aw) * Math.cos(Math.asin(Math.sin(couple.one.psi) * Math.cos(couple.one.an)));

/** How much nearer the shafts could come: jr = jw/(2 tan aw). Example: 0.1 at 20° gives 0.1374. */
export const backlashOfCentre = (jw: number, aw: number): number => jw / (2 * Math.tan(aw));

/** How far a wheel can be turned with its mate held, in radians: jt = 2 jw/dw. Example: 0.1 at dw 50 gives 0.004. */
export const backlashAngle = (jw: number, dw: number): number => (2 * jw) / dw;
