import { DomainError } from '../figure/domain-error.ts';
import { eachRatio } from './each-ratio.ts';
import { checkWheels, sharedWheels } from './ratio-count.ts';
import { oneOfEachThere, sortedWheels } from './wheel-lists.ts';

/**
 * Where the ratios of a set fall on a logarithmic line cut into columns: 1 to 1 in the middle, 1 ÷ greatest at the left end and
 * greatest at the right. kept and lost: how many different ratios fall in each column that the wheels of today give, and do not give.
 */
export type RatioMarks = { readonly greatest: number; readonly kept: readonly number[]; readonly lost: readonly number[] };

const LEAST_PIXELS = 10;
const MOST_PIXELS = 4000;
/** Its place among the two sets that are gone through together; every ratio is in the first, the complete set. */
const TODAY = 1;

/**
 * The picture of what missing wheels cost, one wheel of each number.
 *   column = floor((ln ratio + ln greatest) ÷ (2 ln greatest) × pixels)
 * greatest: the greatest ratio of the complete set. A ratio below 1 is marked in the mirrored column.
 * Source: derived: ratios as in countRatios. Throws DomainError for more than 60 wheels, or a width outside 10 to 4,000 columns.
 */
export function ratioMarks(asked: { belongs: readonly number[]; drawer: readonly number[]; pixels: number }): RatioMarks {
  const { belongs, drawer, pixels } = asked;
  checkAsked(belongs, drawer, pixels);
  const complete = sortedWheels([...new Set(belongs)]);
  const greatest = greatestRatio(complete);
  const wholeLine = 2 * Math.log(greatest);
  const [kept, lost] = [new Array<number>(pixels).fill(0), new Array<number>(pixels).fill(0)];
  eachRatio(sharedWheels([complete, oneOfEachThere(belongs, drawer)]), 4, (value, bits) => {
    mark((bits & (1 << TODAY)) !== 0 ? kept : lost, greatest === 1 ? 0.5 : 0.5 + Math.log(value) / wholeLine, value === 1);
  });
  return { greatest, kept, lost };
}

/** The two greatest wheels over the two least, or with fewer than four wheels the greatest over the least. */
function greatestRatio(sorted: readonly number[]): number {
  const least = sorted[0];
  if (least === undefined) return 1;
  const [second, last, most] = [sorted[1] ?? least, sorted[sorted.length - 2] ?? least, sorted[sorted.length - 1] ?? least];
  return sorted.length < 4 ? most / least : (last * most) / (least * second);
}

/** across: how far along the line, from 0.5 for 1 to 1 up to 1. The same ratio turned over goes into the mirrored column. */
function mark(columns: number[], across: number, isOneToOne: boolean): void {
  const column = Math.min(columns.length - 1, Math.floor(across * columns.length));
  (columns[column] as number) += 1;
  if (!isOneToOne) (columns[columns.length - 1 - column] as number) += 1;
}

function checkAsked(belongs: readonly number[], drawer: readonly number[], pixels: number): void {
  for (const wheels of [belongs, drawer]) checkWheels(wheels);
  if (Number.isInteger(pixels) && pixels >= LEAST_PIXELS && pixels <= MOST_PIXELS) return;
  throw new DomainError({
    given: `The picture is to be ${pixels} columns wide.`,
    limit: `It may be from ${LEAST_PIXELS} to ${MOST_PIXELS}, in whole numbers.`,
    tryThis: 'Try 600.',
    about: ['pixels'],
  });
}
