import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { type Flanks, pitchOf, transverseThickness } from '../../../lib/gears/flanks.formulas.ts';
import { circleFromFlat, overFlatAnvils, slidApart } from '../../../lib/gears/flat-anvils.formulas.ts';
import { parallelOf } from '../../../lib/gears/parallel.ts';
import { overPins, pinCircle, thicknessFromPins } from '../../../lib/gears/pins.formulas.ts';
import { pinsAnswer } from '../../../lib/gears/pins.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inUnit, millimetres } from '../../../lib/values/length.ts';
import { wheelOf } from './wheel-of.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const wheel = (N: number, helix: number, x = 0): Flanks => ({
  N,
  mn: 2,
  an: rad(20),
  psi: rad(helix),
  v: 2 * x,
  A: 2,
  B: 2.5,
  ring: false,
  unit: 'mm',
});

type V = readonly [number, number, number];
const minus = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: V, b: V): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: V, b: V): V => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** The middle line of a pin that lies in the space at `turn` round the axis, `up` along it: a point and a direction. */
function middleLine(Rc: number, lean: number, turn: number, up: number): readonly [V, V] {
  return [
    [Rc * Math.cos(turn), Rc * Math.sin(turn), up],
    [-Math.sin(turn) * Math.sin(lean), Math.cos(turn) * Math.sin(lean), Math.cos(lean)],
  ];
}

/** Least distance between two anvils over two long pins, less a pin: one stands still, the other is slid along its space in small steps. No formula of lib's. */
function bySliding(of: Flanks, Rc: number, balls: boolean): number {
  const lean = Math.atan((Math.tan(of.psi) * 2 * Rc) / pitchOf(of));
  const rise = Rc / Math.tan(lean);
  const [P1, d1] = middleLine(Rc, lean, 0, 0);
  const at = (up: number): number => {
    const [P2, d2] = middleLine(Rc, lean, Math.PI + Math.PI / of.N + up / rise, up);
    const [between, n] = [minus(P2, P1), cross(d1, d2)];
    return balls ? Math.sqrt(dot(between, between)) : Math.abs(dot(between, n)) / Math.sqrt(dot(n, n));
  };
  let [best, step] = [0, Rc / 50];
  while (step > 1e-7) {
    if (at(best + step) < at(best)) best += step;
    else if (at(best - step) < at(best)) best -= step;
    else step /= 2;
  }
  return at(best);
}

describe('over pins that slide between flat anvils, odd count and helical', () => {
  it.each([
    [25, 15],
    [9, 10],
    [35, 22.5],
    [17, 30],
    [51, 40],
  ])('%i teeth, %d°: as long pins, and as balls, slid until they stand nearest', (N, helix) => {
    const of = wheel(N, helix);
    const Rc = pinCircle(of, transverseThickness(of), 3.5);
    const M = overFlatAnvils(of, Rc, 3.5);
    expect(M).not.toBeNull();
    expect((M ?? 0) - 3.5).toBeCloseTo(bySliding(of, Rc, false), 8);
    expect((M ?? 0) - 3.5).toBeCloseTo(bySliding(of, Rc, true), 8);
  });

  it('is less than over balls in one plane, the same for straight teeth, and comes back to its circle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 60 }), fc.constantFrom(3, 8, 15, 25, 33), (half, helix) => {
        const of = wheel(2 * half + 1, helix);
        const Rc = pinCircle(of, transverseThickness(of), 3.75);
        const M = overFlatAnvils(of, Rc, 3.75);
        if (M === null) return;
        expect(M).toBeLessThan(overPins(of, transverseThickness(of), 3.75));
        expect(circleFromFlat(of, M, 3.75)).toBeCloseTo(Rc, 8);
        expect(slidApart({ ...of, psi: 0 }, Rc)?.across).toBeCloseTo(Math.cos(Math.PI / (2 * of.N)), 12);
      }),
    );
  });

  it('has no least from 45° at the circle of the pins on', () => {
    const of = wheel(21, 44);
    expect(slidApart(of, pitchOf(of) / 2)).not.toBeNull();
    expect(slidApart(of, (pitchOf(of) / 2) * 1.1)).toBeNull();
    expect(overFlatAnvils(of, (pitchOf(of) / 2) * 1.1, 3)).toBeNull();
    expect(circleFromFlat(of, 0.5, 3)).toBeNull();
    expect(circleFromFlat(of, 3, 3)).toBeNull();
    const edge = (pitchOf(of) / 2 / Math.tan(of.psi)) * 0.9995;
    expect(circleFromFlat(of, overFlatAnvils(of, edge, 3) ?? 0, 3)).toBeCloseTo(edge, 8);
    expect(circleFromFlat(of, pitchOf(of) * 1.2 + 3, 3)).toBeNull();
  });
});

describe('the sum says which reading it means', () => {
  const gear = (teeth: number, helix: number) => ({
    ...parallelOf(wheelOf(teeth, 'module 2', 'module-1.25')),
    helix: { angle: degrees(helix), hand: 'right' as const },
  });
  const says = (answer: { readonly cautions: readonly { readonly name: string; readonly says: string }[] }): string =>
    answer.cautions
      .filter(({ name }) => name === 'Odd count, helical')
      .map((one) => one.says)
      .join();

  it('25 teeth, 15°: balls 56.626, pins that slide 56.618; and back', () => {
    const answer = pinsAnswer({ gear: gear(25, 15), pin: millimetres(3.5), reading: millimetres(56.6176166) });
    const { overPins: plane, overFlatAnvils: flat, thicknessFlat, thicknessRead } = answer.figures;
    expect([plane, flat].map((figure) => figure && printFigure(figure).text)).toEqual(['56.626', '56.618']);
    expect(says(answer)).toContain('balls held in one plane');
    const of = wheel(25, 15);
    const lengthIn = (value: object | undefined): number => (value && 'length' in value ? inUnit(value.length as never, 'mm') : Number.NaN);
    expect(lengthIn(thicknessFlat?.value)).toBeCloseTo(transverseThickness(of), 5);
    expect(lengthIn(thicknessRead?.value)).toBeCloseTo(thicknessFromPins(of, 56.6176166, 3.5), 5);
  });

  it('even counts, straight teeth and rings have one reading; a steep helix is told to take balls', () => {
    for (const [N, helix] of [
      [24, 15],
      [26, 30],
    ] as const) {
      const answer = pinsAnswer({ gear: gear(N, helix) });
      expect(answer.figures['overFlatAnvils']).toBeUndefined();
      expect(says(answer)).toBe('');
    }
    expect(pinsAnswer({ gear: parallelOf(wheelOf(25, 'module 2', 'module-1.25')) }).figures['overFlatAnvils']).toBeUndefined();
    const ring = pinsAnswer({ gear: { ...gear(45, 15), ring: true } });
    expect(ring.figures['overFlatAnvils']).toBeUndefined();
    expect(says(ring)).toBe('This holds for balls held in one plane across the axis.');
    expect(says(pinsAnswer({ gear: gear(21, 46) }))).toContain('slide off');
  });
});
