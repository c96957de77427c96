import type { ParallelGear, Plane } from '../../lib/gears/parallel.ts';
import { type Angle, degrees } from '../../lib/values/angle.ts';
import { angleField, choiceField, countField, numberField, optional } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { sizeIfKnown } from './asks.ts';
import { wheelAsks, wheelOf } from './gears.ts';

/** What makes the teeth of a wheel lean, and in which plane its tooth system holds. */
export const helixField = angleField({
  label: 'Helix angle',
  hint: 'At the pitch circle, from the line of the shaft',
  limits: { least: 0, most: 90 },
});
const helixIfAnyField = optional(angleField({ label: 'Helix angle', hint: 'Empty: straight teeth', limits: { least: 0, most: 90 } }));
export const handField = choiceField({
  label: 'Hand',
  choices: [
    ['right', 'right-hand'],
    ['left', 'left-hand'],
  ],
});
export const planeField = choiceField<Plane>({
  label: 'Pitch and angle hold',
  choices: [
    ['normal', 'square to the teeth'],
    ['transverse', 'in the plane of the wheel'],
  ],
});
const shiftOf = (label: string, hint: string) => numberField({ label, hint, limits: { least: -2, most: 2 }, unit: 'of 1/P or m' });
export const shiftField = optional(shiftOf('Profile shift', 'Plus: away from the middle; empty: none'));
export const shiftIfKnownField = optional(shiftOf('Shift of the wheel', 'Empty: none, or to be found'));
export const mateShiftField = optional(shiftOf('Shift of the mate', 'Empty: none, or to be found'));
export const mateField = countField({ label: 'Teeth of the mate', limits: { least: 4, most: 1000 }, unit: 'teeth' });
export const mateIsField = choiceField({
  label: 'The mate is',
  choices: [
    ['wheel', 'a wheel'],
    ['ring', 'a ring around it'],
  ],
});
export const centreField = sizeIfKnown({ label: 'Centre distance', hint: 'Empty: as the shifts have it' });
export const faceIfKnownField = sizeIfKnown({ label: 'Face', hint: 'Empty if not known' });
export const pinField = sizeIfKnown({ label: 'Pins', hint: 'Diameter; empty: the best of the usual ones' });
export const pinReadingField = sizeIfKnown({ label: 'As read', hint: 'Empty if not measured yet' });
export const backlashOfBothField = sizeIfKnown({
  label: 'Both wheels thinner by',
  hint: 'Along the pitch circles; empty: nothing',
  least: 0,
  most: 5,
});
export const thicknessField = sizeIfKnown({
  label: 'Thickness wanted',
  hint: 'Square to the teeth, along the pitch circle; empty: as the shift has it',
});

/** Boxes that most of these sums share. */
export const leaningAsks = { ...wheelAsks, helix: helixIfAnyField, plane: planeField };

type Leaning = Omit<ValuesOf<typeof leaningAsks>, 'helix'> & {
  readonly helix: Angle | null;
  readonly hand?: 'right' | 'left';
  readonly shift?: number | null;
};

/** The gear that was typed: straight when no helix was, unshifted when no shift was. */
export const parallelGear = ({ helix, plane, hand = 'right', shift, ...wheel }: Leaning, ring = false): ParallelGear => ({
  ...wheelOf(wheel),
  helix: helix === null || helix === degrees(0) ? null : { angle: helix, hand },
  plane,
  shift: shift ?? 0,
  ring,
});

/** The numbers that were typed, under their names; what stayed empty is left out. */
export function numbersOf<K extends string>(boxes: Readonly<Record<K, number | null>>): Partial<Record<K, number>> {
  const full = Object.entries<number | null>(boxes).flatMap(([name, box]) => (box === null ? [] : [[name, box] as const]));
  return Object.fromEntries(full) as Partial<Record<K, number>>;
}
