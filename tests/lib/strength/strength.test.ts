import { describe, expect, it } from 'vitest';
import { lewisFactor } from '../../../lib/strength/lewis.formulas.ts';
import { toothStrength } from '../../../lib/strength/strength.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { pitchOf, systemNamed } from '../../reference/gear-asks.ts';

const asked = {
  teeth: 24,
  pitch: pitchOf('12 DP'),
  system: systemNamed('full-14.5'),
  face: inches(0.75),
  material: 'steel',
  stress: 27_500,
  speedRpm: 1800,
} as const;
const number = (value: object): number => ('number' in value ? Number(value.number) : Number.NaN);

describe('what a tooth bears', () => {
  it('the factor grows with the count, and ends at the rack', () => {
    for (const system of ['14.5', '20', '20 stub'] as const) {
      const run = Array.from({ length: 400 }, (_, i) => lewisFactor(system, i + 12));
      expect(run.every((Y, i) => i === 0 || Y >= (run[i - 1] ?? 0))).toBe(true);
      expect(lewisFactor(system, 100_000)).toBeCloseTo({ '14.5': 0.39, '20': 0.485, '20 stub': 0.55 }[system], 3);
    }
    expect(() => lewisFactor('20', 9)).toThrow(RangeError);
  });

  it('a module wheel bears the same as its inch twin', () => {
    const metric = toothStrength({ ...asked, pitch: pitchOf('module 2.1166666') });
    expect(number(metric.figures.load.value)).toBeCloseTo(number(toothStrength(asked).figures.load.value), 3);
  });

  it('the metal stands in where no stress is typed; unknown metal is refused', () => {
    expect(number(toothStrength({ ...asked, stress: null }).figures.standing.value)).toBeCloseTo((20_000 * 0.75 * 0.302) / 12, 6);
    expect(() => toothStrength({ ...asked, stress: null, material: 'unknown' })).toThrow(/one of them/);
  });

  it.each([
    [{ system: { ...asked.system, angle: degrees(25) } }, /tabled/],
    [{ teeth: 8 }, /begins at 10/],
    [{ face: inches(0) }, /face/],
  ])('refuses %o', (more, words) => {
    expect(() => toothStrength({ ...asked, ...more })).toThrow(words);
  });

  it('a stub tooth at 20° has its own table, and a fast one is doubted', () => {
    const stub = toothStrength({ ...asked, system: systemNamed('stub-20') });
    expect(number(stub.figures.factor.value)).toBe(0.415);
    expect(toothStrength({ ...asked, speedRpm: 5000 }).cautions[0]?.name).toBe('Fast');
  });
});
