import { toRadians } from '../values/angle.ts';
import { inUnit, type LengthUnit } from '../values/length.ts';
import { toNumber } from '../values/ratio.ts';
import type { Gear, Pitch } from './gear.ts';

/**
 * A spur tooth as plain numbers for use inside formulas, all lengths in `unit`:
 * N teeth, m = 1/P the module, a pressure angle in radians, A addendum, B dedendum.
 */
export type Tooth = {
  readonly N: number;
  readonly m: number;
  readonly a: number;
  readonly A: number;
  readonly B: number;
  readonly unit: LengthUnit;
};

/** The unit in which a pitch is naturally worked: inches for DP and CP, millimetres for module. */
export const unitOfPitch = (pitch: Pitch): LengthUnit => (pitch.kind === 'module' ? 'mm' : 'in');

/** Module (pitch diameter per tooth) in the pitch's own unit: 1/P for DP, p/π for CP, m itself for module. */
export function moduleOf(pitch: Pitch): number {
  const size = toNumber(pitch.size);
  if (pitch.kind === 'DP') return 1 / size;
  return pitch.kind === 'CP' ? size / Math.PI : size;
}

/** The plain numbers of a gear's tooth, in the unit of its pitch. */
export function toothOf(gear: Pick<Gear, 'teeth' | 'pitch' | 'system'>): Tooth {
  const [m, unit] = [moduleOf(gear.pitch), unitOfPitch(gear.pitch)];
  const B = gear.system.dedendum * m + inUnit(gear.system.extra, unit);
  return { N: gear.teeth, m, a: toRadians(gear.system.angle), A: gear.system.addendum * m, B, unit };
}

// Source of the five below: US Navy, Machinery Repairman (14345), appendices III and IV, formulas for spur gearing;
// base diameter: Machine Elements in Mechanical Design, 4th ed., worked pair of pp. 319-320.
export const pitchDiameter = ({ N, m }: Tooth): number => N * m;
export const outsideDiameter = ({ N, m, A }: Tooth): number => N * m + 2 * A;
export const rootDiameter = ({ N, m, B }: Tooth): number => N * m - 2 * B;
export const wholeDepth = ({ A, B }: Tooth): number => A + B;
export const baseDiameter = ({ N, m, a }: Tooth): number => N * m * Math.cos(a);
