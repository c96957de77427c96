import fc from 'fast-check';
import { expect, it } from 'vitest';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres, nanometres } from '../../../lib/values/length.ts';
import { printCount, printDegrees, printLength, printNumber, printShort, printWhole } from '../../../lib/values/print.ts';

/** The decimal of whole / per, by long division on BigInt digits, rounded half away from zero at the last place. */
function byLongDivision(whole: number, per: number, places: number): string {
  let left = BigInt(Math.abs(whole));
  const by = BigInt(per);
  const digits: bigint[] = [left / by];
  left %= by;
  for (let place = 0; place < places; place++) {
    left *= 10n;
    digits.push(left / by);
    left %= by;
  }
  if (2n * left >= by) {
    let place = digits.length - 1;
    while (place > 0 && digits[place] === 9n) digits[place--] = 0n;
    digits[place] = (digits[place] ?? 0n) + 1n;
  }
  const [first, ...rest] = digits;
  const text = `${first}${places > 0 ? `.${rest.join('')}` : ''}`;
  return whole < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

it('prints whole nanometres as long division does, at every place', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -5e9, max: 5e9 }),
      fc.constantFrom(25_400_000, 1_000_000),
      fc.integer({ min: 0, max: 6 }),
      (nm, per, places) => {
        expect(printWhole(nm, per, places)).toBe(byLongDivision(nm, per, places));
      },
    ),
    { numRuns: 2000 },
  );
});

it('prints exact halves away from zero, at every place', () => {
  for (let places = 0; places <= 5; places++) {
    const halfUp = 5 * 10 ** (5 - places);
    for (const sign of [1, -1]) {
      const mark = sign < 0 ? '−' : '';
      expect(printWhole(sign * halfUp, 1_000_000, places)).toBe(mark + (places === 0 ? '1' : `0.${'1'.padStart(places, '0')}`));
      expect(printWhole(sign * (halfUp - 1), 1_000_000, places).replace('−', '')).toBe(places === 0 ? '0' : `0.${'0'.repeat(places)}`);
    }
  }
});

it('the four roots of the two index wheels are exact ties', () => {
  const roots = [4.125 - 2 * 0.269625, 4.5 - 2 * 0.269625, 3 - 2 * 0.269625, 3.75 - 2 * 0.269625];
  expect(roots.map((root) => printLength(inches(root), { unit: 'in', places: 4 }))).toEqual(['3.5858', '3.9608', '2.4608', '3.2108']);
});

it('prints a plain number as its shortest decimal rounds', () => {
  expect([
    printNumber(0.15, 1),
    printNumber(1.005, 2),
    printNumber(2.5, 0),
    printNumber(-0.5, 0),
    printNumber(1e-9, 3),
    printNumber(123456789, 2),
  ]).toEqual(['0.2', '1.01', '3', '−1', '0.000', '123456789.00']);
  expect(() => printNumber(Number.NaN, 2)).toThrow(RangeError);
  expect(() => printNumber(Number.POSITIVE_INFINITY, 2)).toThrow(RangeError);
});

it('a number is printed as BigInt decimals round it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -1e9, max: 1e9 }),
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 0, max: 6 }),
      (whole, power, places) => {
        expect(printNumber(Number(`${whole}e-${power}`), places)).toBe(byLongDivision(whole, 10 ** power, places));
      },
    ),
    { numRuns: 2000 },
  );
});

it('prints short numbers without idle zeros', () => {
  expect([printShort(14.5), printShort(20), printShort(0.31250001), printShort(100), printShort(-2.5)]).toEqual([
    '14.5',
    '20',
    '0.3125',
    '100',
    '−2.5',
  ]);
});

it('prints inch fractions in lowest terms', () => {
  const in64 = (size: number) => printLength(inches(size), { unit: 'in', over: 64 });
  expect([in64(1.25), in64(3 / 64), in64(2), in64(-0.5), in64(0), in64(5 + 63 / 64)]).toEqual([
    '1 1/4',
    '3/64',
    '2',
    '−1/2',
    '0',
    '5 63/64',
  ]);
});

it('prints both units and angles', () => {
  expect(printLength(millimetres(25.4), { unit: 'mm', places: 3 })).toBe('25.400');
  expect(printLength(nanometres(-1), { unit: 'mm', places: 3 })).toBe('0.000');
  expect(printDegrees(degrees(14.5), 2)).toBe('14.50');
});

it('a count has a comma at the thousands', () => {
  expect([0, 7, 707, 1350, 50_000, 1_234_567, -1573].map(printCount)).toEqual(['0', '7', '707', '1,350', '50,000', '1,234,567', '−1,573']);
});
