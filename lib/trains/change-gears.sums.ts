import type { Answer, Caution, Figure, Given, Value } from '../figure/figure.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { printNumber, printShort } from '../values/print.ts';
import { type Ratio, toNumber } from '../values/ratio.ts';
import { arrangementsOf } from './arrangements.ts';
import { type BestAsked, bestTrains, type Ranked } from './best-trains.ts';
import { arrangementsTable, rowsTable, studsTable } from './change-gears.tables.ts';
import { countedFrom } from './counted.ts';
import { nearerWith, type WithMissing } from './nearer-with.ts';
import { millionths, reachWords, stands, trainWords, waitsWords } from './train-words.ts';
import { inchesOf, trainFor, type Wanted } from './wanted.ts';

const RULE =
  'F. D. Jones, Turning and Boring (1914), change gears for thread cutting: threads per inch of the screw to those wanted as drivers to driven';
const SEARCHED = 'derived: every train that the wheels give, by sorted products of its two sides';

export type ChangeGearsKey = 'ratio' | 'wheels' | 'train' | 'cuts' | 'error' | 'changes';

export type ChangeGearsAsked = Omit<BestAsked, 'target'> & {
  readonly wanted: Wanted;
  /** The lead that equal wheels cut, in inches: that of the screw, where spindle and stud turn alike. */
  readonly screw: Ratio;
  /** Over what length of work the error matters. */
  readonly over: Length;
  readonly unit: LengthUnit;
  /** Wheels missing from the set, any of which may be under way. */
  readonly missing?: readonly number[];
};

const one = (symbol: string, name: string, value: Value, from: Given['from'] = 'typed'): Given => ({ symbol, name, value, from });

/** The trains to choose from; the first is the best. */
export const changeGears = (asked: ChangeGearsAsked): Ranked[] => bestTrains({ ...asked, target: trainFor(asked.wanted, asked.screw) });

/**
 * Change wheels for a thread, feed or lead from those in the drawer: the best trains, the error over the length that matters, all
 * arrangements of the best, and which of them stands on the quadrant.
 * Errors as in nearestTrains and reachOf. Example: 11 TPI on a 4 TPI screw from 20 to 100 by fives with two of each: 20 ÷ 55 and others, exact.
 */
export function changeGearsAnswer(asked: ChangeGearsAsked, rows: readonly Ranked[] = changeGears(asked)): Answer<ChangeGearsKey | 'ratio'> {
  const best = toSet(rows);
  const ratio = ratioFigure(asked);
  if (!best)
    return {
      figures: { ratio } as Answer<ChangeGearsKey>['figures'],
      cautions: [],
      says: 'The drawer gives no train at all: it holds fewer than two wheels.',
    };
  return {
    figures: {
      wheels: wheelsFigure(best),
      ratio,
      train: trainFigure(best),
      cuts: cutsFigure(best, asked),
      error: errorFigure(best, asked),
      changes: changesFigure(best),
    },
    cautions: [GUARD, ...(best.near.exact ? [] : [notExact(best, rows, asked)])],
    says: saysOf(rows, asked),
    tables: [
      rowsTable(rows, asked.over),
      ...studsTable(best, asked.unit),
      ...(asked.quadrant ? [arrangementsTable(best.train, { ...asked.quadrant, drawer: asked.wheels })] : []),
    ],
  };
}

const GUARD: Caution = {
  name: 'Wheels',
  says: 'Isolate before changing wheels; turn through by hand with the lash felt; cover shut before starting.',
  weight: 'beware',
};

function ratioFigure({ wanted, screw }: ChangeGearsAsked): Figure {
  const target = trainFor(wanted, screw);
  const size = inchesOf(wanted) / toNumber(screw);
  return {
    name: 'Ratio wanted, drivers to driven',
    symbol: 'R',
    value: target.holdsPi ? { number: size, unit: '', places: 9 } : { ratio: [Number(target.num), Number(target.den)] },
    unit: 'in',
    formula: wanted.pi === 1 ? 'π × L ÷ S' : 'L ÷ S',
    source: RULE,
    given: [
      one('L', wanted.pi === 1 ? 'lead wanted, as a part of π, inches' : 'lead wanted, inches', { ratio: wanted.size }),
      one('S', 'lead with equal wheels, inches', { ratio: screw }),
    ],
  };
}

/** Which wheel drives which, from the source on, as it stands on the quadrant and in the picture. */
function meshWords({ train, placed }: Ranked): string {
  const pairs =
    placed && 'shafts' in placed
      ? placed.shafts.slice(1).map(({ driven, idler }, n) => [placed.shafts[n]?.driver, `${driven}${idler ? ' (idler)' : ''}`])
      : arrangementsOf(train)[0]?.pairs;
  return (pairs ?? []).map(([driver, driven]) => `${driver} drives ${driven}`).join(', ');
}

