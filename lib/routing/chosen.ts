import type { Candidate, CutterChoice } from '../cutters/choice.ts';
import { chooseCutter, needOf } from '../cutters/choose.ts';
import type { Gear } from '../gears/gear.ts';
import type { Need } from './operation.ts';
import type { ShopNow } from './shop-now.ts';

/** The cutter that the figures go by: the right one, here or not; null while it is only a description. */
export type ChosenCutter = { readonly choice: CutterChoice; readonly right: Candidate | null; readonly need: Need };

export function chosenCutter(gear: Gear, { cutters, arbors, convention }: ShopNow): ChosenCutter {
  const choice = chooseCutter({ gear, cutters, arbors, convention });
  return { choice, right: choice.right, need: { kind: 'cutter', ...needOf(gear) } };
}
