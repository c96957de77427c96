import { type Stock, testStock } from '../blanks/from-stock.ts';
import type { Caution, Figure } from '../figure/figure.ts';
import type { Bore } from '../gears/gear.ts';
import type { Chuck } from '../tooling/tooling.ts';
import { chuckRunOut } from '../turning/truing.sums.ts';
import { add, inches, type Length } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { checkBlank, edges } from './blank.ts';
import { CAUTIONS } from './cautions.data.ts';
import { layOut } from './inspect.ts';
import type { Job } from './job.ts';
import { type LatheSpeed, latheSpeed } from './lathe-speeds.ts';
import { chuckOf, mandrelPhase } from './mandrel.ts';
import { latheCautions } from './material-words.ts';
import { MINUTES } from './minutes.data.ts';
import { boreWords } from './needs.ts';
import type { Need, PlannedOperation } from './operation.ts';
import { BENCH, inChuck } from './set-ups.ts';
import { teethPhases } from './teeth.ts';
import { turnDown } from './turn.ts';
import { measure, notKnown, operation } from './written.ts';

const JAWS = 4;
/** A bore may be this much over, never under: judgement. */
const BORE_OVER_IN = 0.001;

/** In a chuck that is here; while none is, a four-jaw is what to look for. */
export const chuckNeed = (job: Job): Need => ({ kind: 'chuck', jaws: chuckOf(job)?.jaws ?? JAWS });
export const chucked = (job: Job) => inChuck(job.shop.lathe, chuckOf(job)?.jaws ?? JAWS);

const NO_CHUCK: Caution = {
  name: 'Chuck not known',
  says: 'No chuck is on record here: the speed given does not look at what the chuck may run. Look at its maker’s limit first.',
  weight: 'beware',
  about: 'speed',
};

/** Truing by hand in a four-jaw; and a chuck that nobody knows. */
export function chuckCautions(job: Job): readonly Caution[] {
  const chuck = chuckOf(job);
  if (!chuck) return [CAUTIONS.fourJaw, NO_CHUCK];
  return chuck.jaws === 3 ? [] : [CAUTIONS.fourJaw];
}

/** What the chuck runs out by itself: nothing where it is not known which, nor of a four-jaw, in which the work is trued. */
export function chuckFigures(job: Job): Record<string, Figure> {
  const chuck = chuckOf(job);
  return chuck && chuck.jaws !== JAWS ? { chuckRunOut: chuckRunOut(chuck, job.shopUnit) } : {};
}

/** What is bored before key or spline: of a splined bore the circle across its tops. */
const boredSize = (bore: Bore): Length => (bore.form === 'splined' ? bore.minor : bore.diameter);

function measureStock(job: Job, stock: Stock): PlannedOperation {
  const verdict = testStock({ wanted: job.wanted.gear, stock });
  const size = (length: Length) => `${printLength(length, { unit: job.unit, places: job.unit === 'in' ? 3 : 2 })} ${job.unit}`;
  return operation({
    key: 'stock',
    title: 'Measure and try the stock',
    setUp: BENCH,
    steps: [
      `Measure diameter and length: ${size(verdict.diameterWanted)} across is wanted${verdict.takes === null ? '' : `, and ${size(verdict.takes)} of length`}.`,
      'Try a file on it; settle what it is made of.',
    ],
    verdict: verdict.says,
    cautions: verdict.verdict === 'serves' ? [] : [{ name: 'Stock', says: verdict.says, weight: 'beware' }],
    minutes: MINUTES.inspect,
    after: [],
  });
}

function boreFigure(job: Job, bore: Bore): Figure {
  const size = boredSize(bore);
  const name = bore.form === 'splined' ? 'Bore, across the tops of the splines' : 'Bore';
  return {
    name,
    symbol: 'b',
    value: { length: size },
    unit: job.unit,
    formula: '',
    source: 'as written down for this part; limits: judgement',
    given: [],
    limits: [{ length: size }, { length: add(size, inches(BORE_OVER_IN)) }],
  };
}

/** A face is cut at the speed of its rim, which is slower than that of the bore. */
export function facingSpeed(job: Job, across: Length, chuck: Chuck | null): Pick<LatheSpeed, 'figures' | 'cautions'> {
  const { figures, cautions } = latheSpeed(job, { operation: '', diameter: across, cut: 'turning', passes: null, chuck });
  const speed = figures['speed'];
  return { figures: speed ? { facingSpeed: { ...speed, name: 'Speed to set for facing' } } : {}, cautions };
}

