import { DomainError } from '../figure/domain-error.ts';
import { toDegrees } from '../values/angle.ts';
import { printDegrees, printShort } from '../values/print.ts';
import type { Limits } from '../values/read.ts';
import type { Gear } from './gear.ts';
import { rootDiameter, type Tooth, toothOf } from './tooth.ts';

/** What decides a spur wheel's teeth. */
export type Wheel = Pick<Gear, 'teeth' | 'pitch' | 'system'> & Partial<Pick<Gear, 'helix'>>;

const TEETH_LIMITS: Limits = { least: 4, most: 2000 };
const ANGLE_LIMITS: Limits = { least: 5, most: 45 };

const refuse = (given: string, limit: string, tryThis: string, about: string): DomainError =>
  new DomainError({ given, limit, tryThis, about: [about] });

function checkCount(teeth: number): void {
  const { least, most } = TEETH_LIMITS;
  if (Number.isInteger(teeth) && teeth >= least && teeth <= most) return;
  throw refuse(
    Number.isFinite(teeth) ? `A wheel of ${printShort(teeth)} teeth.` : 'A wheel without a number of teeth.',
    `A wheel has from ${least} to ${most} whole teeth.`,
    'Count the teeth again.',
    'teeth',
  );
}

function checkSystem({ system }: Wheel): void {
  const deg = toDegrees(system.angle);
  if (!(deg >= ANGLE_LIMITS.least && deg <= ANGLE_LIMITS.most))
    throw refuse(
      `A pressure angle of ${printDegrees(system.angle, 2)}°.`,
      `It lies between ${ANGLE_LIMITS.least}° and ${ANGLE_LIMITS.most}°.`,
      'Most old wheels have 14.5° or 20°.',
      'angle',
    );
  if (!(system.addendum > 0 && system.addendum <= 3 && system.dedendum > 0 && system.dedendum <= 3))
    throw refuse(
      `Addendum ${printShort(system.addendum)} and dedendum ${printShort(system.dedendum)} of 1/P or of the module.`,
      'Each lies above 0 and is at most 3.',
      'Most wheels have 1 and 1.157, or 1 and 1.25.',
      'system',
    );
}

/** Throws DomainError in shop words when count, angle or proportions make no wheel, whatever its helix. */
export function checkWheel(wheel: Wheel): void {
  checkCount(wheel.teeth);
  checkSystem(wheel);
}

/** The tooth's plain numbers, once the wheel is known to make sense. Throws DomainError in shop words when it does not. */
export function checkedTooth(wheel: Wheel): Tooth {
  checkWheel(wheel);
  if (wheel.helix)
    throw refuse(
      `A helical wheel of ${printDegrees(wheel.helix.angle, 2)}°.`,
      'These figures are for straight teeth.',
      'Leave the helix out to see the straight wheel of the same count and pitch.',
      'helix',
    );
  const tooth = toothOf(wheel);
  if (!(rootDiameter(tooth) > 0))
    throw refuse(
      `${wheel.teeth} teeth with a dedendum of ${printShort(tooth.B)} ${tooth.unit}.`,
      'The roots would lie beyond the middle of the wheel.',
      'Take more teeth or a shallower system.',
      'teeth',
    );
  return tooth;
}
