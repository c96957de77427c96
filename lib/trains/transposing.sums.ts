import type { Answer, AnswerTable } from '../figure/figure.ts';
import { printNumber } from '../values/print.ts';
import type { Ratio } from '../values/ratio.ts';
import { checkChart, nearestIn, onceEach, USUAL_NEAR } from './chart.ts';
import { countedFrom } from './counted.ts';
import type { Train } from './nearest.ts';
import { millionths, trainWords } from './train-words.ts';
import { TRANSPOSING } from './transposing.data.ts';
import type { Wanted } from './wanted.ts';

const counted = countedFrom('derived: the nearest train of two or four wheels, by sorted products of its two sides');

export type TransposingAsked = { readonly list: readonly Wanted[]; readonly screw: Ratio; readonly drawer: readonly number[] };
/** errors: null where the wheels give no train at all. */
type Tried = { readonly says: string; readonly errors: readonly (number | null)[]; readonly trains: readonly (Train | null)[] };

const withAdded = (drawer: readonly number[], add: readonly number[]): number[] => [
  ...drawer,
  ...add.filter((teeth) => !drawer.includes(teeth)),
];

function tried(says: string, wheels: readonly number[], { list, screw }: TransposingAsked): Tried {
  const found = onceEach(list, screw, nearestIn(wheels));
  return { says, errors: found.map((one) => one?.error ?? null), trains: found.map((one) => one?.trains[0] ?? null) };
}

const exactIn = ({ errors }: Tried): number => errors.filter((error) => error === 0).length;
const nearIn = ({ errors }: Tried): number => errors.filter((error) => error !== null && Math.abs(error) <= USUAL_NEAR).length;
/** null: some of the list has no train at all, which is worse than any error. */
const worstIn = ({ errors }: Tried): number | null =>
  errors.reduce((worst, error) => (worst === null || error === null ? null : Math.abs(error) > Math.abs(worst) ? error : worst), 0);
const sizeOf = (error: number | null): number => Math.abs(error ?? Number.MAX_VALUE);

/**
 * Threads of the other system on a lead screw: what the drawer gives today, and what each transposing wheel or pair would add.
 * Errors as in nearestTrains. Example: 8 TPI screw, wheels by fives: 1 mm is exact with a 127 and 125 in a million long with a 63.
 */
export function transposingAnswer(asked: TransposingAsked): Answer<'exact' | 'near'> {
  checkChart(asked.list, asked.drawer);
  const today = tried('today', asked.drawer, asked);
  const more = TRANSPOSING.map(({ wheels }) => tried(wheels.join(' and '), withAdded(asked.drawer, wheels), asked));
  const [best] = [...more].sort((a, b) => exactIn(b) - exactIn(a) || nearIn(b) - nearIn(a) || sizeOf(worstIn(a)) - sizeOf(worstIn(b)));
  return {
    figures: { exact: counted('Exact today', 'E', exactIn(today)), near: counted('Exact or near today', 'N', nearIn(today)) },
    cautions: [],
    says: saysOf(today, best, asked),
    tables: [summaryTable([today, ...more]), pitchTable(asked, today, more)],
  };
}

function saysOf(today: Tried, best: Tried | undefined, { list }: TransposingAsked): string {
  if (!best || (exactIn(best) <= exactIn(today) && nearIn(best) <= nearIn(today)))
    return 'None of the transposing wheels adds anything to today’s drawer.';
  return `A ${best.says} adds most: ${exactIn(best)} of ${list.length} exact, ${nearIn(best)} within ${printNumber(USUAL_NEAR * 1e6, 0)} in a million.`;
}

const summaryTable = (rows: readonly Tried[]): AnswerTable => ({
  title: 'With each transposing wheel or pair',
  unit: 'in',
  heads: ['with', 'exact', 'exact or near', 'worst error'],
  rows: rows.map((row) => [row.says, { count: exactIn(row) }, { count: nearIn(row) }, errorWords(worstIn(row))]),
});

const pitchTable = ({ list }: TransposingAsked, today: Tried, more: readonly Tried[]): AnswerTable => ({
  title: 'Pitch by pitch',
  unit: 'in',
  heads: ['wanted', 'train today', 'error today', ...more.map(({ says }) => `with ${says}`)],
  rows: list.map((wanted, n) => {
    const train = today.trains[n];
    return [wanted.says, train ? trainWords(train) : 'none', ...[today, ...more].map(({ errors }) => errorWords(errors[n] ?? null))];
  }),
});

const errorWords = (error: number | null): string => (error === null ? 'no train' : error === 0 ? 'exact' : millionths(error));
