import { DomainError } from '../figure/domain-error.ts';
import type { Pitch } from '../gears/gear.ts';
import { virtualTeeth } from '../gears/spur.formulas.ts';
import { moduleOf, unitOfPitch } from '../gears/tooth.ts';
import { type Angle, toRadians } from '../values/angle.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import type { FormErrors, GearToCut } from './choice.ts';
import { type FormPair, formError, formErrorSquare } from './form-error.formulas.ts';
import type { ExactCount } from './ranges.ts';

/** The count that a gear's cutter goes by: a spur gear's own, a helical gear's virtual count. Example: 24 teeth at 30°: 36.95. */
export const virtualCount = ({ teeth, helix }: GearToCut): number => (helix ? virtualTeeth(teeth, toRadians(helix.angle)) : teeth);

/** What is known of a cutter's form. */
export type CutterForm = { readonly pitch: Pitch; readonly angle: Angle; readonly exact: ExactCount };

/** A gear and a cutter's form as plain numbers, all in the unit of the gear's pitch. */
export function pairOf(gear: GearToCut, form: CutterForm): FormPair {
  const unit = unitOfPitch(gear.pitch);
  const m2 = inUnit(ofUnit(1, unitOfPitch(form.pitch)), unit) * moduleOf(form.pitch);
  return {
    N: virtualCount(gear),
    m: moduleOf(gear.pitch),
    a: toRadians(gear.system.angle),
    N2: form.exact.count,
    m2,
    a2: toRadians(form.angle),
  };
}

/** Addendum of the gear to cut, in the unit of its pitch. */
export const addendumOf = ({ pitch, system }: GearToCut): number => system.addendum * moduleOf(pitch);

/** What a formula gives, or null where no such form can be drawn; any other problem is not ours to hide. */
export function orNone<T>(work: () => T): T | null {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof DomainError) return null;
    throw problem;
  }
}

/** The four errors of a cutter's form on a gear; null where one of the two has no flank as high as the tips (a few teeth, a far finer pitch). */
export function formErrorsOf(gear: GearToCut, form: CutterForm): FormErrors | null {
  const [pair, A, unit] = [pairOf(gear, form), addendumOf(gear), unitOfPitch(gear.pitch)];
  const at = (h: number): Length => ofUnit(formError(pair, h), unit);
  const square = orNone(() => ofUnit(formErrorSquare(pair, A), unit));
  return orNone(() => ({ exact: form.exact, tip: at(A), half: at(A / 2), pitchLine: at(0), square }));
}

/** The error at the tips as a part of the module, by which the verdict goes. */
export const tipInModules = (gear: GearToCut, { tip }: FormErrors): number => inUnit(tip, unitOfPitch(gear.pitch)) / moduleOf(gear.pitch);
