import { classOf, cumulativePitch, singlePitch } from '../../lib/accuracy/iso1328.formulas.ts';
import { bevelPair } from '../../lib/bevel/bevel.sums.ts';
import { halfSpace } from '../../lib/cutters/form-error.formulas.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { barthShare, lewisFactor, pitchLineFtPerMin, powerHp, safeToothLoad } from '../../lib/strength/lewis.formulas.ts';
import { degrees } from '../../lib/values/angle.ts';
import { crossedPair } from '../../lib/worm/crossed.sums.ts';
import { wormEfficiency } from '../../lib/worm/worm.formulas.ts';
import { wormAndWheel } from '../../lib/worm/worm.sums.ts';
import type { Case } from './case.ts';
import { casesOf } from './cases-of.ts';
import { inchesOrMm, pitchOf, systemNamed } from './gear-asks.ts';

function numberOf<K extends string>(answer: Answer<K>, key: K): number {
  const figure = answer.figures[key];
  const { value } = figure;
  if ('length' in value) return inchesOrMm(value.length, figure.unit);
  if ('angle' in value) return value.angle / 3_600_000;
  return 'number' in value ? value.number : Number.NaN;
}

const FULL_20 = systemNamed('full-20');
const OLD = systemNamed('full-14.5');
const bevel = (teeth: number, mate: number, pitch: string, system = FULL_20) =>
  bevelPair({ teeth, mate, pitch: pitchOf(pitch), system, shafts: degrees(90), face: null });

const jindal = bevel(30, 45, 'module 6');
const wentzellBevel = bevel(24, 36, '8 DP', OLD);
const BEVELS = 'Bevel wheels';

const worm = (teeth: number, starts: number, pitch: string, diameter: number, unit: 'in' | 'mm', system = FULL_20) =>
  wormAndWheel({
    teeth,
    starts,
    pitch: pitchOf(pitch),
    system,
    wormPitchDiameter: inchesOrMmBack(diameter, unit),
    hand: 'right',
    embrace: degrees(60),
    friction: 0.05,
  });
const inchesOrMmBack = (size: number, unit: 'in' | 'mm') => Math.round(size * (unit === 'in' ? 25_400_000 : 1_000_000)) as never;

const small = worm(30, 1, 'module 5', 50, 'mm');
const large = worm(52, 1, 'module 8', 80, 'mm');
const inchWorm = worm(60, 1, '6 DP', 2, 'in', OLD);
const WORMS = 'Worms and crossed helicals';

const crossed = crossedPair({
  teeth: 28,
  mate: 84,
  pitch: pitchOf('module 6.3662'),
  system: FULL_20,
  shafts: degrees(55),
  helix: degrees(25),
  hand: 'right',
});

const mott = bevel(16, 48, '8 DP');
const mottWorm = worm(52, 3, '6 DP', 2, 'in');
const kgWorm = worm(30, 2, 'module 3', 44, 'mm');
const recalled = bevel(20, 40, 'module 3');
const screw = crossedPair({
  teeth: 15,
  mate: 24,
  pitch: pitchOf('module 3'),
  system: FULL_20,
  shafts: degrees(50),
  helix: degrees(20),
  hand: 'right',
});

const RAD = Math.PI / 180;
const setOverFactor = (form: number, share: number): number =>
  share * (halfSpace({ N: form, m: 1, a: 14.5 * RAD }, 0) - halfSpace({ N: form, m: 1, a: 14.5 * RAD }, -1 / share));

