import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { countEach, countRatios, wheelsKey } from '../../../lib/trains/ratio-count.ts';
import { bruteCount } from './brute-force.ts';

describe('countRatios', () => {
  it('counts nothing with no wheel or one', () => {
    expect(countRatios([])).toEqual({ simple: 0, compound: 0, distinct: 0 });
    expect(countRatios([40])).toEqual({ simple: 0, compound: 0, distinct: 0 });
  });

  it('counts 1 to 1 once, with a like pair or with equal products', () => {
    expect(countRatios([40, 40])).toEqual({ simple: 1, compound: 0, distinct: 1 });
    // 20 × 60 = 30 × 40 gives 1 to 1 with four wheels and with no two of them.
    expect(countRatios([20, 30, 40, 60])).toEqual(bruteCount([20, 30, 40, 60]));
    expect(countRatios([20, 30, 40, 60]).distinct % 2).toBe(1);
  });

  it('takes a value that two wheels give as simple, not again as compound', () => {
    // 20/40 = (20 × 30)/(40 × 30): the like pair of 30 adds no ratio of its own to that one.
    expect(countRatios([20, 30, 30, 40])).toEqual(bruteCount([20, 30, 30, 40]));
  });

  it('equals brute force over exact fractions on small sets with like wheels and equal products', () => {
    const wheel = fc.oneof(fc.constantFrom(20, 24, 30, 36, 40, 45, 48, 60, 80), fc.integer({ min: 4, max: 130 }));
    fc.assert(
      fc.property(fc.array(wheel, { maxLength: 8 }), (wheels) => {
        expect(countRatios(wheels)).toEqual(bruteCount(wheels));
      }),
      { numRuns: 150 },
    );
  });

  it('tells apart fractions that lie as close as they can: the greatest wheels allowed', () => {
    const wheel = fc.oneof(fc.integer({ min: 4980, max: 5000 }), fc.integer({ min: 4900, max: 5000 }));
    fc.assert(
      fc.property(fc.array(wheel, { minLength: 4, maxLength: 9 }), (wheels) => {
        expect(countRatios(wheels)).toEqual(bruteCount(wheels));
      }),
      { numRuns: 60 },
    );
  });

  it('counts several sets in one pass as it counts each alone, beyond thirty sets too', () => {
    const sets = fc.array(fc.array(fc.constantFrom(20, 24, 25, 30, 40, 50), { maxLength: 5 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(sets, (many) => {
        expect(countEach(many)).toEqual(many.map(bruteCount));
      }),
      { numRuns: 40 },
    );
  });

  it('does not care in which order the wheels are listed', () => {
    expect(countRatios([52, 19, 46, 22])).toEqual(countRatios([19, 22, 46, 52]));
    expect(wheelsKey([52, 19, 46, 19])).toBe(wheelsKey([19, 19, 46, 52]));
    expect(wheelsKey([19, 46, 52])).not.toBe(wheelsKey([19, 19, 46, 52]));
  });

  it('is right on a middling set as well, where the line is cut into many stretches', () => {
    const wheels = [20, 20, 24, 25, 28, 30, 32, 35, 36, 40, 40, 45, 48, 50, 55, 60, 65, 70, 75, 80, 127];
    expect(countRatios(wheels)).toEqual(bruteCount(wheels));
  });

  it('counts sixty wheels, whose trains all differ when the numbers are sixty primes', () => {
    const primes: number[] = [];
    for (let n = 11; primes.length < 60; n++)
      if (!primes.some((p) => n % p === 0) && ![2, 3, 5, 7].some((p) => n % p === 0)) primes.push(n);
    // All quotients differ: 60 × 59 of two wheels, and C(60,2) × C(58,2) of four.
    expect(countRatios(primes)).toEqual({ simple: 3540, compound: 1770 * 1653, distinct: 3540 + 1770 * 1653 });
  });

  it('refuses more than sixty wheels, and what is no tooth count, in words', () => {
    expect(() => countRatios(new Array<number>(61).fill(40))).toThrow(/come to 61\. At most 60/);
    for (const wrong of [0, -20, 2.5, Number.NaN, 1e9, Number.POSITIVE_INFINITY])
      expect(() => countRatios([20, wrong])).toThrow(DomainError);
  });
});
