import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../lib/figure/figure.ts';
import { degrees, toDegrees } from '../../../lib/values/angle.ts';
import { inches, toInches, toMm } from '../../../lib/values/length.ts';
import { crossedPair } from '../../../lib/worm/crossed.sums.ts';
import { wormAndWheel } from '../../../lib/worm/worm.sums.ts';
import { pitchOf, systemNamed } from '../../reference/gear-asks.ts';

const asked = {
  teeth: 60,
  starts: 1,
  pitch: pitchOf('6 DP'),
  system: systemNamed('full-14.5'),
  wormPitchDiameter: inches(2),
  hand: 'right',
  embrace: degrees(60),
  friction: 0.05,
} as const;
const lengthIn = ({ value }: Figure): number => ('length' in value ? toInches(value.length) : Number.NaN);
const lengthMm = ({ value }: Figure): number => ('length' in value ? toMm(value.length) : Number.NaN);
const angle = ({ value }: Figure): number => ('angle' in value ? toDegrees(value.angle) : Number.NaN);

describe('worm and wheel', () => {
  it('worm and throat close on the centre distance: outside of the one, root clearance of the other', () => {
    const { figures } = wormAndWheel(asked);
    const clearance = 0.157 / 6;
    expect(lengthIn(figures.wormOutside) / 2 + lengthIn(figures.wheelPitchDiameter) / 2 - 1.157 / 6).toBeCloseTo(
      lengthIn(figures.centre) - clearance,
      6,
    );
    expect(lengthIn(figures.throatDiameter) / 2 + lengthIn(figures.throatRadius)).toBeCloseTo(lengthIn(figures.centre), 6);
  });

  it('says when the wheel can drive the worm, and when it cannot', () => {
    expect(wormAndWheel({ ...asked, friction: 0.02 }).cautions[0]?.name).toBe('Does not hold');
    expect(wormAndWheel({ ...asked, friction: 0.12 }).cautions[0]?.name).toBe('Holds, but');
  });

  it.each([
    [{ starts: 0 }, /starts/],
    [{ starts: 12, wormPitchDiameter: inches(0.6) }, /45°|Above/],
    [{ wormPitchDiameter: inches(0.3) }, /core/],
    [{ embrace: degrees(170) }, /10° to 120°/],
  ])('refuses %o', (more, words) => {
    expect(() => wormAndWheel({ ...asked, ...more })).toThrow(words);
  });
});

describe('crossed helical wheels', () => {
  const crossed = {
    teeth: 24,
    mate: 24,
    pitch: pitchOf('module 3'),
    system: systemNamed('full-20'),
    shafts: degrees(90),
    helix: degrees(45),
    hand: 'right',
  } as const;

  it('equal wheels at 90° and 45°', () => {
    const { figures } = crossedPair(crossed);
    expect(lengthMm(figures.centre)).toBeCloseTo(72 * Math.SQRT2, 5);
    expect(angle(figures.mateHelix)).toBe(45);
    expect(figures.mateHelix.note).toContain('right-hand; the first wheel is right-hand');
  });

  it('the mate has the other hand when the helix is greater than the angle between the shafts', () => {
    expect(crossedPair({ ...crossed, shafts: degrees(30), helix: degrees(50) }).figures.mateHelix.note).toContain('left-hand');
  });

  it('a straight mate has no lead, and says so', () => {
    expect(crossedPair({ ...crossed, shafts: degrees(30), helix: degrees(30) }).figures.lead2.value).toEqual({
      words: 'none: its teeth are straight',
    });
  });

  it('an inch pair is the same pair in millimetres', () => {
    const inch = crossedPair({ ...crossed, pitch: pitchOf('8 DP') });
    const metric = crossedPair({ ...crossed, pitch: pitchOf('module 3.175') });
    expect(lengthMm(inch.figures.centre)).toBeCloseTo(lengthMm(metric.figures.centre), 4);
  });

  it('refuses shafts beyond 90° and helices beyond sense', () => {
    expect(() => crossedPair({ ...crossed, shafts: degrees(120) })).toThrow(/up to 90°/);
    expect(() => crossedPair({ ...crossed, helix: degrees(88) })).toThrow(/87°/);
  });
});
