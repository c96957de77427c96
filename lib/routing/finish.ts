import type { Figure } from '../figure/figure.ts';
import { PIN_RUN_OUT_IN } from '../turning/limits.data.ts';
import { runOutEffects } from '../turning/run-out.sums.ts';
import { inches } from '../values/length.ts';
import { CAUTIONS } from './cautions.data.ts';
import { spanFigures, spanMeasures } from './cut.ts';
import type { Job } from './job.ts';
import { materialCautions } from './material-words.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation } from './operation.ts';
import { lengthMeasured, withFrom } from './readings.ts';
import { BENCH, ON_ITS_MACHINE } from './set-ups.ts';
import { atMost, measure, operation } from './written.ts';

/** What the run-out of the finished teeth does: as read, else as the limit would. */
function runOutFigures(job: Job): Record<string, Figure> {
  const read = lengthMeasured(job.readings, 'measure', 'pinRunOut');
  const { figures } = runOutEffects({ runOut: read ?? inches(PIN_RUN_OUT_IN), angle: job.gear.system.angle, unit: job.shopUnit });
  const from = { t: read === null ? ('guess' as const) : ('measured' as const) };
  return { lashSwing: withFrom(figures.lashSwing, from), divisionWander: withFrom(figures.divisionWander, from) };
}

/** Span, run-out and outside of the finished wheel, still on its mandrel. */
function measureGear(job: Job, after: string): PlannedOperation {
  const spans = spanFigures(job);
  const pin = atMost('Run-out of a pin in six spaces', 'tp', inches(PIN_RUN_OUT_IN), job.shopUnit);
  const outside = job.blank.figures.outsideDiameter;
  return operation({
    key: 'measure',
    title: 'Measure the finished teeth',
    setUp: job.mill,
    steps: [
      'Span at three places round, and over the tooth that was cut last.',
      'Pin in six spaces, indicator over it, on the mandrel: span and pins alone never see the bore.',
      'Outside once more. Write all of it down before the wheel comes off.',
    ],
    figures: { ...spans, pinRunOut: pin, ...runOutFigures(job), outside },
    measures: [
      ...spanMeasures(spans, 'Metal left: one more round at that depth.'),
      measure(
        'pinRunOut',
        pin,
        'Run-out of a pin in six spaces',
        '',
        'The lash will swing once a turn: set it at the tight spot, and try.',
      ),
      measure(
        'outside',
        outside,
        'Outside diameter',
        'Metal gone: short tips, a little less contact.',
        'Metal left: the tips may foul the mate.',
      ),
    ],
    needs: job.mandrel,
    minutes: MINUTES.measureGear,
    after: [after],
  });
}

const burrs = (job: Job): readonly PlannedOperation[] => [
  operation({
    key: 'burrs',
    title: 'Burrs off',
    setUp: BENCH,
    steps: ['File and stone every edge of every tooth, both faces. Feel for the ones that cannot be seen.'],
    cautions: [CAUTIONS.burrs, ...materialCautions(job.material)],
    minutes: MINUTES.burrs,
    after: ['measure'],
  }),
  ...(job.wanted.slides
    ? [
        operation({
          key: 'tooth-ends',
          title: 'Round the tooth ends: it slides into mesh',
          setUp: BENCH,
          must: false,
          steps: ['Round the ends on the side from which it enters, all alike.'],
          minutes: MINUTES.toothEnds,
          after: ['burrs'],
        }),
      ]
    : []),
];

const mark = ({ gear, wanted }: Job): PlannedOperation =>
  operation({
    key: 'mark',
    title: 'Mark count, pitch and angle',
    setUp: BENCH,
    steps: [`Stamp the web, not the rim: ${gear.teeth} teeth, pitch, angle. Tag it ${wanted.mark}.`],
    minutes: MINUTES.mark,
    after: ['burrs'],
  });

const fitted = (): readonly PlannedOperation[] => [
  operation({
    key: 'on-its-shaft',
    title: 'Try it on its own shaft',
    setUp: ON_ITS_MACHINE,
    steps: ['Push it on by hand. It goes home without a hammer, and does not rock.'],
    minutes: MINUTES.fit,
    after: ['mark'],
  }),
  operation({
    key: 'with-its-mate',
    title: 'Run it with its mate on the real centres',
    setUp: ON_ITS_MACHINE,
    steps: ['Turn a full round by hand, and find the tight spot.', 'Read the lash there. Write both down.'],
    cautions: [CAUTIONS.machine],
    minutes: MINUTES.mesh,
    after: ['on-its-shaft'],
  }),
];

const hardening = (): PlannedOperation =>
  operation({
    key: 'hardening',
    title: 'Harden it? Leaving it soft is usual',
    setUp: BENCH,
    must: false,
    steps: ['Leave it soft unless the original was hard and the load is heavy: hardening moves bore and teeth.'],
    cautions: [CAUTIONS.hardening],
    minutes: MINUTES.hardening,
    after: ['with-its-mate'],
  });

const record = (): PlannedOperation =>
  operation({
    key: 'record',
    title: 'Write the record',
    setUp: BENCH,
    steps: [
      'What it was made from, sizes against limits, hours, and what would be done otherwise.',
      'Spoilt? Record that too: the part is chosen for anew.',
    ],
    minutes: MINUTES.record,
    after: ['with-its-mate'],
  });

/** From the last cut to the record. */
export const finishPhase = (job: Job, after: string): readonly PlannedOperation[] => [
  measureGear(job, after),
  ...burrs(job),
  mark(job),
  ...fitted(),
  hardening(),
  record(),
];
