/** A helix angle as formulas take it: from 0 up to, never at, 90°. Throws RangeError otherwise. */
function checked(psi: number): number {
  if (!(psi >= 0 && psi < Math.PI / 2)) throw new RangeError(`no teeth stand at a helix angle of ${psi} rad`);
  return psi;
}

// The source of all below, unless another is named: ISO 21771:2007, Gears — Cylindrical involute gears and gear pairs, clause 4 (value from
// memory of the clause; the worked values beside the formulas are published). ψ is the helix angle at the standard pitch circle, in radians.

/** Transverse pressure angle from the normal one. tan at = tan an / cos ψ. Throws RangeError at 90° of helix. Example: 20°, 21° gives 21.29906°. */
export const transverseAngle = (an: number, psi: number): number => Math.atan(Math.tan(an) / Math.cos(checked(psi)));

/** Normal pressure angle from the transverse one. tan an = tan at cos ψ. Example: 20°, 22.5° gives 18.58597°. */
export const normalAngle = (at: number, psi: number): number => Math.atan(Math.tan(at) * Math.cos(checked(psi)));

/** Module in the plane of the wheel from the module square to the teeth. mt = mn / cos ψ. Example: 3, 30° gives 3.4641. */
export const transverseModule = (mn: number, psi: number): number => mn / Math.cos(checked(psi));

/**
 * Helix angle on the base circle. sin ψb = sin ψ cos an. Example: 25°, 20° gives 23.3987°.
 */
export const baseHelix = (psi: number, an: number): number => Math.asin(Math.sin(checked(psi)) * Math.cos(an));

/** Helix angle at another diameter of the same helix. tan ψy = (dy/d) tan ψ. Example: 25° at d = 50, at dy = 60 gives 29.230°. */
export const helixAt = (psi: number, d: number, dy: number): number => Math.atan((dy / d) * Math.tan(checked(psi)));

/**
 * Lead: how far along the axis a tooth goes once round. L = π d / tan ψ. Source: US Navy, Machinery Repairman (14345), cutter selection
 * for helical gears. Throws RangeError at no helix, where no lead is. Example: d 3, 25° gives 20.2117.
 */
export function lead(d: number, psi: number): number {
  if (checked(psi) === 0) throw new RangeError('straight teeth have no lead');
  return (Math.PI * d) / Math.tan(psi);
}

/** Axial pitch: from one tooth to the next along the axis. px = π mn / sin ψ. Throws RangeError at no helix. Example: 1/6.6203, 25° gives 1.1229. */
export function axialPitch(mn: number, psi: number): number {
  if (checked(psi) === 0) throw new RangeError('straight teeth have no axial pitch');
  return (Math.PI * mn) / Math.sin(psi);
}

/**
 * Helix angle from a lead that is known. tan ψ = π d / L. Throws RangeError unless both are above 0. Example: d 3, L 20.2117 gives 25°.
 */
export function helixOfLead(d: number, L: number): number {
  if (!(d > 0 && L > 0)) throw new RangeError(`no helix has the lead ${L} at the diameter ${d}`);
  return Math.atan((Math.PI * d) / L);
}

/**
 * Virtual count by the base helix, as ISO 21771 has it: Nvn = N / (cos² ψb cos ψ). A little below N/cos³ ψ (virtualTeeth), which is what
 * chordal measures and form cutters go by. Example: 24 teeth, 25°, an 20° gives 31.439.
 */
export const virtualTeethByBase = (N: number, psi: number, an: number): number => N / (Math.cos(baseHelix(psi, an)) ** 2 * Math.cos(psi));

/**
 * Overlap (face) contact ratio: how many axial pitches the face holds. eb = F sin ψ / (π mn). F face width.
 * Source: ISO 21771:2007, overlap ratio (value from memory); Norton, Machine Design, ch. 12 (the same as F tan ψ / pt).
 * Example: F 2, mn 0.14434, 30° gives 2.205.
 */
export const overlapRatio = (F: number, mn: number, psi: number): number => (F * Math.sin(checked(psi))) / (Math.PI * mn);
