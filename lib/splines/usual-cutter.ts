import { inches, inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { type ShaftToMill, widestForOneCut, widestForSides } from './mill.formulas.ts';
import type { StraightBore } from './shaft-sizes.ts';

/** Widths in which side-and-face cutters are commonly had: sixteenths of an inch, whole millimetres (common practice, no source). */
const STEP: Readonly<Record<LengthUnit, number>> = { in: 1 / 16, mm: 1 };

/**
 * The widest common side-and-face cutter that goes between the keys of a shaft for this bore; where the least common one is too wide, nine
 * tenths of what goes. A first choice to be typed over. Example: 1.251 × 1.063 × 0.313, six: 0.1875.
 */
export function usualCutter({ splines, outside, inside, width }: StraightBore, unit: LengthUnit): Length {
  const [D, d, w] = [outside, inside, width].map((one) => inUnit(one, unit)) as [number, number, number];
  const shaft: ShaftToMill = { N: splines, D, d: d - inUnit(inches(0.005), unit), w, c: 0 };
  const widest = Math.min(widestForOneCut(shaft), widestForSides(shaft));
  const steps = Math.floor(widest / STEP[unit]);
  return ofUnit(steps < 1 ? Math.max(0, widest) * 0.9 : steps * STEP[unit], unit);
}
