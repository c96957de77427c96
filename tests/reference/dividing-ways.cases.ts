import { nearestOn, nearestPair, turnsForAngle } from '../../lib/dividing/angular.formulas.ts';
import { gearsOwned, ratioOfTrain } from '../../lib/dividing/change-gears.ts';
import { compoundMoves, compoundSettings, compoundTurns } from '../../lib/dividing/compound.formulas.ts';
import { countMade, gearRatio, plateTurns } from '../../lib/dividing/differential.formulas.ts';
import { idlersFor } from '../../lib/dividing/idlers.ts';
import { proofOf, type Way, waysToDivide } from '../../lib/dividing/ways.ts';
import { whatWouldServe } from '../../lib/dividing/what-would-serve.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { type Ratio, toNumber } from '../../lib/values/ratio.ts';
import type { Case } from './case.ts';
import { caseOf, type From } from './cases-of.ts';

const plate = (id: number, ...sides: number[][]): Plate => ({ id, name: `plate ${id}`, here: true, kind: 'plate', sides });
const THREE = [plate(1, [15, 16, 17, 18, 19, 20]), plate(2, [21, 23, 27, 29, 31, 33]), plate(3, [37, 39, 41, 43, 47, 49])];
const TWO_SIDED = [plate(4, [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43], [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66])];
const GEARS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
const STORY_GEARS = [28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

const book = (source: string, table?: string): From => ({ kind: 'published', source, ...(table ? { table } : {}) });
const recalled = (table: string): From => ({ kind: 'memory', source: `value from memory: ${table}`, table });
const worked = (route: string, table?: string): From => ({ kind: 'derived', source: `derived: ${route}`, ...(table ? { table } : {}) });

const TREATISE = 'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines';
const TREATISE_57 = book(`${TREATISE}, page 57 (scan page 63)`);
const HANDBOOK_27 = (column: string): From =>
  book(`Machinery's Handbook, 27th ed., p. 1995, accurate angular indexing, ${column}`, `accurate angular indexing, ${column}`);
const FORUM_57 = book('home shop forum thread “Gear help needed”, 8 Dec 2020: 22 on 33 for 57 without the gears');
const STORY = worked('the set-up for 71 carried through by hand in fractions');

const counted = caseOf('dividing');

/** A differential setting as printed: counts that come out when the gears printed turn the plate the way printed. +: with the crank. */
const geared = (
  from: From,
  N: number,
  [spaces, circle]: readonly [number, number],
  drivers: readonly number[],
  driven: readonly number[],
  way: '+' | '−',
  catches: string,
): Case =>
  counted(
    from,
    `40 to 1, ${N} divisions: ${spaces} on ${circle}, ${drivers.join(' and ')} driving ${driven.join(' and ')}, plate ${way === '+' ? 'with' : 'against'} the crank`,
    (drivers.reduce((a, b) => a * b) / driven.reduce((a, b) => a * b)) * (way === '+' ? 1 : -1),
    'turns of the plate',
    () => toNumber(plateTurns(40, N, [spaces, circle])),
    catches,
  );

const RECALLED = recalled('table of differential indexing for gears 24 to 100');
const differential: readonly Case[] = [
  geared(TREATISE_57, 1440, [1, 33], [100, 64], [44, 40], '−', 'compound train taken upside down'),
  geared(book(`${TREATISE}, page 57 (scan page 63), sixths of a degree`), 2160, [1, 49], [100, 64], [28, 56], '−', 'large counts given up'),
  geared(
    book(`${TREATISE}, page 57 (scan page 63), head geared for 319`),
    319,
    [4, 29],
    [72, 64],
    [24, 48],
    '−',
    'compound train taken upside down',
  ),
  geared(
    book(`${TREATISE}, page 57 (scan page 63), head geared for 271`),
    271,
    [3, 21],
    [72],
    [56],
    '+',
    'direction of the plate turned round',
  ),
  geared(RECALLED, 51, [14, 17], [48], [24], '−', 'driver and driven exchanged'),
  geared(RECALLED, 53, [35, 49], [72, 40], [56, 24], '+', 'compound train'),
  geared(RECALLED, 57, [15, 21], [40], [56], '−', 'direction of the plate turned round'),
  geared(RECALLED, 61, [26, 39], [32], [48], '−', 'direction of the plate turned round'),
  geared(RECALLED, 63, [26, 39], [48], [24], '−', 'driver and driven exchanged'),
  geared(RECALLED, 67, [12, 21], [48], [28], '+', 'direction of the plate turned round'),
  geared(RECALLED, 69, [12, 20], [56], [40], '−', 'driver and driven exchanged'),
  geared(RECALLED, 71, [15, 27], [40], [72], '+', 'driver and driven exchanged'),
  geared(RECALLED, 77, [10, 20], [48], [32], '+', 'direction of the plate turned round'),
  geared(RECALLED, 79, [10, 20], [24], [48], '+', 'driver and driven exchanged'),
  geared(RECALLED, 81, [10, 20], [24], [48], '−', 'direction of the plate turned round'),
  geared(RECALLED, 83, [10, 20], [48], [32], '−', 'driver and driven exchanged'),
  geared(RECALLED, 89, [12, 27], [32], [72], '+', 'driver and driven exchanged'),
  geared(RECALLED, 99, [8, 20], [32, 28], [56, 40], '+', 'compound train'),
  geared(RECALLED, 101, [8, 20], [48, 24], [72, 40], '−', 'compound train'),
  geared(RECALLED, 113, [13, 39], [56], [24], '+', 'driver and driven exchanged'),
  geared(RECALLED, 117, [13, 39], [24], [24], '+', 'two gears of one count not allowed'),
  counted(
    TREATISE_57,
    '271: divisions that 280 turns of a seventh lose',
    9,
    'divisions',
    () => toNumber(countMade(40, [1, 7], [9, 7], 'locked')) - toNumber(countMade(40, [1, 7], [9, 7], 'right')),
    'plate gained where it loses',
  ),
  counted(
    book(`${TREATISE}, scan pages 58 and 60: every division from 1 to 382`),
    'three plates and the usual gears, counts 2 to 382 divided',
    381,
    'counts',
    () => servedTo(382),
    'a gear or a circle left out of the search',
  ),
  counted(
    FORUM_57,
    '22 on 33 without gears',
    60,
    'teeth',
    () => toNumber(countMade(40, [22, 33], [2, 1], 'locked')),
    'plate left locked not foreseen',
  ),
  counted(FORUM_57, '22 on 33 for 57: turns of the plate', 2, 'turns', () => toNumber(plateTurns(40, 57, [22, 33])), 'gears for 60 taken'),
  counted(
    book('home shop forum thread “Gear help needed”, 8 Dec 2020: three counts share 22 on 33'),
    '22 on 33, gears 2, wrong idler',
    63,
    'teeth',
    () => toNumber(countMade(40, [22, 33], [2, 1], 'wrong')),
    'the third count of the chart not found',
  ),
];

function servedTo(most: number): number {
  let served = 0;
  for (let N = 2; N <= most; N++)
    if (waysToDivide(N, { turns: 40, plates: THREE, direct: [], backPin: false, reached: null, gears: GEARS }).length > 0) served += 1;
  return served;
}

const tools = { turns: 40, plates: THREE, direct: [], backPin: false, reached: null, gears: STORY_GEARS };
const first = (): Extract<Way, { method: 'differential' }> => {
  const [way] = waysToDivide(71, tools);
  if (way?.method !== 'differential') throw new Error('71 has no differential way');
  return way;
};
const setting = (plateTurnsWanted: Ratio, drivers: number[], driven: number[]) => ({
  plateTurns: plateTurnsWanted,
  train: { drivers, driven },
});

const story: readonly Case[] = [
  counted(STORY, '71 set for 72: gear ratio', 5 / 9, 'turns of the plate', () => toNumber(gearRatio(40, 71, [72, 1])), 'A and N exchanged'),
  counted(STORY, '71 set for 70: gear ratio', -4 / 7, 'turns of the plate', () => toNumber(gearRatio(40, 71, [70, 1])), 'sign lost'),
  counted(
    STORY,
    '57 set for 60: gear ratio',
    2,
    'turns of the plate',
    () => toNumber(gearRatio(40, 57, [60, 1])),
    'divided by N instead of A',
  ),
  counted(STORY, '71, first way: spaces', 10, 'spaces on 18', () => first().move.spaces, 'crank set for 71'),
  counted(STORY, '71, first way: circle', 18, 'holes', () => first().move.circle, 'a circle of a plate not owned'),
  counted(STORY, '71, first way: gear on the spindle', 40, 'teeth', () => first().train.drivers[0] ?? 0, 'driver and driven exchanged'),
  counted(
    STORY,
    '71, first way: gear on the plate’s shaft',
    72,
    'teeth',
    () => first().train.driven[0] ?? 0,
    'driver and driven exchanged',
  ),
  counted(
    STORY,
    '71: turns against the plate',
    355 / 9,
    'turns',
    () => toNumber(proofOf(71, first()).crank),
    'proof without the plate called 40',
  ),
  counted(STORY, '71: turns of the plate', 5 / 9, 'turns', () => toNumber(proofOf(71, first()).plate), 'plate counted per division'),
  counted(STORY, '71: together', 40, 'turns', () => toNumber(proofOf(71, first()).together), 'plate taken away instead of added'),
  counted(
    STORY,
    '71 set for 72, idlers wrong',
    73,
    'teeth',
    () => toNumber(countMade(40, [10, 18], [5, 9], 'wrong')),
    'wrong idler not foreseen',
  ),
  counted(
    STORY,
    '71 set for 72, plate locked',
    72,
    'teeth',
    () => toNumber(countMade(40, [10, 18], [5, 9], 'locked')),
    'locked plate not foreseen',
  ),
  counted(
    STORY,
    '71 set for 70, idlers wrong',
    69,
    'teeth',
    () => toNumber(countMade(40, [12, 21], [-4, 7], 'wrong')),
    'sign of the plate lost',
  ),
  counted(STORY, '71 set for 70: right', 71, 'teeth', () => toNumber(countMade(40, [12, 21], [-4, 7], 'right')), 'sign of the plate lost'),
  counted(
    STORY,
    '71: simple settings with these gears',
    6,
    'settings',
    () => waysToDivide(71, tools).length,
    'settings for an odd count (73 1/3, 71 2/3) left out',
  ),
  counted(
    STORY,
    '57 by two pins on the three plates',
    8,
    'ways',
    () => compoundSettings([40, 57], THREE, null).length,
    'pins or directions not exchanged',
  ),
  counted(
    STORY,
    '57: 5 on 15 and 7 on 19 together',
    40 / 57,
    'turns',
    () => toNumber(compoundTurns({ front: 5, frontCircle: 15, back: 7, backCircle: 19 })),
    'fractions subtracted',
  ),
  counted(
    STORY,
    '57 with a pin that reaches only 20, 33, 49',
    0,
    'ways',
    () => compoundSettings([40, 57], THREE, [20, 33, 49]).length,
    'reach of the pin not asked',
  ),
  counted(
    STORY,
    '71: least circle that would do',
    71,
    'holes',
    () => whatWouldServe(40, 71, THREE, []).circles[0] ?? 0,
    'a circle that does not divide offered',
  ),
  counted(
    worked('every mesh turns the direction round'),
    'plate with, simple train, head that turns it with at one idler',
    1,
    'idlers',
    () => idlersFor(setting([5, 9], [40], [72]), 'with'),
    'idlers even for odd',
  ),
  counted(
    worked('every mesh turns the direction round, other head'),
    'plate with, simple train, head that turns it against at one idler',
    2,
    'idlers',
    () => idlersFor(setting([5, 9], [40], [72]), 'against'),
    'fact of the head not used',
  ),
  counted(
    recalled('differential table: compound with no idler turns as simple with one'),
    'plate with, compound train',
    0,
    'idlers',
    () => idlersFor(setting([15, 7], [72, 40], [56, 24]), 'with'),
    'compound counted as simple',
  ),
  counted(
    recalled('differential table: compound against the crank asks one idler'),
    'plate against, compound train',
    1,
    'idlers',
    () => idlersFor(setting([-2, 5], [48, 24], [72, 40]), 'with'),
    'compound counted as simple',
  ),
  counted(
    worked('40 × 100 ÷ (44 × 64) needs 100, 40, 44 and 64 once each'),
    'train of four for 40/11 from 44, 64, 40, 100',
    40 / 11,
    'turns',
    () => toNumber(ratioOfTrain(gearsOwned([44, 64, 40, 100]).compound([40, 11])[0] ?? { drivers: [1], driven: [1] })),
    'compound trains not found',
  ),
  counted(
    worked('a second 24 must lie there for 1 to 1'),
    'trains of two for 1 to 1 from one 24',
    0,
    'trains',
    () => gearsOwned([24, 40]).simple([1, 1]).length,
    'one gear used twice',
  ),
];

const pair = (
  from: From,
  turns: string,
  [x, a]: readonly [number, number],
  sign: '+' | '−',
  [y, b]: readonly [number, number],
  plates: readonly Plate[],
): readonly Case[] => [
  counted(
    from,
    `${turns} of a turn: ${x} on ${a} ${sign} ${y} on ${b}`,
    Number(turns),
    'turns',
    () => toNumber(compoundTurns({ front: x, frontCircle: a, back: sign === '+' ? y : -y, backCircle: b })),
    'sign of the second move',
    0.00005,
  ),
  counted(
    from,
    `${turns} of a turn: the best pair is not worse than the one printed, in turns`,
    0,
    'turns worse',
    () => {
      const found = nearestPair([Math.round(Number(turns) * 10_000), 10_000], plates, null);
      const printed = Math.abs(x / a + (sign === '+' ? 1 : -1) * (y / b) - Number(turns));
      return found ? Math.max(0, Math.abs(toNumber(found.error)) - printed) : 1;
    },
    'search of pairs cut short',
  ),
];

const THREE_COLUMN = HANDBOOK_27('three plates');
const TWO_COLUMN = HANDBOOK_27('two-sided plate');
const pairs: readonly Case[] = [
  ...pair(THREE_COLUMN, '0.1910', [17, 39], '−', [12, 49], THREE),
  ...pair(TWO_COLUMN, '0.1910', [21, 57], '−', [11, 62], TWO_SIDED),
  ...pair(THREE_COLUMN, '0.1920', [7, 41], '+', [1, 47], THREE),
  ...pair(TWO_COLUMN, '0.1920', [12, 57], '−', [1, 54], TWO_SIDED),
  ...pair(TWO_COLUMN, '0.1930', [19, 59], '−', [8, 62], TWO_SIDED),
  ...pair(THREE_COLUMN, '0.1950', [1, 23], '+', [5, 33], THREE),
  ...pair(THREE_COLUMN, '0.2020', [23, 41], '−', [14, 39], THREE),
  ...pair(TWO_COLUMN, '0.2010', [8, 49], '+', [2, 53], TWO_SIDED),
];

const RECALLED_PAIRS = recalled('table of compound indexing');
/** Whether the setting printed is among those found: the moves of the back pin that lib gives for these circles, against the one printed. */
const found = (from: From, N: number, [x, a]: readonly [number, number], [y, b]: readonly [number, number]): Case =>
  counted(
    from,
    `${N} divisions: crank on ${a}, back pin on ${b}: spaces of the crank for ${y} of the back pin`,
    x,
    `spaces on ${a}`,
    () => compoundMoves([40, N], a, b).find(({ back }) => back === y)?.front ?? -1,
    'a printed setting not found',
  );
const compounds: readonly Case[] = [
  found(RECALLED_PAIRS, 69, [21, 23], [-11, 33]),
  found(RECALLED_PAIRS, 77, [9, 21], [3, 33]),
  found(RECALLED_PAIRS, 91, [6, 39], [14, 49]),
  found(RECALLED_PAIRS, 99, [15, 27], [-5, 33]),
  counted(
    book('F. D. Jones, Milling Machines Part II, Machinery’s Reference Series 97 (1912): 1 on 19 and 1 on 20 the same way'),
    '1 on 19 and 1 on 20 with it',
    39 / 380,
    'turns',
    () => toNumber(compoundTurns({ front: 1, frontCircle: 19, back: 1, backCircle: 20 })),
    'moves subtracted',
  ),
  counted(
    book('F. D. Jones, Milling Machines Part II, Machinery’s Reference Series 97 (1912): the same against'),
    '1 on 19, 1 on 20 against it',
    1 / 380,
    'turns',
    () => toNumber(compoundTurns({ front: 1, frontCircle: 19, back: -1, backCircle: 20 })),
    'moves added',
  ),
  counted(
    book('club article on compound indexing (schsm.org): 127 on the three plates has no exact pair'),
    '127 by two pins',
    0,
    'ways',
    () => compoundSettings([40, 127], THREE, null).length,
    'near pair offered for an exact one',
  ),
  counted(
    book('club article on compound indexing (schsm.org): circles of two plates cannot be mixed'),
    '1/15 and 1/49 on three plates: pairs of 15 with 49',
    0,
    'ways',
    () => compoundSettings([64, 735], THREE, null).length,
    'circles of two plates mixed',
  ),
  counted(
    book('machining forum question, 106 teeth (industryarena.com, thread 81580): Machinery’s Handbook, 1 turn + 7 on 39 + 29 on 41'),
    '106 divisions, five at a move: turns printed',
    200 / 106,
    'turns',
    () => 1 + toNumber(compoundTurns({ front: 7, frontCircle: 39, back: 29, backCircle: 41 })),
    'a near setting taken for an exact one',
    0.00002,
  ),
  counted(
    worked('39 and 41 hold neither 53 nor 2 × 53: the setting printed for 106 is near, not exact, and is not given as exact'),
    '106 by two pins, exact',
    0,
    'ways',
    () => compoundSettings([40, 106], THREE, null).length,
    'a near setting reproduced as exact',
  ),
];

/** Angle in minutes of arc, as holes gone past on a circle: −1 when it is not exact there. */
const exactHoles = (minutes: number, R: number, circle: number): number => {
  const { move, error } = nearestOn(circle, turnsForAngle(R, (minutes * 60_000) as Parameters<typeof turnsForAngle>[1]));
  return error[0] === 0 ? move.turns * circle + move.spaces : -1;
};
const angle = (from: From, degrees: string, minutes: number, holes: number, circle: number, catches: string): Case =>
  counted(
    from,
    `${degrees} at 40 to 1 on ${circle}`,
    holes,
    `holes of the ${circle} circle`,
    () => exactHoles(minutes, 40, circle),
    catches,
  );

const HANDBOOK_1916 = (row: string): From => book(`Machinery's Handbook, 1916 edition, angular indexing, ${row}`);
const COLLEGE = (row: string): From => book(`Fox Valley Technical College, machine shop 4, angular indexing, ${row}`);
const angles: readonly Case[] = [
  angle(HANDBOOK_1916('35 degrees'), '35°', 2100, 3 * 18 + 16, 18, 'whole turns left out'),
  angle(HANDBOOK_1916('11 1/2 degrees'), '11½°', 690, 18 + 5, 18, 'half degree lost'),
  angle(HANDBOOK_1916('20 minutes'), '20′', 20, 1, 27, 'minutes taken as hundredths'),
  angle(HANDBOOK_1916('1 degree on 27'), '1°', 60, 3, 27, 'head taken as 60 to 1'),
  angle(worked('3 degrees 40 minutes beyond 45 are 11 times 20 minutes'), '48°40′', 2920, 5 * 27 + 11, 27, 'minutes taken as hundredths'),
  angle(COLLEGE('45 degrees'), '45°', 2700, 5 * 54, 54, 'remainder where there is none'),
  angle(COLLEGE('19 degrees'), '19°', 1140, 2 * 54 + 6, 54, 'ninth of a turn not carried up'),
  angle(COLLEGE('8 degrees 50 minutes'), '8°50′', 530, 53, 54, 'minutes taken as hundredths'),
  angle(
    book('Dividing head practice, class sheet, angular rows (scribd.com/document/628433770)'),
    '15°',
    900,
    27 + 18,
    27,
    'angle taken for a count',
  ),
  angle(
    book('Dividing head practice, class sheet, angular rows, second circle (scribd.com/document/628433770)'),
    '15°',
    900,
    36 + 24,
    36,
    'angle taken for a count',
  ),
  angle(
    book('US Army ordnance course text od16448 on milling, page 33, 54 minutes'),
    '54′',
    54,
    2,
    20,
    'tenth of a turn taken as a hundredth',
  ),
  angle(book(`${TREATISE}, scan page 60, two thirds of a degree`), '40′', 40, 2, 27, 'thirds of a degree'),
  angle(book(`${TREATISE}, scan page 60, half a degree`), '30′', 30, 1, 18, 'half degree lost'),
  counted(
    book('US Army ordnance course text od16448 on milling, page 33, 24 minutes'),
    '24′ on 23: spaces',
    1,
    'spaces',
    () => nearestOn(23, turnsForAngle(40, 1_440_000 as Parameters<typeof turnsForAngle>[1])).move.spaces,
    'no near value where the book gives one',
  ),
  counted(
    worked('one space of 23 is 540 ÷ 23 = 23.478 minutes; the book calls the error only very small'),
    '24′ on 23: too far by',
    -0.5217391304,
    'minutes',
    () => toNumber(nearestOn(23, turnsForAngle(40, 1_440_000 as Parameters<typeof turnsForAngle>[1])).error) * 540,
    'error not said',
    1e-6,
  ),
  counted(
    book('student notes on angular indexing (4mechtech, 2013): one turn is 32,400 seconds'),
    '32,400″ at 40 to 1',
    1,
    'turns',
    () => toNumber(turnsForAngle(40, 32_400_000 as Parameters<typeof turnsForAngle>[1])),
    'seconds lost',
  ),
  counted(
    book('South Bend rotary table manual, p. 13: one turn of the handwheel is 4 degrees'),
    '4° at 90 to 1',
    1,
    'turns',
    () => toNumber(turnsForAngle(90, 14_400_000 as Parameters<typeof turnsForAngle>[1])),
    'head taken as 40 to 1',
  ),
  counted(
    book('dividing attachment manual UT 400, p. 6: 1 degree'),
    '1° at 40 to 1',
    1 / 9,
    'turns',
    () => toNumber(turnsForAngle(40, 3_600_000 as Parameters<typeof turnsForAngle>[1])),
    'turned over',
  ),
  counted(
    book('US Navy Machinery Repairman course, wide range divider, one small turn 5 min 24 s'),
    '5′24″ at 4000 to 1',
    1,
    'turns',
    () => toNumber(turnsForAngle(4000, 324_000 as Parameters<typeof turnsForAngle>[1])),
    'two-step head taken as one',
  ),
  counted(
    book('US Navy Machinery Repairman course, page 7-17: one hole of 100 is 3.24 seconds'),
    '3.24″ at 4000 to 1 on 100',
    1,
    'holes',
    () => nearestOn(100, turnsForAngle(4000, 3240 as Parameters<typeof turnsForAngle>[1])).move.spaces,
    'hundredths of a second lost',
  ),
];

export const cases: readonly Case[] = [...differential, ...story, ...pairs, ...compounds, ...angles];
