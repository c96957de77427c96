import { backlashAnswer } from '../../lib/gears/backlash.sums.ts';
import { chordalAnswer } from '../../lib/gears/chordal.sums.ts';
import { depthToDial } from '../../lib/gears/depth.sums.ts';
import { stillToFeed } from '../../lib/gears/feed.sums.ts';
import type { Pitch } from '../../lib/gears/gear.ts';
import { inv } from '../../lib/gears/involute.formulas.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { type SpanAnswer, spanAnswer } from '../../lib/gears/span.sums.ts';
import { chordalAddendum, chordalThickness, leastTeeth, span, virtualTeeth } from '../../lib/gears/spur.formulas.ts';
import { type BlankKey, gearBlank } from '../../lib/gears/spur.sums.ts';
import { doublePitchStub, systemByKey } from '../../lib/gears/systems.ts';
import { moduleOf } from '../../lib/gears/tooth.ts';
import type { Wheel } from '../../lib/gears/wheel.ts';
import { inches, type Length, toInches, toMm } from '../../lib/values/length.ts';
import type { Case, CaseKind } from './case.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;

function pitch(text: string): Pitch {
  const typed = readPitch(text);
  if (!typed.ok) throw new Error(typed.problem);
  return typed.value;
}

function wheel(teeth: number, pitchText: string, systemKey: string): Wheel {
  const named = systemByKey(systemKey);
  if (!named) throw new Error(`no system ${systemKey}`);
  return { teeth, pitch: pitch(pitchText), system: named.system };
}

const lengthOf = (figure: { readonly value: object } | undefined): Length => {
  if (!figure || !('length' in figure.value)) throw new Error('no length');
  return figure.value.length as Length;
};
const blankIn = (of: Wheel, key: BlankKey): number => toInches(lengthOf(gearBlank(of).figures[key]));
const blankMm = (of: Wheel, key: BlankKey): number => toMm(lengthOf(gearBlank(of).figures[key]));

type Row = readonly [given: string, expected: number, actual: () => number, catches: string];
type Head = Pick<Case, 'kind' | 'source' | 'tolerance' | 'unit'> & { readonly topic?: string; readonly table?: string };

const rows = ({ topic = 'Gear sizes', ...head }: Head, of: readonly Row[]): readonly Case[] =>
  of.map(([given, expected, actual, catches]) => ({ topic, ...head, given, expected, actual, catches }));

const PIC = 'PIC Design, Gear Pitch Equivalents (1998), table 7.2';
const PIC_METRIC = 'PIC Design, Gear Pitch Equivalents (1998), table 7.3';
const PAIR = 'Machine Elements in Mechanical Design, 4th ed., worked pair pp. 319-320';
const NAVY4 = 'US Navy, Machinery Repairman (14345), appendix IV';
const NAVY3 = 'US Navy, Machinery Repairman (14345), appendix III';
const DATHAN = 'Dathan Tool and Gauge Handbook, table Circular Pitch';
const BROWN_SHARPE = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152';
const SDP = 'SDP/SI, Elements of Metric Gear Technology, T-81/T-82, tables 10-1 to 10-4';
const BEVAN = 'Bevan, The Theory of Machines, worked examples as re-keyed in FOSSEE Python-Textbook-Companions';
const HANDBOOK = 'Machinery’s Handbook, 31st ed., p. 2299, equivalent pitches';
const FROM_MEMORY = 'value from memory';

const fine = (P: number): Wheel => wheel(24, `${P} DP`, 'fine-20');
const old20 = wheel(24, '20 DP', 'full-14.5');

