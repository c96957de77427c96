import { startPitch, threadsToMatch } from '../../lib/leads/thread-dial.formulas.ts';
import { numberOf } from '../../lib/trains/target.ts';
import { inchesOf, trainFor } from '../../lib/trains/wanted.ts';
import { toNumber } from '../../lib/values/ratio.ts';
import type { Case } from './case.ts';
import { by, casesOf, millionthsIfFound, mmIfFound, screwOf, tpiIfFound, wantedOf } from './train-checks.ts';

const JONES = casesOf(
  'trains: lathe',
  'F. D. Jones, Turning and Boring (1914), Project Gutenberg 34030, thread cutting',
)([
  {
    given: 'screw 6 TPI, 9 TPI: 24 on the stud, 36 on the screw',
    expected: 9,
    tolerance: 1e-6,
    actual: () => tpiIfFound('9 TPI', '6 TPI', [24], [36]),
    catches: 'driver and driven the wrong way round',
  },
  {
    given: 'screw 6 TPI, 10 TPI, wheels by fours from 24 to 100: 24 and 40',
    expected: 10,
    tolerance: 1e-6,
    actual: () => tpiIfFound('10 TPI', '6 TPI', [24], [40], by(4, 24, 100)),
    catches: 'the printed pair not among all that are exact',
  },
  {
    given: 'index plate, 7 TPI on constant 4: 48 and 84',
    expected: 7,
    tolerance: 1e-6,
    actual: () => tpiIfFound('7 TPI', '4 TPI', [48], [84]),
    catches: 'the constant taken as the screw’s own',
  },
  {
    given: 'constant 6, 24 TPI, wheels by fives: 40 30 over 80 60',
    expected: 24,
    tolerance: 1e-6,
    actual: () => tpiIfFound('24 TPI', '6 TPI', [40, 30], [80, 60], by(5, 30, 100)),
    catches: 'a compound train that shares its products missed',
  },
  {
    given: 'constant 8, 2 2/3 TPI, wheels by fours: 72 96 over 36 64',
    expected: 2.6666667,
    tolerance: 5e-7,
    actual: () => tpiIfFound('2 2/3 TPI', '8 TPI', [72, 96], [36, 64], by(4, 24, 100)),
    catches: 'a fraction of a thread read as whole',
  },
  {
    given: 'constant 8, 1 3/4 TPI, wheels by fours: 72 64 over 36 28',
    expected: 1.75,
    tolerance: 0.006,
    actual: () => tpiIfFound('1 3/4 TPI', '8 TPI', [72, 64], [36, 28], by(4, 24, 100)),
    catches: 'a coarse thread’s ratio turned over',
  },
  {
    given: '3 mm on constant 6: 90 and 127',
    expected: 3,
    tolerance: 1e-6,
    actual: () => mmIfFound('3 mm', '6 TPI', [90], [127]),
    catches: '25.4 rounded to 25',
  },
  {
    given: 'quick-change lathe, 19 TPI: 20 and 95',
    expected: 19,
    tolerance: 1e-6,
    actual: () => tpiIfFound('19 TPI', '4 TPI', [20], [95]),
    catches: 'a prime count lost',
  },
  {
    given: 'lead of 3/8 in as threads to the inch',
    expected: 2.6666667,
    tolerance: 5e-7,
    actual: () => 1 / inchesOf(wantedOf('3/8 in')),
    catches: 'the lead taken for the threads',
  },
  {
    given: 'double thread of lead 1/2 in is geared as',
    expected: 2,
    tolerance: 1e-6,
    actual: () => 1 / inchesOf(wantedOf('4 TPI x 2')),
    catches: 'geared for the pitch and not the lead',
  },
  {
    given: 'double thread, 1 1/4 single: lead',
    expected: 0.8,
    tolerance: 0.06,
    actual: () => inchesOf(wantedOf('2 1/2 TPI x 2')),
    catches: 'starts divided instead of multiplied',
  },
  {
    given: 'the same: shift from start to start',
    expected: 0.4,
    tolerance: 0.06,
    actual: () => toNumber(startPitch([4, 5], 2)),
    catches: 'the lead shifted and not the pitch',
  },
  {
    given: 'the same: 2 in re-engages any screw of whole threads: 8 TPI, leads until the half-nuts meet 0.8 in again, inches',
    expected: 4,
    tolerance: 1e-6,
    actual: () => threadsToMatch([1, 8], [4, 5]) / 8,
    catches: 'half-nuts closed at any inch',
  },
]);

