import type { Executor } from '../../db/executor.ts';
import { settings } from '../../db/settings.ts';
import type { Convention } from '../../lib/cutters/ranges.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { readForm, type Typed } from '../forms/form.ts';
import { AS_DELIVERED, settingFields, unitOfWork } from './forms.ts';

/**
 * The owner's defaults as lib takes them. unit null: by the pitch of each wheel. centsAnHour null: hours are not counted as money.
 * latheId, millId: the usual machine of the shop; null when none was named.
 */
export type Defaults = {
  readonly cleanUp: Length;
  readonly paper: Length;
  readonly backlash: Length;
  readonly convention: Convention;
  readonly unit: LengthUnit | null;
  readonly centsAnHour: number | null;
  readonly latheId: number | null;
  readonly millId: number | null;
};

/** Keys of the settings that name the usual machine. */
export const USUAL_KEYS = { lathe: 'usual lathe', mill: 'usual mill' } as const;

/** The defaults as they were typed; what was never typed, or no longer reads, as delivered. */
export async function typedDefaults(db: Executor): Promise<Typed> {
  const kept = await settings(db);
  const sound = Object.entries(settingFields).flatMap(([name, field]) => {
    const text = kept[name];
    return text !== undefined && field.read(text).ok ? [[name, text] as const] : [];
  });
  return { ...AS_DELIVERED, ...Object.fromEntries(sound) };
}

const idIn = (text: string | undefined): number | null => (text && /^\d{1,15}$/.test(text) ? Number(text) : null);

/** The owner's defaults. */
export async function defaults(db: Executor): Promise<Defaults> {
  const read = readForm(await typedDefaults(db), settingFields);
  if (!read.ok) throw new TypeError('a default as delivered cannot be read');
  const { cleanUp, paper, backlash, convention, unit, hourMoney } = read.value;
  const kept = await settings(db);
  return {
    cleanUp: cleanUp.length,
    paper: paper.length,
    backlash: backlash.length,
    convention,
    unit: unitOfWork(unit),
    centsAnHour: hourMoney === null ? null : Math.round(hourMoney * 100),
    latheId: idIn(kept[USUAL_KEYS.lathe]),
    millId: idIn(kept[USUAL_KEYS.mill]),
  };
}
