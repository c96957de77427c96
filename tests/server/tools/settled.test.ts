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
  expect(readCircles('21-23–27 - 29')).toEqual({ ok: true, value: [21, 23, 27, 29] });
});

it.each(['21/23/27', '21..27', '21-401', '1-2', '21 to 27'])('“%s” is no row of circles, and it says how to write one', (text) => {
  const one = readCircles(text);
  expect(one.ok ? '' : one.problem).toMatch(/is no circle of 2 to 400 holes\. Type the holes of each circle with blanks between: 15 16/);
});
