import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import type { PlanAsked } from '../../../lib/routing/asked.ts';
import type { PlannedOperation } from '../../../lib/routing/operation.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { evaluateFigure } from '../evaluate.ts';
import { cutter, gear, lathe, mandrel, mill, shop, spare, wanted } from './halvorsen.ts';

const metric = (teeth: number) => {
  const system = systemByKey('module-1.25')?.system ?? gear(teeth).system;
  return gear(teeth, { pitch: { kind: 'module', size: ratio(5, 2) }, system, face: millimetres(20) });
};
const metricDial = { reads: 'diameter' as const, unit: 'mm' as const, division: millimetres(0.02), perTurn: 125 };

const shops = fc.constantFrom(
  shop(),
  shop({ cutters: [cutter(5, '5', 12, null, { stampedDepth: inches(0.2696) })], mandrels: [mandrel], paper: inches(0.002) }),
  shop({ cutters: [], plates: [], heads: [], arbors: [], lathe: null, mill: null }),
  shop({ lathe: { ...lathe, crossDial: metricDial, speedsRpm: [] }, mill: { ...mill, depthDial: metricDial, crossDial: null } }),
  shop({ unit: 'mm' }),
);

const readings = fc.constantFrom<PlanAsked['readings']>(
  {},
  { 'blank/outside': { value: { length: inches(3.001) }, from: 'typed' } },
  {
    'sound/runOut': { value: { length: inches(0.002) }, from: 'measured' },
    'central/shift': { value: { length: inches(0.001) }, from: 'measured' },
    'measure/pinRunOut': { value: { length: inches(0.001) }, from: 'measured' },
  },
);

const asked: fc.Arbitrary<PlanAsked> = fc
  .record({
    teeth: fc.integer({ min: 12, max: 90 }),
    more: fc.integer({ min: 5, max: 12 }),
    inMm: fc.boolean(),
    of: shops,
    read: readings,
    way: fc.constantFrom('re-cut a spare', 'make from stock', 'ring and hub'),
  })
  .map(({ teeth, more, inMm, of, read, way }) => {
    const wheel = inMm ? metric : gear;
    const part = wanted(teeth, { gear: wheel(teeth), slides: true });
    const old = spare(teeth + more, { gear: wheel(teeth + more) });
    const bar = { id: 1, name: 'bar', material: 'steel' as const, diameter: null, length: null, hole: inches(0) };
    const common = { wanted: part, shop: of, readings: teeth === 22 && !inMm ? read : {} };
    if (way === 're-cut a spare') return { way, blank: old, ...common };
    if (way === 'make from stock') return { way, blank: bar, ...common };
    const small = spare(Math.max(20, teeth - 12), { gear: wheel(Math.max(20, teeth - 12)) });
    return { way: 'ring and hub', blank: { hub: small, ring: bar }, ...common };
  });

/** The plan, or nothing where the sizes make no sense together. */
function planOf(one: PlanAsked): readonly PlannedOperation[] {
  try {
    return planRouting(one).operations;
  } catch (problem) {
    if (problem instanceof DomainError) return [];
    throw problem;
  }
}

const every = (check: (operations: readonly PlannedOperation[]) => void) =>
  fc.assert(
    fc.property(asked, (one) => check(planOf(one))),
    { numRuns: 60 },
  );

const allFigures = (operations: readonly PlannedOperation[]) =>
  operations.flatMap(({ key, figures }) => Object.entries(figures).map(([name, figure]) => ({ at: `${key}/${name}`, figure })));

describe('every plan', () => {
  test('makes sense for nearly all that is asked', () => {
    const tried = fc.sample(asked, 60).map(planOf);
    expect(tried.filter((operations) => operations.length > 20).length).toBeGreaterThan(40);
  });

  test('has keys that differ, and every operation follows only those planned before it', () =>
    every((operations) => {
      const seen = new Set<string>();
      for (const { key, after } of operations) {
        for (const earlier of after) expect([...seen]).toContain(earlier);
        expect(seen.has(key)).toBe(false);
        expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
        seen.add(key);
      }
    }));

  test('prints every figure, and no NaN, undefined or null', () =>
    every((operations) => {
      for (const { figure } of allFigures(operations)) {
        const { text } = printFigure(figure);
        expect(text).not.toBe('');
        expect(`${text} ${figure.note ?? ''} ${figure.name}`).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
      }
      for (const { steps, cautions, title } of operations)
        expect([title, ...steps, ...cautions.map(({ says }) => says)].join(' ')).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
    }));

  test('has a formula that gives each figure again, worked on the printed givens', () =>
    every((operations) => {
      for (const { at, figure } of allFigures(operations)) {
        const found = evaluateFigure(figure);
        if (found) expect(Math.abs(found.worked - found.printed), `${at}: ${figure.formula}`).toBeLessThanOrEqual(found.allowed);
      }
    }));

  test('measures only figures that stand there, and shows four cautions at most beside the dangers', () =>
    every((operations) => {
      for (const { figures, measures, cautions, minutes, steps } of operations) {
        for (const { figure } of measures) expect(Object.keys(figures)).toContain(figure);
        expect(cautions.filter(({ weight }) => weight !== 'danger').length).toBeLessThanOrEqual(4);
        expect(Number.isInteger(minutes) && minutes > 0).toBe(true);
        expect(steps.length).toBeGreaterThan(0);
      }
    }));
});
