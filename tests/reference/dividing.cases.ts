import { chooseCircles } from '../../lib/dividing/joint.ts';
import { circlesThatServe, landingHole, moveOn, sectorHoles, turnsMade, turnsPerDivision } from '../../lib/dividing/plain.formulas.ts';
import { whyNoCircle } from '../../lib/dividing/why-not.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import type { Case } from './case.ts';

const plate = (id: number, ...sides: number[][]): Plate => ({ id, name: `plate ${id}`, here: true, kind: 'plate', sides });
// Brown & Sharpe, Practical Treatise, scan page 58: the three plates of a 40 to 1 head.
const FIRST = [15, 16, 17, 18, 19, 20];
const SECOND = [21, 23, 27, 29, 31, 33];
const THIRD = [37, 39, 41, 43, 47, 49];
const THREE = [plate(1, FIRST), plate(2, SECOND), plate(3, THIRD)];
// US Navy course, page 7-17: the large plate of the wide range divider.
const WIDE_RANGE = [plate(5, [24, 28, 30, 34, 37, 38, 39, 41, 42, 43, 100], [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66])];
const TWO_SIDED = [plate(4, [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43], [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66])];

/** Holes that the pin goes past in one move on a circle: whole turns and spaces together. −1: the circle does not serve. */
function holesInOneMove(R: number, N: number, circle: number): number {
  const move = moveOn(circle, turnsPerDivision(R, N));
  return move ? move.turns * circle + move.spaces : -1;
}
const serving = (R: number, N: number, plates: readonly Plate[]): number => circlesThatServe(R, N, plates).length;
const servedIn = (from: number, to: number, step: number, plates: readonly Plate[]): number => {
  let served = 0;
  for (let N = from; N <= to; N += step) if (serving(40, N, plates) > 0) served += 1;
  return served;
};

type Source = Pick<Case, 'kind' | 'source' | 'table'>;
const book = (source: string, table?: string): Source => ({ kind: 'published', source, ...(table ? { table } : {}) });
const worked = (route: string, table?: string): Source => ({ kind: 'derived', source: `derived: ${route}`, ...(table ? { table } : {}) });

const ARMY = book('US Army ordnance course text od16448 on milling, page 30 (armyordnance.tpub.com/od16448; title not shown there)');
const ARMY_33 = book('US Army ordnance course text od16448 on milling, page 33 (armyordnance.tpub.com/od16448; title not shown there)');
const TREATISE_58 = book('Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, scan page 58');
const TREATISE_60 = book('Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, scan page 60');
const HANDBOOK_1916 = book("Machinery's Handbook, 1916 edition, angular indexing");
const SHEET = book('Dividing head practice, class sheet, worked rows (scribd.com/document/628433770)');
const ATTACHMENT = book('Myford, instructions of the dividing attachment 1495 (scribd.com/document/546228760)');
const TABLE_MANUAL = book('Phase II, manual of the 221 series rotary tables, p. 5');
const EVEN_DIVISORS = book('Phase II, manual of the 221 series rotary tables, p. 5, list of even divisors of 90', 'even divisors of 90');
const PLATES_NOTE = book('Using division plates, with a 90 to 1 table (mrjones.id.au/html/using_division_plates.html)');
const ASSIGNMENT = book(
  'MTE 812 Manufacturing Processes, assignment 02 on indexing, 2022, question 1 (scribd.com/document/571701827)',
  'assignment on indexing, question 1',
);
const NAVY = book('US Navy Machinery Repairman course, page 7-17, wide range divider');
const STORY = worked('R ÷ N in lowest terms, carried to the circle by hand');
const LEAST = worked('R ÷ N in lowest terms on the least circle of three plates, by hand', 'least circle on three plates');

/** One move, as holes gone past on the circle: turns × circle + spaces, both typed from the source. */
const move = (from: Source, R: number, N: number, [turns, spaces, circle]: readonly [number, number, number], catches: string): Case => ({
  topic: 'dividing',
  ...from,
  given: `${R} to 1, ${N} divisions: ${turns} turns + ${spaces} on ${circle}`,
  expected: turns * circle + spaces,
  tolerance: 0.001,
  unit: `holes of the ${circle} circle`,
  actual: () => holesInOneMove(R, N, circle),
  catches,
});

const counted = (from: Source, given: string, expected: number, unit: string, actual: () => number, catches: string): Case => ({
  topic: 'dividing',
  ...from,
  given,
  expected,
  tolerance: 0.001,
  unit,
  actual,
  catches,
});

