import { formOfText } from '../../db/forms.ts';
import { PITCH_UNKNOWN } from '../../db/gears.ts';
import type { ItemLine } from '../../db/items.ts';
import { angleWords } from '../../lib/cutters/describe.ts';
import { printPitch } from '../../lib/gears/pitch.ts';
import type { Length } from '../../lib/values/length.ts';
import type { StateView } from '../page.ts';
import { sizeWords, wholeForm } from '../sizes.ts';
import { KIND_WORDS } from './forms.ts';

/** A length of a bar as it was typed; '' when it has none. */
export const barSize = (nm: number | null, form: string | null): string =>
  nm === null || form === null ? '' : sizeWords(nm as Length, wholeForm(nm as Length, formOfText(form)));

/** What a thing is called: its own name, else what tells it from others. */
export function itemName(line: ItemLine): string {
  if (line.name !== '') return line.name;
  const wheel = line.stored ?? line.unknown;
  if (wheel) return `Wheel of ${wheel.gear.teeth} teeth`;
  const diameter = barSize(line.diameter_nm, line.diameter_form);
  if (line.kind === 'stock') return diameter === '' ? 'Bar' : `Bar ${diameter}`;
  return KIND_WORDS[line.kind].one;
}

/** "8 DP, 14½°" of a wheel, "6.5 in left" of a bar: what is promised is no longer there to take. */
export function itemKnownBy(line: ItemLine): string {
  if (line.stored) {
    const { teeth, pitch, system } = line.stored.gear;
    const count = line.name === '' ? '' : `${teeth} teeth, `;
    return `${count}${printPitch(pitch)}, ${angleWords(system.angle)}`;
  }
  if (line.unknown) return `${line.name === '' ? '' : `${line.unknown.gear.teeth} teeth, `}${PITCH_UNKNOWN}`;
  if (line.kind !== 'stock') return line.material;
  const left = barSize(line.length_nm === null ? null : Math.max(0, line.length_nm - line.cut_nm), line.length_form);
  return [line.material, left === '' ? '' : `${left} left`].filter((text) => text !== '').join(', ');
}

/** How a thing stands, derived, never stored. */
export function itemState({ state, part_mark, gone_why, cut_marks }: ItemLine): StateView {
  if (state === 'gone') return { kind: 'off', says: `gone: ${gone_why ?? ''}` };
  if (state === 'fitted') return { kind: 'here', says: `fitted, ${part_mark ?? ''}` };
  if (state === 'promised') return { kind: 'old', says: `promised to ${part_mark ?? ''}` };
  return { kind: 'spare', says: cut_marks === null ? 'spare' : `rest spare, promised to ${cut_marks}` };
}
