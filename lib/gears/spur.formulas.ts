import { inv } from './involute.formulas.ts';
import { hobbedFormDiameter, plainFlanks } from './profile-rack.formulas.ts';
import { baseDiameter, outsideDiameter, rootDiameter, type Tooth } from './tooth.ts';

/** The part of a tooth that a span needs. All lengths of this file are in the unit of m. */
export type Involute = Pick<Tooth, 'N' | 'm' | 'a'>;

/**
 * Circular pitch: from one tooth to the next along the pitch circle. p = π m. m = 1/P.
 * Source: US Navy, Machinery Repairman (14345), appendix III. Example: 12 DP gives 0.2618 in.
 */
export const circularPitch = (m: number): number => Math.PI * m;

/**
 * Circular thickness: the tooth measured along the pitch circle, without backlash. s = π m / 2.
 * Source: US Navy, Machinery Repairman (14345), appendix IV (1.5708/P). Example: 12 DP gives 0.1309 in.
 */
export const circularThickness = (m: number): number => (Math.PI * m) / 2;

/**
 * Base pitch: from one flank to the next like flank, square to both; two spans that differ by one tooth differ by it.
 * pb = π m cos a. Source: follows from the span formula below. Example: 8 DP, 14.5° gives 0.3802 in.
 */
export const basePitch = (m: number, a: number): number => Math.PI * m * Math.cos(a);

/**
 * Span: what a vernier reads over k teeth, jaws flat on the two outer flanks, no backlash.
 * W = m cos a [(k − ½) π + N inv a]; N teeth, m module, a pressure angle in radians, k teeth between the jaws.
 * Source: metric span formula of an MOT spur gear catalogue (m = 1/P for diametral pitch).
 * True while the jaws touch the involute: see spanOnFlank. Throws RangeError when k is no whole number above 0.
 * Example: 22 teeth, 8 DP, 14.5°, over 2 gives 0.5850 in.
 */
export function span({ N, m, a }: Involute, k: number): number {
  if (!(Number.isInteger(k) && k >= 1)) throw new RangeError(`no span over ${k} teeth`);
  return m * Math.cos(a) * ((k - 0.5) * Math.PI + N * inv(a));
}

/**
 * Radius at which both jaws touch when the wheel stands square between them: R = √(Rb² + (W/2)²), Rb = N m cos a / 2.
 * Source: derived: the jaw faces are square to the line of length W that touches the base circle at its middle.
 * Example: 22 teeth, 8 DP, 14.5°, over 2 gives 1.363 in (pitch radius 1.375).
 */
export const contactRadius = (tooth: Involute, k: number): number =>
  Math.hypot((tooth.N * tooth.m * Math.cos(tooth.a)) / 2, span(tooth, k) / 2);

/**
 * Lowest radius at which the flank may be trusted to be an involute, whichever is greatest: the base circle; the top of the root
 * clearance; where the straight flank of a rack, one addendum deep, last touches: √(Rb² + (R sin a − A/sin a)²), R = N m/2.
 * Source: derived: the rack's flank ends A below the pitch line, at A/sin a from the pitch point along the line of action.
 * Below it is fillet, whose shape is the cutter's. Says nothing of undercut: see spanClearOfUndercut.
 * Example: 60 teeth, 12 DP, 14.5° gives 2.438 in (pitch radius 2.500, base 2.420).
 */
function lowestFlankRadius(tooth: Tooth): number {
  const clearance = Math.max(0, tooth.B - tooth.A);
  const rackEnds = Math.max(0, ((tooth.N * tooth.m) / 2) * Math.sin(tooth.a) - tooth.A / Math.sin(tooth.a));
  return Math.max(Math.hypot(baseDiameter(tooth) / 2, rackEnds), rootDiameter(tooth) / 2 + clearance);
}

/** True when a span over k touches between the lowest flank radius and the outside diameter: there is a flank if a form cutter cut it. */
export function spanOnFlank(tooth: Tooth, k: number): boolean {
  const R = contactRadius(tooth, k);
  return R > lowestFlankRadius(tooth) && R < outsideDiameter(tooth) / 2;
}

