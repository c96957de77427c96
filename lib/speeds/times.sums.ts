import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, From, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { approach, feedPerMinute, gearMinutes, minutesAtFeed, travel } from './time.formulas.ts';

const minutes = (t: number, places = 1) => ({ number: t, unit: 'min', places });
const inWords = (length: Length, unit: LengthUnit) => `${printShort(inUnit(length, unit), 4)} ${unit}`;

/** Minutes to run back, index, and clamp for one tooth: a guess until the shop's own is typed. */
const INDEX_MINUTES = 0.5;
/** Minutes to run the saddle back and set the next cut on a lathe: a guess. */
const RETURN_MINUTES = 0.5;

const above0 = (says: string, about: string): never => {
  throw new DomainError({ given: says, limit: 'It has to be above 0.', tryThis: 'Type the size as measured or wanted.', about: [about] });
};

export type PassAsked = {
  readonly length: Length;
  readonly feedPerTurn: Length;
  readonly speedRpm: number;
  readonly passes?: number;
  readonly returnMinutes?: number;
  readonly unit?: LengthUnit;
};

/** Time of one turning pass and of all of them, running back between included. */
export function timeOfPass(asked: PassAsked): Answer<'feedRate' | 'passTime' | 'allPasses'> {
  const { unit = 'in', passes = 1, returnMinutes = RETURN_MINUTES } = asked;
  if (!(asked.length > 0)) above0(`The length of cut is ${inWords(asked.length, unit)}.`, 'length');
  if (!(asked.feedPerTurn > 0)) above0(`The feed is ${inWords(asked.feedPerTurn, unit)} a turn.`, 'feedPerTurn');
  if (!(asked.speedRpm > 0)) above0(`The speed is ${printShort(asked.speedRpm)} rev/min.`, 'speedRpm');
  const [L, s] = [inUnit(asked.length, unit), inUnit(asked.feedPerTurn, unit)];
  const f = feedPerMinute(s, asked.speedRpm);
  const source = 'Mitsubishi Materials, turning course, "Cutting time"';
  const feed = givenLength('s', 'feed a turn', asked.feedPerTurn, unit, 'typed');
  const speed: Given = { symbol: 'n', name: 'speed', value: { number: asked.speedRpm, unit: 'rev/min', places: 2 }, from: 'typed' };
  const length = givenLength('L', 'length of cut', asked.length, unit, 'typed');
  const many: Given = { symbol: 'k', name: 'passes', value: { count: passes }, from: 'typed' };
  const back: Given = {
    symbol: 'i',
    name: 'running back and setting',
    value: minutes(returnMinutes, 2),
    from: asked.returnMinutes === undefined ? 'guess' : 'typed',
  };
  const feedRate: Figure = {
    name: 'Feed a minute',
    symbol: 'f',
    value: { number: f, unit: `${unit}/min`, places: 3 },
    unit,
    formula: 's × n',
    source,
    given: [feed, speed],
  };
  const passTime: Figure = {
    name: 'Time of one pass',
    symbol: 't',
    value: minutes(minutesAtFeed(L, f), 2),
    unit,
    formula: 'L ÷ (s × n)',
    source,
    given: [length, feed, speed],
  };
  const all = passes * (minutesAtFeed(L, f) + returnMinutes);
  const allPasses: Figure = {
    name: 'Time of all passes',
    symbol: 'T',
    value: minutes(all),
    unit,
    formula: 'k × (L ÷ (s × n) + i)',
    source,
    given: [many, length, feed, speed, back],
  };
  return { figures: { feedRate, passTime, allPasses }, cautions: [] };
}

export type GearTimeAsked = {
  readonly teeth: number;
  readonly face: Length;
  readonly cutterDiameter: Length;
  readonly depth: Length;
  /** Length of table travel a minute. */
  readonly feedPerMinute: Length;
  readonly roughRounds?: number;
  /** Past the far edge; as long as the approach when not given, so that the cutter leaves clear of the blank. */
  readonly overrun?: Length | null;
  readonly indexMinutes?: number;
  readonly feedFrom?: From;
  readonly unit?: LengthUnit;
};

function checkedGear(asked: GearTimeAsked, unit: LengthUnit): void {
  if (!(Number.isSafeInteger(asked.teeth) && asked.teeth > 0)) above0(`The teeth to cut are ${asked.teeth}.`, 'teeth');
  if (!(asked.face > 0)) above0(`The face is ${inWords(asked.face, unit)}.`, 'face');
  if (!(asked.feedPerMinute > 0)) above0(`The feed is ${inWords(asked.feedPerMinute, unit)} a minute.`, 'feedPerMinute');
  if (asked.depth > 0 && asked.depth <= asked.cutterDiameter / 2) return;
  throw new DomainError({
    given: `The cut is ${inWords(asked.depth, unit)} deep with a cutter ${inWords(asked.cutterDiameter, unit)} in diameter.`,
    limit: 'A cut is above 0 and at most half the cutter: deeper, the arbor meets the blank.',
    tryThis: 'Measure the cutter, or take one of larger diameter.',
    about: ['depth', 'cutterDiameter'],
  });
}

