import type { Bore, Gear } from '../gears/gear.ts';
import { FINE, type Steps } from '../gears/profile.formulas.ts';
import { substituteSpace } from '../gears/profile-cutter.formulas.ts';
import { formCutSpace } from '../gears/profile-form.formulas.ts';
import { wheelPoints } from '../gears/profile-outline.ts';
import { outsideDiameter, pitchDiameter, rootDiameter, type Tooth, toothOf } from '../gears/tooth.ts';
import { toRadians } from '../values/angle.ts';
import { toMm } from '../values/length.ts';
import type { Point } from './drawing.ts';
import { roundOf } from './drawing.ts';
import { mmPer } from './lettering.ts';

type Toothed = Pick<Gear, 'teeth' | 'pitch' | 'system'> & Partial<Pick<Gear, 'helix'>>;

/** A tooth as it stands in the plane of the wheel: of helical teeth, whose pitch is kept square to them, wider by the cosine of the helix. */
function toothInPlane(gear: Toothed): Tooth {
  const tooth = toothOf(gear);
  if (!gear.helix) return tooth;
  const cos = Math.cos(toRadians(gear.helix.angle));
  return { ...tooth, m: tooth.m / cos, a: Math.atan(Math.tan(tooth.a) / cos) };
}

/** Radii of a wheel in millimetres. */
export type WheelRadii = { readonly outside: number; readonly pitch: number; readonly root: number };

export function wheelRadii(gear: Toothed): WheelRadii {
  const tooth = toothInPlane(gear);
  const mm = mmPer(tooth.unit) / 2;
  return { outside: outsideDiameter(tooth) * mm, pitch: pitchDiameter(tooth) * mm, root: rootDiameter(tooth) * mm };
}

/**
 * The teeth all round as points in millimetres about the wheel's middle, as a numbered form cutter leaves them: one made for this count,
 * or for `formFor` teeth where that is the cutter that is used.
 */
export function wheelOutline(gear: Toothed, steps: Steps = FINE, formFor: number = gear.teeth): Point[] {
  const tooth = toothInPlane(gear);
  const mm = mmPer(tooth.unit);
  const space = formFor === gear.teeth ? formCutSpace(tooth, undefined, steps) : substituteSpace(tooth, formFor, steps);
  return wheelPoints(space, gear.teeth).map(([x, y]) => [x * mm, y * mm]);
}

/**
 * The same outline with as few points as keep every one that was left out within `seen` of it: the farthest from the chord stays,
 * and so on within both halves. Source: D. Douglas and T. Peucker, The Canadian Cartographer 10 (1973), pp. 112-122 (value from memory).
 */
export function thinned(points: readonly Point[], seen: number): Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) return [...points];
  const far = farthest(points, first, last);
  if (far.off <= seen) return [first, last];
  return [...thinned(points.slice(0, far.at + 1), seen).slice(0, -1), ...thinned(points.slice(far.at), seen)];
}

function farthest(points: readonly Point[], first: Point, last: Point): { at: number; off: number } {
  const round = Math.hypot(last[0] - first[0], last[1] - first[1]) < 1e-9;
  let far = { at: 0, off: -1 };
  for (const [at, point] of points.entries()) {
    if (at === 0 || at === points.length - 1) continue;
    const off = round ? Math.hypot(point[0] - first[0], point[1] - first[1]) : offLine(point, first, last);
    if (off > far.off) far = { at, off };
  }
  return far;
}

function offLine([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  return Math.abs((px - ax) * (by - ay) - (py - ay) * (bx - ax)) / (Math.hypot(bx - ax, by - ay) || 1);
}

const arc = (radius: number, from: number, to: number, steps: number): Point[] =>
  Array.from({ length: steps + 1 }, (_, i) => {
    const t = from + ((to - from) * i) / steps;
    return [radius * Math.sin(t), radius * Math.cos(t)];
  });

/** Half the angle that a slot of this width takes at this radius. */
const halfAngle = (width: number, radius: number): number => Math.asin(Math.min(1, width / 2 / radius));

function keyedOutline(radius: number, width: number, depth: number): Point[] {
  const t = halfAngle(width, radius);
  return [...arc(radius, t, 2 * Math.PI - t, 72), [-width / 2, radius + depth], [width / 2, radius + depth]];
}

function splinedOutline(bottom: number, top: number, splines: number, width: number): Point[] {
  const [low, high, pitch] = [halfAngle(width, top), halfAngle(width, bottom), (2 * Math.PI) / splines];
  return Array.from({ length: splines }, (_, k) => k * pitch).flatMap((middle) => [
    ...arc(bottom, middle - high, middle + high, 4),
    ...arc(top, middle + low, middle + pitch - low, 6),
  ]);
}

/** A bore's outline in millimetres; the keyway, or one groove of the splines, at the top. */
export function boreOutline(bore: Bore): Point[] {
  const radius = toMm(bore.diameter) / 2;
  if (bore.form === 'keyed') return keyedOutline(radius, toMm(bore.keyWidth), toMm(bore.keyDepth));
  if (bore.form === 'splined') return splinedOutline(radius, toMm(bore.minor) / 2, bore.splines, toMm(bore.keyWidth));
  return roundOf(radius, 72);
}

export function boreWords(bore: Bore | null): string {
  if (bore === null) return 'bore not measured';
  if (bore.form === 'keyed') return 'keyed bore';
  return bore.form === 'splined' ? `bore with ${bore.splines} splines` : 'plain bore';
}
