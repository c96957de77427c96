import { DomainError } from '../figure/domain-error.ts';
import {
  crossing,
  FINE,
  flankAngle,
  type HalfSpace,
  involuteFlank,
  pointedRadius,
  radiiOf,
  rootLand,
  type SpacePoint,
  type Steps,
  stepped,
  topLand,
} from './profile.formulas.ts';
import type { Tooth } from './tooth.ts';

/**
 * The largest corner radius of a rack cutter that leaves its side straight over the whole addendum of a mate: (B − A)/(1 − sin a).
 * A addendum, B dedendum (both of the gear), a pressure angle. Derived: a corner of radius c touches the slanted side at c(1 − sin a)
 * above the tip, and that may be no more than the clearance B − A.
 * Agrees with the corner of ISO 53:1998, profile A (0.38 m for 20°, 1/1.25) and of the old 14½° full-depth rack (0.209/P for
 * 1/1.157), both values from memory. Where the tip is too narrow for it, the full round tip is taken.
 * Example: 20°, A = 1, B = 1.25: 0.3800.
 */
export function rackCorner(tooth: Tooth): number {
  const { a, A, B } = tooth;
  return Math.min(Math.max(0, B - A) / (1 - Math.sin(a)), fullRound(tooth));
}

/** The corner radius at which the rack's tip is one round: (π m/4 − B tan a) cos a/(1 − sin a). Derived: the two corner circles then fall together. */
const fullRound = ({ m, a, B }: Tooth): number => (((Math.PI * m) / 4 - B * Math.tan(a)) * Math.cos(a)) / (1 - Math.sin(a));

/** A rack tooth's corner: c its radius, h the depth of its middle below the pitch line, u the distance of that middle from the rack tooth's middle line. */
type Corner = { readonly c: number; readonly h: number; readonly u: number };

function cornerOf(tooth: Tooth, c: number): Corner {
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
  return { c, h, u: (Math.PI * m) / 4 - h * Math.tan(a) - c / Math.cos(a) };
}

/**
 * A point of the root fillet as left by the rounded corner of a rack cutter (a trochoid's parallel curve).
 * d = h/sin b + c;  R² = r² + d² − 2 r d sin b;  t = atan(d cos b / (r − d sin b)) − (h cot b − u)/r
 * r pitch radius; c, h, u the corner; b angle of the common normal to the pitch line, from a (joins the flank) to 90° (joins the root).
 * Derivation: the rack's pitch line rolls on the pitch circle, so whatever touches, touches along a normal through the rolling point.
 * The corner's middle lies h below the line; if the normal has angle b, it is h/sin b from the rolling point and the corner's skin
 * c further. Sideways the middle is then at h cot b, so that the rack has moved h cot b − u, and the gear has turned by that over r.
 * Source: Buckingham, Analytical Mechanics of Gears (1949), ch. 5, trochoid of a rounded rack corner (value from memory of the
 * chapter); proved against a rack rolled past a blank by polygons. Example: r 11, B 1.157, a 14.5°, c 0.2095, b 90°: R = 9.843.
 */
function trochoidPoint(r: number, { c, h, u }: Corner, b: number): SpacePoint {
  const [sin, cos] = [Math.sin(b), Math.cos(b)];
  const d = h / sin + c;
  const R = Math.sqrt(r * r + d * d - 2 * r * d * sin);
  return [R, Math.atan2(d * cos, r - d * sin) - ((h * cos) / sin - u) / r];
}

/** Fewest teeth that a rack does not undercut: 2 h/(m sin² a), h the depth of the rack's straight side. Buckingham, ch. 5 (from memory). Example: h = m, 20°: 17.10. */
const isUndercut = ({ N, m, a }: Tooth, depth: number): boolean => 2 * depth > N * m * Math.sin(a) ** 2;

/**
 * The angle b at which fillet and flank meet. Not undercut: a itself, the two run into each other. Undercut: the corner has cut the
 * foot of the involute away, and the two curves cross at the b where the trochoid's t equals the flank's t at the same R.
 */
function meeting(tooth: Tooth, corner: Corner): number {
  const { a } = tooth;
  const { r, ro, rb } = radiiOf(tooth);
  if (!isUndercut(tooth, corner.h + corner.c * Math.sin(a))) return a;
  const least = Math.max(a, 1e-6);
  const atBase = crossing((b) => trochoidPoint(r, corner, b)[0] - rb, least, Math.PI / 2);
  const gap = (b: number): number => {
    const [R, t] = trochoidPoint(r, corner, b);
    return t - flankAngle(tooth, R);
  };
  const b = crossing(gap, least, atBase);
  if (gap(atBase) <= 0 || trochoidPoint(r, corner, b)[0] >= Math.min(ro, pointedRadius(tooth))) throw tooFewTeeth(tooth);
  return b;
}

const tooFewTeeth = ({ N }: Tooth): DomainError =>
  new DomainError({
    given: `With ${N} teeth a rack cuts the whole flank away.`,
    limit: 'No involute is left on the tooth.',
    tryThis: 'Take more teeth, a larger pressure angle or a shorter tooth.',
    about: ['teeth'],
  });

/**
 * Half a tooth space as a rack cutter (or hob) with corner radius c leaves it: root land, fillet, involute, land on top.
 * Throws DomainError when the corner does not fit the rack's tip or no flank is left.
 */
export function rackCutSpace(tooth: Tooth, c: number = rackCorner(tooth), steps: Steps = FINE): HalfSpace {
  const corner = cornerOf(tooth, c);
  const { r, rr } = radiiOf(tooth);
  const b = meeting(tooth, corner);
  const fillet = stepped(Math.PI / 2, b, steps.fillet).map((angle) => trochoidPoint(r, corner, angle));
  const formRadius = trochoidPoint(r, corner, b)[0];
  const flank = involuteFlank(tooth, formRadius, steps.flank);
  return { root: rootLand(rr, corner.u / r), fillet, flank, top: topLand(tooth, flank), formRadius, undercut: b !== tooth.a };
}
