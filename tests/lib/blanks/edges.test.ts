import { describe, expect, it } from 'vitest';
import { metalCheck } from '../../../lib/blanks/metal.ts';
import { ringAndHub } from '../../../lib/blanks/ring-and-hub.sums.ts';
import { isOnlyJust } from '../../../lib/blanks/spare-checks.ts';
import { judgeSpare } from '../../../lib/blanks/spare-test.ts';
import { contactRatio } from '../../../lib/gears/contact-ratio.formulas.ts';
import type { Bore } from '../../../lib/gears/gear.ts';
import { inches, nanometres, toInches } from '../../../lib/values/length.ts';
import { gear, spare } from './wheels.ts';

const plain = (size: number): Bore => ({ form: 'plain', diameter: inches(size) });
const wallOf = (bore: Bore) =>
  ringAndHub({ wanted: gear(50, 8, { bore }), spare: spare(32, 8, {}, { bore }), ring: 'steel' }).checks.find(
    ({ about }) => about === 'wall',
  )?.result;

describe('the edges of what is judged', () => {
  it('only just is under a fifth of the whole depth: a fifth itself is clean', () => {
    expect(isOnlyJust(nanometres(20_000), nanometres(100_000))).toBe(false);
    expect(isOnlyJust(nanometres(19_999), nanometres(100_000))).toBe(true);
  });

  it('a recess that ends where the ring begins is not in its way; a hair further it is', () => {
    const ring = { inner: inches(2), outer: inches(3) };
    const recessTo = (outer: number) => ({
      known: true as const,
      recesses: [{ side: 'both' as const, inner: inches(1.5), outer: inches(outer) }],
      openings: [],
    });
    expect(metalCheck(recessTo(2), ring, 'in').result).toBe('yes');
    expect(metalCheck(recessTo(2.0001), ring, 'in').result).toBe('no');
  });

  // 22 teeth, 8 DP: root 2.4608; 2.4608/2 − 1.6/2 = 0.4304. The wanted bore of 1.000 alone would leave 0.7304.
  it('the wall is counted over the larger of the two bores', () => {
    const wanted = gear(22, 8, { bore: plain(1) });
    const { wall } = judgeSpare({ wanted, spare: spare(31, 8, {}, { bore: plain(1.6) }) });
    expect(toInches(wall?.wall ?? inches(0))).toBeCloseTo(0.4304, 4);
  });

  // 31 teeth, 8 DP: root 3.5858; less twice a case of 0.060 it is 3.4658, in sixteenths 3.4375. Once 0.060 would give 3.500.
  it('a case-hardened hub lies under the case on both sides', () => {
    const hard = spare(31, 8, { hardness: 'case hard', caseDepth: inches(0.06) });
    expect(toInches(ringAndHub({ wanted: gear(50), spare: hard, ring: 'steel' }).hub)).toBe(3.4375);
  });

  // Hub 3.6875, bore 2.900: 0.3938 round the bore, 1.46 whole depths. Keyway ½ by ⅛: the corner reaches √(1.575² + 0.25²) = 1.5947, 0.2490 left.
  it('the hub’s wall is counted from the corner of its keyway', () => {
    expect(wallOf(plain(2.9))).toBe('yes');
    expect(wallOf({ form: 'keyed', diameter: inches(2.9), keyWidth: inches(0.5), keyDepth: inches(0.125) })).toBe('no');
  });

  // The line of action stepped off in two million points, cut by both outsides and by both base circles' tangent points: 1.2842.
  it('a small pinion cuts the contact of a big mate short where its involute ends', () => {
    const a = (14.5 * Math.PI) / 180;
    const radii = (N: number) => ({ base: (N / 2) * Math.cos(a), pitch: N / 2, outside: N / 2 + 1 });
    expect(contactRatio(radii(12), radii(60), a, 1)).toBeCloseTo(1.2842, 3);
    expect(contactRatio(radii(60), radii(12), a, 1)).toBeCloseTo(1.2842, 3);
  });
});
