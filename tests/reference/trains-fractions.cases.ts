import { approximations, greatestPrime, partialQuotients } from '../../lib/trains/approximations.ts';
import { nearestTrains, type WheelsInTrain } from '../../lib/trains/nearest.ts';
import { relativeError, type Target, targetOf } from '../../lib/trains/target.ts';
import type { Case } from './case.ts';
import { casesOf } from './train-checks.ts';

const PI = targetOf([1, 1], 1);
const ROOT: Target = { num: 8660254037844386n, den: 10000000000000000n, holdsPi: false };

/** The upper number of the listed fraction with this one below; −1 if it is not listed. */
const above = (target: Target, below: number, most: number): number =>
  approximations(target, most).findLast(({ ratio }) => ratio[1] === below)?.ratio[0] ?? -1;

/** Denominators of the convergents, by the recurrence q = a q′ + q″ over lib's quotients. */
function denominators(target: Target): bigint[] {
  const all: bigint[] = [];
  let [before, last] = [1n, 0n];
  for (const a of partialQuotients(target, 8)) {
    [before, last] = [last, a * last + before];
    all.push(last);
  }
  return all;
}

/** What these wheels give, if the search over them finds exactly that ratio with exactly these on each side; −1 if not. */
function trainRatio(drivers: readonly number[], driven: readonly number[]): number {
  const product = (list: readonly number[]): number => list.reduce((all, one) => all * one, 1);
  const [top, bottom] = [product(drivers), product(driven)];
  const [found] = nearestTrains({
    wheels: [...drivers, ...driven],
    target: targetOf([top, bottom]),
    wheelsInTrain: (2 * drivers.length) as WheelsInTrain,
  });
  return found?.exact ? found.ratio[0] / found.ratio[1] : -1;
}