const ROSE = casesOf(
  'trains: lathe',
  'J. Rose, Modern Machine-Shop Practice, web page 330',
)([
  {
    given: 'screw 6 TPI, 18 TPI: 12 over 36',
    expected: 18,
    tolerance: 1e-6,
    actual: () => tpiIfFound('18 TPI', '6 TPI', [12], [36]),
    catches: 'multiples of screw and thread mixed',
    table: 'ROSE',
  },
  {
    given: 'screw 6 TPI, 17 TPI: 12 over 34',
    expected: 17,
    tolerance: 1e-6,
    actual: () => tpiIfFound('17 TPI', '6 TPI', [12], [34]),
    catches: 'multiples of screw and thread mixed',
    table: 'ROSE',
  },
  {
    given: 'screw 6 TPI, 16 TPI: 12 over 32',
    expected: 16,
    tolerance: 1e-6,
    actual: () => tpiIfFound('16 TPI', '6 TPI', [12], [32]),
    catches: 'multiples of screw and thread mixed',
    table: 'ROSE',
  },
  {
    given: 'screw 6 TPI, 15 TPI: 12 over 30',
    expected: 15,
    tolerance: 1e-6,
    actual: () => tpiIfFound('15 TPI', '6 TPI', [12], [30]),
    catches: 'multiples of screw and thread mixed',
    table: 'ROSE',
  },
  {
    given: 'screw 6 TPI, 14 TPI: 12 over 28',
    expected: 14,
    tolerance: 1e-6,
    actual: () => tpiIfFound('14 TPI', '6 TPI', [12], [28]),
    catches: 'multiples of screw and thread mixed',
    table: 'ROSE',
  },
]);

const ROSE3 = casesOf(
  'trains: lathe',
  'J. Rose, Modern Machine-Shop Practice, web page 330 (screw of 3)',
)([
  {
    given: 'screw 3 TPI, 18 TPI: 15 over 90',
    expected: 18,
    tolerance: 1e-6,
    actual: () => tpiIfFound('18 TPI', '3 TPI', [15], [90]),
    catches: 'the pair’s multiplier forgotten',
    table: 'ROSE3',
  },
  {
    given: 'screw 3 TPI, 17 TPI: 15 over 85',
    expected: 17,
    tolerance: 1e-6,
    actual: () => tpiIfFound('17 TPI', '3 TPI', [15], [85]),
    catches: 'the pair’s multiplier forgotten',
    table: 'ROSE3',
  },
  {
    given: 'screw 3 TPI, 16 TPI: 15 over 80',
    expected: 16,
    tolerance: 1e-6,
    actual: () => tpiIfFound('16 TPI', '3 TPI', [15], [80]),
    catches: 'the pair’s multiplier forgotten',
    table: 'ROSE3',
  },
  {
    given: 'screw 3 TPI, 15 TPI: 15 over 75',
    expected: 15,
    tolerance: 1e-6,
    actual: () => tpiIfFound('15 TPI', '3 TPI', [15], [75]),
    catches: 'the pair’s multiplier forgotten',
    table: 'ROSE3',
  },
  {
    given: 'MISPRINT: the row prints 6 over 32 for 18 TPI on a screw of 3; the train cuts',
    expected: 16,
    tolerance: 1e-6,
    actual: () => tpiIfFound('16 TPI', '3 TPI', [6], [32]),
    catches: 'a misprinted wheel taken over: 6 ÷ 36 is meant',
    table: 'ROSE3',
  },
  {
    given: 'the same: 6 over 36 as it should stand',
    expected: 18,
    tolerance: 1e-6,
    actual: () => tpiIfFound('18 TPI', '3 TPI', [6], [36]),
    catches: 'the misprint',
    table: 'ROSE3',
  },
]);

