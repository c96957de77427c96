import { toRadians } from '../values/angle.ts';
import { toMm } from '../values/length.ts';
import type { Quadrant } from './quadrant.ts';
import type { Reach } from './reach.ts';

type Point = readonly [x: number, y: number];

/**
 * The slots where the quadrant stands for a train that fits, each from its nearest to its farthest stud, in the millimetres of the reach:
 *   pivot + r (cos(swing + slot), sin(swing + slot)), angles from the line towards the other fixed shaft, plus = anticlockwise
 * Source: derived. Example: pivot on the driven shaft, 150 mm between, swing 0, slot 40 to 100: from 110, 0 to 50, 0.
 */
export function slotLines(
  { slots, pivot, between }: Quadrant,
  { swingDegrees }: Extract<Reach, { fits: true }>,
): { from: Point; to: Point }[] {
  const swing = (swingDegrees * Math.PI) / 180;
  const [x0, way] = pivot === 'driver' ? [0, 1] : [toMm(between), -1];
  return slots.map(({ nearest, farthest, angle }) => {
    const at = swing + toRadians(angle);
    const on = (r: number): Point => [x0 + way * r * Math.cos(at), way * r * Math.sin(at)];
    return { from: on(toMm(nearest)), to: on(toMm(farthest)) };
  });
}
