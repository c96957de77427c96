import type { Answer } from '../figure/figure.ts';
import type { LengthUnit } from '../values/length.ts';
import { firstSpanCount } from './first-span.ts';

/**
 * What to measure first where only the teeth were counted: a count alone fits every pitch.
 * Example: 22 teeth: the outside, and spans over 2 and 3 teeth.
 */
export function nothingReadAnswer(teeth: number, unit: LengthUnit): Answer<'next'> {
  const k = firstSpanCount(teeth);
  return {
    says: `A tooth count alone fits every pitch. Measure the outside first, then spans over ${k} and ${k + 1} teeth.`,
    figures: {
      next: {
        name: 'Measure next',
        symbol: 'M',
        value: { words: `outside, and spans over ${k} and ${k + 1} teeth` },
        unit,
        formula: '',
        source: 'derived: the outside narrows the pitch, the difference of two spans holds through even wear',
        given: [],
      },
    },
    cautions: [],
  };
}
