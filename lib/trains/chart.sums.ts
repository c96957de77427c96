import type { Answer, AnswerTable } from '../figure/figure.ts';
import { printNumber } from '../values/print.ts';
import type { Ratio } from '../values/ratio.ts';
import { type ChartLine, chartOf, USUAL_NEAR } from './chart.ts';
import { countedFrom } from './counted.ts';
import { type Made, type MakingOrder, makingOrder } from './making-order.ts';
import { millionths, trainWords } from './train-words.ts';
import type { Wanted } from './wanted.ts';

const counted = countedFrom('derived: for each line the nearest train of two or four wheels, by sorted products of its two sides');

export type ChartAsked = {
  readonly list: readonly Wanted[];
  readonly screw: Ratio;
  readonly drawer: readonly number[];
  /** Wheels that are missing, or that might be made: what each would bring back. */
  readonly missing: readonly number[];
  readonly near?: number;
};

const chartTable = (lines: readonly ChartLine[]): AnswerTable => ({
  title: 'The list with today’s drawer',
  unit: 'in',
  heads: ['wanted', 'state', 'nearest train', 'error'],
  rows: lines.map(({ wanted, state, best }) => [
    wanted.says,
    state,
    best ? trainWords(best.train) : 'none',
    best ? (state === 'exact' ? 'exact' : millionths(best.error)) : '–',
  ]),
});

const madeRow = ({ teeth, exact, brings }: Made) => [{ count: teeth }, { count: exact }, brings.join(', ') || 'nothing yet'];

const makingTables = ({ alone, order }: MakingOrder): AnswerTable[] =>
  order.length === 0
    ? []
    : [
        {
          title: 'Each wheel as if it alone were made',
          unit: 'in',
          heads: ['wheel', 'exact then', 'brings back'],
          rows: alone.map(madeRow),
        },
        { title: 'The order to make them in', unit: 'in', heads: ['wheel', 'exact then', 'brings back'], rows: order.map(madeRow) },
      ];

/**
 * A chart of threads, feeds or leads with today's drawer: exact, near or lost; what each wheel made would bring back; the best order.
 * Errors as in nearestTrains and makingOrder.
 */
export function chartAnswer({ list, screw, drawer, missing, near = USUAL_NEAR }: ChartAsked): Answer<'exact' | 'near' | 'lost'> {
  const lines = chartOf(list, screw, drawer, near);
  const many = (state: ChartLine['state']): number => lines.filter((line) => line.state === state).length;
  const order = makingOrder(list, screw, drawer, missing);
  return {
    figures: {
      exact: counted('Exact today', 'E', many('exact')),
      near: counted('Near today', 'N', many('near')),
      lost: counted('Lost today', 'L', many('lost')),
    },
    cautions: [
      {
        name: 'Near',
        says: `Near is taken as within ${printNumber(near * 1e6, 0)} in a million of the pitch; a judgement; the sum of the chart takes another.`,
        weight: 'note',
      },
    ],
    says: order.says,
    tables: [chartTable(lines), ...makingTables(order)],
  };
}