const PIQ = casesOf(
  'trains: fractions and clock trains',
  'Encyclopaedia Britannica, 11th ed., Continued Fractions (partial quotients of π)',
)([
  {
    given: 'π, partial quotient 0',
    expected: 3,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[0]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 1',
    expected: 7,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[1]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 2',
    expected: 15,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[2]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 3',
    expected: 1,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[3]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 4',
    expected: 292,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[4]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 5',
    expected: 1,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[5]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
  {
    given: 'π, partial quotient 6',
    expected: 1,
    tolerance: 1e-6,
    actual: () => Number(partialQuotients(targetOf([1, 1], 1))[6]),
    catches: 'a quotient lost to rounding',
    table: 'PIQ',
  },
]);

const PIC = casesOf(
  'trains: fractions and clock trains',
  'Encyclopaedia Britannica, 11th ed., Continued Fractions (convergents of π)',
)([
  {
    given: 'π, the convergent with 1 below, its upper number',
    expected: 3,
    tolerance: 1e-6,
    actual: () => above(targetOf([1, 1], 1), 1, 200000),
    catches: 'convergents out of step',
    table: 'PIC',
  },
  {
    given: 'π, the convergent with 7 below, its upper number',
    expected: 22,
    tolerance: 1e-6,
    actual: () => above(targetOf([1, 1], 1), 7, 200000),
    catches: 'convergents out of step',
    table: 'PIC',
  },
  {
    given: 'π, the convergent with 106 below, its upper number',
    expected: 333,
    tolerance: 1e-6,
    actual: () => above(targetOf([1, 1], 1), 106, 200000),
    catches: 'convergents out of step',
    table: 'PIC',
  },
  {
    given: 'π, the convergent with 113 below, its upper number',
    expected: 355,
    tolerance: 1e-6,
    actual: () => above(targetOf([1, 1], 1), 113, 200000),
    catches: 'convergents out of step',
    table: 'PIC',
  },
  {
    given: 'π, the convergent with 33102 below, its upper number',
    expected: 103993,
    tolerance: 1e-6,
    actual: () => above(targetOf([1, 1], 1), 33102, 200000),
    catches: 'convergents out of step',
    table: 'PIC',
  },
]);

const PIB = casesOf(
  'trains: fractions and clock trains',
  'Encyclopaedia Britannica, 11th ed., Continued Fractions (bounds of the error of 355/113)',
)([
  {
    given: '355/113, upper bound 1/(q4 q5) times ten to the ninth',
    expected: 267.3,
    tolerance: 0.06,
    actual: () => 1e9 / (113 * Number(denominators(PI)[4])),
    catches: 'the next denominator mistaken',
  },
  {
    given: 'MISPRINT: lower bound a6/(q4 q6) is printed .0000002665; it is, times ten to the ninth',
    expected: 266.4,
    tolerance: 0.06,
    actual: () => 1e9 / (113 * Number(denominators(PI)[5])),
    catches: 'the misprint: q6 is 33,215',
  },
]);

const F254 = casesOf(
  'trains: fractions and clock trains',
  'Electronics forum, fractions for 25.4/8',
)([
  {
    given: '25.4/8 by 3/1, in a million',
    expected: -55118.11,
    tolerance: 0.006,
    actual: () => relativeError([3, 1], targetOf([127, 40])) * 1e6,
    catches: 'error against the fraction instead of the ratio',
    table: 'F254',
  },
  {
    given: '25.4/8 by 16/5, in a million',
    expected: 7874.016,
    tolerance: 0.0006,
    actual: () => relativeError([16, 5], targetOf([127, 40])) * 1e6,
    catches: 'error against the fraction instead of the ratio',
    table: 'F254',
  },
  {
    given: '25.4/8 by 19/6, in a million',
    expected: -2624.672,
    tolerance: 0.0006,
    actual: () => relativeError([19, 6], targetOf([127, 40])) * 1e6,
    catches: 'error against the fraction instead of the ratio',
    table: 'F254',
  },
  {
    given: '25.4/8 by 54/17, in a million',
    expected: 463.177,
    tolerance: 0.0006,
    actual: () => relativeError([54, 17], targetOf([127, 40])) * 1e6,
    catches: 'error against the fraction instead of the ratio',
    table: 'F254',
  },
  {
    given: '25.4/8 by 73/23, in a million',
    expected: -342.349,
    tolerance: 0.0006,
    actual: () => relativeError([73, 23], targetOf([127, 40])) * 1e6,
    catches: 'error against the fraction instead of the ratio',
    table: 'F254',
  },
  {
    given: '25.4/8 by 127/40, in a million',
    expected: 0.0,
    tolerance: 0.0006,
    actual: () => relativeError([127, 40], targetOf([127, 40])) * 1e6,
    catches: 'exact not told as exact',
    table: 'F254',
  },
]);

const MOON = casesOf(
  'trains: fractions and clock trains',
  'Puzzle page on a lunar train: 29.530588 days',
)([
  {
    given: '29.530588 days, the convergent with 1 below',
    expected: 30,
    tolerance: 1e-6,
    actual: () => above(targetOf([29530588, 1000000]), 1, 30000),
    catches: 'a convergent missed',
    table: 'MOON',
  },
  {
    given: '29.530588 days, the convergent with 2 below',
    expected: 59,
    tolerance: 1e-6,
    actual: () => above(targetOf([29530588, 1000000]), 2, 30000),
    catches: 'a convergent missed',
    table: 'MOON',
  },
  {
    given: '29.530588 days, the convergent with 15 below',
    expected: 443,
    tolerance: 1e-6,
    actual: () => above(targetOf([29530588, 1000000]), 15, 30000),
    catches: 'a convergent missed',
    table: 'MOON',
  },
  {
    given: '29.530588 days, the convergent with 17 below',
    expected: 502,
    tolerance: 1e-6,
    actual: () => above(targetOf([29530588, 1000000]), 17, 30000),
    catches: 'a convergent missed',
    table: 'MOON',
  },
  {
    given: '29.530588 days, the convergent with 49 below',
    expected: 1447,
    tolerance: 1e-6,
    actual: () => above(targetOf([29530588, 1000000]), 49, 30000),
    catches: 'a convergent missed',
    table: 'MOON',
  },
  {
    given: '25101, its greatest prime',
    expected: 2789,
    tolerance: 1e-6,
    actual: () => greatestPrime(25101),
    catches: 'a prime beyond any wheel not told',
    table: 'MOON',
  },
]);

const SQ3 = casesOf(
  'trains: fractions and clock trains',
  'Electronics forum, fractions for √(3/4)',
)([
  {
    given: '0.8660254037844386, error of 13/15',
    expected: 0.000641262882228,
    tolerance: 5e-7,
    actual: () => Math.abs(relativeError([13, 15], ROOT)) * 0.8660254037844386,
    catches: 'a mediant left out',
    table: 'SQ3',
  },
  {
    given: '0.8660254037844386, error of 45/52',
    expected: 0.000640788399823,
    tolerance: 5e-7,
    actual: () => Math.abs(relativeError([45, 52], ROOT)) * 0.8660254037844386,
    catches: 'a mediant left out',
    table: 'SQ3',
  },
  {
    given: '0.8660254037844386, error of 84/97',
    expected: 0.00004602234114,
    tolerance: 5e-7,
    actual: () => Math.abs(relativeError([84, 97], ROOT)) * 0.8660254037844386,
    catches: 'a mediant left out',
    table: 'SQ3',
  },
  {
    given: '0.8660254037844386, error of 181/209',
    expected: 0.000003304349533,
    tolerance: 5e-7,
    actual: () => Math.abs(relativeError([181, 209], ROOT)) * 0.8660254037844386,
    catches: 'a mediant left out',
    table: 'SQ3',
  },
  {
    given:
      'MISPRINT: better fractions for 0.8660254 up to 100 are printed as nine: 1/1, 4/5, 5/6, 6/7, 13/15, 45/52, 58/67, 71/82, 84/97; 3/4, nearer than 1/1, is left out',
    expected: 10,
    tolerance: 1e-6,
    actual: () => approximations(ROOT, 100).length,
    catches: 'mediants that are no better listed, or better ones left out',
    table: 'SQ3',
  },
]);

const CLOCK = casesOf(
  'trains: fractions and clock trains',
  'E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells',
)([
  {
    given: 'lunar train 15-98, 25-113 from the 24-hour wheel, hours',
    expected: 708.736,
    tolerance: 0.0006,
    actual: () => 24 * trainRatio([98, 113], [15, 25]),
    catches: 'the wheels of two arbors paired wrongly',
  },
  {
    given: 'MISPRINT: lunar train 6-91, 9-91, 37-171 is printed 3.4 s past 44 min; seconds past',
    expected: 3.24,
    tolerance: 0.006,
    actual: () => (trainRatio([91, 91, 171], [6, 9, 37]) - 708 - 44 / 60) * 3600,
    catches: 'the printed 3.4 s',
  },
  {
    given: 'dial wheels 90, 100 on 25, 30',
    expected: 12,
    tolerance: 1e-6,
    actual: () => trainRatio([90, 100], [25, 30]),
    catches: 'a pair left out',
  },
  {
    given: 'dial wheels 72, 80 on 20, 24',
    expected: 12,
    tolerance: 1e-6,
    actual: () => trainRatio([72, 80], [20, 24]),
    catches: 'a pair left out',
  },
  {
    given: 'going train 64, 60 on 8, 8',
    expected: 60,
    tolerance: 1e-6,
    actual: () => trainRatio([64, 60], [8, 8]),
    catches: 'like pinions not both used',
  },
  {
    given: 'half-second train 96, 80 on 8, 8',
    expected: 120,
    tolerance: 1e-6,
    actual: () => trainRatio([96, 80], [8, 8]),
    catches: 'like pinions not both used',
  },
  {
    given: 'half-second train 84, 80 on 8, 7',
    expected: 120,
    tolerance: 1e-6,
    actual: () => trainRatio([84, 80], [8, 7]),
    catches: 'a pair left out',
  },
  {
    given: 'lantern train 72, 60 on 6, 6',
    expected: 120,
    tolerance: 1e-6,
    actual: () => trainRatio([72, 60], [6, 6]),
    catches: 'like pinions not both used',
  },
  {
    given: 'lever watch 63, 60, 64 on 7, 8, 8',
    expected: 540,
    tolerance: 1e-6,
    actual: () => trainRatio([63, 60, 64], [7, 8, 8]),
    catches: 'six wheels searched as four',
  },
  {
    given: 'pocket chronometer 80, 75, 80 on 8, 10, 10',
    expected: 600,
    tolerance: 1e-6,
    actual: () => trainRatio([80, 75, 80], [8, 10, 10]),
    catches: 'like wheels of both sides not both used',
  },
  {
    given: 'sidereal train 50/30 × 182/211 × 196/281 against 1.002737909, seconds a year',
    expected: 0,
    tolerance: 1e-6,
    actual: () => ((trainRatio([50, 182, 196], [30, 211, 281]) / 1.0027379093508 - 1) * 365.25 * 86400 > -0.1 ? 0 : 1),
    catches: 'six wheels multiplied out of order',
  },
]);

const HAYES = casesOf(
  'trains: fractions and clock trains',
  'B. Hayes, On the Teeth of Wheels, American Scientist 2000',
)([
  {
    given: '191/23, error of 8/1 in 23rds',
    expected: -7,
    tolerance: 1e-6,
    actual: () => Math.round(relativeError([8, 1], targetOf([191, 23])) * 191),
    catches: 'the sign of the error',
  },
  {
    given: '191/23, the fraction with 3 below',
    expected: 25,
    tolerance: 1e-6,
    actual: () => above(targetOf([191, 23]), 3, 200),
    catches: 'a mediant left out',
  },
]);

const TREE = casesOf(
  'trains: fractions and clock trains',
  'Gear note on the tree of fractions',
)([
  {
    given: '1.234 by 21/17',
    expected: 1.235,
    tolerance: 0.0006,
    actual: () => above(targetOf([1234, 1000]), 17, 21) / 17,
    catches: 'the best with numbers up to 21 missed',
  },
]);

const WENT = casesOf(
  'trains: fractions and clock trains',
  'T. H. Wentzell, Machine Design, ex. 11.2 to 11.6, pp. 219-243',
)([
  {
    given: 'A 20 B 65, C 20 E 60 (D is an idler): train value',
    expected: 9.75,
    tolerance: 0.006,
    actual: () => trainRatio([65, 60], [20, 20]),
    catches: 'the idler counted',
  },
  { given: '12-36 and 16-64', expected: 12, tolerance: 1e-6, actual: () => trainRatio([36, 64], [12, 16]), catches: 'a pair left out' },
  {
    given: 'pinions of 20 with 80, 100, 120',
    expected: 120,
    tolerance: 1e-6,
    actual: () => trainRatio([80, 100, 120], [20, 20, 20]),
    catches: 'three like pinions refused',
  },
]);

const BEVAN2 = casesOf(
  'trains: fractions and clock trains',
  'T. Bevan, The Theory of Machines, ch. 11 ex. 3, p. 374',
)([
  {
    given: 'reverted train 74/24 × 52/18',
    expected: 8.907,
    tolerance: 0.0006,
    actual: () => trainRatio([74, 52], [24, 18]),
    catches: 'the pairs added',
  },
]);

export const cases: readonly Case[] = [...PIQ, ...PIC, ...PIB, ...F254, ...MOON, ...SQ3, ...CLOCK, ...HAYES, ...TREE, ...WENT, ...BEVAN2];
