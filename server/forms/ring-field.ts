import type { LengthUnit } from '../../lib/values/length.ts';
import { type LengthForm, printLength } from '../../lib/values/print.ts';
import { quoted, type Read, read, readLength, type TypedLength, unread } from '../../lib/values/read.ts';
import { type Field, readField } from './field.ts';

/** A ring-shaped hollow as it was typed: what it is, and the two diameters that it lies between. */
export type TypedRing<W extends string> = { readonly what: W; readonly inner: TypedLength; readonly outer: TypedLength };

/** what: the words that may be typed and what each stands for; usual: what is meant when none is typed. */
type RingWords<W extends string> = {
  readonly label: string;
  readonly hint: string;
  readonly words: Readonly<Record<string, W>>;
  readonly usual: W;
};

const LIMITS: Readonly<Record<LengthUnit, { readonly least: number; readonly most: number }>> = {
  in: { least: 0, most: 200 },
  mm: { least: 0, most: 5000 },
};
const MOST_RINGS = 12;

/** "1.9 to 4.6", "1.9 – 4.6", and "1.9-4.6" where no fraction makes the dash doubtful. */
function splitSizes(text: string): readonly [string, string] | null {
  const found = /^(.+?)\s*(?:\bto\b|–)\s*(.+)$/i.exec(text) ?? /^([\d.,]+)\s*-\s*([\d.,]+(?:\s*(?:in|mm|"))?)$/i.exec(text);
  return found ? [found[1] ?? '', found[2] ?? ''] : null;
}

/** Takes the word out of "both sides 1.9 to 4.6" or "1.9 to 4.6 both". */
function splitWord<W extends string>(text: string, { words, usual }: RingWords<W>): { readonly what: W; readonly sizes: string } {
  const known = Object.keys(words).join('|');
  const found = new RegExp(`^(?:(${known})(?:\\s+sides?)?\\b[\\s:,]*)?(.*?)(?:[\\s,]+(${known})(?:\\s+sides?)?)?$`, 'i').exec(text);
  const word = (found?.[1] ?? found?.[3] ?? '').toLowerCase();
  return { what: words[word] ?? usual, sizes: (found?.[2] ?? text).trim() };
}

function readRing<W extends string>(text: string, unit: LengthUnit, words: RingWords<W>): Read<TypedRing<W>> {
  const { what, sizes } = splitWord(text, words);
  const two = splitSizes(sizes);
  if (!two) return unread(`${quoted(text)} does not name two diameters. Type it as “${words.hint}”.`);
  const [inner, outer] = two.map((size) => readLength(size, 'a diameter', unit, LIMITS[unit])) as [Read<TypedLength>, Read<TypedLength>];
  if (!inner.ok) return inner;
  if (!outer.ok) return outer;
  if (inner.value.length >= outer.value.length) return unread(`${quoted(text)}: the smaller diameter comes first.`);
  return read({ what, inner: inner.value, outer: outer.value });
}

/** Rings between two diameters, a semicolon between one and the next. An empty box is none. */
export function ringField<W extends string>(words: RingWords<W>, unit: LengthUnit): Field<readonly TypedRing<W>[]> {
  const readAll = (text: string): Read<readonly TypedRing<W>[]> => {
    const pieces = text
      .split(/[;\n]/)
      .map((piece) => piece.trim())
      .filter((piece) => piece !== '');
    if (pieces.length > MOST_RINGS) return unread(`${pieces.length} of them are too many: at most ${MOST_RINGS}.`);
    const rings = pieces.map((piece) => readRing(piece, unit, words));
    const wrong = rings.find((ring) => !ring.ok);
    if (wrong && !wrong.ok) return wrong;
    return read(rings.flatMap((ring) => (ring.ok ? [ring.value] : [])));
  };
  const field = readField({ label: words.label, hint: `As “${words.hint}”, a semicolon between two`, unit, read: readAll });
  return { ...field, optional: true };
}

/** A length as it would be typed into a field of this unit: its own unit stands behind it where that is another. */
export const lengthTyped = (length: TypedLength['length'], form: LengthForm, unit: LengthUnit): string =>
  form.unit === unit ? printLength(length, form) : `${printLength(length, form)} ${form.unit}`;
