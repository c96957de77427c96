import { DomainError } from '../figure/domain-error.ts';
import { formCutSpace } from '../gears/profile-form.formulas.ts';
import { halfSpacePoints } from '../gears/profile-outline.ts';
import { pitchDiameter, type Tooth, toothOf } from '../gears/tooth.ts';
import { inUnit } from '../values/length.ts';
import type { GearToCut } from './choice.ts';
import { formAlong } from './form-along.ts';
import { type CutterForm, pairOf, virtualCount } from './form-errors.ts';

/** x sideways from the middle line of the space, y above the pitch line, both as parts of the module. */
export type PicturePoint = readonly [x: number, y: number];

/** The true space and the cutter's form, right halves from the bottom up, and the difference at heights; all as parts of the module. */
export type FormPicture = {
  readonly own: readonly PicturePoint[];
  readonly form: readonly PicturePoint[];
  readonly errors: readonly PicturePoint[];
};

/** The right half of a space as a form cutter has it. */
function halfPicture(tooth: Tooth): readonly PicturePoint[] {
  const space = formCutSpace(tooth);
  const points = halfSpacePoints({ ...space, top: space.top.slice(0, 1) });
  return points.map(([R, t]) => [(R * Math.sin(t)) / tooth.m, (R * Math.cos(t) - pitchDiameter(tooth) / 2) / tooth.m]);
}

const ALONG = Array.from({ length: 25 }, (_, at) => 1 - at / 12);

/** What a picture of a cutter's form on a wheel shows; null where one of the two cannot be drawn. */
export function formPicture(gear: GearToCut, form: CutterForm): FormPicture | null {
  const tooth = { ...toothOf(gear), N: virtualCount(gear) };
  const { N2, m2, a2 } = pairOf(gear, form);
  try {
    const errors = formAlong(gear, form, ALONG).flatMap(({ height, error }): PicturePoint[] =>
      error === null ? [] : [[inUnit(error, tooth.unit) / tooth.m, inUnit(height, tooth.unit) / tooth.m]],
    );
    const own = halfPicture(tooth);
    const cutter = halfPicture({ ...tooth, N: N2, a: a2, m: m2 });
    const scale = m2 / tooth.m;
    return { own, form: cutter.map(([x, y]): PicturePoint => [x * scale, y * scale]), errors };
  } catch (problem) {
    if (problem instanceof DomainError || problem instanceof RangeError) return null;
    throw problem;
  }
}
