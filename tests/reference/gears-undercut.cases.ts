import { spanOver } from '../../lib/gears/base-tangent.formulas.ts';
import { hobbedContactAt } from '../../lib/gears/contact-ratio.formulas.ts';
import { atOf, type Flanks, mtOf, normalThickness, transverseThickness } from '../../lib/gears/flanks.formulas.ts';
import { overFlatAnvils } from '../../lib/gears/flat-anvils.formulas.ts';
import { standardCentre } from '../../lib/gears/pair.formulas.ts';
import { pinCircle } from '../../lib/gears/pins.formulas.ts';
import { hobbedFormDiameter } from '../../lib/gears/profile-rack.formulas.ts';
import type { Case } from './case.ts';
import { radiiOf, rows, teeth } from './parallel-rows.ts';

const BY_SWEEP =
  'derived: at each radius the widest angle that the rack’s rounded corner sweeps over all rolls, until it meets the involute';
const BY_SLIDING = 'derived: two leaning lines in space, one slid along its helix until they stand nearest, least found by search';
const SPANS = 'value from memory: table of spans for module 1, 20°';

const formOf = (flanks: Flanks, c?: number): number => hobbedFormDiameter(flanks, c) ?? Number.NaN;
const flat = (flanks: Flanks, w: number): number =>
  overFlatAnvils(flanks, pinCircle(flanks, transverseThickness(flanks), w), w) ?? Number.NaN;
const hobbed = (one: Flanks, mate: Flanks): number =>
  hobbedContactAt(radiiOf(one), radiiOf(mate), [formOf(one) / 2, formOf(mate) / 2], standardCentre({ one, mate }), atOf(one), mtOf(one));
const old = { B: 1.157 };

const span = (N: number, k: number): number => spanOver(teeth(N, 1, 20), normalThickness(teeth(N, 1, 20)), k);

export const cases: readonly Case[] = [
  ...rows({ topic: 'Where a hob begins the involute', kind: 'derived', source: BY_SWEEP, tolerance: 1e-8, unit: 'modules, in or mm' }, [
    ['12 teeth, 20°, corner 0.38', 11.302707126548, () => formOf(teeth(12, 1, 20)), 'base circle (11.276) given'],
    ['12 teeth, 20°, corner 0.3', 11.311442903426, () => formOf(teeth(12, 1, 20), 0.3), 'corner of the standard left out'],
    ['12 teeth, 20°, sharp corner', 11.351264791, () => formOf(teeth(12, 1, 20), 1e-9), 'straight side’s end for the corner’s trochoid'],
    ['12 teeth, 14½°', 11.751080981906, () => formOf(teeth(12, 1, 14.5, old)), 'rack of 20°'],
    ['12 teeth, 14½°, corner 0.209', 11.751185662324, () => formOf(teeth(12, 1, 14.5, old), 0.209), 'corner rounded'],
    [
      '22 teeth, 8 DP, 14½°',
      2.665859666674,
      () => formOf(teeth(22, 0.125, 14.5, { B: 0.144625 })),
      'not undercut in the belief of 18 teeth',
    ],
    ['8 teeth, 20°', 7.613562932936, () => formOf(teeth(8, 1, 20)), 'few teeth'],
    ['8 teeth, 20°, shift 0.2', 7.561215728768, () => formOf(teeth(8, 1, 20, { v: 0.2 })), 'shift without thickness'],
    ['16 teeth, module 2, shift −0.2', 30.103507704775, () => formOf(teeth(16, 2, 20, { v: -0.4 })), 'sign of the shift'],
    ['10 teeth, module 3, stub 0.8/1', 28.241642300272, () => formOf(teeth(10, 3, 20, { A: 2.4, B: 3 })), 'addendum of a full tooth'],
    [
      '10 teeth, mn 2, 20° of helix',
      19.90304463221,
      () => formOf(teeth(10, 2, 20, { helix: 20 })),
      'corner a circle across the wheel, too',
    ],
    [
      '20 teeth, 14½°, 30° of helix',
      22.129191152555,
      () => formOf(teeth(20, 1, 14.5, { helix: 30, ...old })),
      'normal angle for the transverse one',
    ],
  ]),
  ...rows(
    { topic: 'Pairs, contact and interference', kind: 'derived', source: `${BY_SWEEP}; contact cut there`, tolerance: 2e-7, unit: '' },
    [
      [
        '12 and 60, 14½°, both hobbed',
        0.9940711,
        () => hobbed(teeth(12, 1, 14.5, old), teeth(60, 1, 14.5, old)),
        'contact held to the base circle',
      ],
      ['10 and 30, module 2, 20°, both hobbed', 1.0926974, () => hobbed(teeth(10, 2, 20), teeth(30, 2, 20)), 'undercut forgotten'],
      ['15 and 15, 14½°, both hobbed', 0.7022536, () => hobbed(teeth(15, 1, 14.5, old), teeth(15, 1, 14.5, old)), 'undercut of one only'],
      ['12 and 24, module 3, 20°, both hobbed', 1.274549242, () => hobbed(teeth(12, 3, 20), teeth(24, 3, 20)), 'undercut forgotten'],
    ],
  ),
  ...rows({ topic: 'Over and between pins', kind: 'derived', source: BY_SLIDING, tolerance: 1e-7, unit: 'in or mm' }, [
    [
      '25 teeth, mn 2, 15°, pins 3.5 that slide',
      56.6176166,
      () => flat(teeth(25, 2, 20, { helix: 15 }), 3.5),
      'balls in one plane (56.6262)',
    ],
    ['9 teeth, mn 2, 10°', 22.786323, () => flat(teeth(9, 2, 20, { helix: 10 }), 3.5), 'helix of the pitch circle at the pins'],
    ['35 teeth, mn 2, 22½°', 80.6831731, () => flat(teeth(35, 2, 20, { helix: 22.5 }), 3.5), 'pins held opposite'],
    ['17 teeth, mn 2, 30°', 43.9527646, () => flat(teeth(17, 2, 20, { helix: 30 }), 3.5), 'first term of the series'],
    ['51 teeth, mn 2, 40°', 137.9881431, () => flat(teeth(51, 2, 20, { helix: 40 }), 3.5), 'near 45°'],
    ['19 teeth, 8 DP, 14½°, 20°, pins 0.216', 2.8196533, () => flat(teeth(19, 0.125, 14.5, { helix: 20 }), 0.216), 'inch and 14½°'],
  ]),
  ...rows({ topic: 'Span', kind: 'memory', source: SPANS, table: 'spans, module 1', tolerance: 6e-5, unit: 'mm' }, [
    ['17 teeth over 2', 4.6663, () => span(17, 2), 'half a pitch too many'],
    ['20 teeth over 3', 7.6604, () => span(20, 3), 'base pitch missing'],
    ['30 teeth over 4', 10.7526, () => span(30, 4), 'inv of degrees'],
    ['40 teeth over 5', 13.8448, () => span(40, 5), 'count'],
    ['50 teeth over 6', 16.937, () => span(50, 6), 'count'],
  ]),
];
