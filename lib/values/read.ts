import { type Angle, degrees } from './angle.ts';
import { type Length, type LengthUnit, NM_PER_INCH, NM_PER_MM, nanometres } from './length.ts';
import { type LengthForm, printCount } from './print.ts';
import { type Ratio, ratio } from './ratio.ts';

/** What came of reading typed text: the value, or a sentence that says what was given and what to type. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

export const read = <T>(value: T): Read<T> => ({ ok: true, value });
export const unread = (problem: string): { readonly ok: false; readonly problem: string } => ({ ok: false, problem });

/** The given text, shortened so that a message stays one line. */
export const quoted = (text: string): string => `“${text.length > 40 ? `${text.slice(0, 40)}…` : text}”`;

const DECIMAL = /^(-?)(\d{0,9})(?:[.,](\d{1,9}))?$/;
const MIXED = /^(-?)(?:(\d{1,6})[ -])?(\d{1,6}) ?\/ ?(\d{1,6})$/;

/** A decimal (point or comma) or a mixed fraction as an exact ratio; null when it is neither. */
export function exactNumber(text: string): Ratio | null {
  const tidy = text.trim().replace(/[−–]/g, '-').replace(/\s+/g, ' ');
  const mixed = MIXED.exec(tidy);
  if (mixed) {
    const [, sign, whole = '0', top = '0', bottom = '1'] = mixed;
    if (Number(bottom) === 0) return null;
    return ratio((Number(whole) * Number(bottom) + Number(top)) * (sign ? -1 : 1), Number(bottom));
  }
  const decimal = DECIMAL.exec(tidy);
  if (!decimal) return null;
  const [, sign, whole = '', part = ''] = decimal;
  if (whole === '' && part === '') return null;
  const digits = Number(whole + part);
  if (!Number.isSafeInteger(digits)) return null;
  return ratio(sign ? -digits : digits, 10 ** part.length);
}

/** tryThis: what to do about a number outside them, where more can be said than the limits. */
export type Limits = { readonly least: number; readonly most: number; readonly tryThis?: string };

const LONGEST_NAME = 30;

/** A long name says nothing more inside a sentence that stands under its own box. */
const called = (name: string): string => (name.length > LONGEST_NAME ? 'it' : name);

/** Five digits and more are hard to count without a comma. */
const inLimits = (x: number): string => (Number.isInteger(x) && Math.abs(x) >= 10_000 ? printCount(x) : String(x));

const outside = (text: string, name: string, limits: Limits, unit = ''): { readonly ok: false; readonly problem: string } => {
  const { least, most, tryThis = '' } = limits;
  return unread(
    `${quoted(text)} is outside what ${called(name)} may be: from ${inLimits(least)} to ${inLimits(most)}${unit}. ${tryThis}`.trim(),
  );
};

/** A whole number such as a tooth count. */
export function readCount(text: string, name: string, limits: Limits): Read<number> {
  const tidy = text.trim();
  if (!/^[-−]?\d{1,15}$/.test(tidy))
    return unread(`${quoted(text)} is no whole number. Type ${called(name)} in digits, for example ${limits.least}.`);
  const count = Number(tidy.replace('−', '-'));
  return count < limits.least || count > limits.most ? outside(text, name, limits) : read(count);
}

/** A number that may have decimals or be a fraction. */
export function readNumber(text: string, name: string, limits: Limits): Read<number> {
  const exact = exactNumber(text);
  if (!exact) return unread(`${quoted(text)} is no number. Type ${called(name)} as 2.5 or 2 1/2.`);
  const x = exact[0] / exact[1];
  return x < limits.least || x > limits.most ? outside(text, name, limits) : read(x);
}

/** A length as typed, with the form it was typed in so that it can be shown back so. */
export type TypedLength = { readonly length: Length; readonly form: LengthForm };

const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = { in: 'in', '"': 'in', '″': 'in', inch: 'in', inches: 'in', mm: 'mm' };

function splitUnit(text: string, given: LengthUnit): { number: string; unit: LengthUnit } {
  const found = /^(.*?)\s*(in|inch|inches|mm|"|″)\.?$/i.exec(text.trim());
  const unit = found ? UNIT_WORDS[(found[2] ?? '').toLowerCase()] : undefined;
  return found && unit ? { number: found[1] ?? '', unit } : { number: text, unit: given };
}

/** How the number was written: its decimals, or the fraction's lower number. */
function formOf(number: string, unit: LengthUnit): LengthForm {
  const bottom = /\/ ?(\d+)\s*$/.exec(number.trim())?.[1];
  if (bottom && unit === 'in' && [2, 4, 8, 16, 32, 64].includes(Number(bottom))) return { unit, over: Number(bottom) };
  const places = /[.,](\d+)\s*$/.exec(number)?.[1]?.length ?? (bottom ? 4 : 0);
  return { unit, places: Math.min(places, 6) };
}

/** Reads `1.25`, `1 1/4 in`, `31,75 mm`. A unit typed with the number stands over the field's own unit. */
export function readLength(text: string, name: string, unit: LengthUnit, limits: Limits): Read<TypedLength> {
  const split = splitUnit(text, unit);
  const exact = exactNumber(split.number);
  if (!exact) return unread(`${quoted(text)} is no length. Type ${called(name)} as 1.25, 1 1/4 in or 31.75 mm.`);
  const per = split.unit === 'in' ? NM_PER_INCH : NM_PER_MM;
  const size = (exact[0] / exact[1]) * (split.unit === unit ? 1 : split.unit === 'in' ? 25.4 : 1 / 25.4);
  if (size < limits.least || size > limits.most) return outside(text, name, limits, ` ${unit}`);
  return read({ length: nanometres((exact[0] * per) / exact[1]), form: formOf(split.number, split.unit) });
}

/** Reads degrees: `14.5`, `14 1/2`, `14°30'`. */
export function readAngle(text: string, name: string, limits: Limits): Read<Angle> {
  const parts = /^\s*(\d{1,3})\s*°\s*(?:(\d{1,2})\s*[′']\s*)?(?:(\d{1,2}(?:\.\d+)?)\s*[″"]\s*)?$/.exec(text);
  const exact = parts ? null : exactNumber(text.replace(/°\s*$/, ''));
  if (!parts && !exact) return unread(`${quoted(text)} is no angle. Type ${called(name)} in degrees, for example 14.5.`);
  const deg = exact ? exact[0] / exact[1] : Number(parts?.[1]) + Number(parts?.[2] ?? 0) / 60 + Number(parts?.[3] ?? 0) / 3600;
  return deg < limits.least || deg > limits.most ? outside(text, name, limits, '°') : read(degrees(deg));
}
