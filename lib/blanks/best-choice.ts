import { DomainError } from '../figure/domain-error.ts';
import { cheapest, type Given } from './cheapest.ts';
import { type Field, mostRows } from './matching.ts';

/**
 * The choice in plain numbers. rows: missing wheels; wheels: what may be cut. metal: whole number taken off by a pair. original: 1 for an
 * original wheel. loss: how sorry one is to cut this one of its like (good teeth, bad bore). ratios: how many ratios there are with
 * these rows made.
 */
export type Table = Field & {
  readonly metal: readonly (readonly number[])[];
  readonly original: readonly number[];
  readonly loss: readonly number[];
  readonly ratios: (made: readonly number[]) => number;
};

/** A choice measured by TRADE's rules, in their order; the first two are better when greater, the others when less. */
export type Score = {
  readonly made: number;
  readonly ratios: number;
  readonly originals: number;
  readonly metal: number;
  readonly loss: number;
};
export type Scored = { readonly given: readonly Given[]; readonly score: Score };

/** The most sets of rows whose ratios are counted before the choice is refused as too wide. */
const MOST_SETS = 3000;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, x) => total + x, 0);

export function scoreOf(table: Table, given: readonly Given[]): Score {
  return {
    made: given.length,
    ratios: table.ratios(given.map(({ row }) => row).sort((a, b) => a - b)),
    originals: sum(given.map(({ wheel }) => table.original[wheel] ?? 0)),
    metal: sum(given.map(({ row, wheel }) => table.metal[row]?.[wheel] ?? 0)),
    loss: sum(given.map(({ wheel }) => table.loss[wheel] ?? 0)),
  };
}

/**
 * The last three rules and the tie rule in one whole number. The tie rule: the first row takes the foremost wheel that it can in an
 * otherwise equal choice, then the second, and a row that is made comes before one that is not.
 */
function costOf(table: Table): (row: number, wheel: number) => bigint {
  const rows = table.able.length;
  const wheels = table.group.length;
  const most = (numbers: readonly number[]) => BigInt(1 + rows * Math.max(0, ...numbers));
  const tie = BigInt(wheels + 1);
  const tieAll = tie ** BigInt(rows + 1);
  const lossAll = most(table.loss);
  const metalAll = most(table.metal.flat());
  return (row, wheel) => {
    const rules = (BigInt(table.original[wheel] ?? 0) * metalAll + BigInt(table.metal[row]?.[wheel] ?? 0)) * lossAll;
    return (rules + BigInt(table.loss[wheel] ?? 0)) * tieAll + BigInt(wheel - wheels) * tie ** BigInt(rows - row);
  };
}

/** All sets of `size` out of `rows`, in order. */
function* setsOf(rows: readonly number[], size: number, from = 0): Generator<number[]> {
  if (size === 0) yield [];
  else
    for (let at = from; at <= rows.length - size; at++)
      for (const rest of setsOf(rows, size - 1, at + 1)) yield [rows[at] as number, ...rest];
}

const choose = (n: number, k: number): number =>
  Array.from({ length: k }, (_, i) => (n - i) / (i + 1)).reduce((product, x) => product * x, 1);

function refuseWide(rows: number, most: number): void {
  if (choose(rows, most) <= MOST_SETS) return;
  throw new DomainError({
    given: `${rows} missing wheels could be made, but only ${most} of them at once.`,
    limit: `That is more than ${MOST_SETS} ways to choose which.`,
    tryThis: 'Leave out some that can be done without, or choose one pair by hand.',
    about: ['missing'],
  });
}

/** The sets of rows that bring back the most ratios among all that can be made together. */
function bestSets(table: Table, rows: readonly number[], most: number): number[][] {
  refuseWide(rows.length, most);
  let [best, sets]: [number, number[][]] = [Number.NEGATIVE_INFINITY, []];
  for (const set of setsOf(rows, most)) {
    if (mostRows(table, set) < most) continue;
    const ratios = table.ratios(set);
    if (ratios > best) [best, sets] = [ratios, []];
    if (ratios === best) sets.push(set);
  }
  return sets;
}

const totalOf = (given: readonly Given[], cost: (row: number, wheel: number) => bigint): bigint =>
  given.reduce((total, { row, wheel }) => total + cost(row, wheel), 0n);

/** The best choice, exactly: most made; most ratios; fewest originals; least metal; least loss among like wheels; then the tie rule. */
export function bestChoice(table: Table): Scored {
  const rows = table.able.flatMap((able, row) => (able.some(Boolean) ? [row] : []));
  const most = mostRows(table, rows);
  const cost = costOf(table);
  const sets = bestSets(table, rows, most);
  const free = cheapest(table, rows, cost);
  const freeSet = free.map(({ row }) => row).join();
  if (sets.some((set) => set.join() === freeSet)) return { given: free, score: scoreOf(table, free) };
  const each = sets.map((set) => cheapest(table, set, cost)).map((given) => ({ given, total: totalOf(given, cost) }));
  const best = each.reduce((least, one) => (one.total < least.total ? one : least));
  return { given: best.given, score: scoreOf(table, best.given) };
}
