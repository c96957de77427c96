import { type Length, type LengthUnit, toMm } from '../values/length.ts';
import { type LengthForm, printLength } from '../values/print.ts';

/** Where a drawing will be looked at: so many pixels wide on a screen, or printed at its true size. */
export type Shown = { readonly px: number } | 'paper';
/** The narrowest phone less its margins. Lettering made for this can be read on anything wider. */
export const PHONE: Shown = { px: 328 };

/** Letter heights in millimetres of the drawing: label for words and the other unit, figure for dimensions. */
export type Letters = { readonly label: number; readonly figure: number };

const LABEL_PX = 14.4;
const FIGURE_PX = 18;
const PAPER: Letters = { label: 3.2, figure: 4.2 };

/**
 * Letters that come out 14.4 and 18 px high when the whole drawing is `shown` so many pixels wide.
 * The drawing's width depends on the letters (dimensions stand outside the thing), so the two are settled together: widthOf is
 * called with a guess, the letters follow from the width, and so on; as long as letters take less than half the width this closes in.
 */
export function lettersFor(shown: Shown, widthOf: (letters: Letters) => number): Letters {
  if (shown === 'paper') return PAPER;
  let letters: Letters = { label: 0, figure: 0 };
  for (let step = 0; step < 40; step++) {
    const perPx = widthOf(letters) / shown.px;
    letters = { label: perPx * LABEL_PX, figure: perPx * FIGURE_PX };
  }
  return letters;
}

/** Width of a run of narrow sans-serif letters, judged on the generous side (0.6 of the height each). */
export const widthOfText = (says: string, size: number): number => says.length * size * 0.6;

/** Where letters that find no room between the ends of a dimension begin: past the tail of its outer arrow. */
export const besideFrom = (size: number): number => size * 1.4;
/** How far a dimension reaches past its end with its letters there. */
export const besideTo = (says: string, size: number): number => besideFrom(size) + widthOfText(says, size);

const THIN = '\u2009';

/** A length as a dimension says it, in the form asked for and in the other unit: 3.000 in and 76.20 mm. */
export function dimensionText(length: Length, form: LengthForm): { says: string; also: string } {
  const other: LengthForm = form.unit === 'in' ? { unit: 'mm', places: 2 } : { unit: 'in', places: 3 };
  return { says: `${printLength(length, form)}${THIN}${form.unit}`, also: `${printLength(length, other)}${THIN}${other.unit}` };
}

/** Millimetres of the drawing for a formula's number in its own unit. */
export const mmPer = (unit: LengthUnit): number => (unit === 'in' ? 25.4 : 1);
export const mmOf = (length: Length | null, otherwise: number): number => (length === null ? otherwise : toMm(length));
