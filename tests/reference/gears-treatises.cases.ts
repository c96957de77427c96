import { contactRatio, contactRatioAt, involuteContactAt } from '../../lib/gears/contact-ratio.formulas.ts';
import { atOf, mtOf, rootOf } from '../../lib/gears/flanks.formulas.ts';
import { axialPitch, transverseAngle, transverseModule } from '../../lib/gears/helical.formulas.ts';
import { standardCentre } from '../../lib/gears/pair.formulas.ts';
import { chordalAddendum, chordalThickness, circularPitch, leastTeeth } from '../../lib/gears/spur.formulas.ts';
import { type BlankKey, gearBlank } from '../../lib/gears/spur.sums.ts';
import { moduleOf } from '../../lib/gears/tooth.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import type { Case } from './case.ts';
import { inchesOrMm, pitchOf, systemNamed } from './gear-asks.ts';
import { deg, rad, radiiOf, rows, teeth } from './parallel-rows.ts';

// Treatises, textbooks and shop books. Where an example was read re-keyed by others, with its answer, the source says so.

const BROWN_SHARPE = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152';
const VAN_CLEVE = 'B. F. Van Cleve, The English and American Mechanic, true or chordal pitch';
const ROSE = 'J. Rose, Modern Machine-Shop Practice, vol. I, the diameter of a wheel of 128 teeth by parts';
const FELLOWS = 'Fellows Corporation, Design of Involute Gear Teeth, reprinted in Gear Technology (Back to Basics), fig. 1';
const LOW = 'D. A. Low, An Introduction to Machine Drawing and Design, art. on toothed wheels';
const SDP = 'SDP/SI, Elements of Metric Gear Technology, T-109, example of a spiral bevel gear';
const SDP_35 = 'SDP/SI, Elements of Metric Gear Technology, T-35, table 4-2';
const BEVAN = 'T. Bevan, The Theory of Machines, ch. 10 (re-keyed)';
const SARKAR = 'B. K. Sarkar, Theory of Machines, ch. 4, p. 133 (re-keyed)';
const JINDAL = 'U. C. Jindal, Machine Design, example 26-1, p. 698 (re-keyed)';
const WENTZELL = 'T. H. Wentzell, Machine Design, example 11.3, p. 231 (re-keyed)';
const NAVY = 'US Navy, Machinery Repairman (14345), fig. 14-7, development of the helix angle';
const FORUM = 'Home shop machinist forum, thread 10255 (a wheel of 12 teeth, 20 DP)';
const SCIENCE = 'Science Insights, How to Measure Pitch Diameter of a Gear';

const blank = (N: number, pitch: string, system: string, key: BlankKey, unit: LengthUnit): number => {
  const { value } = gearBlank({ teeth: N, pitch: pitchOf(pitch), system: systemNamed(system) }).figures[key];
  if (!('length' in value)) throw new Error('no length');
  return inchesOrMm(value.length, unit);
};
/** Tooth to tooth straight across: the chord of a whole pitch. */
const truePitch = (N: number, d: number): number => chordalThickness(d, (Math.PI * d) / N);
const thick = (of: 't' | 's', m: number, N: number): number => {
  const s = (Math.PI * m) / 2;
  return of === 't' ? chordalThickness(N * m, s) : chordalAddendum(N * m, s, m);
};
const equal = (N: number, m: number, a: number, A: number): number => {
  const one = teeth(N, m, a, { A });
  return contactRatio(radiiOf(one), radiiOf(one), rad(a), m);
};
const path = (N1: number, N2: number, m: number, a: number): number => {
  const [one, mate] = [teeth(N1, m, a), teeth(N2, m, a)];
  return contactRatioAt(radiiOf(one), radiiOf(mate), standardCentre({ one, mate }), atOf(one), mtOf(one)) * Math.PI * m;
};
const oneTooth = Math.PI / 2 - Math.atan(1 / Math.PI);
const small = teeth(20, 4, 20, { helix: 15 });