const moves: readonly Case[] = [
  move(ARMY, 40, 6, [6, 12, 18], 'whole turns left out'),
  move(ARMY, 40, 6, [6, 26, 39], 'only the least circle offered'),
  move(ARMY, 40, 42, [0, 40, 42], 'fraction put in lowest terms and its lower number taken for the circle'),
  move(ARMY, 40, 42, [0, 20, 21], 'circle that is the lower number itself not taken'),
  move(SHEET, 40, 15, [2, 18, 27], 'holes counted with the one the pin stands in'),
  move(SHEET, 40, 15, [2, 24, 36], 'multiplier of the circle left out'),
  move(book('dividing attachment manual UT 400, p. 6'), 40, 20, [2, 0, 20], 'whole turns given as a fraction'),
  move(book('college lecture page, simple indexing'), 40, 7, [5, 5, 7], 'turns and remainder exchanged'),
  move(ATTACHMENT, 60, 4, [15, 0, 45], 'head taken as 40 to 1'),
  move(ATTACHMENT, 60, 9, [6, 30, 45], 'head taken as 40 to 1'),
  move(TABLE_MANUAL, 90, 17, [5, 10, 34], 'head taken as 40 to 1'),
  move(TABLE_MANUAL, 90, 19, [4, 28, 38], 'spaces not carried up to the doubled circle'),
  move(EVEN_DIVISORS, 90, 2, [45, 0, 20], 'many whole turns cut off'),
  move(EVEN_DIVISORS, 90, 5, [18, 0, 20], 'many whole turns cut off'),
  move(EVEN_DIVISORS, 90, 9, [10, 0, 20], 'remainder where there is none'),
  move(EVEN_DIVISORS, 90, 18, [5, 0, 20], 'remainder where there is none'),
  move(EVEN_DIVISORS, 90, 45, [2, 0, 20], 'remainder where there is none'),
  move(PLATES_NOTE, 90, 10, [9, 0, 21], 'remainder where there is none'),
  move(PLATES_NOTE, 90, 21, [4, 6, 21], 'circle equal to the count not carried up from 2/7'),
  move(ASSIGNMENT, 40, 35, [1, 3, 21], 'whole turn left in the fraction'),
  move(ASSIGNMENT, 40, 52, [0, 30, 39], 'circle 13 asked for, which no plate has'),
  move(ASSIGNMENT, 40, 60, [0, 10, 15], 'more divisions than turns turned over'),
  move(ASSIGNMENT, 40, 34, [1, 3, 17], 'prime circle passed over'),
  move(ASSIGNMENT, 40, 30, [1, 5, 15], 'whole turn left in the fraction'),
  move(book('home shop forum thread on dividing plates, 15 to 16 Jan 2015'), 90, 63, [1, 9, 21], 'head taken as 40 to 1'),
  move(book('home shop forum thread on dividing plates, 15 to 16 Jan 2015'), 40, 6, [6, 10, 15], 'first plate passed over'),
  move(book('learning-site reply on 7 divisions'), 40, 7, [5, 15, 21], 'multiple of 7 not found'),
  move(book('learning-site reply on 7 divisions, second setting'), 40, 7, [5, 35, 49], 'only the least multiple of 7 found'),
  move(book('machining forum post on a home-made 30 to 1 divider'), 30, 10, [3, 0, 20], 'head taken as 40 to 1'),
  move(ARMY_33, 40, 400, [0, 2, 20], '54 minutes, a tenth of a turn, taken as whole turns'),
  move(TREATISE_60, 40, 360, [0, 2, 18], 'one degree: less than one space on most circles'),
  move(TREATISE_60, 40, 540, [0, 2, 27], 'two thirds of a degree'),
  move(TREATISE_60, 40, 720, [0, 1, 18], 'half a degree: a single space'),
  move(TREATISE_60, 40, 1080, [0, 1, 27], 'a third of a degree: a single space'),
  move(HANDBOOK_1916, 40, 360, [0, 3, 27], 'one degree on the other circle'),
  move(book('Holtzapffel, Turning, the division plate'), 1, 12, [0, 8, 96], 'direct dividing not taken as a head of 1 to 1'),
  move(book('Holtzapffel, Turning, the division plate, second circle'), 1, 12, [0, 12, 144], 'spaces turned over into divisions'),
  move(STORY, 40, 22, [1, 27, 33], 'story of two wheels: 28 holes counted instead of 27 spaces'),
  move(STORY, 40, 28, [1, 9, 21], 'story of two wheels: third plate taken for the second'),
  move(STORY, 40, 60, [0, 22, 33], 'story of the ring and hub: only the least circle offered'),
  move(STORY, 40, 35, [1, 7, 49], 'story of the lacking cutter: only the least circle offered'),
  move(STORY, 40, 72, [0, 15, 27], 'story of the prime count: second circle missed'),
  move(LEAST, 40, 3, [13, 5, 15], 'many whole turns cut off'),
  move(LEAST, 40, 39, [1, 1, 39], 'single space lost'),
  move(LEAST, 40, 41, [0, 40, 41], 'just under a turn rounded to a turn'),
  move(LEAST, 40, 88, [0, 15, 33], 'circle 11 asked for, which no plate has'),
  move(LEAST, 40, 128, [0, 5, 16], '128 refused with 127'),
];