export const wheelsFigure = (best: Ranked): Figure => ({
  name: 'Wheels to set, from the source on',
  symbol: '',
  value: { words: meshWords(best) },
  unit: 'in',
  formula: '',
  source: SEARCHED,
  given: [],
});

const LETTERS = ['A', 'B', 'C', 'D', 'E', 'F'] as const;

function trainFigure({ train, near }: Ranked): Figure {
  const [drivers, driven] = [LETTERS.slice(0, train.drivers.length), LETTERS.slice(train.drivers.length, 2 * train.drivers.length)];
  const below = driven.join(' × ');
  return {
    name: 'Ratio of the train',
    symbol: 'T',
    value: { ratio: near.ratio },
    unit: 'in',
    formula: `${drivers.join(' × ')} ÷ ${driven.length > 1 ? `(${below})` : below}`,
    source: SEARCHED,
    given: [
      ...train.drivers.map((teeth, n) => one(drivers[n] as string, `driver ${n + 1}`, { count: teeth })),
      ...train.driven.map((teeth, n) => one(driven[n] as string, `driven ${n + 1}`, { count: teeth })),
    ],
    note: trainWords(train),
  };
}

function cutsFigure({ near }: Ranked, { screw, unit }: ChangeGearsAsked): Figure {
  const size = toNumber(near.ratio) * toNumber(screw) * (unit === 'mm' ? 25.4 : 1);
  const perInch = 1 / (toNumber(near.ratio) * toNumber(screw));
  return {
    name: 'Lead that it cuts',
    symbol: 'K',
    value: { number: size, unit, places: 7 },
    unit,
    formula: unit === 'mm' ? '25.4 × T × S' : 'T × S',
    source: RULE,
    given: [
      one('T', 'ratio of the train', { ratio: near.ratio }, 'worked out'),
      one('S', 'lead with equal wheels, inches', { ratio: screw }),
    ],
    note: `${printShort(perInch, 5)} turns to the inch.`,
  };
}

function errorFigure({ near }: Ranked, asked: ChangeGearsAsked): Figure {
  const { over, unit, wanted, screw } = asked;
  const target = trainFor(wanted, screw);
  const wantedRatio: Value = target.holdsPi
    ? { number: inchesOf(wanted) / toNumber(screw), unit: '', places: 12 }
    : { ratio: [Number(target.num), Number(target.den)] };
  return {
    name: 'Error over the length that matters',
    symbol: 'e',
    value: { number: near.error * inUnit(over, unit), unit, places: 6 },
    unit,
    formula: 'W × (T ÷ R − 1)',
    source: 'derived: the pitch error adds up thread by thread; plus = cut too long',
    given: [
      one('W', 'length that matters', { number: inUnit(over, unit), unit, places: 4 }),
      one('T', 'ratio of the train', { ratio: near.ratio }, 'worked out'),
      one('R', 'ratio wanted', wantedRatio, 'worked out'),
    ],
  };
}

const counted = countedFrom('derived: counted against what is on the machine');
const changesFigure = ({ changes }: Ranked): Figure => counted('Wheels to put on, idlers apart', 'n', changes);

const notExact = ({ near }: Ranked, [nearest]: readonly Ranked[], { over, unit }: ChangeGearsAsked): Caution => ({
  name: 'Not exact',
  says: `${nearest?.near.exact ? 'What would be exact does not stand on the quadrant' : 'Nothing exact exists with these wheels'}: off by ${printNumber(near.error * inUnit(over, unit), 6)} ${unit} over ${printShort(inUnit(over, unit))} ${unit}, ${millionths(near.error)}.`,
  weight: 'beware',
  about: 'error',
});

/** The train to put on: the best that stands on the quadrant; where none does, or none was measured, the best. */
export const toSet = (rows: readonly Ranked[]): Ranked | undefined => rows.find(stands) ?? rows[0];

const nearWords = ({ train, near }: Ranked): string => `${trainWords(train)}, ${near.exact ? 'exact' : millionths(near.error)}`;

/** The missing wheels that would bring the train nearer than the best of today. */
export const nearerThread = ({ wanted, screw, wheels, missing = [] }: ChangeGearsAsked, [best]: readonly Ranked[]): WithMissing[] =>
  nearerWith(trainFor(wanted, screw), wheels, missing, best?.near.ratio ?? null);

function saysOf(rows: readonly Ranked[], asked: ChangeGearsAsked): string {
  const [nearest] = rows as readonly [Ranked];
  const found = nearest.near.exact
    ? `Exact: ${trainWords(nearest.train)}.`
    : `No exact train of up to ${asked.upTo} wheels is in the drawer. Nearest: ${nearWords(nearest)}.${waitsWords(nearerThread(asked, rows))}`;
  if (nearest.placed === null) return found;
  if (stands(nearest)) return `${found} It stands on the quadrant.`;
  const other = rows.find(stands);
  const instead = other ? `The nearest that stands: ${nearWords(other)}.` : 'Nor does any other below.';
  return `${found} It does not stand on the quadrant: ${reachWords(nearest)} ${instead}`;
}
