import { testStock } from '../blanks/from-stock.ts';
import type { PlanAsked } from './asked.ts';
import { spareNow, spareVerdict } from './inspect.ts';
import type { Job } from './job.ts';
import { wishedRing } from './ring-fit.ts';

/** What stands against a spare as it measures by now. A narrower face is the owner's own choice, and stands against nothing. */
function againstSpare(job: Job, asked: Extract<PlanAsked, { way: 're-cut a spare' }>): string {
  const { checks } = spareVerdict(job, spareNow(asked.blank, job));
  return checks
    .filter(({ result, about }) => result === 'no' && about !== 'face')
    .map(({ says }) => says)
    .join(' ');
}

/** Why the wheel cannot be made from its blank, in figures, by what was measured so far; '' while nothing stands against it. */
export function blankFails(job: Job, asked: PlanAsked): string {
  if (asked.way === 're-cut a spare') return againstSpare(job, asked);
  const { verdict, says } =
    asked.way === 'ring and hub' ? wishedRing(job, asked.blank) : testStock({ wanted: job.wanted.gear, stock: asked.blank });
  return verdict === 'refused' ? says : '';
}
