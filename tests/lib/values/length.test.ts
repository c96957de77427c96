import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, inUnit, millimetres, nanometres, ofUnit, toInches } from '../../../lib/values/length.ts';

it('keeps sixty-fourths, ten-thousandths of an inch and of a millimetre exact', () => {
  fc.assert(
    fc.property(fc.integer({ min: -64_000, max: 64_000 }), (n) => {
      expect(inches(n / 64)).toBe((n * 25_400_000) / 64);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: -999_999, max: 999_999 }), (n) => {
      expect(inches(n / 10_000)).toBe(n * 2540);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: -999_999, max: 999_999 }), (n) => {
      expect(millimetres(n / 10_000)).toBe(n * 100);
    }),
  );
});

it('an inch is 25.4 mm', () => {
  expect(inches(1)).toBe(millimetres(25.4));
  expect(toInches(millimetres(25.4))).toBe(1);
  expect(inUnit(ofUnit(3.75, 'in'), 'mm')).toBe(95.25);
});

it('rounds half a nanometre away from zero, and has no minus zero', () => {
  expect(nanometres(0.5)).toBe(1);
  expect(nanometres(-0.5)).toBe(-1);
  expect(inches(1 / 128)).toBe(198_438);
  expect(Object.is(nanometres(-0.2), 0)).toBe(true);
});

it('refuses what is no length', () => {
  for (const no of [Number.NaN, Number.POSITIVE_INFINITY, 1.01e11]) expect(() => nanometres(no)).toThrow(RangeError);
});
