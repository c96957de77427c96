import { type Ratio, ratio } from '../values/ratio.ts';

/**
 * Gears from the spindle to the plate. Simple: one driver on the spindle, one driven on the plate's shaft, idlers between.
 * Compound: drivers [spindle, the one on the stud that drives on], driven [the one on the stud that the spindle drives, plate's shaft].
 */
export type GearTrain = { readonly drivers: readonly number[]; readonly driven: readonly number[] };

const product = (gears: readonly number[]): number => gears.reduce((all, teeth) => all * teeth, 1);

/** Product of drivers ÷ product of driven. */
export const ratioOfTrain = ({ drivers, driven }: GearTrain): Ratio => ratio(product(drivers), product(driven));

/** How many gears there are of each count, smallest first. */
function tally(gears: readonly number[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const teeth of [...gears].sort((a, b) => a - b)) counts.set(teeth, (counts.get(teeth) ?? 0) + 1);
  return counts;
}

/** Trains out of the gears owned, each physical gear once. */
export type GearsOwned = {
  readonly simple: (wanted: Ratio) => GearTrain[];
  readonly compound: (wanted: Ratio) => GearTrain[];
};

/**
 * All trains of two, and of four gears, that give a ratio exactly.
 * Of four gears: drivers and driven each smallest first (which of them stands where is the same ratio), and no gear on both sides, since
 * it would cancel and leave a train of two. Source: derived: every choice gone through. wanted: above 0.
 */
export function gearsOwned(gears: readonly number[]): GearsOwned {
  const counts = tally(gears);
  const list = [...counts.keys()];
  const has = (teeth: number, among: number): boolean => (counts.get(teeth) ?? 0) >= among;
  const simple = ([p, q]: Ratio): GearTrain[] =>
    list.flatMap((driver) => {
      const driven = (driver * q) / p;
      return Number.isInteger(driven) && has(driven, driven === driver ? 2 : 1) ? [{ drivers: [driver], driven: [driven] }] : [];
    });
  const drivers = list.flatMap((a, at) => list.slice(at).flatMap((c) => (a === c && !has(a, 2) ? [] : [[a, c] as const])));
  const compound = ([p, q]: Ratio): GearTrain[] => {
    const found: GearTrain[] = [];
    for (const [a, c] of drivers) {
      const both = (a * c * q) / p;
      if (!Number.isInteger(both)) continue;
      for (const b of list) {
        const d = both / b;
        if (d < b) break;
        if (b === a || b === c || d === a || d === c || !has(d, d === b ? 2 : 1)) continue;
        found.push({ drivers: [a, c], driven: [b, d] });
      }
    }
    return found;
  };
  return { simple, compound };
}
