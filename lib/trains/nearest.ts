import type { Ratio } from '../values/ratio.ts';
import { checkDrawer } from './check-drawer.ts';
import { type Numbers, type Sides, sidesOf, teethOf } from './sides.ts';
import { compareNearness, isExactly, lowest, numberOf, relativeError, type Target } from './target.ts';
import { walk } from './walk.ts';
import { countOfEach, sortedWheels } from './wheel-lists.ts';

/** Wheels of a train without regard to where each stands; each list lowest first. */
export type Train = { readonly drivers: readonly number[]; readonly driven: readonly number[] };
export type WheelsInTrain = 2 | 4 | 6;

/** A ratio that the drawer gives, and every train that gives it. error: train less target, ÷ target. */
export type NearRatio = {
  readonly ratio: Ratio;
  readonly exact: boolean;
  readonly error: number;
  readonly trains: readonly Train[];
  readonly manyTrains: number;
};

export type NearestAsked = {
  /** Tooth counts of the wheels that lie there; a number as often as wheels of it lie there. */
  readonly wheels: readonly number[];
  readonly target: Target;
  readonly wheelsInTrain: WheelsInTrain;
  /** How many ratios are wanted; those as near as the last of them come too. */
  readonly ratios?: number;
};

/** So many trains are written out; beyond this they are counted only. */
const MOST_KEPT = 20_000;

type Pair = { readonly driver: number; readonly driven: number };
type Found = { readonly ratio: Ratio; readonly pairs: Pair[]; many: number };

/**
 * The nearest ratios to the target that trains of exactly so many wheels give, nearest first, with all their trains.
 *   ratio = product of drivers ÷ product of driven
 * A wheel stands in a train once; like wheels may both be used. A wheel that is no more than an idler changes nothing and is no part of it.
 * Method: the products of all sides (one, two or three wheels) sorted; for each driven side the driver sides about target × its product,
 * the place moving up with it. So the work grows with the number of sides (the cube of the wheels, for six) and not with its square.
 * Nearness is decided in whole numbers. Two different ratios never share a quotient: products are below 6.4e7, so ratios differ by
 * 2.4e-16 of themselves at least, more than a step of a plain number, 2.2e-16 at most.
 * Source: derived: TRADE "lead, ratio"; held against exhaustive search. True for up to 100 wheels (48 for trains of six) of 4 to 400 teeth; DomainError beyond.
 * Example: 4/3 from 20 30 40 45 60 with two wheels: 40 ÷ 30 and 60 ÷ 45, both exact.
 */
export const nearestTrains = ({ wheels, target, wheelsInTrain, ratios = 1 }: NearestAsked): NearRatio[] =>
  searchIn(wheels, wheelsInTrain)(target, ratios);

/** The same for many targets from one drawer, whose sides are sorted once. writtenOut: how many trains of each ratio are written out. */
export function searchIn(
  wheels: readonly number[],
  wheelsInTrain: WheelsInTrain,
): (target: Target, ratios?: number, writtenOut?: number) => NearRatio[] {
  checkDrawer(wheels, wheelsInTrain);
  const numbers = numbersOf(wheels);
  const perSide = (wheelsInTrain / 2) as 1 | 2 | 3;
  const sides = sidesOf(numbers, perSide);
  const there = Int32Array.from(numbers.there);
  return (target, ratios = 1, writtenOut = MOST_KEPT) => {
    const found = [...gather(sides, perSide, there, numberOf(target), ratios, writtenOut).values()];
    const written = (one: Found): NearRatio => ({
      ratio: one.ratio,
      exact: isExactly(one.ratio, target),
      error: relativeError(one.ratio, target),
      trains: one.pairs.map((pair) => trainOf(pair, sides, perSide, numbers)),
      manyTrains: one.many,
    });
    return nearestOf(found, target, ratios).map(written);
  };
}

/** So many of them, nearest first, and all as near as the last. Decided in whole numbers. */
function nearestOf(found: readonly Found[], target: Target, ratios: number): Found[] {
  const rising = [...found].sort((a, b) => compareNearness(a.ratio, b.ratio, target) || a.ratio[0] / a.ratio[1] - b.ratio[0] / b.ratio[1]);
  const last = rising[Math.min(ratios, rising.length) - 1];
  return last ? rising.filter((one) => compareNearness(one.ratio, last.ratio, target) <= 0) : [];
}

/** The numbers of a drawer, rising, and how many wheels there are of each. */
export function numbersOf(wheels: readonly number[]): Numbers {
  const counts = countOfEach(wheels);
  const teeth = sortedWheels([...counts.keys()]);
  return { teeth, there: teeth.map((one) => counts.get(one) ?? 0) };
}

/** The pairs of sides that may be among the nearest, by their quotient. */
function gather(sides: Sides, perSide: number, there: Int32Array, target: number, ratios: number, mostKept: number): Map<number, Found> {
  const kept = nearestValues(target, ratios);
  walk(sides, perSide, there, target, Number.POSITIVE_INFINITY, true, (_driver, _driven, ratio) => kept.offer(ratio));
  const found = new Map<number, Found>();
  walk(sides, perSide, there, target, kept.limit(), false, (driver, driven, ratio) => {
    put(found, ratio, { driver, driven }, sides, mostKept);
    return kept.offer(ratio);
  });
  return found;
}

function put(found: Map<number, Found>, value: number, pair: Pair, { product }: Sides, mostKept: number): void {
  const there = found.get(value);
  if (!there) {
    const ratio = lowest(product[pair.driver] as number, product[pair.driven] as number);
    found.set(value, { ratio, pairs: [pair], many: 1 });
    return;
  }
  there.many++;
  if (there.pairs.length < mostKept) there.pairs.push(pair);
}

/** The nearest values offered so far, so many of them and each once; limit: how far the farthest of them lies. */
function nearestValues(target: number, most: number) {
  const values: number[] = [];
  const off = (value: number): number => Math.abs(value - target);
  const limit = (): number => (values.length < most ? Number.POSITIVE_INFINITY : off(values[most - 1] as number));
  const offer = (value: number): number => {
    if (value === values[0] || values.includes(value)) return limit();
    let at = values.length;
    while (at > 0 && off(values[at - 1] as number) > off(value)) at--;
    values.splice(at, 0, value);
    if (values.length > most) values.pop();
    return limit();
  };
  return { offer, limit };
}

const trainOf = ({ driver, driven }: Pair, { made }: Sides, perSide: number, { teeth }: Numbers): Train => ({
  drivers: teethOf(made[driver] as number, perSide, teeth),
  driven: teethOf(made[driven] as number, perSide, teeth),
});
