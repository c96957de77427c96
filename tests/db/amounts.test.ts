import fc from 'fast-check';
import { expect, test } from 'vitest';
import { amountOf, valueFrom } from '../../db/amounts.ts';
import { formOfText, formText } from '../../db/forms.ts';
import type { Value } from '../../lib/figure/figure.ts';
import { degrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { readingFahrenheit, riseFahrenheit } from '../../lib/values/temperature.ts';

// By hand: 3 in x 25,400,000; 14.5 x 3,600,000; 1 x 33 + 27; (5 x 250 + 62.5) x 1000; 317 x 1000.
const BY_HAND: readonly [Value, number, string][] = [
  [{ length: inches(3) }, 76_200_000, 'nm'],
  [{ angle: degrees(14.5) }, 52_200_000, 'mas'],
  [{ count: 22 }, 22, 'count'],
  [{ count: 22, unit: 'teeth' }, 22, 'count teeth'],
  [{ ratio: ratio(127, 55) }, 127, 'ratio/55'],
  [{ number: 95.5, unit: 'rpm' }, 95_500_000, 'µ rpm'],
  [{ number: 2.157, unit: '', places: 3 }, 2_157_000, 'µ3 '],
  [{ move: { turns: 1, spaces: 27, circle: 33 } }, 60, 'spaces/33'],
  [{ dial: { turns: 5, divisions: 62.5, perTurn: 250 } }, 1_312_500, 'dial/250'],
  [{ rise: riseFahrenheit(317) }, 317_000, 'rise'],
  [{ reading: readingFahrenheit(387) }, 387_000, 'reading'],
];

test.each(BY_HAND)('%j is %d %s, and back', (value, whole, unit) => {
  expect(amountOf(value)).toEqual({ unit, whole });
  expect(valueFrom(whole, unit)).toEqual(value);
});

test('words have no number', () => {
  expect(amountOf({ words: 'No. 5' })).toEqual({ unit: 'words', whole: null });
  expect(() => valueFrom(1, 'words')).toThrow(RangeError);
});

test('what does not fit a whole number is refused', () => {
  expect(() => amountOf({ number: 1e12, unit: '' })).toThrow(RangeError);
  expect(() => amountOf({ number: Number.NaN, unit: '' })).toThrow(RangeError);
});

test('any move comes back', () => {
  const move = fc
    .integer({ min: 2, max: 200 })
    .chain((circle) => fc.record({ turns: fc.nat(100), spaces: fc.nat(circle - 1), circle: fc.constant(circle) }));
  fc.assert(
    fc.property(move, (one) => {
      const { whole, unit } = amountOf({ move: one });
      expect(valueFrom(whole ?? -1, unit)).toEqual({ move: one });
    }),
  );
});

test('forms of lengths', () => {
  expect(formText({ unit: 'in', over: 64 })).toBe('in/64');
  expect(formOfText('mm.2')).toEqual({ unit: 'mm', places: 2 });
  expect(() => formOfText('mm/64')).toThrow(RangeError);
  expect(() => formOfText('cubits.2')).toThrow(RangeError);
});
