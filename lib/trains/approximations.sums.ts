import type { Answer, Figure } from '../figure/figure.ts';
import { printNumber } from '../values/print.ts';
import { approximations, MOST_MEDIANTS } from './approximations.ts';
import { numberOf, type Target } from './target.ts';

const SOURCE = 'Encyclopaedia Britannica, 11th ed., Continued Fractions';

/**
 * Fractions near a ratio, each nearer than all with smaller numbers, with exact errors. most: greatest number above or below the line.
 * by: how far the ratio itself is known, as a part of it, where it was measured: fractions within it are as good as the measurement.
 */
export function approximationsAnswer(target: Target, most: number, by: number): Answer<'ratio' | 'best' | 'error'> {
  const found = approximations(target, most);
  const last = found.at(-1);
  const within = found.find(({ error }) => Math.abs(error) <= by);
  const figure = (name: string, symbol: string, value: Figure['value']): Figure => ({
    name,
    symbol,
    value,
    unit: 'in',
    formula: '',
    source: SOURCE,
    given: [],
  });
  const figures = {
    ratio: figure('Ratio', 'R', { number: numberOf(target), unit: '', places: 9 }),
    ...(last
      ? {
          best: figure('Nearest fraction', 'F', { ratio: last.ratio }),
          error: figure('Its error in a million', 'e', { number: last.error * 1e6, unit: 'in a million', places: 6 }),
        }
      : {}),
  };
  const measured = by > 0 && within ? ` ${within.ratio.join('/')} is the simplest that the measurement cannot tell from it.` : '';
  return {
    figures: figures as Answer<'ratio' | 'best' | 'error'>['figures'],
    cautions: [],
    says: last
      ? `${last.ratio.join('/')} with numbers up to ${most}${last.error === 0 ? ': exact' : ''}.${measured}`
      : `No fraction with numbers up to ${most} comes near.`,
    tables: [
      {
        title: `Each nearer than every fraction with smaller numbers; of a long run of mediants the last ${MOST_MEDIANTS}`,
        unit: 'in',
        heads: ['fraction', 'as', 'decimal', 'error in a million', 'greatest prime in it'],
        rows: found.map(({ ratio, kind, error, greatestPrime }) => [
          { ratio },
          kind,
          printNumber(ratio[0] / ratio[1], 9),
          error === 0 ? 'exact' : printNumber(error * 1e6, 4),
          { count: greatestPrime },
        ]),
      },
    ],
  };
}
