import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { costOfMissing } from '../../../lib/trains/missing-cost.ts';
import { ratioMarks } from '../../../lib/trains/ratio-marks.ts';
import { bruteCount, bruteRatios } from './brute-force.ts';

const PLATE_ON_DOOR = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
const DRAWER = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52];
const RECUTS = [
  { make: 22, from: 31 },
  { make: 28, from: 34 },
];

describe('a tie is broken by what can be cut today', () => {
  const owned = (...teeth: number[]) => teeth.map((one) => ({ teeth: one, because: 'its cutter is owned' }));
  const will = (...teeth: number[]) => teeth.map((one) => ({ teeth: one, because: `the blank of the ${one} will not do` }));
  const asked = { belongs: PLATE_ON_DOOR, drawer: DRAWER, plannedRecuts: RECUTS };
  const first = (ready: number[], barred: number[]) =>
    costOfMissing({ ...asked, canBeCutToday: owned(...ready), barredToday: will(...barred) }).first;

  it.each([
    [[22, 28], [22], [28, 22], 'A tie at 828; the 28 first: the blank of the 22 will not do.'],
    [[22, 28], [28], [22, 28], 'A tie at 828; the 22 first: the blank of the 28 will not do.'],
    [[28], [28], [22, 28], 'A tie at 828; the 22 first: the blank of the 28 will not do.'],
    [[28], [22], [28, 22], 'A tie at 828; the 28 first: the blank of the 22 will not do.'],
    [[28], [], [28, 22], 'A tie at 828; the 28 first: its cutter is owned.'],
    [
      [22, 28],
      [22, 28],
      [22, 28],
      'A tie at 828; none can be cut today: the blank of the 22 will not do, the blank of the 28 will not do.',
    ],
  ] as const)('cutters for %j, blanks of %j failed', (ready, barred, order, says) => {
    expect(first([...ready], [...barred])).toMatchObject({ order, says });
  });

  it('one wheel that is missing alone, or brings most, is said to be barred too', () => {
    const alone = costOfMissing({ belongs: [20, 30, 40, 50], drawer: [20, 30, 40, 60], barredToday: will(50) });
    expect(alone.first.says).toMatch(/^Only the 50 is missing.*Not today: the blank of the 50 will not do\.$/);
  });
});

describe('costOfMissing on a hobber with 22 and 28 gone', () => {
  const cost = costOfMissing({
    belongs: PLATE_ON_DOOR,
    drawer: DRAWER,
    plannedRecuts: RECUTS,
    canBeCutToday: [{ teeth: 28, because: 'its cutter is owned' }],
  });

  it('finds what is missing and what is spare', () => {
    expect(cost.missing).toEqual([22, 28]);
    expect(cost.spares).toEqual([19, 25, 31, 34, 46]);
    expect(cost.usedUp).toEqual([31, 34]);
  });

  it('counts one wheel of each number', () => {
    expect(cost.oneOfEach.complete).toEqual({ simple: 90, compound: 1260, distinct: 1350 });
    expect(cost.oneOfEach.today.distinct).toBe(476);
    expect(cost.oneOfEach.lost).toBe(874);
    expect(cost.afterEach.map((one) => [one.teeth, one.from, one.oneOfEach.distinct])).toEqual([
      [22, 31, 828],
      [28, 34, 828],
    ]);
  });

  it('counts the wheels that really lie there, with the spares gone that were cut up', () => {
    expect(cost.reallyThere.today.distinct).toBe(707);
    expect(cost.reallyThere.allMade.distinct).toBe(1573);
  });

  it('has more ratios when both are made from stock and no spare is used up', () => {
    const stock = costOfMissing({ belongs: PLATE_ON_DOOR, drawer: DRAWER });
    expect(stock.reallyThere.allMade).toEqual(bruteCount([...DRAWER, 22, 28]));
    expect(stock.reallyThere.allMade.distinct).toBeGreaterThan(1573);
  });

  it('puts the 28 first, a tie broken by what can be cut today', () => {
    expect(cost.first.order).toEqual([28, 22]);
    expect(cost.first.tied).toEqual([28, 22]);
    expect(cost.first.says).toBe('A tie at 828; the 28 first: its cutter is owned.');
  });

  it('says so when nothing breaks the tie', () => {
    const { first } = costOfMissing({ belongs: PLATE_ON_DOOR, drawer: DRAWER });
    expect(first.says).toBe('A tie at 828; any of 22, 28 may be made first.');
  });
});

