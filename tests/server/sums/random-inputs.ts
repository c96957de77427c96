import fc from 'fast-check';
import { readPitch } from '../../../lib/gears/pitch.ts';
import { nearestSpanCount, span } from '../../../lib/gears/spur.formulas.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import { outsideDiameter, type Tooth, toothOf, wholeDepth } from '../../../lib/gears/tooth.ts';
import type { Sum } from '../../../server/sums/sum.ts';
import { IDENTIFY_BOXES, settledUnknown } from './identify-inputs.ts';
import { TOGETHER_PARALLEL } from './together-parallel.ts';
import { TRAIN_BOXES } from './train-inputs.ts';

/** What is typed into the boxes of a sum, by name. */
export type Boxes = Readonly<Record<string, string>>;

const pick = (...texts: string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const count = (min: number, max: number): fc.Arbitrary<string> => fc.integer({ min, max }).map(String);
/** Ten-thousandths, written as an inch decimal, and now and then in millimetres. */
const inch = (min: number, max: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: Math.round(min * 10_000), max: Math.round(max * 10_000) }), fc.integer({ min: 0, max: 9 }))
    .map(([tenths, form]) => (form === 0 ? `${((tenths * 25.4) / 10_000).toFixed(3)} mm` : (tenths / 10_000).toFixed(form === 1 ? 5 : 4)));

const wheels = fc.array(fc.integer({ min: 16, max: 80 }), { minLength: 2, maxLength: 11 }).map((teeth) => teeth.join(', '));
const pitches = pick('8 DP', '10 DP', '12 DP', '14.5 DP', '20 DP', '48 DP', 'module 1.25', 'M2.5', 'M5', '5/16 CP', '3/8 CP', '10 mm CP');
const bores = pick('', '1', '1.25 in', '1 1/8 key 1/4 x 1/8', '28 mm', '6 splines 1.250 x 1.0625 x 0.3125');
const cutter = fc
  .tuple(
    pitches,
    pick('14.5', '20', '14 1/2', '15'),
    fc.integer({ min: 12, max: 120 }),
    fc.integer({ min: 0, max: 40 }),
    pick('', ' hole 7/8', ' depth 0.2696', ' right for 30', ' blunt', ' away'),
  )
  .map(([pitch, angle, from, more, rest]) => `${pitch} ${angle} ${from}-${from + more}${rest}`);

