import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deeperForBacklashFormed, feedPerSpan, feedPerSpanFormed } from '../../../lib/gears/depth.formulas.ts';
import { nearestSpanCount, span } from '../../../lib/gears/spur.formulas.ts';

type Point = readonly [x: number, y: number];
const turn = ([x, y]: Point, by: number): Point => [x * Math.cos(by) - y * Math.sin(by), x * Math.sin(by) + y * Math.cos(by)];

/**
 * The right flank of a tooth whose centre line is the y axis, as points: a taut string unwound from the base circle, started
 * so that the flank crosses the pitch circle a quarter of a tooth's angle, 90°/N, from the centre line. No formula of the span is used.
 */
function flank(N: number, m: number, a: number): Point[] {
  const base = (N * m * Math.cos(a)) / 2;
  const unwound = (t: number): Point => [base * (Math.sin(t) - t * Math.cos(t)), base * (Math.cos(t) + t * Math.sin(t))];
  const atPitch = unwound(Math.tan(a));
  const turned = Math.atan2(atPitch[0], atPitch[1]);
  // Unwound clockwise, the string draws a flank that leans right; mirrored it narrows towards the tip.
  const swing = Math.PI / (2 * N) + turned;
  return Array.from({ length: 4001 }, (_, i) => unwound((i / 4000) * 2.2 * Math.tan(a)))
    .map(([x, y]): Point => [-x, y])
    .map((p) => turn(p, -swing));
}

/** What flat jaws read over k teeth when the form of every gap has sunk by d along its own centre line. */
function readOverJaws(N: number, m: number, a: number, k: number, d: number): number {
  const [tooth, gap] = [((k - 1) * Math.PI) / N, (k * Math.PI) / N];
  const sunk: Point = [-d * Math.sin(gap), -d * Math.cos(gap)];
  const right = flank(N, m, a)
    .map((p) => turn(p, -tooth))
    .map(([x]) => x + sunk[0]);
  return 2 * Math.max(...right);
}

/** The same when a rack's flank, straight and leaning a, has been fed deeper by d: the involute of a tooth turned back. */
function readGenerated(N: number, m: number, a: number, k: number, d: number): number {
  // A rack deeper by d stands sideways nearer by d tan a at the rolling pitch line, so each flank turns back by d tan a over the pitch radius.
  const back = (d * Math.tan(a)) / ((N * m) / 2);
  const tooth = ((k - 1) * Math.PI) / N;
  return 2 * Math.max(...flank(N, m, a).map((p) => turn(p, -tooth + back)[0]));
}

const rad = (deg: number): number => (deg * Math.PI) / 180;
const wheels = fc.record({ N: fc.integer({ min: 17, max: 90 }), a: fc.constantFrom(rad(14.5), rad(20)), P: fc.constantFrom(5, 8, 16) });

describe('span and feed against the curve itself', () => {
  it('the span of the closed form is what jaws read on the unwound string', () => {
    fc.assert(
      fc.property(wheels, ({ N, a, P }) => {
        const k = nearestSpanCount(N, a);
        return Math.abs(readOverJaws(N, 1 / P, a, k, 0) - span({ N, m: 1 / P, a }, k)) < 1e-6;
      }),
      { numRuns: 40 },
    );
  });

  it('a form cutter that goes 0.010 in deeper takes from the span what the factor says', () => {
    fc.assert(
      fc.property(wheels, ({ N, a, P }) => {
        const k = nearestSpanCount(N, a);
        const lost = readOverJaws(N, 1 / P, a, k, 0) - readOverJaws(N, 1 / P, a, k, 0.01);
        return Math.abs(lost * feedPerSpanFormed(N, k) - 0.01) < 1e-6;
      }),
      { numRuns: 40 },
    );
  });

  it('the factors of the shop’s own wheels, read on the curve', () => {
    const rows = [
      [22, 8, 2, 0.563],
      [22, 8, 3, 0.831],
      [28, 8, 3, 0.661],
      [35, 8, 3, 0.532],
      [35, 8, 4, 0.703],
      [60, 12, 5, 0.518],
      [71, 16, 6, 0.525],
    ] as const;
    for (const [N, P, k, factor] of rows) {
      const read = (d: number): number => readOverJaws(N, 1 / P, rad(14.5), k, d);
      expect(Math.abs((read(0) - read(0.005)) / 0.005 - factor), `${N} over ${k}`).toBeLessThan(0.0006);
    }
  });

  it('a hob 0.010 in deeper takes from the span 2 sin a of it', () => {
    fc.assert(
      fc.property(wheels, ({ N, a, P }) => {
        const k = nearestSpanCount(N, a);
        const lost = readGenerated(N, 1 / P, a, k, 0) - readGenerated(N, 1 / P, a, k, 0.01);
        return Math.abs(lost * feedPerSpan('generated', { N, a }, k) - 0.01) < 1e-5;
      }),
      { numRuns: 40 },
    );
  });

  it('a form sunk for backlash thins the tooth at the pitch circle by that backlash, never by more, and to 1 percent at 0.010 in', () => {
    for (const [N, P, a] of [
      [22, 8, rad(14.5)],
      [60, 12, rad(14.5)],
      [30, 10, rad(20)],
    ] as const) {
      const R = N / P / 2;
      const whole = halfThickness(flank(N, 1 / P, a), R);
      expect(Math.abs(whole * 2 - Math.PI / (2 * P)), 'thickness before').toBeLessThan(1e-6);
      const off = (b: number): number =>
        (2 * (whole - halfThickness(sunk(flank(N, 1 / P, a), N, deeperForBacklashFormed(b, { N, m: 1 / P, a })), R)) - b) / b;
      for (const b of [0.001, 0.004, 0.01]) {
        expect(off(b), `${N} teeth, ${b} in`).toBeGreaterThan(-0.01);
        expect(off(b), `${N} teeth, ${b} in`).toBeLessThan(0.0005);
      }
    }
  });
});

const sunk = (points: readonly Point[], N: number, d: number): Point[] =>
  points.map(([x, y]): Point => [x - d * Math.sin(Math.PI / N), y - d * Math.cos(Math.PI / N)]);

/** Half the tooth along the circle of radius R: where the flank crosses it, by straight line between points. */
function halfThickness(points: readonly Point[], R: number): number {
  for (const [i, point] of points.entries()) {
    const before = points[i - 1];
    const [r, r0] = [Math.hypot(...point), before ? Math.hypot(...before) : Number.NaN];
    if (before && r0 < R && r >= R) {
      const part = (R - r0) / (r - r0);
      const [x, y] = [before[0] + part * (point[0] - before[0]), before[1] + part * (point[1] - before[1])];
      return Math.atan2(x, y) * R;
    }
  }
  throw new Error('the flank does not reach the circle');
}
