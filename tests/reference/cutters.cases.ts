import { formError, formErrorSquare } from '../../lib/cutters/form-error.formulas.ts';
import { exactCountOf, halfNumberFor, wholeNumberFor } from '../../lib/cutters/ranges.ts';
import { substituteSpanError } from '../../lib/cutters/substitute-span.formulas.ts';
import { virtualTeeth } from '../../lib/gears/spur.formulas.ts';
import type { Case } from './case.ts';

const TOPIC = 'form cutters';
const degree = Math.PI / 180;

const MAKER = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, ch. VIII, p. 149';
const ROSE = 'J. Rose, Modern Machine-Shop Practice, vol. I, table of the eight involute cutters';

const numbered = (printed: string, from: number, to: number | null, number: number, teeth: number, catches: string): Case => ({
  topic: TOPIC,
  kind: 'published',
  source: MAKER,
  table: 'eight cutters for each pitch',
  given: `${teeth} teeth (printed: ${printed}, ${from} to ${to ?? 'a rack'})`,
  expected: number,
  tolerance: 1e-9,
  unit: 'No.',
  actual: () => Number(wholeNumberFor(teeth)?.number),
  catches,
});

const half = (teeth: number, expected: number, catches: string): Case => ({
  topic: TOPIC,
  kind: 'published',
  source: MAKER,
  table: 'half numbers',
  given: `half number for ${teeth} teeth`,
  expected,
  tolerance: 1e-9,
  unit: 'No.',
  actual: () => Number(halfNumberFor(teeth)?.number.replace('½', '.5')),
  catches,
});

const rose = (from: number, to: number | null, expected: number): Case => ({
  topic: TOPIC,
  kind: 'published',
  source: ROSE,
  table: 'counts that the eight are correct for',
  given: `cutter for ${from} to ${to ?? 'a rack'}`,
  expected,
  tolerance: 1e-9,
  unit: 'teeth',
  actual: () => exactCountOf({ from, to }, 'treatise').count,
  catches: 'the low end of the range taken although the treatise was asked for',
});

const lowEnd = (from: number, to: number | null): Case => ({
  topic: TOPIC,
  kind: 'memory',
  source: 'value from memory: each cutter is made for the lowest count of its range',
  table: 'low ends',
  given: `cutter for ${from} to ${to ?? 'a rack'}`,
  expected: from,
  tolerance: 1e-9,
  unit: 'teeth',
  actual: () => exactCountOf({ from, to }, 'low end').count,
  catches: 'the treatise followed although the low end was asked for',
});

const DERIVED = 'derived: both spaces drawn as involutes at one depth, half widths compared at equal heights';
const on35 = (N2: number, degrees2 = 14.5) => ({ N: 35, m: 1 / 8, a: 14.5 * degree, N2, m2: 1 / 8, a2: degrees2 * degree });

/** height: in addenda above the pitch line. Expected to half of the last printed place. */
const sideways = (N2: number, degrees2: number, height: number, expected: number, catches: string): Case => ({
  topic: TOPIC,
  kind: 'derived',
  source: DERIVED,
  table: `form of ${N2} at ${degrees2}° on 35 teeth, 8 DP, 14½°`,
  given: `${height} of the addendum above the pitch line`,
  expected,
  tolerance: 0.00005,
  unit: 'in',
  actual: () => formError(on35(N2, degrees2), height / 8),
  catches,
});

const span = (N2: number, k: number, expected: number, catches: string): Case => ({
  topic: TOPIC,
  kind: 'derived',
  source: 'derived: the form sunk to the right depth in 35 teeth, 8 DP, 14½°, the jaws closed on the curve',
  table: 'spans with a substitute on 35 teeth',
  given: `form of ${N2}, span over ${k}`,
  expected,
  tolerance: 0.00005,
  unit: 'in',
  actual: () => substituteSpanError({ N: 35, N2, m: 1 / 8, a: 14.5 * degree, k }),
  catches,
});

const shopFact = (teeth: number, expected: number): Case => ({
  topic: TOPIC,
  kind: 'common practice',
  source: 'common practice, no source',
  given: `${teeth} teeth, 10 DP, 14½°`,
  expected,
  tolerance: 1e-9,
  unit: 'No.',
  actual: () => Number(wholeNumberFor(teeth)?.number),
  catches: 'numbers counted the wrong way round, 1 for the fewest teeth',
});

