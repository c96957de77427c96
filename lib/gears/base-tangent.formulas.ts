import {
  atOf,
  baseOf,
  type Flanks,
  normalThickness,
  pitchOf,
  pointedDiameter,
  psibOf,
  rootOf,
  straightSideEnds,
  tipOf,
} from './flanks.formulas.ts';
import { inv } from './involute.formulas.ts';
import { hobbedFormDiameter } from './profile-rack.formulas.ts';

/** What lies between the jaws: teeth of a wheel, spaces of a ring. Thickness of one of them, square to the teeth. */
const between = ({ ring, mn }: Flanks, sn: number): number => (ring ? Math.PI * mn - sn : sn);

/**
 * Span over k teeth (of a ring: across k spaces), square to the flanks, of straight, helical and shifted teeth of normal thickness sn:
 *   W = cos an (sn + (k − 1) π mn + N mn inv at).  With sn = π mn/2 + 2 v tan an it is mn cos an ((k − ½) π + N inv at) + 2 v sin an.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-86, span measurement (value from memory); straight teeth: metric span formula of an MOT
 * spur gear catalogue. Throws RangeError when k is no whole number above 0. Example: m 3, 20°, 24 teeth, v 1.2, over 4: 32.8266.
 */
export function spanOver(flanks: Flanks, sn: number, k: number): number {
  if (!(Number.isInteger(k) && k >= 1)) throw new RangeError(`no span over ${k} teeth`);
  const { mn, an, N } = flanks;
  return Math.cos(an) * (between(flanks, sn) + (k - 1) * Math.PI * mn + N * mn * inv(atOf(flanks)));
}

/** Normal thickness from a span: the turn-about of spanOver, with its source. Example: 32.8266 at m 3, 20°, 24 teeth, over 4: 5.5860. */
export const thicknessFromSpan = (flanks: Flanks, W: number, k: number): number => {
  const { mn, an, N } = flanks;
  return between(flanks, W / Math.cos(an) - (k - 1) * Math.PI * mn - N * mn * inv(atOf(flanks)));
};

/**
 * Radius at which both jaws touch when they stand even, in the plane of the wheel: √(Rb² + (W cos ψb/2)²).
 * Source: derived: the line W lies in a plane that touches the base cylinder, leaning ψb to its axis. Example: 24 teeth, m 3, 20°, W 32.8266: 37.600.
 */
export const spanContactRadius = (flanks: Flanks, W: number): number => Math.hypot(baseOf(flanks) / 2, (W * Math.cos(psibOf(flanks))) / 2);

/**
 * Least face on which a helical span can be laid: W sin ψb; the jaws need some more to rest on.
 * Source: SDP/SI, Elements of Metric Gear Technology, T-87: b = W sin ψb + Δ, Δ at least 3 mm (value from memory). Example: W 42.0085, 23.3987°: 16.683.
 */
export const leastFaceForSpan = (flanks: Flanks, W: number): number => W * Math.sin(psibOf(flanks));

/**
 * The count, not whole, over which the jaws touch at the circle d + 2 v: k = 1 + (W/cos an − sn − N mn inv at)/(π mn), W cos ψb = √((d + 2 v)² − db²).
 * Source: SDP/SI, Elements of Metric Gear Technology, T-86, zm = z K + ½ (value from memory), of which this is the derivation. Without shift or
 * helix it is N a/180° + ½. Throws RangeError when d + 2 v lies inside the base circle. Example: m 3, 20°, 24 teeth, v 1.2: 3.78787.
 */
export function realSpanCount(flanks: Flanks): number {
  const { mn, an, N, v } = flanks;
  const [dc, db] = [pitchOf(flanks) + 2 * v, baseOf(flanks)];
  if (!(dc >= db)) throw new RangeError('the shifted pitch circle lies inside the base circle');
  const W = Math.sqrt(dc ** 2 - db ** 2) / Math.cos(psibOf(flanks));
  const sn = between(flanks, normalThickness(flanks));
  return 1 + (W / Math.cos(an) - sn - N * mn * inv(atOf(flanks))) / (Math.PI * mn);
}

/** A piece of flank between two radii, in the plane of the wheel. */
export type FlankPiece = { readonly from: number; readonly to: number };

/**
 * Where a flank is involute that a cutter of its own form has cut. A wheel: from the end of a rack's straight side A deep (never inside base circle
 * or root clearance) to the tip, or the point if that comes first. A ring: from tip or base circle to where the clearance at its root begins.
 * Source: derived, as lowestFlankRadius of straight wheels. Says nothing of undercut: see hobbedFlank.
 */
export function usableFlank(flanks: Flanks, tip: number = tipOf(flanks)): FlankPiece {
  const clearance = Math.max(0, flanks.B - flanks.A);
  if (flanks.ring) return { from: Math.max(tip, baseOf(flanks)) / 2, to: rootOf(flanks) / 2 - clearance };
  const from = Math.max(straightSideEnds(flanks, flanks.A) / 2, rootOf(flanks) / 2 + clearance);
  return { from, to: Math.min(tip, pointedDiameter(flanks)) / 2 };
}

/**
 * What a hob or rack leaves of that piece: of an undercut wheel it begins where the trochoid crosses the involute, and may be nothing (null). A ring is not
 * cut so. Source: derived: see hobbedFormDiameter. Example: 12 teeth, 8 DP, 14½°: from 0.7344, where the base circle is 0.7261.
 */
export function hobbedFlank(flanks: Flanks, tip: number = tipOf(flanks)): FlankPiece | null {
  const whole = usableFlank(flanks, tip);
  if (flanks.ring) return whole;
  const form = hobbedFormDiameter(flanks);
  return form === null || form / 2 >= whole.to ? null : { from: Math.max(form / 2, whole.from), to: whole.to };
}

/** True when a span W touches a piece of flank. */
const spanTouches = (flanks: Flanks, W: number, piece: FlankPiece | null): boolean => {
  const R = spanContactRadius(flanks, W);
  return piece !== null && R > piece.from && R < piece.to;
};

/**
 * The count to measure over: the whole number nearest realSpanCount, halves down, moved by one only when the jaws would miss the flank that a hob leaves,
 * or, where none touches that, the flank that a form cutter leaves; null when none serves. sn the thickness as it is.
 */
export function bestSpanCount(flanks: Flanks, sn: number = normalThickness(flanks)): number | null {
  const onFlank = pitchOf(flanks) + 2 * flanks.v >= baseOf(flanks);
  const k = onFlank ? Math.max(1, Math.ceil(realSpanCount(flanks) - 0.5 - 1e-9)) : 1;
  const counts = [k, k + 1, k - 1].filter((count) => count >= 1 && count < flanks.N);
  const over = (piece: FlankPiece | null): number | undefined =>
    counts.find((count) => spanTouches(flanks, spanOver(flanks, sn, count), piece));
  return over(hobbedFlank(flanks)) ?? over(usableFlank(flanks)) ?? null;
}