export const cases: readonly Case[] = [
  ...rows({ topic: 'Chordal thickness', kind: 'published', source: BROWN_SHARPE, table: BROWN_SHARPE, tolerance: 6e-5, unit: 'in' }, [
    [
      '15 teeth, 3/4 in circular pitch: thickness',
      0.3743,
      () => thick('t', moduleOf(pitchOf('3/4 CP')), 15),
      'circular pitch taken for 1/P',
    ],
    [
      '15 teeth, 3/4 in circular pitch: addendum',
      0.2485,
      () => thick('s', moduleOf(pitchOf('3/4 CP')), 15),
      'circular pitch taken for 1/P',
    ],
  ]),
  ...rows({ topic: 'Chordal thickness', kind: 'published', source: VAN_CLEVE, table: VAN_CLEVE, tolerance: 4e-4, unit: 'in' }, [
    ['75 teeth, 40 in: true pitch', 1.6752, () => truePitch(75, 40), 'arc for chord'],
    ['48 teeth, 38.225 in: true pitch', 2.5, () => truePitch(48, 38.225), 'half the tooth’s angle'],
    ['80 teeth, 50.94 in: true pitch', 2, () => truePitch(80, 50.94), 'half the tooth’s angle'],
    ['48 teeth, factor 15.29', 1, () => truePitch(48, 15.29), 'pitch circle by arcs: 15.279'],
    ['80 teeth, factor 25.47', 1, () => truePitch(80, 25.47), 'pitch circle by arcs: 25.465'],
  ]),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: VAN_CLEVE, tolerance: 6e-4, unit: 'in' }, [
    [
      '75 teeth, 1.6755 in circular pitch: pitch diameter',
      40,
      () => blank(75, '1.6755 CP', 'full-14.5', 'pitchDiameter', 'in'),
      'chord for arc',
    ],
  ]),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: ROSE, table: ROSE, tolerance: 5e-3, unit: 'in' }, [
    [
      '8 teeth, 1½ in circular pitch: pitch diameter',
      3.8197,
      () => blank(8, '1.5 CP', 'full-14.5', 'pitchDiameter', 'in'),
      'chord for arc',
    ],
    ['20 teeth, 1½ in', 9.549, () => blank(20, '1.5 CP', 'full-14.5', 'pitchDiameter', 'in'), 'p × N without π'],
    ['100 teeth, 1½ in', 47.75, () => blank(100, '1.5 CP', 'full-14.5', 'pitchDiameter', 'in'), '22/7 for π'],
    [
      '128 teeth, 1½ in (printed 61.1187, the sum of rounded parts; about 61 1/8)',
      61.1187,
      () => blank(128, '1.5 CP', 'full-14.5', 'pitchDiameter', 'in'),
      'teeth of the parts not added',
    ],
  ]),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: LOW, tolerance: 2e-3, unit: 'in' }, [
    [
      '50 teeth, 1½ in circular pitch: pitch diameter 23 7/8',
      23.875,
      () => blank(50, '1.5 CP', 'full-14.5', 'pitchDiameter', 'in'),
      'N for N/π',
    ],
  ]),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: FORUM, tolerance: 5e-5, unit: 'in' }, [
    ['12 teeth, 20 DP: pitch diameter', 0.6, () => blank(12, '20 DP', 'full-14.5', 'pitchDiameter', 'in'), 'N + 2 for N'],
    ['12 teeth, 20 DP: outside', 0.7, () => blank(12, '20 DP', 'full-14.5', 'outsideDiameter', 'in'), 'N for N + 2'],
  ]),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: SCIENCE, tolerance: 5e-4, unit: 'in or mm' }, [
    ['40 teeth, 10 DP: pitch diameter', 4, () => blank(40, '10 DP', 'full-20', 'pitchDiameter', 'in'), 'N × P'],
    ['40 teeth, module 2.5: pitch diameter', 100, () => blank(40, 'module 2.5', 'module-1.25', 'pitchDiameter', 'mm'), 'N ÷ m'],
  ]),
  ...rows(
    {
      topic: 'Gear sizes',
      kind: 'published',
      source: 'metrication.com, Metric Gears: 2.25 of the module from 1.25 module up',
      tolerance: 5e-4,
      unit: 'mm',
    },
    [['module 4: whole depth', 9, () => blank(30, 'module 4', 'module-1.25', 'wholeDepth', 'mm'), '2.157 for 2.25']],
  ),
  ...rows(
    { topic: 'Gear sizes', kind: 'published', source: 'Home Model Engine Machinist thread 20300, p. 4', tolerance: 5e-3, unit: 'in' },
    [['24 DP: depth of cut, in two places', 0.09, () => blank(24, '24 DP', 'full-14.5', 'wholeDepth', 'in'), 'addendum for whole depth']],
  ),
  ...rows({ topic: 'Gear sizes', kind: 'published', source: WENTZELL, tolerance: 6e-3, unit: 'in' }, [
    ['32 teeth, 8 DP: pitch diameter', 4, () => blank(32, '8 DP', 'full-14.5', 'pitchDiameter', 'in'), 'radius for diameter'],
    ['16 and 32, 8 DP: centres', 3, () => standardCentre({ one: teeth(16, 0.125, 20), mate: teeth(32, 0.125, 20) }), 'sum of diameters'],
  ]),
  ...rows({ topic: 'Pairs, contact and interference', kind: 'published', source: SDP_35, tolerance: 5e-4, unit: 'mm' }, [
    ['16 and 20, module 3: centres', 54, () => standardCentre({ one: teeth(16, 3, 20), mate: teeth(20, 3, 20) }), 'sum of diameters'],
  ]),
  ...rows({ topic: 'Pairs, contact and interference', kind: 'published', source: SARKAR, tolerance: 0.06, unit: 'mm' }, [
    ['30 and 48, module 5, 20°: arc of contact', 26.7, () => path(30, 48, 5, 20), 'path for arc'],
  ]),
  ...rows({ topic: 'Pairs, contact and interference', kind: 'published', source: SARKAR, tolerance: 0.02, unit: '' }, [
    ['40 and 40, module 6, addendum 6.1: arc in pitches', 1.75, () => equal(40, 6, 20, 6.1), 'addendum 6.17 as another textbook prints it'],
  ]),
  ...rows({ topic: 'Pairs, contact and interference', kind: 'published', source: `${BEVAN}, ex. 5, p. 338`, tolerance: 0.025, unit: '' }, [
    [
      '25 and 25, 20°, addendum 0.32 of the pitch: arc in pitches',
      1.6,
      () => equal(25, 1, 20, 0.32 * Math.PI),
      'pitch taken for the module',
    ],
  ]),
  ...rows({ topic: 'Pairs, contact and interference', kind: 'published', source: `${BEVAN}, ex. 6, p. 338`, tolerance: 0.01, unit: '' }, [
    ['28 and 45, 14½°: arc in pitches', 2, () => path(28, 45, 1, 14.5) / Math.PI, 'path for arc'],
  ]),
  ...rows(
    { topic: 'Pairs, contact and interference', kind: 'published', source: SDP, table: SDP, tolerance: 6e-5, unit: 'mm, ° or none' },
    [
      ['20 and 40 by their back cones, 35°: transverse angle', 23.9568, () => deg(transverseAngle(rad(20), rad(35))), 'cos multiplied'],
      ['base radius of the pinion’s', 30.65152, () => 33.54102 * Math.cos(transverseAngle(rad(20), rad(35))), 'normal angle at the base'],
      ['base radius of the wheel’s', 122.6061, () => 134.16408 * Math.cos(transverseAngle(rad(20), rad(35))), 'normal angle at the base'],
      [
        'contact ratio',
        1.2825,
        () =>
          contactRatio(
            { base: 30.65152, pitch: 33.54102, outside: 36.9685 },
            { base: 122.6061, pitch: 134.16408, outside: 135.83658 },
            rad(23.9568),
            3,
          ),
        'cone’s own count for that of the back cone',
      ],
    ],
  ),
  ...rows(
    { topic: 'Pairs, contact and interference', kind: 'published', source: FELLOWS, table: FELLOWS, tolerance: 1e-3, unit: 'in or 1/in' },
    [
      [
        'one tooth, base circle 1½ in, 72° 21′: circular pitch',
        15.537,
        () => circularPitch(1.5 / Math.cos(oneTooth)),
        'base pitch for circular pitch',
      ],
      ['the same: diametral pitch', 0.2022, () => Math.cos(oneTooth) / 1.5, 'P for p'],
      [
        'two wheels of one tooth at 72° 21′: just one base pitch of involute',
        1,
        () => {
          const T = 1.5 * Math.tan(rad(72 + 21 / 60));
          const tips = { base: 0.75, pitch: 0.75 / Math.cos(rad(72 + 21 / 60)), outside: Math.hypot(0.75, T) };
          return involuteContactAt(tips, tips, 2 * tips.pitch, rad(72 + 21 / 60), 1.5 / Math.cos(rad(72 + 21 / 60)));
        },
        'reach not held to the line between the base circles',
      ],
    ],
  ),
  ...rows({ topic: 'Helical, shift and undercut', kind: 'published', source: JINDAL, table: 'Jindal 26-1', tolerance: 0.08, unit: 'mm' }, [
    ['mn 4, 15°: least face, one axial pitch', 48.55, () => axialPitch(4, rad(15)), 'tan for sin'],
    ['20 teeth: root', 72.8, () => rootOf(small), 'transverse dedendum'],
    ['50 teeth: root (printed 197, no places)', 197, () => rootOf(teeth(50, 4, 20, { helix: 15 })), 'transverse dedendum'],
  ]),
  ...rows({ topic: 'Helical, shift and undercut', kind: 'published', source: NAVY, tolerance: 0.006, unit: 'in' }, [
    [
      '20 slots ½ in apart square to them, 19° 22′: round the blank',
      10.6,
      () => 20 * transverseModule(0.5, rad(19 + 22 / 60)),
      'cos multiplied',
    ],
  ]),
  ...rows(
    {
      topic: 'Undercut and virtual count',
      kind: 'published',
      source: 'gizmology.net, Gears: teeth below which the root is undercut',
      tolerance: 0,
      unit: 'teeth',
    },
    [
      ['14½°', 32, () => Math.ceil(leastTeeth(1, rad(14.5))), 'sine for its square'],
      ['20°', 18, () => Math.ceil(leastTeeth(1, rad(20))), 'rounded down'],
    ],
  ),
];
