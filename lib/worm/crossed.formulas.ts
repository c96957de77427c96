/**
 * Helix angle of the mate of crossed helical wheels, radians, minus for the other hand. b2 = S − b1: helices of one hand add up to the
 * angle between the shafts, those of opposite hands differ by it.
 * Source: SDP/SI, Elements of Metric Gear Technology, crossed helical gears, equations 7-5 and 7-6. Example: shafts at 90°, b1 60°: 30°.
 */
export const mateHelix = (S: number, b1: number): number => S - b1;

/** Pitch diameter of a helical wheel: d = N mn ÷ cos b; mn normal module. Source: as mateHelix, equation 7-7. Example: 15 teeth, mn 3, 20°: 47.888. */
export const diameterByNormal = (N: number, mn: number, b: number): number => (N * mn) / Math.cos(b);

/** Lead: the advance of a tooth in one turn. L = π d ÷ tan |b|. Source: US Navy, Machinery Repairman (14345), ch. 14. Example: d 3, 25°: 20.212. */
export const leadOf = (d: number, b: number): number => (Math.PI * d) / Math.tan(Math.abs(b));

/** Sliding along the teeth, of the first wheel's pitch line speed: sin S ÷ cos b2. Source: derived from both velocities in the pitch plane. Example: 90°, 30°: 1.155. */
export const slidingShare = (S: number, b2: number): number => Math.sin(S) / Math.cos(b2);
