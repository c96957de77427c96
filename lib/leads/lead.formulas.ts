// Symbols: L lead of the work; lengths in one unit throughout.

/**
 * How far a tooth has run off sideways by the end of the face, at the pitch circle, when the lead is L1 instead of L.
 *   e = π d F (1/L1 − 1/L);  plus = cut too steep
 * d: pitch diameter, F: face. Source: derived: the helix unrolled; tan ψ = π d/L (Brown & Sharpe, scan page 70).
 * Example: d 3, F 1, L 20, L1 20.02: −0.00047.
 */
export const errorAcrossFace = (d: number, F: number, L: number, L1: number): number => Math.PI * d * F * (1 / L1 - 1 / L);

/**
 * Lead of one lobe of a cam: its rise if it went on for a whole turn.  l = h ÷ q
 * h: rise; q: part of a turn in which it rises. Source: Brown & Sharpe, scan pages 187 and 188. Example: 2.443 in 29 hundredths: 8.424.
 */
export const lobeLead = (h: number, q: number): number => h / q;

/**
 * Angle to tilt the head from level for a lobe lead l with the head geared to G; the vertical attachment stands at the complement.
 *   sin α = l ÷ G.  Null where l is above G: no tilt makes a lead longer than the geared one.
 * Source: Brown & Sharpe, scan pages 186 and 187. Example: 0.196 and 0.67: 17.01°.
 */
export const headTilt = (l: number, G: number): number | null => (l > G || l <= 0 ? null : Math.asin(l / G));

/** Scroll on a face: lead = how far the cut moves outward in one turn; cut with the head upright, its lead is the geared one (tilt 90°). */
export const MOST_TILT_DEGREES = 80;
