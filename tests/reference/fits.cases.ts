import { allowance, fitPressure, hoopStress, rise } from '../../lib/fits/shrink.formulas.ts';
import { type ShrinkAsked, shrinkFit } from '../../lib/fits/shrink.sums.ts';
import { OLDER_RULES, SHRINK_METALS } from '../../lib/fits/shrink-materials.data.ts';
import { inches, toInches } from '../../lib/values/length.ts';
import { readingInCelsius, readingInFahrenheit, riseFahrenheit, riseInCelsius, riseInFahrenheit } from '../../lib/values/temperature.ts';
import type { Case } from './case.ts';

const STORY: ShrinkAsked = {
  hub: inches(3.75),
  hubMeasured: true,
  ringOutside: inches(4.80717),
  hubBore: inches(1.25),
  ring: 'steel',
  hubMaterial: 'steel',
  unit: 'in',
};

const figure = (key: 'ringBore' | 'hoopStress' | 'rise' | 'oven', of: Partial<ShrinkAsked> = {}) =>
  shrinkFit({ ...STORY, ...of }).answer.figures[key].value;

function riseF(): number {
  const value = figure('rise');
  return 'rise' in value ? riseInFahrenheit(value.rise) : Number.NaN;
}

function riseC(): number {
  const value = figure('rise');
  return 'rise' in value ? riseInCelsius(value.rise) : Number.NaN;
}

function oven(unit: 'F' | 'C'): number {
  const value = figure('oven');
  if (!('reading' in value)) return Number.NaN;
  return unit === 'F' ? readingInFahrenheit(value.reading) : readingInCelsius(value.reading);
}

function stress(of: Partial<ShrinkAsked>): number {
  const value = figure('hoopStress', of);
  return 'number' in value ? value.number * 1000 : Number.NaN;
}

const bore = (): number => {
  const value = figure('ringBore');
  return 'length' in value ? toInches(value.length) : Number.NaN;
};

const older = (at: number, D: number): number => ((OLDER_RULES[at]?.base ?? 0) + (OLDER_RULES[at]?.perInch ?? 0) * D) / 1000;
const topic = 'Shrink fits';
const DERIVED = 'derived: story of the ring on a hub, Lamé’s rings and the heat worked by hand';

