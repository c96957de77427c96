import { DomainError } from '../figure/domain-error.ts';
import { toRadians } from '../values/angle.ts';
import { inUnit } from '../values/length.ts';
import { printNumber, printShort } from '../values/print.ts';
import { type Flanks, normalThickness, rootOf, tipOf } from './flanks.formulas.ts';
import { normalAngle } from './helical.formulas.ts';
import { moduleOf, unitOfPitch } from './tooth.ts';
import { checkWheel, type Wheel } from './wheel.ts';

/** In which plane the tooth system's pitch, angle and proportions hold: square to the teeth, or in the plane of the wheel. */
export type Plane = 'normal' | 'transverse';

/**
 * A gear for parallel shafts. Beside the gear that is kept (lib/gears/gear.ts), not in it: what is kept has neither shift nor ring, and each
 * figure for plain wheels would have to refuse them. shift: of 1/P or module, plus = away from the gear's middle; ring: teeth on the inside.
 */
export type ParallelGear = Wheel & { readonly plane: Plane; readonly shift: number; readonly ring: boolean };

/** A wheel as it is kept, unshifted, its system held to be square to the teeth. */
export const parallelOf = (wheel: Wheel, more: Partial<Pick<ParallelGear, 'plane' | 'shift' | 'ring'>> = {}): ParallelGear => ({
  ...wheel,
  plane: 'normal',
  shift: 0,
  ring: false,
  ...more,
});

const MOST_HELIX = 60;
const MOST_SHIFT = 2;

function checkHelix(psi: number): void {
  const deg = (psi * 180) / Math.PI;
  if (deg >= 0 && deg <= MOST_HELIX + 1e-9) return;
  throw new DomainError({
    given: `A helix angle of ${printShort(deg, 2)}°.`,
    limit: `Gears for parallel shafts lean from 0° to ${MOST_HELIX}°; at 90° the teeth would run round the rim and drive nothing.`,
    tryThis: 'Measure the helix from the line of the shaft. What leans more is a worm.',
    about: ['helix'],
  });
}

function checkShift(shift: number): void {
  if (Math.abs(shift) <= MOST_SHIFT) return;
  throw new DomainError({
    given: `A shift of ${printNumber(shift, 3)} of 1/P or module.`,
    limit: `It lies between −${MOST_SHIFT} and ${MOST_SHIFT}.`,
    tryThis: 'Give the shift as a part of 1/P or of the module, not as a length.',
    about: ['shift'],
  });
}

function checkRing(flanks: Flanks): void {
  if (flanks.ring ? tipOf(flanks) > 0 : rootOf(flanks) > 0) return;
  throw new DomainError({
    given: `${flanks.N} teeth with ${flanks.ring ? 'an addendum' : 'a dedendum'} of ${printShort(flanks.ring ? flanks.A : flanks.B)} ${flanks.unit}.`,
    limit: flanks.ring ? 'The tips would meet in the middle of the ring.' : 'The roots would lie beyond the middle of the wheel.',
    tryThis: 'Take more teeth or a shallower system.',
    about: ['teeth'],
  });
}

/** A shift may not be so great that no tooth, or no space, is left at the standard pitch circle. */
function checkThickness(flanks: Flanks): void {
  const part = normalThickness(flanks) / (Math.PI * flanks.mn);
  if (part > 0 && part < 1) return;
  throw new DomainError({
    given: `A shift of ${printNumber(flanks.v / flanks.mn, 3)} of 1/P or module at this pressure angle.`,
    limit: `No ${part > 0 ? 'space' : 'tooth'} would be left at the standard pitch circle.`,
    tryThis: 'Take a smaller shift.',
    about: ['shift'],
  });
}

/** The plain numbers of a gear's teeth, once it is known to make sense. Throws DomainError in shop words when it does not. */
export function checkedFlanks(gear: ParallelGear): Flanks {
  checkWheel(gear);
  const psi = gear.helix ? toRadians(gear.helix.angle) : 0;
  checkHelix(psi);
  checkShift(gear.shift);
  const [m, unit, a] = [moduleOf(gear.pitch), unitOfPitch(gear.pitch), toRadians(gear.system.angle)];
  const normal = gear.plane === 'normal';
  const flanks: Flanks = {
    N: gear.teeth,
    mn: normal ? m : m * Math.cos(psi),
    an: normal ? a : normalAngle(a, psi),
    psi,
    v: gear.shift * m,
    A: gear.system.addendum * m,
    B: gear.system.dedendum * m + inUnit(gear.system.extra, unit),
    ring: gear.ring,
    unit,
  };
  checkRing(flanks);
  checkThickness(flanks);
  return flanks;
}
