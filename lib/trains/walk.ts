import { apart } from './apart.ts';
import type { Sides } from './sides.ts';

/** Takes the pair of a driver side and a driven side, and says how far from the target the next may lie to be of use. */
type Take = (driver: number, driven: number, ratio: number) => number;

/** The least difference that a plain number still shows, with room: nearer than this two errors are told apart in whole numbers only. */
const MARGIN = 1e-15;

/**
 * One pass over the driven sides, rising; the driver side that suits each moves up with it, so that no driver side is looked for twice.
 * neighboursOnly: only the two nearest driver sides of each are tried. limit: pairs farther than this from the target are left out.
 */
export function walk(
  sides: Sides,
  wheels: number,
  there: Int32Array,
  target: number,
  limit: number,
  neighboursOnly: boolean,
  take: Take,
): void {
  const { product, made, many } = sides;
  let [near, within] = [0, limit * (1 + MARGIN) + target * MARGIN];
  // Nothing is nearer than exact: the first pass, which only finds how near, may end there.
  let reached = false;
  const tried = (driver: number, driven: number): void => {
    if (!apart(made[driver] as number, made[driven] as number, wheels, there)) return;
    const found = take(driver, driven, (product[driver] as number) / (product[driven] as number));
    within = found * (1 + MARGIN) + target * MARGIN;
    reached = found === 0;
  };
  for (let driven = 0; driven < many && !(neighboursOnly && reached); driven++) {
    const below = product[driven] as number;
    const wanted = target * below;
    while (near < many && (product[near] as number) < wanted) near++;
    const [low, high] = neighboursOnly ? [near - 1, near] : [0, many - 1];
    for (let up = near; up <= high && up < many && (product[up] as number) - wanted <= within * below; up++) tried(up, driven);
    for (let down = near - 1; down >= low && down >= 0 && wanted - (product[down] as number) <= within * below; down--) tried(down, driven);
  }
}
