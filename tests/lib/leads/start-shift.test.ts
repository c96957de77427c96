import { expect, test } from 'vitest';
import { startShift } from '../../../lib/leads/thread-dial.formulas.ts';
import { gcd } from '../../../lib/values/ratio.ts';

/** Derived: counting threads of the screw one by one until the work stands one start further on. */
function counted(a: number, b: number, n: number): number | null {
  for (let j = 1; j <= b; j++) if (((j * a) % b) * n === b) return j;
  return null;
}

test('a shift of the half-nuts is the one found by counting threads', () => {
  let found = 0;
  for (let a = 1; a <= 40; a++)
    for (let b = 1; b <= 60; b++)
      for (const n of [2, 3, 4, 6]) {
        if (gcd(a, b) > 1) continue;
        const shift = startShift([a, b], [1, 1], n);
        expect(shift, `${a}/${b}, ${n} starts`).toBe(counted(a, b, n));
        if (shift !== null) found++;
      }
  expect(found).toBeGreaterThan(500);
});

test('a lead of many decimals is answered at once', () => {
  const began = performance.now();
  const shift = startShift([1, 8], [1_123_456_788, 8_000_000_000], 3);
  expect(performance.now() - began).toBeLessThan(50);
  expect((BigInt(shift ?? 0) * 250_000_000n) % 280_864_197n).toBe(280_864_197n / 3n);
});
