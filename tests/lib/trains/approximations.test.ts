import fc from 'fast-check';
import { expect, it } from 'vitest';
import { approximations, greatestPrime, partialQuotients } from '../../../lib/trains/approximations.ts';
import { targetOf } from '../../../lib/trains/target.ts';

const fraction = fc.tuple(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 5000 }));

it('lists exactly the fractions that are nearer than all with a smaller number below, by trying every one', () => {
  fc.assert(
    fc.property(fraction, fc.integer({ min: 2, max: 90 }), ([num, den], most) => {
      const listed = approximations(targetOf([num, den]), most).map(({ ratio }) => ratio.join('/'));
      const right: string[] = [];
      let least = Number.POSITIVE_INFINITY;
      for (let below = 1; below <= most; below++) {
        // Of this denominator only the nearest can count; errors as whole numbers over num × below × den.
        const near = [Math.floor((num * below) / den), Math.ceil((num * below) / den)].filter((above) => above <= most);
        const off = near.map((above) => Math.abs(above * den - num * below) / below);
        const best = Math.min(...off);
        if (near.length === 0 || best >= least) continue;
        least = best;
        // 0 below 1 is a fraction to be beaten, though no train gives it.
        if (near[off.indexOf(best)] !== 0) right.push(`${near[off.indexOf(best)]}/${below}`);
      }
      // A whole number passed over on the way (2 before 3) may stand before the first; a tie may fall either way.
      for (const one of right) if (!listed.includes(one)) expect(tied(one, num, den)).toBe(true);
      for (const one of listed.filter((text) => !text.endsWith('/1'))) if (!right.includes(one)) expect(tied(one, num, den)).toBe(true);
    }),
    { numRuns: 200 },
  );
});

/** Whether the same denominator has two fractions equally near. */
const tied = (text: string, num: number, den: number): boolean => {
  const below = Number(text.split('/')[1]);
  return (2 * num * below) % (2 * den) === den;
};

it('has convergents whose cross products differ by one, and which end at the ratio itself', () => {
  fc.assert(
    fc.property(fraction, ([num, den]) => {
      const list = approximations(targetOf([num, den]), 10_000).filter(({ kind }) => kind === 'convergent');
      list.slice(1).forEach(({ ratio }, n) => {
        const before = list[n]?.ratio ?? [0, 1];
        expect(Math.abs(ratio[0] * before[1] - before[0] * ratio[1])).toBe(1);
      });
      expect(list.at(-1)?.error).toBe(0);
    }),
    { numRuns: 100 },
  );
});

it('gives the quotients of π, and its greatest prime factor of a whole number', () => {
  expect(partialQuotients(targetOf([1, 1], 1), 7).map(Number)).toEqual([3, 7, 15, 1, 292, 1, 1]);
  expect([1, 127, 1270, 2 ** 20].map(greatestPrime)).toEqual([1, 127, 127, 2]);
});
