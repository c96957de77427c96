import { DomainError } from '../figure/domain-error.ts';
import {
  FINE,
  type HalfSpace,
  involuteFlank,
  radiiOf,
  rootLand,
  type SpacePoint,
  type Steps,
  spaceAtBase,
  stepped,
  topLand,
} from './profile.formulas.ts';
import type { Tooth } from './tooth.ts';

/**
 * Fillet radius of a numbered form cutter when nobody has measured it: a seventh of the space at the outside circle, 2 ro sin(t)/7.
 * ro outside radius, t half the space's angle there. Old rule of the makers of such cutters (Brown & Sharpe, Practical Treatise on
 * Gearing; value from memory). Never larger than what the bottom of the space has room for. Example: 22 teeth, 8 DP, 14½°: 0.0454 in.
 */
export function formFillet(tooth: Tooth): number {
  const { ro } = radiiOf(tooth);
  const flank = involuteFlank(tooth, 0, 1);
  const wide = 2 * ro * Math.sin(flank.at(-1)?.[1] ?? 0);
  return Math.min(wide / 7, 0.999 * roomForFillet(tooth));
}

/** Middle of the fillet circle and the place where the flank leaves it. onInvolute: length of the involute's string there, or null on the radial part. */
type FilletCircle = { readonly R: number; readonly t: number; readonly onInvolute: number | null };

/**
 * The circle of radius f that touches the root circle from outside and the flank.
 * Its middle lies at R = rr + f. Below the base circle the flank is a straight line to the gear's middle at angle t0, so
 *   t = t0 − asin(f/R),
 * and the two touch at √(R² − f²). If that is above the base circle the fillet touches the involute instead. The parallel of an
 * involute is an involute of the same base circle, its string longer by f: string s = √(R² − rb²) − f, and
 *   t = t0 + (s/rb) − atan((s + f)/rb)   (the string leaves the base circle at t0 + s/rb, the middle lies s + f along it).
 * Both conditions change over at the same f, so the flank has no step. Derived; checked in the tests by a search for the touching circle.
 */
function filletCircle(tooth: Tooth, f: number): FilletCircle {
  const { rr, rb } = radiiOf(tooth);
  const [R, t0] = [rr + f, spaceAtBase(tooth)];
  if (R * R - f * f <= rb * rb) return { R, t: t0 - Math.asin(f / R), onInvolute: null };
  const s = Math.sqrt(R * R - rb * rb) - f;
  return { R, t: t0 + s / rb - Math.atan2(s + f, rb), onInvolute: s };
}

/** The largest fillet that the space has room for: the one whose middle lies on the middle line of the space, found by halving. */
function roomForFillet(tooth: Tooth): number {
  let [low, high] = [0, tooth.m];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (filletCircle(tooth, middle).t > 0) low = middle;
    else high = middle;
  }
  return low;
}

const touching = (tooth: Tooth, f: number, { R, t, onInvolute: s }: FilletCircle): SpacePoint => {
  const { rb } = radiiOf(tooth);
  if (s === null) return [Math.sqrt(R * R - f * f), t + Math.asin(f / R)];
  return [Math.hypot(rb, s), spaceAtBase(tooth) + s / rb - Math.atan2(s, rb)];
};

/** The arc of the fillet from the root circle to where it touches the flank. */
function filletArc({ R, t }: FilletCircle, f: number, [endR, endT]: SpacePoint, steps: number): SpacePoint[] {
  const [x, y] = [R * Math.sin(t), R * Math.cos(t)];
  const first = Math.atan2(-Math.cos(t), -Math.sin(t));
  const last = Math.atan2(endR * Math.cos(endT) - y, endR * Math.sin(endT) - x);
  const turn = Math.atan2(Math.sin(last - first), Math.cos(last - first));
  return stepped(first, first + turn, steps).map((angle) => {
    const [px, py] = [x + f * Math.cos(angle), y + f * Math.sin(angle)];
    return [Math.hypot(px, py), Math.atan2(px, py)];
  });
}

/**
 * Half a tooth space as a numbered form cutter leaves it at the count that the cutter is exact for: root land, fillet of radius f,
 * a radial flank from there to the base circle, the involute above it.
 * The radial foot is common practice for such cutters, no source; a cutter of the old 14½° composite form has its tips eased as well,
 * which this does not draw. A form cutter does not undercut. Throws DomainError when the fillet has no room.
 */
export function formCutSpace(tooth: Tooth, f: number = formFillet(tooth), steps: Steps = FINE): HalfSpace {
  const circle = filletCircle(tooth, f);
  if (!(f >= 0) || circle.t < 0) {
    throw new DomainError({
      given: 'The fillet is larger than the bottom of the space.',
      limit: 'Both fillets of a space must lie side by side on the root circle.',
      tryThis: 'Take a smaller fillet.',
      about: ['fillet'],
    });
  }
  const { rr, rb } = radiiOf(tooth);
  const end = touching(tooth, f, circle);
  const involute = involuteFlank(tooth, Math.max(end[0], rb), steps.flank);
  const flank = circle.onInvolute === null && rb - end[0] > 1e-12 ? [end, ...involute] : involute;
  const fillet = filletArc(circle, f, end, steps.fillet);
  return { root: rootLand(rr, circle.t), fillet, flank, top: topLand(tooth, flank), formRadius: end[0], undercut: false };
}
