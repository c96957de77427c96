import { expect, test } from 'vitest';
import { approximations } from '../../../lib/trains/approximations.ts';
import { targetOf } from '../../../lib/trains/target.ts';

test('a ratio with half a million mediants is answered at once, its exact fraction last', () => {
  const began = performance.now();
  const found = approximations(targetOf([1, 1_000_000]), 1_000_000);
  expect(performance.now() - began).toBeLessThan(50);
  expect(found.at(-1)?.ratio).toEqual([1, 1_000_000]);
  expect(found.length).toBeLessThan(100);
});

/** Derived: every fraction up to the bound tried, by whole numbers. */
test('the nearest under a bound that ends within a long run is the nearest of all fractions under it', () => {
  const [num, den] = [1, 997];
  for (const most of [600, 700, 996]) {
    let least: [number, number] = [1, 1];
    for (let q = 1; q <= most; q++)
      for (const p of [1, 2]) if (Math.abs(p * den - num * q) * least[1] < Math.abs(least[0] * den - num * least[1]) * q) least = [p, q];
    expect(approximations(targetOf([num, den]), most).at(-1)?.ratio).toEqual(least);
  }
});
