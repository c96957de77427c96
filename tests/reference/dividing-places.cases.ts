import { blockTurns, spaceCut } from '../../lib/dividing/block.formulas.ts';
import { chordBetween, holePlaces } from '../../lib/dividing/hole-circle.formulas.ts';
import { graduatingTurns, movePerCrankTurn, placeByMoves, placeFromZero, screwTurns } from '../../lib/dividing/linear.formulas.ts';
import { nearestHole, worstError, worstTooth } from '../../lib/dividing/nearest.formulas.ts';
import { circlesThatServe, moveOn, turnsPerDivision } from '../../lib/dividing/plain.formulas.ts';
import { dialSetting, leastReading, turnsAt } from '../../lib/dividing/table-dial.formulas.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import type { Case } from './case.ts';
import { caseOf, type From } from './cases-of.ts';

const book = (source: string, table?: string): From => ({ kind: 'published', source, ...(table ? { table } : {}) });
const practice: From = { kind: 'common practice', source: 'common practice, no source' };
const worked = (route: string): From => ({ kind: 'derived', source: `derived: ${route}` });
const counted = caseOf('dividing');

const TABLE_10_SECONDS = { turns: 90, perTurn: 240, vernier: 6 };
const MANUAL_G = book('Grizzly G9298 rotary table manual, p. 14: 16° 42′ 20″ is four turns and 42′ 20″');
const MANUAL_S = book('South Bend SB1363 rotary table manual, p. 12: 16° 32′ 20″ is four turns and 32′ 20″');
/** Degrees of a 90 to 1 table as turns of its handwheel. */
const handwheel = (seconds: number) => dialSetting([seconds, 14_400], TABLE_10_SECONDS);
const tables: readonly Case[] = [
  counted(MANUAL_G, '16°42′20″: whole turns', 4, 'turns', () => handwheel(60_140).move.turns, 'minutes counted as turns'),
  counted(
    MANUAL_G,
    '16°42′20″: minutes on the dial',
    42 + 1 / 3,
    'lines of a minute',
    () => handwheel(60_140).move.divisions,
    'seconds of the vernier lost',
  ),
  counted(
    MANUAL_S,
    '16°32′20″: minutes on the dial',
    32 + 1 / 3,
    'lines of a minute',
    () => handwheel(59_540).move.divisions,
    'seconds of the vernier lost',
  ),
  counted(
    MANUAL_S,
    'least reading of minute lines and a vernier of 6',
    10,
    'seconds',
    () => leastReading(TABLE_10_SECONDS) * 3600,
    'vernier not divided',
  ),
  counted(
    book('blog on an old rotary table (hatenablog, 6 Nov 2004): 90 to 1, lines of 5 minutes, vernier of 5: 1/60 degree'),
    'lines of 5 minutes and a vernier of 5',
    1 / 60,
    'degrees',
    () => leastReading({ turns: 90, perTurn: 48, vernier: 5 }),
    'vernier not divided',
  ),
  counted(
    book('home machinist forum, bolt circles on a 90 to 1 table (chaski.org, thread 108121): 90 degrees are 22.5 turns'),
    '4 holes at 90 to 1: turns from hole to hole',
    22.5,
    'turns',
    () => toNumber(turnsAt(2, 90, 4)),
    'turns for a degree',
  ),
  counted(
    worked('22 turns are 88 degrees at 4 degrees each; the forum thread 108121 prints 4 turns for 88 degrees'),
    'printed wrongly: 90 degrees at 90 to 1, whole turns',
    22,
    'turns',
    () => dialSetting(turnsAt(2, 90, 4), { perTurn: 4, vernier: 1 }).move.turns,
    'a misprint reproduced (4 turns)',
  ),
  counted(
    worked('90/17 = 5 turns and 70.588 lines; 847.06 twelfths of a line, nearest 847'),
    '17 at 90 to 1, 240 lines, vernier 12: line',
    847 / 12,
    'lines',
    () => dialSetting([90, 17], { perTurn: 240, vernier: 12 }).move.divisions,
    'rounded to whole lines',
  ),
  counted(
    worked('8 × 90/17 carried from zero, not 8 rounded moves: 42 turns and 1016.47 twelfths, nearest 1016'),
    '17 at 90 to 1, tooth 9: line',
    1016 / 12,
    'lines',
    () => dialSetting(turnsAt(9, 90, 17), { perTurn: 240, vernier: 12 }).move.divisions,
    'rounded moves added up',
  ),
];

