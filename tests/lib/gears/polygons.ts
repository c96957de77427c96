import { difference, FillRule, intersect } from 'clipper2-ts';

/** Work with a general polygon library, in millimetres; inside it counts whole nanometres. */
export type XY = readonly [number, number];
const TO_NM = 1e6;

const path = (points: readonly XY[]) => points.map(([x, y]) => ({ x: Math.round(x * TO_NM), y: Math.round(y * TO_NM) }));

/** The blank less everything swept, as the piece with most corners. */
export function whatIsLeft(blank: readonly XY[], swept: readonly (readonly XY[])[]): XY[] {
  const left = difference([path(blank)], swept.map(path), FillRule.NonZero);
  const largest = left.reduce((a, b) => (a.length > b.length ? a : b));
  return largest.map(({ x, y }): XY => [Number(x) / TO_NM, Number(y) / TO_NM]);
}

/** Area that two shapes share, mm². */
export function overlap(one: readonly XY[], other: readonly XY[]): number {
  const shared = intersect([path(one)], [path(other)], FillRule.NonZero);
  return shared.reduce((sum, piece) => sum + Math.abs(area(piece.map(({ x, y }): XY => [Number(x) / TO_NM, Number(y) / TO_NM]))), 0);
}

const area = (points: readonly XY[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [x, y];
    return sum + (x * ny - nx * y) / 2;
  }, 0);

const toSegment = ([px, py]: XY, [ax, ay]: XY, [bx, by]: XY): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const along = Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(px - ax - along * dx, py - ay - along * dy);
};
export const toPolygon = (point: XY, polygon: readonly XY[]): number =>
  polygon.reduce((least, at, i) => Math.min(least, toSegment(point, at, polygon[(i + 1) % polygon.length] ?? at)), Infinity);
export const toRun = (point: XY, run: readonly XY[]): number =>
  run.slice(1).reduce((least, at, i) => Math.min(least, toSegment(point, run[i] ?? at, at)), Infinity);
