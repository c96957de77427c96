import type { Expected } from './expected.formulas.ts';
import { TIP_LOSS, UNEVEN, WEAR_SPREAD } from './judgements.data.ts';

/**
 * How likely a reading is that misses by r, with an error e: Student's law of four degrees of freedom, 0.375/e (1 + (r/e)²/4)^(−5/2).
 * Its long tails stand for slips, burrs and bruises: a reading far off speaks against a candidate without forbidding it.
 * Source: Gelman and others, Bayesian Data Analysis, robust models by the t law (value from memory). Example: r 0, e 1 gives 0.375.
 */
function likelihood(r: number, e: number): number {
  const y = 1 + (r * r) / (4 * e * e);
  return 0.375 / (e * y * y * Math.sqrt(y));
}

const fixed = (each: readonly Expected[]): number => {
  let product = 1;
  for (const { read, nominal, perWear, perTip, error } of each)
    if (perWear === 0 && perTip === 0) product *= likelihood(read - nominal, error);
  return product;
};

/** How likely the readings from the tip are with so much of the outside gone; e more of error where the step is wide. */
function withTipGone(each: readonly Expected[], gone: number, e: number): number {
  let product = 1;
  for (const { read, nominal, perTip, error } of each)
    if (perTip !== 0) product *= likelihood(read - nominal - perTip * gone, Math.sqrt(error * error + perTip * perTip * e * e));
  return product;
}

/** How likely the readings on the flanks are with so much worn off the tooth, of which a part is uneven. */
function withWear(each: readonly Expected[], wear: number, e: number): number {
  let product = 1;
  const more = (UNEVEN * wear) ** 2 + e * e;
  for (const { read, nominal, perWear, error } of each)
    if (perWear !== 0) product *= likelihood(read - nominal - perWear * wear, Math.sqrt(error * error + more));
  return product;
}

/** Wears to be tried, how often each is met, and how much either side of one it stands for. */
export type Wears = { readonly at: readonly number[]; readonly often: readonly number[]; readonly wide: number };

/** Half a bell of wears for teeth of module m (inches), in steps not much wider than the least error of a reading on the flanks. */
export function wears(m: number, least: number): Wears {
  const spread = WEAR_SPREAD.inch + WEAR_SPREAD.m * m;
  const step = Math.max(Math.min(least, spread / 2), (3.2 * spread) / 40);
  const at = Array.from({ length: Math.ceil((3.2 * spread) / step) + 1 }, (_, i) => i * step);
  const bell = at.map((wear) => Math.exp(-0.5 * (wear / spread) ** 2));
  const sum = bell.reduce((total, one) => total + one, 0);
  return { at, often: bell.map((one) => one / sum), wide: step / Math.sqrt(12) };
}

/** What is most likely gone from a wheel, were it a given candidate, and how surely the wear is known. */
export type Gone = { readonly wear: number; readonly wearWide: number; readonly tip: number };
export type Evidence = { readonly likely: number } & Gone;

const none = (each: readonly Expected[], what: 'perWear' | 'perTip'): boolean => each.every((one) => one[what] === 0);

function overTips(each: readonly Expected[], m: number): { likely: number; tip: number } {
  if (none(each, 'perTip')) return { likely: 1, tip: 0 };
  let [likely, most, tip] = [0, 0, 0];
  for (const { gone, often, wide } of TIP_LOSS) {
    const one = often * withTipGone(each, gone * m, wide * m);
    likely += one;
    if (one > most) [most, tip] = [one, gone * m];
  }
  return { likely, tip };
}

function overWears(each: readonly Expected[], { at, often, wide }: Wears): { likely: number; wear: number; wearWide: number } {
  const flanks = each.filter(({ perWear }) => perWear !== 0);
  let [sum, first, second] = [0, 0, 0];
  for (let i = 0; i < at.length; i++) {
    const wear = at[i] ?? 0;
    const one = (often[i] ?? 0) * withWear(flanks, wear, wide);
    sum += one;
    first += one * wear;
    second += one * wear * wear;
  }
  if (!(sum > 0)) return { likely: 0, wear: 0, wearWide: WEAR_SPREAD.inch };
  const wear = first / sum;
  return { likely: flanks.length === 0 ? 1 : sum, wear, wearWide: Math.sqrt(Math.max(0, second / sum - wear * wear)) };
}

/** What all readings but those on the flanks say: how likely they are, over every loss of the outside that is met. m: the module in inches. */
export function bodyEvidence(each: readonly Expected[], m: number): { readonly likely: number; readonly tip: number } {
  const tips = overTips(each, m);
  return { likely: fixed(each) * tips.likely, tip: tips.tip };
}

/**
 * What the readings on the flanks say, over every wear that is met. Even wear thins all spans alike, so their difference stands whatever the
 * wear.
 */
export const flankEvidence = (each: readonly Expected[], tried: Wears): { likely: number; wear: number; wearWide: number } =>
  overWears(each, tried);

/** The most that readings on the flanks can be worth: all of them met without a miss. */
export const mostOfFlanks = (errors: readonly number[]): number => errors.reduce((product, error) => product * likelihood(0, error), 1);
