import { inv } from './involute.formulas.ts';
import { FINE, type Steps, stepped } from './profile.formulas.ts';
import { tipCornerOf } from './profile-ring.formulas.ts';
import type { Tooth } from './tooth.ts';

/** x along the rack from the middle of a space, y above its pitch line. */
export type RackPoint = readonly [x: number, y: number];

/** Half a space of a rack, from its bottom to the middle of the tooth. Each part begins with the last point of the part before it. */
export type HalfRack = {
  readonly root: readonly RackPoint[];
  readonly fillet: readonly RackPoint[];
  readonly flank: readonly RackPoint[];
  readonly top: readonly RackPoint[];
};

type RackTooth = Pick<Tooth, 'm' | 'a' | 'A' | 'B'>;

/** The straight flank and the lands beside a fillet: at height y the space is π m/4 + y tan a to each side. Source: the rack's definition. */
function rackAround({ m, a, A, B }: RackTooth, fillet: readonly RackPoint[], steps: number): HalfRack {
  const [startX] = fillet[0] ?? [0];
  const [, endY] = fillet.at(-1) ?? [0, 0];
  const side = (y: number): number => (Math.PI * m) / 4 + y * Math.tan(a);
  const flank = stepped(endY, A, steps).map((y): RackPoint => [side(y), y]);
  const top: RackPoint[] = [
    [side(A), A],
    [(Math.PI * m) / 2, A],
  ];
  return { root: stepped(0, startX, startX > 1e-9 ? 2 : 0).map((x): RackPoint => [x, -B]), fillet, flank, top };
}

/**
 * Half a rack's space as a tool ground to its shape leaves it, the bottom rounded with radius f: its middle stands B − f deep and
 * π m/4 − (B − f) tan a − f/cos a from the middle. Source: derived, as the corner of a rack cutter.
 */
export function groundRackSpace(tooth: RackTooth, f: number, steps: Steps = FINE): HalfRack {
  const { m, a, B } = tooth;
  const h = B - f;
  const u = (Math.PI * m) / 4 - h * Math.tan(a) - f / Math.cos(a);
  const fillet = stepped(Math.PI / 2, a, steps.fillet).map((b): RackPoint => [u + f * Math.cos(b), -(h + f * Math.sin(b))]);
  return rackAround(tooth, fillet, steps.flank);
}

/**
 * Half a rack's space as a pinion cutter of Nc teeth with corners of radius c leaves it.
 * Corner's middle Q, turned w from the plumb line: Q = (q sin w, q cos w − r) below the pitch line, r = Nc m/2; its skin touches at
 * P = Q + c Q/|Q|, for the rolling point is the origin; the rack has then moved r (w − tq).
 * w runs from 0 to atan((s − c)/rb) − a. Source: derived as for the ring, of which this is the case of endless many teeth.
 * Throws DomainError when the corner does not fit the cutter's tip. Example: cutter of 30, m 1, 20°, B 1.25, corner 0.2, w 0: y −1.25.
 */
export function shapedRackSpace(tooth: RackTooth, { Nc, c }: { readonly Nc: number; readonly c: number }, steps: Steps = FINE): HalfRack {
  const { m, a, B } = tooth;
  const r = (Nc * m) / 2;
  const rb = r * Math.cos(a);
  const corner = tipCornerOf({ rb, tb: Math.PI / (2 * Nc) + inv(a), tip: r + B, c });
  const fillet = stepped(0, Math.atan2(corner.s - c, rb) - a, steps.fillet).map((w): RackPoint => {
    const [x, y] = [corner.q * Math.sin(w), corner.q * Math.cos(w) - r];
    const far = 1 + c / Math.hypot(x, y);
    return [x * far - r * (w - corner.t), -y * far];
  });
  return rackAround(tooth, fillet, steps.flank);
}
