import { afterAll, describe, expect, it } from 'vitest';
import type { Flanks } from '../../../lib/gears/flanks.formulas.ts';
import { transverseThickness } from '../../../lib/gears/flanks.formulas.ts';
import { overPins } from '../../../lib/gears/pins.formulas.ts';
import type { HalfSpace } from '../../../lib/gears/profile.formulas.ts';
import { generatedSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import { shapedRingSpace } from '../../../lib/gears/profile-ring.formulas.ts';
import { span } from '../../../lib/gears/spur.formulas.ts';
import { toRun, type XY } from './polygons.ts';

/** Pins laid and jaws closed on the drawn outline of a wheel; module 2.54 mm (10 DP), nothing but distances between points. */
const m = 2.54;
const STEPS = { fillet: 30, flank: 400 };
const flanksOf = (N: number, degrees: number, x: number, ring = false): Flanks => ({
  N,
  mn: m,
  an: (degrees * Math.PI) / 180,
  psi: 0,
  v: x * m,
  A: m,
  B: (degrees === 20 ? 1.25 : 1.157) * m,
  ring,
  unit: 'mm',
});

const xy = ([R, t]: readonly [number, number]): XY => [R * Math.sin(t), R * Math.cos(t)];

/** Distance of a pin's middle from the middle of the wheel when it lies on both flanks: slid along the middle line of the space until it just touches. */
function pinLies(half: HalfSpace, w: number, low: number, high: number, outward: boolean): number {
  const flank = [...half.fillet, ...half.flank.slice(1)].map(xy);
  let [a, b] = [low, high];
  for (let step = 0; step < 50; step++) {
    const middle = (a + b) / 2;
    const clear = toRun([0, middle], flank) > w / 2;
    if (clear === outward) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

const printed: string[] = [];
afterAll(() => {
  process.stdout.write(`Pins and jaws on the drawn outline against the formula (in):\n${printed.join('\n')}\n`);
});

const across = (N: number): number => (N % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * N)));

describe('over pins', () => {
  it.each([
    [30, 20, 0],
    [31, 20, 0],
    [22, 14.5, 0],
    [45, 14.5, 0],
    [18, 20, 0.3],
    [40, 20, -0.2],
  ])('%i teeth, %d°, shift %d', (N, degrees, x) => {
    const flanks = flanksOf(N, degrees, x);
    const w = 1.728 * m;
    const r = (N * m) / 2;
    const lies = pinLies(generatedSpace(flanks, undefined, STEPS), w, r - 0.3 * m, r + 2.5 * m, true);
    const off = (2 * lies * across(N) + w - overPins(flanks, transverseThickness(flanks), w)) / 25.4;
    printed.push(`  over pins, ${N} teeth, ${degrees}°, shift ${x}: ${off.toExponential(1)}`);
    expect(Math.abs(off)).toBeLessThan(0.00002);
  });

  it.each([
    [60, 0],
    [61, 0],
    [72, 0.2],
  ])('between pins in a ring of %i, 20°, shift %d', (N, x) => {
    const flanks = flanksOf(N, 20, x, true);
    const w = 1.68 * m;
    const r = (N * m) / 2;
    const half = shapedRingSpace(flanks, { Nc: 30, c: 0.2 * m }, STEPS);
    const lies = pinLies(half, w, r - 2 * m, r + 0.6 * m, false);
    const off = (2 * lies * across(N) - w - overPins(flanks, transverseThickness(flanks), w)) / 25.4;
    printed.push(`  between pins, ring of ${N}, shift ${x}: ${off.toExponential(1)}`);
    expect(Math.abs(off)).toBeLessThan(0.00002);
  });
});

describe('span', () => {
  it.each([
    [30, 20, 4],
    [22, 14.5, 2],
    [60, 14.5, 5],
    [45, 20, 6],
  ])('%i teeth, %d°, over %i', (N, degrees, k) => {
    const flanks = flanksOf(N, degrees, 0);
    const { flank } = generatedSpace(flanks, undefined, STEPS);
    const turn = (k * Math.PI) / N;
    const read = 2 * Math.max(...flank.map(([R, t]) => R * Math.sin(turn - t)));
    const off = (read - span({ N, m, a: flanks.an }, k)) / 25.4;
    printed.push(`  span over ${k} of ${N}, ${degrees}°: ${off.toExponential(1)}`);
    expect(Math.abs(off)).toBeLessThan(0.00001);
  });
});
