import { describe, expect, it } from 'vitest';
import { identify } from '../../../lib/identify/identify.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches, millimetres } from '../../../lib/values/length.ts';
import { CP, DP, MODULE, readOf, type Teeth } from './made.ts';

const first = (...wheels: Parameters<typeof readOf>[]) => identify(wheels.map((wheel) => readOf(...wheel)));

/** Teeth, the spans taken, and the name that has to come first. */
const KNOWN: readonly (readonly [string, Teeth, readonly number[]])[] = [
  ['8 DP, 14½° full involute', DP(8, 22), [2, 3]],
  ['8 DP, 20° full depth', DP(8, 40, 20, 1, 1.25), [5, 6]],
  ['8 DP, 20° stub', DP(8, 30, 20, 0.8, 1), [4, 5]],
  ['5 DP, 20° stub 5/7', DP(5, 30, 20, 5 / 7, (1.25 * 5) / 7), [3, 4]],
  ['14 DP, 14½° full involute', DP(14, 60), [5, 6]],
  ['module 2.5, 20° module, 1.25', MODULE(2.5, 40), [5, 6]],
  ['module 3, 20° module, 1.25', MODULE(3, 24), [3, 4]],
  ['module 3.25, 20° module, 1.25', MODULE(3.25, 50), [6, 7]],
  ['5/16 in CP, 14½° full involute', CP(5 / 16, 40), [4, 5]],
  ['8 DP, 17½° full depth', DP(8, 35, 17.5), [4, 5]],
  ['8 DP, 25° full depth', DP(8, 40, 25, 1, 1.25), [6, 7]],
  ['6 DP, 22½° stub', DP(6, 30, 22.5, 0.8, 1), [4, 5]],
];

describe('a wheel whose teeth are known comes first', () => {
  it.each(KNOWN)('%s', (name, teeth, spans) => {
    const { list, none } = first([teeth, { root: true, spans }, 0.002, 0.001]);
    expect(list[0]?.candidate.name).toBe(name);
    expect(none).toBeLessThan(0.05);
  });

  it('with worn teeth and the outside turned down', () => {
    const { list, pitches } = first([DP(8, 40), { root: true, spans: [4, 5] }, 0.012, 0.03]);
    expect(list[0]?.candidate.name).toBe('8 DP, 14½° full involute');
    expect(pitches[0]?.chance).toBeGreaterThan(0.9);
    expect(list[0]?.fit.wear).toBeGreaterThan(0.008);
    expect(list[0]?.fit.wear).toBeLessThan(0.016);
    expect(list[0]?.fit.tip).toBeGreaterThan(0.02);
  });

  it('and a helical one, by the lean of its print', () => {
    const [N, mn, psi] = [40, 1 / 8, (15 * Math.PI) / 180];
    const outside = (N * mn) / Math.cos(psi) + 2 * mn;
    const print = Math.atan((Math.tan(psi) * outside) / (outside - 2 * mn));
    const { pitches, list } = identify([
      {
        teeth: N,
        readings: [
          { of: 'outside', by: 'true', size: inches(outside) },
          { of: 'helix', angle: degrees((print * 180) / Math.PI), error: degrees(0.3) },
        ],
      },
    ]);
    expect(pitches[0]?.known.pitch).toEqual({ kind: 'DP', size: [8, 1] });
    expect(((list[0]?.fit.stance.flanks.psi ?? 0) * 180) / Math.PI).toBeCloseTo(15, 0);
  });

  it('the same in millimetres as in inches', () => {
    const [inch, mm] = [inches, millimetres].map((of, i) =>
      identify([{ teeth: 40, readings: [{ of: 'outside', by: 'true', size: of([4.1339, 105][i] as number) }] }]),
    );
    expect(mm?.pitches[0]?.known.pitch).toEqual({ kind: 'module', size: [5, 2] });
    expect(inch?.pitches[0]?.chance).toBeCloseTo(mm?.pitches[0]?.chance ?? 0, 2);
  });
});

describe('what is easily taken for each other', () => {
  it.each([
    ['8 DP against module 3.25', DP(8, 30, 20, 1, 1.25), MODULE(3.25, 30)],
    ['10 DP against module 2.5', DP(10, 40, 20, 1, 1.25), MODULE(2.5, 40)],
    ['10 DP against 5/16 CP', DP(10, 60), CP(5 / 16, 60)],
    ['6 DP against module 4.25', DP(6, 60, 20, 1, 1.25), MODULE(4.25, 60)],
  ])('%s, each by outside, root and two spans', (_, one, other) => {
    const spans = one.deg === 20 ? [4, 5] : [5, 6];
    for (const teeth of [one, other]) {
      const { pitches } = first([teeth, { root: true, spans }, 0.001]);
      expect(pitches[0]?.known.m).toBeCloseTo(teeth.m, 9);
    }
  });

  it('14½° against 20° by the difference of two spans, whatever the wear', () => {
    for (const wear of [0, 0.004, 0.01, 0.015])
      for (const deg of [14.5, 20]) {
        const { angles } = first([DP(8, 32, deg), { spans: [3, 4] }, wear]);
        expect(angles[0]?.deg, `${deg}° worn ${wear}`).toBe(deg);
      }
  });

  it('one span alone does not tell them apart when teeth may be worn', () => {
    const { angles } = first([DP(8, 32, 14.5), { spans: [3] }, 0.006]);
    expect(angles[0]?.chance).toBeLessThan(0.9);
  });

  it('stub and full depth by outside and depth', () => {
    expect(first([DP(8, 30, 20, 0.8, 1), { depth: true, spans: [4, 5] }]).list[0]?.candidate.key).toBe('stub-20');
    expect(first([DP(8, 30, 20, 1, 1.25), { depth: true, spans: [4, 5] }]).list[0]?.candidate.key).toBe('full-20');
  });

  it('composite and full involute are not parted by sizes, and it is not said that they were', () => {
    const { list, next } = first([DP(8, 22), { root: true, spans: [2, 3] }]);
    expect(list.slice(0, 3).map(({ candidate }) => candidate.key)).toContain('composite-14.5');
    expect(list[0]?.chance).toBeLessThan(0.85);
    expect(next?.name ?? 'none').not.toMatch(/^Root/);
  });
});
