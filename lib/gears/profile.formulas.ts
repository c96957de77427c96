import { inv, inverseInv } from './involute.formulas.ts';
import { baseDiameter, outsideDiameter, pitchDiameter, rootDiameter, type Tooth } from './tooth.ts';

/**
 * A point of a tooth space: R its distance from the gear's middle, t its angle in radians from the middle line of the space.
 * Half a space is enough, the other half is its mirror image; t runs from 0 (bottom of the space) to π/N (middle of the tooth).
 */
export type SpacePoint = readonly [R: number, t: number];

/**
 * Half a tooth space, from its bottom outward, as points: the root land, the fillet, the flank, the land on top.
 * Each part begins with the last point of the part before it.
 */
export type HalfSpace = {
  readonly root: readonly SpacePoint[];
  readonly fillet: readonly SpacePoint[];
  readonly flank: readonly SpacePoint[];
  readonly top: readonly SpacePoint[];
  /** Radius at which fillet and flank meet: the form circle. */
  readonly formRadius: number;
  readonly undercut: boolean;
};

/** How many steps each part of half a space is drawn in. */
export type Steps = { readonly fillet: number; readonly flank: number };
export const FINE: Steps = { fillet: 12, flank: 20 };
export const COARSE: Steps = { fillet: 2, flank: 3 };

/** The four circles of a tooth as radii: pitch, outside, root, base. */
export type Radii = { readonly r: number; readonly ro: number; readonly rr: number; readonly rb: number };
export const radiiOf = (tooth: Tooth): Radii => ({
  r: pitchDiameter(tooth) / 2,
  ro: outsideDiameter(tooth) / 2,
  rr: rootDiameter(tooth) / 2,
  rb: baseDiameter(tooth) / 2,
});

/**
 * Half the angle of the tooth space at the base circle, in radians: t0 = π/(2N) − inv a.
 * N teeth, a pressure angle. At the pitch circle tooth and space are alike, so half a space is a quarter of the pitch angle 2π/N;
 * from the base circle to the pitch circle the involute falls back by inv a.
 * Source: E. Buckingham, Analytical Mechanics of Gears (1949), ch. 4, thickness at any radius (value from memory of the chapter).
 * Below zero where the two flanks of a space meet above the base circle (very many teeth). Example: 22 teeth, 14.5°: 0.06585.
 */
export const spaceAtBase = ({ N, a }: Tooth): number => Math.PI / (2 * N) - inv(a);

/**
 * Where the involute flank lies at radius R: t = t0 + inv(acos(rb/R)), radians from the middle of the space.
 * rb base radius, t0 from spaceAtBase. Source as there. True from the base circle outward; inside it there is no involute.
 * Example: 22 teeth of 1 in module, 14.5°, R = 11: 0.07140 = 90°/22.
 */
export function flankAngle(tooth: Tooth, R: number): number {
  const { rb } = radiiOf(tooth);
  return spaceAtBase(tooth) + inv(Math.acos(Math.min(1, rb / R)));
}

/**
 * Radius at which the two flanks of a tooth meet in a point: rb / cos(x), inv x = π/(2N) + inv a.
 * The flank reaches the middle of the tooth, t = π/N. A tooth that would be higher than this is drawn pointed.
 * Source: Buckingham as above, "pointed tooth" (value from memory). Example: 10 teeth of 1 in module, 20°: 6.355 in.
 */
export function pointedRadius(tooth: Tooth): number {
  return radiiOf(tooth).rb / Math.cos(inverseInv(Math.PI / (2 * tooth.N) + inv(tooth.a)));
}

/** Evenly spaced values from first to last, both included. */
export function stepped(first: number, last: number, steps: number): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => first + ((last - first) * i) / steps);
}

/** An involute by its base circle and the half angle of the space there: enough to say where the flank lies, whatever the gear's shift or helix. */
export type FlankCurve = { readonly rb: number; readonly t0: number };

/**
 * An involute from radius `from` to radius `to`, closer together near the base circle where it bends most: even steps of the
 * roll angle √(R² − rb²)/rb.
 */
export function involuteBetween({ rb, t0 }: FlankCurve, from: number, to: number, steps: number): SpacePoint[] {
  const roll = (R: number): number => Math.sqrt(Math.max(0, R * R - rb * rb));
  return stepped(roll(Math.max(from, rb)), roll(to), steps).map((along) => {
    const R = Math.hypot(rb, along);
    return [R, t0 + inv(Math.acos(Math.min(1, rb / R)))];
  });
}

/** The flank from radius `from` to the outside, or to the point, if that comes first. */
export function involuteFlank(tooth: Tooth, from: number, steps: number): SpacePoint[] {
  const { ro, rb } = radiiOf(tooth);
  return involuteBetween({ rb, t0: spaceAtBase(tooth) }, from, Math.min(ro, pointedRadius(tooth)), steps);
}

/** The land on top: from the flank's end to the middle of the tooth. */
export function topLand({ N }: { readonly N: number }, flank: readonly SpacePoint[]): SpacePoint[] {
  const [R = 0, t = 0] = flank.at(-1) ?? [];
  const half = Math.PI / N;
  return half - t > 1e-9
    ? [
        [R, t],
        [R, (t + half) / 2],
        [R, half],
      ]
    : [[R, t]];
}

/** The land at the bottom of the space, from its middle to angle t. */
export const rootLand = (rr: number, t: number): SpacePoint[] =>
  t > 1e-9
    ? [
        [rr, 0],
        [rr, t / 2],
        [rr, t],
      ]
    : [[rr, 0]];

/** Where a function changes sign between low and high, by halving. The signs at the two ends must differ. */
export function crossing(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  const above = f(low) > 0;
  for (let step = 0; step < 60; step++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0 === above) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
