import { DomainError } from '../figure/domain-error.ts';
import type { Hand, Pitch, ToothSystem } from '../gears/gear.ts';
import { circularPitch } from '../gears/spur.formulas.ts';
import type { Tooth } from '../gears/tooth.ts';
import { checkedTooth } from '../gears/wheel.ts';
import { type Angle, toDegrees } from '../values/angle.ts';
import { inUnit, type Length } from '../values/length.ts';
import { printDegrees, printLength, printShort } from '../values/print.ts';
import { leadAngle } from './worm.formulas.ts';

/** pitch: in the axial section of the worm, which is the transverse section of the wheel. embrace: angle over which the wheel's face hugs the worm. */
export type WormAsked = {
  readonly teeth: number;
  readonly starts: number;
  readonly pitch: Pitch;
  readonly system: ToothSystem;
  readonly wormPitchDiameter: Length;
  readonly hand: Hand;
  readonly embrace: Angle;
  readonly friction: number;
};

/** The same as plain numbers in the unit of the pitch: d the worm's pitch diameter, l its lead angle in radians, p the axial pitch. */
export type Worked = { readonly asked: WormAsked; readonly tooth: Tooth; readonly d: number; readonly l: number; readonly p: number };

function checkedStarts({ starts, teeth }: WormAsked): void {
  if (Number.isInteger(starts) && starts >= 1 && starts <= 12 && starts < teeth) return;
  throw new DomainError({
    given: `A worm of ${printShort(starts)} starts.`,
    limit: `It has from 1 to 12 whole starts, fewer than the wheel's ${teeth} teeth.`,
    tryThis: 'Look at the end of the worm and count where threads begin.',
    about: ['starts'],
  });
}

function checkedWorm({ wormPitchDiameter, embrace }: WormAsked, { B, unit }: Tooth): number {
  const d = inUnit(wormPitchDiameter, unit);
  const deg = toDegrees(embrace);
  if (d / 2 <= B * 1.2)
    throw new DomainError({
      given: `A worm of ${printLength(wormPitchDiameter, { unit, places: 3 })} ${unit} pitch diameter.`,
      limit: `With a dedendum of ${printShort(B, 4)} ${unit} hardly a core would be left.`,
      tryThis: 'Pitch diameter is the outside less two addenda; look at the pitch too.',
      about: ['wormPitchDiameter'],
    });
  if (!(deg >= 10 && deg <= 120))
    throw new DomainError({
      given: `A face that hugs the worm over ${printDegrees(embrace, 1)}°.`,
      limit: 'It lies from 10° to 120°.',
      tryThis: '60° to 80° is usual.',
      about: ['embrace'],
    });
  return d;
}

/** The plain numbers, once the worm is known to make sense. Throws DomainError in shop words when it does not. */
export function checkedWormAndWheel(asked: WormAsked): Worked {
  const tooth = checkedTooth({ teeth: asked.teeth, pitch: asked.pitch, system: asked.system });
  checkedStarts(asked);
  const d = checkedWorm(asked, tooth);
  const p = circularPitch(tooth.m);
  const l = leadAngle(asked.starts * p, d);
  if (l > Math.PI / 4 + 1e-9)
    throw new DomainError({
      given: `${asked.starts} starts on a worm of ${printLength(asked.wormPitchDiameter, { unit: tooth.unit, places: 3 })} ${tooth.unit}: a lead angle of ${printShort((l * 180) / Math.PI, 1)}°.`,
      limit: 'Above 45° it is a steep helical pair rather than a worm.',
      tryThis: 'Use the crossed helical sum, or look at starts and diameter again.',
      about: ['starts', 'wormPitchDiameter'],
    });
  return { asked, tooth, d, l, p };
}
