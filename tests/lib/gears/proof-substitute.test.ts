import { describe, expect, it } from 'vitest';
import { substituteSpace } from '../../../lib/gears/profile-cutter.formulas.ts';
import { formCutSpace } from '../../../lib/gears/profile-form.formulas.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';
import { drawnFlank, reachAt } from '../cutters/drawn-space.ts';

const tooth = (N: number, degrees = 14.5): Tooth => ({ N, m: 1, a: (degrees * Math.PI) / 180, A: 1, B: 1.157, unit: 'in' });
const STEPS = { fillet: 40, flank: 120 };

/** Half width of the drawn space at a height above the wheel's pitch line, by straight lines between points. */
function widthAt(t: Tooth, N2: number, height: number): number {
  const { root, fillet, flank } = substituteSpace(t, N2, STEPS);
  const points = [...root, ...fillet, ...flank].map(([R, turn]) => [R * Math.sin(turn), R * Math.cos(turn) - t.N / 2] as const);
  const at = points.findIndex(([x, y]) => x > 0.05 && y >= height);
  const [upper, lower] = [points[at] ?? [0, 0], points[at - 1] ?? [0, 0]];
  return lower[0] + ((upper[0] - lower[0]) * (height - lower[1])) / (upper[1] - lower[1]);
}

describe('a wheel drawn with the space of the cutter that mills it', () => {
  it.each([
    [35, 26],
    [35, 55],
    [14, 12],
    [60, 35],
  ])('%i teeth with the form for %i: the flank is the other count’s, drawn by its own route', (N, N2) => {
    const drawn = drawnFlank({ N: N2, m: 1, degrees: 14.5 });
    for (const height of [-0.2, 0, 0.3, 0.6, 0.85])
      expect(Math.abs(widthAt(tooth(N), N2, height) - reachAt(drawn, { N: N2, m: 1, degrees: 14.5 }, height))).toBeLessThan(0.0005);
  });

  it('ends at the wheel’s own outside, and reaches its own root', () => {
    for (const N2 of [26, 35, 55]) {
      const { root, flank } = substituteSpace(tooth(35), N2, STEPS);
      expect(flank.at(-1)?.[0]).toBeCloseTo(18.5, 9);
      expect(root[0]?.[0]).toBeCloseTo(17.5 - 1.157, 9);
    }
  });

  it('with its own count is its own space', () => {
    const [own, same] = [formCutSpace(tooth(35), undefined, STEPS), substituteSpace(tooth(35), 35, STEPS)];
    expect(same.formRadius).toBeCloseTo(own.formRadius, 2);
    expect(same.flank.at(-1)?.[1]).toBeCloseTo(own.flank.at(-1)?.[1] ?? Number.NaN, 4);
  });
});
