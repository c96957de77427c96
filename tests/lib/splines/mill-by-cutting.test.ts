import { difference, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { type MillAsked, millPlan } from '../../../lib/splines/mill-plan.ts';
import type { Plate } from '../../../lib/tooling/tooling.ts';
import { inches } from '../../../lib/values/length.ts';

/**
 * Second route to the milled shaft: a round bar and a rectangle, the cutter, taken away from it by a general polygon library in every
 * place where the plan says that it cuts. What is left is measured: how high the bottoms stand, how wide the keys are.
 */
type XY = readonly [number, number];
const TO_UNITS = 1e8;
const path = (points: readonly XY[]) => points.map(([x, y]) => ({ x: Math.round(x * TO_UNITS), y: Math.round(y * TO_UNITS) }));
const turned = ([x, y]: XY, by: number): XY => [x * Math.cos(by) + y * Math.sin(by), y * Math.cos(by) - x * Math.sin(by)];

const bar = (D: number): XY[] =>
  Array.from({ length: 1440 }, (_, i) => [(D / 2) * Math.cos((Math.PI * i) / 720), (D / 2) * Math.sin((Math.PI * i) / 720)]);

/** The cutter as seen by a shaft that has been turned by `by` clockwise: middle at `offset`, its edge `depth` under the top. */
const cut = (D: number, c: number, offset: number, depth: number, by: number): XY[] =>
  (
    [
      [offset - c / 2, D / 2 - depth],
      [offset + c / 2, D / 2 - depth],
      [offset + c / 2, D],
      [offset - c / 2, D],
    ] as const
  ).map((corner) => turned(corner, -by));

type Cut = { readonly offset: number; readonly depth: number; readonly by: number };

function left(D: number, c: number, cuts: readonly Cut[]): XY[][] {
  const tools = cuts.map(({ offset, depth, by }) => path(cut(D, c, offset, depth, by)));
  return difference([path(bar(D))], tools, FillRule.NonZero).map((ring) => ring.map(({ x, y }): XY => [x / TO_UNITS, y / TO_UNITS]));
}

/** Every point of the outline as seen from the key that it is nearest to: off that key's middle line, and from the shaft's middle. */
const seen = (rings: readonly (readonly XY[])[], N: number) =>
  rings.flat().map((point) => {
    const at = Math.atan2(point[0], point[1]);
    const key = (Math.round((at * N) / (2 * Math.PI)) * 2 * Math.PI) / N;
    const [off] = turned(point, -key);
    return { off: Math.abs(off), R: Math.hypot(...point) };
  });

/** Twice the height of the highest point between the keys, and the narrowest and widest that a key is over the bottoms. */
function measured(rings: readonly (readonly XY[])[], N: number, w: number) {
  const points = seen(rings, N);
  const bottoms = points.filter(({ off }) => off > w / 2 + 1e-7).map(({ R }) => R);
  const sides = points.filter(({ off }) => off <= w / 2 + 1e-7);
  return {
    across: 2 * Math.max(...bottoms),
    widest: 2 * Math.max(...sides.map(({ off }) => off)),
    lowestSide: Math.min(...sides.map(({ R }) => R)),
  };
}

const plate = (id: number, circles: readonly number[]): Plate => ({ kind: 'plate', id, name: `Plate ${id}`, here: true, sides: [circles] });
const PLATES = [plate(1, [15, 16, 17, 18, 19, 20]), plate(2, [21, 23, 27, 29, 31, 33]), plate(3, [37, 39, 41, 43, 47, 49])];

const story = (bottom: number, more: Partial<MillAsked> = {}): MillAsked => ({
  bore: { splines: 6, outside: inches(1.251), inside: inches(1.063), width: inches(0.313) },
  locates: 'outside and sides',
  clearances: { outside: inches(0.001), sides: inches(0.0005), bottom: inches(bottom) },
  cutterWidth: inches(0.1875),
  head: { turns: 40, name: '40 to 1' },
  plates: PLATES,
  circle: 33,
  unit: 'in',
  ...more,
});

/** All cuts that a plan stands for, by crank spaces and dial alone. */
function cutsOf(asked: MillAsked): { D: number; N: number; w: number; c: number; cuts: Cut[] } {
  const { shaft, cuts } = millPlan(asked);
  const { N, D, d, w, c } = shaft;
  const space = (2 * Math.PI) / (asked.head.turns * cuts.on.circle);
  const side = D / 2 - Math.sqrt((d / 2) ** 2 - (w / 2) ** 2);
  const bottom = D / 2 - Math.sqrt((d / 2) ** 2 - (c / 2) ** 2);
  const keys = Array.from({ length: N }, (_, i) => (2 * Math.PI * i) / N);
  return {
    D,
    N,
    w,
    c,
    cuts: keys.flatMap((by) => [
      { offset: (w + c) / 2, depth: side, by },
      { offset: -(w + c) / 2, depth: side, by },
      ...cuts.off.map((off) => ({ offset: 0, depth: bottom, by: by + Math.PI / N + off * space })),
    ]),
  };
}

describe('the shaft, cut in a round bar', () => {
  it('six splines, small diameter 1.058: 1.059 across, and no key side touched', () => {
    const { D, N, w, c, cuts } = cutsOf(story(0.005));
    const { across, widest, lowestSide } = measured(left(D, c, cuts), N, w);
    expect(across).toBeCloseTo(1.059, 4);
    expect(across).toBeCloseTo(millPlan(story(0.005)).highest, 6);
    expect(widest).toBeCloseTo(0.3125, 6);
    expect(lowestSide * 2).toBeCloseTo(1.058, 6);
  });

  it('the figures of the story, cut as printed, without the plan', () => {
    const keys = Array.from({ length: 6 }, (_, i) => (Math.PI * i) / 3);
    const space = (2 * Math.PI) / (40 * 33);
    const cuts = keys.flatMap((by) => [
      { offset: 0.25, depth: 0.1196, by },
      { offset: -0.25, depth: 0.1196, by },
      { offset: 0, depth: 0.1044, by: by + (3 * 33 + 2) * space },
      { offset: 0, depth: 0.1044, by: by + (3 * 33 + 20) * space },
    ]);
    const { across, widest } = measured(left(1.25, 0.1875, cuts), 6, 0.3125);
    expect(Math.abs(across - 1.059)).toBeLessThan(0.0002);
    expect(widest).toBeCloseTo(0.3125, 6);
    const oneTooFar = cuts.map((one) => (one.depth === 0.1044 ? { ...one, by: one.by + space } : one));
    const spoilt = seen(left(1.25, 0.1875, oneTooFar), 6).filter(({ off, R }) => off < 0.3125 / 2 - 1e-5 && R < 0.6);
    expect(spoilt.length).toBeGreaterThan(0);
  });

  it('one cut a space with the same cutter leaves edges of 0.0082 and ridges of 0.0091', () => {
    const side = 0.625 - Math.sqrt(0.53125 ** 2 - 0.15625 ** 2);
    const keys = Array.from({ length: 6 }, (_, i) => (Math.PI * i) / 3);
    const cuts = keys.flatMap((by) => [
      { offset: 0.25, depth: side, by },
      { offset: -0.25, depth: side, by },
      { offset: 0, depth: 0.09375, by: by + Math.PI / 6 },
    ]);
    const rings = left(1.25, 0.1875, cuts);
    expect((measured(rings, 6, 0.3125).across - 1.0625) / 2).toBeCloseTo(0.0091, 4);
    const corner = cut(1.25, 0.1875, 0, 0.09375, 0)[1] ?? [0, 0];
    expect(Math.hypot(...corner) - 0.53125).toBeCloseTo(0.0082, 4);
  });

  it('whatever is asked: the bottoms stand as high as said, the keys keep their width, or it is refused in words', () => {
    let made = 0;
    const asked = fc.record({
      N: fc.constantFrom(3, 4, 6, 8, 10, 16),
      D: fc.integer({ min: 500, max: 4000 }),
      d: fc.integer({ min: 700, max: 940 }),
      w: fc.integer({ min: 10, max: 90 }),
      c: fc.integer({ min: 15, max: 100 }),
    });
    fc.assert(
      fc.property(asked, ({ N, D, d, w, c }) => {
        const [out, small] = [D / 1000, (D * d) / 1e6];
        const gap = small * Math.sin(Math.PI / N);
        const key = (gap * w) / 100;
        const of = story(0.001, {
          bore: { splines: N, outside: inches(out), inside: inches(small), width: inches(key) },
          cutterWidth: inches((gap * c) / 100),
          clearances: { outside: inches(0.001), sides: inches(0.0005), bottom: inches(0.002) },
        });
        const { circle: _, ...free } = of;
        try {
          const { highest } = millPlan(free);
          const bar = cutsOf(free);
          const { across, widest } = measured(left(bar.D, bar.c, bar.cuts), N, bar.w);
          expect(Math.abs(across - highest)).toBeLessThan(2e-6);
          expect(widest).toBeLessThan(bar.w + 1e-6);
          expect(widest).toBeGreaterThan(bar.w - 1e-6);
          made += 1;
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          expect([error.given, error.limit, error.tryThis].every((part) => part.length > 8)).toBe(true);
        }
      }),
      { numRuns: 80 },
    );
    expect(made).toBeGreaterThan(20);
  });
});
