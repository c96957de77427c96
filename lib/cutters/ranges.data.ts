/**
 * One numbered form cutter: the tooth counts that it serves (to null: up to a rack), and the count that its form is exact for
 * where the treatise names one.
 */
export type NumberedCutter = {
  readonly number: string;
  readonly from: number;
  readonly to: number | null;
  readonly treatiseCount: number | null;
  readonly source: string;
};

const MAKER = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, ch. VIII, p. 149';

/** Where the two opinions come from on the count that a numbered cutter is exact for. */
export const LOW_END_SOURCE = 'trade practice, each cutter made for the lowest count of its range: value from memory';
export const TREATISE_SOURCE =
  'J. Rose, Modern Machine-Shop Practice, vol. I, table of the eight involute cutters and the counts they are correct for';

/**
 * The eight numbers. Ranges: the maker's treatise. Counts: Rose's table, which itself prints 12 to 14 for No. 8;
 * the maker prints 12 and 13, and 14 is No. 7's own, so the maker is followed.
 */
export const WHOLE_NUMBERS: readonly NumberedCutter[] = [
  { number: '1', from: 135, to: null, treatiseCount: 200, source: MAKER },
  { number: '2', from: 55, to: 134, treatiseCount: 68, source: MAKER },
  { number: '3', from: 35, to: 54, treatiseCount: 40, source: MAKER },
  { number: '4', from: 26, to: 34, treatiseCount: 29, source: MAKER },
  { number: '5', from: 21, to: 25, treatiseCount: 22, source: MAKER },
  { number: '6', from: 17, to: 20, treatiseCount: 18, source: MAKER },
  { number: '7', from: 14, to: 16, treatiseCount: 16, source: MAKER },
  { number: '8', from: 12, to: 13, treatiseCount: 13, source: MAKER },
];

/**
 * The half numbers, which that maker sold from 2 to 8 DP. The page as transcribed gives No. 4½ "from 23 to 35": a misprint for 25,
 * since No. 4 begins at 26. The line of No. 7½ was not read.
 */
export const HALF_NUMBERS: readonly NumberedCutter[] = [
  { number: '1½', from: 80, to: 134, treatiseCount: null, source: MAKER },
  { number: '2½', from: 42, to: 54, treatiseCount: null, source: MAKER },
  { number: '3½', from: 30, to: 34, treatiseCount: null, source: MAKER },
  { number: '4½', from: 23, to: 25, treatiseCount: null, source: `${MAKER} (35 in the transcript, read as 25)` },
  { number: '5½', from: 19, to: 20, treatiseCount: null, source: MAKER },
  { number: '6½', from: 15, to: 16, treatiseCount: null, source: MAKER },
  { number: '7½', from: 13, to: 13, treatiseCount: null, source: 'value from memory' },
];
