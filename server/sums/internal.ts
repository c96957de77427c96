import { internalAnswer } from '../../lib/gears/internal.sums.ts';
import { countField, optional } from '../forms/field.ts';
import { typedOf } from './asks.ts';
import { WHEEL_ABOUT } from './gears.ts';
import { centreField, leaningAsks, numbersOf, parallelGear, shiftField } from './parallel-asks.ts';
import { sum } from './sum.ts';

const internalSum = sum({
  path: 'internal-gear',
  title: 'Internal gear',
  group: 'Gears',
  tells:
    'All sizes of a ring with teeth on the inside and, with its pinion, centres, contact ratio and the three ways in which they may foul.',
  asks: {
    ...leaningAsks,
    shift: shiftField,
    pinion: optional(
      countField({ label: 'Teeth of its pinion', hint: 'Empty: sizes of the ring alone', limits: { least: 4, most: 1000 }, unit: 'teeth' }),
    ),
    centre: centreField,
  },
  example: { teeth: '40', pitch: '8 DP', system: 'full-20', helix: '', plane: 'normal', shift: '', pinion: '18', centre: '' },
  about: { ...WHEEL_ABOUT, mate: ['pinion'] },
  work: ({ pinion, centre, ...gear }) =>
    internalAnswer({ gear: parallelGear(gear, true), ...numbersOf({ pinion }), ...typedOf({ centre }) }),
});

export const INTERNAL_SUMS = [internalSum];
