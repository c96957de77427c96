import { describe, expect, it } from 'vitest';
import { cornersOut, grooveFeed, grooveToTop } from '../../../lib/splines/hub.formulas.ts';
import {
  highestLeft,
  leavesFin,
  mostTurned,
  outerHalfAngle,
  type ShaftToMill,
  widestForOneCut,
  widestForSides,
} from '../../../lib/splines/mill.formulas.ts';
import { pinContact } from '../../../lib/splines/pins.formulas.ts';
import { gapHalfAngle } from '../../../lib/splines/straight.formulas.ts';

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const story: ShaftToMill = { N: 6, D: 1.25, d: 1.058, w: 0.3125, c: 0.1875 };

/** Numbers worked by hand from right triangles. */
describe('a hub slotted with a flat nose', () => {
  it('√(1.25² + 0.3125²) is 1.288471: corners 0.0192355 out; half of 1.25 and 1.0625 is 1.15625', () => {
    expect(cornersOut(1.25, 0.3125)).toBeCloseTo(0.0192355, 6);
    expect(grooveToTop(1.25, 1.0625)).toBeCloseTo(1.15625, 12);
    expect(grooveFeed(1.25, 1.0625, 0.3125)).toBeCloseTo(0.625 - 0.5077524, 6);
  });
});

describe('keys on their circle', () => {
  it('30° less asin(0.3125/1.0625) = 17.105° leaves 12.895°', () => {
    expect(degrees(gapHalfAngle(6, 0.3125, 1.0625))).toBeCloseTo(12.895, 3);
  });

  it.each([0, -0.1, 1.0625, 1.2])('a key %s wide does not stand on a circle of 1.0625', (w) => {
    expect(() => gapHalfAngle(6, w, 1.0625)).toThrow(`a key ${w} wide does not stand on a circle of 1.0625`);
  });
});

describe('the widest cutters', () => {
  it('for the sides: the far corner keeps half a key off the next key’s middle line', () => {
    const shaft = { ...story, d: 1.0625 };
    const c = widestForSides(shaft);
    const [x, y] = [0.15625 + c, 0.5077524];
    expect(Math.abs(x * Math.cos(Math.PI / 3) - y * Math.sin(Math.PI / 3))).toBeCloseTo(0.15625, 6);
    expect(c).toBeCloseTo(0.4107, 4);
    expect(widestForSides({ ...story, N: 4 })).toBe(Number.POSITIVE_INFINITY);
    expect(widestForSides({ ...story, N: 3 })).toBe(Number.POSITIVE_INFINITY);
    expect(Number.isFinite(widestForSides({ ...story, N: 5 }))).toBe(true);
  });

  it('for one cut a space: the chord of 2 × 12.895° on 1.0625', () => {
    expect(widestForOneCut({ ...story, d: 1.0625 })).toBeCloseTo(1.0625 * Math.sin((12.8954 * Math.PI) / 180), 5);
  });
});

describe('turning for the bottoms', () => {
  it('30° − asin(0.3125/1.058) − asin(0.1875/1.058) = 30 − 17.181 − 10.208 = 2.611°; nothing once the cutter fills the gap', () => {
    expect(degrees(mostTurned(story))).toBeCloseTo(2.611, 2);
    expect(mostTurned({ ...story, c: widestForOneCut(story) })).toBeCloseTo(0, 9);
    expect(degrees(outerHalfAngle(story))).toBeCloseTo(8.627, 3);
  });

  it('the ridge falls as the cut is turned nearer to the key', () => {
    expect(highestLeft(story, 0)).toBeGreaterThan(highestLeft(story, 0.02));
    expect(highestLeft(story, mostTurned(story))).toBeCloseTo(1.058, 6);
  });

  it('a fin stays only where the wall passes the far face of the side cut, or goes under its floor', () => {
    expect(leavesFin(story, 0)).toBe(false);
    const narrow = { ...story, N: 10, D: 20, d: 15.505, w: 2.5, c: 1.175 };
    expect(leavesFin(narrow, 0)).toBe(true);
    expect(leavesFin({ ...narrow, c: 1.5 }, 0)).toBe(false);
    expect(leavesFin({ N: 3, D: 1.53, d: 1.3927, w: 0.7601, c: 0.3153 }, 0)).toBe(true);
    expect(leavesFin({ N: 3, D: 1.9, d: 1.3927, w: 0.7601, c: 0.5 }, 0)).toBe(false);
  });
});

describe('where a pin touches', () => {
  it('not inside the base circle of a shaft', () => {
    const pins = { N: 20, a: Math.PI / 6, D: 20, k: 30 };
    expect(() => pinContact('shaft', pins, 0.5)).toThrow('the pin touches inside the base circle');
    expect(pinContact('hub', { ...pins, k: 0 }, Math.PI / 6)).toBeCloseTo(20, 9);
  });
});
