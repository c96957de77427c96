import { describe, expect, it } from 'vitest';
import type { GearToCut } from '../../../lib/cutters/choice.ts';
import { type EdgePoint, GROUND_FOR, groundTool, halfWidthAt, ordinates } from '../../../lib/cutters/ground-space.ts';
import { groundToolAnswer } from '../../../lib/cutters/ground-tool.sums.ts';
import { ALL_NUMBERS, numberedFormAnswer } from '../../../lib/cutters/numbered-form.sums.ts';
import type { NumberedCutter } from '../../../lib/cutters/ranges.data.ts';
import { twoDiscAnswer } from '../../../lib/cutters/two-disc.sums.ts';
import type { Answer } from '../../../lib/figure/figure.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { drawnFlank, reachAt } from './drawn-space.ts';

const RAD = Math.PI / 180;
const tooth = (N: number, a: number, m = 1 / 8, dedendum = 1.157): Tooth => ({ N, m, a: a * RAD, A: m, B: dedendum * m, unit: 'in' });
const gear = (teeth: number, angle = 14.5, dedendum = 1.157): GearToCut => ({
  teeth,
  pitch: { kind: 'DP', size: [8, 1] },
  system: { name: 'test', angle: degrees(angle), addendum: 1, dedendum, extra: inches(0) },
  helix: null,
});
const printed = <K extends string>(answer: Answer<K>, key: K): string => printFigure(answer.figures[key]).text;

describe('a tool ground to the space', () => {
  it.each([22, 35, 60])('has the width of a drawn involute at every height above the base circle: %i teeth', (N) => {
    const t = tooth(N, 14.5);
    const { edge } = groundTool(t, 'wheel', null);
    const drawn = drawnFlank({ N, m: t.m, degrees: 14.5 });
    for (const part of [-0.3, 0, 0.25, 0.5, 0.75, 0.9]) {
      const own = halfWidthAt(edge, t.B + part * t.m) ?? Number.NaN;
      expect(Math.abs(own - reachAt(drawn, { N, m: t.m, degrees: 14.5 }, part * t.m))).toBeLessThan(0.000002);
    }
  });

  it('for a rack is half a pitch wide at the pitch line, with straight sides (by hand: π/16 + 2 h tan 14½°)', () => {
    const t = tooth(35, 14.5);
    const { edge } = groundTool(t, 'rack', null);
    expect(2 * (halfWidthAt(edge, t.B) ?? 0)).toBeCloseTo(0.19635, 5);
    expect(2 * (halfWidthAt(edge, t.B + 0.05) ?? 0)).toBeCloseTo(0.19635 + 0.1 * 0.258618, 5);
  });

  it('for a ring has the widths of a wheel’s tooth of the same count turned about: its space is that tooth', () => {
    const t = tooth(60, 20, 1 / 10, 1.25);
    const { edge } = groundTool(t, 'ring', 0.01);
    // A tooth of 60 at radius R: half thickness angle π/120 + inv 20° − inv(acos(rb/R)), drawn without lib.
    const [r, rb, inva] = [3, 3 * Math.cos(20 * RAD), (x: number): number => Math.tan(x) - x];
    for (const R of [2.95, 3, 3.05, 3.08]) {
      const at = Math.PI / 120 + inva(20 * RAD) - inva(Math.acos(rb / R));
      expect(halfWidthAt(edge, r + t.B - R * Math.cos(at)) ?? 0).toBeCloseTo(R * Math.sin(at), 6);
    }
  });

  it('has corners of the radius that was asked for: three points of the rounding lie on such a circle', () => {
    for (const kind of GROUND_FOR) {
      const t = tooth(40, 20, 1 / 8, 1.25);
      const { edge, fillet } = groundTool(t, kind, 0.03);
      expect(fillet).toBe(0.03);
      const first = edge.findIndex(([, y]) => y > 0.0006 && y < 0.03);
      const at = (i: number): EdgePoint => edge[first + i] ?? [0, 0];
      const [a, b, c] = [at(0), at(12), at(24)];
      const side = (p: EdgePoint, q: EdgePoint): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
      const area2 = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]));
      expect((side(a, b) * side(b, c) * side(c, a)) / (2 * area2)).toBeCloseTo(0.03, 4);
    }
  });

  it('is listed in even steps from the tip, and at its whole depth', () => {
    const t = tooth(22, 14.5);
    const rows = ordinates(t, groundTool(t, 'wheel', null), 0.01);
    expect(rows.length).toBeGreaterThan(26);
    expect(rows.slice(1, -1).every(([x], i) => x > (rows[i]?.[0] ?? 0))).toBe(true);
    expect(() => ordinates(t, groundTool(t, 'wheel', null), 0.001)).toThrow(/do not fit a sheet/);
  });

  it('refuses a corner that does not fit', () => {
    for (const kind of GROUND_FOR) expect(() => groundTool(tooth(30, 20), kind, 0.2)).toThrow(/[Cc]orner|larger than/);
  });

  it('says what hurts, and what a rake does', () => {
    const { cautions } = groundToolAnswer({ gear: gear(22), kind: 'wheel', fillet: null, step: inches(0.01) });
    expect(cautions.map(({ name }) => name)).toEqual(['fly cutter', 'rake', 'clearance']);
    const ring = groundToolAnswer({ gear: gear(60, 20, 1.25), kind: 'ring', fillet: null, step: inches(0.01) });
    expect(ring.cautions[0]?.name).toBe('shaper tool');
  });
});