const picFine: readonly Case[] = [
  ...rows({ kind: 'published', source: PIC, table: PIC, tolerance: 0.00006, unit: 'in' }, [
    ['dedendum, 24 DP fine', 0.052, () => blankIn(fine(24), 'dedendum'), '0.002 in left out'],
    ['dedendum, 32 DP fine', 0.0395, () => blankIn(fine(32), 'dedendum'), '1.25/P in place of 1.2/P + 0.002'],
    ['dedendum, 48 DP fine', 0.027, () => blankIn(fine(48), 'dedendum'), '0.002 divided by P'],
    ['dedendum, 64 DP fine', 0.0208, () => blankIn(fine(64), 'dedendum'), '0.002 mm for inches'],
    ['dedendum, 20 DP stands as 1.157/P here', 0.0579, () => blankIn(old20, 'dedendum'), 'the fine rule forced on 20 DP'],
  ]),
  ...rows({ kind: 'published', source: PIC, table: PIC, tolerance: 0.00006, unit: 'in' }, [
    ['whole depth, 20 DP, 14½°', 0.1079, () => blankIn(old20, 'wholeDepth'), '2.25/P for 2.157/P'],
    ['whole depth, 24 DP fine', 0.0937, () => blankIn(fine(24), 'wholeDepth'), '0.002 in counted twice'],
    ['whole depth, 48 DP fine', 0.0478, () => blankIn(fine(48), 'wholeDepth'), '0.002 in left out'],
    ['whole depth, 72 DP fine', 0.0326, () => blankIn(fine(72), 'wholeDepth'), 'addendum doubled'],
    ['whole depth, 80 DP fine', 0.0295, () => blankIn(fine(80), 'wholeDepth'), 'whole and working depth mixed'],
  ]),
  ...rows({ kind: 'published', source: PIC, table: PIC, tolerance: 0.00006, unit: 'in' }, [
    ['circular pitch, 24 DP', 0.1309, () => blankIn(fine(24), 'circularPitch'), 'P and π/P mixed'],
    ['circular pitch, 32 DP', 0.0982, () => blankIn(fine(32), 'circularPitch'), 'thickness for pitch'],
    ['circular pitch, 72 DP', 0.0436, () => blankIn(fine(72), 'circularPitch'), '3.14 for π'],
  ]),
];

const sixth = (m: string): Wheel => wheel(30, `module ${m}`, 'module-7/6');
const picMetric: readonly Case[] = [
  ...rows({ kind: 'published', source: PIC_METRIC, table: PIC_METRIC, tolerance: 0.0011, unit: 'mm' }, [
    ['dedendum, module 0.25, one sixth clearance', 0.292, () => blankMm(sixth('0.25'), 'dedendum'), '1.157 for 7/6'],
    ['whole depth, module 0.3, one sixth clearance', 0.65, () => blankMm(sixth('0.3'), 'wholeDepth'), '2.25 for 13/6'],
    ['dedendum, module 1, one sixth clearance', 1.166, () => blankMm(sixth('1'), 'dedendum'), '1.16 as the column’s head has it'],
    ['whole depth, module 1, one sixth clearance', 2.167, () => blankMm(sixth('1'), 'wholeDepth'), 'inches for millimetres'],
    ['circular pitch, module 0.7', 2.199, () => blankMm(sixth('0.7'), 'circularPitch'), 'module and DP mixed'],
  ]),
];

const pinion = wheel(11, '12 DP', 'full-20');
const mate = wheel(18, '12 DP', 'full-20');
const pair: readonly Case[] = [
  ...rows({ kind: 'published', source: PAIR, table: PAIR, tolerance: 0.00006, unit: 'in' }, [
    ['outside, 11 teeth, 12 DP', 1.0833, () => blankIn(pinion, 'outsideDiameter'), 'one addendum for two'],
    ['root, 11 teeth, 12 DP, 1.25/P', 0.7083, () => blankIn(pinion, 'rootDiameter'), '1.157 for 1.25'],
    ['root, 18 teeth, 12 DP, 1.25/P', 1.2917, () => blankIn(mate, 'rootDiameter'), 'one dedendum for two'],
    ['base, 11 teeth, 20°', 0.8614, () => blankIn(pinion, 'baseDiameter'), 'sin for cos'],
    ['base, 18 teeth, 20°', 1.4095, () => blankIn(mate, 'baseDiameter'), 'angle in degrees for radians'],
  ]),
  ...rows({ kind: 'published', source: PAIR, table: PAIR, tolerance: 0.00006, unit: 'in' }, [
    ['dedendum, 12 DP, 1.25/P', 0.1042, () => blankIn(pinion, 'dedendum'), '1.157 for 1.25'],
    ['clearance, 12 DP', 0.0208, () => blankIn(pinion, 'clearance'), 'clearance and dedendum mixed'],
    ['whole depth, 12 DP', 0.1875, () => blankIn(pinion, 'wholeDepth'), 'working depth for whole depth'],
    ['thickness, 12 DP', 0.1309, () => blankIn(pinion, 'circularThickness'), 'pitch for thickness'],
    ['circular pitch, 12 DP', 0.2618, () => blankIn(pinion, 'circularPitch'), 'thickness for pitch'],
  ]),
  ...rows({ kind: 'published', source: PAIR, table: PAIR, tolerance: 0.00006, unit: 'in' }, [
    ['pitch diameter, 11 teeth, 12 DP', 0.9167, () => blankIn(pinion, 'pitchDiameter'), 'N + 2 for N'],
    [
      'addendum, 12 DP (printed 0.833 on p. 319, 0.0833 further down)',
      0.0833,
      () => blankIn(pinion, 'addendum'),
      'the misprint ten times too big',
    ],
  ]),
];

