import type { Ratio } from '../values/ratio.ts';
import { apart } from './apart.ts';
import { checkDrawer } from './check-drawer.ts';
import { numbersOf, type Train } from './nearest.ts';
import { type Sides, sidesOf, teethOf } from './sides.ts';
import { lowest } from './target.ts';

/** Nearer than this part of itself to the limit counts as at it. */
const HAIR = 1e-13;

/**
 * The greatest ratio of trains of exactly so many wheels that is no greater than the limit, and a train that gives it; null where every
 * train gives more. One pass over the driven sides, as in nearestTrains; errors as there.
 * Example: 20 30 40 with two wheels, limit 0.7: 20 ÷ 30.
 */
export function greatestBelow(
  wheels: readonly number[],
  wheelsInTrain: 2 | 4,
  limit: number,
): { readonly ratio: Ratio; readonly train: Train } | null {
  checkDrawer(wheels, wheelsInTrain);
  const numbers = numbersOf(wheels);
  const perSide = (wheelsInTrain / 2) as 1 | 2;
  const sides = sidesOf(numbers, perSide);
  const best = bestPair(sides, perSide, Int32Array.from(numbers.there), limit * (1 + HAIR));
  if (!best) return null;
  const { product, made } = sides;
  return {
    ratio: lowest(product[best.driver] as number, product[best.driven] as number),
    train: {
      drivers: teethOf(made[best.driver] as number, perSide, numbers.teeth),
      driven: teethOf(made[best.driven] as number, perSide, numbers.teeth),
    },
  };
}

/** Each driven side with the greatest driver side that still serves; those that would bring less than the best so far are not looked at. */
function bestPair({ product, made, many }: Sides, wheels: number, there: Int32Array, limit: number) {
  let [best, ratio, high] = [null as { driver: number; driven: number } | null, 0, 0];
  for (let driven = 0; driven < many; driven++) {
    const below = product[driven] as number;
    while (high < many && (product[high] as number) <= limit * below) high++;
    for (let driver = high - 1; driver >= 0 && (product[driver] as number) > ratio * below; driver--) {
      if (!apart(made[driver] as number, made[driven] as number, wheels, there)) continue;
      [best, ratio] = [{ driver, driven }, (product[driver] as number) / below];
      break;
    }
  }
  return best;
}
