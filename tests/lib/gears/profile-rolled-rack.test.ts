import { afterAll, describe, expect, it } from 'vitest';
import type { SpacePoint } from '../../../lib/gears/profile.formulas.ts';
import { rackCutSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';
import { toPolygon, toRun, whatIsLeft, type XY } from './polygons.ts';

/**
 * Second route to the tooth: a rack is rolled past a blank in small steps and everything it sweeps is taken away with a general
 * polygon library. The rack's sizes stand here as the standards print them (multiples of the module):
 * 14½° full depth 1/1.157, corner 0.209; 20° full depth 1/1.25, corner 0.300 (ASA B6.1; value from memory). Nothing of the
 * rack is asked of lib.
 */
const RACKS = {
  '14½°': { degrees: 14.5, addendum: 1, dedendum: 1.157, corner: 0.209 },
  '20°': { degrees: 20, addendum: 1, dedendum: 1.25, corner: 0.3 },
} as const;

type Wheel = { name: string; N: number; moduleMm: number; rack: keyof typeof RACKS; undercut: boolean };
const WHEELS: readonly Wheel[] = [
  { name: '22 teeth, 8 DP, 14½°', N: 22, moduleMm: 25.4 / 8, rack: '14½°', undercut: true },
  { name: '20 teeth, 10 DP, 14½°', N: 20, moduleMm: 25.4 / 10, rack: '14½°', undercut: true },
  { name: '28 teeth, module 2.5, 20°', N: 28, moduleMm: 2.5, rack: '20°', undercut: false },
  { name: '12 teeth, 10 DP, 20°', N: 12, moduleMm: 25.4 / 10, rack: '20°', undercut: true },
];

const ROLLS = 240;

/** One tooth of the rack, pointing down, its middle on x = 0 and its pitch line on y = 0. The corner is 40 chords, off its arc by under 0.0001 mm. */
function rackTooth({ moduleMm: m, rack }: Wheel): XY[] {
  const { degrees, dedendum, corner } = RACKS[rack];
  const a = (degrees * Math.PI) / 180;
  const [B, c] = [dedendum * m, corner * m];
  const sideAt = (depth: number): number => (Math.PI * m) / 4 - depth * Math.tan(a);
  const [u, h] = [sideAt(B - c) - c / Math.cos(a), B - c];
  const arc = Array.from({ length: 41 }, (_, i): XY => {
    const angle = a + ((Math.PI / 2 - a) * i) / 40;
    return [u + c * Math.cos(angle), -(h + c * Math.sin(angle))];
  });
  const right: XY[] = [[sideAt(-2 * m), 2 * m], ...arc];
  return [...right, ...right.map(([x, y]): XY => [-x, y]).reverse()];
}

/** The rack tooth as it stands to the gear after the gear has turned by `turned`: slid r × turned, then turned back with the gear. */
function asSeenFromGear(tooth: readonly XY[], r: number, turned: number): XY[] {
  const [sin, cos] = [Math.sin(turned), Math.cos(turned)];
  return tooth.map(([x, y]) => {
    const [X, Y] = [x + r * turned, y + r];
    return [X * cos - Y * sin, X * sin + Y * cos];
  });
}

/** What is left of a sector of the blank, one pitch wide, as the boundary of the space cut into it (mm). */
function rolledSpace(wheel: Wheel): XY[] {
  const { N, moduleMm: m } = wheel;
  const [r, ro] = [(N * m) / 2, (N * m) / 2 + m];
  const pitch = Math.PI / N;
  const rim = Array.from({ length: 41 }, (_, i): XY => {
    const t = -pitch + (2 * pitch * i) / 40;
    return [ro * 1.002 * Math.sin(t), ro * 1.002 * Math.cos(t)];
  });
  const blank: XY[] = [
    [-0.5 * r * Math.sin(pitch), 0.5 * r * Math.cos(pitch)],
    ...rim,
    [0.5 * r * Math.sin(pitch), 0.5 * r * Math.cos(pitch)],
  ];
  const tooth = rackTooth(wheel);
  const reach = 3.2 / Math.sqrt(N);
  const swept = Array.from({ length: ROLLS + 1 }, (_, i) => asSeenFromGear(tooth, r, -reach + (2 * reach * i) / ROLLS));
  return whatIsLeft(blank, swept);
}

const flat = ([R, t]: SpacePoint): XY => [R * Math.sin(t), R * Math.cos(t)];
const mmToInch = (mm: number): number => mm / 25.4;

/** Largest distance both ways: of the formula's points from the rolled polygon, and of the polygon's corners from the formula's curve. */
function largestDistances(wheel: Wheel) {
  const { degrees, addendum, dedendum, corner } = RACKS[wheel.rack];
  const m = wheel.moduleMm;
  const tooth: Tooth = { N: wheel.N, m, a: (degrees * Math.PI) / 180, A: addendum * m, B: dedendum * m, unit: 'mm' };
  const half = rackCutSpace(tooth, corner * m, { fillet: 120, flank: 120 });
  const rolled = rolledSpace(wheel);
  const ro = (wheel.N * m) / 2 + addendum * m;
  const worst = (points: readonly SpacePoint[]): number => Math.max(...points.map((at) => toPolygon(flat(at), rolled)));
  const curve = [...half.root, ...half.fillet, ...half.flank].map(flat);
  const inSpace = rolled.filter(
    ([x, y]) => x > 0 && Math.hypot(x, y) < ro * 0.9995 && Math.hypot(x, y) > (wheel.N * m) / 2 - dedendum * m - 0.1 * m,
  );
  const back = Math.max(...inSpace.map((at) => toRun(at, curve)));
  return { flank: worst(half.flank), fillet: worst([...half.root, ...half.fillet]), back, corners: inSpace.length, half };
}

const printed: string[] = [];
afterAll(() => {
  process.stdout.write(`Tooth by rolled rack, largest distance (in):\n${printed.join('\n')}\n`);
});

describe('the tooth by formula against a rack rolled past a blank', () => {
  it.each(WHEELS)('$name', (wheel) => {
    const { flank, fillet, back, corners, half } = largestDistances(wheel);
    printed.push(
      `  ${wheel.name}: flank ${mmToInch(flank).toExponential(1)}, fillet ${mmToInch(fillet).toExponential(1)}, rolled corners ${mmToInch(back).toExponential(1)}`,
    );
    const limit = 0.0001 * (wheel.moduleMm / 2.54);
    expect(half.undercut).toBe(wheel.undercut);
    expect(corners).toBeGreaterThan(100);
    expect(mmToInch(flank)).toBeLessThan(limit);
    expect(mmToInch(fillet)).toBeLessThan(limit);
    expect(mmToInch(back)).toBeLessThan(limit);
  });
});
