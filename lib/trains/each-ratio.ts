import { valueTally } from './value-tally.ts';

/** A wheel, and which of the sets being counted have it: bit k stands for set k. */
export type SharedWheel = { readonly teeth: number; readonly bits: number };

/** What can stand on one side of a train: a single wheel or a pair, by the product of their teeth. */
type Sides = {
  readonly product: Float64Array;
  readonly bits: Int32Array;
  /** For each side as driven, the first driver that has not been divided by it yet. */
  readonly next: Int32Array;
};

/** How many stretches of the ratio line are gone through one after another, so that the tally of each stays in the processor's cache. */
const STRETCHES = 128;
const SAMPLE = 160;

type OneSide = { readonly product: number; readonly bits: number };

function sidesOf(list: readonly OneSide[]): Sides {
  const sorted = [...list].sort((a, b) => a.product - b.product);
  return {
    product: Float64Array.from(sorted, (side) => side.product),
    bits: Int32Array.from(sorted, (side) => side.bits),
    next: Int32Array.from(sorted, (_, place) => place + 1),
  };
}

const singles = (wheels: readonly SharedWheel[]): Sides => sidesOf(wheels.map(({ teeth, bits }) => ({ product: teeth, bits })));

function pairs(wheels: readonly SharedWheel[]): Sides {
  const list = wheels.flatMap((one, place) =>
    wheels.slice(place + 1).map((two) => ({ product: one.teeth * two.teeth, bits: one.bits & two.bits })),
  );
  return sidesOf(list.filter((side) => side.bits !== 0));
}

/** Ends of the stretches, rising, so chosen on a sample of the ratios that each stretch holds about as many. The last has no end. */
function stretchEnds({ product }: Sides): number[] {
  const step = Math.max(1, Math.floor(product.length / SAMPLE));
  const sample: number[] = [];
  for (let driver = 0; driver < product.length; driver += step)
    for (let driven = 0; driven < driver; driven += step) sample.push((product[driver] as number) / (product[driven] as number));
  const rising = Float64Array.from(sample).sort();
  const ends = Array.from({ length: STRETCHES - 1 }, (_, n) => rising[Math.floor(((n + 1) * rising.length) / STRETCHES)] ?? 1);
  return [...new Set(ends.filter((end) => end > 1)), Number.POSITIVE_INFINITY];
}

/**
 * Every ratio of two different sides, from where the last stretch ended up to `end`. Two pairs that share a wheel are no train, but
 * need no sorting out: the shared wheel cancels, (a × b) ÷ (c × b) = a ÷ c, and that ratio two wheels of the same sets give anyway.
 */
function ratiosBelow(end: number, { product, bits, next }: Sides, put: (value: number, bits: number) => void): void {
  const most = product.length;
  for (let driven = 0; driven < most; driven++) {
    const [below, has] = [product[driven] as number, bits[driven] as number];
    let driver = next[driven] as number;
    for (; driver < most; driver++) {
      const value = (product[driver] as number) / below;
      if (value >= end) break;
      const both = (bits[driver] as number) & has;
      if (both !== 0) put(value, both);
    }
    next[driven] = driver;
  }
}

/**
 * Hands over each distinct ratio of 1 and above that the wheels can give, once, with the bits of the sets that can give it.
 * wheelsInTrain 2: a ÷ b; 4: a ÷ b and (a × b) ÷ (c × d). No wheel stands in a train twice. Ratios below 1 are those above turned over.
 *
 * A ratio is known by its quotient as a double, and that is exact: two different fractions p/q and r/s whose members are at most M
 * lie at least 1/(q s) apart, which is at least 1/M² of either; two numbers that round to one double lie at most 2^-52 of it apart.
 * With wheels of at most 5,000 teeth M² is 6.25e14, so the gap is 1.6e-15, seven times 2^-52: different fractions never meet, and
 * equal fractions always do, since a division is rounded correctly.
 */
export function eachRatio(wheels: readonly SharedWheel[], wheelsInTrain: 2 | 4, visit: (value: number, bits: number) => void): void {
  const sides = wheelsInTrain === 2 ? [singles(wheels)] : [singles(wheels), pairs(wheels)];
  const tally = valueTally();
  for (const end of stretchEnds(sides[sides.length - 1] as Sides)) {
    for (const one of sides) ratiosBelow(end, one, tally.put);
    tally.drain(visit);
  }
}
