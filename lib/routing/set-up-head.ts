import type { Candidate } from '../cutters/choice.ts';
import { holeWords } from '../cutters/describe.ts';
import type { Caution, Figure, From } from '../figure/figure.ts';
import { printFigure } from '../figure/print-value.ts';
import { pitchDiameter, toothOf } from '../gears/tooth.ts';
import { CENTRAL_ENOUGH_IN, centralMove, centralProof } from '../turning/centering.sums.ts';
import { CUTTER_RIM_RUN_OUT_IN, MANDREL_RUN_OUT_IN } from '../turning/limits.data.ts';
import { trialNick, trialNickSteps } from '../turning/trial-nick.ts';
import { inches, type Length, ofUnit, twice } from '../values/length.ts';
import { CAUTIONS } from './cautions.data.ts';
import type { Job } from './job.ts';
import { materialCautions } from './material-words.ts';
import { millSpeed } from './mill-speeds.ts';
import { MINUTES } from './minutes.data.ts';
import { needWords } from './needs.ts';
import type { Need, PlannedOperation } from './operation.ts';
import { lengthMeasured, standing, withFrom } from './readings.ts';
import { atMost, measure, notKnown, operation } from './written.ts';

/** What stands on the mill before any cutter: mandrel and head. */
const onTheMill = ({ mandrel, dividing }: Job): readonly Need[] => [...mandrel, ...dividing.needs.filter(({ kind }) => kind === 'head')];

/** Everything that cutting asks for, in the order in which it is waited for. */
export const cuttingNeeds = (job: Job): readonly Need[] => [...job.mandrel, ...job.dividing.needs, job.cutter.need, ...arborNeed(job)];

function arborNeed({ cutter }: Job): readonly Need[] {
  const hole = cutter.right?.cutter.hole ?? null;
  return hole === null ? [] : [{ kind: 'arbor', diameter: hole }];
}

/** The outside as measured on the blank; what was worked out until then. */
export const outsideNow = (job: Job) => standing(job.readings, 'blank', 'outside', job.blank.figures.outsideDiameter);

/** Head and tailstock on one line with the table. */
export function lineUp(job: Job, after: readonly string[]): PlannedOperation {
  const runOut = atMost('Mandrel against the table, from end to end', 't', inches(MANDREL_RUN_OUT_IN), job.shopUnit);
  return operation({
    key: 'line-up',
    title: 'Head and tailstock lined up',
    setUp: job.mill,
    steps: [
      'Clean table, keys and both centres. Head and tailstock down on the same keyway.',
      'Mandrel between the centres on which it was turned. Dog in its driver, without shake.',
      'Indicator along top and side of the mandrel, moving the table: level, and in line.',
    ],
    figures: { runOut },
    measures: [measure('runOut', runOut, 'Mandrel out of line', '', 'Shim or shift the tailstock: the teeth would come out tapered.')],
    needs: onTheMill(job),
    cautions: [CAUTIONS.machine],
    minutes: MINUTES.lineUp,
    after,
  });
}

/** What stands between the right cutter and cutting: lent out, blunt, a hole that no arbor here fits. */
const troublesOf = ({ cutter, troubles }: Candidate): readonly Caution[] =>
  troubles.map((says) => ({ name: 'Cutter', says: `${cutter.name}: ${says}`, weight: 'beware', about: 'speed' }));

/** What to do while the right cutter is lacking, and the arbor that another one may ask for. */
function lackingCutter({ cutter, shop }: Job): readonly Caution[] {
  const { wanted, advice } = cutter.choice;
  if (cutter.right && !wanted) return troublesOf(cutter.right);
  const arbors = [...new Set(shop.arbors.filter(({ here }) => here).map(({ diameter }) => holeWords(diameter)))];
  const hole = `Look at the hole of any that comes: ${arbors.length === 0 ? 'no arbor is on record' : `arbors here are ${arbors.join(', ')}`}.`;
  const says = wanted ? `Waits for ${needWords(cutter.need)}. ${hole}` : hole;
  const lines = advice.slice(0, 3).map((line): Caution => ({ name: `Or: ${line.do}`, says: line.says, weight: 'note', about: 'speed' }));
  return [{ name: 'Cutter', says, weight: 'beware', about: 'speed' }, ...lines];
}

export function cutterOnArbor(job: Job, after: string): PlannedOperation {
  const rim = atMost('Run-out of the cutter at its rim', 't', inches(CUTTER_RIM_RUN_OUT_IN), job.shopUnit);
  const speed = millSpeed(job);
  return operation({
    key: 'cutter-on-arbor',
    title: 'Cutter on the arbor',
    setUp: job.mill,
    steps: [
      'Wipe hole, collars and arbor. Key in, cutter close to the spindle, support close to the cutter.',
      'Up-cut, with the thrust toward the head.',
      'Run the table by hand over the full stroke: arbor, support and dog all clear.',
      'Indicator on the rim, tooth by tooth, turning by hand.',
    ],
    figures: { rimRunOut: rim, ...speed.figures },
    measures: [
      measure(
        'rimRunOut',
        rim,
        'Run-out of the cutter',
        '',
        'Clean the collars and turn the cutter on the arbor: one tooth would cut alone.',
      ),
    ],
    needs: [job.cutter.need, ...arborNeed(job)],
    cautions: [CAUTIONS.milling, ...lackingCutter(job), ...speed.cautions],
    minutes: MINUTES.arbor,
    after: [after],
  });
}

