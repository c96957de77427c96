import { type ItemLine, itemsOfSet, saveItem } from '../../db/items.ts';
import { type PartLine, partsOfSet, savePart } from '../../db/parts.ts';
import { refreshAllStale } from '../../db/replan.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import type { GearForms } from '../forms/gear-form.ts';
import type { Db } from '../visit.ts';

type Pattern = Omit<Gear, 'teeth'>;
const FOLLOWING = ['pitch', 'system', 'face', 'bore', 'body'] as const;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The wheel with everything that still stood as the old pattern had it now as the new one has it; null when nothing changes. */
function followed(gear: Gear, old: Pattern, now: Pattern): Gear | null {
  const taken = FOLLOWING.filter((name) => same(gear[name], old[name]) && !same(old[name], now[name]));
  if (taken.length === 0) return null;
  return { ...gear, ...Object.fromEntries(taken.map((name) => [name, now[name]])) };
}

/**
 * Lets the wheels of a set follow its changed pattern; gives how many did. Wheels that were changed by themselves stay. What is being made
 * is looked at once all have changed: a wheel of this drawer may be the blank of another set's part.
 */
export async function followPattern(db: Db, setId: number, old: Pattern | null, now: Pattern, forms: GearForms): Promise<number> {
  if (!old) return 0;
  let many = 0;
  const wheelOf = ({ stored }: PartLine | ItemLine) => {
    const gear = stored ? followed(stored.gear, old, now) : null;
    return gear ? { gear, forms: { ...stored?.forms, ...forms } } : null;
  };
  for (const part of await partsOfSet(db, setId)) {
    const wheel = wheelOf(part);
    if (!wheel) continue;
    await savePart(db, part.id, part.rev, {}, wheel);
    many += 1;
  }
  for (const item of await itemsOfSet(db, setId)) {
    const wheel = wheelOf(item);
    if (!wheel) continue;
    await saveItem(db, item.id, item.rev, {}, wheel);
    many += 1;
  }
  if (many > 0) await refreshAllStale(db);
  return many;
}