const claims: readonly Case[] = [
  counted(TABLE_MANUAL, 'sector for 10 spaces on 34', 11, 'holes', () => sectorHoles(10), 'sector set by holes for spaces'),
  counted(
    TREATISE_58,
    'three plates, counts 2 to 50 divided',
    49,
    'counts',
    () => servedIn(2, 50, 1, THREE),
    'a circle left out of the search',
  ),
  counted(
    TREATISE_58,
    'three plates, even counts 2 to 100 divided, all but 96',
    49,
    'counts',
    () => servedIn(2, 100, 2, THREE),
    '96 set near enough on a circle that misses',
  ),
  counted(
    TREATISE_58,
    'three plates, 380 divisions: circles that serve',
    1,
    'circles',
    () => serving(40, 380, THREE),
    'counts above 100 given up',
  ),
  counted(
    TREATISE_60,
    'three plates, quarter degrees (1440)',
    0,
    'circles',
    () => serving(40, 1440, THREE),
    'near value offered for an exact one',
  ),
  counted(
    NAVY,
    'large two-sided plate of the wide range divider, counts 2 to 60 divided',
    59,
    'counts',
    () => servedIn(2, 60, 1, WIDE_RANGE),
    'second side of the plate left out',
  ),
  counted(
    book('home shop forum thread on prime divisions, 90 to 1, first post'),
    '90 to 1, the same circles, 71 divisions',
    0,
    'circles',
    () => serving(90, 71, THREE),
    'near value offered for a prime',
  ),
  counted(
    book('home shop forum thread on prime divisions, 90 to 1, first post, second count'),
    '90 to 1, the same circles, 113 divisions',
    0,
    'circles',
    () => serving(90, 113, THREE),
    'near value offered for a prime',
  ),
  counted(
    worked('10 on 18 is 5/9 of a turn; 40 ÷ 5/9 = 72; a seller printed it for 73'),
    'printed wrongly: 73 divisions by 10 on 18, turns that 73 moves make (40 wanted)',
    40 + 5 / 9,
    'turns',
    () => toNumber(turnsMade(73, { turns: 0, spaces: 10, circle: 18 })),
    'a printed setting believed without its proof',
  ),
  counted(
    worked('73 is prime and above every circle; the seller’s 10 on 18 is not repeated'),
    'printed wrongly: 73 divisions on three plates',
    0,
    'circles',
    () => serving(40, 73, THREE),
    'a misprint reproduced',
  ),
  counted(
    worked('127 is prime and above every circle; the seller’s 5 on 16 makes 128'),
    'printed wrongly: 127 divisions on three plates',
    0,
    'circles',
    () => serving(40, 127, THREE),
    'a misprint reproduced',
  ),
  counted(
    worked('12 does not divide 30; a forum list of whole-turn counts holds it wrongly'),
    'printed wrongly: 30 to 1, 12 divisions on 20, holes in one move (whole turns would be 40 or 60)',
    50,
    'holes of the 20 circle',
    () => holesInOneMove(30, 12, 20),
    'a misprint reproduced: two and a half turns taken as whole',
  ),
  counted(STORY, '71 divisions on three plates', 0, 'circles', () => serving(40, 71, THREE), 'near value offered for a prime'),
  counted(STORY, '71 divisions on the two-sided plate', 0, 'circles', () => serving(40, 71, TWO_SIDED), 'near value offered for a prime'),
  counted(
    STORY,
    '71 divisions: what the circle must be a multiple of',
    71,
    'holes',
    () => whyNoCircle(71, turnsPerDivision(40, 71), [...FIRST, ...SECOND, ...THIRD]).multipleOf,
    'the wrong number named as standing in the way',
  ),
  counted(STORY, '57 divisions on three plates', 0, 'circles', () => serving(40, 57, THREE), '22 on 33 given for 57, which makes 60'),
  counted(
    STORY,
    '57 divisions on the two-sided plate',
    40,
    'holes of the 57 circle',
    () => holesInOneMove(40, 57, 57),
    '57 taken as impossible on any plate',
  ),
  counted(STORY, '60 divisions on three plates: circles that serve', 6, 'circles', () => serving(40, 60, THREE), 'some circles missed'),
  counted(
    STORY,
    '22 and 28 together on three plates: plates put on',
    1,
    'plates',
    () =>
      chooseCircles(
        [22, 28].map((N) => ({ key: `${N}`, divisions: N, head: { turns: 40 } })),
        THREE,
      ).mountings.length,
    '28 set on the 49 of another plate',
  ),
  counted(
    worked('27 spaces twice round a circle of 33: 54 − 33'),
    '22 divisions, 27 on 33: hole for tooth 3',
    21,
    'hole',
    () => landingHole(3, { turns: 1, spaces: 27, circle: 33 }),
    'tooth 1 counted as one move',
  ),
];

export const cases: readonly Case[] = [...moves, ...claims];