export const cases: readonly Case[] = [
  {
    topic,
    kind: 'published',
    source: 'Dooley, Applied Science for Metal Workers, art. 453',
    given: 'tyre of 68 in bored small by 0.001 in per inch',
    expected: 0.068,
    tolerance: 0.0005,
    unit: 'in',
    actual: () => allowance(0.001, 68),
    catches: 'an allowance on the radius',
  },
  {
    topic,
    kind: 'published',
    source: 'Fits, quoting a model engineers’ handbook, homemadetools.net/forum/fits-66835',
    given: 'shrink fit of 1 in by half a thousandth and 1 1/2 per inch: shaft',
    expected: 1.002,
    tolerance: 0.00005,
    unit: 'in',
    actual: () => 1 + older(1, 1),
    catches: 'the base of the rule left out',
  },
  {
    topic,
    kind: 'published',
    source: 'Balbharati Physics, 11th standard, ch. 7, exercise 3 (vii), solution',
    given: 'ring 1.47 m for a wheel of 1.5 m, 27 °C, 12e-6 per °C: temperature',
    expected: 1727.7,
    tolerance: 0.1,
    unit: '°C',
    actual: () => 27 + rise(0.03, 0, 1.2e-5, 1.47),
    catches: 'the start left out of a reading',
  },
  {
    topic,
    kind: 'published',
    source: 'Railway wheel rim, physicsforums.com/threads/thermal-expansion-question.432420, first post',
    given: 'rim 927 on 930 mm, 20 °C, 13e-6 per °C: temperature',
    expected: 268.9,
    tolerance: 0.06,
    unit: '°C',
    actual: () => 20 + rise(3, 0, 1.3e-5, 927),
    catches: 'expansion taken on the wheel and not on the ring',
  },
  {
    topic,
    kind: 'published',
    source: 'Tyre on a 1 m wheel, byjus.com, solution (rounded in print; the exact rise is 503.0)',
    given: 'tyre 994 on 1000 mm, cubic expansion 3.6e-5: rise',
    expected: 500,
    tolerance: 3.1,
    unit: '°C',
    actual: () => rise(6, 0, 3.6e-5 / 3, 994),
    catches: 'cubic expansion taken for linear',
  },
  {
    topic,
    kind: 'published',
    source: 'Rod cooled into a hole, askanewquestion.com, answer',
    given: 'rod 2.0046 into 2.0000 cm, 12e-6: drop',
    expected: 191.67,
    tolerance: 0.01,
    unit: '°C',
    actual: () => rise(0.0046, 0, 12e-6, 2),
    catches: 'a sign or a factor of two',
  },
  {
    topic,
    kind: 'published',
    source: 'Aluminium ring on a brass rod, jiskha.com/questions/574820, answer option',
    given: 'bore 5.000, rod 5.050 cm, 20 °C, 24e-6: temperature',
    expected: 437,
    tolerance: 0.5,
    unit: '°C',
    actual: () => 20 + rise(0.05, 0, 2.4e-5, 5),
    catches: 'the rod’s expansion used',
  },
  {
    topic,
    kind: 'published',
    source: 'Expansion coefficients for shrink fitting (scribd.com/doc/273805234): 1020 6.5e-6 and 1050 6.1e-6 per °F',
    given: 'steel in the shrink table lies between 1050 and 1020',
    expected: 6.3,
    tolerance: 0.2,
    unit: 'millionths per °F',
    actual: () => SHRINK_METALS.steel?.expansion ?? Number.NaN,
    catches: 'a coefficient per °C used with °F',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'steel ring for a hub of 3.7500: bore',
    expected: 3.7463,
    tolerance: 0.000051,
    unit: 'in',
    actual: bore,
    catches: 'the allowance added, or halved',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'the same: rise over the hub',
    expected: 317,
    tolerance: 0.5,
    unit: '°F',
    actual: riseF,
    catches: 'no room for dropping',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'the same: rise over the hub in °C',
    expected: 176,
    tolerance: 0.5,
    unit: '°C',
    actual: riseC,
    catches: 'a rise converted with the 32',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'the same: oven with the hub at 70 °F',
    expected: 387,
    tolerance: 0.5,
    unit: '°F',
    actual: () => oven('F'),
    catches: 'the shop’s warmth left out',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'the same: oven in °C',
    expected: 197,
    tolerance: 0.5,
    unit: '°C',
    actual: () => oven('C'),
    catches: 'a reading converted without the 32',
  },
  {
    topic,
    kind: 'derived',
    source: 'derived: 243 °F of rise times 5/9',
    given: '243 °F of rise in °C',
    expected: 135,
    tolerance: 0.001,
    unit: '°C',
    actual: () => riseInCelsius(riseFahrenheit(243)),
    catches: '117, a rise converted as a reading',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'steel ring, hub bored 1.250: hoop stress',
    expected: 23000,
    tolerance: 500,
    unit: 'lb/in²',
    actual: () => stress({}),
    catches: 'hoop taken for pressure, or a solid hub',
  },
  {
    topic,
    kind: 'derived',
    source: DERIVED,
    given: 'iron ring at the steel ring’s allowance: hoop stress',
    expected: 12000,
    tolerance: 500,
    unit: 'lb/in²',
    actual: () => stress({ ring: 'cast iron', allowancePerInch: 0.001 }),
    catches: 'the ring given the hub’s stiffness',
  },
  {
    topic,
    kind: 'derived',
    source: 'derived: a ring so thin that E × i ÷ D is all its stress',
    given: 'hoop stress of a ring 3.75 by 3.76 at 0.001 per inch on a solid hub',
    expected: 29920,
    tolerance: 60,
    unit: 'lb/in²',
    actual: () => {
      const steel = { E: 30e6, v: 0.3 };
      return hoopStress(fitPressure(0.00375, 3.75, 3.76, 0, steel, steel), 3.76, 3.75);
    },
    catches: 'diameters taken for radii in one term only',
  },
];
