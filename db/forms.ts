import type { LengthUnit } from '../lib/values/length.ts';
import type { LengthForm } from '../lib/values/print.ts';

/** How a length was typed, as text for a column: "in.3" three decimals of an inch, "in/64" 64ths, "mm.2". */
export const formText = (form: LengthForm): string => ('over' in form ? `in/${form.over}` : `${form.unit}.${form.places}`);

/** The reverse of formText. Throws RangeError for anything else. */
export function formOfText(text: string): LengthForm {
  const found = /^(in|mm)([./])(\d{1,3})$/.exec(text);
  const [unit, mark, digits] = [found?.[1] as LengthUnit | undefined, found?.[2], Number(found?.[3])];
  if (!unit || (mark === '/' && unit === 'mm')) throw new RangeError(`“${text}” is no form of a length`);
  return mark === '/' ? { unit: 'in', over: digits } : { unit, places: digits };
}

/** Four decimals of an inch or three of a millimetre, for lengths that nobody typed. */
export const usualForm = (unit: LengthUnit): LengthForm => ({ unit, places: unit === 'in' ? 4 : 3 });
