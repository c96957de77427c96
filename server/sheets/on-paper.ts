import type { Drawing, Mark, Point } from '../../lib/drawing/drawing.ts';

const point = ([x, y]: Point, by: number): Point => [x * by, y * by];

function mark(one: Mark, by: number): Mark {
  if (one.draw === 'line') return { ...one, from: point(one.from, by), to: point(one.to, by) };
  if (one.draw === 'circle') return { ...one, middle: point(one.middle, by), radius: one.radius * by };
  if (one.draw === 'outline') return { ...one, points: one.points.map((each) => point(each, by)) };
  if (one.draw === 'hatch') return { ...one, rings: one.rings.map((ring) => ring.map((each) => point(each, by))) };
  if (one.draw === 'text') return { ...one, at: point(one.at, by), size: one.size * by };
  return { ...one, from: point(one.from, by), to: point(one.to, by), size: one.size * by };
}

/** The same drawing smaller on the paper, letters and all; no longer to be measured as it stands. by: 0.5 for 1:2. */
export const smaller = (drawing: Drawing, by: number): Drawing => ({
  ...drawing,
  toScale: false,
  low: point(drawing.low, by),
  high: point(drawing.high, by),
  marks: drawing.marks.map((one) => mark(one, by)),
});

/** Dimensions in the one unit that the dial reads: the other unit left off. */
export const inOneUnit = (drawing: Drawing): Drawing => ({
  ...drawing,
  marks: drawing.marks.map((one) => {
    if (one.draw !== 'dimension') return one;
    const { also: _other, ...rest } = one;
    return rest;
  }),
});
