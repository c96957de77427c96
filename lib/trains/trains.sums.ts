import type { Answer, AnswerTable, Caution, Figure } from '../figure/figure.ts';
import { costOfMissing, type MissingCost, type WheelsAsked } from './missing-cost.ts';
import type { RatioCount } from './ratio-count.ts';

const COUNTED = 'derived: every train of two and of four wheels formed, each value counted once, in whole fractions';
const ONE_EACH = 'one wheel of each number';
const REALLY = 'the wheels that really lie there';

export type RatiosKey = 'complete' | 'today' | 'lost' | 'reallyToday' | 'reallyAllMade';

const ratios = (count: number) => ({ count, unit: 'ratios' }) as const;

function countFigure(name: string, symbol: string, { simple, compound, distinct }: RatioCount, note: string): Figure {
  return {
    name,
    symbol,
    value: ratios(distinct),
    unit: 'in',
    formula: 'S + C',
    source: COUNTED,
    given: [
      { symbol: 'S', name: 'ratios of two wheels', value: ratios(simple), from: 'worked out' },
      { symbol: 'C', name: 'ratios that only four wheels give', value: ratios(compound), from: 'worked out' },
    ],
    note,
  };
}

function lostFigure({ complete, today, lost }: MissingCost['oneOfEach']): Figure {
  return {
    name: `Ratios lost today, ${ONE_EACH}`,
    symbol: 'L',
    value: ratios(lost),
    unit: 'in',
    formula: 'A − B',
    source: COUNTED,
    given: [
      { symbol: 'A', name: 'ratios of the complete set', value: ratios(complete.distinct), from: 'worked out' },
      { symbol: 'B', name: 'ratios today', value: ratios(today.distinct), from: 'worked out' },
    ],
  };
}

const afterEachTable = ({ afterEach, oneOfEach }: MissingCost): AnswerTable => ({
  title: 'After each wheel is made',
  unit: 'in',
  heads: ['wheel made', 'cut from', `ratios, ${ONE_EACH}`, 'brought back', `ratios, ${REALLY}`],
  rows: afterEach.map((one) => [
    { count: one.teeth },
    one.from === null ? 'stock' : { count: one.from },
    { count: one.oneOfEach.distinct },
    { count: one.oneOfEach.distinct - oneOfEach.today.distinct },
    { count: one.reallyThere.distinct },
  ]),
});

const spareWords = (wheels: readonly number[]): string => (wheels.length === 0 ? 'no spare' : `the ${wheels.join(', ')}`);

const countsNote = (cost: MissingCost): Caution => ({
  name: 'Which count',
  says: `Ratios are counted by value: two wheels or four, turned over counts again, 1 to 1 once if the wheels give it. “${ONE_EACH}” takes each number that belongs once; “${REALLY}” lets a like pair stand in one train. All made uses up ${spareWords(cost.usedUp)}.`,
  weight: 'note',
});

/**
 * What the missing wheels cost, as figures: both counts named, after each single wheel, and which to make first in `says`.
 * Errors and limits as in costOfMissing.
 */
export function ratiosAnswer(asked: WheelsAsked): Answer<RatiosKey> {
  const cost = costOfMissing(asked);
  const { oneOfEach, reallyThere } = cost;
  return {
    figures: {
      complete: countFigure(`Ratios of the complete set, ${ONE_EACH}`, 'A', oneOfEach.complete, 'Nothing missing.'),
      today: countFigure(`Ratios today, ${ONE_EACH}`, 'B', oneOfEach.today, `Missing: ${cost.missing.join(', ') || 'none'}.`),
      lost: lostFigure(oneOfEach),
      reallyToday: countFigure(`Ratios today, ${REALLY}`, 'D', reallyThere.today, `Spares: ${cost.spares.join(', ') || 'none'}.`),
      reallyAllMade: countFigure(`Ratios with all made, ${REALLY}`, 'E', reallyThere.allMade, `Uses up ${spareWords(cost.usedUp)}.`),
    },
    cautions: [countsNote(cost)],
    says: cost.first.says,
    tables: cost.afterEach.length === 0 ? [] : [afterEachTable(cost)],
  };
}
