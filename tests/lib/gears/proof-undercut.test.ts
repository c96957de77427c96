import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { bestSpanCount, hobbedFlank, spanContactRadius, spanOver, usableFlank } from '../../../lib/gears/base-tangent.formulas.ts';
import { contactAnswer } from '../../../lib/gears/contact.sums.ts';
import { baseOf, type Flanks, normalThickness, pitchOf, tipOf } from '../../../lib/gears/flanks.formulas.ts';
import { parallelOf } from '../../../lib/gears/parallel.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { hobbedFormDiameter, rackFor } from '../../../lib/gears/profile-rack.formulas.ts';
import { undercutAnswer } from '../../../lib/gears/shift.sums.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { inches } from '../../../lib/values/length.ts';
import type { XY } from './polygons.ts';
import { type Rolled, rolledSpace } from './rolled-rack.ts';
import { wheelOf } from './wheel-of.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const m = 2.54;

/** Where the flank of a space cut by polygons leaves the involute: the involute is drawn here by unwinding a string, half the pitch wide at the pitch circle. */
function leavesInvolute({ N, moduleMm, rack: { degrees }, shift = 0 }: Rolled, space: readonly XY[]): number {
  const r = (N * moduleMm) / 2;
  const rb = r * Math.cos(rad(degrees));
  const back = (R: number): number => Math.sqrt((R / rb) ** 2 - 1) - Math.atan(Math.sqrt((R / rb) ** 2 - 1));
  const half = (Math.PI * moduleMm) / 2 - 2 * shift * moduleMm * Math.tan(rad(degrees));
  const t = (R: number): number => half / (2 * r) + back(R) - back(r);
  const off = ([x, y]: XY): number => Math.abs(Math.atan2(x, y) - t(Math.hypot(x, y))) * Math.hypot(x, y);
  const on = space.filter(
    ([x, y]) => x > 0 && Math.hypot(x, y) > rb && Math.hypot(x, y) < r + 0.5 * moduleMm && off([x, y]) < 4e-5 * moduleMm,
  );
  return Math.min(...on.map(([x, y]) => Math.hypot(x, y)));
}

const FULL_14 = { degrees: 14.5, addendum: 1, dedendum: 1.157, corner: 0.209 };
const FULL_20 = { degrees: 20, addendum: 1, dedendum: 1.25, corner: 0.3 };
const SHARP_20 = { degrees: 20, addendum: 1, dedendum: 1.25, corner: 0.05 };
const flanksOf = ({ N, moduleMm, rack, shift = 0 }: Rolled): Flanks => ({
  N,
  mn: moduleMm,
  an: rad(rack.degrees),
  psi: 0,
  v: shift * moduleMm,
  A: moduleMm,
  B: rack.dedendum * moduleMm,
  ring: false,
  unit: 'mm',
});

const printed: string[] = [];
afterAll(() => {
  process.stdout.write(`Involute begins, trochoid's crossing against a rolled rack (in at 10 DP):\n${printed.join('\n')}\n`);
});

describe('where a hob begins the involute of an undercut wheel', () => {
  it.each<[string, Rolled]>([
    ['12 teeth, 14½°', { N: 12, moduleMm: m, rack: FULL_14 }],
    ['8 teeth, 14½°', { N: 8, moduleMm: m, rack: FULL_14 }],
    ['10 teeth, 20°', { N: 10, moduleMm: m, rack: FULL_20 }],
    ['12 teeth, 20°, sharp corners', { N: 12, moduleMm: m, rack: SHARP_20 }],
    ['8 teeth, 20°, shift 0.2', { N: 8, moduleMm: m, rack: FULL_20, shift: 0.2 }],
    ['20 teeth, 14½°, shift −0.3', { N: 20, moduleMm: m, rack: FULL_14, shift: -0.3 }],
  ])('%s', (name, rolled) => {
    const form = (hobbedFormDiameter(flanksOf(rolled), rolled.rack.corner * m) ?? Number.NaN) / 2;
    const seen = leavesInvolute(rolled, rolledSpace(rolled));
    printed.push(`  ${name}: ${((form - seen) / 25.4).toExponential(1)}`);
    expect(form).toBeGreaterThan((baseOf(flanksOf(rolled)) / 2) * 1.001);
    expect(Math.abs(form - seen)).toBeLessThan(0.004 * m);
  });
});