const GRADUATING = book(
  'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, graduating, page 183 (scan page 189)',
);
const NM_IN = 25_400_000;
const linear: readonly Case[] = [
  counted(
    GRADUATING,
    'screw of 1/4 in, 1 to 1, 40 to 1: one turn of the crank',
    0.00625,
    'in',
    () => toNumber(movePerCrankTurn(40, [NM_IN / 4, 1], [1, 1])) / NM_IN,
    'whole lead taken',
  ),
  counted(
    book(
      'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, graduating, page 183 (scan page 189), lines 0.0218 in apart',
    ),
    '0.0218 in on that screw',
    0.0218 / 0.00625,
    'turns',
    () => toNumber(graduatingTurns(40, [553_720, 1], [NM_IN / 4, 1], [1, 1])),
    'turned over',
  ),
  counted(
    worked('1/64 ÷ 0.00625'),
    '1/64 in on that screw',
    2.5,
    'turns',
    () => toNumber(graduatingTurns(40, [NM_IN / 64, 1], [NM_IN / 4, 1], [1, 1])),
    'turned over',
  ),
  counted(
    worked('1 mm on a screw of 1/4 in: 40 ÷ 6.35 = 800/127'),
    '1 mm on that screw',
    800 / 127,
    'turns',
    () => toNumber(graduatingTurns(40, [1_000_000, 1], [NM_IN / 4, 1], [1, 1])),
    'the 127 lost',
  ),
  counted(
    worked('gears 2 to 1 halve the turns'),
    '1/64 in, screw twice as fast',
    1.25,
    'turns',
    () => toNumber(graduatingTurns(40, [NM_IN / 64, 1], [NM_IN / 4, 1], [2, 1])),
    'ratio turned over',
  ),
  counted(practice, 'rack of 8 DP on a screw of 0.2 in', 1.963495, 'turns', () => screwTurns(Math.PI / 8, 0.2), 'pitch taken as 1/8', 1e-6),
  counted(
    worked('393 thousandths for 392.699: 0.000301 each, times 20'),
    '8 DP by whole thousandths, tooth 21',
    0.0060184,
    'in too far',
    () => placeByMoves(21, Math.PI / 8, 0.001).error,
    'error not added up',
    1e-6,
  ),
  counted(
    worked('20 × 0.3926991 = 7.853982; nearest thousandth 7.854'),
    '8 DP from zero, tooth 21',
    7854,
    'thousandths',
    () => placeFromZero(21, Math.PI / 8, 0.001).divisions,
    'rounded moves added up',
  ),
  counted(
    worked('7.854 − 7.853982'),
    '8 DP from zero, tooth 21: error',
    0.0000184,
    'in',
    () => placeFromZero(21, Math.PI / 8, 0.001).error,
    'error taken the wrong way',
    1e-6,
  ),
  counted(
    worked('module 2: 6.283185 mm on a screw of 5 mm'),
    'module 2 on a screw of 5 mm',
    1.256637,
    'turns',
    () => screwTurns(2 * Math.PI, 5),
    'diameter taken for pitch',
    1e-6,
  ),
];

