/**
 * How far one pair of jaws has to move the work. m = |a − b|/2; a, b indicator readings at two opposite jaws.
 * Source: Thomas Industrial Library, "Centering work in four-jaw chucks" (move the pair by half the reading); that
 * 0.040 asks for 0.020 is common practice. Example: 0 and 0.040 gives 0.020.
 */
export const jawMove = (a: number, b: number): number => Math.abs(a - b) / 2;

/**
 * Full indicator reading of round work from the differences x and y of the two pairs. t = √(x² + y²).
 * Source: derived: opposite readings differ by twice the offset along that pair, and the full reading is twice the whole offset.
 * True while the offset is small beside the work. Example: 0.040 and 0.030 gives 0.050.
 */
export const runOutOfPairs = (x: number, y: number): number => Math.hypot(x, y);

/** Turns of the chuck key for a move. s = m/p; p lead of the jaw's screw. Example: 0.010 in on 20 threads an inch gives 0.2. */
export function keyTurns(m: number, p: number): number {
  if (!(p > 0)) throw new RangeError(`no key turns on a lead of ${p}`);
  return m / p;
}
