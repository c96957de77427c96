import { describe, expect, it } from 'vitest';
import {
  contactRatio,
  contactRatioAt,
  contactRatioInRing,
  contactRatioOnRack,
  contactRatioWithRack,
  hobbedContactAt,
  involuteContactAt,
  involuteContactInRing,
} from '../../../lib/gears/contact-ratio.formulas.ts';
import { pitchOf, transverseThickness } from '../../../lib/gears/flanks.formulas.ts';
import { involuteRoom, leastPinion, trimmingRoom, trochoidRoom } from '../../../lib/gears/interference.formulas.ts';
import { centreAt, standardCentre, tipShortening, workingAngle, workingAngleAt } from '../../../lib/gears/pair.formulas.ts';
import { pinLies } from '../../../lib/gears/pin-check.ts';
import { involuteAtPin, pinCircle, pinContactRadius, pinTouchingAt, thicknessFromPins } from '../../../lib/gears/pins.formulas.ts';
import { flanks, rad } from './unit-flanks.ts';

const radii = (N: number, ring = false) => ({ base: (N / 2) * Math.cos(rad(20)), pitch: N / 2, outside: N / 2 + (ring ? -1 : 1) });

// Expected values below are worked by hand or by another program from the definitions named beside them.

describe('pins', () => {
  const st = Math.PI / 2;
  it('that fall through, or touch below the base circle, are errors of the caller', () => {
    expect(involuteAtPin(flanks(20), st, 0.5)).toBeLessThan(0);
    expect(() => pinCircle(flanks(20), st, 0.5)).toThrow(RangeError);
    expect(() => pinContactRadius(flanks(6, { an: rad(14.5) }), st, 1.52)).toThrow(RangeError);
    expect(() => thicknessFromPins(flanks(20), 15, 1.7)).toThrow(/inside the base circle/);
    expect(() => thicknessFromPins(flanks(20), 1, 1.7)).toThrow(RangeError);
  });

  it('touch where they were asked to, of wheels and rings, straight and leaning', () => {
    for (const of of [flanks(20), flanks(21, { psi: rad(20) }), flanks(50, { ring: true }), flanks(51, { ring: true, psi: rad(15) })]) {
      const s = transverseThickness(of);
      const dc = pitchOf(of) + 0.4;
      expect(2 * pinContactRadius(of, s, pinTouchingAt(of, s, dc))).toBeCloseTo(dc, 9);
    }
    expect(() => pinTouchingAt(flanks(20), st, 18)).toThrow(/inside the base circle/);
    expect(() => pinTouchingAt(flanks(20), 40, 20.5)).toThrow(/no pin touches/);
    expect(() => pinTouchingAt(flanks(20), Math.PI - 1e-3, 18.9)).toThrow(/no pin touches/);
  });

  it('lie as they look', () => {
    const of = flanks(30);
    const lies = (w: number): string => pinLies(of, transverseThickness(of), w);
    expect([0.5, 1.2, 1.728, 3.2].map(lies)).toEqual(['falls through', lies(1.2), 'on the flank', 'sits on the tips']);
    expect(lies(1.2)).not.toBe('on the flank');
    const ring = flanks(60, { ring: true });
    expect([0.5, 1.44, 1.68, 2.6].map((w) => pinLies(ring, transverseThickness(ring), w))).toEqual([
      'bottoms in the root',
      'on the flank',
      'on the flank',
      'sits on the tips',
    ]);
  });
});

