import { describe, expect, test } from 'vitest';
import { holeWords } from '../../../lib/cutters/describe.ts';
import { HALF_NUMBERS, WHOLE_NUMBERS } from '../../../lib/cutters/ranges.data.ts';
import { exactCountOf, halfNumberFor, inRange, wholeNumberFor } from '../../../lib/cutters/ranges.ts';
import { verdictOn } from '../../../lib/cutters/verdict.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';

describe('the numbers at the ends of their ranges', () => {
  test.each([
    [12, '8'],
    [13, '8'],
    [14, '7'],
    [16, '7'],
    [17, '6'],
    [20, '6'],
    [21, '5'],
    [25, '5'],
    [26, '4'],
    [34, '4'],
    [35, '3'],
    [54, '3'],
    [55, '2'],
    [134, '2'],
    [135, '1'],
    [5000, '1'],
  ])('%i teeth: No. %s', (teeth, number) => {
    expect(wholeNumberFor(teeth)?.number).toBe(number);
  });

  test.each([
    [13, '7½'],
    [14, undefined],
    [15, '6½'],
    [18, undefined],
    [19, '5½'],
    [22, undefined],
    [23, '4½'],
    [25, '4½'],
    [26, undefined],
    [29, undefined],
    [30, '3½'],
    [34, '3½'],
    [35, undefined],
    [42, '2½'],
    [54, '2½'],
    [79, undefined],
    [80, '1½'],
    [134, '1½'],
    [135, undefined],
  ])('%i teeth: half number %s', (teeth, number) => {
    expect(halfNumberFor(teeth)?.number).toBe(number);
  });

  test.each([0, 5, 11])('%i teeth: the sets do not reach so low', (teeth) => {
    expect(wholeNumberFor(teeth)).toBeNull();
  });

  test('every count from 12 up belongs to one whole number and at most one half number, which ends where its whole number ends', () => {
    for (let teeth = 12; teeth <= 300; teeth++) {
      const halves = HALF_NUMBERS.filter((one) => inRange(one, teeth));
      expect(WHOLE_NUMBERS.filter((one) => inRange(one, teeth))).toHaveLength(1);
      expect(halves.length).toBeLessThanOrEqual(1);
      if (halves[0]) expect(halves[0].to).toBe(wholeNumberFor(teeth)?.to);
    }
  });

  test('a half number, or a range of one’s own, falls back to its low end under the treatise', () => {
    expect(exactCountOf({ from: 30, to: 34 }, 'treatise')).toEqual({ count: 30, from: 'low end' });
    expect(exactCountOf({ from: 26, to: 35 }, 'treatise')).toEqual({ count: 26, from: 'low end' });
  });
});

test.each([
  [-0.0616, 'rubs'],
  [-0.0051, 'rubs'],
  [-0.004, 'hair'],
  [0, 'hair'],
  [0.02, 'hair'],
  [0.0285, 'thin'],
  [0.0597, 'thin'],
  [0.081, 'too thin'],
])('an error of %d modules at the tips: %s', (error, verdict) => {
  expect(verdictOn(error)).toBe(verdict);
});

test.each([
  [inches(0.875), '7/8 in'],
  [inches(1), '1 in'],
  [inches(1.25), '1 1/4 in'],
  [millimetres(22), '22 mm'],
  [inches(0.9371), '0.9371 in'],
])('hole %d is said as %s', (hole, words) => {
  expect(holeWords(hole)).toBe(words);
});
