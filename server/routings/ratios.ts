import { itemsOfSets } from '../../db/items.ts';
import { type PartLine, partsOfSets } from '../../db/parts.ts';
import { remembered } from '../../db/remembered.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { costOfMissing, type MissingCost } from '../../lib/trains/missing-cost.ts';
import { wheelsKey } from '../../lib/trains/ratio-count.ts';
import type { Db } from '../visit.ts';

/** Counted once for the same wheels. */
const counted = remembered<MissingCost>();

type Ratios = { readonly today: number; readonly withIt: number };

const teethOf = (rows: readonly Pick<PartLine, 'stored'>[]): number[] => rows.flatMap(({ stored }) => (stored ? [stored.gear.teeth] : []));

type Wheels = { readonly belongs: readonly number[]; readonly drawer: readonly number[] };

/** Null where they cannot be counted: too many wheels, or none. */
function ratiosOf(wheels: Wheels, made: number): Ratios | null {
  try {
    const key = `${wheelsKey(wheels.belongs)}|${wheelsKey(wheels.drawer)}`;
    const { oneOfEach, afterEach } = counted(key, () => costOfMissing(wheels));
    const then = afterEach.find(({ teeth }) => teeth === made);
    return then ? { today: oneOfEach.today.distinct, withIt: then.oneOfEach.distinct } : null;
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** The ratios of each part's set today and with its wheel made, by one wheel of each number; null for a part of no set. By the part's id. */
export async function ratiosWithAll(db: Db, parts: readonly PartLine[]): Promise<ReadonlyMap<number, Ratios | null>> {
  const sets = [...new Set(parts.flatMap(({ set_id }) => set_id ?? []))];
  const [places, things] = [await partsOfSets(db, sets), await itemsOfSets(db, sets)];
  const wheels = (setId: number): Wheels => ({
    belongs: teethOf(places(setId)),
    drawer: teethOf(things(setId).filter(({ kind }) => kind === 'wheel')),
  });
  return new Map(
    parts.map(({ id, set_id, stored }) => [id, set_id === null || !stored ? null : ratiosOf(wheels(set_id), stored.gear.teeth)]),
  );
}

/** The same of one part. */
export const ratiosWith = async (db: Db, part: PartLine): Promise<Ratios | null> => (await ratiosWithAll(db, [part])).get(part.id) ?? null;
