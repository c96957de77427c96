import { expect, it } from 'vitest';
import type { Drawing, Mark } from '../../../lib/drawing/drawing.ts';
import { headGearsDrawing } from '../../../lib/drawing/gear-train-drawing.ts';

const head = (drivers: readonly number[], driven: readonly number[], idlers: readonly number[]): Drawing =>
  headGearsDrawing({ drivers, driven, idlers, plate: 'with' });

/** The bends and heads of arrows are the only outlines of such a picture. */
const arrowPoints = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.draw === 'outline' ? mark.points : []));

/** Over a word that stands on its middle, or nearer to it than a third of a letter. */
const within = ({ at: [x, y], says, size }: Extract<Mark, { draw: 'text' }>, [px, py]: readonly [number, number]): boolean =>
  Math.abs(px - x) < (says.length * size * 0.6) / 2 && py > y - size * 0.1 && py < y + size * 1.25;

it.each([
  ['one of 24 on the spindle', head([24], [48], [])],
  ['two small idlers', head([56], [40], [24, 24])],
  ['small wheels before a large one', head([24], [100], [24, 24])],
  ['two on a stud', head([24, 32], [64, 28], [24])],
  ['the smallest beside the largest', head([20], [127], [])],
])('%s: no arrow lies over the name of a shaft at 360 px', (_, { marks }) => {
  const names = marks.flatMap((mark) => (mark.draw === 'text' && /^[a-z]/.test(mark.says) && !mark.says.includes(':') ? [mark] : []));
  expect(names.map(({ says }) => says)).toContain('spindle');
  const points = arrowPoints(marks);
  expect(points.length).toBeGreaterThan(20);
  for (const name of names)
    expect(
      points.filter((point) => within(name, point)),
      name.says,
    ).toEqual([]);
});
