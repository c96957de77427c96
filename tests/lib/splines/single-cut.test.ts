import { difference, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leftBySingleCut, type ShaftToMill, singleCutEdge, singleCutRidge } from '../../../lib/splines/mill.formulas.ts';
import { millSplines } from '../../../lib/splines/mill.sums.ts';
import type { MillAsked } from '../../../lib/splines/mill-plan.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';

/** Second route: the side cuts and one bottom cut a space, (D − d)/2 deep, taken off a round bar by a polygon library. */
type XY = readonly [number, number];
const TO_UNITS = 1e7;
const path = (points: readonly XY[]) => points.map(([x, y]) => ({ x: Math.round(x * TO_UNITS), y: Math.round(y * TO_UNITS) }));
const box = (left: number, right: number, low: number, high: number): XY[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];
const turned = (points: readonly XY[], by: number): XY[] =>
  points.map(([x, y]) => [x * Math.cos(by) - y * Math.sin(by), x * Math.sin(by) + y * Math.cos(by)]);

/** Twice the distance from the middle of the highest metal left outside the keys. */
function highestOf({ N, D, d, w, c }: ShaftToMill): number {
  const bar = Array.from(
    { length: 2880 },
    (_, i): XY => [(D / 2) * Math.sin((Math.PI * i) / 1440), (D / 2) * Math.cos((Math.PI * i) / 1440)],
  );
  const floor = Math.sqrt(d * d - w * w) / 2;
  const tools = Array.from({ length: N }, (_, i) => (2 * Math.PI * i) / N).flatMap((by) => [
    turned(box(w / 2, w / 2 + c, floor, D), by),
    turned(box(-w / 2 - c, -w / 2, floor, D), by),
    turned(box(-c / 2, c / 2, d / 2, D), by + Math.PI / N),
  ]);
  const rings = difference([path(bar)], tools.map(path), FillRule.NonZero);
  const outside = rings.flat().filter(({ x, y }) => {
    const key = Math.round((Math.atan2(x, y) * N) / (2 * Math.PI)) * ((2 * Math.PI) / N);
    return Math.abs(x * Math.cos(key) - y * Math.sin(key)) > (w / 2 + 1e-6 * D) * TO_UNITS;
  });
  return (2 * Math.max(...outside.map(({ x, y }) => Math.hypot(x, y)))) / TO_UNITS;
}

/** What the formulas say of the same. */
const said = (shaft: ShaftToMill): number =>
  shaft.d + 2 * Math.max(leftBySingleCut(shaft) === 'floor' ? 0 : singleCutEdge(shaft), singleCutRidge(shaft));

/** Whether the side cut of the next key comes over the middle of the space: then it may take the ridge off, too. */
const nextCutReaches = ({ N, D, w, c }: ShaftToMill): boolean => (D / 2) * Math.sin(Math.PI / N) < w / 2 + c;

const SHAFTS = {
  wall: { N: 6, D: 1.25, d: 1.0625, w: 0.3125, c: 0.1875 },
  floor: { N: 6, D: 14, d: 10.988, w: 2.911, c: 2.693 },
  fin: { N: 10, D: 20, d: 15.505, w: 2.5, c: 1.175 },
  'fin over the floor': { N: 3, D: 1.53, d: 1.3927, w: 0.7601, c: 0.3153 },
} as const;

describe('one cut a space', () => {
  it.each(Object.entries(SHAFTS))('%s: what stands beside it is as high as on the cut bar', (what, shaft) => {
    expect(leftBySingleCut(shaft)).toBe(what.split(' ')[0]);
    expect(Math.abs(highestOf(shaft) - said(shaft))).toBeLessThan(shaft.D * 3e-6);
  });

  it('is as high as said for any shaft and any cutter that spares the keys; never lower where keys are few and thin', () => {
    const seen = new Set<string>();
    const asked = fc.record({
      N: fc.constantFrom(3, 4, 6, 8, 10, 16),
      d: fc.integer({ min: 70, max: 95 }),
      w: fc.integer({ min: 15, max: 85 }),
      c: fc.integer({ min: 30, max: 100 }),
    });
    fc.assert(
      fc.property(asked, (one) => {
        const d = one.d / 100;
        const w = (d * Math.sin(Math.PI / one.N) * one.w) / 100;
        const gap = d * Math.sin(Math.PI / one.N - Math.asin(w / d));
        const shaft = { N: one.N, D: 1, d, w, c: (gap * one.c) / 100 };
        seen.add(leftBySingleCut(shaft));
        const over = said(shaft) - highestOf(shaft);
        expect(over).toBeGreaterThan(-4e-6);
        if (!nextCutReaches(shaft)) expect(over).toBeLessThan(4e-6);
      }),
      { numRuns: 60 },
    );
    expect([...seen].sort()).toEqual(['fin', 'floor', 'wall']);
  });
});

const plate = { kind: 'plate' as const, id: 1, name: 'Plate 1', here: true, sides: [[15, 16, 17, 18, 19, 20, 21, 33]] };
const asked = (more: Partial<MillAsked> = {}): MillAsked => ({
  bore: { splines: 6, outside: inches(1.251), inside: inches(1.063), width: inches(0.313) },
  locates: 'outside and sides',
  clearances: { outside: inches(0.001), sides: inches(0.0005), bottom: inches(0.005) },
  cutterWidth: inches(0.1875),
  head: { turns: 40, name: '40 to 1' },
  plates: [plate],
  unit: 'in',
  ...more,
});
const words = (of: MillAsked, key: string): string => {
  const value = millSplines(of).figures[key]?.value;
  return value && 'words' in value ? value.words : '';
};

describe('whether the shaft enters', () => {
  it('asks of the outside as turned, too', () => {
    const large = asked({ turned: inches(1.3) });
    expect(words(large, 'enters')).toBe('no: 0.0490 in too large outside');
    expect(millSplines(large).says).toContain('As turned the outside is 0.0490 in over the bore’s grooves. The shaft does not enter.');
    expect(words(asked({ turned: inches(1.251) }), 'enters')).toBe('yes: the bottoms stay clear of the bore');
    const both = asked({ turned: inches(1.3), clearances: { outside: inches(0), sides: inches(0), bottom: inches(0) } });
    expect(words(both, 'enters')).toBe('no: 0.0490 in too large outside, and more comes off the bottoms');
  });

  it('never passes a shaft whose fins stand as high as its keys', () => {
    const fins = asked({
      bore: { splines: 10, outside: millimetres(20.025), inside: millimetres(16.013), width: millimetres(2.513) },
      clearances: { outside: millimetres(0.025), sides: millimetres(0.013), bottom: millimetres(0.508) },
      cutterWidth: millimetres(1.175),
      unit: 'mm',
    });
    expect(words(fins, 'singleEnters')).toBe('no: 20.000 mm across in a bore of 16.013 mm');
    expect(millSplines(fins).figures['singleRidge']?.name).toBe('One cut a space: fins beside it stand out');
  });

  it('does not count edges that the side cuts take off', () => {
    const wide = asked({
      bore: { splines: 8, outside: millimetres(54.025), inside: millimetres(46.013), width: millimetres(9.013) },
      clearances: { outside: millimetres(0), sides: millimetres(0.013), bottom: millimetres(0.508) },
      cutterWidth: millimetres(7.442),
      unit: 'mm',
    });
    expect(words(wide, 'singleEdge')).toBe('not at all: the side cuts take them off');
    expect(words(wide, 'singleEnters')).toBe('yes');
    expect(words({ ...wide, turned: millimetres(54.1) }, 'singleEnters')).toBe('no: 0.075 mm too large outside');
  });
});