describe('costOfMissing on any set', () => {
  const wheels = fc.array(fc.constantFrom(20, 24, 30, 36, 40, 45, 50, 60), { maxLength: 6 });

  it('equals brute force, after each wheel and with all made', () => {
    fc.assert(
      fc.property(wheels, wheels, (belongs, drawer) => {
        const cost = costOfMissing({ belongs, drawer });
        const numbers = [...new Set(belongs)];
        const there = (lying: readonly number[]) => numbers.filter((teeth) => lying.includes(teeth));
        expect(cost.oneOfEach.complete).toEqual(bruteCount(numbers));
        expect(cost.oneOfEach.today).toEqual(bruteCount(there(drawer)));
        expect(cost.reallyThere.today).toEqual(bruteCount(drawer));
        expect(cost.reallyThere.allMade).toEqual(bruteCount([...drawer, ...cost.missing]));
        for (const one of cost.afterEach) {
          expect(one.oneOfEach).toEqual(bruteCount(there([...drawer, one.teeth])));
          expect(one.reallyThere).toEqual(bruteCount([...drawer, one.teeth]));
        }
        for (const teeth of numbers) {
          const [owed, lie] = [belongs, drawer].map((list) => list.filter((one) => one === teeth).length) as [number, number];
          expect(cost.missing.filter((one) => one === teeth)).toHaveLength(Math.max(0, owed - lie));
          expect(cost.spares.filter((one) => one === teeth)).toHaveLength(Math.max(0, lie - owed));
        }
      }),
      { numRuns: 80 },
    );
  });

  it('takes the spare away in the count after its wheel is made, and its number too when it was the last', () => {
    const cost = costOfMissing({ belongs: [20, 30, 40, 50], drawer: [30, 40, 50], plannedRecuts: [{ make: 20, from: 50 }] });
    expect(cost.afterEach[0]?.oneOfEach).toEqual(bruteCount([20, 30, 40]));
    expect(cost.reallyThere.allMade).toEqual(bruteCount([20, 30, 40]));
  });

  it('prefers the wheel that brings back more, whatever can be cut today', () => {
    // A second 30 brings no new number; the 50 does.
    const asked = { belongs: [20, 30, 30, 40, 50], drawer: [20, 30, 40], canBeCutToday: [{ teeth: 30, because: 'its cutter is owned' }] };
    const { first } = costOfMissing(asked);
    expect(first.order).toEqual([50, 30]);
    expect(first.says).toMatch(/^The 50 first: with it there are \d+ ratios, with the 30 \d+\.$/);
  });

  it('has nothing to put first when nothing is missing, and nothing to compare with one', () => {
    expect(costOfMissing({ belongs: [20, 30], drawer: [20, 30, 40] }).first).toEqual({ order: [], tied: [], says: 'No wheel is missing.' });
    expect(costOfMissing({ belongs: [20, 30], drawer: [20] }).first.says).toBe('Only the 30 is missing; with it there are 2 ratios.');
  });

  it('refuses a recut of what is not missing, a spare that is not there, and too many wheels', () => {
    const recut = (make: number, from: number) => () =>
      costOfMissing({ belongs: [20, 30, 40], drawer: [30, 40, 60], plannedRecuts: [{ make, from }] });
    expect(recut(20, 60)).not.toThrow();
    expect(recut(30, 60)).toThrow(/A 30 is to be made, but none is missing/);
    expect(recut(20, 52)).toThrow(/A 52 is to be cut up/);
    const many = Array.from({ length: 40 }, (_, n) => 20 + n);
    expect(() => costOfMissing({ belongs: many, drawer: many.map((teeth) => teeth + 100) })).toThrow(DomainError);
  });

  it('counts the worst case that it takes: sixty belong, half of them missing', () => {
    const belongs = Array.from({ length: 60 }, (_, n) => 20 + n);
    const drawer = belongs.filter((teeth) => teeth % 2 === 0);
    const cost = costOfMissing({ belongs, drawer });
    expect(cost.afterEach).toHaveLength(30);
    expect(cost.reallyThere.allMade).toEqual(cost.oneOfEach.complete);
    expect(cost.afterEach[29]?.oneOfEach.distinct).toBeGreaterThan(cost.oneOfEach.today.distinct);
  });
});

describe('ratioMarks', () => {
  const sum = (columns: readonly number[]) => columns.reduce((all, one) => all + one, 0);

  it('marks every ratio of the complete set once, as kept or as lost', () => {
    const { kept, lost, greatest } = ratioMarks({ belongs: PLATE_ON_DOOR, drawer: DRAWER, pixels: 600 });
    expect([sum(kept), sum(lost)]).toEqual([476, 874]);
    expect(greatest).toBeCloseTo((46 * 52) / (19 * 22), 12);
    expect(kept).toHaveLength(600);
  });

  it('puts each where the logarithm says, by brute force over exact fractions', () => {
    const [belongs, drawer, pixels] = [[20, 30, 40, 50, 65], [20, 30, 50, 65], 40];
    const { kept, lost, greatest } = ratioMarks({ belongs, drawer, pixels });
    const [complete, today] = [bruteRatios(belongs).all, bruteRatios(drawer).all];
    const right = { kept: new Array<number>(pixels).fill(0), lost: new Array<number>(pixels).fill(0) };
    for (const text of complete) {
      const [top, bottom] = text.split('/').map(Number) as [number, number];
      const at = ((Math.log(top / bottom) / Math.log(greatest) + 1) / 2) * pixels;
      const column = Math.max(0, Math.min(pixels - 1, Math.floor(at)));
      (right[today.has(text) ? 'kept' : 'lost'][column] as number) += 1;
    }
    expect({ kept, lost }).toEqual(right);
  });

  it('stands in the middle when 1 to 1 is the only ratio, and is empty without wheels', () => {
    expect(sum(ratioMarks({ belongs: [], drawer: [20], pixels: 10 }).lost)).toBe(0);
    const alone = ratioMarks({ belongs: [20, 20], drawer: [], pixels: 10 });
    expect(sum(alone.kept) + sum(alone.lost)).toBe(0);
  });

  it('refuses a width that no picture has', () => {
    for (const pixels of [0, -5, 2.5, Number.NaN, 1e9])
      expect(() => ratioMarks({ belongs: [20, 30], drawer: [], pixels })).toThrow(DomainError);
  });
});
