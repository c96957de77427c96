import { describe, expect, it } from 'vitest';
import type { GearToCut } from '../../../lib/cutters/choice.ts';
import { type GroundFor, halfWidthAt } from '../../../lib/cutters/ground-space.ts';
import { groundEdge, groundToolAnswer } from '../../../lib/cutters/ground-tool.sums.ts';
import { sameSpaceUnshifted } from '../../../lib/cutters/shifted-space.ts';
import { DomainError } from '../../../lib/figure/domain-error.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { millimetres, toMm } from '../../../lib/values/length.ts';

const RAD = Math.PI / 180;
const gear = (teeth: number, angle = 20, helix: number | null = null): GearToCut => ({
  teeth,
  pitch: { kind: 'module', size: [10, 1] },
  system: { name: 'test', angle: degrees(angle), addendum: 1, dedendum: 1.25, extra: millimetres(0) },
  helix: helix === null ? null : { angle: degrees(helix), hand: 'right' },
});
const asked = (teeth: number, kind: GroundFor, shift: number, angle = 20) => ({
  gear: gear(teeth, angle),
  kind,
  shift,
  fillet: null,
  step: millimetres(1),
});
const mm = (teeth: number, kind: GroundFor, shift: number, key: 'pitchWidth' | 'topWidth' | 'depth', angle = 20): number => {
  const { value } = groundToolAnswer(asked(teeth, kind, shift, angle)).figures[key];
  return 'length' in value ? toMm(value.length) : Number.NaN;
};

/** Second route: a rack with straight sides, moved out by the shift, rolled round the pitch circle: the furthest that it cuts sideways at a height. */
function rolled(N: number, m: number, a: number, v: number, height: number): number {
  const r = (N * m) / 2;
  const Y = r + height;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = -6000; i <= 6000; i++) {
    const turn = i / 6000;
    const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
    // Rack at rest: its right side x = π m/4 + (y − v) tan a, y above the pitch line; turned back by `turn` after rolling r·turn.
    const half = (Math.PI * m) / 4;
    // Solve for x on the side at height Y in the wheel: wheel (x, Y) → rack (x cos − Y sin + r turn, x sin + Y cos − r).
    const x = (half + (Y * cos - r - v) * Math.tan(a) + Y * sin - r * turn) / (cos - sin * Math.tan(a));
    if (x * sin + Y * cos - r >= v - 1.25 * m) most = Math.max(most, x);
  }
  return most;
}

describe('a tool ground for a shifted wheel', () => {
  it.each([
    [12, 0.3],
    [12, 0.6],
    [20, -0.2],
    [40, 0.5],
  ])('%s teeth, shift %s: is as wide as a rolled rack cuts', (N, x) => {
    const { tool } = groundEdge(asked(N, 'wheel', x));
    const root = (N * 10) / 2 - 12.5 + 10 * x;
    for (const height of [0, 2, 4, 5]) {
      const own = halfWidthAt(tool.edge, (N * 10) / 2 + height - root) ?? Number.NaN;
      expect(own).toBeCloseTo(rolled(N, 10, 20 * RAD, 10 * x, height), 3);
    }
  });

  it('SDP/SI, T-81, table 10-1: 12 teeth, module 10, 20°, shift 0.3: the tooth is 17.8918 at the pitch circle, so the space 13.5241 (chord 13.4955)', () => {
    // Pitch 31.4159 less 17.8918 = 13.5241 along the arc of radius 60; its chord 120 sin(13.5241/120).
    expect(mm(12, 'wheel', 0.3, 'pitchWidth')).toBeCloseTo(120 * Math.sin(13.5241 / 120), 3);
    expect(sameSpaceUnshifted({ N: 12, m: 10, a: 20 * RAD, A: 10, B: 12.5, unit: 'mm' }, 3, 'wheel').m).toBeCloseTo(10.43688, 4);
  });

  it('goes as deep as without the shift, and no shift changes nothing', () => {
    expect(mm(12, 'wheel', 0.3, 'depth')).toBe(22.5);
    expect(groundEdge(asked(30, 'wheel', 0)).tool).toEqual(groundEdge({ ...asked(30, 'wheel', 0), shift: undefined as never }).tool);
  });

  it('refuses teeth that end in a point, a shift of a rack, and one so far inward that no tooth is left', () => {
    expect(() => groundEdge(asked(8, 'wheel', 1.5))).toThrow(DomainError);
    expect(() => groundEdge(asked(8, 'wheel', 1.5))).toThrow(/point/);
    expect(() => groundEdge(asked(30, 'rack', 0.2))).toThrow(/rack/);
    expect(() => groundEdge(asked(12, 'wheel', -2, 14.5))).toThrow(/away from the middle|thinner/);
  });
});

describe('a tool ground for a ring', () => {
  it.each([0.4, -0.3, 0])('of 60 teeth, shift %s: has the width of the wheel’s tooth of that shift', (x) => {
    const { tool } = groundEdge(asked(60, 'ring', x));
    const [r, rb, inv] = [300, 300 * Math.cos(20 * RAD), (a: number): number => Math.tan(a) - a];
    const root = r + 12.5 + 10 * x;
    for (const R of [296, 300, 304]) {
      const at = Math.PI / 120 + (2 * x * Math.tan(20 * RAD)) / 60 + inv(20 * RAD) - inv(Math.acos(rb / R));
      expect(halfWidthAt(tool.edge, root - R * Math.cos(at)) ?? 0).toBeCloseTo(R * Math.sin(at), 4);
    }
  });

  it('whose tips lie inside the base circle is straight there, and says to what it must be bored', () => {
    // 40 teeth of 14½°, module 10: base circle 387.26, tips at 380.
    const answer = groundToolAnswer(asked(40, 'ring', 0, 14.5));
    const caution = answer.cautions.find(({ name }) => name === 'tips inside the base circle');
    expect(caution?.says).toContain('Bore the ring over its tips to 387.259 mm at least.');
    expect(caution?.weight).toBe('beware');
    const { edge } = groundEdge(asked(40, 'ring', 0, 14.5)).tool;
    const half = Math.PI / 80 + Math.tan(14.5 * RAD) - 14.5 * RAD;
    const [x, y] = edge.at(-1) ?? [0, 0];
    expect(Math.hypot(x, 212.5 - y)).toBeCloseTo(190, 6);
    expect(Math.atan2(x, 212.5 - y)).toBeCloseTo(half, 8);
    expect(mm(40, 'ring', 0, 'topWidth', 14.5)).toBeCloseTo(2 * 190 * Math.sin(half), 5);
    expect(groundToolAnswer(asked(80, 'ring', 0)).cautions.some(({ name }) => name === 'tips inside the base circle')).toBe(false);
  });
});
