import type { LengthUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import { type Limits, type Read, read, readLength, readNumber, type TypedLength, unread } from '../../lib/values/read.ts';
import { type Field, readField } from '../forms/field.ts';

const MOST = 80;

/** The pieces of a line typed with blanks, commas or semicolons between. A comma inside a number is a decimal comma. */
const piecesOf = (text: string): string[] => text.split(/\s*;\s*|,?\s+|,(?=\S*\.)/).filter((piece) => piece !== '');

function readAll<T>(pieces: readonly string[], name: string, one: (piece: string) => Read<T>): Read<readonly T[]> {
  if (pieces.length > MOST) return unread(`${pieces.length} ${name} are too many: at most ${MOST}.`);
  const all = pieces.map(one);
  const wrong = all.find((each) => !each.ok);
  return wrong && !wrong.ok ? wrong : read(all.flatMap((each) => (each.ok ? [each.value] : [])));
}

const SPEEDS: Limits = { least: 0.1, most: 60_000 };

const ascending = (numbers: readonly number[]): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** Spindle speeds as one line: 45 73 112 180. Sorted, each once. */
export function readSpeeds(text: string): Read<readonly number[]> {
  const all = readAll(piecesOf(text), 'speeds', (piece) => readNumber(piece, 'a speed', SPEEDS));
  return all.ok ? read(ascending(all.value)) : all;
}

export type TypedFeeds = { readonly feeds: readonly TypedLength[]; readonly form: LengthForm | null };

/** The form that writes the finest of them whole. */
function finest(feeds: readonly TypedLength[], unit: LengthUnit): LengthForm | null {
  if (feeds.length === 0) return null;
  return { unit, places: Math.max(...feeds.map(({ form }) => ('places' in form ? form.places : 4))) };
}

/** Feeds as one line: 0.002 0.0035 0.005. A unit at its end is that of all. */
export function readFeeds(text: string, unit: LengthUnit): Read<TypedFeeds> {
  const ending = /\s*(in|mm|")\.?\s*$/i.exec(text);
  const own = ending ? (ending[1]?.toLowerCase() === 'mm' ? 'mm' : 'in') : unit;
  const limits = own === 'in' ? { least: 0.0001, most: 200 } : { least: 0.001, most: 5000 };
  const pieces = piecesOf(ending ? text.slice(0, ending.index) : text);
  const all = readAll(pieces, 'feeds', (piece) => readLength(piece, 'a feed', own, limits));
  return all.ok ? read({ feeds: all.value, form: finest(all.value, own) }) : all;
}

const mayBeEmpty = <T>(field: Field<T>): Field<T> => ({ ...field, optional: true });

export const speedsField = (): Field<readonly number[]> =>
  mayBeEmpty(
    readField({ label: 'Spindle speeds', hint: 'All on one line: 45 73 112 180 280', unit: 'rev/min', read: (text) => readSpeeds(text) }),
  );

export const feedsField = (unit: LengthUnit): Field<TypedFeeds> =>
  mayBeEmpty(readField({ label: 'Feeds', hint: 'All on one line, finest first', unit, read: (text) => readFeeds(text, unit) }));