const at = (n: number, D: number, a: number, hole: number, axis: 'x' | 'y'): number => holePlaces(n, D, a)[hole - 1]?.[axis] ?? Number.NaN;
const SHOP_NOTES = (row: string): From => book(`Machine shop tutorials, bolt circles (jonilsson.github.io), ${row}`);
const holes: readonly Case[] = [
  counted(
    SHOP_NOTES('six holes: 0.86603 of the radius'),
    '6 on 2, hole 2 up',
    0.86603,
    'in',
    () => at(6, 2, 0, 2, 'y'),
    'sine and cosine exchanged',
    5e-6,
  ),
  counted(
    SHOP_NOTES('six holes: half the radius'),
    '6 on 2, hole 2 across',
    0.5,
    'in',
    () => at(6, 2, 0, 2, 'x'),
    'sine and cosine exchanged',
  ),
  counted(
    book('forum thread “Bolt Hole Circle”, 20 July 2008: 12 holes on 8 in, first 15 degrees off'),
    '12 on 8 at 15°: across',
    4 * 0.9659258,
    'in',
    () => at(12, 8, 15, 1, 'x'),
    'diameter taken for radius',
    1e-6,
  ),
  counted(
    book('forum thread “Bolt Hole Circle”, 20 July 2008: 4 × sin 15°'),
    '12 on 8 at 15°: up',
    4 * 0.258819,
    'in',
    () => at(12, 8, 15, 1, 'y'),
    'diameter taken for radius',
    1e-6,
  ),
  counted(
    book('forum thread “Bolt Hole Circle”, 20 July 2008: second hole at 45°'),
    '12 on 8 at 15°, hole 2 across',
    4 * Math.SQRT1_2,
    'in',
    () => at(12, 8, 15, 2, 'x'),
    'turned by half a space',
  ),
  counted(
    book('Bolt hole circles, after Machinery’s Handbook, 23rd ed., p. 950 (metalwebnews.com): hole 1 at the top'),
    '3 on 4, hole 1 at the top: up',
    2,
    'in',
    () => at(3, 4, 90, 1, 'y'),
    'begun at the right',
  ),
  counted(
    worked('sides of an equilateral triangle: half of √3'),
    '3 on 4, hole 2 across',
    -1.7320508,
    'in',
    () => at(3, 4, 90, 2, 'x'),
    'the way round turned',
    1e-6,
  ),
  counted(worked('sides of an equilateral triangle'), '3 on 4, hole 2 up', -1, 'in', () => at(3, 4, 90, 2, 'y'), 'the way round turned'),
  counted(
    book('milling notes, five holes by x = R cos((P − 1) × 360 ÷ N) (homews.co.uk, page 401)'),
    '5 on 2, hole 2 across',
    0.309017,
    'in',
    () => at(5, 2, 0, 2, 'x'),
    'hole counted from 0',
    1e-6,
  ),
  counted(
    book('milling notes, five holes by y = R sin((P − 1) × 360 ÷ N) (homews.co.uk, page 401)'),
    '5 on 2, hole 3 up',
    0.5877853,
    'in',
    () => at(5, 2, 0, 3, 'y'),
    'hole counted from 0',
    1e-6,
  ),
  counted(
    worked('a hexagon’s side is its radius (Euclid, Elements IV.15)'),
    '6 on 4: from hole to hole',
    2,
    'in',
    () => chordBetween(6, 4),
    'arc taken for chord',
  ),
  counted(
    worked('a square’s side is its diagonal over √2'),
    '4 on 4: from hole to hole',
    2.8284271,
    'in',
    () => chordBetween(4, 4),
    'arc taken for chord',
    1e-6,
  ),
  counted(
    worked('side of a pentagon on 1: √((5 − √5) ÷ 8)'),
    '5 on 1: from hole to hole',
    0.5877853,
    'in',
    () => chordBetween(5, 1),
    'arc taken for chord',
    1e-6,
  ),
];