const SHARMA = 'P. C. Sharma, A Textbook of Production Engineering, ex. 4.17, p. 228';

/** What the figures of a gear's time share: the travel in its parts, and the feed. */
type Stroke = { readonly A: Length; readonly O: Length; readonly L: Length; readonly unit: LengthUnit };

function strokeOf(asked: GearTimeAsked, unit: LengthUnit): Stroke {
  const A = ofUnit(approach(inUnit(asked.cutterDiameter, unit), inUnit(asked.depth, unit)), unit);
  const O = asked.overrun ?? A;
  return { A, O, L: ofUnit(travel(inUnit(asked.face, unit), inUnit(A, unit), inUnit(O, unit)), unit), unit };
}

function strokeFigures(asked: GearTimeAsked, { A, O, L, unit }: Stroke): { approach: Figure; travel: Figure } {
  const h = givenLength('h', 'depth of cut', asked.depth, unit, 'worked out');
  const D = givenLength('D', 'diameter of the cutter', asked.cutterDiameter, unit, 'typed');
  const parts = [
    givenLength('F', 'face', asked.face, unit, 'typed'),
    givenLength('A', 'approach', A, unit, 'worked out'),
    givenLength('O', 'overrun', O, unit, asked.overrun ? 'typed' : 'worked out'),
  ];
  const note = asked.overrun ? 'Overrun as typed.' : 'Overrun as long as the approach: the cutter leaves clear of the blank.';
  const base = { unit, source: SHARMA };
  return {
    approach: { ...base, name: 'Approach of the cutter', symbol: 'A', value: { length: A }, formula: '√(h × (D − h))', given: [h, D] },
    travel: { ...base, name: 'Travel of one cut', symbol: 'L', value: { length: L }, formula: 'F + A + O', given: parts, note },
  };
}

/**
 * Time of a whole gear: approach and overrun of the cutter, one cut, and all the rounds with the indexing. Every round is reckoned at full
 * depth, so roughing is a little over-reckoned. The indexing time is a guess and marked so.
 */
export function timeOfGear(asked: GearTimeAsked): Answer<'approach' | 'travel' | 'cutTime' | 'cutting' | 'gearTime'> {
  const { unit = 'in', roughRounds = 1, indexMinutes = INDEX_MINUTES, teeth } = asked;
  checkedGear(asked, unit);
  const stroke = strokeOf(asked, unit);
  const [l, f, rounds] = [inUnit(stroke.L, unit), inUnit(asked.feedPerMinute, unit), roughRounds + 1];
  const L = givenLength('L', 'travel of one cut', stroke.L, unit, 'worked out');
  const perMinute = { number: f, unit: `${unit}/min`, places: 4 };
  const feed: Given = { symbol: 'f', name: 'feed a minute', value: perMinute, from: asked.feedFrom ?? 'typed' };
  const N: Given = { symbol: 'N', name: 'teeth', value: { count: teeth }, from: 'typed' };
  const r: Given = { symbol: 'r', name: 'rounds, the finishing one included', value: { count: rounds }, from: 'guess' };
  const from = asked.indexMinutes === undefined ? 'guess' : 'typed';
  const i: Given = { symbol: 'i', name: 'running back and indexing', value: minutes(indexMinutes, 2), from };
  const time = (name: string, symbol: string, t: number, places: number, formula: string, given: Given[], source: string): Figure => ({
    name,
    symbol,
    value: minutes(t, places),
    unit,
    formula,
    source,
    given,
  });
  const [cut, all] = [gearMinutes(teeth, rounds, l, f, 0), gearMinutes(teeth, rounds, l, f, indexMinutes)];
  const derived = 'derived: every tooth is cut and indexed once in each round';
  const figures = {
    ...strokeFigures(asked, stroke),
    cutTime: time('Time of one cut', 't', minutesAtFeed(l, f), 2, 'L ÷ f', [L, feed], SHARMA),
    cutting: time('Time in the cut', 'Tc', cut, 0, 'N × r × L ÷ f', [N, r, L, feed], derived),
    gearTime: time('Time of the gear', 'T', all, 0, 'N × r × (L ÷ f + i)', [N, r, L, feed, i], derived),
  };
  return { figures, cautions: [] };
}
