import type { Answer } from '../figure/figure.ts';
import type { Gear } from './gear.ts';
import { helicalAnswer } from './helical.sums.ts';
import { parallelOf } from './parallel.ts';
import { gearBlank } from './spur.sums.ts';

const MAIN = ['outsideDiameter', 'pitchDiameter', 'rootDiameter', 'wholeDepth'];

/** Every size of a kept helical wheel, its pitch square to the teeth. Errors as in helicalAnswer. */
export const leaningSizes = (gear: Gear): Answer =>
  helicalAnswer({ gear: parallelOf(gear), ...(gear.face === null ? {} : { face: gear.face }) });

/** The few sizes that decide a blank, of straight or of helical teeth. Throws DomainError where sizes make no wheel. */
export function mainSizes(gear: Gear): Answer {
  const { figures, cautions }: Answer = gear.helix ? leaningSizes(gear) : gearBlank(gear);
  return { figures: Object.fromEntries(MAIN.flatMap((key) => (figures[key] ? [[key, figures[key]]] : []))), cautions };
}
