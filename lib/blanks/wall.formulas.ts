/**
 * Distance from the centre to the far corner of a keyway: √((b ÷ 2 + t)² + (w ÷ 2)²).
 * b bore, t depth of the keyway from the crown of the bore, w its width. Source: derived (Pythagoras); errs outward when t is
 * measured at the side. Example: 1.250, 0.125, 0.250 gives 0.7603.
 */
export const keywayCorner = (b: number, t: number, w: number): number => Math.hypot(b / 2 + t, w / 2);

/** Metal between the new root and a hole of radius r: Dr ÷ 2 − r. Source: derived. Example: 2.4608 over a 1.250 bore leaves 0.6054. */
export const wallOver = (Dr: number, r: number): number => Dr / 2 - r;