const unit14 = wheel(30, '1 DP', 'full-14.5');
const constants: readonly Case[] = [
  ...rows({ kind: 'published', source: NAVY4, table: NAVY4, tolerance: 0.0001, unit: 'in' }, [
    ['1 DP, 14½°: thickness', 1.5708, () => blankIn(unit14, 'circularThickness'), 'thickness and pitch mixed'],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as the source prints it
    ['1 DP, 14½°: circular pitch', 3.1416, () => blankIn(unit14, 'circularPitch'), 'P/π for π/P'],
    ['1 DP, 14½°: clearance (printed 0.15708; 0.157 in use)', 0.15708, () => blankIn(unit14, 'clearance'), '0.25 for 0.157'],
    ['1 DP, 14½°: dedendum (also printed 1.1570)', 1.157, () => blankIn(unit14, 'dedendum'), '1.25 for 1.157'],
  ]),
  ...rows({ kind: 'published', source: NAVY3, table: NAVY3, tolerance: 0.00006, unit: 'in' }, [
    ['1 in circular pitch: addendum', 0.3183, () => blankIn(wheel(30, '1 CP', 'full-14.5'), 'addendum'), 'p for p/π'],
    ['1 in circular pitch: whole depth', 0.6866, () => blankIn(wheel(30, '1 CP', 'full-14.5'), 'wholeDepth'), 'p × 2.157'],
    ['1 in circular pitch: clearance', 0.05, () => blankIn(wheel(30, '1 CP', 'full-14.5'), 'clearance'), '0.25 for 0.157'],
  ]),
  ...rows({ kind: 'published', source: DATHAN, table: DATHAN, tolerance: 0.00006, unit: 'in' }, [
    ['1/16 in CP: addendum', 0.0199, () => blankIn(wheel(40, '1/16 CP', 'full-20'), 'addendum'), 'CP read as DP'],
    ['1/16 in CP: whole depth', 0.0448, () => blankIn(wheel(40, '1/16 CP', 'full-20'), 'wholeDepth'), '2.157 for 2.25'],
    ['1/8 in CP: dedendum', 0.0497, () => blankIn(wheel(40, '1/8 CP', 'full-20'), 'dedendum'), 'addendum for dedendum'],
    [
      '1/8 in CP: thickness (printed 0.6250: ten times too big)',
      0.0625,
      () => blankIn(wheel(40, '0.125 CP', 'full-20'), 'circularThickness'),
      'the misprint',
    ],
    ['3/16 in CP: thickness', 0.0937, () => blankIn(wheel(40, '3/16 CP', 'full-20'), 'circularThickness'), 'fraction read as 3 and 16'],
  ]),
];

