/** A length as a whole number of nanometres: 1/64 in, 0.0001 in and 0.0001 mm are all exact. */
export type Length = number & { readonly in: 'nm' };

/** 1 in = 25.4 mm exactly (International yard and pound agreement, 1959; ISO 31-1). */
export const NM_PER_INCH = 25_400_000;
export const NM_PER_MM = 1_000_000;

/** The longest length that Backgear takes: 100 m. Keeps every sum of lengths a safe integer. */
const MOST_NM = 1e11;

/** Nanometres to a Length, rounded half away from zero to the whole nanometre. Throws RangeError if not finite or over 100 m. */
export function nanometres(nm: number): Length {
  if (!Number.isFinite(nm) || Math.abs(nm) > MOST_NM) throw new RangeError(`${nm} nm is no length`);
  const whole = Math.sign(nm) * Math.round(Math.abs(nm));
  return (whole === 0 ? 0 : whole) as Length;
}

/** Inches to a Length. */
export const inches = (inch: number): Length => nanometres(inch * NM_PER_INCH);

/** Millimetres to a Length. */
export const millimetres = (mm: number): Length => nanometres(mm * NM_PER_MM);

export const toInches = (length: Length): number => length / NM_PER_INCH;
export const toMm = (length: Length): number => length / NM_PER_MM;

export type LengthUnit = 'in' | 'mm';

/** A Length as a plain number of the given unit, for use inside a formula. */
export const inUnit = (length: Length, unit: LengthUnit): number => (unit === 'in' ? toInches(length) : toMm(length));

/** A plain number of the given unit as a Length. */
export const ofUnit = (size: number, unit: LengthUnit): Length => (unit === 'in' ? inches(size) : millimetres(size));

export const add = (a: Length, b: Length): Length => nanometres(a + b);
export const subtract = (a: Length, b: Length): Length => nanometres(a - b);
export const half = (a: Length): Length => nanometres(a / 2);
export const twice = (a: Length): Length => nanometres(a * 2);
