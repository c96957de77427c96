import type { AnswerTable } from '../figure/figure.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import { type Length, ofUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import type { GearToCut } from './choice.ts';
import { formError } from './form-error.formulas.ts';
import { addendumOf, type CutterForm, orNone, pairOf } from './form-errors.ts';

/** Heights above the pitch line as parts of the addendum, from the tips down to where a mate's tips still reach. */
const PARTS = [1, 0.75, 0.5, 0.25, 0, -0.25, -0.5, -0.75, -1] as const;

/** Error of form of one flank at a height above the pitch line; null where no such form can be drawn. */
export type FlankError = { readonly part: number; readonly height: Length; readonly error: Length | null };

/** How far off a cutter's form is all along the flank, sideways. Below the base circle both are taken as straight to the middle. */
export function formAlong(gear: GearToCut, form: CutterForm, parts: readonly number[] = PARTS): readonly FlankError[] {
  const [pair, A, unit] = [pairOf(gear, form), addendumOf(gear), unitOfPitch(gear.pitch)];
  return parts.map((part) => ({
    part,
    height: ofUnit(part * A, unit),
    error: orNone(() => ofUnit(formError(pair, part * A), unit)),
  }));
}

const PLACES: Readonly<Record<string, string>> = { '1': 'tips', '0': 'pitch line', '-1': 'where the mate’s tips end' };

/** The errors all along the flank, one column for each form: thousandths, plus is metal off. */
export function alongTable(gear: GearToCut, forms: readonly CutterForm[]): AnswerTable {
  const columns = forms.map((form) => formAlong(gear, form));
  return {
    title: 'Error of form along the flank, sideways',
    unit: unitOfPitch(gear.pitch),
    heads: ['Place', 'Above the pitch line', ...forms.map(({ exact }) => `Form right for ${printShort(exact.count)}`)],
    rows: PARTS.map((part, at) => [
      PLACES[String(part)] ?? '',
      { length: columns[0]?.[at]?.height ?? ofUnit(0, 'in') },
      ...columns.map((column) => {
        const error = column[at]?.error ?? null;
        return error === null ? 'no form there' : { length: error };
      }),
    ]),
  };
}
