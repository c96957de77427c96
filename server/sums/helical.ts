import { helicalAnswer } from '../../lib/gears/helical.sums.ts';
import { shiftAnswer, undercutAnswer } from '../../lib/gears/shift.sums.ts';
import { typedOf } from './asks.ts';
import { backlashField, WHEEL_ABOUT, wheelAsks } from './gears.ts';
import {
  faceIfKnownField,
  handField,
  helixField,
  leaningAsks,
  parallelGear,
  planeField,
  shiftField,
  thicknessField,
} from './parallel-asks.ts';
import { sum } from './sum.ts';

const helicalSum = sum({
  path: 'helical-gear',
  title: 'Helical gear',
  group: 'Gears',
  tells: 'All sizes of a helical wheel, its lead, the count to choose the cutter by, and what vernier and span read.',
  asks: {
    ...wheelAsks,
    helix: helixField,
    hand: handField,
    plane: planeField,
    shift: shiftField,
    face: faceIfKnownField,
    backlash: backlashField,
  },
  example: {
    teeth: '18',
    pitch: '6 DP',
    system: 'full-20',
    helix: '25',
    hand: 'right',
    plane: 'normal',
    shift: '',
    face: '1.5',
    backlash: '',
  },
  about: WHEEL_ABOUT,
  work: ({ face, backlash, ...gear }) => helicalAnswer({ gear: parallelGear(gear), ...typedOf({ face, backlash }) }),
});

const shiftSum = sum({
  path: 'profile-shift',
  title: 'Profile shift',
  group: 'Gears',
  tells: 'What a shift does to outside, root, thickness and span; or the shift that a measured thickness asks for.',
  asks: { ...leaningAsks, shift: shiftField, thickness: thicknessField, backlash: backlashField },
  example: { teeth: '24', pitch: 'module 3', system: 'module-1.25', helix: '', plane: 'normal', shift: '0.4', thickness: '', backlash: '' },
  about: WHEEL_ABOUT,
  work: ({ thickness, backlash, ...gear }) => shiftAnswer({ gear: parallelGear(gear), ...typedOf({ thickness, backlash }) }),
});

const undercutSum = sum({
  path: 'undercut',
  title: 'Undercut and pointed tips',
  group: 'Gears',
  tells: 'The least teeth and the least shift that a hob or rack leaves whole, where the involute begins, and how thick the tips are.',
  asks: { ...leaningAsks, shift: shiftField },
  example: { teeth: '12', pitch: '8 DP', system: 'full-14.5', helix: '', plane: 'normal', shift: '' },
  about: WHEEL_ABOUT,
  work: (gear) => undercutAnswer(parallelGear(gear)),
});

export const HELICAL_SUMS = [helicalSum, shiftSum, undercutSum];
