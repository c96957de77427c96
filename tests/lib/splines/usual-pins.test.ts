import { describe, expect, it } from 'vitest';
import { involuteSpline } from '../../../lib/splines/involute-spline.sums.ts';
import { checkedSpline, type NamedSpline, unitOfSpline } from '../../../lib/splines/involute-spline.ts';
import { pinTouching } from '../../../lib/splines/pins.formulas.ts';
import { inches, inUnit } from '../../../lib/values/length.ts';

const length = (named: NamedSpline, key: string): number => {
  const value = involuteSpline({ named }).figures[key]?.value;
  return value && 'length' in value ? inUnit(value.length, unitOfSpline(named)) : Number.NaN;
};

const NAMED: readonly NamedSpline[] = [4, 5, 6, 7, 9, 10, 16, 23, 36, 60, 200].flatMap((teeth): NamedSpline[] => [
  { standard: 'ANSI', root: 'flat', teeth, P: 16 },
  { standard: 'ANSI', root: 'fillet', teeth, P: 8 },
  { standard: 'ISO', root: 'flat', teeth, m: 2 },
  { standard: 'DIN', teeth, m: 2, reference: 2 * teeth + 2.8 },
  { standard: 'old', teeth, depth: 'deep', outside: 1.5 },
  { standard: 'old', teeth, depth: 'shallow', outside: 0.75 },
]);

describe('pins that nobody has named', () => {
  it('go in and touch the flank that is there, on shaft and hub of every standard', () => {
    for (const named of NAMED) {
      const spline = checkedSpline(named);
      for (const [part, key] of [
        ['shaft', 'pinContactShaft'],
        ['hub', 'pinContactHub'],
      ] as const) {
        const [touches, { inside, outside }] = [length(named, key), spline[part]];
        expect(touches, `${part} of ${JSON.stringify(named)}`).toBeGreaterThanOrEqual(inside * (1 - 2e-6));
        expect(touches, `${part} of ${JSON.stringify(named)}`).toBeLessThanOrEqual(outside * (1 + 2e-6));
      }
      expect(involuteSpline({ named }).cautions.some(({ name }) => name === 'Off the flank')).toBe(false);
    }
  });

  it('an old American six, whose hub has no printed pin, is measured with one that touches half way down', () => {
    const six: NamedSpline = { standard: 'old', teeth: 6, depth: 'intermediate', outside: 4.125 };
    expect(length(six, 'pinContactHub')).toBeCloseTo((4.125 + 4.125 * 0.915) / 2, 5);
    expect(involuteSpline({ named: six }).figures['pinHub']?.source).toContain('half way down');
    expect(length(six, 'pinShaft')).toBeCloseTo(4.125 * 0.3660254, 6);
  });

  it('where the usual hub pin goes in it stays the usual one', () => {
    expect(length({ standard: 'ANSI', root: 'flat', teeth: 8, P: 16 }, 'pinHub')).toBeCloseTo(1.728 / 16, 7);
    expect(length({ standard: 'ANSI', root: 'flat', teeth: 7, P: 16 }, 'pinHub')).toBeLessThan(1.728 / 16);
  });

  it('a pin that does not go in is answered with one that does', () => {
    const named: NamedSpline = { standard: 'ANSI', root: 'flat', teeth: 6, P: 16 };
    try {
      involuteSpline({ named, pinHub: inches(1.728 / 16) });
      expect.unreachable();
    } catch (error) {
      const { tryThis = '' } = error as { tryThis?: string };
      const better = Number(/about ([\d.]+) in/.exec(tryThis)?.[1]);
      expect(Number.isFinite(better)).toBe(true);
      expect(involuteSpline({ named, pinHub: inches(better) }).figures['betweenPins']).toBeDefined();
    }
  });

  it('none touches inside the base circle, nor where a hub’s space is too wide for one', () => {
    const spline = { N: 20, m: 1, a: Math.PI / 6, t: Math.PI / 2 };
    expect(() => pinTouching('shaft', spline, 17.32)).toThrow('inside the base circle');
    expect(pinTouching('shaft', spline, 17.3206)).toBeGreaterThan(0);
    expect(() => pinTouching('hub', { ...spline, N: 4 }, 3.47)).toThrow('no pin touches');
  });
});
