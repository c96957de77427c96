import type { Typed } from './form.ts';

/**
 * What an answer of "What is this gear?" gives to a wheel's form, box by box; saidOfIt is added to its notes. hand is asked of the owner
 * where the teeth are helical: a print says how far they lean, not which way.
 */
export type Taken = {
  readonly teeth: string;
  readonly pitch: string;
  readonly notKnown: string;
  readonly system: string;
  readonly angle: string;
  readonly addendum: string;
  readonly dedendum: string;
  readonly helix: string;
  readonly hand: string;
  readonly saidOfIt: string;
};

const BOXES = ['teeth', 'pitch', 'notKnown', 'system', 'angle', 'addendum', 'dedendum', 'helix', 'hand'] as const;
const LONGEST = 400;

/** The boxes of a wheel's form that an answer writes over. */
export const takenBoxes = (typed: Typed): Typed => Object.fromEntries(BOXES.map((name) => [name, typed[name] ?? '']));

/** What is said over a form with an answer written in, or with what stood there before it; '' over any other. */
export function takenWords({ pitch, saidOfIt }: Readonly<Record<string, unknown>>): string {
  if (typeof pitch !== 'string' || typeof saidOfIt !== 'string') return '';
  return saidOfIt === ''
    ? 'What stood there before is written in again. Nothing is saved yet: save it to put it back.'
    : 'The answer is written in. Nothing is saved yet: look it over, then save.';
}

/** A wheel's form as it stands on record, with an answer written into it. Nothing is saved by that: its owner looks at it and saves it. */
export function withTaken(typed: Typed, query: Readonly<Record<string, unknown>>): Typed {
  const sent = (name: string): string | null => {
    const text = query[name];
    return typeof text === 'string' && text.length <= LONGEST ? text : null;
  };
  const said = sent('saidOfIt');
  if (sent('pitch') === null || said === null) return typed;
  const boxes = Object.fromEntries(BOXES.flatMap((name) => (sent(name) === null ? [] : [[name, sent(name) ?? '']])));
  return { ...typed, ...boxes, notes: [typed['notes'] ?? '', said].filter((line) => line !== '').join('\n') };
}
