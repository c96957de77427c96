import type { Reading } from '../../db/readings.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import { inUnit, type Length } from '../../lib/values/length.ts';
import { printShort } from '../../lib/values/print.ts';
import { cell, heads, linkCell } from '../cells.ts';
import type { TableView } from '../page.ts';
import { sizeWords } from '../sizes.ts';
import { readingWords } from './reading-forms.ts';

function readingWordsOf(reading: Reading): string {
  if ('angle' in reading.shown) return `${printShort(toDegrees(reading.shown.angle), 2)}°`;
  if (!('length' in reading.shown)) return '';
  const { unit } = reading.lengthForm;
  const off = reading.error === null ? '' : ` ± ${printShort(inUnit(reading.error as Length, unit), 6)} ${unit}`;
  const pin = reading.pin_nm === null ? '' : `, pins ${sizeWords(reading.pin_nm as Length, { unit, places: 4 })}`;
  const mate = reading.mate_teeth === null ? '' : `, with ${reading.mate_teeth} teeth`;
  return `${sizeWords(reading.shown.length, reading.lengthForm)}${off}${pin}${mate}`;
}

/** One reading in a sentence, for the page that asks before it is struck. */
export const readingSentence = (reading: Reading): string =>
  `${readingWords(reading.what, reading.place_no, reading.over_k)}: ${readingWordsOf(reading)}, read on ${reading.read_on.slice(0, 10)}${reading.instrument === '' ? '' : ` with ${reading.instrument}`}.`;

/** All readings, oldest first; each leads to where it may be struck, for those who may. */
export function readingsTable(readings: readonly Reading[], strike: ((id: number) => string) | null): TableView | null {
  if (readings.length === 0) return null;
  return {
    title: '',
    heads: heads(['Reading', 'name'], ['Size', 'figure'], ['With', 'words'], ['On', 'words']),
    rows: readings.map((reading) => {
      const name = readingWords(reading.what, reading.place_no, reading.over_k);
      return {
        id: `reading-${reading.id}`,
        cells: [
          strike ? linkCell(name, strike(reading.id)) : cell(name),
          cell(readingWordsOf(reading)),
          cell(reading.instrument || '–'),
          cell(reading.read_on.slice(0, 10)),
        ],
      };
    }),
    empty: '',
  };
}
