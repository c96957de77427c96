import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flankAngle, type HalfSpace, pointedRadius, radiiOf, spaceAtBase } from '../../../lib/gears/profile.formulas.ts';
import { formCutSpace, formFillet } from '../../../lib/gears/profile-form.formulas.ts';
import { halfSpacePoints, toothPoints, wheelPoints } from '../../../lib/gears/profile-outline.ts';
import { rackCorner, rackCutSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';

const RAD = Math.PI / 180;
const tooth = (N: number, m: number, degrees: number, dedendum: number): Tooth => ({
  N,
  m,
  a: degrees * RAD,
  A: m,
  B: dedendum * m,
  unit: 'in',
});

/** A caliper over k teeth on the drawn outline: the widest place between the outer flanks, jaws square to the middle line of the k teeth. */
function caliper(half: HalfSpace, N: number, k: number): number {
  const turn = (k * Math.PI) / N;
  return 2 * Math.max(...half.flank.map(([R, t]) => R * Math.sin(turn - t)));
}

describe('span read with a caliper on the drawn flank', () => {
  // The fourth is a printed 0.5850, derived: W formula worked by hand. The others recomputed by hand from W = m cos a [(k − 0.5)π + N inv a]; value from memory (common handbook tables of block measurement).
  it.each([
    [tooth(30, 1 / 8, 14.5, 1.157), 3, 0.97061, 0.00001],
    [tooth(20, 1 / 10, 20, 1.25), 3, 0.76604, 0.00001],
    [tooth(40, 1 / 10, 20, 1.25), 5, 1.38448, 0.00001],
    [tooth(22, 1 / 8, 14.5, 1.157), 2, 0.585, 0.00005],
  ])('reads the known span, case %#', (wheel, k, span, within) => {
    const steps = { fillet: 8, flank: 400 };
    expect(Math.abs(caliper(formCutSpace(wheel, formFillet(wheel), steps), wheel.N, k) - span)).toBeLessThan(within);
    expect(Math.abs(caliper(rackCutSpace(wheel, rackCorner(wheel), steps), wheel.N, k) - span)).toBeLessThan(within);
  });
});

describe('corner of the rack', () => {
  it('agrees with the corners of the standards (values from memory: ISO 53 profile A 0.38 m, old 14½° rack 0.209/P)', () => {
    expect(rackCorner(tooth(40, 1, 20, 1.25))).toBeCloseTo(0.38, 3);
    expect(rackCorner(tooth(40, 1, 14.5, 1.157))).toBeCloseTo(0.2094, 3);
  });
  it('is refused when it is larger than the tip', () => {
    expect(() => rackCutSpace(tooth(30, 1, 20, 1.25), 0.6)).toThrow('larger than its tip');
  });
});

it('gives the examples of its own comments, worked by hand with four-figure tables', () => {
  expect(pointedRadius(tooth(10, 1, 20, 1.25))).toBeCloseTo(6.354, 2);
  expect(formFillet(tooth(22, 1 / 8, 14.5, 1.157))).toBeCloseTo(0.0454, 4);
  expect(spaceAtBase(tooth(22, 1, 14.5, 1.157))).toBeCloseTo(0.06585, 5);
});

describe('undercut', () => {
  // Fewest teeth without undercut for a rack whose straight side reaches one addendum deep: 18 for 20°, 32 for 14½° (Mott, Machine Elements in Mechanical Design, 4th ed., p. 320).
  it.each([
    [20, 1.25, 18],
    [14.5, 1.157, 32],
  ])('begins below the published count at %s°', (degrees, dedendum, fewest) => {
    expect(rackCutSpace(tooth(fewest, 1, degrees, dedendum)).undercut).toBe(false);
    expect(rackCutSpace(tooth(fewest - 1, 1, degrees, dedendum)).undercut).toBe(true);
  });
  it('is refused in words when no flank is left', () => {
    expect(() => rackCutSpace({ ...tooth(4, 1, 14.5, 1.157), A: 0.1 }, 0.209)).toThrow(/flank away/);
  });
  it('is never left by a form cutter', () => {
    expect(formCutSpace(tooth(12, 1, 14.5, 1.157)).undercut).toBe(false);
  });
});

describe('fillet of a form cutter', () => {
  /** Walks the middle of a round rod of radius f down the root circle's parallel until it touches the flank: distances by brute force to a straight foot and a finely drawn involute. */
  function rodAngle(wheel: Tooth, f: number): number {
    const { rr, rb, ro } = radiiOf(wheel);
    const involute = Array.from({ length: 4000 }, (_, i) => {
      const R = rb + ((ro - rb) * i) / 3999;
      const t = flankAngle(wheel, R);
      return [R * Math.sin(t), R * Math.cos(t)] as const;
    });
    const foot = involute[0] ?? [0, 0];
    const radial = Array.from({ length: 2000 }, (_, i) => [(foot[0] * i) / 2000, (foot[1] * i) / 2000] as const);
    const flank = [...(rr < rb ? radial : []), ...involute];
    const clear = (t: number): number =>
      Math.min(...flank.map(([x, y]) => Math.hypot(x - (rr + f) * Math.sin(t), y - (rr + f) * Math.cos(t))));
    let [low, high] = [-0.05, flankAngle(wheel, rb)];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (clear(middle) > f) low = middle;
      else high = middle;
    }
    return low;
  }
  it.each([
    ['radial foot', tooth(22, 1, 14.5, 1.157), 0.25],
    ['radial foot, large', tooth(12, 1, 20, 1.25), 0.3],
    ['on the involute', tooth(60, 1, 20, 1.25), 0.35],
    ['on the involute, old system', tooth(90, 1, 14.5, 1.157), 0.2],
  ])('lies where a rod of that size would: %s', (_, wheel, f) => {
    const end = formCutSpace(wheel, f).root.at(-1)?.[1] ?? Number.NaN;
    expect(Math.abs(end - rodAngle(wheel, f)) * radiiOf(wheel).rr).toBeLessThan(0.0005);
  });
  it('is refused when it does not fit', () => {
    expect(() => formCutSpace(tooth(22, 1, 14.5, 1.157), 0.9)).toThrow('larger than the bottom');
  });
});

