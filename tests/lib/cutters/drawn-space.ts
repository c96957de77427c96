/** A second route to a tooth space, for checking: points drawn in polar form, and a rack rolled round a blank. Nothing here is lib's. */
export type Point = readonly [x: number, y: number];
export type Drawn = { readonly N: number; readonly m: number; readonly degrees: number };

const inva = (angle: number): number => Math.tan(angle) - angle;

/** Right flank of a space whose centre line is the y axis, gear's centre at 0, from the centre out: straight to the base circle, then involute. */
export function drawnFlank({ N, m, degrees }: Drawn, steps = 40_000): readonly Point[] {
  const alpha = (degrees * Math.PI) / 180;
  const [pitch, outer] = [(N * m) / 2, (N * m) / 2 + 2.2 * m];
  const base = pitch * Math.cos(alpha);
  const atBase = Math.PI / (2 * N) - inva(alpha);
  const points: Point[] = [[0, 0]];
  for (let i = 0; i <= steps; i++) {
    const r = base + (outer - base) * (i / steps) ** 2;
    const theta = atBase + inva(Math.acos(Math.min(1, base / r)));
    points.push([r * Math.sin(theta), r * Math.cos(theta)]);
  }
  return points;
}

/** Sideways reach of a drawn flank at a height above its pitch line, by straight lines between points. */
export function reachAt(flank: readonly Point[], { N, m }: Drawn, height: number): number {
  const y = (N * m) / 2 + height;
  const at = flank.findIndex((point) => point[1] >= y);
  const [upper, lower] = [flank[at], flank[at - 1]];
  if (!upper || !lower) throw new Error(`the drawing does not reach ${y}`);
  return lower[0] + ((upper[0] - lower[0]) * (y - lower[1])) / (upper[1] - lower[1]);
}

/**
 * Sideways reach of a space cut by rolling a straight-sided rack tooth, half a pitch wide at its pitch line, round the pitch circle:
 * the furthest that any of its positions cuts at that height. No involute in it.
 */
export function rolledReach({ N, m, degrees }: Drawn, height: number, steps = 40_000): number {
  const [R, slope] = [(N * m) / 2, Math.tan((degrees * Math.PI) / 180)];
  const y = R + height;
  let furthest = Number.NEGATIVE_INFINITY;
  for (let i = -steps; i <= steps; i++) {
    const phi = (0.5 * i) / steps;
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    furthest = Math.max(furthest, ((Math.PI * m) / 4 + R * phi - y * s + (y * c - R) * slope) / (c + s * slope));
  }
  return furthest;
}
