import type { Plate } from '../tooling/tooling.ts';
import { over, type Ratio, ratio } from '../values/ratio.ts';
import { plateTurns } from './differential.formulas.ts';
import { movesNear } from './differential.ts';
import { turnsPerDivision } from './plain.formulas.ts';

/** What one more piece would make a count possible: circles of holes, or one gear with its partner. */
export type WouldServe = {
  /** The least circle that serves plainly, and its multiples up to MOST_HOLES. */
  readonly circles: readonly number[];
  /** Gears of which one, bought or made, goes with one that is owned; with the move of the crank and what the plate does. */
  readonly gears: readonly {
    readonly teeth: number;
    readonly with: number;
    readonly driver: 'it' | 'the other';
    readonly turns: Ratio;
    readonly plateTurns: Ratio;
  }[];
};

/** A plate with more holes in one circle than this is not drilled in a home shop (judgement). */
export const MOST_HOLES = 150;
/** Gears that a head's quadrant takes (judgement). */
const [LEAST_TEETH, MOST_TEETH] = [16, 127];
const MOST_OFFERED = 8;

/** Each gear that is missing, with the least plate turning. Source: derived: every move on the plates owned, every gear owned as the partner. */
function gearsMissing(R: number, N: number, plates: readonly Plate[], owned: readonly number[]): WouldServe['gears'] {
  const best = new Map<number, WouldServe['gears'][number]>();
  for (const { turns } of movesNear(R, N, plates)) {
    const g = plateTurns(R, N, turns);
    const wanted: Ratio = [Math.abs(g[0]), g[1]];
    for (const partner of new Set(owned))
      for (const driver of ['it', 'the other'] as const) {
        const [teeth, whole] =
          driver === 'it' ? over(ratio(partner * wanted[0]), ratio(wanted[1])) : over(ratio(partner * wanted[1]), ratio(wanted[0]));
        if (whole !== 1 || teeth < LEAST_TEETH || teeth > MOST_TEETH) continue;
        const there = best.get(teeth);
        if (!there || Math.abs(there.plateTurns[0] / there.plateTurns[1]) > wanted[0] / wanted[1])
          best.set(teeth, { teeth, with: partner, driver, turns, plateTurns: g });
      }
  }
  const least = ({ plateTurns: [num, den] }: WouldServe['gears'][number]): number => Math.abs(num / den);
  return [...best.values()].sort((a, b) => least(a) - least(b) || a.teeth - b.teeth).slice(0, MOST_OFFERED);
}

/** What to make, borrow or buy when nothing owned divides exactly. Example: 71 at 40 to 1: a circle of 71 or 142. */
export function whatWouldServe(R: number, N: number, plates: readonly Plate[], gears: readonly number[]): WouldServe {
  const least = turnsPerDivision(R, N)[1];
  const circles = Array.from({ length: Math.floor(MOST_HOLES / least) }, (_, k) => (k + 1) * least);
  return { circles, gears: gearsMissing(R, N, plates, gears) };
}
