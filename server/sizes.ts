import { type Length, type LengthUnit, NM_PER_INCH, NM_PER_MM } from '../lib/values/length.ts';
import { type LengthForm, printLength } from '../lib/values/print.ts';
import type { FigureView } from './page.ts';

const otherForm = (unit: LengthUnit): LengthForm => (unit === 'in' ? { unit: 'mm', places: 3 } : { unit: 'in', places: 4 });

/** The form it was typed in, where that shows the whole of it; what is left of a bar of 40 in may need more decimals than the 40 did. */
export function wholeForm(length: Length, form: LengthForm): LengthForm {
  const step = 'over' in form ? NM_PER_INCH / form.over : (form.unit === 'in' ? NM_PER_INCH : NM_PER_MM) / 10 ** form.places;
  return length % step === 0 ? form : { unit: form.unit, places: form.unit === 'in' ? 3 : 2 };
}

/** "1 1/4 in", as it was typed. */
export const sizeWords = (length: Length, form: LengthForm): string => `${printLength(length, form)} ${form.unit}`;

const BARE = { symbol: '', mark: '', was: '', revision: '', limits: '', working: null } as const;

/** A size that is on record, as a dimension: as it was typed, the other unit below. Null: nobody has measured it. */
export function sizeView(key: string, name: string, length: Length | null, form: LengthForm | undefined): FigureView {
  if (length === null) return { ...BARE, key, name, text: 'not measured', unit: '', other: '', words: true };
  const shown = form ?? { unit: 'in', places: 4 };
  const other = otherForm(shown.unit);
  return { ...BARE, key, name, text: printLength(length, shown), unit: shown.unit, other: sizeWords(length, other), words: false };
}

/** A number or words that are on record, as a figure without working; words stand among the facts instead. */
export const factView = (key: string, name: string, text: string, unit = ''): FigureView => ({
  ...BARE,
  key,
  name,
  text,
  unit,
  other: '',
  words: !/^[\d.,−]+$/.test(text),
});

export type Fact = { readonly label: string; readonly says: string };

/** Numbers are drawn as dimensions; words, and what nobody has measured, stand as lines. */
export function apart(all: readonly FigureView[]): { readonly figures: readonly FigureView[]; readonly facts: readonly Fact[] } {
  return {
    figures: all.filter((one) => !one.words),
    facts: all.filter((one) => one.words).map(({ name, text, unit }) => ({ label: name, says: `${text} ${unit}`.trim() })),
  };
}