describe('every tooth', () => {
  const wheel = fc.record({
    N: fc.integer({ min: 12, max: 200 }),
    degrees: fc.constantFrom(14.5, 15, 17.5, 20, 22.5, 25),
    dedendum: fc.constantFrom(1.157, 1.167, 1.25),
  });
  it.each([
    ['rack', (t: Tooth) => rackCutSpace(t)],
    ['form cutter', (t: Tooth) => formCutSpace(t)],
  ])('runs from root to outside without a step or a fold, is half a pitch thick at the pitch circle (%s)', (_, cut) => {
    fc.assert(
      fc.property(wheel, ({ N, degrees, dedendum }) => {
        const t = tooth(N, 1, degrees, dedendum);
        const { r, rr, ro } = radiiOf(t);
        const half = cut(t);
        const points = halfSpacePoints(half);
        expect(points[0]?.[0]).toBeCloseTo(rr, 9);
        expect(points[0]?.[1]).toBe(0);
        expect(points.at(-1)?.[0]).toBeCloseTo(Math.min(ro, pointedRadius(t)), 9);
        expect(points.at(-1)?.[1]).toBeCloseTo(Math.PI / N, 9);
        for (const [i, [R, angle]] of points.entries()) {
          const before = points[i - 1];
          if (!before) continue;
          expect(R).toBeGreaterThanOrEqual(before[0] - 1e-9);
          expect(Math.hypot(R - before[0], R * (angle - before[1]))).toBeLessThan(0.9);
        }
        expect(flankAngle(t, r)).toBeCloseTo(Math.PI / (2 * N), 12);
        expect(half.flank[0]?.[0]).toBeCloseTo(half.fillet.at(-1)?.[0] ?? Number.NaN, 9);
        expect(half.flank[0]?.[1]).toBeCloseTo(half.fillet.at(-1)?.[1] ?? Number.NaN, 9);
      }),
      { numRuns: 150 },
    );
  });
  it('closes into a wheel of N like teeth', () => {
    const t = tooth(22, 1 / 8, 14.5, 1.157);
    const half = formCutSpace(t);
    const [one, all] = [toothPoints(half, 22), wheelPoints(half, 22)];
    expect(all.length).toBe((one.length - 1) * 22);
    const radii = all.map(([x, y]) => Math.hypot(x, y));
    expect(Math.max(...radii)).toBeCloseTo(1.5, 9);
    expect(Math.min(...radii)).toBeCloseTo(22 / 16 - 1.157 / 8, 9);
    const area =
      all.reduce((sum, [x, y], i) => sum + x * (all[(i + 1) % all.length]?.[1] ?? 0) - (all[(i + 1) % all.length]?.[0] ?? 0) * y, 0) / 2;
    expect(-area).toBeGreaterThan(Math.PI * 1.2303 ** 2);
    expect(-area).toBeLessThan(Math.PI * 1.5 ** 2);
  });
  it('stops at the point when the tooth is pointed below the outside', () => {
    const t = { ...tooth(8, 1, 25, 1.25), A: 1.6 };
    const half = formCutSpace(t, 0.1);
    expect(half.flank.at(-1)?.[0]).toBeCloseTo(pointedRadius(t), 9);
    expect(half.flank.at(-1)?.[1]).toBeCloseTo(Math.PI / 8, 9);
  });
});
