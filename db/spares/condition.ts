import { CONDITIONS, type Condition } from '../../lib/blanks/spare-wheel.ts';

/** What a look at teeth and bore told, kept in a thing's condition as words: "teeth worn, bore good". */
export type Looked = { readonly teeth: Condition; readonly bore: Condition };

const NOT_LOOKED: Condition = 'not looked at';

export const conditionText = ({ teeth, bore }: Looked): string => `teeth ${teeth}, bore ${bore}`;

const wordAfter = (text: string, what: string): Condition => {
  const found = new RegExp(`\\b${what} (${CONDITIONS.join('|')})`).exec(text)?.[1];
  return CONDITIONS.find((one) => one === found) ?? NOT_LOOKED;
};

/** The reverse of conditionText. "new", as a made wheel has it, is good all over; other words say nothing of teeth or bore. */
export function conditionOf(text: string): Looked {
  if (text.trim() === 'new') return { teeth: 'good', bore: 'good' };
  return { teeth: wordAfter(text, 'teeth'), bore: wordAfter(text, 'bore') };
}