const bevan = (key: BlankKey, of: Wheel): number => blankIn(of, key);
const examples: readonly Case[] = [
  ...rows({ kind: 'published', source: `${BEVAN}, ch. 10, ex. 1-3`, tolerance: 0.0006, unit: 'in' }, [
    ['48 teeth, 3/4 in CP: pitch diameter', 11.459, () => bevan('pitchDiameter', wheel(48, '3/4 CP', 'full-14.5')), 'π forgotten'],
    ['48 teeth, 4 DP: pitch diameter', 12, () => bevan('pitchDiameter', wheel(48, '4 DP', 'full-14.5')), 'N × P for N ÷ P'],
    ['48 teeth, 4 DP: circular pitch', 0.7854, () => bevan('circularPitch', wheel(48, '4 DP', 'full-14.5')), 'thickness for pitch'],
    [
      '48 teeth, module 6: circular pitch in inches',
      0.7421,
      () => bevan('circularPitch', wheel(48, 'module 6', 'module-1.25')),
      'module taken as inches',
    ],
  ]),
  ...rows(
    {
      kind: 'published',
      source: 'Jindal, Machine Design, ex. 25-1, p. 669, as re-keyed in FOSSEE Python-Textbook-Companions',
      tolerance: 0.0005,
      unit: 'mm',
    },
    [
      ['25 teeth, module 5: pitch diameter', 125, () => blankMm(wheel(25, 'M5', 'module-1.25'), 'pitchDiameter'), 'N + 2 for N'],
      ['60 teeth, module 5: pitch diameter', 300, () => blankMm(wheel(60, '5 mod', 'module-1.25'), 'pitchDiameter'), 'N ÷ m'],
      ['module 5: dedendum', 6.25, () => blankMm(wheel(60, 'm 5', 'module-1.25'), 'dedendum'), '1.157 for 1.25'],
      ['module 5: clearance', 1.25, () => blankMm(wheel(60, 'm 5', 'module-1.25'), 'clearance'), 'one sixth for a quarter'],
    ],
  ),
  ...rows(
    {
      kind: 'published',
      source: 'Wentzell, Machine Design, ex. 11.3, p. 231, as re-keyed in FOSSEE Python-Textbook-Companions',
      tolerance: 0.0051,
      unit: 'in',
    },
    [
      ['16 teeth, 8 DP: pitch diameter', 2, () => blankIn(wheel(16, '8 DP', 'full-14.5'), 'pitchDiameter'), 'radius for diameter'],
      ['8 DP: circular pitch', 0.39, () => blankIn(wheel(16, 'DP 8', 'full-14.5'), 'circularPitch'), 'thickness for pitch'],
    ],
  ),
  ...rows({ kind: 'published', source: 'Hobby machinist thread 90313, p. 11 (lathe gears of module 1)', tolerance: 0.0005, unit: 'mm' }, [
    ['80 teeth, module 1: outside', 82, () => blankMm(wheel(80, 'module 1', 'module-1.25'), 'outsideDiameter'), 'one addendum for two'],
    ['80 teeth, module 1: whole depth', 2.25, () => blankMm(wheel(80, 'module 1', 'module-1.25'), 'wholeDepth'), '2.157 for 2.25'],
  ]),
  ...rows({ kind: 'common practice', source: 'common practice, no source', tolerance: 0.00005, unit: 'in' }, [
    ['20 teeth, 10 DP, 14½°: outside', 2.2, () => blankIn(wheel(20, '10 DP', 'full-14.5'), 'outsideDiameter'), 'N for N + 2'],
    ['24 teeth, 10 DP, 14½°: outside', 2.6, () => blankIn(wheel(24, '10 DP', 'full-14.5'), 'outsideDiameter'), 'N + 1 for N + 2'],
    [
      '26 teeth, 10 DP, 14½°: outside',
      2.8,
      () => blankIn(wheel(26, '10 pitch', 'full-14.5'), 'outsideDiameter'),
      'pitch not read from trade words',
    ],
  ]),
];

const equivalents: readonly Case[] = [
  ...rows({ kind: 'published', source: HANDBOOK, table: HANDBOOK, tolerance: 0.00006, unit: 'in' }, [
    ['13 DP: circular pitch', 0.2417, () => blankIn(wheel(30, '13 DP', 'full-14.5'), 'circularPitch'), 'P and p mixed'],
    [
      'module 25.4/16 (1.5875): circular pitch in inches',
      0.1963,
      () => blankIn(wheel(30, 'module 1.5875', 'module-1.25'), 'circularPitch'),
      '25 for 25.4',
    ],
    ['19 DP: circular pitch', 0.1653, () => blankIn(wheel(30, '19 DP', 'full-14.5'), 'circularPitch'), '22/7 for π'],
    ['38 DP: module in mm', 0.6684, () => moduleOf(pitch('38 DP')) * 25.4, '25 for 25.4'],
    ['44 DP: module in mm', 0.5773, () => moduleOf(pitch('44 DP')) * 25.4, 'P for 1/P'],
  ]),
];