describe('a numbered cutter on 35 teeth, 8 DP, 14½°: story of the cutter that is not owned (derived: true involutes at one depth)', () => {
  const one = (number: string): NumberedCutter => {
    const found = ALL_NUMBERS.find((cutter) => cutter.number === number);
    if (!found) throw new Error(`no No. ${number}`);
    return found;
  };
  it.each([
    ['4', ['0.0075', '0.0028', '0.0003'], ['0.0044', '0.0017', '0.0002']],
    ['3½', ['0.0036', '0.0013', '0.0001'], ['0.0036', '0.0013', '0.0001']],
    ['3', ['0.0000', '0.0000', '0.0000'], null],
    ['2', ['−0.0077', '−0.0028', '−0.0003'], ['−0.0102', '−0.0038', '−0.0003']],
  ])('No. %s', (number, low, treatise) => {
    const answer = numberedFormAnswer(gear(35), one(number));
    expect((['lowTip', 'lowHalf', 'lowPitch'] as const).map((key) => printed(answer, key))).toEqual(low);
    if (number !== '3')
      expect((['treatiseTip', 'treatiseHalf', 'treatisePitch'] as const).map((key) => printed(answer, key))).toEqual(treatise);
  });

  it('says it in shop words', () => {
    expect(numberedFormAnswer(gear(35), one('4')).says).toContain('noisy, runs');
    expect(numberedFormAnswer(gear(35), one('2')).says).toMatch(/rub: refused.*rub: refused/);
    expect(numberedFormAnswer(gear(35), one('3')).says).toContain('Right cutter.');
  });

  it('lists both opinions along the flank, one where they agree', () => {
    expect(numberedFormAnswer(gear(35), one('4')).tables?.[0]?.heads).toHaveLength(4);
    expect(numberedFormAnswer(gear(35), one('3½')).tables?.[0]?.heads).toHaveLength(3);
  });

  it('goes by the virtual count for helical teeth: 24 at 30° as 36.95 straight', () => {
    const helical = { ...gear(24), helix: { angle: degrees(30), hand: 'right' as const } };
    const answer = numberedFormAnswer(helical, one('3'));
    expect(answer.says).toContain('36.95');
    expect(answer.says).toContain('Right cutter.');
    const [tip36, tip37] = [36, 37].map((teeth) => Number(printed(numberedFormAnswer(gear(teeth), one('3')), 'lowTip').replace('−', '-')));
    const tip = Number(printed(answer, 'lowTip').replace('−', '-'));
    expect(tip).toBeGreaterThanOrEqual(tip36 ?? Number.NaN);
    expect(tip).toBeLessThanOrEqual(tip37 ?? Number.NaN);
  });
});

it('two discs: the answer says what the arcs are off, and how a narrow rim is touched later', () => {
  const wide = twoDiscAnswer({ gear: gear(22), blankWidth: null });
  const narrow = twoDiscAnswer({ gear: gear(22), blankWidth: inches(0.4) });
  expect(wide.says).toContain(`off by up to ${printed(wide, 'off')} in`);
  expect(Number(printed(narrow, 'infeed'))).toBeLessThan(Number(printed(wide, 'infeed')));
});
