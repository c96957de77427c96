import { DomainError } from '../figure/domain-error.ts';
import { formCutSpace, formFillet } from '../gears/profile-form.formulas.ts';
import { halfSpacePoints } from '../gears/profile-outline.ts';
import { plainFlanks } from '../gears/profile-rack.formulas.ts';
import { groundRackSpace } from '../gears/profile-rack-cut.formulas.ts';
import { groundRingSpace } from '../gears/profile-ring.formulas.ts';
import { baseDiameter, pitchDiameter, rootDiameter, type Tooth, wholeDepth } from '../gears/tooth.ts';

/** What a tool is ground for: a wheel, a ring with teeth on the inside, a rack. */
export const GROUND_FOR = ['wheel', 'ring', 'rack'] as const;
export type GroundFor = (typeof GROUND_FOR)[number];

/** A point of the tool's right edge: x half its width there, y how far from its tip. */
export type EdgePoint = readonly [x: number, y: number];

const FINE = { fillet: 60, flank: 200 };

/** The corner when none was typed: that of the makers' form cutters for a wheel; for ring and rack the clearance's own, (B − A)/(1 − sin a). */
export function usualFillet(tooth: Tooth, kind: GroundFor): number {
  if (kind === 'wheel') return formFillet(tooth);
  const { A, B, a, m } = tooth;
  const room = (((Math.PI * m) / 4 - B * Math.tan(a)) * Math.cos(a)) / (1 - Math.sin(a));
  return Math.max(0, Math.min((B - A) / (1 - Math.sin(a)), 0.8 * room));
}

function wheelEdge(tooth: Tooth, f: number): EdgePoint[] {
  const space = formCutSpace(tooth, f, FINE);
  const rr = rootDiameter(tooth) / 2;
  return halfSpacePoints({ ...space, top: space.top.slice(0, 1) }).map(([R, t]) => [R * Math.sin(t), R * Math.cos(t) - rr]);
}

/** A little outside the base circle: the involute has a beginning there. */
const JUST_OUTSIDE = 1 + 1e-9;

/** How far a ring's tips lie inside its base circle; nothing or less where the flank is an involute all along. */
export const insideBase = (tooth: Tooth): number => (baseDiameter(tooth) - pitchDiameter(tooth)) / 2 + tooth.A;

/** Inside the base circle a ring's flank is taken straight to the middle of the ring, as a wheel's is. */
function ringEdge(tooth: Tooth, f: number): EdgePoint[] {
  const beyond = insideBase(tooth);
  const A = beyond > 0 ? pitchDiameter(tooth) / 2 - (baseDiameter(tooth) / 2) * JUST_OUTSIDE : tooth.A;
  const space = groundRingSpace({ ...plainFlanks({ ...tooth, A }), ring: true }, f, FINE);
  const root = space.root[0]?.[0] ?? 0;
  const points = halfSpacePoints({ ...space, top: space.top.slice(0, 1) });
  const last = points.at(-1);
  const foot = beyond > 0 && last ? [[pitchDiameter(tooth) / 2 - tooth.A, last[1]] as const] : [];
  return [...points, ...foot].map(([R, t]) => [R * Math.sin(t), root - R * Math.cos(t)]);
}

function rackEdge(tooth: Tooth, f: number): EdgePoint[] {
  const { root, fillet, flank } = groundRackSpace(tooth, f, FINE);
  return [...root, ...fillet.slice(1), ...flank.slice(1)].map(([x, y]) => [x, y + tooth.B]);
}

const EDGES = { wheel: wheelEdge, ring: ringEdge, rack: rackEdge } as const;

/** A tip that would be hollow is ground flat: points that lie below the middle of the tip are left out, the edge begins where it rises. */
function flatTipped(points: readonly EdgePoint[]): readonly EdgePoint[] {
  const rises = points.findIndex(([x, y]) => x > 0 && y > 1e-12);
  const [before, after] = [points[rises - 1], points[rises]];
  if (!before || !after) return points;
  const part = before[1] < 0 ? -before[1] / (after[1] - before[1]) : 0;
  return [[0, 0], [before[0] + part * (after[0] - before[0]), 0], ...points.slice(rises)];
}

/** The right edge of a tool ground to the space, from the middle of its tip to where the flank leaves the blank, and the corner used. */
export type GroundTool = { readonly edge: readonly EdgePoint[]; readonly fillet: number };

/**
 * The cutting edge of a fly cutter or shaper tool ground to a space. N of `tooth` is the virtual count for helical teeth.
 * Throws DomainError when the corner does not fit, or no space is left.
 */
export function groundTool(tooth: Tooth, kind: GroundFor, fillet: number | null): GroundTool {
  const f = fillet ?? usualFillet(tooth, kind);
  const narrow = (Math.PI * tooth.m) / 4 - tooth.B * Math.tan(tooth.a);
  if (kind === 'rack' && (narrow <= 0 || f > (narrow * Math.cos(tooth.a)) / (1 - Math.sin(tooth.a)))) throw tooRound();
  const edge = flatTipped(EDGES[kind](tooth, f));
  if (edge.some(([x, y]) => !Number.isFinite(x + y))) throw tooRound();
  return { edge, fillet: f };
}

const tooRound = (): DomainError =>
  new DomainError({
    given: 'A corner that does not fit the tip of the tool.',
    limit: 'Both corners must lie side by side on the tip.',
    tryThis: 'Take a smaller corner, or leave it to the usual one.',
    about: ['fillet'],
  });

/** Half the tool's width so far from its tip, between the points of its edge; null beyond them. */
export function halfWidthAt(edge: readonly EdgePoint[], y: number): number | null {
  const at = edge.findIndex((point) => point[1] >= y && point[0] > 0);
  const [upper, lower] = [edge[at], edge[at - 1]];
  if (!upper || !lower) return null;
  const rise = upper[1] - lower[1];
  return rise <= 0 ? upper[0] : lower[0] + ((upper[0] - lower[0]) * (y - lower[1])) / rise;
}

const MOST_ORDINATES = 120;

/** Distances from the tip in even steps, and the whole depth at the end. Throws DomainError when they would be more than fit a sheet. */
export function ordinates(tooth: Tooth, { edge }: GroundTool, step: number): readonly EdgePoint[] {
  const depth = Math.min(wholeDepth(tooth), edge.at(-1)?.[1] ?? 0);
  const many = Math.floor(depth / step + 1e-9);
  if (!(step > 0) || many > MOST_ORDINATES)
    throw new DomainError({
      given: `A width every ${step} ${tooth.unit} over this depth.`,
      limit: `More than ${MOST_ORDINATES} of them do not fit a sheet.`,
      tryThis: 'Take a larger step.',
      about: ['step'],
    });
  const heights = Array.from({ length: many + 1 }, (_, i) => i * step);
  const all = depth - (heights.at(-1) ?? 0) > step * 1e-6 ? [...heights, depth] : heights;
  return all.flatMap((y): EdgePoint[] => {
    const x = halfWidthAt(edge, y);
    return x === null ? [] : [[x, y]];
  });
}
