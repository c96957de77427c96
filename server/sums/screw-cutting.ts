import { screwCuttingAnswer } from '../../lib/leads/screw-cutting.sums.ts';
import { countField, optional } from '../forms/field.ts';
import { screwField, threadField } from './read-trains.ts';
import { sum } from './sum.ts';

const screwCuttingSum = sum({
  path: 'catching-the-thread',
  title: 'Catching the thread, and starts',
  group: 'Trains',
  tells: 'Where the half-nuts may close, which lines of the thread dial serve, and how to go from start to start.',
  asks: {
    thread: threadField({ label: 'Pitch of one start', hint: '11 1/2 TPI, 1.5 mm' }),
    starts: countField({ label: 'Starts', limits: { least: 1, most: 60 } }),
    screw: screwField({ label: 'Lead screw', hint: '8 TPI, 5 mm' }),
    dialTeeth: optional(countField({ label: 'Teeth of the dial’s wheel', limits: { least: 4, most: 100 } })),
    dialLines: optional(countField({ label: 'Lines on the dial', limits: { least: 1, most: 48 } })),
    driverTeeth: optional(countField({ label: 'Teeth of the first driver', limits: { least: 4, most: 400 } })),
  },
  example: { thread: '9 TPI', starts: '1', screw: '8 TPI', dialTeeth: '16', dialLines: '8', driverTeeth: '' },
  work: ({ thread, starts, screw, dialTeeth, dialLines, driverTeeth }) =>
    screwCuttingAnswer({
      thread,
      starts,
      screw,
      dial: dialTeeth === null || dialLines === null ? null : { teeth: dialTeeth, lines: dialLines },
      driver: driverTeeth,
    }),
});

export const SCREW_CUTTING_SUMS = [screwCuttingSum];
