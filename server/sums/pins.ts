import { pinsAnswer } from '../../lib/gears/pins.sums.ts';
import { typedOf } from './asks.ts';
import { backlashField, WHEEL_ABOUT } from './gears.ts';
import { leaningAsks, parallelGear, pinField, pinReadingField, shiftField } from './parallel-asks.ts';
import { sum } from './sum.ts';

const asks = { ...leaningAsks, shift: shiftField, pin: pinField, backlash: backlashField, reading: pinReadingField };
const EXAMPLE = { pitch: '8 DP', helix: '', plane: 'normal', shift: '', pin: '', backlash: '', reading: '' };

const overPinsSum = sum({
  path: 'over-pins',
  title: 'Over pins',
  group: 'Gears',
  tells: 'What a micrometer reads over two pins or balls, which pins serve, where they touch; and back from a reading to the thickness.',
  asks,
  example: { ...EXAMPLE, teeth: '22', system: 'full-14.5' },
  about: WHEEL_ABOUT,
  work: ({ pin, backlash, reading, ...gear }) => pinsAnswer({ gear: parallelGear(gear), ...typedOf({ pin, backlash, reading }) }),
});

const betweenPinsSum = sum({
  path: 'between-pins',
  title: 'Between pins of an internal gear',
  group: 'Gears',
  tells: 'What is read between two pins or balls in a ring’s spaces, which pins serve, where they touch; and back to the thickness.',
  asks,
  example: { ...EXAMPLE, teeth: '40', system: 'full-20' },
  about: WHEEL_ABOUT,
  work: ({ pin, backlash, reading, ...gear }) => pinsAnswer({ gear: parallelGear(gear, true), ...typedOf({ pin, backlash, reading }) }),
});

export const PIN_SUMS = [overPinsSum, betweenPinsSum];
