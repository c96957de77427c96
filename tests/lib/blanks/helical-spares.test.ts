import { describe, expect, it } from 'vitest';
import { testStock } from '../../../lib/blanks/from-stock.ts';
import { testSpare } from '../../../lib/blanks/spare-test.sums.ts';
import { judgeSpare } from '../../../lib/blanks/spare-test.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, toInches } from '../../../lib/values/length.ts';
import { gear, spare } from './wheels.ts';

const helix = { angle: degrees(30), hand: 'right' } as const;

describe('the spare test with a helix on either side', () => {
  it('works out the roots of a helical spare where they truly lie', () => {
    // derived: 33 teeth, 8 DP, 30°, deepest 14½°: 33 ÷ 8 ÷ cos 30° = 4.76314, less 2 × 1.157/8 = 4.47389; straight it would be 3.83575.
    const judged = judgeSpare({ wanted: gear(24), spare: spare(33, 8, {}, { helix }) });
    expect(toInches(judged.root.root)).toBeCloseTo(4.47389, 4);
    // 35 ÷ 8 would be 4.375 straight: 4.76314 + 0.25.
    expect(toInches(judged.oldOutside)).toBeCloseTo(5.01314, 4);
  });

  it('wants of a spare and of stock the true outside of a helical wheel', () => {
    // derived: 24 ÷ 8 ÷ cos 30° + 0.25 = 3.71410; the roots of a straight 31 lie at (31 − 2.314) ÷ 8 = 3.58575, half of the difference under it.
    const wanted = gear(24, 8, { helix });
    const judged = judgeSpare({ wanted, spare: spare(31) });
    expect(toInches(judged.sizes.outside)).toBeCloseTo(3.7141, 4);
    expect(judged.verdict).toBe('old gaps stay');
    expect(toInches(judged.room.gaps)).toBeCloseTo(0.06418, 4);
    const stock = { id: 1, name: 'bar', material: 'steel', diameter: inches(3.5), length: inches(4), hole: inches(0) } as const;
    expect(testStock({ wanted, stock }).verdict).toBe('refused');
    expect(testStock({ wanted: gear(24), stock }).verdict).toBe('serves');
  });

  it('gives no rule of thumb for straight teeth where either leans', () => {
    const thumbs = (wanted: typeof helix | null, old: typeof helix | null) =>
      testSpare({ wanted: gear(22, 8, { helix: wanted }), spare: spare(34, 8, {}, { helix: old }) }).answer.cautions.filter(
        ({ name }) => name === 'Thumb',
      ).length;
    expect([thumbs(null, null), thumbs(helix, null), thumbs(null, helix), thumbs(helix, helix)]).toEqual([1, 0, 0, 0]);
  });

  it('says of an odd helical count how the reading must have been taken', () => {
    const reading = { by: 'across roots', across: inches(3.8) } as const;
    const says = (teeth: number, of: object, by: object = { reading }) =>
      judgeSpare({ wanted: gear(22), spare: spare(teeth, 8, by, of) }).root.cautions.map(({ name }) => name);
    expect(says(33, { helix })).toContain('Odd and helical');
    expect(says(33, {})).not.toContain('Odd and helical');
    expect(says(32, { helix })).not.toContain('Odd and helical');
    expect(says(33, { helix }, {})).not.toContain('Odd and helical');
  });
});
