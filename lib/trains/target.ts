import { gcd, type Ratio } from '../values/ratio.ts';

/** A wanted ratio in whole numbers of any size. holdsPi: it stands for a multiple of π to 39 decimals, which no train gives exactly. */
export type Target = { readonly num: bigint; readonly den: bigint; readonly holdsPi: boolean };

/** π × 10^39, cut off. Source: Encyclopaedia Britannica, 11th ed., "Circle" (first 30 decimals there); checked in the tests by Machin's series. */
export const PI_NUM = 3141592653589793238462643383279502884197n;
export const PI_DEN = 10n ** 39n;

/** The target for size × π^power, power −1, 0 or 1. */
export function targetOf([num, den]: Ratio, power: -1 | 0 | 1 = 0): Target {
  const [top, bottom] = [BigInt(num), BigInt(den)];
  if (power === 0) return { num: top, den: bottom, holdsPi: false };
  if (power === 1) return { num: top * PI_NUM, den: bottom * PI_DEN, holdsPi: true };
  return { num: top * PI_DEN, den: bottom * PI_NUM, holdsPi: true };
}

/** A quotient of whole numbers of any size as a plain number, right to a part in 10^17. */
function quotient(num: bigint, den: bigint): number {
  if (num === 0n) return 0;
  const digits = den.toString().length - num.toString().length + 19;
  const scaled = digits > 0 ? (num * 10n ** BigInt(digits)) / den : num / den;
  return digits > 0 ? Number(`${scaled}e${-digits}`) : Number(scaled);
}

export const numberOf = ({ num, den }: Target): number => quotient(num, den);

/** Train ratio less target, ÷ target: plus when the train runs fast. Worked in whole numbers, so that a small error keeps its digits. */
export function relativeError([num, den]: Ratio, target: Target): number {
  const top = BigInt(num) * target.den - target.num * BigInt(den);
  return quotient(top, BigInt(den) * target.num);
}

/** -1, 0 or 1 as ratio a lies nearer to the target than b, as near, or farther. Exact. */
export function compareNearness(a: Ratio, b: Ratio, { num, den }: Target): number {
  const off = (one: Ratio): bigint => {
    const top = BigInt(one[0]) * den - num * BigInt(one[1]);
    return top < 0n ? -top : top;
  };
  const difference = off(a) * BigInt(b[1]) - off(b) * BigInt(a[1]);
  return difference === 0n ? 0 : difference < 0n ? -1 : 1;
}

export const isExactly = ([num, den]: Ratio, target: Target): boolean =>
  !target.holdsPi && BigInt(num) * target.den === target.num * BigInt(den);

/** Lowest terms of a quotient of products that are safe whole numbers. */
export function lowest(num: number, den: number): Ratio {
  const by = gcd(num, den) || 1;
  return [num / by, den / by];
}
