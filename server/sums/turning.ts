import { dialMove } from '../../lib/turning/dial.sums.ts';
import { nextDialMove } from '../../lib/turning/next-move.sums.ts';
import { turningPlan } from '../../lib/turning/passes.sums.ts';
import { choiceField, countField } from '../forms/field.ts';
import { size, sizeIfKnown, typedOf, unitOf } from './asks.ts';
import { DIAL_ABOUT, DIAL_EXAMPLE, dialAsks, dialIfKnown, dialIfKnownAsks, dialOf, lashField } from './dial-asks.ts';
import { sum } from './sum.ts';

const moveSum = sum({
  path: 'dial-move',
  title: 'Dial move',
  group: 'Turning',
  tells: 'A movement in turns and divisions of your dial, and what the nearest lower line leaves.',
  asks: {
    move: size({ label: 'Movement', least: 0, most: 100 }),
    counted: choiceField({
      label: 'Counted',
      choices: [
        ['diameter', 'off the diameter'],
        ['travel', 'as travel of the tool'],
      ],
    }),
    ...dialAsks,
    lash: lashField,
  },
  example: { move: '1.0950', counted: 'diameter', ...DIAL_EXAMPLE, lash: '' },
  about: DIAL_ABOUT,
  work: ({ move, counted, lash, ...dial }) =>
    dialMove({ move: move.length, counted, dial: dialOf(dial), from: 'typed', ...typedOf({ lash }) }),
});

const planSum = sum({
  path: 'turning-plan',
  title: 'Turning a blank down',
  group: 'Turning',
  tells: 'Over the gaps of the old teeth, then solid, then two measured last cuts: every cut with its dial.',
  asks: {
    oldOutside: size({ label: 'Old outside', least: 0.05, most: 100 }),
    oldRoot: sizeIfKnown({ label: 'Old root', hint: 'Empty: no old teeth', least: 0.05, most: 100 }),
    newOutside: size({ label: 'New outside', least: 0.05, most: 100 }),
    depthPerPass: sizeIfKnown({ label: 'One roughing pass, a side', hint: 'Empty: 0.030 in', least: 0.001, most: 1 }),
    lastOff: sizeIfKnown({ label: 'Left for the last cuts, off the diameter', hint: 'Empty: 0.030 in', least: 0, most: 1 }),
    ...dialIfKnownAsks,
  },
  example: { oldOutside: '4.1250', oldRoot: '3.5858', newOutside: '3.0000', depthPerPass: '', lastOff: '', ...DIAL_EXAMPLE },
  about: DIAL_ABOUT,
  parts: [
    { legend: 'The blank', asks: ['oldOutside', 'oldRoot', 'newOutside'] },
    { legend: 'The dial of the cross slide', asks: ['reads', 'division', 'perTurn'] },
    { legend: 'How deep', asks: ['depthPerPass', 'lastOff'], folded: true },
  ],
  work: ({ oldOutside, oldRoot, newOutside, depthPerPass, lastOff, ...typed }) => {
    const dial = dialIfKnown(typed);
    return turningPlan({
      oldOutside: oldOutside.length,
      oldRoot: oldRoot?.length ?? null,
      newOutside: newOutside.length,
      dial,
      unit: dial?.unit ?? unitOf(newOutside),
      ...typedOf({ depthPerPass, lastOff }),
    });
  },
});

const nextSum = sum({
  path: 'next-dial-move',
  title: 'Next dial move',
  group: 'Turning',
  tells: 'How far to dial on from what was just measured; or that metal is gone.',
  asks: {
    measured: size({ label: 'Diameter as measured', least: 0.01, most: 100 }),
    wanted: size({ label: 'Diameter wanted', least: 0.01, most: 100 }),
    cuts: countField({ label: 'Equal cuts still to take', limits: { least: 1, most: 50 }, unit: 'cuts' }),
    ...dialAsks,
    low: sizeIfKnown({ label: 'Least accepted', hint: 'Empty: the wanted size', least: 0.01, most: 100 }),
    high: sizeIfKnown({ label: 'Greatest accepted', hint: 'Empty: the wanted size', least: 0.01, most: 100 }),
    lash: lashField,
  },
  example: { measured: '3.0310', wanted: '3.0000', cuts: '2', ...DIAL_EXAMPLE, low: '2.9975', high: '', lash: '' },
  about: DIAL_ABOUT,
  parts: [
    { legend: 'The work', asks: ['measured', 'wanted', 'cuts'] },
    { legend: 'The dial', asks: ['reads', 'division', 'perTurn'] },
    { legend: 'More, if known', asks: ['low', 'high', 'lash'], folded: true },
  ],
  work: ({ measured, wanted, cuts, low, high, lash, ...dial }) =>
    nextDialMove({ measured: measured.length, wanted: wanted.length, cuts, dial: dialOf(dial), ...typedOf({ low, high, lash }) }),
});

export const TURNING_SUMS = [planSum, nextSum, moveSum];
