import { type Angle, MAS_PER_DEGREE } from './angle.ts';
import { type Length, type LengthUnit, NM_PER_INCH, NM_PER_MM } from './length.ts';
import { gcd } from './ratio.ts';

/** How a length is written: decimals of an inch or millimetre, or a binary fraction of an inch. */
export type LengthForm = { readonly unit: LengthUnit; readonly places: number } | { readonly unit: 'in'; readonly over: number };

export const MINUS = '−';

/**
 * A whole number of small units written as a decimal of a larger one, rounded half away from zero.
 * whole: e.g. nanometres; per: small units in the large one; places: decimals wanted.
 */
export function printWhole(whole: number, per: number, places: number): string {
  const scale = 10n ** BigInt(places);
  const [top, bottom] = [BigInt(Math.abs(whole)) * scale, BigInt(per)];
  const rounded = (2n * top + bottom) / (2n * bottom);
  const digits = rounded.toString().padStart(places + 1, '0');
  const sign = whole < 0 && rounded !== 0n ? MINUS : '';
  if (places === 0) return sign + digits;
  return `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/** A count with a comma at the thousands: "1,350". */
export const printCount = (count: number): string => printWhole(count, 1, 0).replace(/\B(?=(\d{3})+$)/g, ',');

/** A plain number to so many decimals, rounded half away from zero on its shortest decimal form. */
export function printNumber(x: number, places: number): string {
  if (!Number.isFinite(x)) throw new RangeError(`${x} cannot be printed`);
  const [mantissa = '0', exponent = '0'] = Math.abs(x).toExponential().split('e');
  const [lead = '0', tail = ''] = mantissa.split('.');
  const power = tail.length - Number(exponent);
  const digits = BigInt(lead + tail);
  if (power > 40) return printWhole(0, 1, places);
  const [top, bottom] = power >= 0 ? [digits, 10n ** BigInt(power)] : [digits * 10n ** BigInt(-power), 1n];
  const scaled = (2n * top * 10n ** BigInt(places) + bottom) / (2n * bottom);
  const text = scaled.toString().padStart(places + 1, '0');
  const sign = x < 0 && scaled !== 0n ? MINUS : '';
  return places === 0 ? sign + text : `${sign}${text.slice(0, -places)}.${text.slice(-places)}`;
}

/** A number without trailing zeros, to at most so many decimals. */
export function printShort(x: number, most = 4): string {
  const text = printNumber(x, most);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function printFraction(length: Length, over: number): string {
  const small = NM_PER_INCH / over;
  const parts = Math.round(Math.abs(length) / small);
  const sign = length < 0 && parts !== 0 ? MINUS : '';
  const [whole, left] = [Math.floor(parts / over), parts % over];
  if (left === 0) return `${sign}${whole}`;
  const by = gcd(left, over);
  return `${sign}${whole === 0 ? '' : `${whole} `}${left / by}/${over / by}`;
}

/** A length without its unit. */
export function printLength(length: Length, form: LengthForm): string {
  if ('over' in form) return printFraction(length, form.over);
  return printWhole(length, form.unit === 'in' ? NM_PER_INCH : NM_PER_MM, form.places);
}

/** An angle in decimal degrees without the degree sign. */
export const printDegrees = (angle: Angle, places: number): string => printWhole(angle, MAS_PER_DEGREE, places);
