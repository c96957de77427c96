import { type CircleThatServes, circlesThatServe } from '../dividing/plain.formulas.ts';
import type { Plate } from '../tooling/tooling.ts';
import { highestLeft, mostTurned, outerHalfAngle, type ShaftToMill } from './mill.formulas.ts';

/** off: spaces of the circle from the middle of the gap, both ways, in the order of cutting. turned: angle of the outermost, in radians. */
export type BottomCuts = { readonly on: CircleThatServes; readonly off: readonly number[]; readonly turned: number };

const MOST_CUTS = 12;

/**
 * The bottom cuts of one space on one circle: as few as cover the gap, the outermost as close to the keys' feet as whole spaces allow,
 * the others spread between so that neighbours overlap up to the outside. null when a dozen cuts do not cover it.
 */
function cutsOn(shaft: ShaftToMill, R: number, on: CircleThatServes): BottomCuts | null {
  const perSpace = (2 * Math.PI) / (R * on.circle);
  const [most, half] = [mostTurned(shaft), outerHalfAngle(shaft)];
  const outer = Math.floor(most / perSpace + 1e-9);
  if (outer < 1) return { on, off: [0], turned: 0 };
  for (let cuts = 2; cuts <= MOST_CUTS; cuts++) {
    const off = Array.from({ length: cuts }, (_, i) => Math.round(-outer + (2 * outer * i) / (cuts - 1)));
    const widest = Math.max(...off.slice(1).map((at, i) => at - (off[i] ?? at)));
    if (widest * perSpace <= 2 * half) return { on, off, turned: outer * perSpace };
  }
  return null;
}

/**
 * The bottom cuts on the circle asked for, or on the one that leaves the least metal standing (of equals the one with fewest cuts, then
 * with fewest holes). The circle must turn half a space: it serves 2N divisions. null: none does, or the cutter is too narrow.
 */
export function bottomCuts(shaft: ShaftToMill, R: number, plates: readonly Plate[], circle?: number): BottomCuts | null {
  const serving = circlesThatServe(R, 2 * shaft.N, plates).filter((one) => circle === undefined || one.circle === circle);
  const plans = serving.flatMap((on) => cutsOn(shaft, R, on) ?? []);
  const high = (plan: BottomCuts): number => highestLeft(shaft, plan.turned);
  const [best] = plans.sort((a, b) => high(a) - high(b) || a.off.length - b.off.length || a.on.circle - b.on.circle);
  return best ?? null;
}
