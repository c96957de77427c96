/**
 * Involute function: inv a = tan a − a, a in radians, answer in radians.
 * Source: Mathematical Problems in Engineering, 2019, article 3586012, introduction (x = tan u − u).
 * True for 0 ≤ a < 90°. Throws RangeError outside. Example: inv 20° = 0.014904.
 */
export function inv(a: number): number {
  if (!(a >= 0 && a < Math.PI / 2)) throw new RangeError(`inv is not defined at ${a} rad`);
  return Math.tan(a) - a;
}

/**
 * The angle whose involute function is x: the a with tan a − a = x, in radians.
 * Source: common practice, no source: Newton's method from a start that lies above the answer
 * (tan a − a is convex, so the steps never cross it).
 * Throws RangeError below 0. Example: inverseInv(0.014904) = 20°.
 */
export function inverseInv(x: number): number {
  if (!(x >= 0 && Number.isFinite(x))) throw new RangeError(`no angle has the involute function ${x}`);
  if (x === 0) return 0;
  let a = Math.min(Math.cbrt(3 * x), Math.atan(x + Math.PI / 2));
  for (let step = 0; step < 60; step++) {
    const next = a - (Math.tan(a) - a - x) / Math.tan(a) ** 2;
    if (Math.abs(next - a) < 1e-15) return next;
    a = next;
  }
  return a;
}
