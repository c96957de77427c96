/**
 * Spindle speed for a surface speed, inch sizes. n = 12 v / (π D); n rev/min, v ft/min, D diameter of the work (turning) or
 * of the cutter (milling) in inches. Source: Jones, Turning and Boring, 1914, "Rules for calculating cutting speeds".
 * Throws RangeError unless v and D are above 0. Example: 60 ft/min on 5 in gives 45.8, which the book prints as 46.
 */
export function speedFromFeet(v: number, D: number): number {
  if (!(v > 0 && D > 0)) throw new RangeError(`no spindle speed for ${v} ft/min on ${D} in`);
  return (12 * v) / (Math.PI * D);
}

/** The same in metric sizes. n = 1000 v / (π D); v m/min, D mm. Source: the definition of the two. Example: 25 m/min on 12 mm gives 663. */
export function speedFromMetres(v: number, D: number): number {
  if (!(v > 0 && D > 0)) throw new RangeError(`no spindle speed for ${v} m/min on ${D} mm`);
  return (1000 * v) / (Math.PI * D);
}

/** Surface speed at a spindle speed. v = π D n / 12; ft/min, in, rev/min. Source: Jones, as above. Example: 5 in at 46 rev/min gives 60. */
export const surfaceFeet = (n: number, D: number): number => (Math.PI * D * n) / 12;

/** The same in metric sizes. v = π D n / 1000; m/min, mm, rev/min. Source: the definition of the two. Example: 75 mm at 400 rev/min gives 94.25. */
export const surfaceMetres = (n: number, D: number): number => (Math.PI * D * n) / 1000;

/** 1 ft/min in m/min, exactly (international foot, 1959). */
export const METRES_PER_FOOT = 0.3048;

/** Rim speed that an iron chuck body of unknown make is held to, ft/min: judgement, no source. The maker's own limit stands above it. */
export const IRON_RIM_FT_PER_MIN = 2500;

/** What the limit is divided by with the work off-centre or the jaws standing out: judgement, no source. */
export const OUT_OF_BALANCE = 2;

/**
 * The highest speed of a machine that is not above a limit; null when all are above it.
 * Source: Army subcourse OD1645, Lathe Operations, p. 52: a speed that the lathe lacks is replaced by the next slower one it has.
 * Example: speeds 58, 95, 150 and 76.4 wanted gives 58.
 */
export function highestNotAbove(speeds: readonly number[], limit: number): number | null {
  const low = speeds.filter((n) => n > 0 && n <= limit);
  return low.length === 0 ? null : Math.max(...low);
}

/** The slowest speed that a machine has; null when none is known. */
export function lowestOf(speeds: readonly number[]): number | null {
  const known = speeds.filter((n) => n > 0);
  return known.length === 0 ? null : Math.min(...known);
}