/** Faced, drilled and bored in one chucking: everything after goes from the bore. */
function boreFirst(job: Job, stockOutside: Length): PlannedOperation {
  const { bore } = job.gear;
  const chuck = chuckOf(job);
  const speed = latheSpeed(job, {
    operation: 'bore',
    diameter: bore ? boredSize(bore) : stockOutside,
    cut: 'turning',
    passes: null,
    chuck,
  });
  const facing = facingSpeed(job, stockOutside, chuck);
  const figure = bore ? boreFigure(job, bore) : notKnown('Bore', 'b', 'measure the shaft first', job.unit);
  return operation({
    key: 'bore',
    title: 'Bore first: everything goes from the bore',
    setUp: chucked(job),
    steps: [
      'Chuck it with room behind; face it, centre it, drill it well under size.',
      'Bore it in one chucking, measuring before the last two cuts.',
      'Part it off long enough for the second face.',
    ],
    figures: { bore: figure, ...speed.figures, ...facing.figures, ...chuckFigures(job) },
    measures: bore
      ? [measure('bore', figure, figure.name, 'Metal left: another cut.', 'Metal gone: it will be loose on its shaft. Bush it.')]
      : [],
    needs: [chuckNeed(job)],
    cautions: [...chuckCautions(job), ...latheCautions(job), ...speed.cautions, ...facing.cautions],
    minutes: MINUTES.bore,
    after: ['stock'],
  });
}

/** Keyway or spline, before any tooth is cut. */
function drive(job: Job): readonly PlannedOperation[] {
  const { bore } = job.gear;
  if (!bore || bore.form === 'plain') return [];
  const splined = bore.form === 'splined';
  const width = `${printLength(bore.keyWidth, { unit: job.unit, places: job.unit === 'in' ? 4 : 2 })} ${job.unit}`;
  const tool = splined
    ? `spline tool, ${bore.splines} of ${width} (broach or slotting tool)`
    : `keyway tool, ${width} wide (broach or slotting tool)`;
  return [
    operation({
      key: splined ? 'spline' : 'keyway',
      title: splined ? 'Spline the bore, before the teeth' : 'Cut the keyway, before the teeth',
      setUp: BENCH,
      steps: [
        `${boreWords(bore)}: cut it, or send the blank out for it.`,
        splined ? 'Try it on its own shaft before going on.' : 'Try the key in it before going on.',
        'Note how a tooth has to stand to it.',
      ],
      needs: [{ kind: 'other', name: tool }],
      cautions: [CAUTIONS.burrs],
      minutes: splined ? MINUTES.spline : MINUTES.keyway,
      after: ['bore'],
    }),
  ];
}

/** A gear from bar: bore, drive, then blank and teeth from the bore. */
export function fromStock(job: Job, stock: Stock): readonly PlannedOperation[] {
  const { diameterWanted } = testStock({ wanted: job.wanted.gear, stock });
  const old =
    stock.diameter === null ? { outside: diameterWanted, from: 'guess' as const } : { outside: stock.diameter, from: 'measured' as const };
  const keyed = drive(job);
  const ready = keyed[0]?.key ?? 'bore';
  const turning = turnDown(job, {
    part: '',
    old,
    root: null,
    to: job.blank.figures.outsideDiameter,
    setUp: job.lathe,
    needs: job.mandrel,
    after: 'mount',
  });
  return [
    measureStock(job, stock),
    layOut(job, 'stock', old.outside),
    boreFirst(job, old.outside),
    ...keyed,
    ...mandrelPhase(job, ready, ready),
    ...turning,
    secondFace(job, 'last-cuts'),
    checkBlank(job, 'faces'),
    ...edges(job, 'blank'),
    ...teethPhases(job),
  ];
}

/** The face that was not turned with the bore, trued on the mandrel, and the width with it. */
export function secondFace(job: Job, after: string): PlannedOperation {
  const face: Figure =
    job.face === null
      ? notKnown('Width over the faces', 'F', 'measure a neighbour first', job.unit)
      : { ...notKnown('Width over the faces', 'F', '', job.unit), value: { length: job.face }, source: 'as written down for this part' };
  return operation({
    key: 'faces',
    title: 'Second face, to width',
    setUp: job.lathe,
    steps: ['Face the side that was not turned with the bore, true on the mandrel; then to width.'],
    figures: { face },
    needs: job.mandrel,
    cautions: latheCautions(job),
    minutes: MINUTES.faces,
    after: [after],
  });
}
