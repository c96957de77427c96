/**
 * How far before the edge a disc cutter's middle stands when it first touches work that it cuts h deep. A = √(h (D − h));
 * D cutter diameter, h depth, both in one unit. Source: P. C. Sharma, A Textbook of Production Engineering, ex. 4.17, p. 228 (slot);
 * it is half the chord of the cutter at that height. Throws RangeError unless 0 ≤ h ≤ D/2: deeper, the arbor meets the work.
 * Example: cutter 150 mm, 25 mm deep gives 55.9 mm.
 */
export function approach(D: number, h: number): number {
  if (!(h >= 0 && D > 0 && h <= D / 2)) throw new RangeError(`no cut ${h} deep with a cutter of ${D}`);
  return Math.sqrt(h * (D - h));
}

/** Travel along a face L, from first touch to the overrun O past the far edge. L + A + O. With O = A the cutter leaves clear of the work. */
export const travel = (L: number, A: number, O: number): number => L + A + O;

/**
 * Minutes for a length at a feed. t = L/f; f per minute. Source: Mitsubishi Materials, turning course, "Cutting time".
 * Throws RangeError unless f is above 0. Example: 100 mm at 20 mm/min takes 5 min.
 */
export function minutesAtFeed(L: number, f: number): number {
  if (!(f > 0 && L >= 0)) throw new RangeError(`no time for ${L} at a feed of ${f}`);
  return L / f;
}

/** Feed per minute from feed per turn and speed. f = s n. Source: as above. Example: 0.1 mm at 1,000 rev/min gives 100 mm/min. */
export const feedPerMinute = (perTurn: number, n: number): number => perTurn * n;

/**
 * Table feed per minute from feed per tooth, teeth of the cutter and speed. f = c z n.
 * Source: Niagara Cutter, New Concepts in Milling Handbook, 1973, "Selecting feed in chip load per tooth". Example: 0.004 × 32 × 88 = 11.3 in/min.
 */
export const feedOfTeeth = (perTooth: number, z: number, n: number): number => perTooth * z * n;

/**
 * Minutes for a gear. T = N r (L/f + i); N teeth, r times round (roughing rounds and the finishing one), L travel of one cut,
 * f feed per minute, i minutes to run back, index and clamp. Source: derived: every tooth is cut and indexed once in each round.
 * Example: 22 teeth, 2 rounds, 2.4 in at 0.75 in/min, 0.5 min gives 162.8 min.
 */
export const gearMinutes = (N: number, r: number, L: number, f: number, i: number): number => N * r * (minutesAtFeed(L, f) + i);
