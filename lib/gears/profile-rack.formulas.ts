import { DomainError } from '../figure/domain-error.ts';
import { atOf, baseOf, type Flanks, pitchOf, pointedDiameter, rootOf, tipOf, transverseThickness } from './flanks.formulas.ts';
import { inv } from './involute.formulas.ts';
import {
  crossing,
  FINE,
  type FlankCurve,
  type HalfSpace,
  involuteBetween,
  rootLand,
  type SpacePoint,
  type Steps,
  stepped,
  topLand,
} from './profile.formulas.ts';
import type { Tooth } from './tooth.ts';

/** Of the rack that cuts a tooth, square to the teeth: module, pressure angle, addendum and dedendum of the gear. */
type RackTooth = Pick<Tooth, 'm' | 'a' | 'A' | 'B'>;

/**
 * The largest corner radius of a rack cutter that leaves its side straight over the whole addendum of a mate: (B − A)/(1 − sin a).
 * A addendum, B dedendum (both of the gear), a pressure angle. Derived: a corner of radius c touches the slanted side at c(1 − sin a)
 * above the tip, and that may be no more than the clearance B − A.
 * Agrees with the corner of ISO 53:1998, profile A (0.38 m for 20°, 1/1.25) and of the old 14½° full-depth rack (0.209/P for
 * 1/1.157), both values from memory. Where the tip is too narrow for it, the full round tip is taken.
 * Example: 20°, A = 1, B = 1.25: 0.3800.
 */
export function rackCorner(tooth: RackTooth): number {
  const { a, A, B } = tooth;
  return Math.min(Math.max(0, B - A) / (1 - Math.sin(a)), fullRound(tooth));
}

/** The corner radius at which the rack's tip is one round: (π m/4 − B tan a) cos a/(1 − sin a). Derived: the two corner circles then fall together. */
const fullRound = ({ m, a, B }: RackTooth): number => (((Math.PI * m) / 4 - B * Math.tan(a)) * Math.cos(a)) / (1 - Math.sin(a));

/**
 * A rack tooth's corner, square to the teeth: c its radius, h the depth of its middle below the line that rolls, u the distance of that
 * middle from the rack tooth's middle line; s how much wider all is in the plane of the wheel, 1/cos ψ.
 */
type Corner = { readonly c: number; readonly h: number; readonly u: number; readonly s: number };

/** A shifted gear's rack stands further out by v: its corner is less deep below the rolling line, its width at its own middle line the same. */
function cornerOf(flanks: Flanks, c: number): Corner {
  const tooth = normalRack(flanks);
  const { m, a, B } = tooth;
  const most = fullRound(tooth);
  if (!(c >= 0) || c > most + 1e-12) {
    throw new DomainError({
      given: 'The corner of the rack is larger than its tip.',
      limit: 'The largest is a tip that is one round.',
      tryThis: 'Take a smaller corner radius.',
      about: ['corner'],
    });
  }
  const h = B - c;
  return { c, h: h - flanks.v, u: (Math.PI * m) / 4 - h * Math.tan(a) - c / Math.cos(a), s: 1 / Math.cos(flanks.psi) };
}

/**
 * A point of the root fillet as left by the rounded corner of a rack cutter (a trochoid's parallel curve).
 * y = h + c sin b;  x = s (u + c cos b);  tan g = s tan b;  d = y/sin g;
 * R² = r² + d² − 2 r d sin g;  t = atan(d cos g / (r − d sin g)) − (y cot g − x)/r
 * r pitch radius; c, h, u, s the corner; b angle of the corner's normal to the rolling line, square to the teeth, from the pressure
 * angle (joins the flank) to 90° (joins the root); g the same normal in the plane of the wheel.
 * Derivation: the rack's line rolls on the pitch circle, so whatever touches, touches along a normal through the rolling point. In the
 * plane of the wheel the rack is s times as wide and as deep as before, its corner an ellipse: the point of the corner whose normal
 * is b stands y deep and x sideways, its normal leans g. It is y/sin g from the rolling point, y cot g sideways of it; so the rack has
 * moved y cot g − x, and the gear has turned by that over r. For straight teeth s = 1, g = b.
 * Source: Buckingham, Analytical Mechanics of Gears (1949), ch. 5, trochoid of a rounded rack corner (value from memory of the
 * chapter); the helical form derived; both proved against a rack rolled past a blank by polygons.
 * Example: r 11, B 1.157, a 14.5°, c 0.2095, straight, b 90°: R = 9.843.
 */
function trochoidPoint(r: number, { c, h, u, s }: Corner, b: number): SpacePoint {
  const g = Math.atan2(s * Math.sin(b), Math.cos(b));
  const [y, x] = [h + c * Math.sin(b), s * (u + c * Math.cos(b))];
  const [sin, cos] = [Math.sin(g), Math.cos(g)];
  const d = y / sin;
  const R = Math.sqrt(r * r + d * d - 2 * r * d * sin);
  return [R, Math.atan2(d * cos, r - d * sin) - ((y * cos) / sin - x) / r];
}

/** Fewest teeth that a rack does not undercut: 2 h/(m sin² a) in the plane of the wheel, h the depth of the rack's straight side. Buckingham, ch. 5 (from memory). Example: h = m, 20°: 17.10. */
const isUndercut = (flanks: Flanks, depth: number): boolean => 2 * depth > pitchOf(flanks) * Math.sin(atOf(flanks)) ** 2;

/**
 * The angle b at which fillet and flank meet. Not undercut: a itself, the two run into each other. Undercut: the corner has cut the
 * foot of the involute away, and the two curves cross at the b where the trochoid's t equals the flank's t at the same R. null: no flank is left.
 */