export const cases: readonly Case[] = [
  ...casesOf(BEVELS, 'published', 'U. C. Jindal, Machine Design, ex 27-3, p. 712', [
    ['30/45 module 6: pitch angle', 33.69, 0.005, '°', () => numberOf(jindal, 'pitchAngle'), 'teeth of the pair exchanged'],
    [
      '30/45 module 6: mate',
      56.31,
      0.005,
      '°',
      () => numberOf(jindal, 'matePitchAngle'),
      'pitch angles that do not add up to the shaft angle',
    ],
    [
      '30/45 module 6: cone distance',
      162.25,
      0.01,
      'mm',
      () => numberOf(jindal, 'coneDistance'),
      'pitch radius over the sine of the other angle',
    ],
    ['30/45 module 6: face angle', 35.808, 0.001, '°', () => numberOf(jindal, 'faceAngle'), 'dedendum angle taken for the face'],
    ['30/45 module 6: root angle', 31.04, 0.005, '°', () => numberOf(jindal, 'rootAngle'), 'addendum angle taken for the root'],
  ]),
  ...casesOf(BEVELS, 'published', 'U. C. Jindal, Machine Design, ex 27-8, p. 714', [
    [
      '40/60 module 6: cone distance, printed 216',
      216.333,
      0.34,
      'mm',
      () => numberOf(bevel(40, 60, 'module 6'), 'coneDistance'),
      'pitch diameter for radius',
    ],
  ]),
  ...casesOf(BEVELS, 'published', 'Wentzell, Machine Design, ex 13.3, p. 286', [
    ['24/36, 8 DP: pitch diameter', 3, 1e-9, 'in', () => numberOf(wentzellBevel, 'pitchDiameter'), 'module for pitch'],
  ]),
  ...casesOf(BEVELS, 'published', 'U. C. Jindal, Machine Design, ex 27-2, p. 712', [
    [
      '20/36: teeth of the back cone',
      22.88,
      0.005,
      'teeth',
      () => numberOf(bevel(20, 36, 'module 4'), 'backConeTeeth'),
      'cosine cubed as for a helix',
    ],
  ]),
  ...casesOf(
    BEVELS,
    'memory',
    'table of set-over factors of the American handbooks: value from memory; it fits forms of its own maker, so that some lines lie off',
    [
      ['No. 1, cone distance 3 faces', 0.254, 0.02, '1/P', () => setOverFactor(135, 3), 'dedendum taken where clearance is even'],
      ['No. 1, 8 faces', 0.264, 0.02, '1/P', () => setOverFactor(135, 8), 'slope of the flank at the tip'],
      ['No. 4, 8 faces', 0.311, 0.02, '1/P', () => setOverFactor(26, 8), 'whole thickness for half'],
      ['No. 8, 3 faces', 0.275, 0.02, '1/P', () => setOverFactor(12, 3), 'straight flank instead of the form'],
      ['No. 8, 8 faces', 0.386, 0.02, '1/P', () => setOverFactor(12, 8), 'straight flank instead of the form'],
    ],
    'set-over factors',
  ),
  ...casesOf(WORMS, 'published', 'U. C. Jindal, Machine Design, ex 28-1, p. 726', [
    ['1/30/10/5: centre', 100, 1e-6, 'mm', () => numberOf(small, 'centre'), 'diameters added, not halved'],
    ['1/30/10/5: wheel', 150, 1e-6, 'mm', () => numberOf(small, 'wheelPitchDiameter'), 'normal for axial module'],
    ['1/30/10/5: ratio', 30, 1e-9, '', () => numberOf(small, 'ratio'), 'ratio by diameters'],
  ]),
  ...casesOf(WORMS, 'published', 'U. C. Jindal, Machine Design, ex 28-2, p. 726', [
    ['1/52/10/8: centre', 248, 1e-6, 'mm', () => numberOf(large, 'centre'), 'outside diameters taken'],
    ['1/52/10/8: axial pitch', 25.13, 0.005, 'mm', () => numberOf(large, 'axialPitch'), 'normal pitch'],
    ['1/52/10/8: worm tip', 96, 1e-6, 'mm', () => numberOf(large, 'wormOutside'), 'one addendum only'],
  ]),
  ...casesOf(WORMS, 'published', 'Wentzell, Machine Design, ex 13.4, p. 288', [
    ['60 teeth, 6 DP, worm 2 in: wheel', 10, 1e-6, 'in', () => numberOf(inchWorm, 'wheelPitchDiameter'), 'throat for pitch diameter'],
    ['60 teeth, 6 DP: axial pitch', 0.52, 0.005, 'in', () => numberOf(inchWorm, 'axialPitch'), '1/P for the pitch'],
    ['60 teeth, 6 DP: lead angle', 4.76, 0.005, '°', () => numberOf(inchWorm, 'leadAngle'), 'lead over diameter without π'],
    ['60 teeth, 6 DP: centre', 6, 1e-6, 'in', () => numberOf(inchWorm, 'centre'), 'outside diameters taken'],
    ['60 teeth, 1 start: ratio', 60, 1e-9, '', () => numberOf(inchWorm, 'ratio'), 'ratio by diameters'],
  ]),
  ...casesOf(WORMS, 'published', 'Wentzell, Machine Design, ex 13.5, p. 292', [
    ['60 teeth, 6 DP: normal pitch', 0.52, 0.005, 'in', () => numberOf(inchWorm, 'normalPitch'), 'divided by the cosine'],
  ]),
  ...casesOf(WORMS, 'published', 'Wentzell, Machine Design, ex 13.6, p. 294', [
    ['lead angle 4.77°, friction .03', 0.73, 0.005, '', () => wormEfficiency(4.77 * RAD, 14.5 * RAD, 0.03), 'friction angle left out'],
  ]),
  ...casesOf(WORMS, 'published', 'U. C. Jindal, Machine Design, ex 28-4, p. 728', [
    [
      '2 starts, q 8, friction .032: kW out of 1.2',
      1.047,
      0.0005,
      'kW',
      () => 1.2 * wormEfficiency(Math.atan(2 / 8), 20 * RAD, 0.032),
      'pressure angle left out',
    ],
  ]),
  ...casesOf(WORMS, 'published', 'U. C. Jindal, Machine Design, ex 28-5, p. 729', [
    [
      '2 starts, q 10, friction .028',
      0.865,
      0.0005,
      '',
      () => wormEfficiency(Math.atan(2 / 10), 20 * RAD, 0.028),
      'tangent and cotangent exchanged',
    ],
  ]),
  ...casesOf(
    WORMS,
    'derived',
    'derived: both pitch diameters by hand from the printed givens of a textbook exercise (20 mm normal pitch, shafts 55°, 25°)',
    [
      [
        '28/84, pn 20 mm, 55°, 25°: centre',
        407.085,
        0.001,
        'mm',
        () => numberOf(crossed, 'centre'),
        'helix of the mate added instead of taken off',
      ],
    ],
  ),
  ...casesOf(BEVELS, 'published', 'Machine Elements in Mechanical Design, 4th ed., example 8-6, p. 337', [
    ['16/48, 8 P: pinion pitch diameter', 2, 1e-9, 'in', () => numberOf(mott, 'pitchDiameter'), 'pitch taken at the middle of the face'],
    ['16/48, 8 P: gear pitch diameter', 6, 1e-9, 'in', () => numberOf(bevel(48, 16, '8 DP'), 'pitchDiameter'), 'pinion and gear exchanged'],
    ['16/48: pinion pitch angle', 18.43, 0.006, '°', () => numberOf(mott, 'pitchAngle'), 'tangent upside down'],
    ['16/48: gear pitch angle', 71.57, 0.006, '°', () => numberOf(mott, 'matePitchAngle'), 'both angles alike'],
    ['16/48, 8 P: outer cone distance', 3.162, 0.0005, 'in', () => numberOf(mott, 'coneDistance'), 'mean cone distance taken'],
    ['16/48, 8 P: greatest face, a third of it', 1.054, 0.0005, 'in', () => numberOf(mott, 'face'), 'a third of the pitch diameter'],
  ]),
  ...casesOf(WORMS, 'published', 'Machine Elements in Mechanical Design, 4th ed., example 8-4, p. 343', [
    ['52 teeth, 3 threads, 6 P, worm 2: axial pitch', 0.5236, 5e-5, 'in', () => numberOf(mottWorm, 'axialPitch'), 'normal pitch'],
    ['52 teeth, 3 threads, 6 P: lead', 1.5708, 5e-5, 'in', () => numberOf(mottWorm, 'lead'), 'one thread taken for three'],
    [
      '52 teeth, 3 threads, 6 P, worm 2: lead angle',
      14.04,
      0.005,
      '°',
      () => numberOf(mottWorm, 'leadAngle'),
      'outside for pitch diameter',
    ],
    ['52 teeth, 6 P: gear', 8.667, 0.0005, 'in', () => numberOf(mottWorm, 'wheelPitchDiameter'), 'throat for pitch diameter'],
    ['52 teeth, 6 P, worm 2: centre', 5.333, 0.0005, 'in', () => numberOf(mottWorm, 'centre'), 'diameters added, not halved'],
    ['52 teeth, 3 threads: ratio', 17.333, 0.0005, '', () => numberOf(mottWorm, 'ratio'), 'threads left out'],
  ]),
  ...casesOf(
    WORMS,
    'published',
    'Worksheet of a worm set after Niemann and DIN, 2 starts, 30 teeth, axial module 3, worm 44 (scribd document 418425143)',
    [
      ['2/30, m 3, worm 44: lead', 18.8495559, 5e-6, 'mm', () => numberOf(kgWorm, 'lead'), 'pitch for lead'],
      ['2/30, m 3, worm 44: lead angle', 7.765166, 5e-7, '°', () => numberOf(kgWorm, 'leadAngle'), 'lead over the outside'],
      ['2/30, m 3, worm 44: throat', 96, 1e-6, 'mm', () => numberOf(kgWorm, 'throatDiameter'), 'one addendum only'],
      ['2/30, m 3, worm 44: throat radius', 19, 1e-6, 'mm', () => numberOf(kgWorm, 'throatRadius'), 'radius of the worm’s outside'],
      ['2/30, m 3, worm 44: worm root', 36.5, 1e-6, 'mm', () => numberOf(kgWorm, 'wormRoot'), 'dedendum of 1 for 1.25'],
      ['2/30, m 3, worm 44: worm outside', 50, 1e-6, 'mm', () => numberOf(kgWorm, 'wormOutside'), 'normal module in the addendum'],
      ['2/30, m 3, worm 44: centre', 67, 1e-6, 'mm', () => numberOf(kgWorm, 'centre'), 'throat in the centre distance'],
      [
        '2/30, m 3, worm 44: normal module, as normal pitch over π',
        2.9724905,
        5e-7,
        'mm',
        () => numberOf(kgWorm, 'normalPitch') / Math.PI,
        'divided by the cosine',
      ],
    ],
  ),
  ...casesOf(BEVELS, 'memory', 'Japanese gear handbook, standard straight bevel pair, module 3, 20 and 40 teeth, 90°: value from memory', [
    ['cone distance', 67.08204, 5e-6, 'mm', () => numberOf(recalled, 'coneDistance'), 'pitch radius over the cosine'],
    ['face angle of the pinion', 29.12569, 5e-6, '°', () => numberOf(recalled, 'faceAngle'), 'face and root angles exchanged'],
    ['root angle of the pinion', 23.36545, 5e-6, '°', () => numberOf(recalled, 'rootAngle'), 'addendum under the root'],
    ['outside diameter of the pinion', 65.3666, 5e-5, 'mm', () => numberOf(recalled, 'outsideDiameter'), 'full two addenda added'],
    ['outside diameter of the gear', 122.6833, 5e-5, 'mm', () => numberOf(recalled, 'mateOutside'), 'pinion’s angle for the gear'],
    ['apex to crown, pinion', 58.6584, 5e-5, 'mm', () => numberOf(recalled, 'apexToCrown'), 'cone distance for its run along the axis'],
  ]),
  ...casesOf(WORMS, 'memory', 'SDP/SI, Elements of Metric Gear Technology, screw gears without shift, module 3: value from memory', [
    ['15/24, 20° and 30°: pinion', 47.888, 0.0005, 'mm', () => numberOf(screw, 'pitchDiameter1'), 'helix of the mate taken'],
    ['15/24, 20° and 30°: gear', 83.1384, 5e-5, 'mm', () => numberOf(screw, 'pitchDiameter2'), 'divided by the sine'],
    ['15/24, shafts at 50°: the mate’s helix', 30, 1e-6, '°', () => numberOf(screw, 'mateHelix'), 'hands confused'],
  ]),
  ...casesOf(
    'Tooth strength',
    'published',
    'Budynas and Nisbett, Shigley’s Mechanical Engineering Design, table 14-2, as quoted in a student’s program',
    (
      [
        [28, 0.353],
        [30, 0.359],
        [34, 0.371],
        [38, 0.384],
        [43, 0.397],
        [50, 0.409],
        [60, 0.422],
        [75, 0.435],
        [100, 0.447],
        [150, 0.46],
        [300, 0.472],
        [400, 0.48],
      ] as const
    ).map(
      ([N, Y]) =>
        [`Y of ${N} teeth, 20°`, Y, 1e-9, '', () => lewisFactor('20', N), 'a row left out: its neighbours in proportion'] as const,
    ),
    'Shigley 14-2',
  ),
  ...casesOf('Tooth strength', 'published', 'Wentzell, Machine Design, ex 12.2 to 12.7 and 13.2', [
    ['2.5 in at 1725', 1129.01, 0.005, 'ft/min', () => pitchLineFtPerMin(2.5, 1725), 'radius for diameter'],
    ['47500, face 1, Y .320, 8 P, standing', 1900, 1e-6, 'lb', () => safeToothLoad(47_500, 1, 0.32, 8, 0), 'π of the older y'],
    ['44000, face 1, Y .421, 8 P', 2315.5, 1e-6, 'lb', () => safeToothLoad(44_000, 1, 0.421, 8, 0), 'pitch upside down'],
    ['146 lb at 1129 ft/min, dynamic', 420.72, 0.01, 'lb', () => 146 / barthShare(1129), '1200 for 600'],
    ['24 T, 12 P, .75, Y .302, 27500 standing', 519.06, 0.005, 'lb', () => safeToothLoad(27_500, 0.75, 0.302, 12, 0), 'face left out'],
    [
      'the same at 1800 rev/min',
      201.91,
      0.005,
      'lb',
      () => safeToothLoad(27_500, 0.75, 0.302, 12, pitchLineFtPerMin(2, 1800)),
      'speed in rev/min',
    ],
    ['the same: power', 5.77, 0.005, 'hp', () => powerHp(201.907, 942.478), '550 for 33000'],
    ['24 T, 16 P, Y .337, 47500', 1000.47, 0.005, 'lb', () => safeToothLoad(47_500, 1, 0.337, 16, 0), 'Y of another angle'],
    ['helical: 283.064 lb at 235.6 ft/min', 203.25, 0.005, 'lb', () => 283.064 * barthShare(235.619), 'share upside down'],
    ['Y of 24 teeth, 14½°', 0.302, 1e-9, '', () => lewisFactor('14.5', 24), 'row above taken'],
    ['Y of 48 teeth, 14½°', 0.344, 0.0005, '', () => lewisFactor('14.5', 48), 'nearest row instead of in proportion'],
    ['Y of 24 teeth, 20°', 0.337, 1e-9, '', () => lewisFactor('20', 24), 'table of 14½°'],
    ['Y of 20 teeth, 20°: the book has .320, other tables .322', 0.32, 0.0025, '', () => lewisFactor('20', 20), 'table of 14½°'],
  ]),
  ...casesOf(
    'Tooth strength',
    'published',
    'U. C. Jindal, Machine Design, ch. 25 to 27, factors as used; its table runs .001 below the American one',
    [
      ['Y of 18, 20°', 0.308, 0.0015, '', () => lewisFactor('20', 18), 'stub table'],
      ['Y of 22, 20°', 0.33, 0.0015, '', () => lewisFactor('20', 22), 'stub table'],
      ['Y of 27, 20°', 0.348, 0.002, '', () => lewisFactor('20', 27), 'nearest row instead of in proportion'],
      ['Y of 30, 20°', 0.358, 0.0015, '', () => lewisFactor('20', 30), 'stub table'],
      ['Y of 32, 20°', 0.364, 0.002, '', () => lewisFactor('20', 32), 'nearest row instead of in proportion'],
    ],
    'Jindal Y',
  ),
  ...casesOf('Accuracy', 'memory', 'ISO 1328-1:2013 formulas: value from memory', [
    [
      'd 120, m 3, class 7: single pitch',
      12.64,
      0.005,
      'µm',
      () => singlePitch({ d: 120, mn: 3, b: 30 }, 7),
      'class step of 2 instead of √2',
    ],
    ['d 120, m 3, class 7: cumulative', 40.73, 0.02, 'µm', () => cumulativePitch({ d: 120, mn: 3, b: 30 }, 7), 'root of d left out'],
    [
      '12 µm of single pitch there',
      7,
      0,
      'class',
      () => classOf(12, (grade) => singlePitch({ d: 120, mn: 3, b: 30 }, grade)) ?? Number.NaN,
      'class below taken',
    ],
  ]),
];
