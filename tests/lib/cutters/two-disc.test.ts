import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activeFrom, discErrors, infeed, twoDiscs } from '../../../lib/cutters/two-disc.formulas.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';

const RAD = Math.PI / 180;
const tooth = (N: number, degrees: number, m = 1, dedendum = 1.25): Tooth => ({
  N,
  m,
  a: degrees * RAD,
  A: m,
  B: dedendum * m,
  unit: 'in',
});

/** The true flank by a string unwound from the base circle, without anything of lib; x sideways, y above the pitch line. */
function unwound({ N, m, a, A }: Tooth, from: number, steps: number): (readonly [number, number])[] {
  const [r, rb, ro] = [(N * m) / 2, ((N * m) / 2) * Math.cos(a), (N * m) / 2 + A];
  const start = Math.PI / (2 * N) - (Math.tan(a) - a);
  const [first, last] = [Math.sqrt(Math.max(0, (from / rb) ** 2 - 1)), Math.sqrt((ro / rb) ** 2 - 1)];
  return Array.from({ length: steps + 1 }, (_, i) => {
    const u = first + ((last - first) * i) / steps;
    const at = start + u;
    return [rb * (Math.sin(at) - u * Math.cos(at)), rb * (Math.cos(at) + u * Math.sin(at)) - r] as const;
  });
}

/** The least that any circle with this middle can be off: half of what the distances to it spread. */
const spreadFrom = (points: readonly (readonly [number, number])[], x: number, y: number): number => {
  const far = points.map(([px, py]) => Math.hypot(px - x, py - y));
  return (Math.max(...far) - Math.min(...far)) / 2;
};

const WHEELS = [
  tooth(12, 14.5),
  tooth(12, 20),
  tooth(22, 14.5, 1 / 8, 1.157),
  tooth(35, 20),
  tooth(60, 20, 3),
  tooth(135, 14.5),
  tooth(400, 20),
];

describe('two discs', () => {
  it.each(WHEELS)('no other middle leaves the flank less: $N teeth', (t) => {
    const { C, k, D, off } = twoDiscs(t);
    const points = unwound(t, activeFrom(t), 900);
    expect(spreadFrom(points, C / 2, k)).toBeCloseTo(off, 6);
    for (const by of [0.3, 0.05, 0.01, 0.002])
      for (let turn = 0; turn < 24; turn++) {
        const [dx, dy] = [by * D * Math.cos((turn * Math.PI) / 12), by * D * Math.sin((turn * Math.PI) / 12)];
        expect(spreadFrom(points, C / 2 + dx, k + dy)).toBeGreaterThan(off * 0.999);
      }
  });

  it('comes to the circle of curvature at the pitch point as teeth grow many: radius r sin a (Buckingham, value from memory)', () => {
    for (const a of [14.5, 20, 25]) {
      const t = tooth(600, a);
      expect(twoDiscs(t).D / (600 * Math.sin(t.a))).toBeCloseTo(1, 3);
    }
  });

  it('errs as much too full as too thin, four times by turns', () => {
    for (const t of WHEELS) {
      const discs = twoDiscs(t);
      const errors = discErrors(t, discs, 400).map(([e]) => e);
      expect(Math.max(...errors) / discs.off).toBeCloseTo(1, 2);
      expect(Math.min(...errors) / discs.off).toBeCloseTo(-1, 2);
      const turns = errors.filter((e, i) => i > 0 && Math.sign(e) !== Math.sign(errors[i - 1] ?? 0)).length;
      expect(turns).toBe(3);
    }
  });

  it('the plus sign is metal off: there the disc leaves the cutter standing into the tooth', () => {
    const t = tooth(20, 20);
    const discs = twoDiscs(t);
    const points = unwound(t, activeFrom(t), 400);
    const errors = discErrors(t, discs, 400);
    for (const [i, [x, y]] of points.entries()) {
      const cutterAt = discs.C / 2 - Math.sqrt((discs.D / 2) ** 2 - (y - discs.k) ** 2);
      if (Math.abs(cutterAt - x) > 1e-5) expect(Math.sign(cutterAt - x)).toBe(Math.sign(errors[i]?.[0] ?? 0));
    }
  });

  it('infeed: a disc rolled in until its circle stands where it was fitted', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 200 }),
        fc.constantFrom(14.5, 20),
        fc.double({ min: 0.6, max: 1.2, noNaN: true }),
        (N, a, part) => {
          const t = tooth(N, a);
          const discs = twoDiscs(t);
          const w = Math.max(discs.C * part, discs.C - discs.D * 0.9);
          // Before the feed the circle touches the rim y = −B between −w/2 and w/2: the nearest such point is a radius from the middle.
          const before = discs.k - infeed(discs, t.B, w);
          const nearest = Math.hypot(Math.max(0, discs.C / 2 - w / 2), -t.B - before);
          expect(nearest).toBeCloseTo(discs.D / 2, 9);
        },
      ),
    );
  });

  it('refuses a blank that passes between, and a tooth without a flank', () => {
    const t = tooth(60, 20);
    expect(() => infeed(twoDiscs(t), t.B, 0.01)).toThrow(/pass it on both sides/);
    expect(() => twoDiscs({ ...t, A: -3 })).toThrow(/No involute/);
  });
});
