import { printNumber } from '../values/print.ts';
import type { Ratio } from '../values/ratio.ts';
import type { Ranked } from './best-trains.ts';
import type { WithMissing } from './nearer-with.ts';
import type { Train } from './nearest.ts';

/** 40 × 30 ÷ 60 × 75, drivers first. */
export const trainWords = ({ drivers, driven }: Train): string => `${drivers.join(' × ')} ÷ ${driven.join(' × ')}`;

/** What a missing wheel would make of it, in a sentence with a blank before it; '' where none makes it better. */
export function waitsWords([first]: readonly WithMissing[], drift?: (ratio: Ratio) => string): string {
  if (!first) return '';
  const words = `with the ${first.teeth} that is missing: ${trainWords(first.train)}`;
  if (first.exact) return ` Exact ${words}; the job can wait for it.`;
  return ` Nearer ${words}${drift ? `, ${drift(first.ratio)}` : ''}.`;
}

/** Parts in a million, with its sign. */
export const millionths = (error: number): string =>
  `${error > 0 ? '+' : ''}${printNumber(error * 1e6, Math.abs(error) < 1e-4 ? 2 : 0)} in a million`;

/** Whether it was tried on the quadrant and stands there. */
export const stands = ({ placed }: Ranked): boolean => placed !== null && 'shafts' in placed;

/** How it does on the quadrant, in a cell of a table or a sentence. */
export const reachWords = (row: Ranked): string =>
  row.placed === null ? 'not measured' : 'shafts' in row.placed ? 'fits' : row.placed.why;
