import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../lib/figure/figure.ts';
import { inv, inverseInv } from '../../../lib/gears/involute.formulas.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { nearestSpanCount, span, spanCount, spanOnFlank, tipThickness } from '../../../lib/gears/spur.formulas.ts';
import { gearBlank } from '../../../lib/gears/spur.sums.ts';
import { TOOTH_SYSTEMS } from '../../../lib/gears/systems.data.ts';
import { baseDiameter, outsideDiameter, toothOf } from '../../../lib/gears/tooth.ts';
import { toInches, toMm } from '../../../lib/values/length.ts';
import { wheelOf } from './wheel-of.ts';

const keys = fc.constantFrom(...TOOTH_SYSTEMS.map((named) => named.key));
const wheels = fc
  .tuple(fc.integer({ min: 12, max: 300 }), fc.integer({ min: 2, max: 48 }), keys)
  .map(([N, P, key]) => wheelOf(N, `${P} DP`, key));
const lengthOf = (figure: Figure | undefined): number => (figure && 'length' in figure.value ? figure.value.length : Number.NaN);

describe('relations that hold whatever the wheel', () => {
  it('inverseInv undoes inv', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 1.4, noNaN: true }), (a) => Math.abs(inverseInv(inv(a)) - a) < 1e-9));
  });

  it('one tooth more between the jaws makes a base pitch: the base circle divided by the count', () => {
    fc.assert(
      fc.property(wheels, fc.integer({ min: 1, max: 9 }), (wheel, k) => {
        const tooth = toothOf(wheel);
        return Math.abs(span(tooth, k + 1) - span(tooth, k) - (Math.PI * baseDiameter(tooth)) / tooth.N) < 1e-9;
      }),
    );
  });

  it('more teeth never take a smaller span count', () => {
    for (const a of [14.5, 20, 25].map((deg) => (deg * Math.PI) / 180))
      for (let N = 5; N < 400; N++) expect(nearestSpanCount(N + 1, a)).toBeGreaterThanOrEqual(nearestSpanCount(N, a));
  });

  it('halves go down, to the contact nearer the pitch circle: 18 teeth at 20° take 2, 19 take 3', () => {
    const a = (20 * Math.PI) / 180;
    expect([17, 18, 19, 27, 28].map((N) => nearestSpanCount(N, a))).toEqual([2, 2, 3, 3, 4]);
  });

  it('no neighbour touches nearer the pitch circle than the count taken, unless it is off the flank', () => {
    fc.assert(
      fc.property(wheels, (wheel) => {
        const tooth = toothOf(wheel);
        const k = spanCount(tooth);
        if (k === null) return !spanOnFlank(tooth, nearestSpanCount(tooth.N, tooth.a));
        // Jaws that touch at the pitch circle stand apart by the chord d sin a: a right triangle on the base circle.
        const off = (count: number): number => Math.abs(span(tooth, count) - tooth.N * tooth.m * Math.sin(tooth.a));
        const nearer = [k - 1, k + 1].filter((other) => other >= 1 && off(other) < off(k) - 1e-6);
        return spanOnFlank(tooth, k) && nearer.every((other) => !spanOnFlank(tooth, other));
      }),
    );
  });

  it('the tooth at its tip is as thick as the string unwound says', () => {
    // Walked: the flank's polar angle at the outside, by unwinding until the string's end is there.
    for (const wheel of [wheelOf(22, '8 DP'), wheelOf(60, '12 DP', 'full-20'), wheelOf(13, 'M3', 'module-1.25')]) {
      const tooth = toothOf(wheel);
      const [rb, ro] = [baseDiameter(tooth) / 2, outsideDiameter(tooth) / 2];
      const polar = (t: number): number => t - Math.atan(t);
      const at = (r: number): number => polar(Math.sqrt((r / rb) ** 2 - 1));
      const halfAngle = Math.PI / (2 * tooth.N) - (at(ro) - at((tooth.N * tooth.m) / 2));
      expect(tipThickness(tooth)).toBeCloseTo(2 * halfAngle * ro, 9);
    }
  });

  it('the same wheel by diametral pitch and by module 25.4/P is the same metal (wiring)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 120 }), fc.constantFrom(4, 5, 8, 10, 16), (N, P) => {
        const [inch, metric] = [wheelOf(N, `${P} DP`, 'full-20'), wheelOf(N, `module ${25.4 / P}`, 'full-20')];
        const [one, other] = [gearBlank(inch).figures, gearBlank(metric).figures];
        const keysOf = Object.keys(one) as (keyof typeof one)[];
        const same = keysOf.every((key) => Math.abs(lengthOf(one[key]) - lengthOf(other[key])) <= 1);
        return same && Math.abs(lengthOf(spanAnswer(inch).figures.span) - lengthOf(spanAnswer(metric).figures.span)) <= 1;
      }),
    );
  });

  it('outside, root, addendum, dedendum and whole depth add up', () => {
    fc.assert(
      fc.property(wheels, (wheel) => {
        const f = gearBlank(wheel).figures;
        const of = (key: keyof typeof f): number => lengthOf(f[key]);
        return (
          Math.abs(of('outsideDiameter') - of('rootDiameter') - 2 * of('wholeDepth')) <= 3 &&
          Math.abs(of('addendum') + of('clearance') - of('dedendum')) <= 2 &&
          Math.abs(of('circularPitch') * wheel.teeth - Math.PI * of('pitchDiameter')) <= wheel.teeth
        );
      }),
    );
  });
});

describe('printed values that we do not follow', () => {
  const inch = (teeth: number, pitch: string, system: string) => gearBlank(wheelOf(teeth, pitch, system)).figures;
  it('the 12 DP addendum printed as 0.833 is a slip of the decimal point', () => {
    expect(Math.abs(toInches(lengthOf(inch(11, '12 DP', 'full-20').addendum) as never) - 0.833)).toBeGreaterThan(0.7);
  });
  it('the 1/8 in circular pitch thickness printed as 0.6250 is ten times too big', () => {
    expect(Math.abs(toInches(lengthOf(inch(40, '1/8 CP', 'full-20').circularThickness) as never) - 0.625)).toBeGreaterThan(0.5);
  });
  it('the module 0.7 depth printed as 1.519 does not follow its own rule', () => {
    expect(Math.abs(toMm(lengthOf(inch(30, 'M0.7', 'module-7/6').wholeDepth) as never) - 1.519)).toBeGreaterThan(0.002);
  });
  it('the module 0.7 circular pitch printed as .0856 in is .0866', () => {
    expect(Math.abs(toInches(lengthOf(inch(30, 'M0.7', 'module-7/6').circularPitch) as never) - 0.0856)).toBeGreaterThan(0.0009);
  });
  it('48 teeth of module 6 are 28.8 cm, not the 28.0 of whole-number division', () => {
    expect(Math.abs(toMm(lengthOf(inch(48, 'M6', 'module-1.25').pitchDiameter) as never) - 280)).toBeGreaterThan(7);
  });
  it('a page that prints inv 14.5°, 25° and 30° as 0.0054, 0.0293 and 0.0524 is wrong in all three', () => {
    for (const [deg, printed] of [
      [14.5, 0.0054],
      [25, 0.0293],
      [30, 0.0524],
    ] as const)
      expect(inv((deg * Math.PI) / 180) - printed).toBeGreaterThan(0.0001);
  });
});
