import { afterAll, describe, expect, it } from 'vitest';
import type { Flanks } from '../../../lib/gears/flanks.formulas.ts';
import { workingBacklash, workingDiameters } from '../../../lib/gears/pair.formulas.ts';
import type { HalfSpace } from '../../../lib/gears/profile.formulas.ts';
import { toothPoints } from '../../../lib/gears/profile-outline.ts';
import { generatedSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import { shapedRingSpace } from '../../../lib/gears/profile-ring.formulas.ts';
import { overlap, type XY } from './polygons.ts';

/**
 * Two wheels run into each other by rotation: for places over a full pitch the mate is turned until metal meets metal on either side. How far it
 * turns between is the backlash. Module 2.54 mm (10 DP), whole depth of a 20° or 14½° rack, so the fillets are in it too.
 */
const m = 2.54;
const flanksOf = (N: number, degrees: number, B: number, v: number, ring = false): Flanks => ({
  N,
  mn: m,
  an: (degrees * Math.PI) / 180,
  psi: 0,
  v: v * m,
  A: m,
  B: B * m,
  ring,
  unit: 'mm',
});

const STEPS = { fillet: 24, flank: 60 };
const turned = (points: readonly XY[], by: number): XY[] =>
  points.map(([x, y]) => [x * Math.cos(by) + y * Math.sin(by), y * Math.cos(by) - x * Math.sin(by)]);
const up = (points: readonly XY[], by: number): XY[] => points.map(([x, y]) => [x, y + by]);

/** Five teeth about the top of a wheel as one solid piece, a tooth on the y axis. */
function sector(half: HalfSpace, N: number, inner: number): XY[] {
  const tooth = toothPoints(half, N) as XY[];
  const teeth = [-2, -1, 0, 1, 2].flatMap((k) => turned(tooth, (2 * Math.PI * k) / N));
  const edge = (5 * Math.PI) / N;
  return [...teeth, [inner * Math.sin(edge), inner * Math.cos(edge)], [-inner * Math.sin(edge), inner * Math.cos(edge)]];
}

/** Less than this is touching, not overlapping: polygons of sixty chords a flank, rounded to the nanometre. mm². */
const TOUCHING = 2e-7;

/** Furthest that the mate can turn one way from `from` before metal meets metal. */
function freeTurn(meets: (turn: number) => boolean, from: number, way: 1 | -1, most: number): number {
  let [free, met] = [0, most];
  for (let step = 0; step < 22; step++) {
    const middle = (free + met) / 2;
    if (meets(from + way * middle)) met = middle;
    else free = middle;
  }
  return free;
}

const printed: string[] = [];
afterAll(() => {
  process.stdout.write(`Backlash found by turning against the formula (in):\n${printed.join('\n')}\n`);
});

type Pair = { name: string; N1: number; N2: number; degrees: number; B: number; v: number; apart: number };
const PAIRS: readonly Pair[] = [
  { name: '24 and 36, 20°, both shifted in 0.04', N1: 24, N2: 36, degrees: 20, B: 1.25, v: -0.04, apart: 0 },
  { name: '20 and 30, 20°, centres 0.1 mm apart', N1: 20, N2: 30, degrees: 20, B: 1.25, v: 0, apart: 0.1 },
  { name: '36 and 40, 14½°, shifted in 0.03', N1: 36, N2: 40, degrees: 14.5, B: 1.157, v: -0.03, apart: 0 },
];

describe('two wheels by rotation', () => {
  it.each(PAIRS)('$name: no overlap over a pitch, backlash as computed', ({ name, N1, N2, degrees, B, v, apart }) => {
    const [one, mate] = [flanksOf(N1, degrees, B, v), flanksOf(N2, degrees, B, v)];
    const C = ((N1 + N2) * m) / 2 + apart;
    const [, dw] = workingDiameters({ one, mate }, C);
    const jw = workingBacklash({ one, mate }, C, 0);
    const driver = sector(generatedSpace(one, undefined, STEPS), N1, (N1 * m) / 2 - 2 * m);
    // The mate's tooth is turned half a pitch, so that a space stands over the driver's tooth; it hangs from above.
    const hung = turned(sector(generatedSpace(mate, undefined, STEPS), N2, (N2 * m) / 2 - 2 * m), Math.PI);
    const worst = { off: 0 };
    for (let place = 0; place < 8; place++) {
      const by = ((place / 8 - 0.5) * 2 * Math.PI) / N1;
      const driving = turned(driver, by);
      const meets = (turn: number): boolean => overlap(driving, up(turned(hung, turn), C)) > TOUCHING;
      const middle = Math.PI / N2 - (by * N1) / N2;
      expect(meets(middle), `${name}, place ${place}`).toBe(false);
      const most = Math.PI / N2 / 2;
      const play = (freeTurn(meets, middle, 1, most) + freeTurn(meets, middle, -1, most)) * (dw / 2);
      worst.off = Math.max(worst.off, Math.abs(play - jw));
    }
    printed.push(`  ${name}: computed ${(jw / 25.4).toFixed(5)}, found within ${(worst.off / 25.4).toExponential(1)}`);
    expect(jw).toBeGreaterThan(0.02);
    expect(worst.off / 25.4).toBeLessThan(0.00005);
  });

  it('a pinion in its ring: no overlap over a pitch, backlash as computed', () => {
    const [N1, N2] = [24, 60];
    // With its whole addendum the ring's tips would foul the pinion's fillets (they reach below where a rack ends its flank): 0.8 is usual.
    const [one, mate] = [flanksOf(N1, 20, 1.25, -0.05), { ...flanksOf(N2, 20, 1.25, 0, true), A: 0.8 * m }];
    const C = ((N2 - N1) * m) / 2;
    const [, dw] = workingDiameters({ one, mate }, C);
    const jw = workingBacklash({ one, mate }, C, 0);
    const pinion = sector(generatedSpace(one, undefined, STEPS), N1, (N1 * m) / 2 - 2 * m);
    // A ring's half space runs inward, so its five teeth close along a circle outside the roots.
    const ring = sector(shapedRingSpace(mate, { Nc: 30, c: 0.2 * m }, STEPS), N2, (N2 * m) / 2 + 3 * m);
    const worst = { off: 0 };
    for (let place = 0; place < 8; place++) {
      const by = ((place / 8 - 0.5) * 2 * Math.PI) / N1;
      const driving = up(turned(pinion, by), C);
      const meets = (turn: number): boolean => overlap(driving, turned(ring, turn)) > TOUCHING;
      const middle = Math.PI / N2 + (by * N1) / N2;
      expect(meets(middle), `place ${place}`).toBe(false);
      const most = Math.PI / N2 / 2;
      const play = (freeTurn(meets, middle, 1, most) + freeTurn(meets, middle, -1, most)) * (dw / 2);
      worst.off = Math.max(worst.off, Math.abs(play - jw));
    }
    printed.push(`  24 in a ring of 60, 20°: computed ${(jw / 25.4).toFixed(5)}, found within ${(worst.off / 25.4).toExponential(1)}`);
    expect(jw).toBeGreaterThan(0.02);
    expect(worst.off / 25.4).toBeLessThan(0.00005);
  });
});
