import { blankRunOutLimit, faceRunOutLimit } from '../turning/limits.ts';
import { CAUTIONS } from './cautions.data.ts';
import { outsideOf } from './inspect.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedOperation } from './operation.ts';
import { atMost, measure, operation } from './written.ts';

/** Of a wheel that is rolled, not of one that is cut with a form. */
const BY_HOB = 'Undercut';

/** Size and run-out of the blank, written down: the depth of the teeth goes by them. */
export function checkBlank(job: Job, after: string): PlannedOperation {
  const outside = job.blank.figures.outsideDiameter;
  const size = outsideOf(job);
  const runOut = atMost('Run-out of the blank against the bore, full reading', 't', blankRunOutLimit(size), job.unit);
  const face = atMost('Run-out of the face', 'tf', faceRunOutLimit(size), job.unit);
  const gone = 'Metal gone: the tips come out short. The depth is dialled less by half of what is gone.';
  return operation({
    key: 'blank',
    title: 'Write down the size and run-out of the blank',
    setUp: job.lathe,
    steps: ['Measure the outside in three places.', 'Indicator on the outside, then on the face near the rim: one full turn by hand.'],
    figures: { outside, rootDiameter: job.blank.figures.rootDiameter, runOut, faceRunOut: face },
    measures: [
      measure('outside', outside, 'Outside diameter', gone, 'Metal left: another cut.'),
      measure('runOut', runOut, 'Run-out of the blank', '', 'True it now: once the teeth are cut it cannot be trued.'),
      measure('faceRunOut', face, 'Run-out of the face', '', 'Face it again, or see what sits behind it.'),
    ],
    needs: job.mandrel,
    cautions: job.blank.cautions.filter(({ name }) => name !== BY_HOB),
    minutes: MINUTES.checkBlank,
    after: [after],
  });
}

/** Edges broken, and the old chamfer if it had one. */
export const edges = (job: Job, after: string): readonly PlannedOperation[] => [
  operation({
    key: 'edges',
    title: 'Break the edges 0.010 in (0.25 mm)',
    setUp: job.lathe,
    steps: ['Break both rims evenly, all round.'],
    needs: job.mandrel,
    cautions: [CAUTIONS.burrs],
    minutes: MINUTES.edges,
    after: [after],
  }),
  operation({
    key: 'chamfer',
    title: 'Chamfer as the original had',
    setUp: job.lathe,
    must: false,
    steps: ['Look at a sound wheel of the set; give this one the same chamfer.'],
    needs: job.mandrel,
    minutes: MINUTES.chamfer,
    after: ['edges'],
  }),
];
