import fc from 'fast-check';
import { expect, it } from 'vitest';
import { toDegrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { type LengthForm, printLength } from '../../../lib/values/print.ts';
import { exactNumber, readAngle, readCount, readLength, readNumber } from '../../../lib/values/read.ts';

const LIMITS = { least: -100, most: 100 };
const length = (text: string, unit: 'in' | 'mm' = 'in') => {
  const read = readLength(text, 'the size', unit, LIMITS);
  return read.ok ? read.value : read.problem;
};

it.each([
  ['1.25', inches(1.25), { unit: 'in', places: 2 }],
  ['1 1/4', inches(1.25), { unit: 'in', over: 4 }],
  ['1-1/4 in', inches(1.25), { unit: 'in', over: 4 }],
  ['7/8"', inches(0.875), { unit: 'in', over: 8 }],
  ['31,75 mm', millimetres(31.75), { unit: 'mm', places: 2 }],
  [' .5 ', inches(0.5), { unit: 'in', places: 1 }],
  ['−0.0002', inches(-0.0002), { unit: 'in', places: 4 }],
  ['3', inches(3), { unit: 'in', places: 0 }],
] as const)('reads %s', (text, size, form) => {
  expect(length(text)).toEqual({ length: size, form });
});

it.each(['', ' ', 'abc', '1/0', '1..2', '0x10', '1e2', '--1', '1 2', '12 feet', '١', '🙂', '<script>', 'NaN', 'Infinity', '1/2/3'])(
  'refuses %j in words',
  (text) => {
    const said = length(text);
    expect(typeof said).toBe('string');
    expect(said).toContain('is no length');
  },
);

it('says the limit in the unit of the field, whatever was typed', () => {
  expect(length('101')).toBe('“101” is outside what the size may be: from -100 to 100 in.');
  expect(length('2600 mm')).toContain('from -100 to 100 in');
  expect(length('2500 mm')).toEqual({ length: millimetres(2500), form: { unit: 'mm', places: 0 } });
});

it('what was printed in its form is read back the same', () => {
  const forms: LengthForm[] = [
    { unit: 'in', places: 4 },
    { unit: 'mm', places: 3 },
    { unit: 'in', over: 64 },
  ];
  fc.assert(
    fc.property(fc.integer({ min: -6400, max: 6400 }), fc.constantFrom(...forms), (n, form) => {
      const size = form.unit === 'mm' ? millimetres(n / 1000) : 'over' in form ? inches(n / 64) : inches(n / 10_000);
      const back = length(`${printLength(size, form)} ${form.unit}`);
      expect(typeof back === 'string' ? back : back.length).toBe(size);
    }),
  );
});

it('counts are whole and within their limits', () => {
  const teeth = (text: string) => readCount(text, 'the teeth', { least: 4, most: 1000 });
  expect(teeth('22')).toEqual({ ok: true, value: 22 });
  for (const no of ['', '22.5', 'x', '3', '1001', '-5', '1e3', '1000000000000000000', ' 2 2']) expect(teeth(no).ok, no).toBe(false);
});

it('numbers come as decimals, commas or fractions', () => {
  expect(readNumber('2 1/2', 'it', LIMITS)).toEqual({ ok: true, value: 2.5 });
  expect(readNumber('2,5', 'it', LIMITS)).toEqual({ ok: true, value: 2.5 });
  expect(readNumber('100.1', 'it', LIMITS).ok).toBe(false);
  const wide = readCount('100001', 'minutes', { least: 0, most: 100_000 });
  expect(wide.ok ? '' : wide.problem).toContain('from 0 to 100,000.');
  expect(exactNumber('0.1')).toEqual([1, 10]);
  expect(exactNumber('99999999999')).toBeNull();
});

it('angles come as decimals, fractions, or degrees and minutes', () => {
  const angle = (text: string) => {
    const read = readAngle(text, 'the angle', { least: 0, most: 90 });
    return read.ok ? toDegrees(read.value) : read.problem;
  };
  expect([angle('14.5'), angle('14 1/2'), angle("14°30'"), angle('14°30′0″'), angle('20°')]).toEqual([14.5, 14.5, 14.5, 14.5, 20]);
  expect(angle('14.5 rad')).toContain('is no angle');
  expect(angle('91')).toContain('from 0 to 90');
});

it('a long name is not said again under its own box', () => {
  const said = readLength('-1', 'old root diameter: twice the least wall, and the bore', 'in', { least: 0.01, most: 400 });
  expect(said.ok ? '' : said.problem).toBe('“-1” is outside what it may be: from 0.01 to 400 in.');
});
