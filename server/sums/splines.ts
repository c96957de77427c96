import { involuteDrawing, millingDrawing, straightDrawing } from '../../lib/drawing/spline-drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { findSpline, foundSpline } from '../../lib/splines/find.sums.ts';
import { SIDES } from '../../lib/splines/find.ts';
import { splinedHub } from '../../lib/splines/hub.sums.ts';
import { OLD_DEPTHS } from '../../lib/splines/involute.data.ts';
import { involuteSpline } from '../../lib/splines/involute-spline.sums.ts';
import { checkedSpline, type NamedSpline, unitOfSpline } from '../../lib/splines/involute-spline.ts';
import { millSplines } from '../../lib/splines/mill.sums.ts';
import { type MillAsked, millPlan } from '../../lib/splines/mill-plan.ts';
import { LOCATING } from '../../lib/splines/shaft-sizes.ts';
import { INCH_FITS, METRIC_SERIES } from '../../lib/splines/straight.data.ts';
import { straightSpline } from '../../lib/splines/straight.sums.ts';
import { chosenInch, chosenMetric, type StandardStraight } from '../../lib/splines/straight-choice.ts';
import { toInches, toMm } from '../../lib/values/length.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import { choiceField, countField, optional, readField, wordsField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { dimensions, size, sizeIfKnown, typedOf, unitOf } from './asks.ts';
import { headOf } from './index-answers.ts';
import { COMMON_PLATES, platesField } from './read-plates.ts';
import { sum } from './sum.ts';

const splinesField = (most: number) => countField({ label: 'Splines', hint: 'All round', limits: { least: 3, most }, unit: 'splines' });
const [LEAST_IN, MOST_IN] = [0.05, 20];
const sizeField = (label: string, hint = '') => size({ label, hint, least: LEAST_IN, most: MOST_IN });
const room = (label: string, hint: string) => sizeIfKnown({ label, hint, least: 0, most: 1 });

const boreAsks = {
  splines: splinesField(60),
  outside: sizeField('Bore across its grooves', 'As measured'),
  inside: sizeField('Bore across its tops', 'As measured'),
  width: sizeField('Width of a groove', 'Sides parallel'),
};
const dividingAsks = {
  turns: countField({ label: 'Turns of the crank for one of the spindle', limits: { least: 1, most: 1000 }, unit: 'turns' }),
  plates: platesField,
  circle: optional(countField({ label: 'Circle', hint: 'Empty: the best that serves', limits: { least: 2, most: 1000 }, unit: 'holes' })),
};
const DIVIDING = { head: ['turns'] } as const;

const boreOf = ({ splines, outside, inside, width }: ValuesOf<typeof boreAsks>) => ({
  splines,
  outside: outside.length,
  inside: inside.length,
  width: width.length,
});

const findAsks = {
  part: choiceField({
    label: 'Measured on',
    choices: [
      ['bore', 'a bore'],
      ['shaft', 'a shaft'],
    ],
  }),
  splines: splinesField(200),
  outside: sizeField('Across the outside', 'Bore: groove to groove; shaft: key to key'),
  inside: sizeField('Across the inside', 'Bore: top to top; shaft: bottom to bottom'),
  width: size({ label: 'Width of a groove or key', least: 0.005, most: MOST_IN }),
  sides: wordsField({ label: 'Sides of the key', words: SIDES }),
};
const readOf = ({ part, splines, outside, inside, width, sides }: ValuesOf<typeof findAsks>) => ({
  part,
  splines,
  outside: outside.length,
  inside: inside.length,
  width: width.length,
  sides,
});

const findSum = sum({
  path: 'find-a-spline',
  title: 'Find a spline',
  group: 'Splines',
  tells: 'The nearest standard spline to three readings and a count, by how much each misses, and whether it is straight or involute.',
  asks: findAsks,
  example: { part: 'bore', splines: '6', outside: '1.251', inside: '1.063', width: '0.313', sides: 'parallel' },
  work: (given) => findSpline(readOf(given), unitOf(given.outside)),
  draw: (given) => {
    const read = readOf(given);
    const found = foundSpline(read);
    if (found?.involute)
      return involuteDrawing(checkedSpline(found.involute), unitOfSpline(found.involute), { form: dimensions(unitOf(given.outside)) });
    return straightDrawing({ ...read, part: read.part === 'bore' ? 'hub' : 'shaft' }, { form: dimensions(unitOf(given.outside)) });
  },
});

