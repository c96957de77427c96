import type { Answer } from '../../../lib/figure/figure.ts';
import { camAnswer } from '../../../lib/leads/cam.sums.ts';
import { helicalAnswer } from '../../../lib/leads/helical.sums.ts';
import { leadAnswer } from '../../../lib/leads/lead.sums.ts';
import { screwCuttingAnswer } from '../../../lib/leads/screw-cutting.sums.ts';
import { approximationsAnswer } from '../../../lib/trains/approximations.sums.ts';
import { changeGearsAnswer } from '../../../lib/trains/change-gears.sums.ts';
import { chartAnswer } from '../../../lib/trains/chart.sums.ts';
import { targetOf } from '../../../lib/trains/target.ts';
import { transposingAnswer } from '../../../lib/trains/transposing.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { type Ratio, ratio } from '../../../lib/values/ratio.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const EIGHT: Ratio = [1, 8];
const fives = (from: number, to: number): number[] => Array.from({ length: (to - from) / 5 + 1 }, (_, k) => from + 5 * k);
const pitch = (n: number) => ({ says: `${n} TPI`, size: ratio(1, n), pi: 0 }) as const;
const half = { says: '11.5 TPI', size: ratio(2, 23), pi: 0 } as const;
const mm = (hundredths: number, says: string) => ({ says, size: ratio(hundredths, 2540), pi: 0 }) as const;
const HEAD = { turns: 40, screw: [1, 4], drive: 'worm' } as const;
const HEAD_WHEELS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

/** The examples of trains and leads, given to lib in its own terms. */
export const DIRECT_TRAINS: Readonly<Record<string, () => Answer>> = {
  'change-gears': () =>
    changeGearsAnswer({
      wanted: { says: '1.75 mm', size: ratio(35, 508), pi: 0 },
      screw: EIGHT,
      wheels: [20, 20, ...fives(25, 60), 63, ...fives(65, 100)],
      upTo: 4,
      over: inches(1),
      unit: 'in',
    }),
  'chart-today': () =>
    chartAnswer({
      list: [...[8, 9, 10, 11].map(pitch), half, ...[12, 13, 14, 16, 18, 20, 24].map(pitch)],
      screw: EIGHT,
      drawer: [20, ...fives(25, 50), 60, 80],
      missing: [46, 55, 65, 70],
      near: 0.0005,
    }),
  'metric-on-inch': () =>
    transposingAnswer({
      list: (
        [
          [50, '0.5 mm'],
          [70, '0.7 mm'],
          [80, '0.8 mm'],
          [100, '1 mm'],
          [125, '1.25 mm'],
          [150, '1.5 mm'],
          [175, '1.75 mm'],
          [200, '2 mm'],
          [250, '2.5 mm'],
          [300, '3 mm'],
        ] as const
      ).map(([size, says]) => mm(size, says)),
      screw: EIGHT,
      drawer: [20, 20, ...fives(25, 100)],
    }),
  'fractions-near': () => approximationsAnswer(targetOf([127, 100]), 500, 0),
  'catching-the-thread': () =>
    screwCuttingAnswer({ thread: pitch(9), starts: 1, screw: EIGHT, dial: { teeth: 16, lines: 8 }, driver: null }),
  'helical-milling': () =>
    helicalAnswer({
      gear: { teeth: 24, pitch: { kind: 'DP', size: [8, 1] }, system: SYSTEM },
      helix: 30,
      hand: 'right',
      face: inches(1),
      machine: HEAD,
      wheels: HEAD_WHEELS,
      upTo: 4,
    }),
  'wheels-for-a-lead': () =>
    leadAnswer({
      lead: { says: '12 in', size: [12, 1], pi: 0 },
      diameter: inches(2),
      face: inches(1.5),
      hand: 'right',
      machine: HEAD,
      wheels: HEAD_WHEELS,
      upTo: 4,
    }),
  'cam-lobes': () =>
    camAnswer({
      lobes: [
        { rise: 2.443, hundredths: 29 },
        { rise: 2.493, hundredths: 47 },
      ],
      machine: HEAD,
      wheels: HEAD_WHEELS,
    }),
};
