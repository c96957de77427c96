import { DomainError } from '../figure/domain-error.ts';
import type { Pitch } from '../gears/gear.ts';
import { moduleOf, unitOfPitch } from '../gears/tooth.ts';
import { type Angle, toRadians } from '../values/angle.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import type { FormErrors, GearToCut } from './choice.ts';
import { type FormPair, formError, formErrorSquare } from './form-error.formulas.ts';
import type { ExactCount } from './ranges.ts';

/**
 * Virtual count of a helical gear: N / cos³ psi, psi the helix angle; a spur gear's own count.
 * Source: U.S. Navy, Machinery Repairman (14345), choosing a cutter for helical teeth. Example: 24 teeth at 30°: 36.95.
 */
export const virtualCount = ({ teeth, helix }: GearToCut): number => (helix ? teeth / Math.cos(toRadians(helix.angle)) ** 3 : teeth);

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

function squareOrNone(pair: FormPair, A: number): number | null {
  try {
    return formErrorSquare(pair, A);
  } catch (problem) {
    if (problem instanceof DomainError) return null;
    throw problem;
  }
}

/** The four errors of a cutter's form on a gear. */
export function formErrorsOf(gear: GearToCut, form: CutterForm): FormErrors {
  const [pair, A, unit] = [pairOf(gear, form), addendumOf(gear), unitOfPitch(gear.pitch)];
  const at = (h: number): Length => ofUnit(formError(pair, h), unit);
  const square = squareOrNone(pair, A);
  return { exact: form.exact, tip: at(A), half: at(A / 2), pitchLine: at(0), square: square === null ? null : ofUnit(square, unit) };
}

/** The error at the tips as a part of the module, by which the verdict goes. */
export const tipInModules = (gear: GearToCut, form: CutterForm): number =>
  formError(pairOf(gear, form), addendumOf(gear)) / moduleOf(gear.pitch);
