import { measuredRoot } from '../../../lib/blanks/measured-root.sums.ts';
import { ringAndHub } from '../../../lib/blanks/ring-and-hub.sums.ts';
import { secondChoice } from '../../../lib/blanks/second-choice.sums.ts';
import { testSpare } from '../../../lib/blanks/spare-test.sums.ts';
import type { SpareWheel } from '../../../lib/blanks/spare-wheel.ts';
import { cutterAnswer } from '../../../lib/cutters/cutters.sums.ts';
import { angularIndexing } from '../../../lib/dividing/angular.sums.ts';
import { blockIndexing } from '../../../lib/dividing/block.sums.ts';
import { scaleGraduating } from '../../../lib/dividing/graduating.sums.ts';
import { holeCircles } from '../../../lib/dividing/hole-circles.sums.ts';
import { plainIndexing } from '../../../lib/dividing/plain.sums.ts';
import { rackIndexing } from '../../../lib/dividing/rack.sums.ts';
import { tableDialDividing } from '../../../lib/dividing/table-dial.sums.ts';
import { dividingWays } from '../../../lib/dividing/ways.sums.ts';
import type { Answer } from '../../../lib/figure/figure.ts';
import { shrinkFit } from '../../../lib/fits/shrink.sums.ts';
import { backlashAnswer } from '../../../lib/gears/backlash.sums.ts';
import { chordalAnswer } from '../../../lib/gears/chordal.sums.ts';
import { depthToDial } from '../../../lib/gears/depth.sums.ts';
import { stillToFeed } from '../../../lib/gears/feed.sums.ts';
import type { Bore, Gear } from '../../../lib/gears/gear.ts';
import { spanAnswer } from '../../../lib/gears/span.sums.ts';
import { gearBlank } from '../../../lib/gears/spur.sums.ts';
import { identifyAnswer } from '../../../lib/identify/identify.sums.ts';
import { offerSpeed } from '../../../lib/speeds/speed.sums.ts';
import { timeOfGear, timeOfPass } from '../../../lib/speeds/times.sums.ts';
import { findSpline } from '../../../lib/splines/find.sums.ts';
import { splinedHub } from '../../../lib/splines/hub.sums.ts';
import { involuteSpline } from '../../../lib/splines/involute-spline.sums.ts';
import { millSplines } from '../../../lib/splines/mill.sums.ts';
import { straightSpline } from '../../../lib/splines/straight.sums.ts';
import { chosenInch } from '../../../lib/splines/straight-choice.ts';
import type { Cutter, Dial, Plate } from '../../../lib/tooling/tooling.ts';
import { ratiosAnswer } from '../../../lib/trains/trains.sums.ts';
import { centralMove, centralProof } from '../../../lib/turning/centering.sums.ts';
import { dialMove } from '../../../lib/turning/dial.sums.ts';
import { nextDialMove } from '../../../lib/turning/next-move.sums.ts';
import { turningPlan } from '../../../lib/turning/passes.sums.ts';
import { runOutEffects } from '../../../lib/turning/run-out.sums.ts';
import { trialNick } from '../../../lib/turning/trial-nick.ts';
import { fourJawTruing } from '../../../lib/turning/truing.sums.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { readingFahrenheit } from '../../../lib/values/temperature.ts';
import { DIRECT_CROSSING } from './direct-crossing.ts';
import { DIRECT_CUTTERS } from './direct-cutters.ts';
import { DIRECT_PARALLEL } from './direct-parallel.ts';
import { DIRECT_TRAINS } from './direct-trains.ts';

const SYSTEM = { name: '14½° full involute', angle: degrees(14.5), addendum: 1, dedendum: 1.157, extra: inches(0) };
const SPLINES: Bore = { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) };
const READ = { splines: 6, outside: inches(1.251), inside: inches(1.063), width: inches(0.313) };
const SOLID = { known: true, recesses: [], openings: [] } as const;

const wheel = (teeth: number, P = 8, more: Partial<Gear> = {}): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: [P, 1] },
  system: SYSTEM,
  helix: null,
  face: null,
  bore: null,
  body: { known: false },
  ...more,
});
const spare = (gear: Gear, more: Partial<SpareWheel> = {}): SpareWheel => ({
  id: 1,
  name: `${gear.teeth}T`,
  gear,
  reading: null,
  runOut: null,
  trust: 'unknown',
  condition: { teeth: 'not looked at', bore: 'not looked at' },
  material: 'steel',
  hardness: 'file bites',
  caseDepth: null,
  ...more,
});
const onSplines = (teeth: number, P = 8): Gear => wheel(teeth, P, { bore: SPLINES, face: inches(0.875) });
const solid = (teeth: number, P = 8): Gear => ({ ...onSplines(teeth, P), body: SOLID });

