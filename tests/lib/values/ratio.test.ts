import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, it } from 'vitest';
import { compareRatios, gcd, minus, over, plus, type Ratio, ratio, sameRatio, times } from '../../../lib/values/ratio.ts';

const whole = fc.integer({ min: -9999, max: 9999 });
const some = fc.tuple(whole, fc.integer({ min: 1, max: 9999 })).map(([num, den]) => ratio(num, den));
const check = ([num, den]: Ratio) => new Fraction(num, den);
const ours = (fraction: Fraction): Ratio => [Number(fraction.s * fraction.n), Number(fraction.d)];

it('adds, takes away, multiplies, divides and compares as a general fraction library does', () => {
  fc.assert(
    fc.property(some, some, (a, b) => {
      expect(plus(a, b)).toEqual(ours(check(a).add(check(b))));
      expect(minus(a, b)).toEqual(ours(check(a).sub(check(b))));
      expect(times(a, b)).toEqual(ours(check(a).mul(check(b))));
      if (b[0] !== 0) expect(over(a, b)).toEqual(ours(check(a).div(check(b))));
      expect(Math.sign(compareRatios(a, b))).toBe(Math.sign(check(a).compare(check(b))));
      expect(sameRatio(a, b)).toBe(check(a).equals(check(b)));
    }),
    { numRuns: 1000 },
  );
});

it('stands in lowest terms with the lower number above zero', () => {
  expect(ratio(127 * 4, 55 * 4)).toEqual([127, 55]);
  expect(ratio(3, -6)).toEqual([-1, 2]);
  expect(Object.is(ratio(0, -5)[0], 0)).toBe(true);
  expect(gcd(1071, 462)).toBe(21);
});

it('refuses what is no ratio of whole safe numbers', () => {
  for (const [num, den] of [
    [1, 0],
    [1.5, 2],
    [2 ** 53, 1],
    [Number.NaN, 1],
  ] as const)
    expect(() => ratio(num, den)).toThrow(RangeError);
  expect(() => times([2 ** 52, 1], [2 ** 52 - 1, 1])).toThrow(RangeError);
});
