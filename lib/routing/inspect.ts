import { CLEAN_UP } from '../blanks/judgements.data.ts';
import { type SpareVerdict, testSpare } from '../blanks/spare-test.sums.ts';
import type { SpareWheel } from '../blanks/spare-wheel.ts';
import { holeWords } from '../cutters/describe.ts';
import type { Caution, Figure } from '../figure/figure.ts';
import { half, type Length, nanometres, subtract } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import { needWords } from './needs.ts';
import type { PlannedOperation } from './operation.ts';
import { lengthRead } from './readings.ts';
import { BENCH } from './set-ups.ts';
import { atMost, measure, operation } from './written.ts';

/** The spare with what was measured since the routing was opened. */
export function spareNow(spare: SpareWheel, { readings }: Job): SpareWheel {
  const [root, runOut] = [lengthRead(readings, 'sound', 'oldRoot'), lengthRead(readings, 'sound', 'runOut')];
  const bore = spare.gear.bore?.diameter ?? nanometres(0);
  const wall = root ? ({ by: 'wall', wall: half(subtract(root.length, bore)), bore } as const) : null;
  return { ...spare, runOut: runOut?.length ?? spare.runOut, reading: wall ?? spare.reading };
}

/** Counted, measured, photographed, so that nothing of the old wheel is lost with its teeth. */
export const countAndMeasure = (spare: SpareWheel): PlannedOperation =>
  operation({
    key: 'count',
    title: 'Count, measure and photograph the spare',
    setUp: BENCH,
    steps: [
      `Count the teeth, marking the first: ${spare.gear.teeth} are written down.`,
      'Photograph both faces with a rule beside.',
      spare.gear.bore?.form === 'plain'
        ? 'Note which face is out, and any mark on it.'
        : 'Note how a tooth or a space stands to the spline or keyway, and which face is out.',
      'Measure face, bore, hubs and recesses.',
    ],
    minutes: MINUTES.inspect,
    after: [],
  });

export const fileTest = (spare: SpareWheel, after: string): PlannedOperation =>
  operation({
    key: 'file-test',
    title: 'Try it with a file; settle the material',
    setUp: BENCH,
    steps: ['Try a file on tip, root, web and bore.', 'Skates on the tips only: a hard case. Skates everywhere: put the wheel back.'],
    verdict: `Written down: ${spare.hardness}; ${spare.material === 'unknown' ? 'material not known' : spare.material}.`,
    minutes: MINUTES.fileTest,
    after: [after],
    ...(spare.hardness === 'file bites' ? {} : { cautions: [notTried(spare)] }),
  });

const notTried = ({ hardness }: SpareWheel): Caution => ({
  name: 'Hardness',
  says: hardness === 'not tried' ? 'Nobody has tried a file on it: do so before anything is turned.' : `Written down as ${hardness}.`,
  weight: 'beware',
});

/** The spare test as it stands with today's readings. */
export function spareVerdict(job: Job, spare: SpareWheel): SpareVerdict {
  return testSpare({ wanted: job.wanted.gear, spare, cleanUp: job.shop.cleanUp });
}

function soundFigures({ answer, root }: SpareVerdict, job: Job): Record<string, Figure> {
  const found = Object.entries(answer.figures).flatMap(([key, figure]) => (figure ? [[key, figure] as const] : []));
  const runOut = atMost('Run-out of the old roots against the bore, full reading', 't', job.shop.cleanUp ?? CLEAN_UP, job.unit);
  const oldRoot = answer.figures.oldRoot;
  return {
    ...Object.fromEntries(found),
    ...(oldRoot ? { oldRoot: { ...oldRoot, note: root.from === 'measured' ? 'Measured.' : 'Worked out: measure it here.' } } : {}),
    runOut: { ...runOut, note: 'What the roots run out is lost from the room that is left.' },
  };
}

/** No sum by hand: the walls and the bore are written down with the wheel, and the root is worked out from them. */
export const WALLS =
  'Measure the wall from bore to root in six places, and the bore. Written down with the wheel in the drawer, the least wall is enough: the root is worked out from it.';

/** Whether the spare is sound enough to become the wheel: the whole spare test, with the figures behind it. */
export function soundEnough(job: Job, verdict: SpareVerdict, after: string): PlannedOperation {
  const figures = soundFigures(verdict, job);
  const [root, runOut] = [figures['oldRoot'], figures['runOut']];
  const smaller = 'The old gaps reach deeper than was thought: work the routing out again.';
  return operation({
    key: 'sound',
    title: 'See that it is sound: roots, metal, wall, bore',
    setUp: BENCH,
    steps: [
      'Read the old roots against the bore, on a stub that fits the bore.',
      WALLS,
      'See that it is solid where the new teeth will stand.',
      'Look for wear in the bore and bruises on its edges.',
    ],
    verdict: verdict.says,
    figures,
    measures: [
      ...(root ? [measure('oldRoot', root, 'Old root diameter', smaller, 'Room to spare.')] : []),
      ...(runOut ? [measure('runOut', runOut, 'Run-out of the old roots', '', 'True the bore first, or take another spare.')] : []),
    ],
    cautions: verdict.answer.cautions,
    minutes: MINUTES.soundEnough,
    after: [after],
  });
}

/** Cutter, hole and arbor as they stand today: what comes in or is lent out changes it. */
function cutterLine({ cutter, shop }: Job): readonly string[] {
  const lay = `Cutter: ${needWords(cutter.need).replace(/^cutter /, '')}.`;
  const { right } = cutter;
  if (right) return [lay, right.arbor.fits ? `It goes on ${right.arbor.fits.name}.` : right.arbor.says];
  const arbors = [...new Set(shop.arbors.filter(({ here }) => here).map(({ diameter }) => holeWords(diameter)))];
  const hole =
    arbors.length === 0 ? 'No arbor is on record: measure one.' : `Its hole has to be that of an arbor here: ${arbors.join(', ')}.`;
  return [lay, hole];
}

const swing = ({ unit }: Job, across: Length): string => `${printLength(across, { unit, places: 2 })} ${unit}`;

/** Every tool touched before metal is cut. widest: what has to swing on the lathe, the blank as it is before turning. Asks for nothing itself, so that turning need not wait for the cutter. */
export const layOut = (job: Job, after: string, widest: Length = outsideOf(job)): PlannedOperation =>
  operation({
    key: 'lay-out',
    title: 'Lay hands on every tool',
    setUp: BENCH,
    steps: [
      'Cutter: read its range, angle and stamped depth; feel its edges.',
      ...job.mandrel.map((need) => `The ${needWords(need)}, and its dog.`),
      ...job.dividing.needs.map((need) => `The ${needWords(need)}.`),
      `See that ${swing(job, widest)} swings over the saddle, and ${swing(job, outsideOf(job))} clear under the cutter arbor.`,
    ],
    verdict: cutterLine(job).join(' '),
    cautions: job.cutter.choice.cautions,
    minutes: MINUTES.layOut,
    after: [after],
  });

export const outsideOf = ({ blank }: Job) => {
  const { value } = blank.figures.outsideDiameter;
  if (!('length' in value)) throw new Error('an outside is a length');
  return value.length;
};