function meeting(flanks: Flanks, corner: Corner): number | null {
  const { an } = flanks;
  const [r, { rb, t0 }] = [pitchOf(flanks) / 2, flankCurve(flanks)];
  if (!isUndercut(flanks, corner.h + corner.c * Math.sin(an))) return an;
  const least = Math.max(an, 1e-6);
  if (trochoidPoint(r, corner, least)[0] <= rb * (1 + 1e-12)) return least;
  const atBase = crossing((b) => trochoidPoint(r, corner, b)[0] - rb, least, Math.PI / 2);
  const gap = (b: number): number => {
    const [R, t] = trochoidPoint(r, corner, b);
    return t - t0 - inv(Math.acos(Math.min(1, rb / R)));
  };
  const b = crossing(gap, least, atBase);
  return trochoidPoint(r, corner, b)[0] >= topOf(flanks) ? null : b;
}

const tooFewTeeth = ({ N }: Flanks): DomainError =>
  new DomainError({
    given: `With ${N} teeth a rack cuts the whole flank away.`,
    limit: 'No involute is left on the tooth.',
    tryThis: 'Take more teeth, a larger pressure angle or a shorter tooth.',
    about: ['teeth'],
  });

const notForRings = (): DomainError =>
  new DomainError({
    given: 'A ring with teeth on the inside.',
    limit: 'No rack can cut it.',
    tryThis: 'Take a pinion cutter.',
    about: ['ring'],
  });

/**
 * The flank in the plane of the wheel: half the space at the pitch circle is π/N − st/d, from the base circle it falls back by inv at.
 * st transverse thickness, d pitch diameter. Source: as spaceAtBase. Example: 12 teeth, m 1, 20°, v 0.3: t0 = 0.0978.
 */
const flankCurve = (flanks: Flanks): FlankCurve => ({
  rb: baseOf(flanks) / 2,
  t0: Math.PI / flanks.N - transverseThickness(flanks) / pitchOf(flanks) - inv(atOf(flanks)),
});

/** Where the flank ends: at the outside, or at the point, if that comes first. */
const topOf = (flanks: Flanks): number => Math.min(tipOf(flanks), pointedDiameter(flanks)) / 2;

const normalRack = ({ mn, an, A, B }: Flanks): RackTooth => ({ m: mn, a: an, A, B });

/** A plain straight tooth as flanks: no shift, no helix, teeth outward. */
export const plainFlanks = ({ N, m, a, A, B, unit }: Tooth): Flanks => ({ N, mn: m, an: a, psi: 0, v: 0, A, B, ring: false, unit });

/**
 * Half a space of an outside gear as a rack cutter (or hob) with corner radius c, measured square to the teeth, leaves it: root land,
 * fillet, involute, land on top; shifted, undercut and helical as it comes, helical in the plane of the wheel.
 * Throws DomainError when the corner does not fit the rack's tip, no flank is left, or the gear is a ring.
 */
export function generatedSpace(flanks: Flanks, c: number = rackCorner(normalRack(flanks)), steps: Steps = FINE): HalfSpace {
  if (flanks.ring) throw notForRings();
  const corner = cornerOf(flanks, c);
  const [r, rr] = [pitchOf(flanks) / 2, rootOf(flanks) / 2];
  const b = meeting(flanks, corner);
  if (b === null) throw tooFewTeeth(flanks);
  const fillet = stepped(Math.PI / 2, b, steps.fillet).map((angle) => trochoidPoint(r, corner, angle));
  const formRadius = trochoidPoint(r, corner, b)[0];
  const flank = involuteBetween(flankCurve(flanks), formRadius, topOf(flanks), steps.flank);
  return {
    root: rootLand(rr, (corner.s * corner.u) / r),
    fillet,
    flank,
    top: topLand(flanks, flank),
    formRadius,
    undercut: b !== flanks.an,
  };
}

/**
 * Form diameter of an outside gear that a hob or rack cutter with corner radius c has cut: where its straight side ends the involute,
 *   √(db² + (d sin at − 2 h/sin at)²),  h = B − c (1 − sin an) − v;
 * undercut (h > d sin² at/2), where the trochoid of its corner crosses the involute. null when no flank is left, or no such rack has a tip.
 * Source: ISO 21771:2007, root form diameter (value from memory); the crossing derived, as trochoidPoint, and proved against a rolled rack.
 * Example: m 1, 20°, 1/1.25, corner 0.38: 30 teeth 28.534, 12 teeth 11.3027, where the base circle is 11.2763.
 */
export function hobbedFormDiameter(flanks: Flanks, c: number = rackCorner(normalRack(flanks))): number | null {
  if (flanks.ring) throw notForRings();
  if (!(c >= 0)) return null;
  const corner = cornerOf(flanks, c);
  const b = meeting(flanks, corner);
  return b === null ? null : 2 * trochoidPoint(pitchOf(flanks) / 2, corner, b)[0];
}

/** The corner radius c of the rack that a gear's own proportions ask for, and how deep its straight side reaches below the rolling line: B − c (1 − sin an) − v. */
export function rackFor(flanks: Flanks): { readonly corner: number; readonly straight: number; readonly undercuts: boolean } {
  const corner = rackCorner(normalRack(flanks));
  const straight = flanks.B - corner * (1 - Math.sin(flanks.an)) - flanks.v;
  return { corner, straight, undercuts: isUndercut(flanks, straight) };
}

/** The same for a plain straight tooth. */
export const rackCutSpace = (tooth: Tooth, c: number = rackCorner(tooth), steps: Steps = FINE): HalfSpace =>
  generatedSpace(plainFlanks(tooth), c, steps);
