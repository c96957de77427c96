import { sizesOf } from '../blanks/blank-sizes.ts';
import { STOCK } from '../blanks/judgements.data.ts';
import { oldRoot } from '../blanks/measured-root.sums.ts';
import type { RingVerdict } from '../blanks/ring-and-hub.sums.ts';
import type { SpareWheel } from '../blanks/spare-wheel.ts';
import type { Caution, Figure } from '../figure/figure.ts';
import { add, inches, type Length, nanometres, subtract } from '../values/length.ts';
import type { RingAndHub } from './asked.ts';
import { checkBlank, edges } from './blank.ts';
import { countAndMeasure, fileTest, layOut, outsideOf, spareNow, WALLS } from './inspect.ts';
import type { Job } from './job.ts';
import { latheSpeed } from './lathe-speeds.ts';
import { chuckOf, mandrelPhase } from './mandrel.ts';
import { latheCautions, materialCautions } from './material-words.ts';
import { MINUTES } from './minutes.data.ts';
import type { Measure, PlannedOperation } from './operation.ts';
import { type Fit, fitOf } from './ring-fit.ts';
import { BENCH, OVEN } from './set-ups.ts';
import { chuckCautions, chucked, chuckFigures, chuckNeed, facingSpeed, secondFace } from './stock.ts';
import { teethPhases } from './teeth.ts';
import { turnDown } from './turn.ts';
import { measure, operation } from './written.ts';

/** A ring may be bored this much tighter than wanted, never looser: judgement. */
const TIGHTER_IN = 0.0005;

type Figures = Readonly<Record<string, Figure>>;
const pick = (figures: Figures, ...keys: readonly string[]): Record<string, Figure> =>
  Object.fromEntries(keys.flatMap((key) => (figures[key] ? [[key, figures[key]]] : [])));

const refused = ({ verdict, says }: RingVerdict): readonly Caution[] =>
  verdict === 'serves' ? [] : [{ name: 'Ring and hub', says, weight: verdict === 'refused' ? 'danger' : 'beware' }];

/** Whether the middle of the spare will carry a ring. */
const sound = ({ wished }: Fit): PlannedOperation =>
  operation({
    key: 'sound',
    title: 'See that the middle will carry a ring',
    setUp: BENCH,
    steps: [
      'Read the old roots against the bore.',
      WALLS,
      'See that the hub is solid under the ring, and that the bore is good.',
      'Nothing plated, zinc or phenolic, and no closed hollow, goes in an oven.',
    ],
    verdict: wished.says,
    figures: pick(wished.answer.figures, 'oldRoot', 'hub', 'newOutside', 'newRoot', 'wholeDepth', 'underTeeth', 'underTeethDepths'),
    measures: [OLD_ROOT],
    cautions: [...refused(wished), ...wished.answer.cautions.filter(({ about }) => about === 'oldRoot')],
    minutes: MINUTES.soundEnough,
    after: ['file-test'],
  });

const OLD_ROOT: Measure = {
  key: 'oldRoot',
  name: 'Old root diameter',
  figure: 'oldRoot',
  low: null,
  high: null,
  below: 'The hub has to be turned smaller.',
  above: 'Room to spare.',
};

/** The hub turned, left, and measured: the ring is bored to what it measures. */
function hubSize(job: Job, { wished }: Fit): PlannedOperation {
  return operation({
    key: 'hub-size',
    title: 'Measure the turned hub, cold',
    setUp: job.lathe,
    steps: [
      'Let it cool. Measure the hub at both ends and the middle, to a tenth of a thousandth.',
      'A light chamfer leads the ring on; leave a shoulder, or make a stop.',
    ],
    figures: pick(wished.answer.figures, 'hub'),
    measures: [
      {
        key: 'hub',
        name: 'Hub diameter',
        figure: 'hub',
        low: null,
        high: null,
        below: 'Good: the ring is bored to the size it has.',
        above: 'Good while it lies clear of the old roots: the ring is bored to the size it has.',
      },
    ],
    needs: job.mandrel,
    minutes: MINUTES.checkBlank,
    after: ['hub-last-cuts'],
  });
}

function withLimits(figure: Figure | undefined): Figure | null {
  if (!figure || !('length' in figure.value)) return null;
  const { length } = figure.value;
  return { ...figure, limits: [{ length: subtract(length, inches(TIGHTER_IN)) }, { length }] };
}

