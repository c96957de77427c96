import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, From, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { approach, feedPerMinute, gearMinutes, minutesAtFeed, travel } from './time.formulas.ts';

const minutes = (t: number, places = 1) => ({ number: t, unit: 'min', places });
const inWords = (length: Length, unit: LengthUnit) => `${printShort(inUnit(length, unit), 4)} ${unit}`;

/** Minutes to run back, index, and clamp for one tooth: a guess until the shop's own is typed. */
export const INDEX_MINUTES = 0.5;
/** Minutes to run the saddle back and set the next cut on a lathe: a guess. */
export const RETURN_MINUTES = 0.5;

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
    name: 'feed a minute',
    symbol: 'f',
    value: { number: f, unit: `${unit}/min`, places: 3 },
    unit,
    formula: 's × n',
    source,
    given: [feed, speed],
  };
  const passTime: Figure = {
    name: 'time of one pass',
    symbol: 't',
    value: minutes(minutesAtFeed(L, f), 2),
    unit,
    formula: 'L ÷ (s × n)',
    source,
    given: [length, feed, speed],
  };
  const all = passes * (minutesAtFeed(L, f) + returnMinutes);
  const allPasses: Figure = {
    name: 'time of all passes',
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

/**
 * Time of a whole gear: approach and overrun of the cutter, one cut, and all the rounds with the indexing. Every round is reckoned at full
 * depth, so roughing is a little over-reckoned. The indexing time is a guess and marked so.
 */
export function timeOfGear(asked: GearTimeAsked): Answer<'approach' | 'travel' | 'cutTime' | 'cutting' | 'gearTime'> {
  const { unit = 'in', roughRounds = 1, indexMinutes = INDEX_MINUTES, feedFrom = 'typed' } = asked;
  checkedGear(asked, unit);
  const A = ofUnit(approach(inUnit(asked.cutterDiameter, unit), inUnit(asked.depth, unit)), unit);
  const O = asked.overrun ?? A;
  const L = ofUnit(travel(inUnit(asked.face, unit), inUnit(A, unit), inUnit(O, unit)), unit);
  const f = inUnit(asked.feedPerMinute, unit);
  const rounds = roughRounds + 1;
  const sharma = 'P. C. Sharma, A Textbook of Production Engineering, ex. 4.17, p. 228';
  const cut = givenLength('L', 'travel of one cut', L, unit, 'worked out');
  const feed = givenLength('f', 'feed a minute', asked.feedPerMinute, unit, feedFrom);
  const teeth: Given = { symbol: 'N', name: 'teeth', value: { count: asked.teeth }, from: 'typed' };
  const times: Given = { symbol: 'r', name: 'rounds, the finishing one included', value: { count: rounds }, from: 'guess' };
  const index: Given = {
    symbol: 'i',
    name: 'running back and indexing',
    value: minutes(indexMinutes, 2),
    from: asked.indexMinutes === undefined ? 'guess' : 'typed',
  };
  const depthAndCutter = [
    givenLength('h', 'depth of cut', asked.depth, unit, 'worked out'),
    givenLength('D', 'diameter of the cutter', asked.cutterDiameter, unit, 'typed'),
  ];
  const figures = {
    approach: {
      name: 'approach of the cutter',
      symbol: 'A',
      value: { length: A },
      unit,
      formula: '√(h × (D − h))',
      source: sharma,
      given: depthAndCutter,
    },
    travel: {
      name: 'travel of one cut',
      symbol: 'L',
      value: { length: L },
      unit,
      formula: 'F + A + O',
      source: sharma,
      given: [
        givenLength('F', 'face', asked.face, unit, 'typed'),
        givenLength('A', 'approach', A, unit, 'worked out'),
        givenLength('O', 'overrun', O, unit, asked.overrun ? 'typed' : 'worked out'),
      ],
      note: asked.overrun ? 'Overrun as typed.' : 'Overrun as long as the approach: the cutter leaves clear of the blank.',
    },
    cutTime: {
      name: 'time of one cut',
      symbol: 't',
      value: minutes(minutesAtFeed(inUnit(L, unit), f), 2),
      unit,
      formula: 'L ÷ f',
      source: sharma,
      given: [cut, feed],
    },
    cutting: {
      name: 'time in the cut',
      symbol: 'Tc',
      value: minutes(gearMinutes(asked.teeth, rounds, inUnit(L, unit), f, 0), 0),
      unit,
      formula: 'N × r × L ÷ f',
      source: 'derived: every tooth is cut once in each round',
      given: [teeth, times, cut, feed],
    },
    gearTime: {
      name: 'time of the gear',
      symbol: 'T',
      value: minutes(gearMinutes(asked.teeth, rounds, inUnit(L, unit), f, indexMinutes), 0),
      unit,
      formula: 'N × r × (L ÷ f + i)',
      source: 'derived: every tooth is cut and indexed once in each round',
      given: [teeth, times, cut, feed, index],
    },
  } satisfies Record<string, Figure>;
  return { figures, cautions: [] };
}
