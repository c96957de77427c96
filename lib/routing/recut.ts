import type { SpareWheel } from '../blanks/spare-wheel.ts';
import { checkBlank, edges } from './blank.ts';
import { countAndMeasure, fileTest, layOut, soundEnough, spareNow, spareVerdict } from './inspect.ts';
import type { Job } from './job.ts';
import { boreWork, mandrelPhase } from './mandrel.ts';
import type { PlannedOperation } from './operation.ts';
import { teethPhases } from './teeth.ts';
import { faceOff, turnDown } from './turn.ts';

const last = (operations: readonly PlannedOperation[], otherwise: string): string => operations[operations.length - 1]?.key ?? otherwise;

/** A gear from a spare, from counting the old teeth to the record. */
export function recut(job: Job, spare: SpareWheel): readonly PlannedOperation[] {
  const verdict = spareVerdict(job, spareNow(spare, job));
  const bore = boreWork(job, verdict.boreWork, 'sound');
  const turning = turnDown(job, {
    part: '',
    old: { outside: verdict.oldOutside, from: 'worked out' },
    root: { size: verdict.root.root, from: verdict.root.from },
    to: job.blank.figures.outsideDiameter,
    setUp: job.lathe,
    needs: job.mandrel,
    after: 'mount',
  });
  const faces = faceOff(job, spare.gear.face, 'last-cuts');
  return [
    countAndMeasure(spare),
    fileTest(spare, 'count'),
    soundEnough(job, verdict, 'file-test'),
    layOut(job, 'sound', verdict.oldOutside),
    ...bore,
    ...mandrelPhase(job, 'sound', last(bore, 'sound')),
    ...turning,
    ...faces,
    checkBlank(job, last(faces, 'last-cuts')),
    ...edges(job, 'blank'),
    ...teethPhases(job),
  ];
}