/** What may well be typed into a box of this name, whichever sum it stands in. */
const BY_NAME: Readonly<Record<string, fc.Arbitrary<string>>> = {
  teeth: count(8, 150),
  spareTeeth: count(20, 160),
  pitch: pitches,
  sparePitch: pitches,
  k: count(1, 12),
  backlash: inch(0, 0.02),
  paper: inch(0, 0.01),
  bore: bores,
  spareBore: bores,
  face: inch(0.2, 2),
  spareFace: inch(0.2, 2),
  runOut: inch(0, 0.01),
  caseDepth: inch(0.01, 0.06),
  cleanUp: inch(0, 0.03),
  recesses: pick('', 'both 1.9 to 4.6', '1 to 1.5; marked 2 to 2.2'),
  openings: pick('', 'holes 2 to 3'),
  reading: inch(0.3, 5),
  beside: inch(0.1, 5),
  mate: count(10, 120),
  mateShift: pick('0'),
  centre: inch(1, 5),
  pin: inch(0.1, 0.3),
  pinion: count(8, 60),
  thickness: inch(0.1, 0.3),
  hub: inch(1, 5),
  ringOutside: inch(3, 8),
  hubBore: inch(0, 1.5),
  shop: count(30, 110),
  allowancePerInch: pick('0.0005', '0.00075', '0.001', '0.0015'),
  strength: count(8000, 90_000),
  belongs: wheels,
  drawer: wheels,
  recuts: pick(''),
  ready: wheels,
  divisions: count(2, 220),
  counts: fc.array(fc.integer({ min: 6, max: 120 }), { minLength: 1, maxLength: 6 }).map((list) => list.join(', ')),
  turns: pick('40', '60', '72', '90', '5', '1'),
  plates: pick(
    '15 16 17 18 19 20; 21 23 27 29 31 33; 37 39 41 43 47 49',
    '24-25-28-30-34-37-38-39-41-42-43|46-47-49-51-53-54-57-58-59-62-66',
    '20',
  ),
  circle: pick('18', '20', '21', '33', '49'),
  gears: pick('', '24x2, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100', '28, 32, 40, 72', '40'),
  backPin: pick('', 'all', '20 33 49', '19'),
  direct: pick('', '24', '12 24 30'),
  onPlate: pick('', '1'),
  onCircle: pick('', '20', '33'),
  onGears: pick('', '40, 72'),
  degrees: pick('35', '11 1/2', '48°40′', '0.4', '1', '90', '359.99', '0°24′'),
  passed: pick('2', '3', '4', '7'),
  tableTurns: pick('40', '60', '72', '90', '120'),
  lines: pick('100', '125', '200', '240', '120'),
  vernier: pick('1', '5', '10', '12'),
  dialLash: pick('', '0', '3.5'),
  rackPitch: pick('8 DP', '10 DP', 'module 2', 'module 1.25', '0.3927', '1/4 in', '5 mm'),
  tableLead: pick('0.2', '0.25', '1/4', '0.1', '5 mm', '4 mm'),
  rackTeeth: count(2, 120),
  distance: pick('1/64', '0.05', '0.025', '1 mm', '0.5 mm', '0.1'),
  onSpindle: count(20, 100),
  onScrew: count(20, 100),
  scaleLines: count(2, 120),
  holeCircles: pick('6 on 4', '21 on 2.25; 23 on 2.5', '1 on 3', '12 on 100 mm', '100 on 1'),
  holeDiameter: pick('0.125', '1/4', '3 mm', '6.5 mm'),
  startAngle: pick('0', '90', '15', '22.5'),
  middleX: pick('', '1.5', '0.25', '30 mm'),
  middleY: pick('', '2', '12.7 mm'),
  cutters: fc.array(cutter, { maxLength: 6 }).map((list) => list.join('; ')),
  arbors: pick('1', '7/8, 1', '22 mm'),
  count: count(12, 140),
  cutterAngle: pick('14.5', '15', '20', `14°20'`),
  move: inch(0, 3),
  division: pick('0.001', '0.0005', '0.002', '0.01 mm', '0.02 mm'),
  perTurn: pick('100', '125', '200', '250', '50'),
  lash: inch(0, 0.03),
  oldOutside: inch(2, 6),
  oldRoot: inch(1.8, 5),
  newOutside: inch(0.8, 4),
  depthPerPass: inch(0.01, 0.1),
  lastOff: inch(0, 0.06),
  measured: inch(1.9, 2.2),
  wanted: inch(1.8, 2.1),
  cuts: count(1, 6),
  low: inch(1.75, 1.81),
  high: inch(2.05, 2.15),
  limit: inch(0, 0.005),
  screwLead: inch(0.05, 0.3),
  angle: pick('14.5', '15', '17.5', '20', '22.5', `14°20'`, '14.3333', '19.99'),
  blankDiameter: inch(0.5, 8),
  cutterWidth: inch(0.1, 1),
  shift: inch(0, 0.05),
  profileShift: pick('0.3', '-0.2', '0.05', '0.5'),
  pitchRadius: inch(0.3, 5),
  diameter: inch(0.1, 12),
  speeds: pick('45 70 115 190', '25, 38, 58, 90, 140, 215, 330, 500', '62.5 1000'),
  surface: count(20, 400),
  chuck: inch(4, 16),
  topSpeed: count(500, 4000),
  length: inch(0.1, 20),
  feedPerTurn: inch(0.001, 0.03),
  speedRpm: pick('38', '62.5', '190', '1000'),
  passes: count(1, 40),
  returnMinutes: pick('0', '0.25', '1.5'),
  indexMinutes: pick('0', '0.75', '2'),
  cutterDiameter: inch(2, 4),
  depth: inch(0.05, 0.6),
  feedPerMinute: inch(0.3, 8),
  roughRounds: count(0, 4),
  overrun: inch(0, 1),
  ...TRAIN_BOXES,
  ...IDENTIFY_BOXES,
  shafts: pick('90', '60', '120', '75.5', `100°30'`),
  cutterThickness: inch(0.1, 0.2),
  headTurns: count(5, 90),
  starts: count(1, 4),
  wormPitchDiameter: inch(1, 4),
  embrace: pick('60', '80', '75'),
  friction: pick('0.03', '0.05', '0.12'),
  helix: pick('45', '30', '15', '60', '22.5'),
  stress: count(1000, 50_000),
  singlePitch: inch(0, 0.004),
  cumulativePitch: inch(0, 0.006),
  lead: inch(0, 0.004),
  splines: pick('4', '6', '8', '10', '16'),
  outside: inch(1.2, 1.6),
  inside: inch(0.95, 1.15),
  width: inch(0.06, 0.3),
  outsideRoom: inch(0, 0.01),
  sides: inch(0, 0.01),
  bottom: inch(0, 0.01),
  cutter: inch(0.03, 0.25),
  turned: inch(1.19, 1.6),
  bored: inch(0.95, 1.15),
  reference: inch(0.5, 4),
  thinner: inch(0, 0.004),
  fillet: inch(0, 0.03),
  step: inch(0.004, 0.05),
  blankWidth: inch(0.1, 2),
  pinShaft: inch(0.05, 0.2),
  pinHub: inch(0.05, 0.2),
};

