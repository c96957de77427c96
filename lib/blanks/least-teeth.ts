import type { Gear } from '../gears/gear.ts';
import { moduleOf, unitOfPitch } from '../gears/tooth.ts';
import { inUnit } from '../values/length.ts';
import { sizesOf } from './blank-sizes.ts';
import type { CleanUp } from './clean-up.ts';
import { CLEAN_UP } from './judgements.data.ts';
import { leastTeeth } from './least-teeth.formulas.ts';
import { deepestSystem } from './measured-root.sums.ts';

/** Fewest teeth of a spare of the same pitch, its roots not measured and so taken as deep as they can be; null for a helical wheel. */
export function leastSpareTeeth(wanted: Gear, cleanUp: CleanUp): number | null {
  if (wanted.helix) return null;
  const unit = unitOfPitch(wanted.pitch);
  const { dedendum, extra } = deepestSystem(wanted);
  return leastTeeth(
    inUnit(sizesOf(wanted).outside, unit),
    inUnit(cleanUp ?? CLEAN_UP, unit),
    moduleOf(wanted.pitch),
    dedendum,
    inUnit(extra, unit),
  );
}
