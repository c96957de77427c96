import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Answer } from '../../../lib/figure/figure.ts';
import { splinedHub } from '../../../lib/splines/hub.sums.ts';
import { involuteSpline } from '../../../lib/splines/involute-spline.sums.ts';
import type { NamedSpline } from '../../../lib/splines/involute-spline.ts';
import { millSplines } from '../../../lib/splines/mill.sums.ts';
import { chosenInch, chosenMetric } from '../../../lib/splines/straight-choice.ts';
import { inches, type Length, millimetres } from '../../../lib/values/length.ts';
import { refusal } from '../refusal.ts';

const PLATE = { kind: 'plate', id: 1, name: 'Plate', here: true, sides: [[15, 16, 17, 18, 19, 20]] } as const;
const HEAD = { turns: 40, name: '40 to 1' };
const bore = (more: object = {}) => ({ splines: 6, outside: inches(1.251), inside: inches(1.063), width: inches(0.313), ...more });
const mill = (more: object = {}) =>
  millSplines({
    bore: bore(),
    locates: 'outside and sides',
    clearances: { outside: null, sides: null, bottom: null },
    cutterWidth: inches(0.1875),
    head: HEAD,
    plates: [PLATE],
    unit: 'in',
    ...more,
  });

describe('what cannot be is refused with what was given, the limit and what to try', () => {
  it.each([
    ['two splines', () => mill({ bore: bore({ splines: 2 }) }), 'splines'],
    ['grooves inside the tops', () => mill({ bore: bore({ outside: inches(1) }) }), 'inside'],
    ['keys that meet', () => mill({ bore: bore({ width: inches(0.54) }) }), 'width'],
    ['a width of nothing', () => mill({ bore: bore({ width: inches(0) }) }), 'width'],
    ['room that eats the keys', () => mill({ clearances: { outside: null, sides: inches(0.4), bottom: null } }), 'sides'],
    ['a shaft turned under its bottoms', () => mill({ turned: inches(1.05) }), 'turned'],
    ['a cutter wider than the bottom', () => mill({ cutterWidth: inches(0.24) }), 'cutter'],
    ['a cutter too narrow', () => mill({ cutterWidth: inches(0.02) }), 'cutter'],
    ['a circle that does not turn half a space', () => mill({ circle: 16 }), 'circle'],
    ['plates that cannot', () => mill({ plates: [{ ...PLATE, sides: [[16, 17]] }] }), 'plates'],
    ['plates that are lent out', () => mill({ plates: [{ ...PLATE, here: false }] }), 'plates'],
    ['no plates', () => mill({ plates: [] }), 'plates'],
    ['a fit that four splines lack', () => chosenInch(4, 'slides under load', inches(1)), 'standard'],
    ['five inch splines', () => chosenInch(5, 'permanent', inches(1)), 'splines'],
    ['a metric size that is none', () => chosenMetric(6, 'medium', millimetres(27)), 'outside'],
    [
      'a hub bored over its grooves',
      () => splinedHub({ bore: bore(), bored: inches(1.3), head: HEAD, plates: [PLATE], unit: 'in' }),
      'inside',
    ],
    ['three teeth', () => involuteSpline({ named: { standard: 'ANSI', root: 'flat', teeth: 3, P: 8 } }), 'teeth'],
    ['a shift beyond reach', () => involuteSpline({ named: { standard: 'DIN', teeth: 10, m: 2, reference: 40 } }), 'reference'],
    [
      'teeth thinned away',
      () => involuteSpline({ named: { standard: 'ISO', root: 'flat', teeth: 20, m: 1 }, thinner: millimetres(0.5) }),
      'thinner',
    ],
    [
      'a pin that falls through',
      () => involuteSpline({ named: { standard: 'ISO', root: 'flat', teeth: 20, m: 1 }, pinShaft: millimetres(0.4) }),
      'pinShaft',
    ],
    [
      'a pin too big for the hub',
      () => involuteSpline({ named: { standard: 'ISO', root: 'flat', teeth: 20, m: 1 }, pinHub: millimetres(4) }),
      'pinHub',
    ],
  ] as const)('%s', (_, work, about) => {
    const error = refusal(work);
    expect([error.given, error.limit, error.tryThis].every((part) => part.length > 8)).toBe(true);
    expect(error.about).toContain(about);
    expect(error.message).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('locating at the bottom with a plain cutter is warned of', () => {
    const names = (locates: string): readonly string[] => mill({ locates }).cautions.map(({ name }) => name);
    expect(names('bottom')).toContain('Located at the bottom');
    expect(names('sides')).not.toContain('Located at the bottom');
  });
});

const finite = ({ figures, cautions, says }: Answer): boolean =>
  Object.values(figures).every(({ value }) => !('length' in value) || Number.isSafeInteger(value.length)) &&
  !/NaN|undefined|Infinity/.test(JSON.stringify([cautions, says]));

describe('involute splines, whatever is asked', () => {
  const size = fc.double({ min: 0.1, max: 60, noNaN: true });
  const named: fc.Arbitrary<NamedSpline> = fc
    .record({ kind: fc.integer({ min: 0, max: 3 }), teeth: fc.integer({ min: 1, max: 220 }), x: size, y: size })
    .map(({ kind, teeth, x, y }) => {
      if (kind === 0) return { standard: 'ANSI', root: 'fillet', teeth, P: x };
      if (kind === 1) return { standard: 'ISO', root: 'flat', teeth, m: x / 6 };
      if (kind === 2) return { standard: 'DIN', teeth, m: x / 10, reference: (x / 10) * (teeth + y / 30) };
      return { standard: 'old', depth: 'deep', teeth, outside: x / 10 };
    });
  it('gives whole figures or a refusal', () => {
    const pin = fc.option(fc.double({ min: 0.0001, max: 1, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(named, pin, pin, (spline, a, b) => {
        const pins: { pinShaft?: Length; pinHub?: Length } = {
          ...(a === undefined ? {} : { pinShaft: inches(a) }),
          ...(b === undefined ? {} : { pinHub: inches(b) }),
        };
        try {
          expect(finite(involuteSpline({ named: spline, ...pins }))).toBe(true);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
        }
      }),
      { numRuns: 400 },
    );
  });
});