describe('pairs and contact', () => {
  const couple = { one: flanks(12), mate: flanks(24) };
  const inRing = { one: flanks(20), mate: flanks(60, { ring: true }) };
  it('no nearer than the base circles allow', () => {
    const bare = 18 * Math.cos(rad(20));
    expect(workingAngleAt(couple, bare)).toBeCloseTo(0, 6);
    expect(() => workingAngleAt(couple, bare * 0.999)).toThrow(/no working angle/);
    expect(() => workingAngleAt(couple, -18)).toThrow(/no working angle/);
    expect(() => workingAngle({ one: flanks(12, { v: -1 }), mate: flanks(24) })).toThrow(RangeError);
    expect(centreAt(couple, rad(20))).toBeCloseTo(standardCentre(couple), 12);
    expect(standardCentre(inRing)).toBe(20);
  });

  it('tips are shortened for wheels only, and never lengthened', () => {
    const spread = { one: flanks(12, { v: 0.6 }), mate: flanks(24, { v: 0.36 }) };
    expect(tipShortening(spread, centreAt(spread, workingAngle(spread)))).toBeCloseTo(0.96 - (56.4999 / 3 - 18), 4);
    expect(tipShortening(couple, 18.5)).toBe(0);
    expect(tipShortening({ one: flanks(20, { v: 1 }), mate: flanks(60, { ring: true, v: 1 }) }, 20)).toBe(0);
  });

  it('no contact is none, not less than none; too near is an error', () => {
    const [one, mate] = [radii(12), radii(24)];
    const m = 1;
    expect(contactRatioAt(one, mate, 21, rad(20), m)).toBe(0);
    expect(involuteContactAt(one, mate, 21, rad(20), m)).toBe(0);
    expect(() => contactRatioAt(one, mate, 16, rad(20), m)).toThrow(/do not run/);
    expect(() => contactRatioInRing(one, { base: 9, pitch: 10, outside: 9.5 }, 1, rad(20), m)).toThrow(/does not run/);
    expect(() => contactRatioInRing(one, { base: 5, pitch: 6, outside: 5.5 }, 1, rad(20), m)).toThrow(/does not run/);
    expect(contactRatioOnRack({ ...one, outside: 6 }, -3, rad(20), m)).toBe(0);
    expect(hobbedContactAt(one, mate, [6.9, 12.9], 18, rad(20), m)).toBe(0);
    expect(hobbedContactAt(one, mate, [one.base, mate.base], 18, rad(20), m)).toBeCloseTo(involuteContactAt(one, mate, 18, rad(20), m), 12);
  });

  it('what is held to the involute is less only where tips foul', () => {
    const [one, mate] = [radii(12), radii(24)];
    expect(contactRatioAt(one, mate, 18, rad(20), 1)).toBeCloseTo(1.5111, 3);
    expect(involuteContactAt(one, mate, 18, rad(20), 1)).toBeCloseTo(1.4054, 3);
    expect(contactRatio(one, mate, rad(20), 1)).toBeCloseTo(1.4054, 3);
    expect(contactRatioWithRack(radii(30), 1, rad(20), 1)).toBeCloseTo(contactRatioOnRack(radii(30), 1, rad(20), 1), 12);
    expect(contactRatioWithRack(radii(12), 1, rad(20), 1)).toBeLessThan(contactRatioOnRack(radii(12), 1, rad(20), 1));
    const ring = radii(60, true);
    expect(involuteContactInRing(radii(20), ring, 20, rad(20), 1)).toBeLessThanOrEqual(contactRatioInRing(radii(20), ring, 20, rad(20), 1));
  });
});

describe('interference', () => {
  const inside = (N1: number, N2: number, more: { readonly tip?: number; readonly ringTip?: number } = {}) => ({
    one: { N: N1, base: radii(N1).base, tip: more.tip ?? radii(N1).outside },
    ring: { N: N2, base: radii(N2).base, tip: more.ringTip ?? radii(N2, true).outside },
    C: (N2 - N1) / 2,
    aw: rad(20),
  });
  it('least pinion: 13 with its like, more with a larger wheel, never with a smaller', () => {
    expect(leastPinion(1, rad(20), 1)).toBeCloseTo(12.323, 3);
    expect(leastPinion(1, rad(20), 1e9)).toBeCloseTo(2 / Math.sin(rad(20)) ** 2, 4);
    expect(() => leastPinion(1, rad(20), 0.99)).toThrow(/fewer teeth/);
    expect(() => leastPinion(1, rad(20), Number.NaN)).toThrow(RangeError);
  });

  it('a ring whose tips lie inside its base circle has no room at all', () => {
    expect(involuteRoom(inside(12, 20, { ringTip: 9 }))).toBe(Number.NEGATIVE_INFINITY);
    expect(involuteRoom(inside(30, 60, { ringTip: radii(60).base }))).toBeCloseTo(0.5 - 1, 12);
    // Where the line of action leaves the pinion's base circle: tan aa2 = tan aw (1 − N1/N2).
    const just = radii(60).base / Math.cos(Math.atan(Math.tan(rad(20)) * 0.5));
    expect(involuteRoom(inside(30, 60, { ringTip: just }))).toBeCloseTo(0, 12);
  });

  it('tip circles that do not cross leave the cosines at their ends', () => {
    const apart = inside(20, 60, { tip: 9.5, ringTip: 29.9 });
    expect(Number.isFinite(trochoidRoom(apart))).toBe(true);
    expect(trochoidRoom(inside(50, 60))).toBeGreaterThan(0);
    expect(trochoidRoom(inside(56, 60))).toBeLessThan(0);
  });

  it('moving straight in: wheels of few teeth go, of nearly as many do not', () => {
    expect(trimmingRoom(inside(20, 60))).toBeGreaterThan(0);
    expect(trimmingRoom(inside(50, 60))).toBeLessThan(0);
    expect(Number.isFinite(trimmingRoom(inside(20, 60, { tip: radii(20).base * 1.0001 })))).toBe(true);
  });
});
