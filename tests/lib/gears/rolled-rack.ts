import { whatIsLeft, type XY } from './polygons.ts';

/** A rack as a standard prints it, square to straight teeth, in multiples of the module. */
export type Rack = { readonly degrees: number; readonly addendum: number; readonly dedendum: number; readonly corner: number };
export type Rolled = { readonly N: number; readonly moduleMm: number; readonly rack: Rack; readonly shift?: number };

const ROLLS = 240;

/** One tooth of the rack, pointing down, its middle on x = 0 and its pitch line on y = 0. The corner is 40 chords, off its arc by under 0.0001 mm. */
function rackTooth({ moduleMm: m, rack: { degrees, dedendum, corner } }: Rolled): XY[] {
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

/** The rack tooth as it stands to the gear after the gear has turned by `turned`: slid r × turned, `out` further from the middle, then turned back with it. */
function asSeenFromGear(tooth: readonly XY[], r: number, out: number, turned: number): XY[] {
  const [sin, cos] = [Math.sin(turned), Math.cos(turned)];
  return tooth.map(([x, y]) => {
    const [X, Y] = [x + r * turned, y + r + out];
    return [X * cos - Y * sin, X * sin + Y * cos];
  });
}

/** What is left of a sector of the blank, one pitch wide, as the boundary of the space cut into it (mm). */
export function rolledSpace(wheel: Rolled): XY[] {
  const { N, moduleMm: m, shift = 0 } = wheel;
  const r = (N * m) / 2;
  const ro = r + (1 + shift) * m;
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
  const swept = Array.from({ length: ROLLS + 1 }, (_, i) => asSeenFromGear(tooth, r, shift * m, -reach + (2 * reach * i) / ROLLS));
  return whatIsLeft(blank, swept);
}
