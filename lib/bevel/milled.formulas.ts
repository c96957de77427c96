/**
 * What milling a bevel wheel takes after the middle cuts: the blank is rolled and the cutter set over, once each way, so that the cut is
 * right at both ends of the face. Lengths in one unit. p circular pitch at the large end, D pitch diameter, Ao cone distance, F face,
 * TL cutter's thickness at the large end's pitch line, TS at the small end's (the cut is shallower there, so the cutter is thinner).
 */
export type MilledBevel = {
  readonly p: number;
  readonly D: number;
  readonly Ao: number;
  readonly F: number;
  readonly TL: number;
  readonly TS: number;
};

/**
 * Roll of the blank about its own axis, radians. r = (p/2 − (Ao/F)(TL − TS)) ÷ D.
 * Source: US Navy, Machinery Repairman (14345), ch. 14, roll of the gear blank (its constant 57.3 turns radians to degrees); the same
 * comes out by asking that half the cutter, set over and rolled, reaches half the space at both ends (derived).
 * Example: No. 6 form, 8 DP, 24 teeth to 24, F 0.75: 1.80°.
 */
export const roll = ({ p, D, Ao, F, TL, TS }: MilledBevel): number => (p / 2 - (Ao / F) * (TL - TS)) / D;

/**
 * Set-over of the cutter from the axis, against the roll. e = TL/2 − (Ao/F)(TL − TS)/2.
 * Source: derived with the roll; the handbooks' rule (half the cutter's thickness less a factor ÷ P) is this with the second term tabled.
 * Example: TL 0.12, TS 0.10, Ao/F 4: 0.0200.
 */
export const setOver = ({ Ao, F, TL, TS }: MilledBevel): number => TL / 2 - ((Ao / F) * (TL - TS)) / 2;

/** Space at the pitch line of the small end: half its pitch. p (Ao − F) ÷ (2 Ao). The cutter must pass it. Example: p 0.3927, Ao 3, F 1: 0.1309. */
export const smallSpace = ({ p, Ao, F }: Pick<MilledBevel, 'p' | 'Ao' | 'F'>): number => (p * (Ao - F)) / (2 * Ao);
