import { describe, expect, it } from 'vitest';
import { dinSizes, type InvoluteSpline, toothHalfAngle } from '../../../lib/splines/involute.formulas.ts';
import { pinAngleHub, pinAngleShaft, pinContact } from '../../../lib/splines/pins.formulas.ts';

const RAD = Math.PI / 180;

/** Nearest point of a flank, sampled finely, to a pin whose middle lies on the centre line of the space. */
function nearest(spline: InvoluteSpline, middle: number, at: number): { readonly radius: number; readonly off: number } {
  const base = (spline.N * spline.m * Math.cos(spline.a)) / 2;
  let best = { radius: 0, off: Number.POSITIVE_INFINITY };
  for (let step = 0; step <= 400_000; step++) {
    const radius = base * (1 + (step * 0.5) / 400_000);
    const angle = at - toothHalfAngle(spline, radius);
    const off = Math.hypot(middle - radius * Math.cos(angle), radius * Math.sin(angle));
    if (off < best.off) best = { radius, off };
  }
  return best;
}

describe('where a pin touches a spline', () => {
  const spline = { ...dinSizes(30, 2, 14, 30 * RAD), t: (Math.PI * 2) / 2 };
  const D = spline.N * spline.m;
  const base = (D * Math.cos(spline.a)) / 2;

  it.each([3.2, 3.6, 4])('a shaft, pin %s: at the flank’s own nearest point', (k) => {
    const p = pinAngleShaft({ N: 14, a: spline.a, D, k, t: spline.t });
    const found = nearest(spline, base / Math.cos(p), Math.PI / spline.N);
    expect(found.off).toBeCloseTo(k / 2, 6);
    expect(pinContact('shaft', { N: 14, a: spline.a, D, k }, p) / 2).toBeCloseTo(found.radius, 3);
  });

  it.each([3, 3.4])('a hub, pin %s: at its space’s own nearest point', (k) => {
    const p = pinAngleHub({ N: 14, a: spline.a, D, k, s: spline.t });
    const found = nearest(spline, base / Math.cos(p), 0);
    expect(found.off).toBeCloseTo(k / 2, 6);
    expect(pinContact('hub', { N: 14, a: spline.a, D, k }, p) / 2).toBeCloseTo(found.radius, 3);
  });

  it('a pin that would touch inside the base circle is refused, one that touches on it is not', () => {
    const p = 20 * RAD;
    const most = D * Math.cos(spline.a) * Math.tan(p);
    expect(() => pinContact('shaft', { N: 14, a: spline.a, D, k: most * 1.001 }, p)).toThrow(RangeError);
    expect(pinContact('shaft', { N: 14, a: spline.a, D, k: most }, p)).toBeCloseTo(2 * base, 9);
  });
});

describe('DIN 5480 sizes', () => {
  // Worked sheet 6 × 0.8 × 30° × 6 (xueke.org, document 311542): shaft 5.84 and 4.24, hub 6 and 4.4.
  it('of the worked sheet', () => {
    const { shaft, hub } = dinSizes(6, 0.8, 6, 30 * RAD);
    expect([shaft.outside, shaft.inside, hub.outside, hub.inside].map((size) => Number(size.toFixed(6)))).toEqual([5.84, 4.24, 6, 4.4]);
  });

  // derived: hub from the reference diameter inward by two modules, whatever the module
  it('of another module', () => {
    const { shaft, hub } = dinSizes(30, 2, 14, 30 * RAD);
    expect([hub.outside, hub.inside, shaft.outside, shaft.inside].map((size) => Number(size.toFixed(6)))).toEqual([30, 26, 29.6, 25.6]);
  });
});
