import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { nearestTrains, type WheelsInTrain } from '../../../lib/trains/nearest.ts';
import { PI_DEN, PI_NUM, type Target, targetOf } from '../../../lib/trains/target.ts';
import { everyBest, fullSearch, trainText } from './exhaustive.ts';

const texts = (wheels: readonly number[], target: Target, wheelsInTrain: WheelsInTrain) =>
  nearestTrains({ wheels, target, wheelsInTrain })
    .flatMap(({ trains }) => trains.map(({ drivers, driven }) => trainText(drivers, driven)))
    .sort();

const SIZES = [2, 4, 6] as const;

describe('nearestTrains', () => {
  it('gives nothing with no wheel, with one, or with fewer than the train needs', () => {
    const target = targetOf([1, 2]);
    for (const wheelsInTrain of SIZES) {
      expect(nearestTrains({ wheels: [], target, wheelsInTrain })).toEqual([]);
      expect(nearestTrains({ wheels: [40], target, wheelsInTrain })).toEqual([]);
      expect(nearestTrains({ wheels: new Array(wheelsInTrain - 1).fill(40), target, wheelsInTrain })).toEqual([]);
    }
  });

  it('uses a like wheel twice only where two lie there', () => {
    expect(texts([40, 40], targetOf([1, 1]), 2)).toEqual(['40÷40']);
    expect(texts([40, 50], targetOf([1, 1]), 2)).toEqual(['40÷50']);
    expect(texts([20, 30, 60, 20], targetOf([9, 2]), 4)).toEqual(['30×60÷20×20']);
    expect(texts([20, 20, 20, 40, 40, 40], targetOf([8, 1]), 6)).toEqual(['40×40×40÷20×20×20']);
  });

  it('keeps both of two that are equally far, one above and one below', () => {
    // 41/40 lies midway between 40 ÷ 50 and 50 ÷ 40.
    expect(texts([40, 50], targetOf([41, 40]), 2)).toEqual(['40÷50', '50÷40']);
  });

  const wheel = fc.oneof(fc.constantFrom(20, 24, 30, 36, 40, 45, 48, 60, 80, 127), fc.integer({ min: 4, max: 400 }));
  const wanted = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }));

  it.each([
    [2, 12, 120],
    [4, 8, 120],
    [6, 8, 40],
  ] as const)('equals exhaustive search, the whole set of equally good trains: %i wheels', (wheelsInTrain, maxLength, numRuns) => {
    fc.assert(
      fc.property(fc.array(wheel, { maxLength }), wanted, fc.constantFrom(0, 1, -1), (wheels, [top, bottom], power) => {
        const target = targetOf([top, bottom], power);
        const [num, den] =
          power === 0
            ? [BigInt(top), BigInt(bottom)]
            : power === 1
              ? [BigInt(top) * PI_NUM, BigInt(bottom) * PI_DEN]
              : [BigInt(top) * PI_DEN, BigInt(bottom) * PI_NUM];
        expect(texts(wheels, target, wheelsInTrain)).toEqual(everyBest(wheels, wheelsInTrain / 2, num, den).trains);
      }),
      { numRuns },
    );
  });

  it('equals exhaustive search on targets that the wheels do give, like wheels and equal products among them', () => {
    const set = fc.array(fc.constantFrom(20, 20, 24, 30, 40, 48, 60, 60, 72), { minLength: 6, maxLength: 8 });
    fc.assert(
      fc.property(set, (wheels) => {
        const [a, b, c, d, e, f] = wheels as [number, number, number, number, number, number];
        expect(texts(wheels, targetOf([a * b * c, d * e * f]), 6)).toEqual(
          everyBest(wheels, 3, BigInt(a * b * c), BigInt(d * e * f)).trains,
        );
        expect(texts(wheels, targetOf([a * b, c * d]), 4)).toEqual(everyBest(wheels, 2, BigInt(a * b), BigInt(c * d)).trains);
      }),
      { numRuns: 40 },
    );
  });

  it('equals the plain loops over twenty wheels, six in the train', () => {
    const wheels = [20, 21, 23, 25, 28, 30, 32, 35, 37, 40, 45, 47, 50, 55, 60, 63, 65, 71, 80, 127];
    for (const target of [targetOf([127, 80]), targetOf([31, 100], 1), targetOf([5, 7])])
      expect(texts(wheels, target, 6)).toEqual(fullSearch(wheels, 3, Number(target.num) / Number(target.den)).trains);
  });

  it('tells the greatest products apart that it allows', () => {
    const near = fc.integer({ min: 392, max: 400 });
    fc.assert(
      fc.property(fc.array(near, { minLength: 6, maxLength: 8 }), fc.integer({ min: -40, max: 40 }), (wheels, off) => {
        const target = targetOf([1_000_003 + off, 1_000_003]);
        expect(texts(wheels, target, 6)).toEqual(everyBest(wheels, 3, BigInt(1_000_003 + off), 1_000_003n).trains);
      }),
      { numRuns: 30 },
    );
  });

  it('gives as many ratios as are asked for, nearest first, and all that are as near as the last', () => {
    const wheels = [20, 25, 30, 35, 40, 45, 50, 60];
    const five = nearestTrains({ wheels, target: targetOf([1, 1], 1), wheelsInTrain: 4, ratios: 5 });
    expect(five.length).toBeGreaterThanOrEqual(5);
    const all = new Map<string, number>();
    for (const a of wheels)
      for (const b of wheels)
        for (const c of wheels)
          for (const d of wheels)
            if (new Set([a, b, c, d]).size === 4) all.set(((a * b) / (c * d)).toFixed(12), Math.abs((a * b) / (c * d) - Math.PI));
    const right = [...all.entries()].sort((x, y) => x[1] - y[1]).slice(0, 5);
    expect(five.slice(0, 5).map(({ ratio }) => (ratio[0] / ratio[1]).toFixed(12))).toEqual(right.map(([value]) => value));
  });

  it('never calls a ratio with π exact, and its error is small but not nothing', () => {
    const [best] = nearestTrains({ wheels: [113, 355], target: targetOf([1, 1], 1), wheelsInTrain: 2 });
    expect(best?.exact).toBe(false);
    expect((best?.error ?? 0) * Math.PI).toBeCloseTo(2.667e-7, 9);
  });

  it('refuses five hundred wheels and what is no tooth count, in words', () => {
    const target = targetOf([1, 2]);
    expect(() => nearestTrains({ wheels: new Array(500).fill(40), target, wheelsInTrain: 4 })).toThrow(/comes to 500 wheels\. At most 100/);
    for (const wrong of [0, 3, 401, 2.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => nearestTrains({ wheels: [20, wrong], target, wheelsInTrain: 2 })).toThrow(DomainError);
  });
});

describe('π as it is kept', () => {
  it('is that of Machin: 16 atan 1/5 − 4 atan 1/239, to 39 decimals', () => {
    const scale = 10n ** 60n;
    const arc = (x: bigint): bigint => {
      let [term, sum] = [scale / x, 0n];
      for (let n = 0n; term !== 0n; n++, term /= x * x) sum += (n % 2n === 0n ? term : -term) / (2n * n + 1n);
      return sum;
    };
    expect((16n * arc(5n) - 4n * arc(239n)) / 10n ** 21n).toBe(PI_NUM);
  });
});
