import { describe, expect, it } from 'vitest';
import {
  bestSpanCount,
  hobbedFlank,
  realSpanCount,
  spanContactRadius,
  spanOver,
  thicknessFromSpan,
  usableFlank,
} from '../../../lib/gears/base-tangent.formulas.ts';
import {
  baseOf,
  leastShift,
  leastTeethOf,
  normalThickness,
  pointedDiameter,
  pointedShift,
  rootOf,
  shiftForThickness,
  straightSideEnds,
  thicknessAt,
  tipOf,
  transverseThickness,
} from '../../../lib/gears/flanks.formulas.ts';
import { inv, inverseInv } from '../../../lib/gears/involute.formulas.ts';
import { contactRadius, nearestSpanCount, span, spanCount, spanOnFlank, tipThickness } from '../../../lib/gears/spur.formulas.ts';
import { flanks, rad } from './unit-flanks.ts';

const tooth = (N: number, deg = 20, B = 1.25) => ({ N, m: 1, a: rad(deg), A: 1, B, unit: 'mm' as const });

// Expected values below are worked by hand or by another program from the definitions named beside them.

describe('the involute and its inverse', () => {
  it('hold from 0 up to, not at, a right angle', () => {
    expect(inv(0)).toBe(0);
    for (const bad of [-1e-9, Math.PI / 2, 2, Number.NaN]) expect(() => inv(bad)).toThrow(RangeError);
    for (const bad of [-1e-12, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => inverseInv(bad)).toThrow(/no angle/);
    expect(inverseInv(0)).toBe(0);
  });

  it('come back over nine powers of ten', () => {
    for (const x of [1e-9, 1e-6, 1e-3, 0.1, 1, 10, 100]) {
      const a = inverseInv(x);
      expect(Math.abs(inv(a) / x - 1)).toBeLessThan(1e-6);
      expect(a).toBeLessThan(Math.PI / 2);
    }
    expect((inverseInv(0.0149043838673) * 180) / Math.PI).toBeCloseTo(20, 9);
  });
});

describe('spans', () => {
  it('are over whole numbers of teeth from 1', () => {
    for (const bad of [0, -1, 1.5, Number.NaN]) {
      expect(() => spanOver(flanks(24), 1.5, bad)).toThrow(`no span over ${bad} teeth`);
      expect(() => span(tooth(24), bad)).toThrow(`no span over ${bad} teeth`);
    }
    // One tooth: its thickness along the base circle, s cos a + N m cos a inv a = 1.4760657 + 0.3361328.
    expect(spanOver(flanks(24), Math.PI / 2, 1)).toBeCloseTo(1.8121985, 6);
    expect(span(tooth(24), 1)).toBeCloseTo(1.8121985, 6);
    expect(thicknessFromSpan(flanks(24), 1.8121985, 1)).toBeCloseTo(Math.PI / 2, 5);
  });

  it('of a ring are across its spaces', () => {
    const ring = flanks(60, { ring: true, v: 0.4 });
    const space = Math.PI - normalThickness(ring);
    expect(spanOver(ring, normalThickness(ring), 4)).toBeCloseTo(Math.cos(rad(20)) * (space + 3 * Math.PI + 60 * inv(rad(20))), 12);
    expect(thicknessFromSpan(ring, spanOver(ring, 1.4, 4), 4)).toBeCloseTo(1.4, 12);
    // The same ring in module 2 has twice the span.
    const twice = { ...ring, mn: 2, v: 0.8, A: 2, B: 2.5 };
    expect(spanOver(twice, normalThickness(twice), 4)).toBeCloseTo(2 * spanOver(ring, normalThickness(ring), 4), 11);
  });

  it('touch at √(Rb² + (W/2)²), a leaning wheel’s by the piece across it', () => {
    expect(spanContactRadius(flanks(20), 8)).toBeCloseTo(Math.hypot(10 * Math.cos(rad(20)), 4), 12);
    const leaning = flanks(20, { psi: rad(30) });
    const cos = Math.sqrt(1 - (Math.sin(rad(30)) * Math.cos(rad(20))) ** 2);
    expect(spanContactRadius(leaning, 8)).toBeCloseTo(Math.hypot(baseOf(leaning) / 2, 4 * cos), 12);
    expect(contactRadius(tooth(22, 14.5), 2)).toBeCloseTo(10.904, 3);
  });

  it('have a real count only where the shifted pitch circle has a flank', () => {
    expect(() => realSpanCount(flanks(10, { v: -0.5 }))).toThrow(/inside the base circle/);
    expect(realSpanCount(flanks(18))).toBeCloseTo(2.5, 12);
    expect([18, 19].map((N) => bestSpanCount(flanks(N)))).toEqual([2, 3]);
    expect([18, 19].map((N) => nearestSpanCount(N, rad(20)))).toEqual([2, 3]);
    expect(nearestSpanCount(2, rad(5))).toBe(1);
  });

  it('move by one, or are none, when the jaws would miss', () => {
    expect(bestSpanCount(flanks(300, { A: 0.01, B: 0.02, v: 1 }))).toBeNull();
    expect(spanCount({ ...tooth(300), A: 0.01, B: 0.02 })).toBeNull();
    expect(spanOnFlank(tooth(60, 14.5, 1.157), 1)).toBe(false);
    expect(spanOnFlank(tooth(22, 14.5, 1.157), 4)).toBe(true);
    expect(spanOnFlank(tooth(22, 14.5, 1.157), 5)).toBe(false);
    expect(bestSpanCount(flanks(4, { an: rad(14.5), B: 1.157 }))).toBe(1);
    // 12 teeth at 14½°: over 1 touches where a hob undercuts, over 2 does not.
    expect(bestSpanCount(flanks(12, { an: rad(14.5), B: 1.157 }))).toBe(2);
    expect(spanCount(tooth(12, 14.5, 1.157))).toBe(2);
    // 19 teeth go over 3. Teeth 5.3 thick at the pitch circle would be touched over 3 beyond their tips, over 2 at 9.83.
    expect(bestSpanCount(flanks(19))).toBe(3);
    expect(bestSpanCount(flanks(19), 5.3)).toBe(2);
    expect(bestSpanCount(flanks(4), 1.2)).toBeLessThan(4);
    expect(bestSpanCount(flanks(10, { v: -0.5 }))).toBe(2);
  });
});

describe('where a flank is', () => {
  it('of a wheel: from the rack’s end, base circle or clearance, whichever is highest, to tip or point', () => {
    // 40 teeth: √(18.79385² + (20 sin 20° − 1/sin 20°)²) = 19.2064 by hand; tip 21.
    const { from, to } = usableFlank(flanks(40));
    expect(from).toBeCloseTo(Math.hypot(20 * Math.cos(rad(20)), 20 * Math.sin(rad(20)) - 1 / Math.sin(rad(20))), 12);
    expect(to).toBe(21);
    expect(usableFlank(flanks(40), 40.4).to).toBe(20.2);
    expect(usableFlank(flanks(10, { B: 0.9 })).from).toBeCloseTo(5 * Math.cos(rad(20)), 12);
    expect(usableFlank(flanks(200, { B: 3 })).from).toBeCloseTo(
      Math.max(100 - 3 + 2, Math.hypot(100 * Math.cos(rad(20)), 100 * Math.sin(rad(20)) - 1 / Math.sin(rad(20)))),
      12,
    );
    // Deep roots far below a short addendum: the clearance ends above the rack's end.
    const deep = flanks(12, { A: 0.2, B: 0.5 });
    expect(usableFlank(deep).from).toBeCloseTo(
      Math.max(6 - 0.5 + 0.3, Math.hypot(6 * Math.cos(rad(20)), 6 * Math.sin(rad(20)) - 0.2 / Math.sin(rad(20)))),
      12,
    );
    expect(usableFlank(deep).from).toBeCloseTo(5.8264, 3);
    const pointed = flanks(8, { v: 0.7 });
    expect(usableFlank(pointed).to).toBeCloseTo(pointedDiameter(pointed) / 2, 12);
    expect(pointedDiameter(pointed)).toBeLessThan(tipOf(pointed));
  });

  it('of a ring: from tip or base circle to where its clearance begins', () => {
    expect(usableFlank(flanks(60, { ring: true }))).toEqual({ from: 29, to: 31 });
    expect(usableFlank(flanks(20, { ring: true }))).toEqual({ from: 10 * Math.cos(rad(20)), to: 11 });
    expect(usableFlank(flanks(60, { ring: true, B: 0.9 })).to).toBeCloseTo(30.9, 12);
    expect(hobbedFlank(flanks(60, { ring: true }))).toEqual({ from: 29, to: 31 });
  });

  it('what a hob leaves is no lower, and may be nothing', () => {
    expect(hobbedFlank(flanks(40))?.from).toBeCloseTo(usableFlank(flanks(40)).from, 9);
    expect(hobbedFlank(flanks(12))?.from).toBeCloseTo(11.302707126548 / 2, 9);
    expect(hobbedFlank(flanks(5, { an: rad(14.5), B: 1.157, v: -1 }))).toBeNull();
    expect(hobbedFlank(flanks(12), 11.3)).toBeNull();
    expect(hobbedFlank(flanks(12), 11.4)).not.toBeNull();
    expect(straightSideEnds(flanks(12), 1)).toBeCloseTo(baseOf(flanks(12)), 12);
  });
});

describe('teeth as plain numbers', () => {
  it('rings turn signs', () => {
    const [wheel, ring] = [flanks(30, { v: 0.2 }), flanks(30, { v: 0.2, ring: true })];
    expect([tipOf(wheel), rootOf(wheel)]).toEqual([32.4, 27.9]);
    expect(tipOf(ring)).toBeCloseTo(28.4, 12);
    expect(rootOf(ring)).toBeCloseTo(32.9, 12);
    expect(normalThickness(wheel) + normalThickness(ring)).toBeCloseTo(Math.PI, 12);
    expect(shiftForThickness(ring, normalThickness(ring))).toBeCloseTo(0.2, 12);
    expect(thicknessAt(wheel, transverseThickness(wheel), 31)).toBeLessThan(thicknessAt(wheel, transverseThickness(wheel), 30));
    expect(thicknessAt(ring, transverseThickness(ring), 31)).toBeGreaterThan(thicknessAt(ring, transverseThickness(ring), 30));
    expect(thicknessAt(ring, transverseThickness(ring), 30)).toBeCloseTo(transverseThickness(ring), 12);
  });

  it('have no thickness inside the base circle', () => {
    const of = flanks(20);
    expect(() => thicknessAt(of, Math.PI / 2, baseOf(of) * 0.999)).toThrow(/inside the base circle/);
    expect(thicknessAt(of, Math.PI / 2, baseOf(of))).toBeCloseTo(baseOf(of) * (Math.PI / 40 + inv(rad(20))), 12);
    expect(thicknessAt(of, transverseThickness(of), pointedDiameter(of))).toBeCloseTo(0, 9);
    expect(tipThickness(tooth(20))).toBeCloseTo(0.6949, 3);
  });

  it('undercut: least teeth and least shift are one statement', () => {
    for (const psi of [0, rad(25)]) {
      const of = flanks(11, { psi });
      const v = leastShift(of, 1);
      expect(leastTeethOf({ ...of, v }, 1)).toBeCloseTo(11, 9);
    }
    expect(leastShift(flanks(12), 1)).toBeCloseTo(1 - 6 * Math.sin(rad(20)) ** 2, 12);
  });

  it('points are found up to the most that is asked for, and not beyond', () => {
    expect(pointedShift(flanks(12), 2)).toBeCloseTo(0.8202, 4);
    expect(pointedShift(flanks(12), 0.5)).toBeNull();
    const v = pointedShift(flanks(30), 3) ?? Number.NaN;
    expect(thicknessAt(flanks(30, { v }), transverseThickness(flanks(30, { v })), 32 + 2 * v)).toBeCloseTo(0, 8);
    expect(pointedShift(flanks(12, { A: 3 }), 2)).toBeNull();
  });
});
