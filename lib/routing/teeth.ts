import { finish, firstSpan, rough, touch } from './cut.ts';
import { finishPhase } from './finish.ts';
import type { Job } from './job.ts';
import type { PlannedOperation } from './operation.ts';
import { plateAndSector } from './plate-and-sector.ts';
import { cutterCentral, cutterOnArbor, lineUp, nick } from './set-up-head.ts';

/** From the turned blank to the record, the same for every way. */
export const teethPhases = (job: Job): readonly PlannedOperation[] => [
  lineUp(job, ['edges', 'lay-out']),
  cutterOnArbor(job, 'line-up'),
  cutterCentral(job, 'cutter-on-arbor'),
  plateAndSector(job, ['line-up']),
  nick(job, ['central', 'plate']),
  touch(job, ['nick']),
  rough(job, 'touch'),
  firstSpan(job, 'rough'),
  finish(job, 'first-span'),
  ...finishPhase(job, 'finish'),
];