const chord = (of: Wheel, key: 'chordalThickness' | 'chordalAddendum'): number => toInches(lengthOf(chordalAnswer(of).figures[key]));
const chordMm = (of: Wheel, key: 'chordalThickness' | 'chordalAddendum'): number => toMm(lengthOf(chordalAnswer(of).figures[key]));
const [t23, t23at5, t15] = [wheel(23, '1 DP', 'full-14.5'), wheel(23, '5 DP', 'full-14.5'), wheel(15, '1 DP', 'full-14.5')];
const chords: readonly Case[] = [
  ...rows({ topic: 'Chordal thickness', kind: 'published', source: BROWN_SHARPE, table: BROWN_SHARPE, tolerance: 0.00006, unit: 'in' }, [
    ['23 teeth, 1 DP: thickness', 1.5696, () => chord(t23, 'chordalThickness'), 'arc for chord'],
    ['23 teeth, 1 DP: addendum', 1.0268, () => chord(t23, 'chordalAddendum'), 'plain addendum'],
    ['23 teeth, 5 DP: thickness', 0.3139, () => chord(t23at5, 'chordalThickness'), 'not scaled by P'],
    ['15 teeth, 1 DP: thickness', 1.5679, () => chord(t15, 'chordalThickness'), '180/N for 90/N'],
    ['15 teeth, 1 DP: addendum', 1.0411, () => chord(t15, 'chordalAddendum'), 'whole diameter for radius'],
  ]),
  ...rows({ topic: 'Chordal thickness', kind: 'published', source: SDP, tolerance: 0.00006, unit: 'mm' }, [
    [
      'module 10, 12 teeth, arc 17.8918 (shifted +0.3): chord',
      17.8256,
      () => chordalThickness(120, 17.8918),
      'standard arc forced on a shifted tooth',
    ],
    [
      'module 10, 12 teeth, arc 17.8918, addendum 13: chordal addendum',
      13.6657,
      () => chordalAddendum(120, 17.8918, 13),
      'standard addendum forced',
    ],
    ['module 3 rack: thickness', 4.7124, () => blankMm(wheel(30, 'M3', 'module-1.25'), 'circularThickness'), 'whole pitch'],
  ]),
  ...rows(
    {
      topic: 'Chordal thickness',
      kind: 'published',
      source: 'Sharma, A Textbook of Production Engineering, ex. 16.1, p. 648, as re-keyed in FOSSEE Python-Textbook-Companions',
      tolerance: 0.0006,
      unit: 'mm',
    },
    [
      [
        '34 teeth, module 5: thickness',
        7.851,
        () => chordMm(wheel(34, 'module 5', 'module-1.25'), 'chordalThickness'),
        'inch figures for a module',
      ],
      [
        '34 teeth, module 5: chordal addendum',
        5.091,
        () => chordMm(wheel(34, 'module 5', 'module-1.25'), 'chordalAddendum'),
        'plain addendum',
      ],
    ],
  ),
];

const undercut: readonly Case[] = rows(
  {
    topic: 'Undercut and virtual count',
    kind: 'published',
    source: 'Machine Elements in Mechanical Design, 4th ed., p. 320',
    tolerance: 0,
    unit: 'teeth',
  },
  [
    ['least teeth, 14½° full depth', 32, () => Math.ceil(leastTeeth(1, rad(14.5))), 'sin for sin²'],
    ['least teeth, 20° full depth (as also reprinted elsewhere)', 18, () => Math.ceil(leastTeeth(1, rad(20))), 'dedendum for addendum'],
  ],
);
const virtual: readonly Case[] = rows(
  { topic: 'Undercut and virtual count', kind: 'published', source: SDP, tolerance: 0.00006, unit: 'teeth' },
  [
    ['16 teeth, helix 25°: virtual count', 21.4928, () => virtualTeeth(16, rad(25)), 'cos² for cos³'],
    ['20 teeth, helix 22.5°: virtual count', 25.362, () => virtualTeeth(20, rad(22.5)), 'N cos³ for N / cos³'],
  ],
);
const bevanRack: readonly Case[] = rows(
  { topic: 'Undercut and virtual count', kind: 'published', source: `${BEVAN}, ch. 10, ex. 4`, tolerance: 0, unit: 'teeth' },
  [['20°, addendum 1 module, with a rack', 18, () => Math.ceil(leastTeeth(1, rad(20))), 'rounded down']],
);

