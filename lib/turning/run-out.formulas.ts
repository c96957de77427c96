/** Eccentricity from the full indicator reading. e = t/2. Source: the two extremes are R + e and R − e. Example: 0.004 gives 0.002. */
export const eccentricity = (t: number): number => t / 2;

/**
 * How much the lash swings in one turn, from tightest to loosest, counted along the pitch circle. j = 2 t tan a; t full indicator reading
 * of the teeth against the bore, a pressure angle in radians. Source: derived: the true centres come t nearer and go t farther apart in a
 * turn, and circular lash changes by 2 tan a for each unit of centre distance. First order in t; square to the flank it is × cos a.
 * Example: 0.002 at 14.5° gives 0.0010.
 */
export const lashSwing = (t: number, a: number): number => 2 * t * Math.tan(a);

/**
 * How far the middles of the teeth wander from equal division, peak to peak along the pitch circle. w = t.
 * Source: derived: a tooth across from the offset moves e one way, half a turn on e the other way.
 */
export const divisionWander = (t: number): number => t;

/**
 * The same of one flank alone, as the mate feels it. w = t/cos a. Source: derived: at a fixed radius a flank that leans by a moves sideways
 * by the sideways and the radial shift × tan a. First order in t. Example: 0.002 at 14.5° gives 0.0021.
 */
export const flankWander = (t: number, a: number): number => t / Math.cos(a);
