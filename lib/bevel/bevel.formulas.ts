/**
 * Pitch angle of one wheel of a bevel pair, radians: between its axis and its pitch cone. tan g = sin S ÷ (N2/N1 + cos S);
 * N1 this wheel's teeth, N2 the mate's, S angle between the shafts, radians.
 * Source: US Navy, Machinery Repairman (14345), ch. 14, pitch cone angle; for other shaft angles the sine rule of the two cones (derived).
 * At or beyond 90° the wheel is a crown or an internal bevel, which no form cutter mills. Example: 16 and 48 teeth at 90°: 18.435°.
 */
export const pitchAngle = (N1: number, N2: number, S: number): number => Math.atan2(Math.sin(S), N2 / N1 + Math.cos(S));

/** Cone distance: from the apex along the pitch cone to the large end. Ao = D ÷ (2 sin g). Example: D 2, g 18.435°: 3.1623. Source: as pitchAngle. */
export const coneDistance = (D: number, g: number): number => D / (2 * Math.sin(g));

/** Angle at the apex under an addendum or dedendum h of the large end, radians. tan t = h ÷ Ao. Source: as pitchAngle. Example: 1/8 on 3.1623: 2.264°. */
export const angleUnder = (h: number, Ao: number): number => Math.atan(h / Ao);

/** Outside diameter at the large end. Do = D + 2 A cos g. Source: as pitchAngle. Example: D 2, A 0.125, g 18.435°: 2.2372. */
export const bevelOutside = (D: number, A: number, g: number): number => D + 2 * A * Math.cos(g);

/**
 * Apex to crown, along the axis: where the sharp outside corner lies. Zc = D/(2 tan g) − A sin g.
 * Source: derived: the corner lies A square to the pitch cone, outward. Example: D 2, A 0.125, g 18.435°: 2.9605.
 */
export const apexToCrown = (D: number, A: number, g: number): number => D / (2 * Math.tan(g)) - A * Math.sin(g);

/**
 * Teeth of the spur wheel whose form the large end has (the back cone laid flat): Nv = N ÷ cos g.
 * Source: US Navy, Machinery Repairman (14345), ch. 14, number of teeth for cutter selection. Example: 16 teeth, 18.435°: 16.87.
 */
export const backConeTeeth = (N: number, g: number): number => N / Math.cos(g);

/** Any length of the tooth at the small end: it shrinks as the distance to the apex. h (Ao − F) ÷ Ao. Example: 0.2696 at Ao 3.1623, F 1: 0.1843. */
export const atSmallEnd = (h: number, Ao: number, F: number): number => (h * (Ao - F)) / Ao;