const WORKSHEET = 'Gear Generating Profile Shift Calculations (worksheet after ISO 21771:2007)';
const involute: readonly Case[] = rows({ topic: 'Involute function', kind: 'published', source: WORKSHEET, tolerance: 1e-10, unit: '' }, [
  ['inv 21.2990642859°', 0.01812609488, () => inv(rad(21.2990642859)), 'degrees for radians'],
  ['inv 23.8707609654°', 0.0259052382, () => inv(rad(23.8707609654)), 'a − tan a'],
]);

const stub57 = { teeth: 30, ...doublePitchStub(5, 7) };
const spans = (N: number, pitchText: string, system: string, k: number): number => {
  const of = wheel(N, pitchText, system);
  return span({ N, m: moduleOf(of.pitch), a: rad(system === 'full-14.5' ? 14.5 : 20) }, k);
};
const memory: readonly Case[] = [
  ...rows({ kind: 'memory', source: FROM_MEMORY, tolerance: 0.00006, unit: 'in' }, [
    ['double-pitch stub 5/7, 30 teeth: outside', 6.2857, () => blankIn(stub57, 'outsideDiameter'), 'addendum by 5'],
    ['double-pitch stub 5/7: addendum', 0.1429, () => blankIn(stub57, 'addendum'), 'addendum by 5'],
    ['double-pitch stub 5/7: whole depth', 0.3214, () => blankIn(stub57, 'wholeDepth'), 'dedendum by 5'],
    ['double-pitch stub 5/7: thickness', 0.3142, () => blankIn(stub57, 'circularThickness'), 'thickness by 7'],
    ['20° stub, 1 DP: whole depth', 1.8, () => blankIn(wheel(30, '1 DP', 'stub-20'), 'wholeDepth'), '1.25 below the pitch line'],
  ]),
  ...rows({ topic: 'Undercut and virtual count', kind: 'memory', source: FROM_MEMORY, tolerance: 0, unit: 'teeth' }, [
    ['least teeth, 20° stub', 14, () => Math.ceil(leastTeeth(0.8, rad(20))), 'addendum 1 for 0.8'],
  ]),
  ...rows({ kind: 'memory', source: FROM_MEMORY, tolerance: 0.0005, unit: 'mm' }, [
    ['module 3, 12 teeth, 1.25: root', 28.5, () => blankMm(wheel(12, 'M3', 'module-1.25'), 'rootDiameter'), 'one dedendum'],
    ['module 3, 24 teeth: outside', 78, () => blankMm(wheel(24, 'M3', 'module-1.25'), 'outsideDiameter'), 'one addendum'],
    ['module 3, 12 teeth, 20°: base', 33.829, () => blankMm(wheel(12, 'M3', 'module-1.25'), 'baseDiameter'), 'tan for cos'],
  ]),
  ...rows(
    {
      topic: 'Span',
      kind: 'memory',
      source: `${FROM_MEMORY}, less the shift that the remembered 32.8266 holds (2 × 0.4 × 3 × sin 20°)`,
      tolerance: 0.0001,
      unit: 'mm',
    },
    [['module 3, 20°, 24 teeth over 4, no shift', 32.0058, () => spans(24, 'M3', 'module-1.25', 4), 'shift kept, or k for k − ½']],
  ),
];

