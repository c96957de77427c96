import { involuteDrawing, millingDrawing, straightDrawing } from '../../lib/drawing/spline-drawing.ts';
import { findSpline, foundSpline } from '../../lib/splines/find.sums.ts';
import { SIDES } from '../../lib/splines/find.ts';
import { splinedHub } from '../../lib/splines/hub.sums.ts';
import { checkedSpline, unitOfSpline } from '../../lib/splines/involute-spline.ts';
import { millSplines } from '../../lib/splines/mill.sums.ts';
import { type MillAsked, millPlan } from '../../lib/splines/mill-plan.ts';
import { LOCATING } from '../../lib/splines/shaft-sizes.ts';
import { INCH_FITS, METRIC_SERIES } from '../../lib/splines/straight.data.ts';
import { straightSpline } from '../../lib/splines/straight.sums.ts';
import { chosenInch, chosenMetric, type StandardStraight } from '../../lib/splines/straight-choice.ts';
import { choiceField, countField, optional, wordsField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { dimensions, size, sizeIfKnown, typedOf, unitOf } from './asks.ts';
import { headOf } from './index-answers.ts';
import { INVOLUTE_SPLINE_SUM } from './involute-spline.ts';
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
  width: size({ label: 'Width of a groove', hint: 'Sides parallel', least: 0.01, most: MOST_IN }),
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

export const SPLINE_SUMS = [findSum, straightSum, millSum, hubSum, INVOLUTE_SPLINE_SUM];