/**
 * True when such a span touches above where the trochoid of a hob or rack crosses the involute too, so that it does not matter how the wheel was cut.
 * Source: derived: see hobbedFormDiameter. Example: 12 teeth, 14½°, over 1 touches at 5.863/P, and a hob leaves involute from 5.876/P only.
 */
export function spanClearOfUndercut(tooth: Tooth, k: number): boolean {
  const form = hobbedFormDiameter(plainFlanks(tooth));
  return spanOnFlank(tooth, k) && form !== null && contactRadius(tooth, k) > form / 2;
}

/**
 * The whole number of teeth nearest N a / 180° + ½, where the jaws touch nearest the pitch circle. Halves go down, because one tooth
 * too many touches farther out than one too few touches in: 18 teeth at 20° take 2.
 * N teeth (of a helical wheel its virtual count), a pressure angle in radians.
 * Source: derived: W/2 = (N m / 2) sin a for contact at the pitch circle gives k = N a/π + ½. Example: 24 teeth, 20° gives 3.
 */
export const nearestSpanCount = (N: number, a: number): number => Math.max(1, Math.ceil((N * a) / Math.PI - 1e-9));

/**
 * The span count to measure over: the nearest, moved by one only if its contact is off the flank that a hob leaves, or, where none touches that, off the
 * flank that a form cutter leaves; null when none of them serves.
 */
export function spanCount(tooth: Tooth): number | null {
  const k = nearestSpanCount(tooth.N, tooth.a);
  const counts = [k, k + 1, k - 1].filter((count) => count >= 1);
  return counts.find((count) => spanClearOfUndercut(tooth, count)) ?? counts.find((count) => spanOnFlank(tooth, count)) ?? null;
}

/**
 * Chordal thickness: the tooth straight across at a circle of diameter d on which its arc is s. t = d sin(s/d), s/d in radians.
 * With s = π m/2 this is N m sin(90°/N).
 * Source: Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152. Example: 23 teeth, 1 DP gives 1.5696.
 */
export const chordalThickness = (d: number, s: number): number => d * Math.sin(s / d);

/**
 * Chordal addendum: from the tip down to that chord. h = A + (d/2)(1 − cos(s/d)); A the addendum as it stands on this wheel.
 * Source: Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152. Example: 23 teeth, 1 DP gives 1.0268.
 */
export const chordalAddendum = (d: number, s: number, A: number): number => A + (d / 2) * (1 - Math.cos(s / d));

/**
 * Tooth thickness along the outside circle. sa = Do (s/d + inv a − inv aa), cos aa = Db/Do, d = N m, s = π m/2.
 * Source: derived: both flanks are involutes of the one base circle. Below 0 the flanks meet before they reach the outside.
 * Example: 8 DP, 14.5°, 22 teeth gives 0.1098 in.
 */
export function tipThickness(tooth: Tooth): number {
  const outside = outsideDiameter(tooth);
  const tipAngle = Math.acos(Math.min(1, baseDiameter(tooth) / outside));
  return outside * (Math.PI / (2 * tooth.N) + inv(tooth.a) - inv(tipAngle));
}

/**
 * Least teeth (not rounded) that a straight-sided rack leaves whole. Nmin = 2 h / sin² a; h the working addendum in modules.
 * Source: Machine Elements in Mechanical Design, 4th ed., p. 320 (32 at 14½°, 18 at 20°, rounded up). Example: h 0.8, 20° gives 13.68.
 */
export const leastTeeth = (h: number, a: number): number => (2 * h) / Math.sin(a) ** 2;

/**
 * Virtual count of a helical wheel: the spur count whose tooth shape it has, for choosing cutter and span count. Nv = N / cos³ ψ.
 * Source: US Navy, Machinery Repairman (14345), cutter selection for helical gears. ψ helix angle in radians, below 90°.
 * Example: 16 teeth, 25° gives 21.49.
 */
export const virtualTeeth = (N: number, psi: number): number => N / Math.cos(psi) ** 3;
