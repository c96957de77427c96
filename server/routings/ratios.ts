import { itemsOfSet } from '../../db/items.ts';
import { type PartLine, partsOfSet } from '../../db/parts.ts';
import { remembered } from '../../db/remembered.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { costOfMissing, type MissingCost } from '../../lib/trains/missing-cost.ts';
import { wheelsKey } from '../../lib/trains/ratio-count.ts';
import type { Db } from '../visit.ts';

/** Counted once for the same wheels. */
const counted = remembered<MissingCost>();

type Ratios = { readonly today: number; readonly withIt: number };

const teethOf = (rows: readonly Pick<PartLine, 'stored'>[]): number[] => rows.flatMap(({ stored }) => (stored ? [stored.gear.teeth] : []));

/** The ratios of the part's set today and with this wheel made, by one wheel of each number; null for a part of no set. */
export async function ratiosWith(db: Db, { set_id, stored }: PartLine): Promise<Ratios | null> {
  if (set_id === null || !stored) return null;
  const [places, things] = [await partsOfSet(db, set_id), await itemsOfSet(db, set_id)];
  const drawer = teethOf(things.filter(({ kind }) => kind === 'wheel'));
  try {
    const asked = { belongs: teethOf(places), drawer };
    const { oneOfEach, afterEach } = counted(`${wheelsKey(asked.belongs)}|${wheelsKey(drawer)}`, () => costOfMissing(asked));
    const then = afterEach.find(({ teeth }) => teeth === stored.gear.teeth);
    return then ? { today: oneOfEach.today.distinct, withIt: then.oneOfEach.distinct } : null;
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}