const any: fc.Arbitrary<Flanks> = fc
  .record({
    N: fc.integer({ min: 6, max: 80 }),
    deg: fc.constantFrom(14.5, 17.5, 20, 25),
    x: fc.double({ min: -0.5, max: 0.8, noNaN: true }),
    helix: fc.constantFrom(0, 15, 30),
  })
  .map(({ N, deg, x, helix }) => ({
    N,
    mn: 2,
    an: rad(deg),
    psi: rad(helix),
    v: 2 * x,
    A: 2,
    B: deg < 20 ? 2.314 : 2.5,
    ring: false,
    unit: 'mm',
  }));

describe('the form diameter', () => {
  it('lies between base circle and tip, and an undercut foot begins above the base circle', () => {
    fc.assert(
      fc.property(any, (of) => {
        const form = hobbedFormDiameter(of);
        if (form === null) return;
        expect(form).toBeGreaterThanOrEqual(baseOf(of) * (1 - 1e-12));
        expect(form).toBeLessThan(tipOf(of));
        const left = hobbedFlank(of);
        if (left) expect(left.from).toBeGreaterThanOrEqual(usableFlank(of).from);
      }),
    );
  });

  it('scales with the module, and more shift, or a rounder corner, never undercuts more', () => {
    fc.assert(
      fc.property(any, (of) => {
        const [form, twice] = [hobbedFormDiameter(of), hobbedFormDiameter({ ...of, mn: 4, v: 2 * of.v, A: 4, B: 2 * of.B })];
        if (form === null || twice === null) return;
        expect(twice / form).toBeCloseTo(2, 9);
        if (!rackFor(of).undercuts) return;
        const corner = rackFor(of).corner;
        expect(hobbedFormDiameter(of, corner / 2) ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(form - 1e-9);
        expect(hobbedFormDiameter({ ...of, v: of.v + 0.02 }) ?? 0).toBeLessThanOrEqual(form + 1e-9);
      }),
    );
  });

  it('runs on without a step where undercut begins', () => {
    for (const [N, deg, psi] of [
      [12, 20, 0],
      [20, 14.5, 0],
      [10, 20, 25],
    ] as const) {
      const of: Flanks = { N, mn: 1, an: rad(deg), psi: rad(psi), v: 0, A: 1, B: 1.25, ring: false, unit: 'mm' };
      const at = Math.atan(Math.tan(of.an) / Math.cos(of.psi));
      const v = rackFor(of).straight - (pitchOf(of) / 2) * Math.sin(at) ** 2;
      for (const hair of [1e-6, 1e-8, 1e-10, 1e-12, 1e-14, 0])
        for (const side of [1, -1]) {
          const begins = hobbedFormDiameter({ ...of, v: v + side * hair }) ?? Number.NaN;
          expect(begins, `${N} teeth, ${side * hair}`).toBeGreaterThan(baseOf(of) - 1e-9);
          expect(begins, `${N} teeth, ${side * hair}`).toBeLessThan(baseOf(of) + 1e-4);
        }
    }
  });

  it('a ring has none: no rack cuts it', () => {
    const ring: Flanks = { N: 40, mn: 1, an: rad(20), psi: 0, v: 0, A: 1, B: 1.25, ring: true, unit: 'mm' };
    expect(() => hobbedFormDiameter(ring)).toThrow(DomainError);
    expect(hobbedFlank(ring)).toEqual(usableFlank(ring));
  });
});

describe('what is measured near the foot of an undercut wheel', () => {
  const names = (answer: { readonly cautions: readonly { readonly name: string }[] }): readonly string[] =>
    answer.cautions.map(({ name }) => name);

  it('12 teeth at 14½° are spanned over 2: over 1 touches where a hob undercuts, which is said when asked for', () => {
    const wheel = wheelOf(12, '8 DP', 'full-14.5');
    const best = spanAnswer(wheel);
    expect(best.figures.k.value).toEqual({ count: 2 });
    expect(best.cautions.map(({ says }) => says).join()).toContain('Over 1 the jaws would touch where a hob undercuts; 2 is taken.');
    expect(names(best)).not.toContain('Undercut');
    expect(best.figures.spanBelow).toBeUndefined();
    const asked = spanAnswer(wheel, { k: 1 });
    expect(names(asked)).toEqual(['Undercut']);
    expect(names(spanAnswer(wheelOf(15, '8 DP', 'full-14.5'), { k: 1 }))).toEqual(['Undercut']);
    expect(names(spanAnswer(wheelOf(16, '8 DP', 'full-14.5'), { k: 1 }))).toEqual([]);
  });

  it('the best count of shifted and leaning wheels touches what a hob leaves, where any does', () => {
    fc.assert(
      fc.property(any, (of) => {
        const k = bestSpanCount(of);
        if (k === null) return;
        const [R, left] = [spanContactRadius(of, spanOver(of, normalThickness(of), k)), hobbedFlank(of)];
        const whole = usableFlank(of);
        expect(R > whole.from && R < whole.to).toBe(true);
        if (left && !(R > left.from))
          for (const other of [k - 1, k + 1].filter((count) => count >= 1 && count < of.N)) {
            const there = spanContactRadius(of, spanOver(of, normalThickness(of), other));
            expect(there > left.from && there < left.to, `${other} would have served`).toBe(false);
          }
      }),
    );
  });

  it('6 teeth at 14½°: the 1.728/P wire is taken when typed, with a caution; left alone, one that touches higher', () => {
    const gear = parallelOf(wheelOf(6, '1 DP', 'full-14.5'));
    const typed = pinsAnswer({ gear, pin: inches(1.728) });
    expect(typed.figures['overPins'] && printFigure(typed.figures['overPins']).text).toBe('8.2846');
    expect(names(typed)).toContain('Undercut');
    const own = pinsAnswer({ gear });
    expect(own.figures['pin'] && printFigure(own.figures['pin']).text).toBe('1.9200');
    expect(names(own)).not.toContain('Undercut');
  });

  it('12 teeth at 14½° against 60: hobbed, the contact falls below one', () => {
    const { figures, cautions } = contactAnswer({ gear: parallelOf(wheelOf(12, 'module 1', 'full-14.5')), mate: 60, inRing: false });
    expect(figures['hobbedContact'] && printFigure(figures['hobbedContact']).text).toBe('0.9941');
    expect(cautions.find(({ name }) => name === 'Hobbed, less contact')?.weight).toBe('danger');
    const sound = contactAnswer({ gear: parallelOf(wheelOf(32, '8 DP', 'full-14.5')), mate: 32, inRing: false });
    expect(sound.figures['hobbedContact']).toBeUndefined();
  });

  it('12 teeth at 14½° on a rack: hobbed, no more than with a very large wheel; a sound wheel loses nothing', () => {
    const gear = parallelOf(wheelOf(12, 'module 1', 'full-14.5'));
    const rack = contactAnswer({ gear, mate: 12, inRing: false, rack: true });
    const large = contactAnswer({ gear, mate: 900, inRing: false });
    const [own, other] = [rack, large].map(({ figures }) => Number(figures['hobbedContact'] && printFigure(figures['hobbedContact']).text));
    expect(own).toBeCloseTo(0.9941, 4);
    expect(other).toBeCloseTo(own ?? 0, 4);
    expect(rack.cautions.map(({ name }) => name)).toContain('Hobbed, less contact');
    expect(
      contactAnswer({ gear: parallelOf(wheelOf(32, '8 DP', 'full-14.5')), mate: 12, inRing: false, rack: true }).figures['hobbedContact'],
    ).toBeUndefined();
  });

  it('says where the involute begins, and with what corner; and when none is left', () => {
    const begins = undercutAnswer(parallelOf(wheelOf(12, 'module 1', 'module-1.25'))).figures['formDiameter'];
    expect(begins && printFigure(begins).text).toBe('11.303');
    expect(begins?.note).toContain('0.380 mm');
    const none = undercutAnswer(parallelOf(wheelOf(5, 'module 1', 'full-14.5'), { shift: -1 }));
    expect(none.figures['formDiameter']).toBeUndefined();
    expect(names(none)).toContain('No flank');
  });
});
