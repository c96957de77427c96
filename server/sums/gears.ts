import type { ToothSystem } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { gearBlank } from '../../lib/gears/spur.sums.ts';
import { TOOTH_SYSTEMS } from '../../lib/gears/systems.data.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { choiceField, countField, readField } from '../forms/field.ts';
import { sum } from './sum.ts';

export const teethField = countField({ label: 'Teeth', limits: { least: 4, most: 1000 }, unit: 'teeth' });
export const pitchField = readField({ label: 'Pitch', hint: 'As 8 DP, module 2.5 or 5/16 CP', read: (text) => readPitch(text) });
export const systemField = choiceField({ label: 'Tooth system', choices: TOOTH_SYSTEMS.map(({ key, name }) => [key, name] as const) });

/** The proportions behind a key that systemField let through. */
export function systemOf(key: string): ToothSystem {
  const found = systemByKey(key);
  if (!found) throw new RangeError(`no tooth system is called ${key}`);
  return found.system;
}

export const gearBlankSum = sum({
  path: 'gear-blank',
  title: 'Spur gear',
  group: 'Gears',
  tells: 'All sizes of a spur wheel from its teeth, pitch and tooth system.',
  asks: { teeth: teethField, pitch: pitchField, system: systemField },
  example: { teeth: '22', pitch: '8 DP', system: 'full-14.5' },
  work: ({ teeth, pitch, system }) => gearBlank({ teeth, pitch, system: systemOf(system) }),
});
