/** An angle as a whole number of thousandths of an arc second: 14.5 degrees and 1 second are both exact. */
export type Angle = number & { readonly in: 'mas' };

export const MAS_PER_DEGREE = 3_600_000;

/** Degrees to an Angle. Throws RangeError if not finite or over a thousand turns. */
export function degrees(deg: number): Angle {
  if (!Number.isFinite(deg) || Math.abs(deg) > 360_000) throw new RangeError(`${deg} is no angle`);
  const whole = Math.sign(deg) * Math.round(Math.abs(deg) * MAS_PER_DEGREE);
  return (whole === 0 ? 0 : whole) as Angle;
}

export const radians = (rad: number): Angle => degrees((rad * 180) / Math.PI);
export const toDegrees = (angle: Angle): number => angle / MAS_PER_DEGREE;
export const toRadians = (angle: Angle): number => (toDegrees(angle) * Math.PI) / 180;
