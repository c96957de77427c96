import type { ChoiceView, FieldView } from '../page.ts';

/** A drop-down of things on record, which no form reads by its words. id: unique on its page. */
export const listField = (id: string, name: string, label: string, choices: readonly ChoiceView[]): FieldView => ({
  kind: 'list',
  name,
  id,
  label,
  value: '',
  unit: '',
  hint: '',
  problem: '',
  inputmode: 'text',
  choices,
});
