import { describe, expect, it } from 'vitest';
import { identify } from '../../../lib/identify/identify.ts';
import type { MeasuredWheel } from '../../../lib/identify/readings.ts';
import { inches } from '../../../lib/values/length.ts';
import { DP, MODULE, readOf } from './made.ts';

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

describe('wheels of one set', () => {
  it('make the answer surer together than one does', () => {
    const wheels = [DP(10, 40), DP(10, 28), DP(10, 63)].map((teeth) => readOf(teeth, {}, 0, 0.004));
    const [one, three] = [identify(wheels.slice(0, 1)), identify(wheels)];
    expect(three.pitches[0]?.known.pitch).toEqual({ kind: 'DP', size: [10, 1] });
    expect(three.pitches[0]?.chance).toBeGreaterThan(one.pitches[0]?.chance ?? 1);
  });

  it('show the stranger, which does not spoil the answer for the rest', () => {
    const wheels = [DP(8, 22), DP(8, 35), MODULE(3, 40), DP(8, 46)].map((teeth) =>
      readOf(teeth, { spans: teeth.deg === 20 ? [5, 6] : [Math.ceil(teeth.N * 0.0806), Math.ceil(teeth.N * 0.0806) + 1] }, 0.002),
    );
    const { strangers, pitches } = identify(wheels);
    expect(strangers.map((chance) => chance > 0.5)).toEqual([false, false, true, false]);
    expect(pitches[0]?.known.pitch).toEqual({ kind: 'DP', size: [8, 1] });
  });

  it('of two that do not go together the answer stays with the first', () => {
    const wheels = [readOf(DP(8, 22), { spans: [2, 3] }), readOf(MODULE(3, 40), { spans: [5, 6] })];
    const { strangers, pitches } = identify(wheels);
    expect(sum(strangers)).toBeGreaterThan(0.9);
    expect(pitches[0]?.known.pitch).toEqual({ kind: 'DP', size: [8, 1] });
  });

  it('are not called strangers when they are not', () => {
    const { strangers } = identify([readOf(DP(8, 22), { spans: [2, 3] }, 0.001), readOf(DP(8, 35), { spans: [3, 4] }, 0.006)]);
    expect(Math.max(...strangers)).toBeLessThan(0.1);
  });
});

describe('none of these fits', () => {
  const odd = (outside: number, two: number, three: number, four: number): MeasuredWheel => ({
    teeth: 30,
    readings: [
      { of: 'outside', by: 'true', size: inches(outside) },
      { of: 'root', size: inches(outside - 0.55) },
      { of: 'span', over: 2, size: inches(two) },
      { of: 'span', over: 3, size: inches(three) },
      { of: 'span', over: 4, size: inches(four) },
    ],
  });

  it('is said of a wheel whose spans are no involute’s', () => {
    const { none, list } = identify([odd(4, 0.62, 0.95, 1.42)]);
    expect(none).toBeGreaterThan(list[0]?.chance ?? 0);
  });

  it('is said of a pitch that is in no series', () => {
    const { none, list } = identify([readOf({ N: 60, m: 1 / 8.72, deg: 14.5, A: 1, B: 1.157 }, { root: true, spans: [5, 6, 7] })]);
    expect(none).toBeGreaterThan(list[0]?.chance ?? 0);
  });

  it('is not said of a standard wheel', () => {
    expect(identify([readOf(DP(8, 30), { root: true, spans: [3, 4] }, 0.004)]).none).toBeLessThan(0.02);
  });
});

describe('a reading that is wrong', () => {
  it('speaks against the right answer by name, and does not drive it off', () => {
    const wheel = readOf(DP(8, 40), { root: true, spans: [3, 4, 5] }, 0.002);
    const slip = { ...wheel, readings: wheel.readings.map((one) => (one.of === 'root' ? { ...one, size: inches(4.83) } : one)) };
    const { list, pitches } = identify([slip]);
    expect(pitches[0]?.known.pitch).toEqual({ kind: 'DP', size: [8, 1] });
    const best = list.find(({ candidate }) => candidate.key === 'full-14.5');
    expect(best?.misfits.filter(({ contradicts }) => contradicts).map(({ reading }) => reading.name)).toEqual(['Root']);
  });
});

describe('the next measurement', () => {
  it('is two spans where only the outside is known, and says what each would give', () => {
    const { next, list } = identify([readOf(DP(8, 22), {})]);
    expect(next?.name).toMatch(/^Span over \d less span over \d$/);
    const reads = new Map(next?.each.map(({ candidate, read }) => [candidate.name, read]));
    // Base pitch of 8 DP: π/8 × cos 14½° and cos 20°.
    expect(reads.get('8 DP, 14½° full involute')).toBeCloseTo(0.38019, 4);
    expect(reads.get('8 DP, 20° full depth')).toBeCloseTo(0.36902, 4);
    expect(list.length).toBeGreaterThan(2);
  });

  it('when taken, leaves less in doubt on the average over what it may read', () => {
    const teeth = [DP(8, 32, 14.5), DP(8, 32, 20)];
    const doubt = (angles: readonly { chance: number }[]): number => 1 - sum(angles.map(({ chance }) => chance ** 2));
    const before = doubt(identify([readOf(teeth[0] as never, {})]).angles);
    const after = teeth.map((one) => doubt(identify([readOf(one, { spans: [3, 4] }, 0.002)]).angles));
    expect(Math.max(...after)).toBeLessThan(before);
  });

  it('is the root where full and old full depth are left', () => {
    const { next } = identify([readOf(DP(8, 40, 20, 1, 1.25), { spans: [4, 5, 6] }, 0.001)]);
    expect(next?.name).toBe('Root diameter');
  });
});
