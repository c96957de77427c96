import { type Read, unread } from '../../lib/values/read.ts';
import type { Field } from './field.ts';

// biome-ignore lint/suspicious/noExplicitAny: a form holds fields of any type; ValuesOf gives each its own back
export type Fields = Readonly<Record<string, Field<any>>>;
export type ValuesOf<F extends Fields> = { readonly [K in keyof F]: F[K] extends Field<infer T> ? T : never };

/** What was typed, by field; a box that was sent twice keeps the first text. */
export type Typed = Readonly<Record<string, string>>;
export type Problems = Readonly<Record<string, string>>;

export type FormRead<F extends Fields> =
  | { readonly ok: true; readonly value: ValuesOf<F>; readonly typed: Typed }
  | { readonly ok: false; readonly problems: Problems; readonly typed: Typed };

const firstText = (sent: unknown): string => {
  const one = Array.isArray(sent) ? sent[0] : sent;
  return typeof one === 'string' ? one : '';
};

function readOne(field: Fields[string], sent: unknown): Read<unknown> {
  if (Array.isArray(sent) && field.kind !== 'tick') return unread(`This was given ${sent.length} times. Give it once.`);
  const text = firstText(sent);
  if (text.trim() === '' && !field.optional && field.kind !== 'text' && field.kind !== 'long text') {
    return unread(
      `This box is empty. ${field.kind === 'choice' ? 'Choose one.' : `Type ${field.label.charAt(0).toLowerCase()}${field.label.slice(1)}.`}`,
    );
  }
  return field.read(text);
}

/** Reads every field; all problems at once. Names that the form does not have are a problem only where `strict`. */
export function readForm<F extends Fields>(sent: unknown, fields: F, strict = false): FormRead<F> {
  const given = (typeof sent === 'object' && sent !== null ? sent : {}) as Record<string, unknown>;
  const typed: Record<string, string> = {};
  const problems: Record<string, string> = {};
  const value: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields)) {
    typed[name] = firstText(given[name]);
    const one = readOne(field, given[name]);
    if (one.ok) value[name] = one.value;
    else problems[name] = one.problem;
  }
  if (strict) {
    for (const name of Object.keys(given)) {
      if (!(name in fields)) problems[name] = `Nothing here is called “${name.slice(0, 40)}”. Known: ${Object.keys(fields).join(', ')}.`;
    }
  }
  return Object.keys(problems).length > 0 ? { ok: false, problems, typed } : { ok: true, value: value as ValuesOf<F>, typed };
}

/** A text field that may not stay empty. what: what is to be typed, in the words of a sentence: "the name of the tool". */
export const required = (field: Field<string>, what: string): Field<string> => ({
  ...field,
  read: (text) => (text.trim() === '' ? unread(`This box is empty. Type ${what}.`) : field.read(text)),
});
