import { remembered } from '../../db/remembered.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { trainDrawing } from '../../lib/drawing/train-drawing.ts';
import { wheelsOnShafts } from '../../lib/drawing/train-layout.ts';
import { approximationsAnswer } from '../../lib/trains/approximations.sums.ts';
import { arrangementsOf, shaftsOf } from '../../lib/trains/arrangements.ts';
import type { Ranked } from '../../lib/trains/best-trains.ts';
import { type ChangeGearsAsked, changeGears, changeGearsAnswer, nearerThread, toSet } from '../../lib/trains/change-gears.sums.ts';
import { chartAnswer } from '../../lib/trains/chart.sums.ts';
import { waitsFor } from '../../lib/trains/nearer-with.ts';
import type { Quadrant } from '../../lib/trains/quadrant.ts';
import { slotLines } from '../../lib/trains/slot-lines.ts';
import { type Target, targetOf } from '../../lib/trains/target.ts';
import { trainWords } from '../../lib/trains/train-words.ts';
import { transposingAnswer } from '../../lib/trains/transposing.sums.ts';
import { toMm } from '../../lib/values/length.ts';
import { exactNumber, quoted, type Read, read, unread } from '../../lib/values/read.ts';
import { choiceField, countField, numberField, optional, readField } from '../forms/field.ts';
import { NO_QUADRANT, QUADRANT_FIELDS, quadrantOf } from '../forms/quadrant-form.ts';
import { size, unitOf } from './asks.ts';
import { mountedField, screwField, threadField, threadsField, trainDrawerField } from './read-trains.ts';
import { sum } from './sum.ts';

const drawerField = trainDrawerField({ label: 'Wheels in the drawer', hint: 'As they lie there: 20x2, 25-60 step 5, 127' });
const screwAsked = screwField({ label: 'Lead screw', hint: 'What equal wheels cut: 8 TPI, 5 mm' });
const missingField = { ...trainDrawerField({ label: 'Wheels missing from the set', hint: 'Empty: none' }), optional: true };
const ABOUT = {
  drawer: ['drawer'],
  wheels: ['drawer'],
  missing: ['missing'],
  swing: ['swing'],
  slots: ['slots'],
  collar: ['collar'],
  between: ['between'],
  abreast: ['abreast'],
} as const;

const upToField = choiceField({
  label: 'Wheels in a train',
  choices: [
    ['4', 'up to four'],
    ['2', 'two'],
    ['6', 'up to six'],
  ],
});

const ENDS = { first: 'spindle', last: 'screw' };

/** A train as set up, or in a row where no quadrant is known. */
export function drawRanked(
  row: Ranked | undefined,
  moduleMm: number,
  ends: { first: string; last: string },
  quadrant?: Quadrant,
): Drawing | null {
  if (!row) return null;
  const title = `Train ${trainWords(row.train)}`;
  if (row.placed && 'shafts' in row.placed) {
    const { shafts, reach } = row.placed;
    const wheels = wheelsOnShafts(shafts, { moduleMm, at: reach.at.map(({ x, y }) => [x, y] as const), planes: reach.planes });
    const shown = quadrant ? { slots: slotLines(quadrant, reach), collarMm: toMm(quadrant.collar) } : {};
    return trainDrawing(wheels, { title, moduleMm, toScale: true, ...shown });
  }
  const [arrangement] = arrangementsOf(row.train);
  const note = `in a row: ${row.placed ? 'it does not stand' : 'reach not measured'}`;
  return arrangement ? trainDrawing(wheelsOnShafts(shaftsOf(arrangement, [], ends), { moduleMm }), { title, moduleMm, note }) : null;
}

type TrainGiven = {
  readonly thread: ChangeGearsAsked['wanted'];
  readonly screw: ChangeGearsAsked['screw'];
  readonly drawer: readonly number[];
  readonly upTo: string;
  readonly over: Parameters<typeof unitOf>[0];
  readonly missing: readonly number[];
  readonly mounted: ChangeGearsAsked['mounted'] | null;
} & Parameters<typeof quadrantOf>[0];

function askedOf(given: TrainGiven): ChangeGearsAsked {
  const quadrant = quadrantOf(given, ENDS);
  return {
    wanted: given.thread,
    screw: given.screw,
    wheels: given.drawer,
    upTo: Number(given.upTo) as 2 | 4 | 6,
    over: given.over.length,
    unit: unitOf(given.over),
    missing: given.missing,
    ...(given.mounted ? { mounted: given.mounted } : {}),
    ...(quadrant ? { quadrant } : {}),
  };
}

const keptRows = remembered<readonly Ranked[]>();
/** Searched once for the figures and the picture. */
const rowsFor = (given: TrainGiven): readonly Ranked[] => keptRows(JSON.stringify(given), () => changeGears(askedOf(given)));

