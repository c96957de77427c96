import { expect, it } from 'vitest';
import { readTeethRange } from '../../../server/tools/kinds/cutter.ts';
import { readCircles } from '../../../server/tools/kinds/dividing.ts';
import { settledWords } from '../../../server/tools/settled.ts';

it.each([
  [0, 0, ''],
  [1, 0, ' One operation is ready now.'],
  [2, 0, ' Two operations are ready now.'],
  [13, 1, ' 13 operations are ready now. One operation waits now.'],
])('%i ready, %i waiting: “%s”', (ready, waiting, says) => {
  expect(settledWords({ ready, waiting })).toBe(says);
});

it.each([
  ['21 to 25', 21, 25],
  ['21-25 teeth', 21, 25],
  ['135 to a rack', 135, null],
  ['135 – rack', 135, null],
  ['13', 13, 13],
])('the range %s', (text, from, to) => {
  expect(readTeethRange(text)).toEqual({ ok: true, value: { from, to } });
});

it('circles are sorted, whatever stands between them', () => {
  expect(readCircles(' 20, 15;16  17')).toEqual({ ok: true, value: [15, 16, 17, 20] });
});
