import {
  atOf,
  leastShift,
  leastTeethOf,
  pitchOf,
  pointedDiameter,
  psibOf,
  thicknessAt,
  tipOf,
  transverseThickness,
} from '../../lib/gears/flanks.formulas.ts';
import { axialPitch, helixOfLead, lead, normalAngle, transverseModule, virtualTeethByBase } from '../../lib/gears/helical.formulas.ts';
import { hobbedFormDiameter } from '../../lib/gears/profile-rack.formulas.ts';
import { virtualTeeth } from '../../lib/gears/spur.formulas.ts';
import type { Case } from './case.ts';
import { across, deg, type Row, rad, rows, teeth } from './parallel-rows.ts';

const topic = 'Helical, shift and undercut';
const JINDAL = 'U. C. Jindal, Machine Design, example 26-1, p. 698 (re-keyed)';
const WENTZELL = 'T. H. Wentzell, Machine Design, example 13.2, p. 282 (re-keyed)';
const MOTT = 'Machine Elements in Mechanical Design, 4th ed., p. 320';
const BY_OTHERS = 'derived: the same sizes by tan ψb = tan ψ cos at and z/(cos² ψb cos ψ), other formulas than lib’s';
const LEANING = teeth(18, 1 / 6, 20, { helix: 25 });
const formOf = (flanks: ReturnType<typeof teeth>, c?: number): number => hobbedFormDiameter(flanks, c) ?? Number.NaN;
const small = teeth(20, 4, 20, { helix: 15 });
const land = (N: number, a: number, v: number): number => {
  const flanks = teeth(N, 1, a, { v });
  return thicknessAt(flanks, transverseThickness(flanks), tipOf(flanks));
};
const helical = (N: number, mn: number, an: number, helix: number, [d, at, pb, L, px, zv, zb]: readonly number[]): readonly Row[] => {
  const of = teeth(N, mn, an, { helix });
  const say = `${N} teeth, mn ${mn}, ${an}°, ${helix}°`;
  return [
    [`${say}: pitch diameter`, d ?? 0, () => pitchOf(of), 'cos multiplied'],
    [`${say}: transverse angle`, at ?? 0, () => deg(atOf(of)), 'normal for transverse'],
    [`${say}: base helix`, pb ?? 0, () => deg(psibOf(of)), 'tan for sin'],
    [`${say}: lead`, L ?? 0, () => lead(pitchOf(of), rad(helix)), 'tan multiplied'],
    [`${say}: axial pitch`, px ?? 0, () => axialPitch(mn, rad(helix)), 'tan for sin'],
    [`${say}: virtual count`, zv ?? 0, () => virtualTeeth(N, rad(helix)), 'base helix'],
    [`${say}: virtual count by the base`, zb ?? 0, () => virtualTeethByBase(N, rad(helix), rad(an)), 'pitch helix'],
  ];
};

