import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { moduleOf } from '../gears/tooth.ts';
import { offerFeed, roughingRounds } from '../speeds/feed.ts';
import { offerSpeed } from '../speeds/speed.sums.ts';
import { timeOfGear } from '../speeds/times.sums.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedFigure } from './operation.ts';
import { lengthRead, type Standing } from './readings.ts';
import { notKnown } from './written.ts';

/** Roughing rounds of this gear, by its pitch as teeth to the inch of pitch diameter. */
export const roundsOf = ({ gear, unit, material }: Job): number =>
  roughingRounds(1 / inUnit(ofUnit(moduleOf(gear.pitch), unit), 'in'), material);

export type MillSpeed = { readonly figures: Record<string, PlannedFigure>; readonly cautions: readonly Caution[] };

const UNKNOWN_STEEL: Caution = {
  name: 'Cutter steel not known',
  says: 'Nobody has said what steel the cutter is: it is run as carbon steel, which a high speed would spoil.',
  weight: 'note',
  about: 'speed',
};

const noDiameter = (job: Job): MillSpeed => ({
  figures: { speed: notKnown('Speed to set', 'no', 'measure the diameter of the cutter first', job.shopUnit) },
  cautions: [
    { name: 'No speed yet', says: 'The speed hangs on the diameter of the cutter: measure it.', weight: 'beware', about: 'speed' },
  ],
});

const feedOf = (job: Job): Figure => {
  const { mill } = job.shop;
  const feeds = mill?.feedsPer === 'minute' ? mill.feeds : [];
  return offerFeed({ material: job.material, kind: 'gear cutter', feeds, unit: job.shopUnit });
};

/** Speed and feed under the gear cutter, from what the mill has. */
export function millSpeed(job: Job): MillSpeed {
  const cutter = job.cutter.right?.cutter;
  if (!cutter?.diameter) return noDiameter(job);
  const { mill } = job.shop;
  const answer = offerSpeed({
    material: job.material,
    steel: cutter.steel,
    cut: 'form milling',
    diameter: cutter.diameter,
    machine: mill ?? { name: 'The mill', speedsRpm: [] },
    unit: job.shopUnit,
  });
  const { offeredSpeed, computedSpeed } = answer.figures;
  return {
    figures: { speed: offeredSpeed, speedWorkedOut: { ...computedSpeed, towards: 'speed' }, feed: feedOf(job) },
    cautions: [...answer.cautions, ...(cutter.steel === 'unknown' ? [UNKNOWN_STEEL] : [])],
  };
}

type Times = Answer<'approach' | 'travel' | 'cutTime' | 'cutting' | 'gearTime'>;

/** What is cut, how deep, and how often round. */
export type Rounds = { readonly operation: 'rough' | 'finish'; readonly depth: Length; readonly rounds: number };

/** The feed that stands: typed over or measured at this operation, else the one that the mill offers; null when it has none. */
function feedStanding(job: Job, operation: Rounds['operation']): Standing | null {
  const offered = feedOf(job).value;
  return lengthRead(job.readings, operation, 'feed') ?? ('length' in offered ? { length: offered.length, from: 'worked out' } : null);
}

/** The time of so many rounds; null while cutter or face is not known, or where the cutter is too small for such a depth. */
export function cuttingTime(job: Job, { operation, depth, rounds }: Rounds): Times | null {
  const [diameter, feed] = [job.cutter.right?.cutter.diameter ?? null, feedStanding(job, operation)];
  if (diameter === null || job.face === null || feed === null) return null;
  try {
    const sizes = {
      teeth: job.gear.teeth,
      face: job.face,
      cutterDiameter: diameter,
      depth,
      feedPerMinute: feed.length,
      feedFrom: feed.from,
    };
    return timeOfGear({ ...sizes, roughRounds: rounds - 1, unit: job.shopUnit });
  } catch (problem) {
    if (problem instanceof DomainError) return null;
    throw problem;
  }
}

/** Minutes of so many rounds: worked out, else by the tooth (judgement). */
export function cuttingMinutes(job: Job, cut: Rounds): number {
  const time = cuttingTime(job, cut)?.figures.gearTime.value;
  return time && 'number' in time ? time.number : job.gear.teeth * cut.rounds * MINUTES.tooth;
}