function forBox(name: string, { choices, kind, optional }: Sum['asks'][string]): fc.Arbitrary<string> {
  if (kind === 'tick') return pick('', 'yes');
  const jaw = /^jaw\d$/.test(name) ? inch(-0.05, 0.05) : undefined;
  const own = choices.length > 0 ? pick(...choices.map(([value]) => value)) : (jaw ?? BY_NAME[name]);
  if (!own) throw new Error(`nobody has said what may be typed into ${name}`);
  return optional ? fc.oneof(fc.constant(''), own) : own;
}

/** Sizes that hang on the wheel that was typed, a little off as measured sizes are; without this nearly all would be refused. */
function settled(boxes: Boxes, off: number): Boxes {
  const [pitch, system] = [readPitch(boxes['pitch'] ?? ''), systemByKey(boxes['system'] ?? '')];
  if (!pitch.ok || !system || !boxes['teeth']) return boxes;
  const tooth = toothOf({ teeth: Number(boxes['teeth']), pitch: pitch.value, system: system.system });
  const typed = (x: number) => `${Math.abs(x).toFixed(4)} ${tooth.unit}`;
  const k = Math.max(1, Number(boxes['k']) || nearestSpanCount(tooth.N, tooth.a));
  return {
    ...boxes,
    ...instead(boxes, 'measuredOutside', typed(outsideDiameter(tooth) * (1 - off / 200))),
    ...instead(boxes, 'stampedDepth', typed(wholeDepth(tooth) * (1 + off / 30))),
    ...instead(boxes, 'spanRead', typed(span(tooth, k) + off * 0.01 * tooth.m)),
    ...instead(boxes, 'spanWanted', typed(span(tooth, k))),
    ...rootReading(boxes, tooth, off),
  };
}

const instead = (boxes: Boxes, name: string, text: string): Boxes => (boxes[name] ? { [name]: text } : {});

/** Readings of the old root that belong to the wheel that is read. */
function rootReading(boxes: Boxes, tooth: Tooth, off: number): Boxes {
  if (!('by' in boxes)) return {};
  const own = 'spareTeeth' in boxes ? { ...tooth, N: Number(boxes['spareTeeth']) } : tooth;
  const [outside, root] = [own.N * own.m + 2 * own.A, own.N * own.m - 2 * own.B + off * 0.01 * own.m];
  const typed = (x: number) => `${Math.abs(x).toFixed(4)} ${own.unit}`;
  const sizes: Readonly<Record<string, readonly [number, number]>> = {
    wall: [(root * 0.6) / 2, root * 0.4],
    'across roots': [root, 1],
    depth: [wholeDepth(own), outside],
    pin: [root + 2 * own.m, own.m],
    jaws: [outside, 1],
  };
  const [reading, beside] = sizes[boxes['by'] ?? ''] ?? [1, 1];
  return { reading: typed(reading), beside: typed(beside) };
}

