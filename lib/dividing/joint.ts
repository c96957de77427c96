import { DomainError } from '../figure/domain-error.ts';
import type { Head, Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import type { Ratio } from '../values/ratio.ts';
import { checkDivisions, checkHead, checkPlates } from './check-dividing.ts';
import { type CirclePicked, fewestChanges, type Standing } from './fewest-changes.ts';
import { circlesThatServe, moveOn, turnsPerDivision } from './plain.formulas.ts';
import { whereOn } from './where-on.ts';
import { whyNoCircle } from './why-not.ts';

export type DividingJob = { readonly key: string; readonly divisions: number; readonly head: Pick<Head, 'turns'> };

/** side: 0 for the first or only side of the plate. */
type JobOnCircle = {
  readonly key: string;
  readonly divisions: number;
  readonly plate: Plate;
  readonly side: number;
  readonly circle: number;
  readonly move: IndexMove;
};

export type JointChoice = {
  readonly jobs: readonly JobOnCircle[];
  /** Plates and sides to put on, in the order in which the plates were given; one means that all stay on it. */
  readonly mountings: readonly { readonly plate: Plate; readonly side: number; readonly circles: readonly number[] }[];
  /** Jobs that no circle in the shop serves, each with its reason. */
  readonly refused: readonly { readonly key: string; readonly divisions: number; readonly says: string }[];
  readonly says: string;
};

const MOST_JOBS = 60;

/**
 * One choice of circles for all parts that are ready, so that the plate stays on as long as it can: fewest plates or sides put on, what
 * stands on the head (mounted) before another that serves as well; then fewest plates; then fewest circles; then circles of fewest holes. Only plates in the shop are chosen from. A part that several of the
 * chosen circles serve takes the one with most holes, where an error of a hole's place counts least (judgement).
 * Source: derived: exact search over all choices. Throws DomainError for no jobs, more than 60, or what plainIndexing refuses.
 * Example: 22 and 28 at 40 to 1 on three plates: both on the second, circles 33 and 21.
 */
export function chooseCircles(jobs: readonly DividingJob[], plates: readonly Plate[], mounted?: Standing): JointChoice {
  checkJobs(jobs);
  checkPlates(plates);
  const here = plates.filter((plate) => plate.here);
  const asked = jobs.map((job) => ({ ...job, turns: turnsPerDivision(job.head.turns, job.divisions) }));
  const canBe = asked.filter((job) => circlesThatServe(job.head.turns, job.divisions, here).length > 0);
  const refused = asked
    .filter((job) => !canBe.includes(job))
    .map((job) => ({ key: job.key, divisions: job.divisions, says: refusalOf(job, plates) }));
  const picked = fewestChanges(
    canBe.map((job) => job.turns[1]),
    here,
    mounted,
  );
  const placed = canBe.map((job) => placeJob(job, picked));
  const mountings = mountingsOf(picked);
  return { jobs: placed, mountings, refused, says: says(placed, mountings, refused) };
}

type TimedJob = DividingJob & { readonly turns: Ratio };

function placeJob({ key, divisions, turns }: TimedJob, picked: readonly CirclePicked[]): JobOnCircle {
  const [best] = picked.filter(({ circle }) => circle % turns[1] === 0).sort((a, b) => b.circle - a.circle);
  const move = best && moveOn(best.circle, turns);
  if (!move) throw new Error(`no circle was picked for ${key}`);
  return { key, divisions, plate: best.plate, side: best.side, circle: best.circle, move };
}

function mountingsOf(picked: readonly CirclePicked[]): JointChoice['mountings'] {
  const found: { plate: Plate; side: number; circles: number[] }[] = [];
  for (const { plate, side, circle } of picked) {
    const there = found.find((one) => one.plate === plate && one.side === side);
    if (there) there.circles.push(circle);
    else found.push({ plate, side, circles: [circle] });
  }
  return found;
}

function refusalOf({ head, divisions, turns }: TimedJob, plates: readonly Plate[]): string {
  const [away] = circlesThatServe(head.turns, divisions, plates);
  if (away) return `${divisions} divisions need ${whereOn(away.plate, away.side)}, which is not in the shop.`;
  return whyNoCircle(
    divisions,
    turns,
    plates.flatMap((plate) => plate.sides.flat()),
  ).says;
}

function says(jobs: readonly JobOnCircle[], mountings: JointChoice['mountings'], refused: JointChoice['refused']): string {
  const where = mountings.map(({ plate, side }) => {
    const on = jobs.filter((job) => job.plate === plate && job.side === side);
    return `${whereOn(plate, side)}: ${on.map(({ divisions, move }) => (move.spaces === 0 ? `${divisions} by whole turns` : `${divisions} on the ${move.circle} circle`)).join(', ')}`;
  });
  const reasons = refused.map((one) => one.says);
  if (mountings.length === 0) return reasons.join(' ');
  const stay = `${mountings.length === 1 ? 'All stay on one plate.' : `No single plate serves them all; fewest is ${mountings.length}, one after another.`} ${where.join('; ')}.`;
  const others = mountings.length === 1 && refused.length > 0 ? stay.replace('All stay', 'The others stay') : stay;
  return [...reasons, others].join(' ');
}

function checkJobs(jobs: readonly DividingJob[]): void {
  for (const { divisions, head } of jobs) {
    checkDivisions(divisions);
    checkHead(head);
  }
  if (jobs.length > 0 && jobs.length <= MOST_JOBS) return;
  throw new DomainError({
    given: `${jobs.length} parts were given to choose circles for.`,
    limit: `It may be from 1 to ${MOST_JOBS}.`,
    tryThis: 'Take the parts that are ready to be cut next.',
    about: ['jobs'],
  });
}
