import { choiceField, countField, noteField, numberField, optional } from '../forms/field.ts';
import type { Typed } from '../forms/form.ts';

/** What is written down when a part is made or spoilt. */
export const finishFields = {
  outcome: choiceField({
    label: 'What came of it',
    choices: [
      ['good', 'Good: it goes into its place'],
      ['scrap', 'Spoilt: the blank is gone, the part still missing'],
    ],
  }),
  minutes: countField({
    label: 'Minutes in all',
    unit: 'min',
    hint: 'What the operations took; put right what is not so.',
    limits: { least: 0, most: 1_000_000 },
  }),
  cost: optional(
    numberField({
      label: 'What it cost',
      hint: 'Material and all else, in your own money. Shown on the shop PC and paired devices only.',
      limits: { least: 0, most: 10_000_000 },
    }),
  ),
  notes: noteField({ label: 'What would be done otherwise', hint: 'And anything to remember about this one.' }),
};

export const centsOf = (money: number | null): number => (money === null ? 0 : Math.round(money * 100));

export const firstTyped = (minutes: number): Typed => ({ outcome: 'good', minutes: String(minutes), cost: '', notes: '' });
