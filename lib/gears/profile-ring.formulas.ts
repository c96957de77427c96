import { DomainError } from '../figure/domain-error.ts';
import { atOf, baseOf, type Flanks, pitchOf, rootOf, tipOf, transverseThickness } from './flanks.formulas.ts';
import { inv, inverseInv } from './involute.formulas.ts';
import { FINE, type HalfSpace, type SpacePoint, type Steps, stepped } from './profile.formulas.ts';

/** A tooth that points outward, by its base circle rb, half its angle there tb, its tip circle and the radius c of its rounded corners. */
type RoundedTooth = { readonly rb: number; readonly tb: number; readonly tip: number; readonly c: number };

/** Middle of a rounded corner: q from the middle of the gear, t from the middle line of the tooth; s the string of the involute where it begins. */
export type TipCorner = { readonly q: number; readonly t: number; readonly s: number };

/**
 * The corner that touches the tip circle from inside and the involute: q = tip − c, s = √(q² − rb²) + c,
 * t = tb − s/rb + atan((s − c)/rb).
 * Derived: the parallel of an involute is an involute of the same base circle, its string shorter by c. Throws DomainError when the two
 * corners overlap on the tip, or the corner reaches below the base circle.
 * Example: 20 teeth, m 1, 20°, tip radius 11.25, c 0.2: q 11.05, s 6.0138.
 */
export function tipCornerOf({ rb, tb, tip, c }: RoundedTooth): TipCorner {
  const q = tip - c;
  const s = Math.sqrt(Math.max(0, q * q - rb * rb)) + c;
  const t = tb - s / rb + Math.atan2(s - c, rb);
  if (q > rb && c >= 0 && t > -1e-12) return { q, t: Math.max(0, t), s };
  throw new DomainError({
    given: 'The rounded corners of this tool do not fit its tip.',
    limit: 'Both corners must lie side by side on the tip, and end on the flank.',
    tryThis: 'Take a smaller corner.',
    about: ['corner'],
  });
}

/** A pinion cutter for a ring: Nc teeth, c radius of its corners in the plane of the wheel; as new as when its teeth are of standard thickness. */
export type PinionCutter = { readonly Nc: number; readonly c: number };

/**
 * How cutter and ring stand to each other:
 *   inv aw = inv at + 2 v tan an/((N − Nc) mt cos ψ);  C = (N − Nc) mt cos at/(2 cos aw).
 * aw working angle, C centre distance. Derived: at the working circles the cutter's tooth fills the ring's space; ISO 21771:2007,
 * internal pair (value from memory). Example: ring of 60, cutter of 30, m 1, v 0: aw = 20°, C = 15.
 */
function setOf(flanks: Flanks, Nc: number): { readonly aw: number; readonly C: number } {
  const [at, d, { N }] = [atOf(flanks), pitchOf(flanks), flanks];
  const between = d * (1 - Nc / N);
  const turned = inv(at) + (2 * flanks.v * Math.tan(flanks.an)) / (Math.cos(flanks.psi) * between);
  if (!(Nc < N && Nc >= 3)) throw noSuchCutter(Nc, N);
  if (!(turned >= 0)) throw cannotMesh(Nc);
  const aw = inverseInv(turned);
  return { aw, C: (between * Math.cos(at)) / (2 * Math.cos(aw)) };
}

const noSuchCutter = (Nc: number, N: number): DomainError =>
  new DomainError({
    given: `A cutter of ${Nc} teeth in a ring of ${N}.`,
    limit: 'The cutter has at least 3 teeth and fewer than the ring.',
    tryThis: 'Take a cutter of about half the ring’s teeth.',
    about: ['cutterTeeth'],
  });

const cannotMesh = (Nc: number): DomainError =>
  new DomainError({
    given: `A cutter of ${Nc} teeth and this shift.`,
    limit: 'No centre distance lets the cutter’s tooth fill the space of the ring.',
    tryThis: 'Take a smaller shift or a cutter with fewer teeth.',
    about: ['shift'],
  });

const trimmed = (Nc: number): DomainError =>
  new DomainError({
    given: `A cutter of ${Nc} teeth in this ring.`,
    limit: 'The ring’s tips lie where this cutter has no involute: it would cut them wrong.',
    tryThis: 'Take a cutter with more teeth, or shorten the ring’s teeth.',
    about: ['cutterTeeth'],
  });

const belowBase = (): DomainError =>
  new DomainError({
    given: 'The ring’s tips lie inside its base circle.',
    limit: 'There is no involute there.',
    tryThis: 'Take more teeth, a shorter addendum or a larger shift.',
    about: ['teeth'],
  });

/**
 * Half the angle of a ring's space at radius R: t = tb − inv(acos(rb/R)), tb = π/N − st/d + inv at. The space of a ring is a wheel's
 * tooth in shape. Source: as spaceAtBase; the ring's involute is the wheel's, seen from the other side. Example: 60 teeth, m 1, 20°, R 30: 0.02618.
 */
