import type { Pitch, ToothSystem } from '../../lib/gears/gear.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { systemByKey } from '../../lib/gears/systems.ts';
import { inUnit, type Length, type LengthUnit } from '../../lib/values/length.ts';

/** A pitch as typed in a case. */
export function pitchOf(text: string): Pitch {
  const pitch = readPitch(text);
  if (!pitch.ok) throw new Error(pitch.problem);
  return pitch.value;
}

export function systemNamed(key: string): ToothSystem {
  const found = systemByKey(key);
  if (!found) throw new Error(`no system ${key}`);
  return found.system;
}

export const inchesOrMm = (length: Length, unit: LengthUnit): number => inUnit(length, unit);