const DERIVED: CaseKind = 'derived';
const W_OF = 'derived: worked apart by hand from W = cos a/P [(k − ½) π + N inv a]';
const [t22, t28, t35, t60, t71] = [
  wheel(22, '8 DP', 'full-14.5'),
  wheel(28, '8 DP', 'full-14.5'),
  wheel(35, '8 DP', 'full-14.5'),
  wheel(60, '12 DP', 'full-14.5'),
  wheel(71, '16 DP', 'full-14.5'),
];
const spanIn = (of: Wheel, k?: number): number => toInches(lengthOf(spanAnswer(of, k === undefined ? {} : { k }).figures.span));
const countOf = (answer: SpanAnswer): number => {
  const { value } = answer.figures.k;
  return 'count' in value ? value.count : Number.NaN;
};
const story: readonly Case[] = [
  ...rows({ topic: 'Span', kind: DERIVED, source: W_OF, tolerance: 0.00006, unit: 'in' }, [
    ['22 teeth, 8 DP, 14½°: best span, over 2', 0.585, () => spanIn(t22), 'k one too many'],
    ['22 teeth, 8 DP over 3', 0.9652, () => spanIn(t22, 3), 'k asked for not taken'],
    ['28 teeth, 8 DP: best span, over 3', 0.9693, () => spanIn(t28), 'k one too few'],
    ['35 teeth, 8 DP: best span, over 3', 0.974, () => spanIn(t35), 'k rounded up'],
    ['35 teeth, 8 DP over 4', 1.3542, () => spanIn(t35, 4), 'k for k − ½'],
    ['60 teeth, 12 DP: best span, over 5', 1.1674, () => spanIn(t60), 'P not taken'],
    ['60 teeth, 12 DP over 6', 1.4209, () => spanIn(t60, 6), 'base pitch of 20°'],
    ['71 teeth, 16 DP: best span, over 6', 1.0693, () => spanIn(t71), 'inv a in degrees'],
  ]),
  ...rows({ topic: 'Span', kind: DERIVED, source: 'derived: 24 × 20/180 + ½ = 3.17', tolerance: 0, unit: 'teeth' }, [
    ['24 teeth, module 1, 20°: span count', 3, () => countOf(spanAnswer(wheel(24, 'M1', 'module-1.25'))), 'rounded up'],
    ['32 teeth, 1 DP, 14½°: span count', 3, () => countOf(spanAnswer(wheel(32, '1 DP', 'full-14.5'))), '20° rule for 14½°'],
  ]),
  ...rows({ kind: DERIVED, source: 'derived: (N − 2.314)/8 in exact decimals; each a tie in the fifth', tolerance: 0.000005, unit: 'in' }, [
    ['31 teeth, 8 DP: root', 3.58575, () => blankIn(wheel(31, '8 DP', 'full-14.5'), 'rootDiameter'), '1.25 for 1.157'],
    ['34 teeth, 8 DP: root', 3.96075, () => blankIn(wheel(34, '8 DP', 'full-14.5'), 'rootDiameter'), 'one dedendum'],
    ['22 teeth, 8 DP: root', 2.46075, () => blankIn(t22, 'rootDiameter'), '1.25 for 1.157'],
    ['28 teeth, 8 DP: root', 3.21075, () => blankIn(t28, 'rootDiameter'), '1.25 for 1.157'],
  ]),
  ...rows({ kind: DERIVED, source: 'derived: (N + 2)/P and 2.157/P by hand', tolerance: 0.00006, unit: 'in' }, [
    ['71 teeth, 16 DP: outside', 4.5625, () => blankIn(t71, 'outsideDiameter'), 'P not taken'],
    ['71 teeth, 16 DP: whole depth', 0.1348, () => blankIn(t71, 'wholeDepth'), '2.25 for 2.157'],
    ['60 teeth, 12 DP: whole depth', 0.1798, () => blankIn(t60, 'wholeDepth'), 'fine rule at 12 DP'],
    ['48 teeth, 12 DP: root', 3.8072, () => blankIn(wheel(48, '12 DP', 'full-14.5'), 'rootDiameter'), 'one dedendum'],
  ]),
];

