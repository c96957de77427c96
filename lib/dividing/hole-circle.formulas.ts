/** One hole of a circle, by coordinates from the middle: x to the right, y up. angle: degrees, from the right, against the clock. */
export type HolePlace = { readonly hole: number; readonly angle: number; readonly x: number; readonly y: number };

/**
 * Coordinates of the holes of a circle.
 *   x = X + (D ÷ 2) × cos(a + 360 × (k − 1) ÷ n);  y = Y + (D ÷ 2) × sin(the same)
 * D: diameter through the hole middles; n: holes; a: angle of hole 1, degrees from the right, against the clock; X, Y: the middle.
 * Source: common practice, no source. Example: D 6, n 3, a 90: hole 1 at 0, 3; hole 2 at −2.5981, −1.5.
 */
export function holePlaces(n: number, D: number, a: number, [X, Y]: readonly [number, number] = [0, 0]): HolePlace[] {
  return Array.from({ length: n }, (_, k) => {
    const angle = (a + (360 * k) / n) % 360;
    const turned = (angle * Math.PI) / 180;
    return { hole: k + 1, angle, x: X + (D / 2) * tidy(Math.cos(turned)), y: Y + (D / 2) * tidy(Math.sin(turned)) };
  });
}

/** A cosine or sine that is 0 or 1 but for rounding, made so. */
const tidy = (x: number): number => (Math.abs(x) < 1e-15 ? 0 : x);

/**
 * Straight distance between two neighbouring holes: c = D × sin(180° ÷ n). Source: common practice, no source (chord of a circle).
 * Example: D 4, n 6: 2.
 */
export const chordBetween = (n: number, D: number): number => D * Math.sin(Math.PI / n);