const ROSE5 = casesOf(
  'trains: lathe',
  'J. Rose, Modern Machine-Shop Practice, web page 330 (screw of 5)',
)([
  {
    given: 'screw 5 TPI, 18 TPI: 20 over 72',
    expected: 18,
    tolerance: 1e-6,
    actual: () => tpiIfFound('18 TPI', '5 TPI', [20], [72]),
    catches: 'the screw’s threads swapped with the work’s',
    table: 'ROSE5',
  },
  {
    given: 'screw 5 TPI, 17 TPI: 20 over 68',
    expected: 17,
    tolerance: 1e-6,
    actual: () => tpiIfFound('17 TPI', '5 TPI', [20], [68]),
    catches: 'the screw’s threads swapped with the work’s',
    table: 'ROSE5',
  },
  {
    given: 'screw 5 TPI, 16 TPI: 20 over 64',
    expected: 16,
    tolerance: 1e-6,
    actual: () => tpiIfFound('16 TPI', '5 TPI', [20], [64]),
    catches: 'the screw’s threads swapped with the work’s',
    table: 'ROSE5',
  },
]);

const ROSE632 = casesOf(
  'trains: lathe',
  'J. Rose, Modern Machine-Shop Practice, web page 632',
)([
  {
    given: '36/48 × 66/18 on a 4 TPI screw',
    expected: 11,
    tolerance: 1e-6,
    actual: () => tpiIfFound('11 TPI', '4 TPI', [48, 18], [36, 66]),
    catches: 'drivers and driven named from the screw taken as from the spindle',
  },
]);

const TURNING = casesOf(
  'trains: lathe',
  'Turning, Cutting, Spinning: screw-cutting by self-acting lathe, part 2',
)([
  {
    given: 'screw 4 TPI, 25 TPI: 40/50 × 20/100',
    expected: 25,
    tolerance: 1e-6,
    actual: () => tpiIfFound('25 TPI', '4 TPI', [40, 20], [50, 100]),
    catches: 'compound pairs multiplied crosswise',
  },
  {
    given: 'screw 2 TPI, 22 TPI: 20/55 × 25/100',
    expected: 22,
    tolerance: 1e-6,
    actual: () => tpiIfFound('22 TPI', '2 TPI', [20, 25], [55, 100]),
    catches: 'compound pairs multiplied crosswise',
  },
  {
    given: 'screw 4 TPI, 19 TPI: 40/95 × 50/100',
    expected: 19,
    tolerance: 1e-6,
    actual: () => tpiIfFound('19 TPI', '4 TPI', [40, 50], [95, 100]),
    catches: 'a prime count lost',
  },
]);

const AMERICAN = casesOf(
  'trains: lathe',
  'American Mechanic: proportion of wheels for screw-cutting by a lathe',
)([
  {
    given: 'screw of 1/2 in pitch, 5 threads: 40 and 100',
    expected: 5,
    tolerance: 1e-6,
    actual: () => tpiIfFound('5 TPI', '1/2 in', [40], [100]),
    catches: 'the rule’s ratio applied to the spindle wheel’s own side',
  },
  {
    given: 'the ratio of screw wheel to spindle wheel',
    expected: 2.5,
    tolerance: 0.06,
    actual: () => 1 / numberOf(trainFor(wantedOf('5 TPI'), screwOf('2 TPI'))),
    catches: 'the ratio turned over',
  },
]);

const TOOLS = casesOf(
  'trains: lathe',
  'Construction Tools: selection of simple gear wheels, and of screwing wheels',
)([
  {
    given: 'screw 2 TPI, 4 TPI: 20 and 40',
    expected: 4,
    tolerance: 1e-6,
    actual: () => tpiIfFound('4 TPI', '2 TPI', [20], [40]),
    catches: 'driver and driven swapped',
  },
  {
    given: 'screw 2, 1 1/2 TPI: 20 and 15',
    expected: 1.5,
    tolerance: 0.06,
    actual: () => tpiIfFound('1 1/2 TPI', '2 TPI', [20], [15]),
    catches: 'a thread coarser than the screw refused',
  },
  {
    given: 'the same when too small: 40 and 30',
    expected: 1.5,
    tolerance: 0.06,
    actual: () => tpiIfFound('1 1/2 TPI', '2 TPI', [40], [30]),
    catches: 'a multiple of the pair not found',
  },
  {
    given: 'screw 1.8, 2.3 TPI, 20 on the mandrel: teeth on the screw',
    expected: 25.5555,
    tolerance: 6e-5,
    actual: () => 20 / numberOf(trainFor(wantedOf('2.3 TPI'), screwOf('1.8 TPI'))),
    catches: 'decimals of a thread cut off',
  },
  {
    given: 'screw 1 TPI, 7 TPI: 20 and 140',
    expected: 7,
    tolerance: 1e-6,
    actual: () => tpiIfFound('7 TPI', '1 TPI', [20], [140]),
    catches: 'a large wheel refused',
  },
]);

