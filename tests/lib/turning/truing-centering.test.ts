import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { centralMove, centralProof } from '../../../lib/turning/centering.sums.ts';
import { blankRunOutLimit, faceRunOutLimit, outsideLimits, spanLimits, standing } from '../../../lib/turning/limits.ts';
import { trialNick } from '../../../lib/turning/trial-nick.ts';
import { chuckRunOut, fourJawTruing } from '../../../lib/turning/truing.sums.ts';
import { inches, type Length, toInches } from '../../../lib/values/length.ts';

const size = (value: unknown): number => toInches((value as { length: Length }).length);

/** What an indicator reads on a true circle of radius R, its middle at (x, y), seen along the direction at. Plus: nearer. */
function indicator(R: number, x: number, y: number, at: number): number {
  const along = x * Math.cos(at) + y * Math.sin(at);
  const across = -x * Math.sin(at) + y * Math.cos(at);
  return along + Math.sqrt(R * R - across * across) - R;
}

const readings = (R: number, x: number, y: number) =>
  [0, 1, 2, 3].map((jaw) => inches(indicator(R, x, y, (jaw * Math.PI) / 2))) as unknown as readonly [Length, Length, Length, Length];

describe('truing in a four-jaw', () => {
  it('finds the offset of a circle placed off centre, and the full reading round it', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.05, max: 0.05, noNaN: true }), fc.double({ min: -0.05, max: 0.05, noNaN: true }), (x, y) => {
        const { figures } = fourJawTruing({ jaws: readings(2, x, y) });
        expect(size(figures.moveOne.value)).toBeCloseTo(Math.abs(x), 6);
        expect(size(figures.moveTwo.value)).toBeCloseTo(Math.abs(y), 6);
        const round = Array.from({ length: 360 }, (_, i) => indicator(2, x, y, (i * Math.PI) / 180));
        expect(size(figures.runOut.value)).toBeCloseTo(Math.max(...round) - Math.min(...round), 4);
      }),
    );
  });

  it('moves in pairs end under the limit, and the jaw told to be tightened is the near one', () => {
    let [x, y] = [0.04, -0.03];
    expect(fourJawTruing({ jaws: readings(2, x, y) }).figures.moveOne.note).toContain('tighten jaw 1');
    expect(fourJawTruing({ jaws: readings(2, x, y) }).figures.moveTwo.note).toContain('tighten jaw 4');
    let goes = 0;
    while (!fourJawTruing({ jaws: readings(2, x, y) }).says?.startsWith('True') && goes < 20) {
      const { figures } = fourJawTruing({ jaws: readings(2, x, y) });
      // A hand makes only nine tenths of the move that it means to make.
      x -= 0.9 * Math.sign(x) * size(figures.moveOne.value);
      y -= 0.9 * Math.sign(y) * size(figures.moveTwo.value);
      goes += 1;
    }
    expect(goes).toBe(2);
    expect(2 * Math.hypot(x, y)).toBeLessThanOrEqual(0.001 + 1e-9);
  });

  it('an unmeasured chuck counts as 0.005 and says that it is a guess', () => {
    const figure = chuckRunOut({ jaws: 3, runOut: null });
    expect(size(figure.value)).toBe(0.005);
    expect(figure.note).toContain('guess');
  });

  it('refuses a jaw screw without lead', () => {
    expect(() => fourJawTruing({ jaws: readings(2, 0, 0), screwLead: inches(0) })).toThrow(DomainError);
  });
});

describe('cutter central', () => {
  it('after the move the cutter straddles the axis: both sides stand alike', () => {
    const [D, w, paper] = [2.996, 0.31, 0.002];
    const move = size(centralMove({ blankDiameter: inches(D), cutterWidth: inches(w), paper: inches(paper) }).figures.travel.value);
    const nearSide = -D / 2 - paper + move;
    expect(nearSide).toBeCloseTo(w / 2, 9);
    expect(nearSide - w).toBeCloseTo(-w / 2, 9);
  });

  it('a gash e beside the axis, turned end for end, stands 2 e from the first and leans e/R', () => {
    const [e, R] = [0.003, 1.375];
    const first = Math.asin(e / R);
    const turned = -first;
    const shift = (Math.sin(first) - Math.sin(turned)) * R;
    const { figures, says } = centralProof({ shift: inches(shift), pitchRadius: inches(R) });
    expect(size(figures.error.value)).toBeCloseTo(e, 7);
    expect((figures.lean.value as { angle: number }).angle / 3_600_000).toBeCloseTo((first * 180) / Math.PI, 5);
    expect(says).toContain('Not central');
    expect(centralProof({ shift: inches(0.002), pitchRadius: inches(R) }).says).toContain('Central within');
  });

  it('refuses what cannot be', () => {
    expect(() => centralMove({ blankDiameter: inches(0), cutterWidth: inches(1) })).toThrow(DomainError);
    expect(() => centralProof({ shift: inches(2), pitchRadius: inches(1) })).toThrow(DomainError);
  });
});

describe('nick and limits', () => {
  it('nicks N and one more, and the last falls in the first', () => {
    const { figures, says } = trialNick(22);
    expect(figures.nicks.value).toEqual({ count: 23 });
    expect(size(figures.depth.value)).toBe(0.002);
    expect(says).toContain('nick 23 falls in nick 1');
    expect(() => trialNick(0)).toThrow(DomainError);
  });

  it('limits are one-sided, and a size outside is told as metal left or gone', () => {
    const outside = outsideLimits(inches(3), 1 / 8);
    expect([toInches(outside.low), toInches(outside.high)]).toEqual([2.9975, 3]);
    expect(standing(inches(3.0001), outside)).toBe('metal left');
    expect(standing(inches(2.9974), outside)).toBe('metal gone');
    expect(standing(inches(2.9975), outside)).toBe('within limits');
    expect(toInches(spanLimits(inches(0.585)).low)).toBeCloseTo(0.584, 9);
    expect([toInches(blankRunOutLimit(inches(4))), toInches(blankRunOutLimit(inches(4.0001)))]).toEqual([0.001, 0.002]);
    expect(toInches(faceRunOutLimit(inches(3)))).toBeCloseTo(0.003, 9);
  });
});
