import { costOfMissing } from '../../lib/trains/missing-cost.ts';
import { countRatios } from '../../lib/trains/ratio-count.ts';
import type { Case } from './case.ts';

const BELONGS = [19, 22, 25, 28, 31, 34, 37, 41, 46, 52];
const DRAWER = [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52];
const RECUTS = [
  { make: 22, from: 31 },
  { make: 28, from: 34 },
];
const cost = () => costOfMissing({ belongs: BELONGS, drawer: DRAWER, plannedRecuts: RECUTS });

const derived = (route: string, given: string, expected: number, actual: () => number, catches: string): Case => ({
  topic: 'trains',
  kind: 'derived',
  source: `derived: ${route}`,
  given,
  expected,
  tolerance: 0.001,
  unit: 'ratios',
  actual,
  catches,
});

const CHOOSING = 'all trains differ, so they are counted by choosing';
const LISTED = 'every train written down as a fraction in lowest terms, each kept once';

export const cases: readonly Case[] = [
  derived(
    `${CHOOSING}: 10 × 9`,
    'ten gears, two-wheel ratios',
    90,
    () => countRatios(BELONGS).simple,
    'a ratio and its reverse taken as one',
  ),
  derived(
    `${CHOOSING}: 10·9/2 pairs × 8·7/2 pairs`,
    'ten gears, ratios only of four wheels',
    1260,
    () => countRatios(BELONGS).compound,
    'order within a pair counted as another ratio',
  ),
  derived(`${CHOOSING}: 90 + 1,260`, 'ten gears, all ratios', 1350, () => cost().oneOfEach.complete.distinct, 'two-wheel ratios left out'),
  derived(
    `${CHOOSING}: 8 × 7 + 28 × 15`,
    'without the 22 and the 28, one wheel of each number',
    476,
    () => cost().oneOfEach.today.distinct,
    'like pairs counted where one of each number is meant',
  ),
  derived('1,350 less 476', 'lost today, one wheel of each number', 874, () => cost().oneOfEach.lost, 'the two counts mixed'),
  derived(
    `${CHOOSING}: 9 × 8 + 36 × 21`,
    'with the 22 back, one wheel of each number',
    828,
    () => cost().afterEach[0]?.oneOfEach.distinct ?? -1,
    'the spare taken away with its number',
  ),
  derived(
    `${CHOOSING}: 9 × 8 + 36 × 21, as for the 22`,
    'with the 28 back, one wheel of each number',
    828,
    () => cost().afterEach[1]?.oneOfEach.distinct ?? -1,
    'wheels made added up instead of each alone',
  ),
  derived(
    LISTED,
    'the thirteen wheels that lie there',
    707,
    () => cost().reallyThere.today.distinct,
    '1 to 1 left out, or a like pair not used',
  ),
  derived(
    `${LISTED}; the 31 and the 34 are used up`,
    'the thirteen wheels once both are made',
    1573,
    () => cost().reallyThere.allMade.distinct,
    'the spares that were cut up still counted',
  ),
];
