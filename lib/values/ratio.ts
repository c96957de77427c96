/** An exact ratio in lowest terms; both whole safe numbers, the lower one above zero. */
export type Ratio = readonly [num: number, den: number];

/** Greatest common divisor of two whole numbers (Euclid, Elements VII.2). */
export function gcd(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** num / den in lowest terms. Throws RangeError when either is no whole safe number or den is 0. */
export function ratio(num: number, den = 1): Ratio {
  if (!Number.isSafeInteger(num) || !Number.isSafeInteger(den)) throw new RangeError(`${num}/${den} is no ratio of whole numbers`);
  if (den === 0) throw new RangeError(`${num}/0 is no ratio`);
  const by = (gcd(num, den) || 1) * Math.sign(den);
  return [num === 0 ? 0 : num / by, den / by];
}

export const toNumber = ([num, den]: Ratio): number => num / den;

/** Product of two ratios; cancels across before it multiplies, so it overflows as late as it can. */
export function times(a: Ratio, b: Ratio): Ratio {
  const [across, back] = [ratio(a[0], b[1]), ratio(b[0], a[1])];
  return ratio(across[0] * back[0], across[1] * back[1]);
}

export const over = (a: Ratio, b: Ratio): Ratio => times(a, ratio(b[1], b[0]));

export function plus(a: Ratio, b: Ratio): Ratio {
  const shared = gcd(a[1], b[1]);
  return ratio(a[0] * (b[1] / shared) + b[0] * (a[1] / shared), a[1] * (b[1] / shared));
}

export const minus = (a: Ratio, b: Ratio): Ratio => plus(a, [b[0] === 0 ? 0 : -b[0], b[1]]);
export const sameRatio = (a: Ratio, b: Ratio): boolean => a[0] === b[0] && a[1] === b[1];

/** -1, 0 or 1 as a is below, equal to or above b. Compared exactly. */
export function compareRatios(a: Ratio, b: Ratio): number {
  const difference = BigInt(a[0]) * BigInt(b[1]) - BigInt(b[0]) * BigInt(a[1]);
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}
