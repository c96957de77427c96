import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseCircles } from '../../../lib/dividing/joint.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Plate } from '../../../lib/tooling/tooling.ts';
import { head, plate, THREE_PLATES, TWO_SIDED } from './plates.ts';

const jobs = (...counts: number[]) => counts.map((divisions) => ({ key: `${divisions}T`, divisions, head: head(40) }));

describe('chooseCircles', () => {
  it('keeps 22 and 28 on the second plate, circles 33 and 21', () => {
    const { jobs: placed, mountings, says } = chooseCircles(jobs(22, 28), THREE_PLATES);
    expect(placed.map(({ key, plate: on, move }) => [key, on.name, move])).toEqual([
      ['22T', 'Plate 2', { turns: 1, spaces: 27, circle: 33 }],
      ['28T', 'Plate 2', { turns: 1, spaces: 9, circle: 21 }],
    ]);
    expect(mountings).toHaveLength(1);
    expect(says).toBe('All stay on one plate. Plate 2: 22 on the 33 circle, 28 on the 21 circle.');
  });

  it('puts a 60 cut with them on the 33 as well: 22 spaces, no other plate and no third circle', () => {
    const { jobs: placed, mountings } = chooseCircles(jobs(22, 28, 60), THREE_PLATES);
    expect(mountings.map(({ plate: on, circles }) => [on.name, [...circles].sort()])).toEqual([['Plate 2', [21, 33]]]);
    expect(placed[2]?.move).toEqual({ turns: 0, spaces: 22, circle: 33 });
  });

  it('says plainly when no single plate serves them all', () => {
    const { mountings, says } = chooseCircles(jobs(22, 41), THREE_PLATES);
    expect(mountings).toHaveLength(2);
    expect(says).toBe(
      'No single plate serves them all; fewest is 2, one after another. Plate 2: 22 on the 33 circle; Plate 3: 41 on the 41 circle.',
    );
  });

  it('takes the two sides of one plate before two plates', () => {
    const two = [plate(1, 'A', [21]), plate(2, 'B', [33]), plate(3, 'C', [49], [66])];
    const { mountings } = chooseCircles(jobs(22, 28), two);
    expect(mountings.map(({ plate: on, side }) => [on.name, side])).toEqual([
      ['C', 0],
      ['C', 1],
    ]);
  });

  it('sets aside what no circle divides and places the others', () => {
    const { jobs: placed, refused, says } = chooseCircles(jobs(22, 71), THREE_PLATES);
    expect(placed.map(({ key }) => key)).toEqual(['22T']);
    expect(refused.map(({ key }) => key)).toEqual(['71T']);
    expect(says).toMatch(/^No circle on these plates divides 71\..*The others stay on one plate\./);
    expect(chooseCircles(jobs(71), THREE_PLATES)).toMatchObject({ jobs: [], mountings: [] });
  });

  it('does not choose a plate that is away, and says that it is', () => {
    const away = THREE_PLATES.map((one) => ({ ...one, here: one.id !== 2 }));
    const { refused, jobs: placed } = chooseCircles(jobs(22, 28), away);
    expect(placed[0]?.move).toEqual({ turns: 1, spaces: 21, circle: 49 });
    expect(refused[0]?.says).toBe('22 divisions need Plate 2, which is not in the shop.');
  });

  it('lets whole turns go on whatever is on', () => {
    const { mountings, jobs: placed } = chooseCircles(jobs(20, 22, 10), THREE_PLATES);
    expect(mountings).toHaveLength(1);
    expect(placed.map(({ move }) => move.circle)).toEqual([33, 33, 33]);
    expect(chooseCircles(jobs(20), THREE_PLATES).jobs[0]?.move).toEqual({ turns: 2, spaces: 0, circle: 15 });
  });

  it('refuses no jobs, too many, and too many different ones', () => {
    expect(() => chooseCircles([], THREE_PLATES)).toThrow(DomainError);
    expect(() => chooseCircles(jobs(...new Array<number>(61).fill(22)), THREE_PLATES)).toThrow(DomainError);
    expect(() => chooseCircles(jobs(3, 9, 7, 11, 13, 17, 19, 23, 27, 29, 31, 37, 41, 43), THREE_PLATES)).toThrow(/12 at once/);
  });
});

type At = { readonly plate: number; readonly side: number; readonly circle: number };

/** Every subset of all circles; of those that serve every job the least by mountings, then plates, then circles, then holes. */
function leastByTrial(counts: readonly number[], plates: readonly Plate[]): number[] | null {
  const all: At[] = plates.flatMap(({ id, sides }) =>
    sides.flatMap((circles, side) => circles.map((circle) => ({ plate: id, side, circle }))),
  );
  let best: number[] | null = null;
  for (let set = 0; set < 1 << all.length; set++) {
    const taken = all.filter((_, k) => set & (1 << k));
    if (!counts.every((N) => taken.some(({ circle }) => (40 * circle) % N === 0))) continue;
    const cost = [
      new Set(taken.map(({ plate: id, side }) => `${id} ${side}`)).size,
      new Set(taken.map(({ plate: id }) => id)).size,
      taken.length,
      taken.reduce((sum, { circle }) => sum + circle, 0),
    ];
    const differs = best?.findIndex((one, k) => one !== cost[k]) ?? 0;
    if (!best || (differs >= 0 && (cost[differs] as number) < (best[differs] as number))) best = cost;
  }
  return best;
}

describe('against trying every set of circles', () => {
  const circles = fc.uniqueArray(fc.constantFrom(15, 16, 18, 20, 21, 27, 33, 39, 44, 49, 52, 63, 66), { minLength: 1, maxLength: 3 });
  const sides = fc.array(circles, { minLength: 1, maxLength: 2 });
  const plates = fc.array(sides, { minLength: 1, maxLength: 3 }).filter((all) => all.flat(2).length <= 11);

  it('changes plates as seldom as can be', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        plates,
        fc.uniqueArray(fc.constantFrom(6, 9, 12, 14, 18, 22, 26, 28, 33, 35, 36, 44, 60, 72), { minLength: 1, maxLength: 5 }),
        (all, counts) => {
          const owned = all.map((one, n) => plate(n + 1, `Plate ${n + 1}`, ...one));
          const served = counts.filter((N) => owned.some((one) => one.sides.flat().some((circle) => (40 * circle) % N === 0)));
          const { jobs: placed, mountings, refused } = chooseCircles(jobs(...counts), owned);
          expect(placed.map(({ divisions }) => divisions)).toEqual(served);
          expect(refused.map(({ divisions }) => divisions)).toEqual(counts.filter((N) => !served.includes(N)));
          for (const job of placed) {
            expect(job.plate.sides[job.side]).toContain(job.circle);
            expect(job.divisions * (job.move.turns * job.circle + job.move.spaces)).toBe(40 * job.circle);
          }
          if (served.length === 0) return;
          compared += 1;
          const used = mountings.flatMap((one) => one.circles);
          const cost = [mountings.length, new Set(mountings.map((one) => one.plate.id)).size, used.length, used.reduce((a, b) => a + b, 0)];
          expect(cost).toEqual(leastByTrial(served, owned));
        },
      ),
      { numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  it('uses on the two-sided plate only circles of the side that it names', () => {
    for (const job of chooseCircles(jobs(23, 60, 62), TWO_SIDED).jobs) expect(job.plate.sides[job.side]).toContain(job.circle);
  });
});