const straightAsks = {
  standard: wordsField({ label: 'Standard', words: [...INCH_FITS, ...METRIC_SERIES] }),
  splines: splinesField(60),
  outside: sizeField('Outside', 'Inch splines: any; metric: one of the series'),
};
function chosen({ standard, splines, outside }: ValuesOf<typeof straightAsks>): StandardStraight {
  const series = METRIC_SERIES.find((one) => one === standard);
  if (series) return chosenMetric(splines, series, outside.length);
  return chosenInch(splines, INCH_FITS.find((one) => one === standard) ?? INCH_FITS[0], outside.length);
}

const straightSum = sum({
  path: 'straight-spline',
  title: 'Straight-sided spline',
  group: 'Splines',
  tells:
    'Sizes of a standard straight-sided spline and what it carries: inch fits by fractions of the outside, metric light, medium and heavy.',
  asks: straightAsks,
  example: { standard: 'slides without load', splines: '6', outside: '1.250' },
  work: (given) => straightSpline(chosen(given)),
  draw: (given) => straightDrawing({ part: 'hub', ...chosen(given) }, { form: dimensions(chosen(given).unit) }),
});

const millAsks = {
  ...boreAsks,
  locates: wordsField({ label: 'What locates in the gear', words: LOCATING }),
  outsideRoom: room('Smaller outside by', 'On the diameter; empty: usual'),
  sides: room('Keys narrower by', 'Empty: usual'),
  bottom: room('Smaller at the bottoms by', 'On the diameter; empty: usual'),
  cutter: size({ label: 'Width that the cutter cuts', hint: 'From the trial piece', least: 0.01, most: 4 }),
  turned: sizeIfKnown({ label: 'Shaft outside as turned', hint: 'Empty: as wanted', least: LEAST_IN, most: MOST_IN }),
  ...dividingAsks,
};
const millOf = (given: ValuesOf<typeof millAsks>): MillAsked => ({
  bore: boreOf(given),
  locates: given.locates,
  clearances: { outside: given.outsideRoom?.length ?? null, sides: given.sides?.length ?? null, bottom: given.bottom?.length ?? null },
  cutterWidth: given.cutter.length,
  ...typedOf({ turned: given.turned }),
  head: headOf(given.turns),
  plates: given.plates,
  ...(given.circle === null ? {} : { circle: given.circle }),
  unit: unitOf(given.outside),
});

const millSum = sum({
  path: 'mill-splined-shaft',
  title: 'Mill a splined shaft',
  group: 'Splines',
  tells: 'A straight-sided shaft to fit a bore, milled with one side-and-face cutter: offsets, depths, crank, and whether it will enter.',
  asks: millAsks,
  example: {
    splines: '6',
    outside: '1.251',
    inside: '1.063',
    width: '0.313',
    locates: 'outside and sides',
    outsideRoom: '0.001',
    sides: '0.0005',
    bottom: '0.005',
    cutter: '0.1875',
    turned: '',
    turns: '40',
    plates: COMMON_PLATES,
    circle: '33',
  },
  about: DIVIDING,
  parts: [
    { legend: 'The bore', asks: ['splines', 'outside', 'inside', 'width'] },
    { legend: 'How the shaft fits', asks: ['locates', 'outsideRoom', 'sides', 'bottom'] },
    { legend: 'Cutter and shaft', asks: ['cutter', 'turned'] },
    { legend: 'Dividing', asks: ['turns', 'plates', 'circle'] },
  ],
  work: (given) => millSplines(millOf(given)),
  draw: (given) => millingDrawing(millPlan(millOf(given)), given.turns, unitOf(given.outside), { form: dimensions(unitOf(given.outside)) }),
});

const hubSum = sum({
  path: 'splined-hub',
  title: 'Splined hub',
  group: 'Splines',
  tells: 'A straight-sided bore slotted groove by groove: what to bore, the tool’s width, its feed, the crank, what to measure.',
  asks: {
    ...boreAsks,
    bored: sizeIfKnown({ label: 'Bore as bored', hint: 'Empty: as wanted', least: LEAST_IN, most: MOST_IN }),
    ...dividingAsks,
  },
  example: {
    splines: '6',
    outside: '1.250',
    inside: '1.0625',
    width: '0.3125',
    bored: '',
    turns: '40',
    plates: COMMON_PLATES,
    circle: '',
  },
  about: DIVIDING,
  work: (given) =>
    splinedHub({
      bore: boreOf(given),
      ...typedOf({ bored: given.bored }),
      head: headOf(given.turns),
      plates: given.plates,
      ...(given.circle === null ? {} : { circle: given.circle }),
      unit: unitOf(given.outside),
    }),
  draw: (given) => straightDrawing({ part: 'hub', ...boreOf(given) }, { form: dimensions(unitOf(given.outside)) }),
});

