import { DomainError } from '../figure/domain-error.ts';
import { eachRatio } from './each-ratio.ts';
import { checkWheels, sharedWheels } from './ratio-count.ts';
import { oneOfEachThere } from './wheel-lists.ts';

/**
 * Where the ratios of a set fall on a logarithmic line cut into columns: 1 to 1 in the middle, 1 ÷ greatest at the left end and
 * greatest at the right. kept and lost: how many different ratios fall in each column that the wheels of today give, and do not give.
 */
export type RatioMarks = { readonly greatest: number; readonly kept: readonly number[]; readonly lost: readonly number[] };

const LEAST_PIXELS = 10;
const MOST_PIXELS = 4000;
const [COMPLETE, TODAY] = [0, 1];

/**
 * The picture of what missing wheels cost, one wheel of each number.
 *   column = floor((ln ratio + ln greatest) ÷ (2 ln greatest) × pixels)
 * greatest: the greatest ratio of the complete set. A ratio below 1 is marked in the mirrored column.
 * Source: derived: ratios as in countRatios. Throws DomainError for more than 60 wheels, or a width outside 10 to 4,000 columns.
 */
export function ratioMarks(asked: { belongs: readonly number[]; drawer: readonly number[]; pixels: number }): RatioMarks {
  const { belongs, drawer, pixels } = asked;
  checkAsked(belongs, drawer, pixels);
  const ratios: { value: number; kept: boolean }[] = [];
  eachRatio(sharedWheels([[...new Set(belongs)], oneOfEachThere(belongs, drawer)]), 4, (value, bits) => {
    if (bits & (1 << COMPLETE)) ratios.push({ value, kept: (bits & (1 << TODAY)) !== 0 });
  });
  const greatest = ratios.reduce((most, { value }) => Math.max(most, value), 1);
  const [kept, lost] = [new Array<number>(pixels).fill(0), new Array<number>(pixels).fill(0)];
  for (const ratio of ratios) mark(ratio.kept ? kept : lost, ratio.value, greatest);
  return { greatest, kept, lost };
}

function mark(columns: number[], value: number, greatest: number): void {
  const across = greatest === 1 ? 0.5 : 0.5 + Math.log(value) / (2 * Math.log(greatest));
  const column = Math.min(columns.length - 1, Math.floor(across * columns.length));
  (columns[column] as number) += 1;
  if (value > 1) (columns[columns.length - 1 - column] as number) += 1;
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
