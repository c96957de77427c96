import type { Caution, Figure, Value } from '../figure/figure.ts';
import { offerFeed } from '../speeds/feed.ts';
import { offerSpeed } from '../speeds/speed.sums.ts';
import type { Cut } from '../speeds/surface-speed.ts';
import { timeOfPass } from '../speeds/times.sums.ts';
import type { Chuck } from '../tooling/tooling.ts';
import type { Length } from '../values/length.ts';
import type { Job } from './job.ts';
import { MINUTES } from './minutes.data.ts';
import type { PlannedFigure } from './operation.ts';
import { readingAt } from './readings.ts';

/** operation: the key under which its speed and feed may have been typed over. passes: null where nobody can say. chuck: when the work is held in one. */
export type LatheCut = {
  readonly operation: string;
  readonly diameter: Length;
  readonly cut: Extract<Cut, 'turning' | 'interrupted turning'>;
  readonly finish?: boolean;
  readonly passes: number | null;
  readonly chuck?: Chuck | null;
};

export type LatheSpeed = {
  readonly figures: Record<string, PlannedFigure>;
  readonly cautions: readonly Caution[];
  readonly minutes: number;
};

/** A high-speed steel tool: what a home lathe is turned with (judgement). */
const TOOL = 'high-speed';

function minutesOf({ face, shopUnit: unit }: Job, passes: number | null, feed: Value, speed: Value): number {
  if (!('number' in speed && 'length' in feed) || !face || !passes) return MINUTES.turning;
  const asked = { length: face, feedPerTurn: feed.length, speedRpm: speed.number, passes, unit };
  const time = timeOfPass(asked).figures.allPasses.value;
  return 'number' in time ? time.number + MINUTES.mount : MINUTES.turning;
}

/** Speed and feed of one turning operation, from what the lathe has, with the time that it takes. */
export function latheSpeed(job: Job, asked: LatheCut): LatheSpeed {
  const { lathe } = job.shop;
  const answer = offerSpeed({
    material: job.material,
    steel: TOOL,
    cut: asked.cut,
    diameter: asked.diameter,
    machine: lathe ?? { name: 'The lathe', speedsRpm: [] },
    chuck: asked.chuck ?? null,
    unit: job.shopUnit,
  });
  const { computedSpeed, offeredSpeed, chuckLimit } = answer.figures;
  const kind = asked.finish ? 'lathe finish' : 'lathe rough';
  const feed = offerFeed({ material: job.material, kind, feeds: lathe?.feedsPer === 'turn' ? lathe.feeds : [], unit: job.shopUnit });
  const towards = 'speed';
  const limit = asked.chuck ? { chuckLimit: { ...chuckLimit, towards } } : {};
  const figures = { speed: offeredSpeed, speedWorkedOut: { ...computedSpeed, towards }, ...limit, feed };
  const stands = (key: string, figure: Figure): Value => readingAt(job.readings, asked.operation, key)?.value ?? figure.value;
  const minutes = minutesOf(job, asked.passes, stands('feed', feed), stands('speed', offeredSpeed));
  return { figures, cautions: answer.cautions, minutes };
}
