import type { Angle } from '../../lib/values/angle.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import {
  type Limits,
  quoted,
  type Read,
  read,
  readAngle,
  readCount,
  readLength,
  readNumber,
  type TypedLength,
  unread,
} from '../../lib/values/read.ts';

/**
 * One thing that a form or a sum asks for: what it is called, in which unit, what may be typed, and how the text is read.
 * An empty box reads as null when `optional`, and otherwise as a problem.
 */
export type Field<T> = {
  readonly label: string;
  readonly hint: string;
  readonly unit: string;
  readonly optional: boolean;
  readonly kind: 'text' | 'count' | 'decimal' | 'choice' | 'long text' | 'tick' | 'hidden';
  readonly choices: readonly (readonly [value: string, label: string])[];
  readonly read: (text: string) => Read<T>;
};

type Asked = { readonly label: string; readonly hint?: string };

const field = <T>(asked: Asked, kind: Field<T>['kind'], read: Field<T>['read'], more: Partial<Field<T>> = {}): Field<T> => ({
  label: asked.label,
  hint: asked.hint ?? '',
  unit: '',
  optional: false,
  kind,
  choices: [],
  ...more,
  read,
});

/** How many teeth a wheel may have. */
export const TEETH: Limits = { least: 4, most: 1000, tryThis: 'Count again; one to three teeth are a worm’s, which has a sum of its own.' };

/** The name of a field inside a sentence. */
const inSentence = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

export const countField = (asked: Asked & { readonly limits: Limits; readonly unit?: string }): Field<number> =>
  field(asked, 'count', (text) => readCount(text, inSentence(asked.label), asked.limits), { unit: asked.unit ?? '' });

export const numberField = (asked: Asked & { readonly limits: Limits; readonly unit?: string }): Field<number> =>
  field(asked, 'decimal', (text) => readNumber(text, inSentence(asked.label), asked.limits), { unit: asked.unit ?? '' });

export const lengthField = (asked: Asked & { readonly limits: Limits; readonly unit?: LengthUnit }): Field<TypedLength> =>
  field(asked, 'decimal', (text) => readLength(text, inSentence(asked.label), asked.unit ?? 'in', asked.limits), {
    unit: asked.unit ?? 'in',
  });

export const angleField = (asked: Asked & { readonly limits: Limits }): Field<Angle> =>
  field(asked, 'decimal', (text) => readAngle(text, inSentence(asked.label), asked.limits), { unit: '°' });

const MOST_LETTERS = 120;

/** A line of text without its outer blanks. */
export const textField = (asked: Asked & { readonly most?: number }): Field<string> => {
  const most = asked.most ?? MOST_LETTERS;
  return field(asked, 'text', (text) => {
    const tidy = text.trim().replace(/\s+/g, ' ');
    return tidy.length > most ? unread(`${tidy.length} letters are too many: ${inSentence(asked.label)} may have ${most}.`) : read(tidy);
  });
};

const MOST_NOTE = 20_000;

/** A note of several lines. */
export const noteField = (asked: Asked): Field<string> =>
  field(asked, 'long text', (text) =>
    text.length > MOST_NOTE
      ? unread(`${text.length} letters are too many: a note may have ${MOST_NOTE}. Keep the rest in a second note.`)
      : read(text.trim()),
  );

export const choiceField = <T extends string>(asked: Asked & { readonly choices: readonly (readonly [T, string])[] }): Field<T> =>
  field(
    asked,
    'choice',
    (text) => {
      const found = asked.choices.find(([value]) => value === text);
      return found ? read(found[0]) : unread(`${quoted(text)} is none of: ${asked.choices.map(([, label]) => label).join(', ')}.`);
    },
    { choices: asked.choices },
  );

/** Choices that are the words themselves. */
export const wordsField = <T extends string>(asked: Asked & { readonly words: readonly T[] }): Field<T> =>
  choiceField({ ...asked, choices: asked.words.map((word) => [word, word] as const) });

/** A box that is ticked or not; an unticked one is not sent at all. */
export const tickField = (asked: Asked): Field<boolean> =>
  field(
    asked,
    'tick',
    (text) => (['yes', ''].includes(text.trim()) ? read(text.trim() === 'yes') : unread(`${quoted(text)} is neither a tick nor none.`)),
    { optional: true },
  );

/** Any field read by a function of its own, such as a pitch or a drawer. */
export const readField = <T>(asked: Asked & { readonly unit?: string; readonly read: (text: string) => Read<T> }): Field<T> =>
  field(asked, 'text', asked.read, { unit: asked.unit ?? '' });

/** The same field, but an empty box is answered with null. */
export const optional = <T>(wanted: Field<T>): Field<T | null> => ({
  ...wanted,
  optional: true,
  read: (text) => (text.trim() === '' ? read(null) : wanted.read(text)),
});
