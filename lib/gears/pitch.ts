import { printShort } from '../values/print.ts';
import { over, type Ratio, sameRatio, times, toNumber } from '../values/ratio.ts';
import { exactNumber, type Limits, quoted, type Read, read, unread } from '../values/read.ts';
import type { Pitch, PitchKind } from './gear.ts';

/** What Backgear takes, in each kind's own unit (per inch, mm, inches). */
export const PITCH_LIMITS: Readonly<Record<PitchKind, Limits>> = {
  DP: { least: 1, most: 200 },
  module: { least: 0.1, most: 50 },
  CP: { least: 1 / 64, most: 6 },
};

const MM_PER_INCH: Ratio = [127, 5];
const HOW = 'Type 8 DP, module 2.5, or 5/16 CP.';
const SAYS: Readonly<Record<PitchKind, string>> = {
  DP: 'Diametral pitch may be from 1 to 200 DP.',
  module: 'A module may be from 0.1 to 50.',
  CP: 'Circular pitch may be from 1/64 to 6 in.',
};

const NUMBER = String.raw`([-−–]?[\d.,/ -]*\d[.,]?)`;
const UNIT = String.raw`\s*(in|inch|inches|"|″|mm)?\.?`;
const WORDS: readonly (readonly [PitchKind, string])[] = [
  ['DP', 'd\\.?p\\.?|diametral pitch|pitch'],
  ['module', 'modules?|mod\\.?|m'],
  ['CP', 'c\\.?p\\.?|circular pitch'],
];
const FORMS = WORDS.flatMap(([kind, words]) => [
  { kind, form: new RegExp(`^${NUMBER}${UNIT}\\s*(?:${words})$`, 'i') },
  { kind, form: new RegExp(`^(?:${words})\\s*${NUMBER}${UNIT}$`, 'i') },
]);

type Typed = { readonly kind: PitchKind; readonly number: string; readonly unit: string };

/** The kind, number and unit as typed. DP has no unit; a module only mm. */
function split(text: string): Typed | null {
  for (const { kind, form } of FORMS) {
    const found = form.exec(text.trim());
    const unit = (found?.[2] ?? '').toLowerCase();
    const fits = unit === '' || kind === 'CP' || (kind === 'module' && unit === 'mm');
    if (found && fits) return { kind, number: found[1] ?? '', unit };
  }
  return null;
}

function bare(text: string): { readonly ok: false; readonly problem: string } {
  if (text.trim() === '') return unread(`This box is empty. ${HOW}`);
  if (/^\s*\d+\s*\/\s*\d+\s*$/.test(text))
    return unread(`${quoted(text)} does not say which pitch. For a double-pitch stub type its first number, such as 5 DP. ${HOW}`);
  const says = exactNumber(text) ? 'does not say which pitch: DP, module or CP' : 'is no pitch';
  return unread(`${quoted(text)} ${says}. ${HOW}`);
}

function withinLimits(text: string, { kind, unit }: Typed, size: Ratio): Read<Pitch> {
  const inMm = kind === 'CP' && unit === 'mm';
  const x = toNumber(size) / (inMm ? 25.4 : 1);
  const { least, most } = PITCH_LIMITS[kind];
  if (x >= least && x <= most) return read({ kind, size: inMm ? over(size, MM_PER_INCH) : size });
  const stub = kind === 'DP' && /\d\s*\/\s*\d/.test(text) && x > 0 ? ' For a double-pitch stub type the first number, such as 5 DP.' : '';
  return unread(`${quoted(text)} is outside what fits here. ${SAYS[kind]}${stub}`);
}

/**
 * Reads a pitch as people write it: 8 DP, DP 8, 14 1/2 DP, M2.5, module 2.5, 2.5 mod, 5/16 CP, 0.3125 in CP, CP 10 mm.
 * Kept exact. `kind`, when the form asks for one kind only, lets a bare number stand; otherwise a bare number is refused,
 * because 8 may be a diametral pitch or a module.
 */
export function readPitch(text: string, kind?: PitchKind): Read<Pitch> {
  if (text.length > 60) return bare(text);
  const typed = split(text) ?? (kind && exactNumber(text) ? { kind, number: text, unit: '' } : null);
  if (!typed) return bare(text);
  const size = exactNumber(typed.number);
  if (!size) return unread(`${quoted(text)} has no number that can be read. ${HOW}`);
  return withinLimits(text, typed, size);
}

/** The exact decimal of a ratio, to nine places at most; null when it has none. */
const decimalOf = ([num, den]: Ratio): string | null => (10 ** 9 % den === 0 ? printShort(num / den, 9) : null);

/** The exact fraction, whole part before it: 25 2/3. */
function fractionOf([num, den]: Ratio): string {
  const [whole, left] = [Math.floor(num / den), num % den];
  if (left === 0) return `${whole}`;
  return `${whole === 0 ? '' : `${whole} `}${left}/${den}`;
}

function printCircular(size: Ratio): string {
  const halved = [1, 2, 4, 8, 16, 32, 64].includes(size[1]);
  if (halved) return `${fractionOf(size)} in CP`;
  const inch = decimalOf(size);
  if (inch) return `${inch} in CP`;
  const mm = decimalOf(times(size, MM_PER_INCH));
  return mm ? `${mm} mm CP` : `${fractionOf(size)} in CP`;
}

/** 8 DP, module 2.5, 5/16 in CP. readPitch gives the same pitch back. */
export function printPitch({ kind, size }: Pitch): string {
  if (kind === 'CP') return printCircular(size);
  const number = decimalOf(size) ?? fractionOf(size);
  return kind === 'DP' ? `${number} DP` : `module ${number}`;
}

/** The same pitch exactly, as it is stamped: a diametral pitch never equals a module, even where the size does (25.4 DP is module 1 in size). */
export const samePitch = (one: Pitch, other: Pitch): boolean => one.kind === other.kind && sameRatio(one.size, other.size);
