import { inv } from '../gears/involute.formulas.ts';
import { DIN_ADDENDUM, DIN_DEDENDUM } from './involute.data.ts';

/**
 * An involute spline as plain numbers in one unit: N teeth, m = 1/P its module, a pressure angle in radians, t thickness of a shaft's tooth
 * and width of a hub's space along the pitch circle, and the diameters of both parts.
 */
export type InvoluteSpline = {
  readonly N: number;
  readonly m: number;
  readonly a: number;
  readonly t: number;
  readonly shaft: { readonly outside: number; readonly inside: number };
  readonly hub: { readonly outside: number; readonly inside: number };
};

/** Diameters beyond the pitch diameter, as multiples of m: m (N + k). Source: the standards named in involute.data.ts. */
export const beyond = (N: number, m: number, k: number): number => m * (N + k);

/**
 * The shift of DIN 5480 that makes a hub's root circle the reference diameter: x m = (B − m N − 1.1 m) ÷ 2.
 * B reference diameter, m module, N teeth. Source: value from memory; it gives x m = 0.16 of the worked sheet 6 × 0.8 × 30° × 6.
 */
export const dinShift = (B: number, m: number, N: number): number => (B - m * N - 2 * DIN_DEDENDUM * m) / 2;

/**
 * DIN 5480: shaft outside B − 0.2 m, inside B − 2.2 m; hub outside B, inside B − 2 m; tooth and space π m/2 + 2 x m tan a.
 * Source: from the rack's addendum 0.45 m and dedendum 0.55 m and the shift; value from memory. Example: B 6, m 0.8: 5.84, 4.24, 6, 4.4.
 */
export function dinSizes(B: number, m: number, N: number, a: number): InvoluteSpline {
  const xm = dinShift(B, m, N);
  const middle = m * N + 2 * xm;
  return {
    N,
    m,
    a,
    t: (Math.PI * m) / 2 + 2 * xm * Math.tan(a),
    shaft: { outside: middle + 2 * DIN_ADDENDUM * m, inside: middle - 2 * DIN_DEDENDUM * m },
    hub: { outside: middle + 2 * DIN_DEDENDUM * m, inside: middle - 2 * DIN_ADDENDUM * m },
  };
}

/**
 * Form clearance of ANSI B92.1, on the radius: 0.001 D, at least 0.002 in, at most 0.010 in. D pitch diameter, inches.
 * Source: ANSI B92.1-1970, R1993, equations of basic dimensions. Example: D 1.25: 0.002.
 */
export const formClearance = (D: number): number => Math.min(0.01, Math.max(0.002, 0.001 * D));

/**
 * ISO 4156: the diameter inside which a shaft's flank need not be an involute:
 *   2 √((D cos a ÷ 2)² + (D sin a ÷ 2 − h ÷ sin a)²),  h = 0.6 m at 30°
 * Source: value from memory. The hub's inside lies 0.2 m over it. Example: N 24, m 2.5: 57.236.
 */
export const isoFormShaft = (N: number, m: number, a: number): number =>
  2 * Math.hypot((N * m * Math.cos(a)) / 2, (N * m * Math.sin(a)) / 2 - (0.6 * m) / Math.sin(a));

/**
 * Half the angle of a shaft's tooth (of a hub's space) at radius R, in radians: t/D + inv a − inv(acos(D cos a ÷ 2R)).
 * Source: E. Buckingham, Analytical Mechanics of Gears (1949), ch. 4, thickness at any radius (value from memory of the chapter).
 * True from the base circle outward; inside it the flank is drawn radial.
 */
export function toothHalfAngle({ N, m, a, t }: Pick<InvoluteSpline, 'N' | 'm' | 'a' | 't'>, R: number): number {
  const rb = (N * m * Math.cos(a)) / 2;
  return t / (N * m) + inv(a) - inv(Math.acos(Math.min(1, rb / R)));
}

/** Straight across a shaft's tooth (a hub's space) at diameter Q: Q sin(half its angle). Source: derived: chord of that arc. */
export const toothChord = (spline: Pick<InvoluteSpline, 'N' | 'm' | 'a' | 't'>, Q: number): number =>
  Q * Math.sin(toothHalfAngle(spline, Q / 2));
