import type { HalfSpace, SpacePoint } from './profile.formulas.ts';

type XY = readonly [x: number, y: number];

/** The half space as one run of points from the middle of the space to the middle of the tooth. */
export function halfSpacePoints({ root, fillet, flank, top }: HalfSpace): SpacePoint[] {
  return [...root, ...fillet.slice(1), ...flank.slice(1), ...top.slice(1)];
}

/** x to the right, y up, the middle of the space on the y axis when turned is 0. */
const place = ([R, t]: SpacePoint, turned: number): XY => [R * Math.sin(t + turned), R * Math.cos(t + turned)];

/** One tooth from the middle of the space before it to the middle of the space after it, its own middle line on the y axis. */
export function toothPoints(half: HalfSpace, N: number): XY[] {
  const points = halfSpacePoints(half);
  const rising = points.map((at) => place(at, -Math.PI / N));
  return [
    ...rising,
    ...rising
      .slice(0, -1)
      .reverse()
      .map(([x, y]): XY => [-x, y]),
  ];
}

/** The whole wheel's outline, closed (the first point is not repeated), clockwise from a tooth on the y axis. */
export function wheelPoints(half: HalfSpace, N: number): XY[] {
  const tooth = toothPoints(half, N).slice(1);
  return Array.from({ length: N }, (_, k) => (2 * Math.PI * k) / N).flatMap((turn) => {
    const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
    return tooth.map(([x, y]): XY => [x * cos + y * sin, y * cos - x * sin]);
  });
}
