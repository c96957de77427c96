import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { identifyAnswer } from '../../../lib/identify/identify.sums.ts';
import { identify } from '../../../lib/identify/identify.ts';
import type { MeasuredWheel, Reading } from '../../../lib/identify/readings.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, nanometres } from '../../../lib/values/length.ts';

const size = fc.integer({ min: -10, max: 60_000 }).map((tenths) => inches(tenths / 10_000));
const reading: fc.Arbitrary<Reading> = fc.oneof(
  fc.record({ of: fc.constant('outside' as const), by: fc.constantFrom('jaws' as const, 'true' as const), size }),
  fc.record({ of: fc.constantFrom('root' as const, 'depth' as const), size }),
  fc.record({ of: fc.constant('wall' as const), size, bore: size }),
  fc.record({ of: fc.constant('span' as const), over: fc.integer({ min: 0, max: 12 }), size }),
  fc.record({ of: fc.constant('over pins' as const), pin: size, size }),
  fc.record({ of: fc.constant('centres' as const), mate: fc.integer({ min: 0, max: 200 }), size }),
  fc.record({ of: fc.constant('helix' as const), angle: fc.integer({ min: 0, max: 70 }).map(degrees) }),
);
const wheel: fc.Arbitrary<MeasuredWheel> = fc.record({
  teeth: fc.integer({ min: 2, max: 200 }),
  readings: fc.array(reading, { maxLength: 6 }),
});
/** Readings that hang together: so most are answered. */
const likely: fc.Arbitrary<MeasuredWheel> = fc
  .record({
    teeth: fc.integer({ min: 12, max: 120 }),
    m: fc.integer({ min: 200, max: 3000 }),
    off: fc.integer({ min: -300, max: 300 }),
    lean: fc.integer({ min: 0, max: 40 }),
  })
  .map(({ teeth, m, off, lean }) => ({
    teeth,
    readings: [
      { of: 'outside', by: 'jaws', size: inches(((teeth + 2) * m) / 10_000) },
      { of: 'span', over: 2, size: inches((4.5 * m + off) / 10_000) },
      ...(lean > 20 ? [{ of: 'helix', angle: degrees(lean) } as const] : []),
    ],
  }));

const sumOf = ({ list, none, pitches, strangers }: ReturnType<typeof identify>) => ({
  pitches: pitches.reduce((total, { chance }) => total + chance, none),
  listed: list.reduce((total, { chance }) => total + chance, none),
  strangers: strangers.reduce((total, one) => total + one, 0),
});

function unprintable(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  if (typeof value === 'string') return /NaN|undefined|Infinity/.test(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(unprintable);
}

describe('whatever is read', () => {
  it('chances sum to 1, and nothing is not a number; or the readings are refused in words', () => {
    let answered = 0;
    fc.assert(
      fc.property(fc.array(fc.oneof(likely, likely, wheel), { minLength: 1, maxLength: 3 }), (wheels) => {
        try {
          const sums = sumOf(identify(wheels));
          expect(sums.pitches).toBeCloseTo(1, 9);
          expect(sums.listed).toBeLessThanOrEqual(1 + 1e-9);
          expect(sums.strangers).toBeLessThanOrEqual(1 + 1e-9);
          const answer = identifyAnswer(wheels, 'in');
          expect(unprintable(answer)).toBe(false);
          for (const figure of Object.values(answer.figures)) if (figure) expect(printFigure(figure).text).not.toBe('');
          answered++;
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          expect([error.given, error.limit, error.tryThis].every((text) => text.endsWith('.'))).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
    expect(answered).toBeGreaterThan(5);
  });

  it('an inch typed as its nanometres is the same wheel', () => {
    const one = identify([{ teeth: 30, readings: [{ of: 'outside', by: 'true', size: inches(4) }] }]);
    const other = identify([{ teeth: 30, readings: [{ of: 'outside', by: 'true', size: nanometres(101_600_000) }] }]);
    expect(other).toEqual(one);
  });
});

describe('nonsense is refused in words', () => {
  const outside = (inch: number): Reading => ({ of: 'outside', by: 'true', size: inches(inch) });
  it.each<[string, MeasuredWheel, RegExp]>([
    ['no size at all', { teeth: 22, readings: [] }, /every pitch/],
    ['a count of three', { teeth: 3, readings: [outside(1)] }, /from 4 to 2000/],
    ['a root as large as the outside', { teeth: 22, readings: [outside(3), { of: 'root', size: inches(3) }] }, /changed about/],
    ['a span over half the teeth', { teeth: 22, readings: [{ of: 'span', over: 11, size: inches(1) }] }, /less than half/],
    [
      'a longer span that reads shorter',
      {
        teeth: 22,
        readings: [
          { of: 'span', over: 2, size: inches(0.6) },
          { of: 'span', over: 3, size: inches(0.5) },
        ],
      },
      /one base pitch/,
    ],
    ['a reading of nothing', { teeth: 22, readings: [outside(0)] }, /above 0/],
    ['a pin as thick as the reading', { teeth: 22, readings: [{ of: 'over pins', pin: inches(1), size: inches(1) }] }, /pin/],
    ['a depth to the middle', { teeth: 22, readings: [outside(3), { of: 'depth', size: inches(1.5) }] }, /one space/],
    [
      'an error without bounds',
      { teeth: 22, readings: [{ of: 'outside', by: 'true', size: inches(3), error: inches(2) }] },
      /No tool reads true/,
    ],
    ['a wall without its bore', { teeth: 22, readings: [{ of: 'wall', size: inches(1), bore: inches(0) }] }, /bore/],
  ])('%s', (_, one, says) => {
    expect(() => identify([one])).toThrow(DomainError);
    expect(() => identify([one])).toThrow(says);
  });
});