const CHART16 = casesOf(
  'trains: lathe',
  'Bench lathe manual, inch thread chart (CL300M, p. 21)',
)([
  {
    given: '16 TPI screw, 12 TPI: A 40, D 30',
    expected: 12,
    tolerance: 1e-6,
    actual: () => tpiIfFound('12 TPI', '16 TPI', [40], [30]),
    catches: 'the idler counted in the ratio',
    table: 'CHART16',
  },
  {
    given: '13 TPI: A 40 B 65, C 60 D 30',
    expected: 13,
    tolerance: 1e-6,
    actual: () => tpiIfFound('13 TPI', '16 TPI', [40, 60], [65, 30]),
    catches: 'B and C of one stud taken as a pair',
    table: 'CHART16',
  },
  {
    given: '19 TPI: A 40 B 50, C 60 D 57',
    expected: 19,
    tolerance: 1e-6,
    actual: () => tpiIfFound('19 TPI', '16 TPI', [40, 60], [50, 57]),
    catches: 'the 57 lost',
    table: 'CHART16',
  },
  {
    given: '38 TPI: A 20 B 50, C 60 D 57',
    expected: 38,
    tolerance: 1e-6,
    actual: () => tpiIfFound('38 TPI', '16 TPI', [20, 60], [50, 57]),
    catches: 'a fine thread out of reach',
    table: 'CHART16',
  },
  {
    given: '52 TPI: A 20, D 65',
    expected: 52,
    tolerance: 1e-6,
    actual: () => tpiIfFound('52 TPI', '16 TPI', [20], [65]),
    catches: 'the greatest reduction missed',
    table: 'CHART16',
  },
]);

const CHARTMM = casesOf(
  'trains: lathe',
  'Lathe manual G0765, p. 72, metric chart (1.5 mm screw)',
)([
  {
    given: '0.4 mm: A 20 B 50, C 40 D 60',
    expected: 0.4,
    tolerance: 0.06,
    actual: () => mmIfFound('0.4 mm', '1.5 mm', [20, 40], [50, 60]),
    catches: 'the chart read with the inch screw',
    table: 'CHARTMM',
  },
  {
    given: '0.7 mm: A 40 B 50, C 35 D 60',
    expected: 0.7,
    tolerance: 0.06,
    actual: () => mmIfFound('0.7 mm', '1.5 mm', [40, 35], [50, 60]),
    catches: 'the chart read with the inch screw',
    table: 'CHARTMM',
  },
  {
    given: '1.25 mm: A 50, D 60',
    expected: 1.25,
    tolerance: 0.006,
    actual: () => mmIfFound('1.25 mm', '1.5 mm', [50], [60]),
    catches: 'millimetres taken through inches with a loss',
    table: 'CHARTMM',
  },
  {
    given: '1.75 mm: A 35, D 30',
    expected: 1.75,
    tolerance: 0.006,
    actual: () => mmIfFound('1.75 mm', '1.5 mm', [35], [30]),
    catches: 'a pitch coarser than the screw refused',
    table: 'CHARTMM',
  },
  {
    given: '2 mm: A 40, D 30',
    expected: 2,
    tolerance: 1e-6,
    actual: () => mmIfFound('2 mm', '1.5 mm', [40], [30]),
    catches: 'a pitch coarser than the screw refused',
    table: 'CHARTMM',
  },
]);