function towardsMiddle(job: Job): Record<string, Figure> {
  const [width, dial] = [job.cutter.right?.cutter.width ?? null, job.shop.mill?.crossDial ?? null];
  if (width === null)
    return {
      travel: notKnown(
        'From touching the side to the middle',
        's',
        'measure the width of the cutter: half of it, half the blank, and the paper',
        job.unit,
      ),
    };
  const outside = outsideNow(job);
  const answer = centralMove({ blankDiameter: outside.length, cutterWidth: width, paper: job.shop.paper, dial, unit: job.shopUnit });
  const from: Record<string, From> = { D: outside.from, w: 'typed' };
  return {
    travel: withFrom(answer.figures.travel, from),
    dial: { ...answer.figures.move, name: 'Dial from touching to the middle', note: 'One way all through, from 0 where it touched.' },
  };
}

function proof(job: Job, shift: Length | null): Record<string, Figure> {
  if (shift === null) return {};
  const radius = ofUnit(pitchDiameter(toothOf(job.gear)) / 2, job.unit);
  const { error, lean, move } = centralProof({
    shift,
    pitchRadius: radius,
    dial: job.shop.mill?.crossDial ?? null,
    unit: job.shopUnit,
  }).figures;
  return { error, lean, putRight: move };
}

/** Central, and proved so; again after every change of cutter. */
export function cutterCentral(job: Job, after: string): PlannedOperation {
  const shift = atMost('Shift of the gash, mandrel turned end for end', 's', twice(inches(CENTRAL_ENOUGH_IN)), job.shopUnit);
  const note = 'Half of it is the error, and leans every tooth by that much over the radius.';
  return operation({
    key: 'central',
    title: 'Set the cutter central, and prove it',
    setUp: job.mill,
    steps: [
      'Cutter turned by hand: touch the side of the blank, paper between. Lower the blank clear and move across by the travel given. Or bring the tailstock point to the middle of the cutter.',
      'Cut a light gash, a few thousandths deep, where a space will come. Turn the mandrel end for end and gash beside it.',
      'Half the shift is the error: move by it, and prove again.',
      'Cutter changed: central and proof anew.',
    ],
    figures: { ...towardsMiddle(job), shift: { ...shift, note }, ...proof(job, lengthMeasured(job.readings, 'central', 'shift')) },
    measures: [measure('shift', shift, 'Shift of the gash', '', 'Not central: move half the shift, and prove again.')],
    needs: [job.cutter.need, ...arborNeed(job), ...onTheMill(job)],
    cautions: [CAUTIONS.milling],
    minutes: MINUTES.central,
    after: [after],
  });
}

/** What the count of the nicks tells when gears turn the plate. */
function countNicks({ gear, dividing: { way, answer } }: Job): readonly string[] {
  const figures = (answer?.figures ?? {}) as Readonly<Record<string, Figure>>;
  if (way?.method !== 'differential' || !figures['ifWrong'] || !figures['ifLocked']) return [];
  const [wrong, locked] = [figures['ifWrong'], figures['ifLocked']].map((figure) => printFigure(figure).text);
  return [
    `Count the nicks: ${gear.teeth} is right. ${wrong}: the plate turned the wrong way, one idler more or less. ${locked}: the plate was left locked.`,
  ];
}

function nickFigures({ gear, unit }: Job): Record<string, Figure> {
  const { nicks, depth } = trialNick(gear.teeth, unit).figures;
  return { nicks, nickDepth: depth };
}

/** A space goes where it stood to keyway or spline, before the first nick: afterwards it is too late. */
const standsTo = ({ gear }: Job): readonly string[] =>
  !gear.bore || gear.bore.form === 'plain'
    ? []
    : [`Turn the spindle until a space comes where it was noted to stand to the ${gear.bore.form === 'keyed' ? 'keyway' : 'spline'}.`];

/** A light nick for every tooth and one more, before anything is cut that cannot be put back. */
export const nick = (job: Job, after: readonly string[]): PlannedOperation =>
  operation({
    key: 'nick',
    title: `Nick all ${job.gear.teeth} and one more`,
    setUp: job.mill,
    steps: [...standsTo(job), ...trialNickSteps(job.gear.teeth), ...countNicks(job)],
    figures: nickFigures(job),
    needs: cuttingNeeds(job),
    cautions: [CAUTIONS.dividing, CAUTIONS.milling, ...materialCautions(job.material)],
    minutes: MINUTES.nick * (job.gear.teeth + 1),
    after,
  });
