import { afterAll, describe, expect, it } from 'vitest';
import type { Flanks } from '../../../lib/gears/flanks.formulas.ts';
import type { SpacePoint } from '../../../lib/gears/profile.formulas.ts';
import { generatedSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import { type RackPoint, shapedRackSpace } from '../../../lib/gears/profile-rack-cut.formulas.ts';
import { shapedRingSpace } from '../../../lib/gears/profile-ring.formulas.ts';
import { toPolygon, toRun, whatIsLeft, type XY } from './polygons.ts';

/**
 * Second route to shifted, helical, inside and rack teeth: the tool, drawn here from the numbers of the standards (multiples of the
 * module: 14½° 1/1.157 corner 0.209; 20° 1/1.25 corner 0.3; ASA B6.1, values from memory), is rolled past a blank in small steps and what
 * it sweeps is taken away with a polygon library. Nothing of a tool is asked of lib. Sizes in mm.
 */
const RAD = Math.PI / 180;
const MM = 25.4;
type Tool = { degrees: number; addendum: number; dedendum: number; corner: number };
const OLD: Tool = { degrees: 14.5, addendum: 1, dedendum: 1.157, corner: 0.209 };
const FULL: Tool = { degrees: 20, addendum: 1, dedendum: 1.25, corner: 0.3 };

const turned = (points: readonly XY[], by: number): XY[] => {
  const [sin, cos] = [Math.sin(by), Math.cos(by)];
  return points.map(([x, y]) => [x * cos + y * sin, y * cos - x * sin]);
};
const slid = (points: readonly XY[], dx: number, dy: number): XY[] => points.map(([x, y]) => [x + dx, y + dy]);
const mirrored = (right: readonly XY[]): XY[] => [...right, ...right.map(([x, y]): XY => [-x, y]).reverse()];
const ARC = 30;
const even = (from: number, to: number, steps: number): number[] =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

/** A rack tooth in its own normal plane, pointing down, then stretched sideways into the plane of the wheel. */
function rackTooth({ degrees, dedendum, corner }: Tool, m: number, helix: number): XY[] {
  const a = degrees * RAD;
  const [B, c] = [dedendum * m, corner * m];
  const sideAt = (depth: number): number => (Math.PI * m) / 4 - depth * Math.tan(a);
  const [u, h] = [sideAt(B - c) - c / Math.cos(a), B - c];
  const arc = even(a, Math.PI / 2, ARC).map((b): XY => [u + c * Math.cos(b), -(h + c * Math.sin(b))]);
  return mirrored([[sideAt(-2 * m), 2 * m], ...arc]).map(([x, y]) => [x / Math.cos(helix * RAD), y]);
}

/** A tooth of a pinion cutter pointing up, its middle line on the y axis: a string unwound from its base circle, tip rounded by touching circles found by trial. */
function cutterTooth({ degrees, dedendum, corner }: Tool, m: number, Nc: number, tipOut: number): XY[] {
  const a = degrees * RAD;
  const [r, c, tip] = [(Nc * m) / 2, corner * m, (Nc * m) / 2 + dedendum * m + tipOut];
  const rb = r * Math.cos(a);
  const half = Math.PI / (2 * Nc) + Math.tan(a) - a;
  const onString = (u: number, off = 0): XY => {
    const at = half - u;
    return [rb * Math.sin(at) + (rb * u - off) * Math.cos(at), rb * Math.cos(at) - (rb * u - off) * Math.sin(at)];
  };
  // The corner's middle lies c inside the skin, as far out as the tip allows: walked up the string.
  let [low, high] = [c / rb, 2];
  for (let i = 0; i < 60; i++) {
    const u = (low + high) / 2;
    if (Math.hypot(...onString(u, c)) < tip - c) low = u;
    else high = u;
  }
  const middle = onString(low, c);
  const touch = onString(low);
  const first = Math.atan2(touch[1] - middle[1], touch[0] - middle[0]);
  const last = Math.atan2(middle[1], middle[0]);
  const arc = even(first, last, ARC).map((b): XY => [middle[0] + c * Math.cos(b), middle[1] + c * Math.sin(b)]);
  const top = even(Math.PI / 2 - last, 0, 8).map((t): XY => [tip * Math.sin(t), tip * Math.cos(t)]);
  const flank = even(0, low, 70).map((u) => onString(u));
  const foot: XY = [rb * 0.8 * Math.sin(half), rb * 0.8 * Math.cos(half)];
  return mirrored([foot, ...flank, ...arc.slice(1), ...top.slice(1)]);
}

const flat = ([R, t]: SpacePoint): XY => [R * Math.sin(t), R * Math.cos(t)];
const printed: string[] = [];
afterAll(() => {
  process.stdout.write(`Generated profiles against tools rolled past a blank, largest distance (in):\n${printed.join('\n')}\n`);
});

type Run = { readonly flank: readonly XY[]; readonly fillet: readonly XY[] };

/** Both ways: the formula's points from the rolled outline, and the rolled corners from the formula's curve. `limit` in inches, on the flank; the fillet may have as much. */
function hold(name: string, { flank, fillet }: Run, rolled: readonly XY[], isIn: (at: XY) => boolean, m: number): void {
  const inch = (mm: number): number => mm / MM;
  const worst = (points: readonly XY[]): number => inch(Math.max(...points.map((at) => toPolygon(at, rolled))));
  const corners = rolled.filter(isIn);
  const back = inch(Math.max(...corners.map((at) => toRun(at, [...fillet, ...flank]))));
  printed.push(
    `  ${name}: flank ${worst(flank).toExponential(1)}, fillet ${worst(fillet).toExponential(1)}, rolled corners ${back.toExponential(1)}`,
  );
  const limit = 0.0001 * (m / 2.54);
  expect(corners.length).toBeGreaterThan(20);
  expect(worst(flank)).toBeLessThan(limit);
  expect(worst(fillet)).toBeLessThan(limit);
  expect(back).toBeLessThan(limit);
}

const STEPS = { fillet: 50, flank: 50 };
const flanksOf = (N: number, m: number, tool: Tool, more: { helix?: number; shift?: number; ring?: boolean } = {}): Flanks => ({
  N,
  mn: m,
  an: tool.degrees * RAD,
  psi: (more.helix ?? 0) * RAD,
  v: (more.shift ?? 0) * m,
  A: tool.addendum * m,
  B: tool.dedendum * m,
  ring: more.ring ?? false,
  unit: 'mm',
});

type Outer = { name: string; N: number; m: number; tool: Tool; shift: number; helix: number; undercut: boolean };
const OUTER: readonly Outer[] = [
  { name: '12 teeth, 10 DP, 20°, shifted out 0.4', N: 12, m: 2.54, tool: FULL, shift: 0.4, helix: 0, undercut: false },
  { name: '25 teeth, 10 DP, 14½°, shifted in 0.2', N: 25, m: 2.54, tool: OLD, shift: -0.2, helix: 0, undercut: true },
  { name: '24 teeth, module 3, 20°, helix 30°', N: 24, m: 3, tool: FULL, shift: 0, helix: 30, undercut: false },
  { name: '10 teeth, 10 DP, 20°, helix 23°, shifted out 0.15', N: 10, m: 2.54, tool: FULL, shift: 0.15, helix: 23, undercut: true },
  { name: '18 teeth, 10 DP, 14½°, helix 45°', N: 18, m: 2.54, tool: OLD, shift: 0, helix: 45, undercut: false },
];

describe('shifted, undercut and helical teeth against a rack rolled past a blank', () => {
  it.each(OUTER)('$name', ({ name, N, m, tool, shift, helix, undercut }) => {
    const mt = m / Math.cos(helix * RAD);
    const [r, ro, rr] = [(N * mt) / 2, (N * mt) / 2 + (tool.addendum + shift) * m, (N * mt) / 2 + (shift - tool.dedendum) * m];
    const half = generatedSpace(flanksOf(N, m, tool, { helix, shift }), tool.corner * m, STEPS);
    const pitch = Math.PI / N;
    const blank: XY[] = [...even(-pitch, pitch, 40).map((t) => flat([ro * 1.002, t])), ...[pitch, -pitch].map((t) => flat([r * 0.5, t]))];
    const tooth = slid(rackTooth(tool, m, helix), 0, r + shift * m);
    const reach = 3.6 / Math.sqrt(N);
    const swept = even(-reach, reach, 320).map((by) => turned(slid(tooth, r * by, 0), -by));
    const rolled = whatIsLeft(blank, swept);
    const run = { flank: half.flank.map(flat), fillet: [...half.root, ...half.fillet].map(flat) };
    const end = half.flank.at(-1)?.[0] ?? ro;
    expect(half.undercut).toBe(undercut);
    hold(
      name,
      run,
      rolled,
      ([x, y]) => x > 0 && Math.hypot(x, y) < end * 0.9995 && Math.hypot(x, y) > rr * 0.99 && Math.atan2(x, y) < pitch * 0.999,
      m,
    );
  });
});

type Ring = { name: string; N: number; Nc: number; m: number; tool: Tool };
const RINGS: readonly Ring[] = [
  { name: 'ring of 60, 10 DP, 20°, cutter of 30', N: 60, Nc: 30, m: 2.54, tool: FULL },
  { name: 'ring of 72, module 2, 20°, cutter of 25', N: 72, Nc: 25, m: 2, tool: FULL },
  { name: 'ring of 120, 10 DP, 14½°, cutter of 40', N: 120, Nc: 40, m: 2.54, tool: OLD },
];

describe('inside teeth against a pinion cutter rolled in a ring', () => {
  it.each(RINGS)('$name', ({ name, N, Nc, m, tool }) => {
    const [r, rt, rr] = [(N * m) / 2, (N * m) / 2 - tool.addendum * m, (N * m) / 2 + tool.dedendum * m];
    const half = shapedRingSpace(flanksOf(N, m, tool, { ring: true }), { Nc, c: tool.corner * m }, STEPS);
    const pitch = Math.PI / N;
    const blank: XY[] = [
      ...even(-pitch, pitch, 40).map((t) => flat([rt * 0.999, t])),
      ...even(pitch, -pitch, 40).map((t) => flat([rr * 1.1, t])),
    ];
    const tooth = cutterTooth(tool, m, Nc, 0);
    const C = ((N - Nc) * m) / 2;
    const swept = even(-0.55, 0.55, 260).map((by) => turned(slid(turned(tooth, by), 0, C), (-by * Nc) / N));
    const rolled = whatIsLeft(blank, swept);
    const run = { flank: half.flank.map(flat), fillet: [...half.root, ...half.fillet].map(flat) };
    expect(r).toBeGreaterThan(rt);
    hold(name, run, rolled, ([x, y]) => x > 0 && Math.hypot(x, y) > rt * 1.0005 && Math.hypot(x, y) < rr * 1.005, m);
  });
});

describe('a rack against a pinion cutter rolled along it', () => {
  it.each([
    { name: 'rack, 10 DP, 20°, cutter of 30', m: 2.54, Nc: 30, tool: FULL },
    { name: 'rack, 10 DP, 14½°, cutter of 40', m: 2.54, Nc: 40, tool: OLD },
  ])('$name', ({ name, m, Nc, tool }) => {
    const tooth = { m, a: tool.degrees * RAD, A: tool.addendum * m, B: tool.dedendum * m };
    const half = shapedRackSpace(tooth, { Nc, c: tool.corner * m }, STEPS);
    const [wide, top, low] = [(Math.PI * m) / 2, tooth.A * 1.001, -3 * m];
    const blank: XY[] = [
      [-wide, top],
      [wide, top],
      [wide, low],
      [-wide, low],
    ];
    const r = (Nc * m) / 2;
    // The cutter stands above the bar, its tooth pointing down: turned half round.
    const down = turned(cutterTooth(tool, m, Nc, 0), Math.PI);
    const swept = even(-0.6, 0.6, 260).map((by) => slid(turned(down, by), r * by, r));
    const rolled = whatIsLeft(blank, swept);
    const asXY = ([x, y]: RackPoint): XY => [x, y];
    const run = { flank: half.flank.map(asXY), fillet: [...half.root, ...half.fillet].map(asXY) };
    hold(name, run, rolled, ([x, y]) => x > 0 && x < wide * 0.999 && y < tooth.A * 0.999 && y > -tooth.B * 1.01, m);
  });
});