const T8063 = casesOf(
  'trains: lathe',
  'Forum thread on cutting metric threads on an imperial lathe, 16 May 2019, trains with an 80/63 pair',
)([
  {
    given: '8 TPI screw, 0.7 mm: 28, 80/63, 70/35, 50',
    expected: 0.70009,
    tolerance: 6e-6,
    actual: () => mmIfFound('0.7 mm', '8 TPI', [28, 63, 35], [80, 70, 50]),
    catches: 'the pair’s error of 125 in a million left out',
    table: 'T8063',
  },
  {
    given: '8 TPI screw, 0.75 mm: 30, 80/63, 70/35, 50',
    expected: 0.75009,
    tolerance: 6e-6,
    actual: () => mmIfFound('0.75 mm', '8 TPI', [30, 63, 35], [80, 70, 50]),
    catches: 'the pair’s error of 125 in a million left out',
    table: 'T8063',
  },
  {
    given: '8 TPI screw, 0.8 mm: 32, 80/63, 70/35, 50',
    expected: 0.8001,
    tolerance: 6e-6,
    actual: () => mmIfFound('0.8 mm', '8 TPI', [32, 63, 35], [80, 70, 50]),
    catches: 'the pair’s error of 125 in a million left out',
    table: 'T8063',
  },
  {
    given: '8 TPI screw, 1.25 mm: 30, 80/63, 60',
    expected: 1.25016,
    tolerance: 6e-6,
    actual: () => mmIfFound('1.25 mm', '8 TPI', [30, 63], [80, 60]),
    catches: 'the pair’s error of 125 in a million left out',
    table: 'T8063',
  },
  {
    given: '8 TPI screw, 1.75 mm: 35, 80/63, 50',
    expected: 1.75022,
    tolerance: 6e-6,
    actual: () => mmIfFound('1.75 mm', '8 TPI', [35, 63], [80, 50]),
    catches: 'the pair’s error of 125 in a million left out',
    table: 'T8063',
  },
]);

const REDUCE = casesOf(
  'trains: lathe',
  'Forum thread on cutting metric threads on an imperial lathe, 16 May 2019, overall reductions',
)([
  {
    given: '8 TPI screw, reduction for 0.7 mm',
    expected: 4.5357,
    tolerance: 6e-5,
    actual: () => 1 / numberOf(trainFor(wantedOf('0.7 mm'), screwOf('8 TPI'))),
    catches: 'the inch rounded',
    table: 'REDUCE',
  },
  {
    given: '8 TPI screw, reduction for 0.75 mm',
    expected: 4.2333,
    tolerance: 6e-5,
    actual: () => 1 / numberOf(trainFor(wantedOf('0.75 mm'), screwOf('8 TPI'))),
    catches: 'the inch rounded',
    table: 'REDUCE',
  },
  {
    given: '8 TPI screw, reduction for 1.25 mm',
    expected: 2.54,
    tolerance: 0.006,
    actual: () => 1 / numberOf(trainFor(wantedOf('1.25 mm'), screwOf('8 TPI'))),
    catches: 'the inch rounded',
    table: 'REDUCE',
  },
  {
    given: '8 TPI screw, reduction for 1.75 mm',
    expected: 1.8143,
    tolerance: 6e-5,
    actual: () => 1 / numberOf(trainFor(wantedOf('1.75 mm'), screwOf('8 TPI'))),
    catches: 'the inch rounded',
    table: 'REDUCE',
  },
  {
    given: '8 TPI screw, reduction for 3.0 mm',
    expected: 1.0583,
    tolerance: 6e-5,
    actual: () => 1 / numberOf(trainFor(wantedOf('3.0 mm'), screwOf('8 TPI'))),
    catches: 'the inch rounded',
    table: 'REDUCE',
  },
]);

const P127 = casesOf(
  'trains: lathe',
  'Forum post on the ratio 1.27 for metric threads',
)([
  {
    given: '1.27 by 47:37, per cent',
    expected: 0.021281,
    tolerance: 5e-7,
    actual: () => millionthsIfFound('1.27 in', '1 in', [47], [37]) / 10000,
    catches: 'sign of the error',
  },
  {
    given: '1.27 by 80:63, per cent',
    expected: -0.012498,
    tolerance: 5e-7,
    actual: () => millionthsIfFound('1.27 in', '1 in', [80], [63]) / 10000,
    catches: 'sign of the error',
  },
  {
    given: '1.27 by 22:31 × 34:19, per cent',
    expected: -0.004011,
    tolerance: 5e-7,
    actual: () => millionthsIfFound('1.27 in', '1 in', [22, 34], [31, 19]) / 10000,
    catches: 'two pairs multiplied wrongly',
  },
  {
    given: '1.27 by 30:23 × 37:38, per cent',
    expected: 0.001802,
    tolerance: 5e-7,
    actual: () => millionthsIfFound('1.27 in', '1 in', [30, 37], [23, 38]) / 10000,
    catches: 'two pairs multiplied wrongly',
  },
]);

