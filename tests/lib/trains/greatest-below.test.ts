import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { greatestBelow } from '../../../lib/trains/greatest-below.ts';

/** Every ratio of one or two wheels over as many, by places, so that no wheel stands in it twice. */
function everyRatio(wheels: readonly number[], perSide: 1 | 2): number[] {
  const found: number[] = [];
  for (const [i, a] of wheels.entries())
    for (const [j, c] of wheels.entries()) {
      if (i === j) continue;
      if (perSide === 1) found.push(a / c);
      else
        for (const [k, b] of wheels.entries())
          for (const [m, d] of wheels.entries()) if (new Set([i, j, k, m]).size === 4) found.push((a * b) / (c * d));
    }
  return found;
}

describe('greatestBelow', () => {
  it('equals exhaustive search, with like wheels, ties and limits that a train meets exactly', () => {
    const wheels = fc.array(fc.constantFrom(20, 25, 30, 40, 45, 50, 60, 80, 100), { maxLength: 7 });
    const limit = fc.oneof(
      fc.double({ min: 0.02, max: 30, noNaN: true }),
      fc.tuple(fc.constantFrom(20, 25, 40, 45), fc.constantFrom(30, 60, 80)).map(([a, b]) => a / b),
    );
    fc.assert(
      fc.property(wheels, limit, fc.constantFrom(1 as const, 2 as const), (drawer, most, perSide) => {
        const served = everyRatio(drawer, perSide).filter((ratio) => ratio <= most * (1 + 1e-12));
        const found = greatestBelow(drawer, perSide === 1 ? 2 : 4, most);
        if (served.length === 0) expect(found).toBeNull();
        else expect((found?.ratio[0] ?? 0) / (found?.ratio[1] ?? 1)).toBeCloseTo(Math.max(...served), 12);
        if (!found) return;
        const product = (list: readonly number[]): number => list.reduce((all, one) => all * one, 1);
        expect(product(found.train.drivers) * found.ratio[1]).toBe(product(found.train.driven) * found.ratio[0]);
        for (const teeth of new Set([...found.train.drivers, ...found.train.driven]))
          expect([...found.train.drivers, ...found.train.driven].filter((one) => one === teeth).length).toBeLessThanOrEqual(
            drawer.filter((one) => one === teeth).length,
          );
      }),
      { numRuns: 300 },
    );
  });
});
