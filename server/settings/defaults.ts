import type { Executor } from '../../db/executor.ts';
import { settings } from '../../db/settings.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import type { Typed } from '../forms/form.ts';
import { AS_DELIVERED, settingFields } from './forms.ts';

/** What the owner typed himself, whatever it reads; what no longer reads is left out. */
export async function ownDefaults(db: Executor): Promise<Typed> {
  const kept = await settings(db);
  const sound = Object.entries(settingFields).flatMap(([name, field]) => {
    const text = kept[name];
    return text !== undefined && field.read(text).ok ? [[name, text] as const] : [];
  });
  return Object.fromEntries(sound);
}

/** The owner's defaults as they were typed; what was never typed, or no longer reads, as delivered. */
export const typedDefaults = async (db: Executor): Promise<Typed> => ({ ...AS_DELIVERED, ...(await ownDefaults(db)) });

/** The unit that forms ask sizes in where nothing else decides: the unit of the work, inches where each wheel's pitch decides. */
export const usualUnit = async (db: Executor): Promise<LengthUnit> => ((await typedDefaults(db))['unit'] === 'mm' ? 'mm' : 'in');
