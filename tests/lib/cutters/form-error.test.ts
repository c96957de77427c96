import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flankRadius, formError, formErrorSquare, halfSpace } from '../../../lib/cutters/form-error.formulas.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { inches } from '../../../lib/values/length.ts';
import { printLength } from '../../../lib/values/print.ts';
import { type Drawn, drawnFlank, reachAt, rolledReach } from './drawn-space.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
type More = { readonly m?: number; readonly deg?: number; readonly deg2?: number; readonly m2?: number };
const pairOf = (N: number, N2: number, { m = 1 / 8, deg = 14.5, deg2, m2 }: More = {}) => ({
  N,
  m,
  a: rad(deg),
  N2,
  m2: m2 ?? m,
  a2: rad(deg2 ?? deg),
});
const printed = (inch: number): string => printLength(inches(inch), { unit: 'in', places: 4 });

describe('the error of a form on 35 teeth, 8 DP, 14½°, to the printed digit', () => {
  test.each([
    [26, 14.5, ['0.0075', '0.0028', '0.0003']],
    [29, 14.5, ['0.0044', '0.0017', '0.0002']],
    [30, 14.5, ['0.0036', '0.0013', '0.0001']],
    [35, 14.5, ['0.0000', '0.0000', '0.0000']],
    [55, 14.5, ['−0.0077', '−0.0028', '−0.0003']],
    [68, 14.5, ['−0.0102', '−0.0038', '−0.0003']],
    [35, 20, ['0.0122', '0.0065', '0.0002']],
  ])('form for %i at %d°', (N2, deg2, row) => {
    expect([1, 0.5, 0].map((part) => printed(formError(pairOf(35, N2, { deg2 }), part / 8)))).toEqual(row);
  });

  test('a 20° form below the pitch line leaves metal', () => {
    expect([-0.25, -0.5].map((part) => printed(formError(pairOf(35, 35, { deg2: 20 }), part / 8)))).toEqual(['−0.0034', '−0.0078']);
  });

  test('square to the flank at the tip corner the form for 26 is 0.0060 off', () => {
    expect(printed(formErrorSquare(pairOf(35, 26), 1 / 8))).toBe('0.0060');
  });
});

const PAIRS: readonly (readonly [Drawn, Drawn])[] = [
  [
    { N: 35, m: 1 / 8, degrees: 14.5 },
    { N: 26, m: 1 / 8, degrees: 14.5 },
  ],
  [
    { N: 35, m: 1 / 8, degrees: 14.5 },
    { N: 68, m: 1 / 8, degrees: 14.5 },
  ],
  [
    { N: 35, m: 1 / 8, degrees: 14.5 },
    { N: 35, m: 1 / 8, degrees: 20 },
  ],
  [
    { N: 35, m: 1 / 8, degrees: 14.5 },
    { N: 35, m: 1 / 10, degrees: 14.5 },
  ],
  [
    { N: 18, m: 2.5, degrees: 20 },
    { N: 13, m: 2.5, degrees: 20 },
  ],
  [
    { N: 60, m: 3, degrees: 20 },
    { N: 135, m: 3, degrees: 20 },
  ],
];
const asPair = (gear: Drawn, cutter: Drawn) => ({
  N: gear.N,
  m: gear.m,
  a: rad(gear.degrees),
  N2: cutter.N,
  m2: cutter.m,
  a2: rad(cutter.degrees),
});

describe('by other routes', () => {
  test.each(PAIRS)('widths of drawn flanks, radial below the base circle: %o with %o', (gear, cutter) => {
    const [own, other] = [drawnFlank(gear), drawnFlank(cutter)];
    for (const part of [1, 0.6, 0.3, 0, -0.25, -0.5, -0.8, -1.1]) {
      const height = part * gear.m;
      const drawn = reachAt(other, cutter, height) - reachAt(own, gear, height);
      expect(Math.abs(drawn - formError(asPair(gear, cutter), height))).toBeLessThan(1e-6 * gear.m);
    }
  });

  test.each(PAIRS.slice(0, 4))('spaces rolled by a straight-sided rack: %o with %o', (gear, cutter) => {
    for (const part of [1, 0.5, 0.25, 0]) {
      const height = part * gear.m;
      const rolled = rolledReach(cutter, height) - rolledReach(gear, height);
      expect(Math.abs(rolled - formError(asPair(gear, cutter), height))).toBeLessThan(1e-6 * gear.m);
    }
  });

  test.each([26, 30, 55, 68])('square to the flank: least distance from the corner to the drawn form of %i', (N2) => {
    const [m, R] = [1 / 8, 35 / 16];
    const corner = drawnFlank({ N: 35, m, degrees: 14.5 }).find(([x, y]) => Math.hypot(x, y) >= R + m) ?? [0, 0];
    const down = (m * (N2 - 35)) / 2;
    const least = Math.min(...drawnFlank({ N: N2, m, degrees: 14.5 }).map(([x, y]) => Math.hypot(x - corner[0], y - corner[1] - down)));
    expect(Math.abs(least - Math.abs(formErrorSquare(pairOf(35, N2), m)))).toBeLessThan(4e-6);
    expect(Math.sign(formErrorSquare(pairOf(35, N2), m))).toBe(Math.sign(35 - N2));
  });

  test('with very many teeth the space becomes the straight-sided space of a rack', () => {
    const rack = Math.PI / 4 + Math.tan(rad(20));
    expect(Math.abs(halfSpace({ N: 1e6, m: 1, a: rad(20) }, 1) - rack)).toBeLessThan(1e-4);
  });
});

