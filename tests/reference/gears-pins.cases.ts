import { transverseThickness } from '../../lib/gears/flanks.formulas.ts';
import { involuteAtPin, overPins, pinContactRadius, pinTouchingAt, thicknessFromPins } from '../../lib/gears/pins.formulas.ts';
import type { Case } from './case.ts';
import { across, BY_TOUCH, FROM_MEMORY, type Row, rows, teeth } from './parallel-rows.ts';

const topic = 'Over and between pins';
const WIRES = 'Checking gear size by measurement over wires, Ashoka Gears technical section, table for 1.728 wires';
const OLD_SPLINES = 'Omni Gear and Machine, Involute Splines, Old American Standard';

const over = (flanks: ReturnType<typeof teeth>, w: number, b = 0): number => overPins(flanks, transverseThickness(flanks) - b, w);
/** Old American splines: pitch diameter 1, so that factors are read as printed. */
const spline = (N: number) => teeth(N, 1 / N, 30);

const wireTable = (a: number, values: readonly (readonly [number, number, string])[]): readonly Row[] =>
  values.map(([N, M, catches]) => [`${N} teeth, 1 DP, ${a}°, 1.728 wire`, M, () => over(teeth(N, 1, a), 1.728), catches]);

export const cases: readonly Case[] = [
  ...rows({ topic, kind: 'published', source: WIRES, tolerance: 6e-5, unit: 'in' }, [
    ['32 teeth, 1 DP, 20°, 1.728 wire', 34.413, () => over(teeth(32, 1, 20), 1.728), 'involute of the angle taken with the wrong sign'],
    ['32 teeth, 4 DP, 20°, wire 0.432', 8.6032, () => over(teeth(32, 0.25, 20), 0.432), 'wire not divided by the pitch'],
  ]),
  ...rows({ topic, kind: 'published', source: OLD_SPLINES, table: OLD_SPLINES, tolerance: 6e-6, unit: 'of D' }, [
    ['6 splines, 30°, pin .3660253', 1.59077, () => over(spline(6), 0.3660253), 'pin touching at the pitch circle of a six-tooth gear'],
    ['10 splines, 30°, pin .2012936', 1.31566, () => over(spline(10), 0.2012936), 'half the space taken for the whole'],
    ['16 splines, 30°, pin .1205850', 1.186008, () => over(spline(16), 0.120585), '30° taken for 20°'],
    [
      '24 splines, 30°, pin .0786596: the column beside its own',
      1.120219,
      () => over(spline(24), 0.0786596),
      'a printed column that slipped by one',
    ],
  ]),
  ...rows(
    { topic, kind: 'published', source: `${OLD_SPLINES} (digits cut, not rounded)`, table: OLD_SPLINES, tolerance: 1.1e-7, unit: 'of D' },
    [
      [
        '6 splines, the pin itself',
        0.3660253,
        () => pinTouchingAt(spline(6), transverseThickness(spline(6)), 1),
        'a rule of thumb for the pin',
      ],
      [
        '10 splines, the pin itself',
        0.2012936,
        () => pinTouchingAt(spline(10), transverseThickness(spline(10)), 1),
        'half space at the base circle',
      ],
      [
        '16 splines, the pin itself',
        0.120585,
        () => pinTouchingAt(spline(16), transverseThickness(spline(16)), 1),
        'tangent taken for involute',
      ],
      [
        '24 splines, the pin itself',
        0.0786596,
        () => pinTouchingAt(spline(24), transverseThickness(spline(24)), 1),
        'degrees taken for radians',
      ],
    ],
  ),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-5, unit: 'mm' }, [
    ['m 1, 20°, 20 teeth, pin 1.7', 22.2941, () => over(teeth(20, 1, 20), 1.7), 'pin subtracted instead of added'],
  ]),
  ...rows({ topic, kind: 'memory', source: FROM_MEMORY, tolerance: 6e-8, unit: '' }, [
    ['involute at that pin', 0.0268197, () => involuteAtPin(teeth(20, 1, 20), Math.PI / 2, 1.7), 'space for tooth'],
  ]),
  ...rows(
    { topic, kind: 'memory', source: 'value from memory: wire tables of a handbook', table: 'wires 14½°', tolerance: 6e-5, unit: 'in' },
    [
      ...wireTable(14.5, [
        [6, 8.2846, 'few teeth: touch near the base circle'],
        [8, 10.316, 'few teeth'],
        [10, 12.3399, 'few teeth'],
      ]),
      ...wireTable(17.5, [
        [6, 8.2927, '17½° mixed up with 14½°'],
        [10, 12.3396, 'a pitch-circle wire assumed'],
      ]),
    ],
  ),
  ...rows(
    { topic, kind: 'memory', source: 'value from memory: wire tables of a handbook', table: 'wires 20°', tolerance: 6e-5, unit: 'in' },
    [
      ...wireTable(20, [
        [6, 8.3032, 'few teeth'],
        [8, 10.3271, 'few teeth'],
        [10, 12.3445, 'few teeth'],
      ]),
    ],
  ),
  ...rows({ topic, kind: 'derived', source: BY_TOUCH, tolerance: 2e-6, unit: 'in or mm' }, [
    ['22 teeth, 8 DP, 14½°, wire 0.216', 3.052145, () => over(teeth(22, 0.125, 14.5), 0.216), 'even count'],
    ['23 teeth, 8 DP, 14½°, wire 0.216', 3.170724, () => over(teeth(23, 0.125, 14.5), 0.216), 'odd count read as if it were even'],
    ['12 teeth, m 1, 20°, shift 0.3, pin 1.75', 14.852197, () => over(teeth(12, 1, 20, { v: 0.3 }), 1.75), 'shift not in the thickness'],
    ['17 teeth, m 2.5, 20°, pin 4.25', 48.027955, () => over(teeth(17, 2.5, 20), 4.25), 'odd and few'],
    ['60 teeth, 12 DP, 14½°, wire 0.144', 5.20737, () => over(teeth(60, 1 / 12, 14.5), 0.144), 'many teeth'],
    ['19 teeth, 8 DP, 20°, wire 0.216', 2.664997, () => over(teeth(19, 0.125, 20), 0.216), 'cos(180°/N) for cos(90°/N)'],
    ['100 teeth, m 1, 25°, pin 1.728', 102.43686, () => over(teeth(100, 1, 25), 1.728), 'steep angle'],
    [
      '9 teeth, m 3, 20°, shift 0.5, pin 5.5',
      36.357708,
      () => over(teeth(9, 3, 20, { v: 1.5 }), 5.5),
      'shift as a length, not as a part of the module',
    ],
    ['30 teeth, m 1, 17½°, shift −0.1, pin 1.728', 32.249941, () => over(teeth(30, 1, 17.5, { v: -0.1 }), 1.728), 'minus shift'],
    ['22 teeth, 8 DP, 14½°, 0.004 thinner', 3.040735, () => over(teeth(22, 0.125, 14.5), 0.216, 0.004), 'backlash taken twice'],
    ['30 teeth, m 2, 20°, shift 0.25, 0.1 thinner', 65.582244, () => over(teeth(30, 2, 20, { v: 0.5 }), 3.5, 0.1), 'backlash on the shift'],
    [
      '24 teeth, mn 3, 25°, shift 0.4, ball 5.25',
      88.896434,
      () => over(teeth(24, 3, 20, { helix: 25, v: 1.2 }), 5.25),
      'ball as if it lay across the wheel',
    ],
    ['25 teeth, mn 2, 15°, ball 3.5', 56.626216, () => over(teeth(25, 2, 20, { helix: 15 }), 3.5), 'odd and helical'],
    ['20 teeth, mn 1/6, 30°, ball 0.288', 4.250943, () => over(teeth(20, 1 / 6, 20, { helix: 30 }), 0.288), 'helix of the base circle'],
    [
      '16 teeth, mn 5, 25°, shift 0.2, ball 9',
      103.022657,
      () => over(teeth(16, 5, 20, { helix: 25, v: 1 }), 9),
      'normal thickness for transverse',
    ],
    ['35 teeth, mn 1.5, 14½°, 22½°, ball 2.5', 60.073514, () => over(teeth(35, 1.5, 14.5, { helix: 22.5 }), 2.5), 'odd, helical, 14½°'],
  ]),
  ...rows({ topic, kind: 'derived', source: BY_TOUCH, tolerance: 2e-6, unit: 'in or mm' }, [
    ['ring of 40, 8 DP, 20°, wire 0.18', 4.833054, () => over(teeth(40, 0.125, 20, { ring: true }), 0.18), 'pin added for a ring'],
    ['ring of 41, 8 DP, 14½°, wire 0.18', 4.979483, () => over(teeth(41, 0.125, 14.5, { ring: true }), 0.18), 'odd ring'],
    [
      'ring of 24, m 3, shift 0.5, pin 5',
      68.250713,
      () => over(teeth(24, 3, 20, { ring: true, v: 1.5 }), 5),
      'shift of a ring turned about',
    ],
    ['ring of 60, m 2, pin 3.25', 115.853092, () => over(teeth(60, 2, 20, { ring: true }), 3.25), 'tooth and space exchanged'],
    ['ring of 31, 1 DP, 14½°, 1.44 wire', 29.821582, () => over(teeth(31, 1, 14.5, { ring: true }), 1.44), 'odd count as even'],
    ['ring of 80, m 1.5, 25°, shift 0.2, pin 2.5', 117.236029, () => over(teeth(80, 1.5, 25, { ring: true, v: 0.3 }), 2.5), 'steep ring'],
    ['ring of 36, mn 2, 20° helix, ball 3.25', 72.462543, () => over(teeth(36, 2, 20, { ring: true, helix: 20 }), 3.25), 'helical ring'],
    [
      'ring of 45, 8 DP, 15° helix, ball 0.18',
      5.652952,
      () => over(teeth(45, 0.125, 20, { ring: true, helix: 15 }), 0.18),
      'helical ring, odd',
    ],
    ['ring of 72, m 1, 22½°, pin 1.65', 69.818907, () => over(teeth(72, 1, 22.5, { ring: true }), 1.65), '22½°'],
  ]),
  ...rows(
    {
      topic,
      kind: 'derived',
      source: 'derived: formulas of SDP/SI, Technical section, p. T60, worked apart from lib',
      table: 'between 1.44 wires',
      tolerance: 6e-5,
      unit: 'in',
    },
    [
      ['ring of 16, 1 DP, 20°', 14.663, () => over(teeth(16, 1, 20, { ring: true }), 1.44), 'space angle of a ring'],
      ['ring of 31, 1 DP, 20°', 29.6242, () => over(teeth(31, 1, 20, { ring: true }), 1.44), 'cos(90°/N) left out'],
      ['ring of 32, 1 DP, 14½°', 30.8623, () => over(teeth(32, 1, 14.5, { ring: true }), 1.44), '14½° with the 20° values'],
      ['ring of 40, 1 DP, 14½°', 38.8658, () => over(teeth(40, 1, 14.5, { ring: true }), 1.44), 'many teeth'],
    ],
  ),
  ...rows({ topic, kind: 'derived', source: `${BY_TOUCH}; the reading typed back`, tolerance: 2e-6, unit: 'in or mm' }, [
    [
      '3.040735 over 22 teeth, 8 DP',
      0.19235,
      () => thicknessFromPins(teeth(22, 0.125, 14.5), 3.040735, 0.216),
      'round trip whose errors cancel',
    ],
    ['2.664997 over 19 teeth, 8 DP', 0.19635, () => thicknessFromPins(teeth(19, 0.125, 20), 2.664997, 0.216), 'odd count on the way back'],
    [
      '68.250713 between pins, ring of 24',
      3.620478,
      () => thicknessFromPins(teeth(24, 3, 20, { ring: true }), 68.250713, 5),
      'ring on the way back',
    ],
    [
      '88.896434 over balls, 25°',
      6.163378,
      () => thicknessFromPins(teeth(24, 3, 20, { helix: 25 }), 88.896434, 5.25),
      'helix on the way back',
    ],
  ]),
  ...rows(
    { topic, kind: 'derived', source: 'derived: a pin that touches at the pitch circle stands at its radius', tolerance: 1e-6, unit: 'mm' },
    [
      [
        'm 1, 20 teeth, pin 1.7244491',
        10,
        () => pinContactRadius(teeth(20, 1, 20), Math.PI / 2, 1.724449122),
        'contact taken at the middle of the pin',
      ],
      [
        'transverse-plane 6 DP, 25°, ideal ball touches at D/2',
        1.5,
        () => {
          const flanks = across(18, 1 / 6, 20, 25);
          return pinContactRadius(flanks, transverseThickness(flanks), pinTouchingAt(flanks, transverseThickness(flanks), 3));
        },
        'ideal ball of helical teeth by straight-tooth rule',
      ],
    ],
  ),
];
