import type { Material } from '../gears/gear.ts';

/**
 * What a shrink fit needs to know of a metal. expansion: millionths per °F. stiffness: millions of lb/in². poisson: no unit.
 * allowance: in per inch of diameter for a ring of it, null where no rule is on record. strength: lb/in², of which `share` may be used.
 */
export type ShrinkMetal = {
  readonly expansion: number;
  readonly stiffness: number;
  readonly poisson: number;
  readonly allowance: number | null;
  readonly strength: number;
  readonly strengthIs: 'yield' | 'tensile';
  readonly share: readonly [num: number, den: number];
  readonly source: string;
};

/** Metals that may be shrunk. What is not here (zinc, phenolic, unknown) takes no heat and no grip, as ring or as hub. */
export const SHRINK_METALS: Readonly<Partial<Record<Material, ShrinkMetal>>> = {
  steel: {
    expansion: 6.3,
    stiffness: 30,
    poisson: 0.3,
    allowance: 0.001,
    strength: 42_000,
    strengthIs: 'yield',
    share: [2, 3],
    source:
      'expansion: between 1020 (6.5) and 1050 (6.1), Expansion coefficients for shrink fitting (scribd.com/doc/273805234); allowance: Dooley, Applied Science for Metal Workers, art. 453; stiffness, and yield of hot-rolled 0.40 carbon bar: values from memory; share of yield: judgement',
  },
  'cast iron': {
    expansion: 5.9,
    stiffness: 14,
    poisson: 0.26,
    allowance: 0.0005,
    strength: 25_000,
    strengthIs: 'tensile',
    share: [1, 4],
    source: 'grey iron of 25,000 lb/in² tensile: values from memory; half the allowance of steel and a quarter of the strength: judgement',
  },
  bronze: {
    expansion: 10,
    stiffness: 16,
    poisson: 0.34,
    allowance: null,
    strength: 20_000,
    strengthIs: 'yield',
    share: [2, 3],
    source: 'expansion: Expansion coefficients for shrink fitting (scribd.com/doc/273805234); the rest: values from memory',
  },
  brass: {
    expansion: 10.4,
    stiffness: 15,
    poisson: 0.34,
    allowance: null,
    strength: 18_000,
    strengthIs: 'yield',
    share: [2, 3],
    source: 'values from memory',
  },
  aluminium: {
    expansion: 13,
    stiffness: 10,
    poisson: 0.33,
    allowance: null,
    strength: 35_000,
    strengthIs: 'yield',
    share: [2, 3],
    source: 'expansion of 6061: Expansion coefficients for shrink fitting (scribd.com/doc/273805234); the rest: values from memory',
  },
};

/** Room for dropping the ring on, in per inch of diameter, and never less than `least` in (judgement). */
export const DROP_ROOM = { perInch: 0.001, leastIn: 0.002 } as const;
/** The hottest that an oven may be set without a reason given, °F (232 °C; judgement). */
export const CEILING_F = 450;
/** The shop, where nobody typed its temperature, °F. */
export const SHOP_F = 70;

/** Older shop rules, thousandths: allowance = base + perInch × diameter. Shown beside ours; the rules of the trade do not agree. */
export const OLDER_RULES = [
  { name: '0.001 in per inch', base: 0, perInch: 1, source: 'Dooley, Applied Science for Metal Workers, art. 453' },
  {
    name: 'half a thousandth and 1 1/2 per inch',
    base: 0.5,
    perInch: 1.5,
    source: 'a model engineers’ handbook, as quoted at homemadetools.net/forum/fits-66835',
  },
] as const;
