/**
 * Lead angle of a worm, radians: between a thread and the plane square to the axis. tan l = L ÷ (π d); L lead, d pitch diameter.
 * Source: Machine Elements in Mechanical Design, 4th ed., section 8-9. Example: L 0.5236, d 2: 4.764°.
 */
export const leadAngle = (L: number, d: number): number => Math.atan(L / (Math.PI * d));

/** Centre distance of worm and wheel: C = (d + D) ÷ 2. Source: as leadAngle. Example: 2 and 10: 6. */
export const wormCentre = (d: number, D: number): number => (d + D) / 2;

/** Throat diameter of the wheel, at the middle of its hollow face: Dt = D + 2 A. Source: as leadAngle. Example: D 10, A 1/6: 10.3333. */
export const throatDiameter = (D: number, A: number): number => D + 2 * A;

/** Radius of the hollow in the wheel's face: rt = d/2 − A: it clears the worm's root. Source: derived: half the worm less one addendum. Example: 2, 1/6: 0.8333. */
export const throatRadius = (d: number, A: number): number => d / 2 - A;

/**
 * Largest diameter of the wheel, over the sharp corners of the face. Dw = Dt + 2 rt (1 − cos(v/2)); v angle over which the face embraces the worm, radians.
 * Source: derived: the corner lies on the throat circle, v/2 from the middle plane. Example: Dt 10.3333, rt 0.8333, v 60°: 10.5566.
 */
export const wheelOverCorners = (Dt: number, rt: number, v: number): number => Dt + 2 * rt * (1 - Math.cos(v / 2));

/**
 * How long a worm's threads must be to reach as far as the wheel's throat comes: lw = 2 √((Dt/2)² − (D/2 − A)²).
 * Source: derived: chord of the throat circle along the worm's outside. Example: Dt 9, D 8.6667, A 1/6: 3.3993.
 */
export const wormLength = (Dt: number, D: number, A: number): number => 2 * Math.sqrt((Dt / 2) ** 2 - (D / 2 - A) ** 2);

/**
 * How wide a wheel's face bears on the worm: b = √(do² − d²); do worm outside, d its pitch diameter.
 * Source: derived: chord of the worm's outside circle along its pitch line. Example: 2.3333 and 2: 1.2019.
 */
export const bearingFace = (outside: number, d: number): number => Math.sqrt(outside * outside - d * d);

/**
 * Share of the power that comes out when the worm drives. E = (cos a − f tan l) ÷ (cos a + f ÷ tan l); a pressure angle in the normal
 * plane, f friction. Source: U. C. Jindal, Machine Design, ex 28-4 and 28-5. Example: a 20°, tan l 0.25, f 0.032: 0.873.
 */
export const wormEfficiency = (l: number, a: number, f: number): number =>
  (Math.cos(a) - f * Math.tan(l)) / (Math.cos(a) + f / Math.tan(l));

/** Whether the wheel cannot turn the worm, by the same friction: cos a sin l ≤ f cos l. Never to be trusted to hold a load: shake frees it. */
export const wormHolds = (l: number, a: number, f: number): boolean => Math.cos(a) * Math.tan(l) <= f;
