import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { substituteContact, substituteSpanError, substituteSpans } from '../../../lib/cutters/substitute-span.formulas.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { inches } from '../../../lib/values/length.ts';
import { printLength } from '../../../lib/values/print.ts';
import { drawnFlank } from './drawn-space.ts';

const a = (14.5 * Math.PI) / 180;
const on35 = { N: 35, m: 1 / 8, a };
const printed = (inch: number): string => printLength(inches(inch), { unit: 'in', places: 4 });

/** Span over k teeth of a gear of N whose spaces are the drawn form of N2 at the right depth: the jaws closed on the points that stand within root and outside. */
function drawnSpan(N: number, N2: number, k: number, m: number, degrees: number, onlyWithin = true) {
  const [R, phi] = [(N * m) / 2, (Math.PI * k) / N];
  let [half, contact] = [0, 0];
  for (const [x, y] of drawnFlank({ N: N2, m, degrees })) {
    const up = y + (m * (N - N2)) / 2;
    const r = Math.hypot(x, up);
    if (onlyWithin && (r > R + m || r < R - 1.157 * m)) continue;
    const across = -x * Math.cos(phi) + up * Math.sin(phi);
    if (across > half) [half, contact] = [across, r];
  }
  return { span: 2 * half, contact };
}

describe('a span with a substitute form on 35 teeth, 8 DP, 14½°', () => {
  test('form for 26 reads 0.0018 small over 4, form for 55 0.0040 large', () => {
    expect(printed(substituteSpanError({ ...on35, N2: 26, k: 4 }))).toBe('−0.0018');
    expect(printed(substituteSpanError({ ...on35, N2: 55, k: 4 }))).toBe('0.0040');
  });

  test('over 3 both read within 0.0001', () => {
    for (const N2 of [26, 55]) expect(Math.abs(substituteSpanError({ ...on35, N2, k: 3 }))).toBeLessThan(0.0001);
  });

  test('3 is the safest of the spans that bear on the flank', () => {
    const spans = [...substituteSpans({ ...on35, N2: 26 }, { A: 1 / 8, B: 1.157 / 8 })].sort(
      (x, y) => Math.abs(x.error) - Math.abs(y.error),
    );
    expect(spans[0]?.k).toBe(3);
    expect(spans.map(({ k }) => k)).toContain(4);
  });
});

describe('on the drawn curve', () => {
  test.each([
    [35, 26, 3, 0.125, 14.5],
    [35, 26, 4, 0.125, 14.5],
    [35, 55, 3, 0.125, 14.5],
    [35, 55, 4, 0.125, 14.5],
    [28, 21, 3, 2, 20],
    [60, 35, 7, 1, 20],
  ])('%i teeth with the form of %i over %i, module %d, %d°', (N, N2, k, m, degrees) => {
    const given = { N, N2, m, a: (degrees * Math.PI) / 180, k };
    const drawn = drawnSpan(N, N2, k, m, degrees);
    const right = drawnSpan(N, N, k, m, degrees);
    expect(Math.abs(drawn.span - right.span - substituteSpanError(given))).toBeLessThan(1e-6 * m);
    expect(Math.abs(drawn.contact - (substituteContact(given) ?? 0))).toBeLessThan(2e-3 * m);
  });

  test('a span whose jaws would bear beyond the outside is not offered', () => {
    const beyond = [2, 3, 4, 5, 6, 7, 8].filter((k) => {
      const contact = substituteContact({ ...on35, N2: 26, k });
      return contact === null || contact > 35 / 16 + 1 / 8 || contact < 35 / 16 - 1.157 / 8;
    });
    const offered = substituteSpans({ ...on35, N2: 26 }, { A: 1 / 8, B: 1.157 / 8 }).map(({ k }) => k);
    expect(beyond.length).toBeGreaterThan(0);
    expect(offered.filter((k) => beyond.includes(k))).toEqual([]);
  });
});

test('the right form reads right over any count', () => {
  fc.assert(
    fc.property(fc.integer({ min: 12, max: 200 }), fc.integer({ min: 1, max: 5 }), (N, k) => {
      expect(Math.abs(substituteSpanError({ N, N2: N, m: 1, a, k }))).toBe(0);
    }),
  );
});

test.each([0, 2.5, 18, Number.NaN])('a span over %d of 35 teeth is refused in words', (k) => {
  expect(() => substituteSpanError({ ...on35, N2: 26, k })).toThrow(DomainError);
});