const plate = (id: number, circles: readonly number[]): Plate => ({ kind: 'plate', id, name: `Plate ${id}`, here: true, sides: [circles] });
export const PLATES = [plate(1, [15, 16, 17, 18, 19, 20]), plate(2, [21, 23, 27, 29, 31, 33]), plate(3, [37, 39, 41, 43, 47, 49])];
const DIAL: Dial = { reads: 'travel', unit: 'in', division: inches(0.001), perTurn: 100 };
const cutter = (id: number, name: string, P: number, angle: number, number: string, from: number, to: number): Cutter => ({
  kind: 'cutter',
  id,
  name,
  here: true,
  sharp: true,
  pitch: { kind: 'DP', size: [P, 1] },
  angle: degrees(angle),
  number,
  teethFrom: from,
  teethTo: to,
  hole: null,
  diameter: null,
  width: null,
  stampedDepth: null,
  steel: 'unknown',
  exactFor: null,
});

/** The worked example of each sum, asked of lib directly with sizes typed here once more. What the server puts together itself is tested apart. */
export const DIRECT: Readonly<Record<string, () => Answer>> = {
  'unknown-gear': () =>
    identifyAnswer(
      [
        {
          teeth: 22,
          readings: [
            { of: 'outside', by: 'jaws', size: inches(2.998) },
            { of: 'span', over: 2, size: inches(0.5835) },
            { of: 'span', over: 3, size: inches(0.9638) },
          ],
        },
      ],
      'in',
    ),
  'missing-wheels': () =>
    ratiosAnswer({
      belongs: [19, 22, 25, 28, 31, 34, 37, 41, 46, 52],
      drawer: [19, 19, 25, 25, 31, 31, 34, 34, 37, 41, 46, 46, 52],
      plannedRecuts: [
        { make: 22, from: 31 },
        { make: 28, from: 34 },
      ],
      canBeCutToday: [{ teeth: 28, because: 'it can be cut today' }],
    }),
  'gear-blank': () => gearBlank(wheel(22)),
  span: () => spanAnswer(wheel(22)),
  'chordal-thickness': () => chordalAnswer(wheel(22), { measuredOutside: inches(2.996) }),
  backlash: () => backlashAnswer(wheel(22), inches(0.004)),
  'depth-to-dial': () => depthToDial({ gear: wheel(22), measuredOutside: inches(2.996), paper: inches(0.002), made: 'form cutter' }),
  'still-to-feed': () => stillToFeed({ gear: wheel(22), k: 2, spanRead: inches(0.59), spanWanted: inches(0.585), made: 'form cutter' }),
  'spare-test': () => testSpare({ wanted: onSplines(22), spare: spare(solid(31)) }).answer,
  'measured-root': () =>
    measuredRoot(
      spare(wheel(31), { reading: { by: 'wall', wall: inches(1.167), bore: inches(1.25) }, material: 'unknown', hardness: 'not tried' }),
    ),
  'second-choice': () => secondChoice({ wanted: onSplines(28), spare: spare(solid(32)), mate: 40, lastOfItsSpline: false }),
  'ring-and-hub': () => ringAndHub({ wanted: onSplines(60, 12), spare: spare(solid(48, 12)), ring: 'steel' }).answer,
  'cutter-choice': () =>
    cutterAnswer({
      gear: wheel(35),
      cutters: [
        cutter(1, '8 DP 14.5 No.2 55-134', 8, 14.5, '2', 55, 134),
        cutter(2, '8 DP 14.5 No.4 26-34', 8, 14.5, '4', 26, 34),
        cutter(3, '8 DP 20 No.3 35-54', 8, 20, '3', 35, 54),
        cutter(4, '10 DP 14.5 No.3 35-54', 10, 14.5, '3', 35, 54),
      ],
      arbors: [],
      convention: 'low end',
    }),
  'plain-indexing': () => plainIndexing({ divisions: 22, head: { turns: 40, name: '40 to 1' }, plates: PLATES }),
  'dividing-ways': () =>
    dividingWays({
      divisions: 71,
      tools: {
        ...{ turns: 40, plates: PLATES, direct: [], backPin: false, reached: null },
        gears: [28, 32, 40, 44, 48, 56, 64, 72, 86, 100],
      },
      ...{ oneIdler: null, only: null, nearest: false },
    }),
  'angular-indexing': () => angularIndexing({ angle: degrees(48 + 40 / 60), turns: 40, plates: PLATES, backPin: false, reached: null }),
  'block-indexing': () => blockIndexing({ divisions: 25, turns: 40, plates: PLATES, passed: 4 }),
  'table-dial': () => tableDialDividing({ divisions: 17, dial: { turns: 90, perTurn: 240, vernier: 12 }, lash: 3 }),
  'rack-indexing': () => rackIndexing({ pitch: Math.PI / 8, unit: 'in', lead: inches(0.2), perTurn: 200, teeth: 21 }),
  'scale-graduating': () =>
    scaleGraduating({
      ...{ distance: inches(1 / 64), lead: inches(0.25), turns: 40, driver: 40, driven: 40, lines: 65 },
      ...{ plates: PLATES, unit: 'in' },
    }),
  'hole-circles': () =>
    holeCircles({
      circles: [
        { holes: 21, diameter: inches(2.25) },
        { holes: 23, diameter: inches(2.5) },
        { holes: 27, diameter: inches(2.75) },
        { holes: 29, diameter: inches(3) },
      ],
      ...{ hole: inches(0.125), start: degrees(90), middle: [inches(0), inches(0)], unit: 'in' },
    }),
  'turning-plan': () => turningPlan({ oldOutside: inches(4.125), oldRoot: inches(3.5858), newOutside: inches(3), dial: DIAL }),
  'next-dial-move': () => nextDialMove({ measured: inches(3.031), wanted: inches(3), cuts: 2, low: inches(2.9975), dial: DIAL }),
  'dial-move': () => dialMove({ move: inches(1.095), counted: 'diameter', dial: DIAL, from: 'typed' }),
  'four-jaw-truing': () => fourJawTruing({ jaws: [inches(0.04), inches(0.012), inches(0), inches(0.004)] }),
  'run-out': () => runOutEffects({ runOut: inches(0.002), angle: degrees(14.5) }),
  'cutter-central': () => centralMove({ blankDiameter: inches(3), cutterWidth: inches(0.4375), paper: inches(0.002), dial: DIAL }),
  'cutter-central-proof': () => centralProof({ shift: inches(0.006), pitchRadius: inches(1.375), dial: DIAL }),
  'trial-nick': () => trialNick(22),
  'spindle-speed': () =>
    offerSpeed({
      diameter: inches(4.125),
      material: 'steel',
      steel: 'high-speed',
      cut: 'interrupted turning',
      machine: { name: 'The machine', speedsRpm: [25, 38, 58, 90, 140, 215, 330, 500] },
      chuck: { name: 'the chuck', diameter: inches(8), topSpeedRpm: null },
    }),
  'time-of-a-pass': () => timeOfPass({ length: inches(1), feedPerTurn: inches(0.006), speedRpm: 38, passes: 9 }),
  'time-of-a-gear': () =>
    timeOfGear({
      teeth: 22,
      face: inches(0.875),
      cutterDiameter: inches(2.75),
      depth: inches(0.2696),
      feedPerMinute: inches(0.75),
      roughRounds: 2,
    }),
  'shrink-fit': () =>
    shrinkFit({
      hub: inches(3.75),
      hubMeasured: true,
      ringOutside: inches(4.8072),
      hubBore: inches(1.25),
      ring: 'steel',
      hubMaterial: 'steel',
      unit: 'in',
      shop: readingFahrenheit(70),
    }).answer,
  'find-a-spline': () => findSpline({ part: 'bore', ...READ, sides: 'parallel' }, 'in'),
  'straight-spline': () => straightSpline(chosenInch(6, 'slides without load', inches(1.25))),
  'mill-splined-shaft': () =>
    millSplines({
      bore: READ,
      locates: 'outside and sides',
      clearances: { outside: inches(0.001), sides: inches(0.0005), bottom: inches(0.005) },
      cutterWidth: inches(0.1875),
      head: { turns: 40, name: '40 to 1' },
      plates: PLATES,
      circle: 33,
      unit: 'in',
    }),
  'splined-hub': () =>
    splinedHub({
      bore: { splines: 6, outside: inches(1.25), inside: inches(1.0625), width: inches(0.3125) },
      head: { turns: 40, name: '40 to 1' },
      plates: PLATES,
      unit: 'in',
    }),
  'involute-spline': () => involuteSpline({ named: { standard: 'ANSI', root: 'flat', teeth: 20, P: 16 } }),
  ...DIRECT_CROSSING,
  ...DIRECT_CUTTERS,
  ...DIRECT_TRAINS,
  ...DIRECT_PARALLEL,
};