const baseAngle = (flanks: Flanks): number => Math.PI / flanks.N - transverseThickness(flanks) / pitchOf(flanks) + inv(atOf(flanks));

/** The ring's flank from radius `from` inward to its tips. */
function ringFlank(flanks: Flanks, from: number, steps: number): SpacePoint[] {
  const [rb, tip, tb] = [baseOf(flanks) / 2, tipOf(flanks) / 2, baseAngle(flanks)];
  if (tip < rb) throw belowBase();
  const roll = (R: number): number => Math.sqrt(R * R - rb * rb);
  return stepped(roll(from), roll(tip), steps).map((along) => [Math.hypot(rb, along), tb - along / rb + Math.atan2(along, rb)]);
}

const land = (R: number, from: number, to: number): SpacePoint[] => stepped(from, to, to - from > 1e-9 ? 2 : 0).map((t) => [R, t]);

/** Everything of a ring's half space once its fillet is known; from the bottom of the space, which lies outermost, inward. */
function ringSpace(flanks: Flanks, fillet: readonly SpacePoint[], steps: number): HalfSpace {
  const [start, end] = [fillet[0] ?? [0, 0], fillet.at(-1) ?? [0, 0]];
  const flank = ringFlank(flanks, end[0], steps);
  const [R = 0, t = 0] = flank.at(-1) ?? [];
  return { root: land(start[0], 0, start[1]), fillet, flank, top: land(R, t, Math.PI / flanks.N), formRadius: end[0], undercut: false };
}

/**
 * Half a ring's space as a pinion cutter with rounded corners leaves it, from the root (outermost) inward.
 * Corner's middle Q turns with the cutter by w from the line of centres: Q = (q sin w, C + q cos w), rolling point I = (0, C + rw),
 * rw = C Nc/(N − Nc); the corner's skin touches at P = Q + c (Q − I)/|Q − I|; the ring has then turned by (w − tq) Nc/N.
 * w runs from 0 (root) to atan((s − c)/rbc) − aw, where the normal is the line of action and the flank begins.
 * Derivation: whatever touches, touches along a normal through the rolling point; the corner stands beyond it. Proved against a cutter
 * rolled in a ring by polygons. Source: derived; Buckingham, Analytical Mechanics of Gears (1949), internal gears (value from memory).
 * Throws DomainError when the corner does not fit, the tips lie inside the base circle or would be trimmed.
 * Example: ring of 60, m 1, 20°, cutter of 30, corner 0.2: root radius 31.25.
 */
export function shapedRingSpace(flanks: Flanks, { Nc, c }: PinionCutter, steps: Steps = FINE): HalfSpace {
  const { N } = flanks;
  const { aw, C } = setOf(flanks, Nc);
  const [at, root, rb] = [atOf(flanks), rootOf(flanks) / 2, baseOf(flanks) / 2];
  const [rbc, rw] = [(rb * Nc) / N, (C * Nc) / (N - Nc)];
  const reach = Math.sqrt(Math.max(0, (tipOf(flanks) / 2) ** 2 - rb * rb)) - C * Math.sin(aw);
  if (tipOf(flanks) / 2 < rb) throw belowBase();
  if (reach < 0) throw trimmed(Nc);
  const corner = tipCornerOf({ rb: rbc, tb: Math.PI / (2 * Nc) + inv(at), tip: root - C, c });
  const fillet = stepped(0, Math.atan2(corner.s - c, rbc) - aw, steps.fillet).map((w): SpacePoint => {
    const [x, y] = [corner.q * Math.sin(w), C + corner.q * Math.cos(w)];
    const from = Math.hypot(x, y - C - rw);
    const [px, py] = [x + (c * x) / from, y + (c * (y - C - rw)) / from];
    return [Math.hypot(px, py), Math.atan2(px, py) - ((w - corner.t) * Nc) / N];
  });
  return ringSpace(flanks, fillet, steps.flank);
}

/**
 * Half a ring's space as a tool ground to its shape leaves it: rounded where the bottom meets the flank with radius f, else a true involute.
 * The space is a wheel's tooth in shape, so its corner is tipCornerOf. Throws DomainError as shapedRingSpace.
 */
export function groundRingSpace(flanks: Flanks, f: number, steps: Steps = FINE): HalfSpace {
  const [rb, tb, tip] = [baseOf(flanks) / 2, baseAngle(flanks), rootOf(flanks) / 2];
  const { q, t, s } = tipCornerOf({ rb, tb, tip, c: f });
  const [cx, cy] = [q * Math.sin(t), q * Math.cos(t)];
  const last = Math.PI / 2 - (tb - s / rb + Math.PI / 2);
  const first = Math.PI / 2 - t;
  const fillet = stepped(first, last, steps.fillet).map((turn): SpacePoint => {
    const [x, y] = [cx + f * Math.cos(turn), cy + f * Math.sin(turn)];
    return [Math.hypot(x, y), Math.atan2(x, y)];
  });
  return ringSpace(flanks, fillet, steps.flank);
}
