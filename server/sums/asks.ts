import type { Length, LengthUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { quoted, type Read, read, readLength, readNumber, type TypedLength, unread } from '../../lib/values/read.ts';
import { choiceField, type Field, lengthField, optional, readField } from '../forms/field.ts';

type Size = { readonly label: string; readonly hint?: string; readonly least?: number; readonly most?: number };

/** The longest size that a sum takes: more than any bench holds. */
const MOST_IN = 200;
const LEAST_IN = 0.0001;

/** A length in the inch cell; typed with mm it is taken so. */
export const size = ({ label, hint = '', least = LEAST_IN, most = MOST_IN }: Size): Field<TypedLength> =>
  lengthField({ label, hint, limits: { least, most } });

/** The same where it may stay empty. */
export const sizeIfKnown = (asked: Size): Field<TypedLength | null> => optional(size(asked));

/** The unit that a length was typed in: the answer is given in it where no pitch decides. */
export const unitOf = (typed: TypedLength): LengthUnit => typed.form.unit;

/** Dimensions of a drawing: thousandths of an inch, hundredths of a millimetre. */
export const dimensions = (unit: LengthUnit): LengthForm => ({ unit, places: unit === 'in' ? 3 : 2 });

/** The lengths that were typed, under their names; what stayed empty is left out. */
export function typedOf<K extends string>(boxes: Readonly<Record<K, TypedLength | null>>): Partial<Record<K, Length>> {
  const full = Object.entries<TypedLength | null>(boxes).flatMap(([name, box]) => (box ? [[name, box.length] as const] : []));
  return Object.fromEntries(full) as Partial<Record<K, Length>>;
}

const MOST_LISTED = 100;
const MOST_LETTERS = 2000;

/** A line of several things, commas or semicolons between, each read alike; the first that cannot be read says why. */
export function readList<T>(text: string, name: string, one: (piece: string) => Read<T>, between = /[,;\n]/): Read<readonly T[]> {
  if (text.length > MOST_LETTERS) return unread(`${text.length} letters are too many: ${name} may have ${MOST_LETTERS}.`);
  const pieces = text
    .split(between)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  if (pieces.length === 0) return unread(`${text === '' ? 'This box is empty' : quoted(text)}. Type ${name}.`);
  if (pieces.length > MOST_LISTED) return unread(`${pieces.length} are too many: ${name} may be ${MOST_LISTED} at most.`);
  const each = pieces.map(one);
  const wrong = each.find((piece) => !piece.ok);
  if (wrong && !wrong.ok) return wrong;
  return read(each.flatMap((piece) => (piece.ok ? [piece.value] : [])));
}

type Listed = { readonly label: string; readonly hint: string };

/** Speeds of a machine, blanks or commas between. */
export const speedsField = (asked: Listed): Field<readonly number[]> =>
  readField({
    ...asked,
    unit: 'rev/min',
    read: (text) => readList(text, 'the speeds', (piece) => readNumber(piece, 'a speed', { least: 0.1, most: 100_000 }), /[,;\s]+/),
  });

/** Sizes such as arbor diameters, commas between. */
export const sizesField = (asked: Listed): Field<readonly TypedLength[]> =>
  readField({
    ...asked,
    unit: 'in',
    read: (text) => readList(text, 'the sizes', (piece) => readLength(piece, 'a size', 'in', { least: 0.01, most: 20 })),
  });

export const madeField = choiceField({
  label: 'Teeth are cut with',
  choices: [
    ['form cutter', 'a form cutter'],
    ['generated', 'a hob or rack'],
  ],
});