const count = fc.integer({ min: 12, max: 300 });
const angle = fc.constantFrom(14.5, 15, 17.5, 20, 22.5, 25);
const module = fc.double({ min: 0.01, max: 25, noNaN: true });

describe('what must always hold', () => {
  test('no error at any height with the gear’s own form', () => {
    fc.assert(
      fc.property(count, angle, module, fc.double({ min: -1, max: 1, noNaN: true }), (N, deg, m, part) => {
        expect(formError(pairOf(N, N, { m, deg }), part * m)).toBe(0);
        expect(Math.abs(formErrorSquare(pairOf(N, N, { m, deg }), m))).toBeLessThan(1e-12 * m * N);
      }),
    );
  });

  test('at the tips a form for fewer teeth takes metal off, for more leaves it, the more so the further off', () => {
    fc.assert(
      fc.property(count, count, count, angle, (N, one, other, deg) => {
        const [few, many] = [Math.min(one, other), Math.max(one, other)];
        fc.pre(few !== many);
        const errors = [few, many].map((N2) => formError(pairOf(N, N2, { m: 1, deg }), 1));
        expect(errors[0]).toBeGreaterThan(errors[1] ?? 0);
        expect(Math.sign(errors[0] ?? 0)).toBe(Math.sign(N - few));
        const square = formErrorSquare(pairOf(N, many, { m: 1, deg }), 1);
        expect(Math.abs(square) < 1e-10 ? 0 : Math.sign(square)).toBe(Math.sign(N - many));
      }),
    );
  });

  test('the error grows with the pitch and with nothing else: twice the module, twice the error', () => {
    fc.assert(
      fc.property(count, count, angle, (N, N2, deg) => {
        const small = formError(pairOf(N, N2, { m: 1, deg }), 0.7);
        expect(Math.abs(formError(pairOf(N, N2, { m: 2, deg }), 1.4) - 2 * small)).toBeLessThan(1e-9);
      }),
    );
  });

  test('a cutter of finer pitch leaves a quarter of the pitches’ difference at the pitch line', () => {
    const error = formError(pairOf(35, 35, { m2: 1 / 10 }), 0);
    expect(Math.abs(error + (Math.PI / 4) * (1 / 8 - 1 / 10))).toBeLessThan(2e-4);
  });

  test('the flank stands where its width and height say', () => {
    const form = { N: 35, m: 1 / 8, a: rad(14.5) };
    expect(Math.abs(Math.hypot(halfSpace(form, 0.1), 35 / 16 + 0.1) - flankRadius(form, 0.1))).toBeLessThan(1e-12);
  });
});

describe('sizes that make no sense', () => {
  test.each([
    ['two teeth', () => halfSpace({ N: 2, m: 1, a: 0.3 }, 0)],
    ['no pitch', () => halfSpace({ N: 20, m: 0, a: 0.3 }, 0)],
    ['not a number', () => halfSpace({ N: Number.NaN, m: 1, a: 0.3 }, 0)],
    ['angle of 50°', () => halfSpace({ N: 20, m: 1, a: 0.9 }, 0)],
    ['height beyond the end of the flank', () => halfSpace({ N: 12, m: 1, a: 0.35 }, 20)],
    ['involute asked for below the base circle', () => flankRadius({ N: 12, m: 1, a: 0.25 }, -1)],
  ])('%s is refused in words', (_, work) => {
    expect(work).toThrow(DomainError);
  });
});