const involuteAsks = {
  standard: choiceField({
    label: 'Standard',
    choices: [
      ['ANSI flat', 'ANSI B92.1, flat root'],
      ['ANSI fillet', 'ANSI B92.1, fillet root'],
      ['ISO flat', 'ISO 4156, flat root'],
      ['ISO fillet', 'ISO 4156, fillet root'],
      ['DIN', 'DIN 5480, by reference diameter'],
      ['deep', 'Old American, deep'],
      ['intermediate', 'Old American, intermediate'],
      ['shallow', 'Old American, shallow'],
    ],
  }),
  teeth: countField({ label: 'Teeth', limits: { least: 4, most: 200 }, unit: 'teeth' }),
  pitch: optional(
    readField({ label: 'Pitch', hint: 'As 16 DP (of 16/32) or module 2; old American: leave empty', read: (text) => readPitch(text) }),
  ),
  reference: sizeIfKnown({
    label: 'Reference diameter, or outside',
    hint: 'DIN 5480 and old American only',
    least: LEAST_IN,
    most: MOST_IN,
  }),
  thinner: sizeIfKnown({ label: 'Shaft’s teeth thinner by', hint: 'Along the pitch circle; empty is none', least: 0, most: 1 }),
  pinShaft: sizeIfKnown({ label: 'Pins over the shaft', hint: 'Empty: usual', least: 0.005, most: 4 }),
  pinHub: sizeIfKnown({ label: 'Pins in the hub', hint: 'Empty: usual', least: 0.005, most: 4 }),
};

const lacks = (given: string, tryThis: string, about: string): DomainError =>
  new DomainError({ given, limit: 'This standard is named by it.', tryThis, about: [about] });

type InvoluteGiven = ValuesOf<typeof involuteAsks>;

function pitchOf({ pitch }: InvoluteGiven, kind: 'DP' | 'module'): number {
  if (pitch?.kind === kind) return toNumber(pitch.size);
  const [given, example] = kind === 'DP' ? ['No diametral pitch.', 'Type it as 16 DP for 16/32.'] : ['No module.', 'Type it as module 2.'];
  throw lacks(given, example, 'pitch');
}

function diameterOf({ reference }: InvoluteGiven) {
  if (reference) return reference.length;
  throw lacks('No diameter.', 'Type the reference diameter of DIN 5480, or the outside of an old American spline.', 'reference');
}

function namedOf(given: InvoluteGiven): NamedSpline {
  const { standard, teeth } = given;
  const root = standard.endsWith('fillet') ? 'fillet' : 'flat';
  if (standard.startsWith('ANSI')) return { standard: 'ANSI', root, teeth, P: pitchOf(given, 'DP') };
  if (standard.startsWith('ISO')) return { standard: 'ISO', root, teeth, m: pitchOf(given, 'module') };
  if (standard === 'DIN') return { standard: 'DIN', teeth, m: pitchOf(given, 'module'), reference: toMm(diameterOf(given)) };
  const depth = OLD_DEPTHS.find(({ name }) => name === standard)?.name ?? 'deep';
  return { standard: 'old', depth, teeth, outside: toInches(diameterOf(given)) };
}

const involuteSum = sum({
  path: 'involute-spline',
  title: 'Involute spline',
  group: 'Splines',
  tells: 'Diameters of shaft and hub by the standard, tooth and space, and what pins read over the shaft and between the teeth of the hub.',
  asks: involuteAsks,
  example: { standard: 'ANSI flat', teeth: '20', pitch: '16 DP', reference: '', thinner: '', pinShaft: '', pinHub: '' },
  work: (given) => {
    const { thinner, pinShaft, pinHub } = given;
    return involuteSpline({ named: namedOf(given), ...typedOf({ thinner, pinShaft, pinHub }) });
  },
  draw: (given) => {
    const named = namedOf(given);
    return involuteDrawing(checkedSpline(named), unitOfSpline(named), { form: dimensions(unitOfSpline(named)) });
  },
});

export const SPLINE_SUMS = [findSum, straightSum, millSum, hubSum, involuteSum];
