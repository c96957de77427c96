import { DomainError } from '../figure/domain-error.ts';
import type { Caution, Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { backlashAnswer } from '../gears/backlash.sums.ts';
import { chordalAnswer } from '../gears/chordal.sums.ts';
import { depthToDial } from '../gears/depth.sums.ts';
import { stillToFeed } from '../gears/feed.sums.ts';
import { type SpanAnswer, spanAnswer } from '../gears/span.sums.ts';
import { add, inches, inUnit, type Length, millimetres, ofUnit } from '../values/length.ts';
import { CAUTIONS } from './cautions.data.ts';
import { depthDial, dialLash } from './depth-dial.ts';
import type { Job } from './job.ts';
import { materialCautions } from './material-words.ts';
import { cuttingMinutes, cuttingTime, millSpeed, roundsOf } from './mill-speeds.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation } from './operation.ts';
import { crankFigures } from './plate-and-sector.ts';
import { lengthRead, type Standing, standing, withFrom } from './readings.ts';
import { roughDepth } from './rough.formulas.ts';
import { cuttingNeeds, outsideNow } from './set-up-head.ts';
import { measure, operation } from './written.ts';

/** The depth to dial, from today's blank and the cutter's stamp; then what was typed over it. */
function depthOf(job: Job): { figure: Figure; whole: Figure; cautions: readonly Caution[]; now: Standing } {
  const outside = outsideNow(job);
  const stamp = job.cutter.right?.cutter.stampedDepth ?? null;
  const answer = depthToDial({
    gear: job.gear,
    paper: job.shop.paper,
    backlash: job.backlash,
    ...(outside.from === 'worked out' ? {} : { measuredOutside: outside.length }),
    ...(stamp === null ? {} : { stampedDepth: stamp }),
  });
  const figure = withFrom(answer.figures.depthToDial, { Dm: outside.from });
  const now = standing(job.readings, 'touch', 'depth', figure);
  return { figure, whole: answer.figures.wholeDepth, cautions: answer.cautions, now };
}

const LASH: Caution = {
  name: 'Fixed centres',
  says: 'The centres cannot be moved and no backlash was given: type what the pair wants less what the mate gives, or it may bind.',
  weight: 'beware',
  about: 'depth',
};

function backlashFigures({ gear, backlash }: Job): Record<string, Figure> {
  if (backlash === 0) return {};
  const { spanLess, deeperFormed } = backlashAnswer(gear, backlash).figures;
  return { spanLess, deeperForBacklash: deeperFormed };
}

const lashCautions = ({ wanted, backlash }: Job): readonly Caution[] => (wanted.fixedCentres && backlash === 0 ? [LASH] : []);

/** Touch, zero, depth. */
export function touch(job: Job, after: readonly string[]): PlannedOperation {
  const depth = depthOf(job);
  const outside = outsideNow(job);
  const chordal = chordalAnswer(job.gear, {
    backlash: job.backlash,
    ...(outside.from === 'worked out' ? {} : { measuredOutside: outside.length }),
  }).figures;
  return operation({
    key: 'touch',
    title: 'Touch the blank, zero, and set the depth',
    setUp: job.mill,
    steps: [
      'Paper stuck on with oil: no fingers at a turning cutter. Bring the blank up under it until the paper just goes.',
      'Set the dial to 0 there, then run the table clear of the cutter before the depth is set.',
      'Once the depth is set, clamp saddle and knee, each time anew. Keep to one stop for the full depth.',
    ],
    figures: {
      depth: depth.figure,
      wholeDepth: depth.whole,
      dial: depthDial(job, depth.now, 'Dial from touching, full depth'),
      ...dialLash(job.shop.mill?.depthDial ?? null),
      chordalAddendum: withFrom(chordal.chordalAddendum, { Dm: outside.from }),
      chordalThickness: chordal.chordalThickness,
      ...backlashFigures(job),
    },
    needs: cuttingNeeds(job),
    cautions: [...depth.cautions, ...lashCautions(job), CAUTIONS.milling],
    minutes: MINUTES.touch,
    after,
  });
}

/** The depths of the roughing rounds, with the dial of each. */
function roughFigures(job: Job, depth: Standing): Record<string, Figure> {
  const rounds = roundsOf(job);
  const figures = Array.from({ length: rounds }, (_, i): [string, Figure][] => {
    const size = ofUnit(roughDepth(inUnit(depth.length, job.unit), i + 1, rounds), job.unit);
    const which = rounds === 1 ? '' : `, round ${i + 1}`;
    const figure: Figure = {
      name: `Depth to rough to${which}`,
      symbol: 'Hr',
      value: { length: size },
      unit: job.unit,
      formula: '0.9 × H × r ÷ q',
      source: 'judgement, no source: a tenth of the depth is left for finishing at one setting',
      given: [
        givenLength('H', 'depth to dial', depth.length, job.unit, depth.from),
        { symbol: 'r', name: 'round', value: { count: i + 1 }, from: 'worked out' },
        { symbol: 'q', name: 'rounds of roughing', value: { count: rounds }, from: 'guess' },
      ],
    };
    return [
      [`rough${i + 1}`, figure],
      [
        `dial${i + 1}`,
        depthDial(
          job,
          lengthRead(job.readings, 'rough', `rough${i + 1}`) ?? { length: size, from: 'worked out' },
          `Dial from touching, roughing${which}`,
        ),
      ],
    ];
  });
  return Object.fromEntries(figures.flat());
}

/** All spaces roughed. */
export function rough(job: Job, after: string): PlannedOperation {
  const [depth, rounds, speed] = [depthOf(job).now, roundsOf(job), millSpeed(job)];
  const time = cuttingTime(job, { operation: 'rough', depth: depth.length, rounds })?.figures;
  return operation({
    key: 'rough',
    title: `Rough all round${rounds > 1 ? `, ${rounds} times` : ''}`,
    setUp: job.mill,
    steps: [
      'Raise to the depth of the round with the work clear of the cutter; clamp the knee.',
      'Clamp the spindle, cut the space, run back clear, unclamp, index one way only, clamp.',
      job.dividing.by
        ? 'Tick each space on the sheet, and look that turns and line are those given there.'
        : 'Tick each space on the sheet, and look that the pin fell in the hole given there.',
      ...(rounds > 1 ? ['Coarse teeth in steel: go round twice, half of it each time.'] : []),
    ],
    figures: {
      ...crankFigures(job),
      ...roughFigures(job, depth),
      ...speed.figures,
      ...(time ? { cutTime: time.cutTime, roughTime: { ...time.gearTime, name: 'Time of roughing all round' } } : {}),
    },
    needs: cuttingNeeds(job),
    cautions: [CAUTIONS.dividing, CAUTIONS.milling, ...materialCautions(job.material), ...speed.cautions],
    minutes: cuttingMinutes(job, { operation: 'rough', depth: depth.length, rounds }),
    after: [after],
  });
}

/** The span, or null where no two flanks can be spanned. */
function spanOf({ gear, backlash }: Job): SpanAnswer | null {
  try {
    return spanAnswer(gear, { backlash });
  } catch (problem) {
    if (problem instanceof DomainError) return null;
    throw problem;
  }
}

const SPAN_BELOW = 'Metal gone: the teeth are thin, and the lash is more by as much. Feed no more.';

/** The spans of the finished wheel with the ways to read them. */
export function spanFigures(job: Job): Record<string, Figure> {
  const answer = spanOf(job);
  if (!answer) return { chordalThickness: chordalAnswer(job.gear, { backlash: job.backlash }).figures.chordalThickness };
  const { span, spanBelow, spanAbove, k } = answer.figures;
  return { span, ...(spanBelow ? { spanBelow } : {}), ...(spanAbove ? { spanAbove } : {}), k };
}

export function spanMeasures(figures: Readonly<Record<string, Figure>>, above: string) {
  const { span } = figures;
  return span ? [measure('span', span, span.name, SPAN_BELOW, above)] : [];
}

/** A reading this much over the wanted span shows what a thousandth of it asks for: 0.005 in, 0.1 mm. */
const exampleOver = (job: Job): Length => (job.unit === 'in' ? inches(0.005) : millimetres(0.1));

/** Still to feed from the span that was read, and from an example before anything was. */
function feedFigures(job: Job): Record<string, Figure> {
  const answer = spanOf(job);
  const { value: k } = answer?.figures.k ?? { value: { words: '' } };
  const { value: wanted } = answer?.figures.span ?? { value: { words: '' } };
  if (!('count' in k && 'length' in wanted)) return {};
  const feed = (spanRead: Length) =>
    stillToFeed({ gear: job.gear, k: k.count, spanRead, spanWanted: wanted.length, made: 'form cutter' }).figures;
  const over = exampleOver(job);
  const example = feed(add(wanted.length, over));
  const name = `Still to feed when the span reads ${job.unit === 'in' ? '0.005 in' : '0.1 mm'} large`;
  const found = lengthRead(job.readings, 'first-span', 'span');
  const shown = { feedWhenLarge: { ...withFrom(example.stillToFeed, { Wr: 'guess' }), name }, feedPerSpan: example.feedPerSpan };
  if (found?.from !== 'measured') return shown;
  const now = feed(found.length);
  const dial = depthDial(job, standing({}, '', '', now.stillToFeed), 'Dial on by, from where it stands');
  return { ...shown, stillToFeed: now.stillToFeed, feedDial: dial, thickBy: now.thickness };
}

/** A few spaces roughed, the span read over them, and what is still to feed. */
export function firstSpan(job: Job, after: string): PlannedOperation {
  const figures = spanFigures(job);
  const { k } = figures;
  const gaps = k && 'count' in k.value ? k.value.count + 1 : 2;
  return operation({
    key: 'first-span',
    title: 'Finish a few spaces, read the span, feed on',
    setUp: job.mill,
    steps: [
      `Take ${gaps} spaces to a little short of the full depth. Burrs off, spindle stopped.`,
      k ? `Read the span over ${gaps - 1}.` : 'Read the chordal thickness.',
      'Feed on by what the reading asks for, take the same spaces again, read again.',
    ],
    figures: { ...figures, ...feedFigures(job) },
    measures: spanMeasures(figures, 'Metal left: feed on by what is still to feed.'),
    needs: cuttingNeeds(job),
    cautions: [...(spanOf(job)?.cautions ?? []), ...job.cutter.choice.cautions.filter(({ name }) => name === 'span')],
    minutes: MINUTES.span,
    after: [after],
  });
}

/** All spaces finished at one setting of the depth. */
export function finish(job: Job, after: string): PlannedOperation {
  const [depth, speed] = [depthOf(job).now, millSpeed(job)];
  const time = cuttingTime(job, { operation: 'finish', depth: depth.length, rounds: 1 })?.figures;
  return operation({
    key: 'finish',
    title: 'Finish all round at one setting',
    setUp: job.mill,
    steps: [
      'Leave the depth as the span set it, from the first space to the last.',
      'Clamp to cut, free to move, one way only; tick each space.',
      `Left for a while: look at tooth and ${job.dividing.by ? 'line' : 'hole'} on the sheet before cutting on.`,
    ],
    figures: {
      ...crankFigures(job),
      ...speed.figures,
      ...(time ? { cutTime: time.cutTime, finishTime: { ...time.gearTime, name: 'Time of finishing all round' } } : {}),
    },
    needs: cuttingNeeds(job),
    cautions: [CAUTIONS.dividing, CAUTIONS.milling, ...materialCautions(job.material), ...speed.cautions],
    minutes: cuttingMinutes(job, { operation: 'finish', depth: depth.length, rounds: 1 }),
    after: [after],
  });
}
