import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { bestTrains, changesFor } from '../../../lib/trains/best-trains.ts';
import { chartOf } from '../../../lib/trains/chart.ts';
import { makingOrder } from '../../../lib/trains/making-order.ts';
import { targetOf } from '../../../lib/trains/target.ts';
import { inchesOf, readWanted } from '../../../lib/trains/wanted.ts';
import { everyBest } from './exhaustive.ts';

const wanted = (text: string) => {
  const found = readWanted(text);
  if (!found.ok) throw new Error(found.problem);
  return found.value;
};
const ONE = [1, 1] as const;

describe('readWanted', () => {
  it.each([
    ['8 TPI', 1 / 8],
    ['11 1/2 tpi', 2 / 23],
    ['1,25 mm', 1.25 / 25.4],
    ['module 1.5', (Math.PI * 1.5) / 25.4],
    ['M2', (Math.PI * 2) / 25.4],
    ['10 DP', Math.PI / 10],
    ['0.0035 in', 0.0035],
    ['8 TPI x 2', 1 / 4],
    ['2 mm 3 starts', 6 / 25.4],
  ])('%s', (text, inches) => {
    expect(inchesOf(wanted(text))).toBeCloseTo(inches, 12);
  });

  it.each(['0 TPI', '0 mm', '-8 TPI', 'text', '', '8', '1/0 in', '1e9 mm', '8 TPI x 0', '9999999 in', 'x'.repeat(90)])(
    'refuses “%s” in words',
    (text) => {
      expect(readWanted(text)).toMatchObject({ ok: false });
    },
  );
});

describe('chartOf', () => {
  it('agrees with exhaustive search on what is exact', () => {
    const wheels = fc.array(fc.constantFrom(20, 25, 30, 35, 40, 45, 50, 60, 127), { maxLength: 7 });
    fc.assert(
      fc.property(wheels, fc.integer({ min: 4, max: 40 }), (drawer, tpi) => {
        const [line] = chartOf([wanted(`${tpi} TPI`)], [1, 8], drawer);
        const exact = [1, 2].some((perSide) => everyBest(drawer, perSide, 8n, BigInt(tpi)).error === '0/1');
        expect(line?.state === 'exact').toBe(exact);
      }),
      { numRuns: 80 },
    );
  });

  it('is lost altogether with an empty drawer', () => {
    expect(chartOf([wanted('8 TPI')], [1, 8], [])).toEqual([{ wanted: wanted('8 TPI'), state: 'lost', best: null }]);
  });
});

describe('makingOrder', () => {
  it('beats the greedy order where two wheels are of use only together', () => {
    // 50/20 alone comes with the 50; the three others want 31 and 37 together, or both with what is there.
    const list = ['31/37 in', '62/37 in', '31/74 in', '50/20 in'].map(wanted);
    const order = makingOrder(list, ONE, [20, 40], [50, 31, 37]);
    expect(order.greedy.map(({ teeth }) => teeth)).toEqual([50, 31, 37]);
    expect(
      order.order
        .map(({ teeth }) => teeth)
        .slice(0, 2)
        .sort(),
    ).toEqual([31, 37]);
    expect(order.says).toContain('because some wheels bring more once another is there');
  });

  it('is at least as good as every order of making, by trying them all', () => {
    const list = fc.array(fc.tuple(fc.constantFrom(20, 24, 30, 37, 40), fc.constantFrom(22, 28, 31, 50, 60)), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(list, fc.array(fc.constantFrom(22, 28, 31, 37, 50, 50), { minLength: 1, maxLength: 4 }), (pairs, missing) => {
        const threads = pairs.map(([top, bottom]) => wanted(`${top}/${bottom} in`));
        const drawer = [20, 24, 30, 40, 60];
        const found = makingOrder(threads, ONE, drawer, missing);
        const exactAfter = (made: readonly number[]): number =>
          chartOf(threads, ONE, [...drawer, ...made]).filter(({ state }) => state === 'exact').length;
        const sum = (order: readonly number[]): number => order.reduce((all, _, n) => all + exactAfter(order.slice(0, n + 1)), 0);
        const all = (left: readonly number[]): number[][] =>
          left.length === 0
            ? [[]]
            : left.flatMap((one, at) => all([...left.slice(0, at), ...left.slice(at + 1)]).map((rest) => [one, ...rest]));
        const orders = all(missing);
        expect(sum(found.order.map(({ teeth }) => teeth))).toBe(Math.max(...orders.map(sum)));
        const gain = (order: readonly number[], n: number): number => exactAfter(order.slice(0, n + 1));
        const takesMost = (order: readonly number[]): boolean =>
          order.every((_, n) => order.slice(n + 1).every((other) => exactAfter([...order.slice(0, n), other]) <= gain(order, n)));
        expect(sum(found.greedy.map(({ teeth }) => teeth))).toBe(Math.max(...orders.filter(takesMost).map(sum)));
        if (found.says.startsWith('Make'))
          expect(found.says).toContain(`in this order: ${found.order.map(({ teeth }) => teeth).join(', ')}.`);
        else expect(exactAfter(missing)).toBe(exactAfter([]));
        for (const [n, { exact }] of found.order.entries())
          expect(exact).toBe(exactAfter(found.order.slice(0, n + 1).map(({ teeth }) => teeth)));
      }),
      { numRuns: 25 },
    );
  });

  it('refuses more missing wheels than all orders can be weighed for', () => {
    expect(() =>
      makingOrder(
        [wanted('8 TPI')],
        ONE,
        [20],
        Array.from({ length: 11 }, (_, n) => 30 + n),
      ),
    ).toThrow(DomainError);
  });
});

describe('bestTrains', () => {
  const asked = { wheels: [20, 30, 40, 45, 60, 90], target: targetOf([2, 3]), upTo: 4 as const };
  it('puts the least error first, then what changes least', () => {
    const rows = bestTrains({ ...asked, mounted: { drivers: [60], driven: [90] } });
    expect(rows[0]?.train).toEqual({ drivers: [60], driven: [90] });
    expect(rows[0]?.changes).toBe(0);
    rows.slice(1).forEach((row, n) => {
      const before = rows[n];
      expect(Math.abs(row.near.error)).toBeGreaterThanOrEqual(Math.abs(before?.near.error ?? 0) - 1e-12);
      if (row.near.error === before?.near.error) expect(row.changes).toBeGreaterThanOrEqual(before.changes);
    });
  });

  it('counts like wheels one by one against what is on the machine', () => {
    expect(changesFor({ drivers: [20, 20], driven: [40, 50] }, { drivers: [20, 30], driven: [50, 60] })).toBe(2);
    expect(changesFor({ drivers: [20], driven: [40] })).toBe(2);
  });

  it('has nothing to offer from an empty drawer', () => {
    expect(bestTrains({ ...asked, wheels: [] })).toEqual([]);
  });
});
