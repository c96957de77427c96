import { describe, expect, it } from 'vitest';
import { involuteSpline } from '../../../lib/splines/involute-spline.sums.ts';
import { checkedSpline, type NamedSpline } from '../../../lib/splines/involute-spline.ts';
import { inches, inUnit, type Length } from '../../../lib/values/length.ts';

/**
 * Second route to the pins: the flank is unrolled from its base circle point by point, and the pin's middle moved along the middle line of the
 * space until its nearest point of the flank is half a pin away. Nothing of the pin formulas is asked.
 */
type XY = readonly [number, number];

/** One flank of the space whose middle is the y axis; `open` is half the space's angle at the pitch circle. */
function flank(rb: number, a: number, open: number, sign: 1 | -1): XY[] {
  const invA = Math.tan(a) - a;
  return Array.from({ length: 40_001 }, (_, i): XY => {
    const u = (i * 1.6) / 40_000;
    const [R, turned] = [rb * Math.hypot(1, u), u - Math.atan(u)];
    const angle = open + sign * (turned - invA);
    return [R * Math.sin(angle), R * Math.cos(angle)];
  });
}

function middleOfPin(points: readonly XY[], half: number, low: number, high: number, outward: 1 | -1): number {
  const gap = (y: number): number => Math.min(...nearest(points, y)) - half;
  let [a, b] = [low, high];
  for (let step = 0; step < 40; step++) {
    const middle = (a + b) / 2;
    if (gap(middle) * outward > 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

const nearest = (points: readonly XY[], y: number): number[] => {
  let best = Number.POSITIVE_INFINITY;
  for (const [px, py] of points) {
    const far = Math.hypot(px, py - y);
    if (far < best) best = far;
  }
  return [best];
};

const across = (middle: number, N: number): number => 2 * middle * (N % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * N)));

const SPLINES: readonly (readonly [NamedSpline, number, number])[] = [
  [{ standard: 'ANSI', root: 'flat', teeth: 20, P: 16 }, 0.12, 0.108],
  [{ standard: 'ANSI', root: 'flat', teeth: 13, P: 16 }, 0.12, 0.108],
  [{ standard: 'ANSI', root: 'fillet', teeth: 36, P: 8 }, 0.24, 0.216],
  [{ standard: 'ISO', root: 'flat', teeth: 24, m: 2.5 }, 5, 4.5],
  [{ standard: 'DIN', teeth: 18, m: 1.25, reference: 25 }, 2.75, 2.25],
  [{ standard: 'DIN', teeth: 21, m: 2, reference: 45 }, 4, 3.5],
];

describe('pins laid on the flanks', () => {
  it.each(SPLINES)('%o', (named, pinShaft, pinHub) => {
    const spline = checkedSpline(named);
    const unit = named.standard === 'ANSI' ? 'in' : 'mm';
    const typed = (x: number): Length => (unit === 'in' ? inches(x) : inches(x / 25.4));
    const { figures } = involuteSpline({ named, pinShaft: typed(pinShaft), pinHub: typed(pinHub) });
    const read = (key: string): number => {
      const value = figures[key]?.value;
      return value && 'length' in value ? inUnit(value.length, unit) : Number.NaN;
    };
    const [a, D] = [Math.PI / 6, spline.N * spline.m];
    const rb = (D * Math.cos(a)) / 2;
    const space = Math.PI / spline.N - spline.t / D;
    const onShaft = middleOfPin(flank(rb, a, space, 1), pinShaft / 2, D / 2, D, 1);
    expect(read('overPins')).toBeCloseTo(across(onShaft, spline.N) + pinShaft, 4);
    const inHub = middleOfPin(flank(rb, a, spline.t / D, -1), pinHub / 2, D / 4, D / 2 + pinHub, -1);
    expect(read('betweenPins')).toBeCloseTo(across(inHub, spline.N) - pinHub, 4);
  });
});
