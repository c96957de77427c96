import { describe, expect, it } from 'vitest';
import { printPitch } from '../../../lib/gears/pitch.ts';
import { nearMisses } from '../../../lib/identify/near-misses.ts';
import { PITCHES } from '../../../lib/identify/pitches.ts';

const named = nearMisses().map(({ finer, coarser, apart }) => ({
  pair: [printPitch(finer.pitch), printPitch(coarser.pitch)].sort().join(' | '),
  apart: apart * 100,
}));
const apart = (one: string, other: string): number | undefined => named.find(({ pair }) => pair === [one, other].sort().join(' | '))?.apart;

describe('pitches that are taken for each other', () => {
  // By hand from 25.4/P and 25.4 p/π: 2.54 against 2.5 and 2.52657; 4.23333 against 4.25; 3.175 against 3.25 (2.36 percent: no near miss).
  it.each([
    ['10 DP', 'module 2.5', 1.6],
    ['5/16 in CP', '10 DP', 0.53],
    ['5/16 in CP', 'module 2.5', 1.06],
    ['6 DP', 'module 4.25', 0.39],
  ])('%s and %s', (one, other, percent) => {
    expect(apart(one, other)).toBeCloseTo(percent, 1);
  });

  it('leaves out what is further apart', () => {
    expect(apart('8 DP', 'module 3.25')).toBeUndefined();
  });

  it('has every pair once, as trying all against all finds them', () => {
    const all = PITCHES.flatMap((one, i) =>
      PITCHES.slice(i + 1).filter((other) => Math.max(one.m, other.m) / Math.min(one.m, other.m) <= 1.02 + 1e-12),
    );
    expect(named).toHaveLength(all.length);
    expect(new Set(named.map(({ pair }) => pair)).size).toBe(named.length);
    expect(named.length).toBeGreaterThan(30);
  });

  it('has each pitch of a series once', () => {
    expect(new Set(PITCHES.map(({ pitch }) => printPitch(pitch))).size).toBe(PITCHES.length);
  });
});
