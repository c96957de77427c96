import { accuracyAnswer } from '../../lib/accuracy/accuracy.sums.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import { toothStrength } from '../../lib/strength/strength.sums.ts';
import { numberField, optional, wordsField } from '../forms/field.ts';
import { size, sizeIfKnown } from './asks.ts';
import { systemOf, WHEEL_ABOUT, wheelAsks } from './gears.ts';
import { sum } from './sum.ts';

const faceField = size({ label: 'Face', hint: 'Of the narrower wheel', least: 0.02, most: 40 });

const strengthSum = sum({
  path: 'tooth-strength',
  title: 'What a tooth bears',
  group: 'Gears',
  tells: 'Load, torque and power that a tooth bears in bending by Lewis’s rule, standing and running.',
  asks: {
    ...wheelAsks,
    face: faceField,
    material: wordsField({ label: 'Made of', words: MATERIALS }),
    stress: optional(
      numberField({ label: 'Static stress', hint: 'Empty: by the metal', limits: { least: 100, most: 300_000 }, unit: 'lb/in²' }),
    ),
    speedRpm: numberField({ label: 'Speed', limits: { least: 0, most: 100_000 }, unit: 'rev/min' }),
  },
  example: { teeth: '22', pitch: '8 DP', system: 'full-14.5', face: '0.875', material: 'steel', stress: '', speedRpm: '100' },
  about: WHEEL_ABOUT,
  work: ({ system, face, ...given }) => toothStrength({ ...given, system: systemOf(system), face: face.length }),
});

const errorField = (label: string, hint: string) => sizeIfKnown({ label, hint, least: 0, most: 1 });

const accuracySum = sum({
  path: 'tooth-accuracy',
  title: 'How true is the wheel?',
  group: 'Gears',
  tells: 'Holds what was read on a finished wheel against the tolerance classes of ISO 1328-1, edition of 2013.',
  asks: {
    ...wheelAsks,
    face: faceField,
    runOut: errorField('Run-out of the teeth', 'Pin in the spaces, full reading against the bore; empty if not read'),
    singlePitch: errorField('Largest error of one pitch', 'Empty if not read'),
    cumulativePitch: errorField('Error of pitches added up', 'Greatest less least over a full round; empty if not read'),
    lead: errorField('Lead over the face', 'Empty if not read'),
  },
  example: {
    teeth: '22',
    pitch: '8 DP',
    system: 'full-14.5',
    face: '0.875',
    runOut: '0.0020',
    singlePitch: '',
    cumulativePitch: '',
    lead: '0.0010',
  },
  about: WHEEL_ABOUT,
  work: ({ system, face, runOut, singlePitch, cumulativePitch, lead, ...given }) =>
    accuracyAnswer({
      ...given,
      system: systemOf(system),
      face: face.length,
      runOut: runOut?.length ?? null,
      singlePitch: singlePitch?.length ?? null,
      cumulativePitch: cumulativePitch?.length ?? null,
      lead: lead?.length ?? null,
    }),
});

export const STRENGTH_SUMS = [strengthSum, accuracySum];
