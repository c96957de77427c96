import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { findSpline, foundSpline } from '../../../lib/splines/find.sums.ts';
import { candidatesFor, fitsRead, type SplineRead } from '../../../lib/splines/find.ts';
import { INCH_STRAIGHT } from '../../../lib/splines/straight.data.ts';
import { inchStraight, METRIC_CHOICES } from '../../../lib/splines/straight-choice.ts';
import { inches, type Length, nanometres } from '../../../lib/values/length.ts';

const bore = (splines: number, outside: Length, inside: Length, width: Length, sides: SplineRead['sides'] = 'parallel'): SplineRead => ({
  part: 'bore',
  splines,
  outside,
  inside,
  width,
  sides,
});
const off = (nm: Length, thousandths: number): Length => nanometres(nm + thousandths * 25_400);
const error = fc.double({ min: -1.5, max: 1.5, noNaN: true });

describe('a spline found again from its own sizes, read a little wrong', () => {
  it('every metric one', () => {
    for (const one of METRIC_CHOICES) {
      const found = foundSpline(bore(one.splines, one.outside, one.inside, one.width));
      expect(found?.name).toBe(one.name);
      expect(found?.misfits).toEqual({ outside: 0, inside: 0, width: 0, worst: 0 });
    }
  });

  it('every inch one from 3/4 to 4 in, with readings up to 0.0015 off', () => {
    for (const row of INCH_STRAIGHT)
      for (const { fit } of row.fits)
        fc.assert(
          fc.property(fc.integer({ min: 12, max: 64 }), error, error, error, (sixteenths, a, b, c) => {
            const one = inchStraight(row.splines, fit, inches(sixteenths / 16));
            if (!one) throw new Error('no such row');
            const read = bore(row.splines, off(one.outside, a), off(one.inside, b), off(one.width, c));
            const near = candidatesFor(read).filter(fitsRead);
            expect(near.map(({ name }) => name)).toContain(one.name);
          }),
          { numRuns: 12 },
        );
  });

  it('straight and involute are told apart by the sides', () => {
    const straight = foundSpline(bore(6, inches(1.251), inches(1.063), inches(0.313), 'parallel'));
    expect(straight?.form).toBe('straight');
    const involute = foundSpline(bore(20, inches(1.334), inches(1.188), inches(0.098), 'curved or tapering'));
    expect(involute?.name).toBe('ANSI B92.1, 20 teeth, 16/32, flat root');
    expect(candidatesFor(bore(6, inches(1.251), inches(1.063), inches(0.313), 'curved or tapering')).map(({ form }) => form)).not.toContain(
      'straight',
    );
    expect(findSpline(bore(6, inches(1.251), inches(1.063), inches(0.313), 'not looked at'), 'in').says).toMatch(
      /at the top and at the bottom/,
    );
  });

  it('none of these is an answer', () => {
    const answer = findSpline(bore(6, inches(1.3), inches(1.1), inches(0.33)), 'in');
    expect(answer.says).toMatch(/^None of these/);
    expect(foundSpline(bore(7, inches(1.3), inches(1.1), inches(0.2)))).toBe(null);
  });

  it('whatever is read: an answer or a refusal that says what to do, and no reading is lost', () => {
    const size = fc.integer({ min: -10, max: 60_000 }).map((tenths) => inches(tenths / 10_000));
    fc.assert(
      fc.property(
        fc.record({
          part: fc.constantFrom('bore' as const, 'shaft' as const),
          splines: fc.integer({ min: 0, max: 210 }),
          outside: size,
          inside: size,
          width: size,
          sides: fc.constantFrom('parallel' as const, 'curved or tapering' as const, 'not looked at' as const),
        }),
        (read) => {
          try {
            const { tables = [] } = findSpline(read, 'in');
            const worst = candidatesFor(read).map(({ misfits }) => misfits.worst);
            expect([...worst].sort((a, b) => a - b)).toEqual(worst);
            expect(worst.every(Number.isFinite)).toBe(true);
            expect(tables[0]?.rows.length).toBeLessThanOrEqual(6);
          } catch (error) {
            if (!(error instanceof DomainError)) throw error;
            expect([error.given, error.limit, error.tryThis].every((part) => part.length > 8)).toBe(true);
          }
        },
      ),
    );
  });
});
