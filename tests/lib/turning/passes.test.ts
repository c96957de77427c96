import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Dial } from '../../../lib/tooling/tooling.ts';
import { passesOf } from '../../../lib/turning/pass-table.ts';
import { passesFor, stagesOf } from '../../../lib/turning/passes.formulas.ts';
import { turningPlan } from '../../../lib/turning/passes.sums.ts';
import { inches, type Length, toInches } from '../../../lib/values/length.ts';

const dial: Dial = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 };
const story = { oldOutside: inches(4.125), oldRoot: inches(3.58575), newOutside: inches(3), dial };

describe('turning the teeth off and the blank down', () => {
  it('counts the passes: nine over the gaps and ten solid, then two measured', () => {
    const { figures, tables } = turningPlan(story);
    expect(figures.passesThrough.value).toEqual({ count: 9 });
    expect(figures.passesSolid.value).toEqual({ count: 10 });
    expect(tables?.[0]?.rows).toHaveLength(21);
    expect(tables?.[0]?.rows.slice(-2).map((row) => row[3])).toEqual(['from what was measured', 'from what was measured']);
    expect(figures.lastCutMove.value).toEqual({ dial: { turns: 0, divisions: 7.5, perTurn: 100 } });
  });

  it('no pass is deeper than asked, each diameter is smaller, and the last is the size wanted', () => {
    const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(size(0.5, 8), size(0, 1), size(0, 1), size(0.005, 0.1), (d, a, b, depth) => {
        const [R, D] = [d + a, d + a + b];
        const stages = stagesOf(D, R, d, 0.03);
        const cuts = [D, ...passesOf(stages, depth, 'in').map((p) => toInches(p.diameter))];
        for (let i = 1; i < cuts.length; i++) {
          const off = (cuts[i - 1] ?? 0) - (cuts[i] ?? 0);
          expect(off).toBeGreaterThanOrEqual(-1e-7);
          if (i < cuts.length - 2) expect(off / 2).toBeLessThanOrEqual(depth * 1.002 + 1e-7);
        }
        expect(cuts.at(-1)).toBeCloseTo(d, 7);
        const [first = 0, second = 0] = [(cuts.at(-3) ?? 0) - (cuts.at(-2) ?? 0), (cuts.at(-2) ?? 0) - (cuts.at(-1) ?? 0)];
        expect(first).toBeCloseTo(second, 6);
        expect(first + second).toBeLessThanOrEqual(0.03 + 1e-7);
      }),
    );
  });

  it('a roughing pass set on the line below leaves metal, never takes it', () => {
    for (const row of turningPlan({ ...story, oldOutside: inches(4.1253) }).tables?.[0]?.rows ?? []) {
      if (!(typeof row[3] === 'object' && 'dial' in row[3] && typeof row[2] === 'object' && 'length' in row[2])) continue;
      const dialled = (row[3].dial.turns * 100 + row[3].dial.divisions) * 0.002;
      expect(toInches(row[2].length)).toBeCloseTo(4.1253 - dialled, 7);
      expect(toInches(row[2].length)).toBeGreaterThanOrEqual(3.03 - 1e-9);
      expect(Number.isInteger(row[3].dial.divisions)).toBe(true);
    }
  });

  it('a whole sum of passes is not one more for rounding', () => {
    expect(passesFor(0.27, 0.03)).toBe(9);
    expect(passesFor(0.3, 0.1)).toBe(3);
    expect(passesFor(0, 0.03)).toBe(0);
  });

  it('says how deep old gaps stay when the blank is too small', () => {
    const { cautions, figures } = turningPlan({ ...story, oldOutside: inches(3.375), oldRoot: inches(2.83575) });
    expect(cautions.find((c) => c.name === 'old gaps stay')?.says).toContain('0.0821 in');
    expect(figures.solid.value).toEqual({ length: 0 });
  });

  it('stock without teeth has nothing over gaps', () => {
    const { figures, cautions } = turningPlan({ ...story, oldRoot: null });
    expect(figures.throughTeeth.value).toEqual({ length: 0 });
    expect(figures.passesThrough.value).toEqual({ count: 0 });
    expect(cautions).toEqual([]);
  });

  it('refuses sizes that make no sense together', () => {
    expect(() => turningPlan({ ...story, newOutside: inches(5) })).toThrow(DomainError);
    expect(() => turningPlan({ ...story, newOutside: inches(0) })).toThrow(DomainError);
    expect(() => turningPlan({ ...story, oldRoot: inches(5) })).toThrow(DomainError);
    expect(() => turningPlan({ ...story, depthPerPass: 1 as Length })).toThrow(DomainError);
    expect(() => turningPlan({ ...story, depthPerPass: inches(0) })).toThrow(DomainError);
  });
});
