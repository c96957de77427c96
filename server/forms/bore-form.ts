import type { Bore } from '../../lib/gears/gear.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import type { LengthForm } from '../../lib/values/print.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { choiceField, countField, type Field, lengthField, optional } from './field.ts';
import type { Problems, Typed, ValuesOf } from './form.ts';

/** Sizes of a wheel and its bore. */
const SIZES: Readonly<Record<LengthUnit, { readonly least: number; readonly most: number }>> = {
  in: { least: 0.01, most: 200 },
  mm: { least: 0.2, most: 5000 },
};

export const sizeField = (unit: LengthUnit, label: string, hint = ''): Field<TypedLength | null> =>
  optional(lengthField({ label, hint, limits: SIZES[unit], unit }));

/** What a form asks about a bore: of a wheel, or what a mandrel fits. */
export const boreFields = (unit: LengthUnit) => ({
  bore: optional(
    choiceField({
      label: 'Bore',
      choices: [
        ['plain', 'plain'],
        ['keyed', 'with a keyway'],
        ['splined', 'splined'],
      ],
    }),
  ),
  boreDiameter: sizeField(unit, 'Bore diameter', 'Of a splined bore: across the bottoms of its grooves'),
  keyWidth: sizeField(unit, 'Key width', 'Of keyway or spline'),
  keyDepth: sizeField(unit, 'Keyway depth', 'Keyed bore only'),
  splines: optional(countField({ label: 'Splines', hint: 'Splined bore only', limits: { least: 2, most: 100 } })),
  boreMinor: sizeField(unit, 'Small diameter', 'Splined bore only: across the tops of the splines'),
});

export const BORE_NAMES = ['bore', 'boreDiameter', 'keyWidth', 'keyDepth', 'splines', 'boreMinor'] as const;
export type BoreValues = ValuesOf<ReturnType<typeof boreFields>>;

/** The bore, once boreProblems has found none. */
export function boreOf({ bore, boreDiameter, boreMinor, keyWidth, keyDepth, splines }: BoreValues): Bore | null {
  if (!bore || !boreDiameter) return null;
  const diameter = boreDiameter.length;
  if (bore === 'keyed' && keyWidth && keyDepth) return { form: 'keyed', diameter, keyWidth: keyWidth.length, keyDepth: keyDepth.length };
  if (bore === 'splined' && keyWidth && boreMinor && splines !== null)
    return { form: 'splined', diameter, minor: boreMinor.length, splines, keyWidth: keyWidth.length };
  return { form: 'plain', diameter };
}

/** How its lengths were typed, by the names that the database keeps them under. */
export function formsOfBore({ boreDiameter, boreMinor, keyWidth, keyDepth }: BoreValues): Readonly<Record<string, LengthForm>> {
  const named = { diameter: boreDiameter, minor: boreMinor, keyWidth, keyDepth };
  return Object.fromEntries(Object.entries(named).flatMap(([name, typed]) => (typed ? [[name, typed.form] as const] : [])));
}

const WANTED: Readonly<Record<string, readonly (readonly [keyof BoreValues, string])[]>> = {
  plain: [['boreDiameter', 'the bore diameter']],
  keyed: [
    ['boreDiameter', 'the bore diameter'],
    ['keyWidth', 'the key width'],
    ['keyDepth', 'the keyway depth'],
  ],
  splined: [
    ['boreDiameter', 'the diameter across the grooves'],
    ['boreMinor', 'the small diameter'],
    ['splines', 'how many splines'],
    ['keyWidth', 'the key width'],
  ],
};

/** What is wrong between fields that are each right by themselves. */
export function boreProblems(values: BoreValues): Problems {
  const { bore, boreDiameter, boreMinor } = values;
  const lacking = (WANTED[bore ?? ''] ?? []).filter(([name]) => values[name] === null);
  const problems: Record<string, string> = Object.fromEntries(
    lacking.map(([name, words]) => [name, `Type ${words}, or choose “not said” for the bore until it is measured.`]),
  );
  if (!bore && boreDiameter) problems['bore'] = 'A diameter is typed: choose what the bore is like.';
  if (bore === 'splined' && boreMinor && boreDiameter && boreMinor.length >= boreDiameter.length)
    problems['boreMinor'] = 'The small diameter lies inside the one across the grooves: it is less.';
  return problems;
}

/** What would have been typed for this bore. size: a kept length as it was typed, '' for none. */
export function typedOfBore(bore: Bore | null, size: (name: string, length: Length | null | undefined) => string): Typed {
  return {
    bore: bore?.form ?? '',
    boreDiameter: size('diameter', bore?.diameter),
    keyWidth: size('keyWidth', bore && bore.form !== 'plain' ? bore.keyWidth : null),
    keyDepth: size('keyDepth', bore?.form === 'keyed' ? bore.keyDepth : null),
    splines: bore?.form === 'splined' ? String(bore.splines) : '',
    boreMinor: size('minor', bore?.form === 'splined' ? bore.minor : null),
  };
}