/** The ring bored to the hub that was measured. */
function boreRing(job: Job, fit: Fit, wide: Length): PlannedOperation {
  const { figures } = fit.bored.answer;
  const bore = withLimits(figures['ringBore']);
  const chuck = chuckOf(job);
  const speed = latheSpeed(job, { operation: 'bore-ring', diameter: fit.bored.hub, cut: 'turning', passes: null, chuck });
  const facing = facingSpeed(job, wide, chuck);
  const tight = 'Metal left: another cut, or more heat and more stress in the ring.';
  return operation({
    key: 'bore-ring',
    title: 'Bore the ring to the measured hub',
    setUp: chucked(job),
    steps: [
      'Face one side, bore through, both in one chucking.',
      'Work to the ring bore given: it goes by the hub that was measured.',
      'Let the ring cool before the last cut is measured.',
    ],
    figures: {
      ...(bore ? { ringBore: bore } : {}),
      ...pick(figures, 'allowance', 'underTeeth'),
      ...speed.figures,
      ...facing.figures,
      ...chuckFigures(job),
    },
    measures: bore
      ? [measure('ringBore', bore, 'Bore of the ring', tight, 'Metal gone: it would hold less, or not at all. Make another ring.')]
      : [],
    needs: [chuckNeed(job)],
    cautions: [...chuckCautions(job), ...latheCautions(job), ...speed.cautions, ...facing.cautions, ...refused(fit.bored)],
    minutes: MINUTES.boreRing,
    after: ['hub-size'],
  });
}

function shrink(job: Job, { heated }: Fit): readonly PlannedOperation[] {
  const { figures, cautions } = heated.answer;
  const about = cautions.filter(({ name }) => name === 'Shrink fit' || name === 'Dry run' || name === 'Which steel');
  return [
    operation({
      key: 'dry-run',
      title: 'Lead, stop, and a cold dry run',
      setUp: BENCH,
      steps: [
        'Set the hub upright on something that does not move, with a stop for the ring.',
        'Go through every move cold, with the tongs and gloves that will be used.',
      ],
      cautions: about.filter(({ name }) => name === 'Dry run'),
      minutes: MINUTES.dryRun,
      after: ['bore-ring'],
    }),
    operation({
      key: 'heat-and-drop',
      title: 'Heat the ring, and drop it on',
      setUp: OVEN,
      steps: [
        'Clean ring and hub of every trace of oil.',
        'Ring in the oven until it is hot right through, hub at the heat of the shop.',
        'Drop it against the stop in one move. Stuck on the way: leave it, let it cool, and press it off; never hammer it home.',
      ],
      figures: pick(figures, 'oven', 'rise', 'dropRoom', 'allowance', 'hoopStress'),
      cautions: [...refused(heated), ...about.filter(({ name }) => name !== 'Dry run'), ...materialCautions(job.material)],
      minutes: MINUTES.heat,
      after: ['dry-run'],
    }),
    operation({
      key: 'cool',
      title: 'Leave it alone until it is cold',
      setUp: BENCH,
      steps: ['Let it cool in still air, unhandled. Then look that it sits against the stop all round.'],
      minutes: MINUTES.cool,
      after: ['heat-and-drop'],
    }),
  ];
}

/** Back on the mandrel, now with its ring. */
const mountRing = (job: Job): PlannedOperation =>
  operation({
    key: 'mount-ring',
    title: 'Hub and ring on the mandrel',
    setUp: job.lathe,
    steps: ['Push it home against the shoulder, nut up tight, dog on.', 'Turn it by hand under an indicator before the first cut.'],
    needs: job.mandrel,
    minutes: MINUTES.mount,
    after: ['cool'],
  });

function turnHub(job: Job, spare: SpareWheel, { wished }: Fit): readonly PlannedOperation[] {
  const root = oldRoot(spare, job.unit);
  const to = wished.answer.figures['hub'];
  if (!to) throw new Error('a hub has a size');
  return turnDown(
    { ...job, material: spare.material },
    {
      part: 'hub-',
      old: { outside: sizesOf(spare.gear).outside, from: 'worked out' },
      root: { size: root.root, from: root.from },
      to,
      setUp: job.lathe,
      needs: job.mandrel,
      after: 'mount',
    },
  );
}

/** Keeps the middle of a spare: hub turned and measured, ring bored to it, heat, drop, cold; then outside, faces and teeth. */
export function ringOnHub(job: Job, { hub, ring }: RingAndHub): readonly PlannedOperation[] {
  const spare = spareNow(hub, job);
  const fit = fitOf(job, spare, ring);
  const wide = ring.diameter ?? add(outsideOf(job), STOCK.truing);
  const outside = turnDown(job, {
    part: '',
    old: { outside: wide, from: ring.diameter === null ? 'guess' : 'measured' },
    root: null,
    to: job.blank.figures.outsideDiameter,
    setUp: job.lathe,
    needs: job.mandrel,
    after: 'mount-ring',
  });
  return [
    countAndMeasure(hub),
    fileTest(hub, 'count'),
    sound(fit),
    layOut(job, 'sound', nanometres(Math.max(sizesOf(spare.gear).outside, wide))),
    ...mandrelPhase(job, 'sound', 'sound'),
    ...turnHub(job, spare, fit),
    hubSize(job, fit),
    boreRing(job, fit, wide),
    ...shrink(job, fit),
    mountRing(job),
    ...outside,
    secondFace(job, 'last-cuts'),
    checkBlank(job, 'faces'),
    ...edges(job, 'blank'),
    ...teethPhases(job),
  ];
}