export const cases: readonly Case[] = [
  numbered('No. 5', 21, 25, 5, 25, 'upper end left out of its own range'),
  numbered('No. 4', 26, 34, 4, 26, 'lower end given to the number before'),
  numbered('No. 4', 26, 34, 4, 34, 'upper end left out of its own range'),
  numbered('No. 3', 35, 54, 3, 35, 'lower end given to the number before'),
  numbered('No. 1', 135, null, 1, 1000, 'rack end of the set closed at some count'),
  numbered('No. 2', 55, 134, 2, 134, '133 for 134, as a misprint has it'),
  numbered('No. 8', 12, 13, 8, 12, 'numbers counted the wrong way round'),
  half(80, 1.5, 'half number begun at the whole number’s low end'),
  half(42, 2.5, 'half number begun a tooth late'),
  half(34, 3.5, 'half number ended a tooth early'),
  half(20, 5.5, 'two-tooth range taken for one'),
  half(15, 6.5, 'half number begun at the whole number’s low end'),
  rose(135, null, 200),
  rose(55, 134, 68),
  rose(35, 54, 40),
  rose(26, 34, 29),
  rose(14, 16, 16),
  lowEnd(135, null),
  lowEnd(35, 54),
  lowEnd(26, 34),
  lowEnd(12, 13),
  {
    topic: TOPIC,
    kind: 'published',
    source: `${ROSE}, worked remark on 13 and 26 teeth cut with Nos. 8 and 4`,
    given: 'No. 4 on 26 teeth: teeth between the gear and the count that the cutter is right for',
    expected: 3,
    tolerance: 1e-9,
    unit: 'teeth',
    actual: () => exactCountOf(wholeNumberFor(26) ?? { from: 0, to: 0 }, 'treatise').count - 26,
    catches: 'low end taken for the treatise’s count',
  },
  {
    topic: TOPIC,
    kind: 'published',
    source: `${ROSE}, worked remark on 16 and 32 teeth cut with Nos. 7 and 4`,
    given: 'No. 4 on 32 teeth: teeth between the count that the cutter is right for and the gear',
    expected: 3,
    tolerance: 1e-9,
    unit: 'teeth',
    actual: () => 32 - exactCountOf(wholeNumberFor(32) ?? { from: 0, to: 0 }, 'treatise').count,
    catches: 'low end taken for the treatise’s count',
  },
  shopFact(20, 6),
  shopFact(24, 5),
  {
    topic: TOPIC,
    kind: 'published',
    source: 'U.S. Navy, Machinery Repairman (14345), rule N/cos³ of the helix angle, worked with 24 teeth at 30°, where cos³ is 3√3/8',
    given: '24 teeth, helix 30°',
    expected: 3,
    tolerance: 1e-9,
    unit: 'No.',
    actual: () => Number(wholeNumberFor(virtualTeeth(24, 30 * degree))?.number),
    catches: 'cutter of a helical gear chosen by its own count (No. 5)',
  },
  sideways(26, 14.5, 1, 0.0075, 'heights taken from the wrong side of the pitch line'),
  sideways(26, 14.5, 0.5, 0.0028, 'error taken to grow in proportion to height'),
  sideways(26, 14.5, 0, 0.0003, 'widths compared along the pitch circles instead of square to the centre line'),
  sideways(29, 14.5, 1, 0.0044, 'a count of the treatise not told from the low end'),
  sideways(30, 14.5, 1, 0.0036, 'half number given its whole number’s form'),
  sideways(30, 14.5, 0.5, 0.0013, 'half number given its whole number’s form'),
  sideways(55, 14.5, 1, -0.0077, 'sign lost: metal left taken for metal gone'),
  sideways(55, 14.5, 0.5, -0.0028, 'sign lost: metal left taken for metal gone'),
  sideways(68, 14.5, 1, -0.0102, 'error taken to be symmetrical about the right count'),
  sideways(68, 14.5, 0.5, -0.0038, 'error taken to be symmetrical about the right count'),
  sideways(35, 20, 1, 0.0122, 'pressure angle of the cutter not used'),
  sideways(35, 20, 0.5, 0.0065, 'pressure angle of the cutter not used'),
  sideways(35, 20, 0, 0.0002, 'base circle of the wrong angle'),
  sideways(35, 20, -0.25, -0.0034, 'sign below the pitch line'),
  sideways(35, 20, -0.5, -0.0078, 'sign below the pitch line'),
  {
    topic: TOPIC,
    kind: 'derived',
    source: 'derived: distance from the true tip corner to the drawn curve of the cutter’s form',
    given: 'form of 26 on 35 teeth, 8 DP, 14½°, square to the flank at the tip corner',
    expected: 0.006,
    tolerance: 0.00005,
    unit: 'in',
    actual: () => formErrorSquare(on35(26), 1 / 8),
    catches: 'the sideways figure given for the one square to the flank',
  },
  span(26, 4, -0.0018, 'span with a substitute taken to be right over any count'),
  span(55, 4, 0.004, 'sign of the span error'),
];