const changeGearsSum = sum({
  path: 'change-gears',
  title: 'Change wheels for a thread or feed',
  group: 'Trains',
  tells:
    'The best trains of two, four or six wheels from the drawer, the error in the work, what stands on the quadrant and why the rest does not.',
  asks: {
    thread: threadField({ label: 'Thread, lead or feed wanted', hint: '11 TPI, 1.5 mm, module 1, 10 DP, 0.004 in' }),
    screw: screwAsked,
    drawer: drawerField,
    upTo: upToField,
    over: size({ label: 'Length that matters', hint: 'Over which the error is told' }),
    missing: missingField,
    mounted: mountedField,
    ...QUADRANT_FIELDS,
  },
  example: {
    thread: '1.75 mm',
    screw: '8 TPI',
    drawer: '20x2, 25-60 step 5, 63, 65-100 step 5',
    upTo: '4',
    over: '1',
    missing: '',
    mounted: '',
    ...NO_QUADRANT,
  },
  about: ABOUT,
  parts: [{ legend: 'Quadrant', asks: ['between', 'pivot', 'slots', 'swing', 'collar', 'widest', 'abreast', 'wheelPitch', 'lastTurns'] }],
  work: (given) => changeGearsAnswer(askedOf(given), rowsFor(given)),
  waits: (given) => waitsFor(nearerThread(askedOf(given), rowsFor(given))),
  draw: (given) => {
    const { quadrant } = askedOf(given);
    return drawRanked(toSet(rowsFor(given)), quadrant?.sizes.moduleMm ?? 1.5, ENDS, quadrant?.quadrant);
  },
});

const chartSum = sum({
  path: 'chart-today',
  title: 'A chart with today’s drawer',
  group: 'Trains',
  tells:
    'Every thread or feed of a list: exact, near or lost today; what each wheel made would bring back, and the best order to make them in.',
  asks: {
    list: threadsField({ label: 'Threads, feeds or leads', hint: 'As on the plate of the machine: 8 TPI, 9 TPI, 1.5 mm' }),
    screw: screwAsked,
    drawer: drawerField,
    missing: trainDrawerField({ label: 'Wheels that could be made', hint: 'Ten at most' }),
    near: numberField({ label: 'Near is within', hint: 'Of the pitch, in a million', limits: { least: 0, most: 100_000 } }),
  },
  example: {
    list: '8 TPI, 9 TPI, 10 TPI, 11 TPI, 11.5 TPI, 12 TPI, 13 TPI, 14 TPI, 16 TPI, 18 TPI, 20 TPI, 24 TPI',
    screw: '8 TPI',
    drawer: '20, 25-50 step 5, 60, 80',
    missing: '46, 55, 65, 70',
    near: '500',
  },
  about: ABOUT,
  work: ({ list, screw, drawer, missing, near }) => chartAnswer({ list, screw, drawer, missing, near: near / 1e6 }),
});

const transposingSum = sum({
  path: 'metric-on-inch',
  title: 'Metric threads on an inch screw',
  group: 'Trains',
  tells: 'What today’s wheels give of a list of pitches, and what a 127, a 63 or a pair such as 47 and 37 would add.',
  asks: { list: threadsField({ label: 'Pitches', hint: 'As 0.5 mm, 0.8 mm, 1.25 mm' }), screw: screwAsked, drawer: drawerField },
  example: {
    list: '0.5 mm, 0.7 mm, 0.8 mm, 1 mm, 1.25 mm, 1.5 mm, 1.75 mm, 2 mm, 2.5 mm, 3 mm',
    screw: '8 TPI',
    drawer: '20x2, 25-100 step 5',
  },
  about: ABOUT,
  work: transposingAnswer,
});

/** A decimal of more figures than a plain number holds, such as a root: kept whole. Null for what is shorter, nothing, or beyond a million. */
function longDecimal(text: string): Target | null {
  const [, whole = '', part = ''] = /^(\d{0,6})[.,](\d{10,40})$/.exec(text) ?? [];
  const num = BigInt(`${whole}${part}`);
  const target = { num, den: 10n ** BigInt(part.length), holdsPi: false };
  return num > 0n && num * 1_000_000n >= target.den ? target : null;
}

/** A ratio as typed: 1.27, 127/100, pi/4, 3 pi, 10 pi/12. */
function readRatio(text: string): Read<Target> {
  const HOW = 'Type 1.27, 127/100, 3 pi or pi/4.';
  const tidy = text.trim().replace(/π/g, 'pi');
  const long = longDecimal(tidy);
  if (long) return read(long);
  const found = /^(.*?)\s*[×*]?\s*pi\s*(?:\/\s*(\d{1,9}))?$/i.exec(tidy);
  const number = exactNumber(found ? (found[1] === '' ? '1' : (found[1] ?? '')) : tidy);
  if (!number || number[0] <= 0) return unread(`${quoted(text)} could not be read as a ratio above nothing. ${HOW}`);
  if (number[0] / number[1] > 1e6 || number[1] / number[0] > 1e6) return unread(`${quoted(text)} is beyond any train of wheels. ${HOW}`);
  const below = Number(found?.[2] ?? 1);
  if (below === 0) return unread(`${quoted(text)} divides by nothing. ${HOW}`);
  const target = targetOf(number, found ? 1 : 0);
  return read({ ...target, den: target.den * BigInt(below) });
}

const approximationsSum = sum({
  path: 'fractions-near',
  title: 'Fractions near a ratio',
  group: 'Trains',
  tells: 'Continued fraction and mediants with their exact errors, for a ratio typed, measured, or holding π.',
  asks: {
    ratio: readField({ label: 'Ratio', hint: '1.27, 127/100, 3 pi, pi/4', read: readRatio }),
    most: countField({ label: 'Greatest number above or below', limits: { least: 2, most: 1_000_000 } }),
    within: optional(
      numberField({ label: 'Measured to', hint: 'In a million of itself; empty when typed exactly', limits: { least: 0, most: 100_000 } }),
    ),
  },
  example: { ratio: '1.27', most: '500', within: '' },
  work: ({ ratio, most, within }) => approximationsAnswer(ratio, most, (within ?? 0) / 1e6),
});

export const TRAIN_SUMS = [changeGearsSum, chartSum, transposingSum, approximationsSum];