const OVER = 0.005;
const feed = (gear: Wheel, k: number, made: 'form cutter' | 'generated' = 'form cutter'): number => {
  const spanWanted = lengthOf(spanAnswer(gear, { k }).figures.span);
  const spanRead = inches(toInches(spanWanted) + OVER);
  return toInches(lengthOf(stillToFeed({ gear, k, spanRead, spanWanted, made }).figures.stillToFeed));
};
const SUNK = 'derived: span of a sunk form taken on the curve';
const depths: readonly Case[] = [
  ...rows({ topic: 'Still to feed', kind: DERIVED, source: SUNK, tolerance: 0.0005, unit: 'in of span for 1 in of feed' }, [
    ['22 teeth over 2', 0.563, () => OVER / feed(t22, 2), 'generated rule: 2 sin a'],
    ['22 teeth over 3', 0.831, () => OVER / feed(t22, 3), 'k left out'],
    ['28 teeth over 3', 0.661, () => OVER / feed(t28, 3), '90 for 180'],
    ['35 teeth over 3', 0.532, () => OVER / feed(t35, 3), 'k − ½ for k'],
    ['35 teeth over 4', 0.703, () => OVER / feed(t35, 4), 'k − 1 for k'],
    ['60 teeth over 5', 0.518, () => OVER / feed(t60, 5), 'generated rule: 2 sin a'],
    ['71 teeth over 6', 0.525, () => OVER / feed(t71, 6), 'half of it'],
  ]),
  ...rows({ topic: 'Still to feed', kind: DERIVED, source: `${SUNK}, for a span 0.005 in large`, tolerance: 0.00006, unit: 'in' }, [
    ['22 teeth over 2', 0.0089, () => feed(t22, 2), 'factor turned about'],
    ['22 teeth over 3', 0.006, () => feed(t22, 3), 'k not taken'],
    ['28 teeth over 3', 0.0076, () => feed(t28, 3), 'span difference for depth'],
  ]),
  ...rows(
    { topic: 'Still to feed', kind: DERIVED, source: 'derived: 0.005/(2 × sin 20°) = 0.005/0.68404', tolerance: 0.000006, unit: 'in' },
    [
      [
        '24 teeth, 8 DP, 20°, generated, over 3',
        0.00731,
        () => feed(wheel(24, '8 DP', 'full-20'), 3, 'generated'),
        'form cutter rule for a hob',
      ],
    ],
  ),
  ...rows(
    {
      topic: 'Depth to dial',
      kind: DERIVED,
      source: 'derived: 0.269625 − 0.002 + 0.002, and with the stamp 0.270 − 0.002 + 0.0015',
      tolerance: 0.000006,
      unit: 'in',
    },
    [
      [
        '22 teeth, 8 DP, blank 2.996, paper 0.002',
        0.269625,
        () => toInches(lengthOf(depthToDial({ gear: t22, measuredOutside: inches(2.996), paper: inches(0.002) }).figures.depthToDial)),
        'whole difference for half',
      ],
      [
        '22 teeth, 8 DP, blank 2.996, stamp 0.270, paper 0.0015',
        0.2695,
        () =>
          toInches(
            lengthOf(
              depthToDial({ gear: t22, measuredOutside: inches(2.996), stampedDepth: inches(0.27), paper: inches(0.0015) }).figures
                .depthToDial,
            ),
          ),
        'system’s depth over the stamp, or paper taken off',
      ],
    ],
  ),
  ...rows(
    {
      topic: 'Backlash',
      kind: DERIVED,
      source:
        'derived: 0.004 × cos 14.5° = 0.0038726; the involute sunk till it crosses the pitch circle: 0.005909; 0.004 ÷ (2 × tan 14.5°) = 0.0077334',
      tolerance: 0.000005,
      unit: 'in',
    },
    [
      [
        '22 teeth, 14½°, 0.004 in off the span',
        0.0038726,
        () => toInches(lengthOf(backlashAnswer(t22, inches(0.004)).figures.spanLess)),
        '÷ cos for × cos',
      ],
      [
        '22 teeth, 14½°, 0.004 in, form cutter deeper',
        0.005909,
        () => toInches(lengthOf(backlashAnswer(t22, inches(0.004)).figures.deeperFormed)),
        '180/N for 90/N, or the first term of the series alone (0.00607)',
      ],
      [
        '22 teeth, 14½°, 0.004 in, hob deeper',
        0.0077334,
        () => toInches(lengthOf(backlashAnswer(t22, inches(0.004)).figures.deeperGenerated)),
        'the 2 left out',
      ],
    ],
  ),
];

export const cases: readonly Case[] = [
  ...picFine,
  ...picMetric,
  ...pair,
  ...constants,
  ...examples,
  ...equivalents,
  ...chords,
  ...undercut,
  ...virtual,
  ...bevanRack,
  ...involute,
  ...memory,
  ...story,
  ...depths,
];
