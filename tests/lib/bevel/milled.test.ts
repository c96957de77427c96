import { describe, expect, it } from 'vitest';
import { bevelPair } from '../../../lib/bevel/bevel.sums.ts';
import { milledBevel } from '../../../lib/bevel/milled.sums.ts';
import { checkedCones } from '../../../lib/bevel/pair.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import type { Figure } from '../../../lib/figure/figure.ts';
import { degrees, toRadians } from '../../../lib/values/angle.ts';
import { inches, toInches } from '../../../lib/values/length.ts';
import { pitchOf, systemNamed } from '../../reference/gear-asks.ts';

const pair = { teeth: 24, mate: 36, pitch: pitchOf('8 DP'), system: systemNamed('full-14.5'), shafts: degrees(90), face: inches(0.75) };
const milled = (more: object = {}) =>
  milledBevel({ ...pair, bottoms: 'even clearance', cutterThickness: inches(0.15), convention: 'low end', headTurns: 40, ...more });

function size(figure: Figure): number {
  const { value } = figure;
  if ('length' in value) return toInches(value.length);
  if ('angle' in value) return toRadians(value.angle);
  return 'number' in value ? value.number : Number.NaN;
}

describe('a milled bevel', () => {
  it.each([
    ['even clearance', 0.15, 0.75],
    ['to the apex', 0.15, 0.75],
    ['even clearance', 0.13, 0.5],
    ['to the apex', 0.12, 0.9],
  ] as const)('%s, cutter %s, face %s: set over and rolled, the cut reaches half the space at both ends', (bottoms, thick, face) => {
    const { figures } = milled({ bottoms, cutterThickness: inches(thick), face: inches(face) });
    const cones = checkedCones({ ...pair, face: inches(face) });
    const [roll, over, TS] = [size(figures.roll), size(figures.setOver), size(figures.thickAtSmall)];
    const R = (24 / 8) * 0.5;
    const share = (cones.Ao - face) / cones.Ao;
    const half = Math.PI / 8 / 4;
    expect(thick / 2 - over + roll * R).toBeCloseTo(half, 6);
    expect(TS / 2 - over + roll * R * share).toBeCloseTo(half * share, 6);
    expect(size(figures.smallSpace)).toBeCloseTo(2 * half * share, 6);
  });

  it('rolls so many turns of the crank', () => {
    const { figures } = milled({ headTurns: 60 });
    expect(size(figures.rollTurns)).toBeCloseTo((size(figures.roll) * 60) / (2 * Math.PI), 5);
  });

  it('takes the cutter by the teeth of the back cone, not by its own', () => {
    expect(milled().figures.cutter.value).toEqual({ words: 'No. 4' });
    expect(bevelPair(pair).figures.backConeTeeth.value).toMatchObject({ unit: 'teeth', places: 2 });
  });

  it('refuses a cutter too thick for the small end, and one so thin that it would cut air', () => {
    expect(() => milled({ cutterThickness: inches(0.19) })).toThrow(DomainError);
    expect(() => milled({ cutterThickness: inches(0.02) })).toThrow(/thick/);
  });
});

describe('cones that cannot be', () => {
  it.each([
    [{ shafts: degrees(5) }, /10° to 170°/],
    [{ shafts: degrees(150), teeth: 20, mate: 60 }, /crown/],
    [{ face: inches(2) }, /cone distance/],
    [{ face: inches(0) }, /cone distance/],
    [{ mate: 3 }, /teeth/],
  ])('%o', (more, words) => {
    expect(() => bevelPair({ ...pair, ...more })).toThrow(words);
  });

  it('pitch angles add up to the angle between the shafts, whatever it is', () => {
    for (const shafts of [60, 75.5, 90, 120]) {
      const { figures } = bevelPair({ ...pair, shafts: degrees(shafts) });
      expect((size(figures.pitchAngle) + size(figures.matePitchAngle)) * (180 / Math.PI)).toBeCloseTo(shafts, 5);
    }
  });
});

describe('what is left for the file at the small end', () => {
  // Both forms drawn by roots of the involute's own equation, outside the project; the cutter sunk as the bottoms run.
  it.each([
    ['even clearance', 0.009344, 0.004569],
    ['to the apex', 0.010752, 0.005383],
  ])('%s: %s in at the tip, %s half way up', (bottoms, tip, half) => {
    const rows = milled({ bottoms }).tables?.[0]?.rows ?? [];
    const left = rows.map(([, cell]) => (typeof cell === 'object' && 'length' in cell ? toInches(cell.length) : Number.NaN));
    expect(left[0]).toBeCloseTo(tip, 6);
    expect(left[1]).toBeCloseTo(half, 6);
  });
});