export const cases: readonly Case[] = [
  ...rows({ topic, kind: 'published', source: JINDAL, table: 'Jindal 26-1', tolerance: 6e-3, unit: 'mm' }, [
    ['mn 4, 15°: transverse module', 4.14, () => transverseModule(4, rad(15)), 'cos multiplied'],
  ]),
  ...rows({ topic, kind: 'published', source: JINDAL, table: 'Jindal 26-1', tolerance: 6e-4, unit: '°' }, [
    ['mn 4, 20°, 15°: transverse angle', 20.647, () => deg(atOf(small)), 'tan without the helix'],
  ]),
  ...rows(
    {
      topic,
      kind: 'published',
      source: `${JINDAL}, sizes from a module rounded to 4.14`,
      table: 'Jindal 26-1',
      tolerance: 0.11,
      unit: 'mm',
    },
    [
      ['20 teeth: outside', 90.8, () => tipOf(small), 'transverse addendum'],
      ['50 teeth: outside', 215, () => tipOf(teeth(50, 4, 20, { helix: 15 })), 'transverse addendum'],
    ],
  ),
  ...rows({ topic, kind: 'published', source: WENTZELL, tolerance: 6e-3, unit: 'DP' }, [
    [
      '24 teeth, transverse 16 DP, 45°: normal pitch',
      22.63,
      () => 1 / across(24, 1 / 16, 20, 45).mn,
      'normal and transverse pitch exchanged',
    ],
  ]),
  ...rows(
    {
      topic,
      kind: 'memory',
      source: 'value from memory: helical gear of a textbook, 6 DP transverse, 25°, 20° normal',
      tolerance: 6e-4,
      unit: 'in or DP',
    },
    [
      ['18 teeth: pitch diameter', 3, () => pitchOf(across(18, 1 / 6, 21.88, 25)), 'plane of the pitch'],
      ['axial pitch', 1.123, () => axialPitch(Math.cos(rad(25)) / 6, rad(25)), 'tan for sin'],
      ['normal pitch, DP', 6.62, () => 1 / across(18, 1 / 6, 21.88, 25).mn, 'cos multiplied'],
    ],
  ),
  ...rows({ topic, kind: 'memory', source: 'value from memory: worked gears of a metric gear handbook', tolerance: 6e-6, unit: '°' }, [
    ['20° across, 22½°: normal angle', 18.58597, () => deg(normalAngle(rad(20), rad(22.5))), 'divided by the cosine'],
    ['20° normal, 25°: transverse angle', 21.88023, () => deg(atOf(LEANING)), 'cos multiplied'],
  ]),
  ...rows(
    { topic, kind: 'derived', source: BY_OTHERS, table: 'helical 24', tolerance: 6e-6, unit: 'mm, ° or teeth' },
    helical(24, 2, 20, 15, [49.693257, 20.6469, 14.0761, 582.63273, 24.276364, 26.63054, 26.40874]),
  ),
  ...rows(
    { topic, kind: 'derived', source: BY_OTHERS, table: 'helical 30', tolerance: 6e-6, unit: 'in, ° or teeth' },
    helical(30, 0.125, 14.5, 45, [5.303301, 20.08951, 43.20288, 16.66081, 0.55536, 84.85281, 79.84718]),
  ),
  ...rows(
    { topic, kind: 'derived', source: BY_OTHERS, table: 'helical 40', tolerance: 6e-6, unit: 'mm, ° or teeth' },
    helical(40, 1.5, 20, 8, [60.589654, 20.18076, 7.51466, 1354.39649, 33.859912, 41.19094, 41.09598]),
  ),
  ...rows(
    { topic, kind: 'derived', source: BY_OTHERS, table: 'helical 16', tolerance: 6e-6, unit: 'mm, ° or teeth' },
    helical(16, 5, 20, 25, [88.270234, 21.88023, 23.39896, 594.69132, 37.168208, 21.49279, 20.95966]),
  ),
  ...rows({ topic, kind: 'derived', source: BY_OTHERS, tolerance: 2e-5, unit: '°' }, [
    ['lead 22.30092 at 3.310134: helix', 25, () => deg(helixOfLead(3.310134, 22.30092)), 'lead over circumference'],
  ]),
  ...rows({ topic, kind: 'published', source: MOTT, tolerance: 0, unit: 'teeth' }, [
    ['14½° full depth: least teeth', 32, () => Math.ceil(leastTeethOf(teeth(20, 1, 14.5), 1)), 'sine for its square'],
    ['20° full depth: least teeth', 18, () => Math.ceil(leastTeethOf(teeth(20, 1, 20), 1)), 'diameter for radius'],
  ]),
  ...rows(
    {
      topic,
      kind: 'memory',
      source: 'value from memory: a shift of (17 − N)/17 is the workshop rule, the exact one is 1 − N sin² 20°/2',
      tolerance: 6e-5,
      unit: 'of the module',
    },
    [
      ['12 teeth, 20°: least shift', 0.2981, () => leastShift(teeth(12, 1, 20), 1), 'rule of thumb for the formula'],
      ['8 teeth, 20°: least shift', 0.5321, () => leastShift(teeth(8, 1, 20), 1), 'rule of thumb for the formula'],
    ],
  ),
  ...rows(
    {
      topic,
      kind: 'derived',
      source: 'derived: tip thickness, pointed and form diameter by halving on the involute, module 1',
      tolerance: 2e-6,
      unit: 'modules',
    },
    [
      ['12 teeth, 20°: tip thickness', 0.620898, () => land(12, 20, 0), 'thickness at the pitch circle'],
      ['12 teeth, 20°, shift 0.3: tip thickness', 0.435738, () => land(12, 20, 0.3), 'shift without thickness'],
      ['8 teeth, 20°, shift 0.5: tip nearly a point', 0.075941, () => land(8, 20, 0.5), 'pointed tooth missed'],
      ['22 teeth, 14½°: tip thickness', 0.878675, () => land(22, 14.5, 0), 'angle'],
      ['12 teeth, 20°: pointed at', 14.804677, () => pointedDiameter(teeth(12, 1, 20)), 'half thickness'],
      ['8 teeth, 20°, shift 0.5: pointed at', 11.070893, () => pointedDiameter(teeth(8, 1, 20, { v: 0.5 })), 'shift'],
      ['60 teeth, 14½°: pointed at', 64.332403, () => pointedDiameter(teeth(60, 1, 14.5)), 'angle'],
      ['18 teeth, 20°: involute begins at', 16.917285, () => formOf(teeth(18, 1, 20)), 'base circle'],
      ['60 teeth, 14½°: involute begins at', 58.513297, () => formOf(teeth(60, 1, 14.5, { B: 1.157 })), 'base circle'],
      ['30 teeth, 20°, shift −0.2: involute begins at', 28.376753, () => formOf(teeth(30, 1, 20, { v: -0.2 })), 'sign of the shift'],
    ],
  ),
];