const sheet = (R: number, N: number, circles: readonly number[], usable: number): Case =>
  counted(
    book(
      'Dividing head practice, class sheet: circles offered for a count (scribd.com/document/628433770)',
      'class sheet, circles offered',
    ),
    `${R} to 1, ${N} divisions, circles ${circles.join(', ')}: how many serve`,
    usable,
    'circles',
    () => circlesThatServe(R, N, [{ id: 1, name: 'sheet', here: true, kind: 'plate', sides: [circles] } satisfies Plate]).length,
    'a circle offered that does not serve',
  );
const rest: readonly Case[] = [
  sheet(40, 26, [44, 45, 47, 49, 52], 1),
  sheet(40, 112, [12, 14, 16, 18, 20], 1),
  sheet(60, 92, [21, 22, 23, 24, 25], 1),
  sheet(72, 78, [21, 23, 25, 26, 27], 1),
  sheet(90, 50, [30, 33, 36, 38, 40], 2),
  sheet(72, 25, [33, 35, 36, 37, 39], 0),
  counted(worked('4 × 40/25 = 6 2/5'), '25 by fours at 40 to 1', 6.4, 'turns', () => toNumber(blockTurns(40, 25, 4)), 'turned over'),
  counted(
    worked('7 moves of 4 are 28: three past the first'),
    '25 by fours, eighth cut',
    4,
    'space',
    () => spaceCut(8, 25, 4),
    'counted from 0',
  ),
  counted(
    worked('24 moves of 4 are 96 = 3 × 25 + 21'),
    '25 by fours, last cut',
    22,
    'space',
    () => spaceCut(25, 25, 4),
    'round closed too early',
  ),
  counted(
    worked('40 × 49 ÷ 71 = 27.606'),
    '71 on 49, tooth 2: nearest hole',
    28,
    'hole',
    () => nearestHole(2, 40, 71, 49),
    'hole below taken',
  ),
  counted(
    worked('40 × 49 × 2 ÷ 71 = 55.211'),
    '71 on 49, tooth 3: nearest hole',
    55,
    'hole',
    () => nearestHole(3, 40, 71, 49),
    'rounded moves added up (56)',
  ),
  counted(
    worked('71 parts of a hole: the worst is 35/71 of a hole, ÷ 49'),
    '71 on 49: worst error',
    35 / 3479,
    'turns',
    () => toNumber(worstError(40, 71, 49)),
    'worst taken as half a hole',
  ),
  counted(
    worked('(n − 1) × 43 mod 71 written out for each tooth: 35 or 36 comes first at 19 × 43 = 817 = 11 × 71 + 36'),
    '71 on 49: first tooth at the worst',
    20,
    'tooth',
    () => worstTooth(40, 71, 49),
    'worst tooth counted from 0',
  ),
  counted(
    book('Fox Valley Technical College, machine shop 4, angular indexing: a direct plate of 24 is 15 degrees a hole'),
    'direct, 24 holes, 24 divisions',
    1,
    'holes',
    () => moveOn(24, turnsPerDivision(1, 24))?.spaces ?? -1,
    'direct plate geared 40 to 1',
  ),
  counted(
    practice,
    'direct, 24 holes, 6 divisions',
    4,
    'holes',
    () => moveOn(24, turnsPerDivision(1, 6))?.spaces ?? -1,
    'direct plate geared 40 to 1',
  ),
  counted(
    practice,
    'direct, 24 holes, 5 divisions',
    -1,
    'holes',
    () => moveOn(24, turnsPerDivision(1, 5))?.spaces ?? -1,
    'near hole offered',
  ),
  counted(
    worked(
      '360 ÷ 66 = 5.4545 degrees, less than one turn of 6 at 60 to 1; the 1998 chart of a workshop book, page 202, prints 9 turns (model-engineer.co.uk, post 30913)',
    ),
    'printed wrongly: a circle of 66 at 60 to 1, whole turns from hole to hole',
    0,
    'turns',
    () => Math.floor(toNumber(turnsPerDivision(60, 66))),
    'a misprint reproduced (9 turns)',
  ),
];

export const cases: readonly Case[] = [...tables, ...linear, ...holes, ...rest];
