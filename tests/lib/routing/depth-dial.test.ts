import { expect, it } from 'vitest';
import { dialLash } from '../../../lib/routing/depth-dial.ts';
import type { Dial } from '../../../lib/tooling/tooling.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { evaluateFigure } from '../evaluate.ts';

const dial = (more: Partial<Dial>): Dial => ({ reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 125, ...more });

// derived: one division more than the lash takes; 0.012 is 12 whole divisions, 0.0125 is 12 and a half, 0.31 mm is 15 and a half of 0.02
it.each([
  [dial({ lash: inches(0.012) }), 13],
  [dial({ lash: inches(0.0125) }), 13],
  [dial({ lash: inches(0) }), 1],
  [dial({ unit: 'mm', division: millimetres(0.02), lash: millimetres(0.31) }), 16],
])('%o: back %i divisions', (one, back) => {
  const { dialLash: figure } = dialLash(one);
  expect(figure?.value).toEqual({ count: back, unit: 'divisions' });
  const worked = figure && evaluateFigure(figure);
  expect(worked?.worked).toBe(back);
});

it('nothing is said of a dial whose lash nobody has measured, or of none', () => {
  expect(dialLash(dial({}))).toEqual({});
  expect(dialLash(null)).toEqual({});
});