const HOFF = casesOf(
  'trains: lathe',
  'Article on metric threading, 8 TPI screw with a 127:100 pair',
)([
  {
    given: '8 TPI in millimetres',
    expected: 3.175,
    tolerance: 0.0006,
    actual: () => 25.4 * toNumber(screwOf('8 TPI')),
    catches: '25.4 rounded',
  },
  {
    given: '8 TPI screw behind 100 ÷ 127, mm',
    expected: 2.5,
    tolerance: 0.06,
    actual: () => mmIfFound('2.5 mm', '8 TPI', [100], [127]),
    catches: 'the transposing pair turned over',
  },
]);

const PAUL = casesOf(
  'trains: lathe',
  'Workshop notes, transposing pairs',
)([
  {
    given: '3 mm screw to act as 8 TPI',
    expected: 1.0583333,
    tolerance: 5e-7,
    actual: () => numberOf(trainFor(wantedOf('8 TPI'), screwOf('3 mm'))),
    catches: 'the inch on the wrong side',
  },
  {
    given: '36/34 for 127/120, per cent out',
    expected: 0.0463,
    tolerance: 6e-5,
    actual: () => millionthsIfFound('8 TPI', '3 mm', [36], [34]) / 10000,
    catches: 'error against the cut instead of the wanted',
  },
  {
    given: '73/69 for 127/120, per cent out (cut less wanted)',
    expected: -0.0343,
    tolerance: 0.0004,
    actual: () => millionthsIfFound('8 TPI', '3 mm', [73], [69]) / 10000,
    catches: 'sign of the error',
  },
  {
    given: '2 mm screw to act as 8 TPI',
    expected: 1.5875,
    tolerance: 6e-5,
    actual: () => numberOf(trainFor(wantedOf('8 TPI'), screwOf('2 mm'))),
    catches: 'the inch on the wrong side',
  },
  {
    given: '27/17 for 127/80, per cent out',
    expected: 0.0466,
    tolerance: 0.0004,
    actual: () => millionthsIfFound('8 TPI', '2 mm', [27], [17]) / 10000,
    catches: 'error against the cut instead of the wanted',
  },
  {
    given: 'MISPRINT: 73/46 for 127/80 is printed as 0.08189 per cent; it is',
    expected: -0.03423,
    tolerance: 6e-6,
    actual: () => millionthsIfFound('8 TPI', '2 mm', [73], [46]) / 10000,
    catches: 'the printed decimal 1.5862, a slip for 1.58696',
  },
]);

const KNAELL = casesOf(
  'trains: lathe',
  'Note on a substitute lead screw',
)([
  {
    given: '1/20 in pitch in mm',
    expected: 1.27,
    tolerance: 0.006,
    actual: () => 25.4 * inchesOf(wantedOf('20 TPI')),
    catches: '25.4 rounded',
  },
  {
    given: '14/11 mm',
    expected: 1.2727273,
    tolerance: 5e-7,
    actual: () => 25.4 * inchesOf(wantedOf('14/11 mm')),
    catches: 'a fraction read as two numbers',
  },
]);

const SOLDER = casesOf(
  'trains: lathe',
  'Shop blog on a 21-tooth gear, 12 May 2020 (errors printed as wanted less cut, here cut less wanted)',
)([
  {
    given: '16 TPI, 1 mm: 21-30-45-50',
    expected: 125,
    tolerance: 0.6,
    actual: () => millionthsIfFound('1 mm', '16 TPI', [21, 45], [30, 50]),
    catches: 'the sign convention of the source taken over',
  },
  {
    given: '16 TPI, 1 mm: 21-50-60-40',
    expected: 125,
    tolerance: 0.6,
    actual: () => millionthsIfFound('1 mm', '16 TPI', [21, 60], [50, 40]),
    catches: 'the order of the four numbers',
  },
  {
    given: '16 TPI, 1 mm: 45-55-50-65',
    expected: -875,
    tolerance: 1,
    actual: () => millionthsIfFound('1 mm', '16 TPI', [45, 50], [55, 65]),
    catches: 'the sign convention of the source taken over',
  },
]);

