import type { GearToCut } from '../../lib/cutters/choice.ts';
import { cutterAnswer } from '../../lib/cutters/cutters.sums.ts';
import { CONVENTIONS } from '../../lib/cutters/ranges.ts';
import type { Arbor } from '../../lib/tooling/tooling.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { angleField, choiceField, countField, optional } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { sizesField } from './asks.ts';
import { formAnswer, formDrawing } from './form-answer.ts';
import { WHEEL_ABOUT, wheelAsks, wheelOf } from './gears.ts';
import { cuttersField, SOME_CUTTERS } from './read-cutters.ts';
import { sum } from './sum.ts';

const gearOf = (given: ValuesOf<typeof wheelAsks>): GearToCut => ({ ...wheelOf(given), helix: null });

const arborOf = ({ length }: TypedLength, at: number): Arbor => ({
  kind: 'arbor',
  id: at + 1,
  name: `arbor ${at + 1}`,
  here: true,
  diameter: length,
});

const choiceSum = sum({
  path: 'cutter-choice',
  title: 'Which cutter',
  group: 'Cutters',
  tells: 'The cutter for a wheel from those in the drawer; if it is lacking, what to borrow and what would run in a pinch, in thousandths.',
  asks: {
    ...wheelAsks,
    cutters: cuttersField,
    arbors: optional(sizesField({ label: 'Arbors', hint: 'Diameters, commas between: 1, 7/8. Empty: not looked at' })),
    convention: choiceField({
      label: 'A number is right for',
      choices: [
        [CONVENTIONS[0], 'the low end of its range'],
        [CONVENTIONS[1], 'the count that an old treatise names'],
      ],
    }),
  },
  example: { teeth: '35', pitch: '8 DP', system: 'full-14.5', cutters: SOME_CUTTERS, arbors: '', convention: 'low end' },
  about: WHEEL_ABOUT,
  work: ({ cutters, arbors, convention, ...wheel }) =>
    cutterAnswer({
      gear: gearOf(wheel),
      // No arbors typed: nothing is said of holes.
      cutters: arbors === null ? cutters.map((cutter) => ({ ...cutter, hole: null })) : cutters,
      arbors: (arbors ?? []).map(arborOf),
      convention,
    }),
});

const formSum = sum({
  path: 'form-error',
  title: 'Error of a cutter’s form',
  group: 'Cutters',
  tells: 'How much a cutter made for another count takes off too much, or leaves, at the tips, half way and at the pitch line.',
  asks: {
    ...wheelAsks,
    count: countField({
      label: 'Form is right for',
      hint: 'The count that the cutter was made for',
      limits: { least: 8, most: 1000 },
      unit: 'teeth',
    }),
    cutterAngle: optional(
      angleField({ label: 'Pressure angle of the cutter', hint: 'Empty: that of the wheel', limits: { least: 10, most: 30 } }),
    ),
  },
  example: { teeth: '35', pitch: '8 DP', system: 'full-14.5', count: '26', cutterAngle: '' },
  about: WHEEL_ABOUT,
  work: ({ count, cutterAngle, ...wheel }) => formAnswer(gearOf(wheel), count, cutterAngle ?? undefined),
  draw: ({ count, cutterAngle, ...wheel }) => formDrawing(gearOf(wheel), count, cutterAngle ?? undefined),
});

export const CUTTER_SUMS = [choiceSum, formSum];