/** Boxes of a sum as somebody might type them: each allowed by itself, most of them sensible together. */
export function boxesFor(sum: Sum): fc.Arbitrary<Boxes> {
  const each = Object.fromEntries(
    Object.entries(sum.asks).map(([name, field]) => [
      name,
      DERIVED.has(name) ? (field.optional ? pick('', 'asked') : pick('asked')) : forBox(name, field),
    ]),
  );
  const together = TOGETHER[sum.path] ?? ((boxes: Boxes) => boxes);
  return fc.tuple(fc.record(each), fc.integer({ min: 0, max: 10 })).map(([boxes, off]) => together(settled(boxes as Boxes, off)));
}

const METRIC = {
  few: { standard: 'medium', splines: '8', outside: '48 mm' },
  many: { standard: 'heavy', splines: '10', outside: '26 mm' },
} as const;

const NO_QUADRANT = { between: '', slots: '', swing: '', collar: '', widest: '', abreast: '', wheelPitch: '', lastTurns: '' };

/** Where nearly every chance choice would be refused: what has to go together for an answer. Odd counts of teeth keep their chance. */
const TOGETHER: Readonly<Record<string, (boxes: Boxes) => Boxes>> = {
  ...TOGETHER_PARALLEL,
  'unknown-gear': settledUnknown,
  'second-choice': (boxes) =>
    Number(boxes['teeth']) % 5 === 0
      ? boxes
      : {
          ...boxes,
          ...{ spareTeeth: `${Number(boxes['teeth']) + 4}`, sparePitch: '', spareSystem: '', spareBore: '1', bore: '1', by: 'none' },
          ...{ runOut: '', cleanUp: '', recesses: '', openings: '', body: 'solid', hardness: 'file bites', lastOfItsSpline: '' },
          ...{ face: '0.875', spareFace: '0.875', system: 'full-20' },
        },
  // A cutter that passes the small end.
  'milled-bevel': (boxes) => ({ ...boxes, pitch: '8 DP', face: '', shafts: '90' }),
  // A quadrant is measured whole or not at all.
  'change-gears': (boxes) => (Number.parseFloat(boxes['over'] ?? '') > 0.5 ? { ...boxes, ...NO_QUADRANT, mounted: '' } : boxes),
  // What locates must stay within the plates typed: twice the count of splines is to be turned.
  'mill-splined-shaft': (boxes) => ({ ...boxes, circle: '', plates: '15 16 17 18 19 20; 21 23 27 29 31 33', turned: '' }),
  'splined-hub': (boxes) => ({ ...boxes, circle: '' }),
  'straight-spline': (boxes) =>
    /light|medium|heavy/.test(boxes['standard'] ?? '')
      ? { ...boxes, ...METRIC[(boxes['splines'] ?? '').length === 1 ? 'few' : 'many'] }
      : { ...boxes, splines: Number(boxes['splines']) === 8 ? '6' : (boxes['splines'] ?? '') },
  'involute-spline': (boxes) => {
    const teeth = Number(boxes['teeth']);
    const pitch = (boxes['standard'] ?? '').startsWith('ANSI') ? '16 DP' : 'module 1.25';
    const reference = boxes['standard'] === 'DIN' ? `${(1.25 * (teeth + 1.3)).toFixed(2)} mm` : '2.125';
    return { ...boxes, pitch, reference, thinner: '', pinShaft: '', pinHub: teeth % 2 === 0 ? '' : (boxes['pinHub'] ?? '') };
  },
  'shrink-fit': (boxes) => ({ ...boxes, ring: /zinc|phenolic|unknown/.test(boxes['ring'] ?? '') ? 'steel' : (boxes['ring'] ?? '') }),
};

const DERIVED = new Set(['measuredOutside', 'stampedDepth', 'spanRead', 'spanWanted']);
