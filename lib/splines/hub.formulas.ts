/**
 * Slotting the grooves of a straight-sided hub with a tool of the groove's width w and a flat nose. D across the grooves, d bore, one unit.
 * The nose's corners meet the bore first, at √((d/2)² − (w/2)²) from the middle; its flat is to end D/2 out.
 *   feed = D/2 − √((d/2)² − (w/2)²)
 * Source: derived. Example: D 1.25, d 1.0625, w 0.3125: 0.1172.
 */
export const grooveFeed = (D: number, d: number, w: number): number => D / 2 - Math.sqrt(d * d - w * w) / 2;

/**
 * How far the corners of that flat nose then stand outside the circle of the grooves: √((D/2)² + (w/2)²) − D/2.
 * Source: derived. Room for the key's corners. Example: D 1.25, w 0.3125: 0.0192.
 */
export const cornersOut = (D: number, w: number): number => (Math.hypot(D, w) - D) / 2;

/**
 * From the bottom of a groove, at its middle, straight across to the far side of the bore (a plug that fills it, where a groove lies there).
 *   (D + d) ÷ 2
 * Source: derived: half of each. Example: D 1.25, d 1.0625: 1.1563.
 */
export const grooveToTop = (D: number, d: number): number => (D + d) / 2;