const BOX = casesOf(
  'trains: lathe',
  'Lathe manual PM-1440GT, p. 14: threads by changing the lower gear',
)([
  {
    given: '65 for 60 at 3 TPI',
    expected: 3.25,
    tolerance: 0.006,
    actual: () => tpiIfFound('3.25 TPI', '3 TPI', [60], [65]),
    catches: 'the driven wheel taken as driver',
  },
  {
    given: '57 for 60 at 5 TPI',
    expected: 4.75,
    tolerance: 0.006,
    actual: () => tpiIfFound('4.75 TPI', '5 TPI', [60], [57]),
    catches: 'the driven wheel taken as driver',
  },
  {
    given: '69 for 60 at 5 TPI',
    expected: 5.75,
    tolerance: 0.006,
    actual: () => tpiIfFound('5.75 TPI', '5 TPI', [60], [69]),
    catches: 'the driven wheel taken as driver',
  },
]);

const BEVAN = casesOf(
  'trains: lathe',
  'T. Bevan, The Theory of Machines, ch. 11 ex. 1, p. 369',
)([
  {
    given: '4 TPI screw, set in fives to 120, 26 TPI: 25 × 30 / 65 × 75',
    expected: 26,
    tolerance: 1e-6,
    actual: () => tpiIfFound('26 TPI', '4 TPI', [25, 30], [65, 75], by(5, 20, 120)),
    catches: 'the printed train not among all exact ones',
  },
  {
    given: '35 TPI: 30 × 40 / 100 × 105',
    expected: 35,
    tolerance: 1e-6,
    actual: () => tpiIfFound('35 TPI', '4 TPI', [30, 40], [100, 105], by(5, 20, 120)),
    catches: 'the printed train not among all exact ones',
  },
]);

const C1 = casesOf(
  'trains: lathe',
  'Forum post on a 3 mm screw behind 4.5:1',
)([
  {
    given: '0.1 mm by 21/56 × 40/100 on 2/3 mm',
    expected: 0.1,
    tolerance: 0.06,
    actual: () => mmIfFound('0.1 mm', '2/3 mm', [21, 40], [56, 100]),
    catches: 'the reduction before the train left out',
  },
  {
    given: '16 TPI by 40/21 × 80/64: mm',
    expected: 1.5873,
    tolerance: 6e-5,
    actual: () => mmIfFound('16 TPI', '2/3 mm', [40, 80], [21, 64]),
    catches: 'a conversion without a 127 held for exact',
  },
  {
    given: '2 mm by 42 × 80 / 56 × 20',
    expected: 2,
    tolerance: 1e-6,
    actual: () => mmIfFound('2 mm', '2/3 mm', [42, 80], [56, 20]),
    catches: 'the pairs multiplied crosswise',
  },
  {
    given: '1.5 mm by 45/20',
    expected: 1.5,
    tolerance: 0.06,
    actual: () => mmIfFound('1.5 mm', '2/3 mm', [45], [20]),
    catches: 'the ratio turned over',
  },
  {
    given: '5 mm on a 4 mm screw: 100 and 80',
    expected: 5,
    tolerance: 1e-6,
    actual: () => mmIfFound('5 mm', '4 mm', [100], [80]),
    catches: 'the ratio turned over',
  },
  {
    given: 'MISPRINT: 1.25 mm on a 6 mm screw is answered with 96 over 20, which cuts mm',
    expected: 28.8,
    tolerance: 0.06,
    actual: () => mmIfFound('28.8 mm', '6 mm', [96], [20]),
    catches: 'the printed train taken over: 25 over 120 cuts 1.25',
  },
  {
    given: 'the same as it should be: 25 over 120',
    expected: 1.25,
    tolerance: 0.006,
    actual: () => mmIfFound('1.25 mm', '6 mm', [25], [120]),
    catches: 'the misprint',
  },
]);

export const cases: readonly Case[] = [
  ...JONES,
  ...ROSE,
  ...ROSE3,
  ...ROSE5,
  ...ROSE632,
  ...TURNING,
  ...AMERICAN,
  ...TOOLS,
  ...CHART16,
  ...CHARTMM,
  ...T8063,
  ...REDUCE,
  ...P127,
  ...HOFF,
  ...PAUL,
  ...KNAELL,
  ...SOLDER,
  ...BOX,
  ...BEVAN,
  ...C1,
];
