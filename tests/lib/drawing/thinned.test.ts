import { expect, it } from 'vitest';
import type { Point } from '../../../lib/drawing/drawing.ts';
import { thinned } from '../../../lib/drawing/wheel-outline.ts';

const circle: Point[] = Array.from({ length: 73 }, (_, i) => [10 * Math.cos((i * Math.PI) / 36), 10 * Math.sin((i * Math.PI) / 36)]);

/** Distance of a point from a stretch of line. */
const fromStretch = ([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const length = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length));
  return Math.hypot(px - ax - t * (bx - ax), py - ay - t * (by - ay));
};

it.each([0.05, 0.2, 1])('every point left out of a circle lies within %s mm of what stays: no round bore becomes a diamond', (seen) => {
  const kept = thinned(circle, seen);
  expect(kept.length).toBeLessThan(circle.length);
  for (const point of circle) {
    const near = Math.min(...kept.slice(1).map((end, i) => fromStretch(point, kept[i] as Point, end)));
    expect(near).toBeLessThanOrEqual(seen);
  }
});
