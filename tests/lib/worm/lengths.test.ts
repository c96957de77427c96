import { describe, expect, it } from 'vitest';
import { bearingFace, wormLength } from '../../../lib/worm/worm.formulas.ts';

/** By hand: 4.5² − 4.1667² is 2.88886, of which the root is 1.69967; 2.3333² − 2² is 1.44429, of which the root is 1.20179. */
describe('how long a worm and how wide a face', () => {
  it('52 teeth of 6 DP, worm of 2 in', () => {
    expect(wormLength(9, 52 / 6, 1 / 6)).toBeCloseTo(3.3993, 4);
    expect(bearingFace(2 + 2 / 6, 2)).toBeCloseTo(1.2019, 4);
  });

  it('the ends of the threads lie on the throat circle, the edge of the face on the worm’s outside', () => {
    for (const [D, A, d] of [
      [90, 3, 44],
      [10, 1 / 6, 2],
    ] as const) {
      expect(Math.hypot(wormLength(D + 2 * A, D, A) / 2, D / 2 - A)).toBeCloseTo(D / 2 + A, 9);
      expect(Math.hypot(bearingFace(d + 2 * A, d) / 2, d / 2)).toBeCloseTo(d / 2 + A, 9);
    }
  });
});
