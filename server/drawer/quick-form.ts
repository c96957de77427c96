import { readDrawer } from '../../lib/blanks/read-drawer.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { type Read, read, unread } from '../../lib/values/read.ts';
import { type Field, readField, wordsField } from '../forms/field.ts';
import { openPatternFields } from '../forms/gear-form.ts';
import { keptField, materialField } from './forms.ts';

/** Every piece that cannot be read is named, and what could be read is not lost with it: the line comes back as typed. */
function readLine(text: string): Read<readonly number[]> {
  const { counts, problems } = readDrawer(text);
  if (problems.length > 0) return unread(problems.slice(0, 5).join(' '));
  return counts.length === 0 ? unread('No wheel is typed. Type the counts as 19x2, 22, 25-31 odd.') : read(counts);
}

const wheelsField: Field<readonly number[]> = readField({
  label: 'Wheels',
  hint: 'Teeth as you count them: 19x2, 22, 25-31 odd, 34, 46x2',
  read: readLine,
});

/** Loose wheels by one line, with what they have in common. */
export const quickFields = (unit: LengthUnit) => ({
  wheels: wheelsField,
  ...openPatternFields(unit),
  trust: wordsField({ label: 'Trust', words: ['unknown', 'original', 'replacement'] as const }),
  material: materialField,
  keptIn: keptField,
});

export const freshQuick = { system: 'full-14.5', body: 'unknown', trust: 'unknown', material: 'unknown' };
