import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { divisionWander, flankWander, lashSwing } from '../../../lib/turning/run-out.formulas.ts';
import { runOutEffects } from '../../../lib/turning/run-out.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, nanometres } from '../../../lib/values/length.ts';

type Spot = readonly [x: number, y: number];
const TURN = 2 * Math.PI;

/** The involute flank of one tooth side, sampled closely about the pitch circle, as points about its own centre. */
function flank(N: number, m: number, a: number, tooth: number, side: 1 | -1): Spot[] {
  const rb = (N * m * Math.cos(a)) / 2;
  const halfTooth = Math.PI / (2 * N) + (Math.tan(a) - a);
  return Array.from({ length: 801 }, (_, i) => {
    const roll = Math.tan(a) * (0.7 + (0.6 * i) / 800);
    const r = rb * Math.hypot(1, roll);
    const at = (TURN * tooth) / N + side * (halfTooth - (roll - Math.atan(roll)));
    return [r * Math.cos(at), r * Math.sin(at)];
  });
}

/** Where a curve, its centre shifted by e along x, meets the circle R about the shaft: the angle there. */
function angleAt(curve: readonly Spot[], e: number, R: number): number {
  const shifted = curve.map(([x, y]): Spot => [x + e, y]);
  for (let i = 1; i < shifted.length; i++) {
    const [p, q] = [shifted[i - 1] as Spot, shifted[i] as Spot];
    const [u, v] = [Math.hypot(...p), Math.hypot(...q)];
    if ((u - R) * (v - R) > 0) continue;
    const part = (R - u) / (v - u);
    return Math.atan2(p[1] + part * (q[1] - p[1]), p[0] + part * (q[0] - p[0]));
  }
  throw new Error('the flank does not reach the circle');
}

const unwrapped = (x: number) => x - TURN * Math.round(x / TURN);
const spread = (all: readonly number[]) => Math.max(...all) - Math.min(...all);

/** An eccentric gear placed by its flanks: how far flanks and middles of teeth wander along the pitch circle about the shaft. */
function placed(N: number, m: number, a: number, t: number) {
  const R = (N * m) / 2;
  const one: number[] = [];
  const middle: number[] = [];
  for (let tooth = 0; tooth < N; tooth++) {
    const due = (TURN * tooth) / N;
    const [right, left] = ([1, -1] as const).map((side) => unwrapped(angleAt(flank(N, m, a, tooth, side), t / 2, R) - due) * R) as [
      number,
      number,
    ];
    one.push(right);
    middle.push((right + left) / 2);
  }
  return { one: spread(one), middle: spread(middle) };
}

/** Lash of a pair at a centre distance, from the involutes alone: along the base tangent, brought back to the pitch circle. */
function lashAt(C: number, rb1: number, rb2: number, a: number): number {
  const working = Math.acos((rb1 + rb2) / C);
  const inv = (x: number) => Math.tan(x) - x;
  return (2 * (rb1 + rb2) * (inv(working) - inv(a))) / Math.cos(a);
}

/** The wheel's true middle walks round its shaft; the lash is read at each place. */
function swung(N1: number, N2: number, m: number, a: number, t: number): number {
  const [R1, R2] = [(N1 * m) / 2, (N2 * m) / 2];
  const rest = R1 + R2 + 2 * t;
  const seen = Array.from({ length: 720 }, (_, i) => {
    const at = (TURN * i) / 720;
    const C = Math.hypot(rest - (t / 2) * Math.cos(at), (t / 2) * Math.sin(at));
    return lashAt(C, R1 * Math.cos(a), R2 * Math.cos(a), a);
  });
  return spread(seen);
}

describe('what a run-out does, against an eccentric gear placed by its points', () => {
  for (const [N, deg, t] of [
    [22, 14.5, 0.002],
    [60, 20, 0.004],
    [40, 14.5, 0.001],
  ] as const) {
    const [a, m] = [(deg * Math.PI) / 180, 1 / 8];
    it(`${N} teeth at ${deg}°, reading ${t}: one flank and the middles wander as said`, () => {
      const found = placed(N, m, a, t);
      // The two flanks of a tooth stand a quarter pitch to either side of its middle: their leans do not quite cancel.
      const thick = (Math.PI / (2 * N)) * Math.tan(a);
      expect(found.middle / divisionWander(t)).toBeGreaterThan(0.985);
      expect(found.middle / divisionWander(t)).toBeLessThan(1.002 + thick);
      expect(found.one / flankWander(t, a)).toBeGreaterThan(0.985);
      expect(found.one / flankWander(t, a)).toBeLessThan(1.005);
    });
    it(`${N} teeth at ${deg}°, reading ${t}: the lash swings by 2 t tan a from tightest to loosest`, () => {
      const found = swung(N, 30, m, a, t);
      expect(found / lashSwing(t, a)).toBeGreaterThan(0.97);
      expect(found / lashSwing(t, a)).toBeLessThan(1.03);
    });
  }

  it('a placed gear tells the reading from the eccentricity and the flank from the middle', () => {
    const found = placed(60, 1 / 8, Math.PI / 9, 0.004);
    expect(found.middle).toBeGreaterThan(0.0035);
    expect(found.one - found.middle).toBeGreaterThan(0.0002);
  });
});

describe('the sum', () => {
  it('warns over the pin limit and not at it', () => {
    const at = (t: number) => runOutEffects({ runOut: inches(t), angle: degrees(20) }).cautions.length;
    expect(at(0.002)).toBe(0);
    expect(at(0.0021)).toBe(1);
  });
  it('refuses a reading below zero and an angle that is none', () => {
    expect(() => runOutEffects({ runOut: nanometres(-1), angle: degrees(20) })).toThrow(DomainError);
    expect(() => runOutEffects({ runOut: inches(0.001), angle: degrees(0) })).toThrow(DomainError);
  });
  it('all grow with the reading', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.02, noNaN: true }), fc.double({ min: 0.2, max: 0.5, noNaN: true }), (t, a) => {
        expect(flankWander(t, a)).toBeGreaterThanOrEqual(divisionWander(t));
        expect(lashSwing(2 * t, a)).toBeCloseTo(2 * lashSwing(t, a), 12);
      }),
    );
  });
});
