import type { Figure } from '../../lib/figure/figure.ts';
import type { Dial } from '../../lib/tooling/tooling.ts';
import { centralTravel } from '../../lib/turning/centering.formulas.ts';
import { centralProof } from '../../lib/turning/centering.sums.ts';
import { asDialCounts } from '../../lib/turning/dial.formulas.ts';
import { dialMove } from '../../lib/turning/dial.sums.ts';
import { turningPlan } from '../../lib/turning/passes.sums.ts';
import { runOutEffects } from '../../lib/turning/run-out.sums.ts';
import { jawMove, keyTurns } from '../../lib/turning/truing.formulas.ts';
import { chuckRunOut, fourJawTruing, TRUE_ENOUGH_IN } from '../../lib/turning/truing.sums.ts';
import { degrees, toDegrees } from '../../lib/values/angle.ts';
import { inches, toInches } from '../../lib/values/length.ts';
import type { Case } from './case.ts';

const TRAVEL: Dial = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 };
const DIAMETER: Dial = { reads: 'diameter', unit: 'in', division: inches(0.001), perTurn: 200 };
const COMMON = 'common practice, no source';

const inch = ({ value }: Figure): number => ('length' in value ? toInches(value.length) : Number.NaN);
const number = ({ value }: Figure): number => ('number' in value ? value.number : 'count' in value ? value.count : Number.NaN);

const plan22 = () => turningPlan({ oldOutside: inches(4.125), oldRoot: inches(3.58575), newOutside: inches(3), dial: DIAMETER }).figures;
const plan28 = () => turningPlan({ oldOutside: inches(4.5), oldRoot: inches(3.96075), newOutside: inches(3.75), dial: TRAVEL }).figures;
const story = 'derived: half of the difference of (N + 2)/8 for 31 and 22, and for 34 and 28 teeth; root by 2 × 1.157/8';

const one = (
  kind: Case['kind'],
  source: string,
  given: string,
  expected: number,
  tolerance: number,
  unit: string,
  actual: () => number,
  catches: string,
): Case => ({
  topic: 'turning',
  kind,
  source,
  given,
  expected,
  tolerance,
  unit,
  actual,
  catches,
});

export const cases: readonly Case[] = [
  one(
    'published',
    'Thomas Industrial Library, "Centering work in four-jaw chucks": move by half the reading',
    'readings 0 and 0.040',
    0.02,
    1e-12,
    'in',
    () => jawMove(0, 0.04),
    'the whole difference moved',
  ),
  one(
    'published',
    'the-vms.com, "Four jaw chuck 3": 0.010 of move on a 20-thread jaw screw is a bit under a quarter turn',
    '0.010 on a lead of 0.050',
    0.2,
    1e-9,
    'turns',
    () => keyTurns(0.01, 0.05),
    'threads an inch for the lead',
  ),
  one(
    'published',
    'johnfsworkshop.org, "Lathe – making very fine cuts": twice the movement comes off the diameter',
    '0.02 mm of travel',
    0.04,
    1e-12,
    'mm',
    () => asDialCounts(0.02, 'travel', 'diameter'),
    'the factor of two upside down',
  ),
  one(
    'published',
    'US Army TC 9-524, ch. 8, "Alignment of milling cutters": radius plus half the width',
    'shaft 1.000, cutter 0.250',
    0.625,
    1e-12,
    'in',
    () => centralTravel(1, 0.25, 0),
    'radius or width whole',
  ),
  one(
    'common practice',
    COMMON,
    'indicator difference of 0.040 in',
    0.02,
    1e-9,
    'in',
    () => inch(fourJawTruing({ jaws: [inches(0.02), inches(0), inches(-0.02), inches(0)] }).figures.moveOne),
    'sign lost between readings',
  ),
  one('common practice', COMMON, 'a four-jaw can be trued to', 0.001, 0, 'in', () => TRUE_ENOUGH_IN, 'a tenth for a thousandth'),
  one(
    'common practice',
    COMMON,
    'a three-jaw measured at about 0.002 is taken as measured',
    0.002,
    1e-9,
    'in',
    () => inch(chuckRunOut({ jaws: 3, runOut: inches(0.002) })),
    'the guess used over a measurement',
  ),
  one('derived', story, '22 teeth from 31: off a side', 0.5625, 1e-6, 'in', () => inch(plan22().turnOffPerSide), 'diameter for side'),
  one(
    'derived',
    story,
    '22 from 31: over the gaps',
    0.2696,
    0.00005,
    'in',
    () => inch(plan22().throughTeeth),
    'new root used in place of the old',
  ),
  one('derived', story, '22 from 31: solid', 0.2929, 0.00005, 'in', () => inch(plan22().solid), 'solid reckoned from the outside'),
  one(
    'derived',
    story,
    '22 from 31: each last cut',
    0.015,
    1e-9,
    'in',
    () => inch(plan22().lastCuts),
    'the 0.030 halved twice or not at all',
  ),
  one('derived', story, '22 from 31: rough to', 3.03, 1e-9, 'in', () => inch(plan22().roughTo), '0.015 a side taken as on the diameter'),
  one('derived', story, '28 from 34: off a side', 0.375, 1e-6, 'in', () => inch(plan28().turnOffPerSide), 'diameter for side'),
  one(
    'derived',
    story,
    '28 from 34: over the gaps',
    0.2696,
    0.00005,
    'in',
    () => inch(plan28().throughTeeth),
    'a depth that grows with the teeth',
  ),
  one(
    'derived',
    'derived: 0.030 off the diameter is 15 divisions of 0.001 in of travel',
    '0.030 off, dial of travel',
    15,
    1e-9,
    'divisions',
    () => number(dialMove({ move: inches(0.03), counted: 'diameter', dial: TRAVEL }).figures.divisions),
    'twice the cut wanted',
  ),
  one(
    'derived',
    'derived: 0.030 off the diameter is 30 divisions of a dial that reads it',
    '0.030 off, dial of diameter',
    30,
    1e-9,
    'divisions',
    () => number(dialMove({ move: inches(0.03), counted: 'diameter', dial: DIAMETER }).figures.divisions),
    'halved on a dial that has halved already',
  ),
  one(
    'derived',
    'derived: half of 0.006 over 1.375, in degrees by hand',
    'gash shifts 0.006 at R 1.375',
    0.125,
    0.0005,
    '°',
    () => {
      const v = centralProof({ shift: inches(0.006), pitchRadius: inches(1.375) }).figures.lean.value;
      return 'angle' in v ? toDegrees(v.angle) : Number.NaN;
    },
    'the whole shift taken for the error',
  ),
  one(
    'derived',
    'derived: 2 × 0.002 × tan 14.5°, tangent 0.25862 from a printed table',
    'lash swing of 0.002 at 14.5°',
    0.001034,
    1e-6,
    'in',
    () => inch(runOutEffects({ runOut: inches(0.002), angle: degrees(14.5) }).figures.lashSwing),
    'eccentricity and reading mixed',
  ),
];
