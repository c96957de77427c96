import { contactAnswer } from '../../lib/gears/contact.sums.ts';
import { pairAnswer } from '../../lib/gears/pair.sums.ts';
import { choiceField } from '../forms/field.ts';
import { typedOf } from './asks.ts';
import { WHEEL_ABOUT } from './gears.ts';
import {
  backlashOfBothField,
  centreField,
  faceIfKnownField,
  leaningAsks,
  mateField,
  mateIsField,
  mateShiftField,
  numbersOf,
  parallelGear,
  shiftIfKnownField,
} from './parallel-asks.ts';
import { sum } from './sum.ts';

const pairAsks = {
  ...leaningAsks,
  mate: mateField,
  mateIs: mateIsField,
  shift: shiftIfKnownField,
  mateShift: mateShiftField,
  centre: centreField,
};
const EXAMPLE = {
  teeth: '12',
  mate: '24',
  mateIs: 'wheel',
  pitch: 'module 3',
  system: 'module-1.25',
  helix: '',
  plane: 'normal',
  shift: '',
  mateShift: '',
};
const MORE = { legend: 'Helix and shift', asks: ['helix', 'plane', 'shift', 'mateShift'], folded: true } as const;

const pairSum = sum({
  path: 'gear-pair',
  title: 'Pair of gears at a centre distance',
  group: 'Gears',
  tells:
    'Working angle, shifts, turned-down tips and backlash of two gears at the centres that the machine has; or the centres that they ask for.',
  asks: { ...pairAsks, backlash: backlashOfBothField },
  example: { ...EXAMPLE, centre: '56.5 mm', backlash: '' },
  about: WHEEL_ABOUT,
  parts: [MORE],
  work: ({ mate, mateIs, shift, mateShift, centre, backlash, ...gear }) =>
    pairAnswer({
      gear: parallelGear(gear),
      mate,
      inRing: mateIs === 'ring',
      ...numbersOf({ shift, mateShift }),
      ...typedOf({ centre, backlash }),
    }),
});

const contactSum = sum({
  path: 'contact-ratio',
  title: 'Contact ratio and interference',
  group: 'Gears',
  tells: 'How many pairs of teeth carry at once, how far the face overlaps, and whether tips foul: with a wheel, a ring or a rack.',
  asks: {
    ...pairAsks,
    mateIs: choiceField({
      label: 'The mate is',
      choices: [
        ['wheel', 'a wheel'],
        ['ring', 'a ring around it'],
        ['rack', 'a rack'],
      ],
    }),
    face: faceIfKnownField,
  },
  example: { ...EXAMPLE, teeth: '28', mate: '45', pitch: '8 DP', system: 'full-14.5', centre: '', face: '' },
  about: { ...WHEEL_ABOUT, rack: ['mateIs'] },
  parts: [MORE],
  work: ({ mate, mateIs, shift, mateShift, centre, face, ...gear }) =>
    contactAnswer({
      gear: parallelGear(gear),
      mate,
      inRing: mateIs === 'ring',
      rack: mateIs === 'rack',
      ...numbersOf({ shift, mateShift }),
      ...typedOf({ centre, face }),
    }),
});

export const MESH_SUMS = [pairSum, contactSum];
