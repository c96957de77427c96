import { afterAll, describe, expect, it } from 'vitest';
import type { SpacePoint } from '../../../lib/gears/profile.formulas.ts';
import { rackCutSpace } from '../../../lib/gears/profile-rack.formulas.ts';
import type { Tooth } from '../../../lib/gears/tooth.ts';
import { toPolygon, toRun, type XY } from './polygons.ts';
import { type Rack, rolledSpace } from './rolled-rack.ts';

/**
 * Second route to the tooth: a rack is rolled past a blank in small steps and everything it sweeps is taken away with a general
 * polygon library. The rack's sizes stand here as the standards print them (multiples of the module):
 * 14½° full depth 1/1.157, corner 0.209; 20° full depth 1/1.25, corner 0.300 (ASA B6.1; value from memory). Nothing of the
 * rack is asked of lib.
 */
const RACKS: Readonly<Record<'14½°' | '20°', Rack>> = {
  '14½°': { degrees: 14.5, addendum: 1, dedendum: 1.157, corner: 0.209 },
  '20°': { degrees: 20, addendum: 1, dedendum: 1.25, corner: 0.3 },
};

type Wheel = { name: string; N: number; moduleMm: number; rack: '14½°' | '20°'; undercut: boolean };
const WHEELS: readonly Wheel[] = [
  { name: '22 teeth, 8 DP, 14½°', N: 22, moduleMm: 25.4 / 8, rack: '14½°', undercut: true },
  { name: '20 teeth, 10 DP, 14½°', N: 20, moduleMm: 25.4 / 10, rack: '14½°', undercut: true },
  { name: '28 teeth, module 2.5, 20°', N: 28, moduleMm: 2.5, rack: '20°', undercut: false },
  { name: '12 teeth, 10 DP, 20°', N: 12, moduleMm: 25.4 / 10, rack: '20°', undercut: true },
];

const flat = ([R, t]: SpacePoint): XY => [R * Math.sin(t), R * Math.cos(t)];
const mmToInch = (mm: number): number => mm / 25.4;

/** Largest distance both ways: of the formula's points from the rolled polygon, and of the polygon's corners from the formula's curve. */
function largestDistances(wheel: Wheel) {
  const { degrees, addendum, dedendum, corner } = RACKS[wheel.rack];
  const m = wheel.moduleMm;
  const tooth: Tooth = { N: wheel.N, m, a: (degrees * Math.PI) / 180, A: addendum * m, B: dedendum * m, unit: 'mm' };
  const half = rackCutSpace(tooth, corner * m, { fillet: 120, flank: 120 });
  const rolled = rolledSpace({ ...wheel, rack: RACKS[wheel.rack] });
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
