import { type LeadMachine, leadOfTrain, targetForLead } from '../../lib/leads/lead-trains.ts';
import { nearestTrains, type WheelsInTrain } from '../../lib/trains/nearest.ts';
import { readWanted, trainFor, type Wanted } from '../../lib/trains/wanted.ts';
import { type Ratio, toNumber } from '../../lib/values/ratio.ts';
import type { Case } from './case.ts';

type Told = Pick<Case, 'given' | 'expected' | 'catches' | 'actual'> & Partial<Pick<Case, 'tolerance' | 'unit' | 'table' | 'kind'>>;

/** Cases of one source. */
export const casesOf =
  (topic: string, source: string) =>
  (told: readonly Told[]): Case[] =>
    told.map((one) => ({ topic, source, kind: 'published', tolerance: 0.001, unit: '', ...one }));

export function wantedOf(text: string): Wanted {
  const found = readWanted(text);
  if (!found.ok) throw new Error(found.problem);
  return found.value;
}

export const screwOf = (text: string): Ratio => wantedOf(text).size;
const same = (one: readonly number[], other: readonly number[]): boolean =>
  [...one].sort((a, b) => a - b).join(' ') === [...other].sort((a, b) => a - b).join(' ');

/** Every wheel from one number to another by steps. */
export const by = (step: number, from: number, to: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, k) => from + step * k);

/**
 * What the printed train cuts, inches to a turn, if the search finds that train among the nearest to what is wanted; −1 if it does not.
 * The drawer is that of the source, or the train's own wheels.
 */
export function cutsIfFound(
  want: string,
  screw: string,
  drivers: readonly number[],
  driven: readonly number[],
  drawer: readonly number[] = [...drivers, ...driven],
): number {
  const target = trainFor(wantedOf(want), screwOf(screw));
  const found = nearestTrains({ wheels: drawer, target, wheelsInTrain: (2 * drivers.length) as WheelsInTrain }).find(({ trains }) =>
    trains.some((train) => same(train.drivers, drivers) && same(train.driven, driven)),
  );
  return found ? toNumber(found.ratio) * toNumber(screwOf(screw)) : -1;
}

/** The same as turns to the inch. */
export const tpiIfFound = (...asked: Parameters<typeof cutsIfFound>): number => 1 / cutsIfFound(...asked);
export const mmIfFound = (...asked: Parameters<typeof cutsIfFound>): number => 25.4 * cutsIfFound(...asked);

/** Error of a found train in parts of a million, cut less wanted. */
export function millionthsIfFound(want: string, screw: string, drivers: readonly number[], driven: readonly number[]): number {
  const target = trainFor(wantedOf(want), screwOf(screw));
  const [found] = nearestTrains({
    wheels: [...drivers, ...driven],
    target,
    wheelsInTrain: (2 * drivers.length) as WheelsInTrain,
    ratios: 200,
  }).filter(({ trains }) => trains.some((train) => same(train.drivers, drivers) && same(train.driven, driven)));
  return found ? found.error * 1e6 : Number.NaN;
}

/** Lead in inches of the printed wheels, if the search finds them among the nearest to the lead wanted; −1 if not. */
export function leadIfFound(
  want: string,
  machine: LeadMachine,
  drivers: readonly number[],
  driven: readonly number[],
  drawer: readonly number[] = [...drivers, ...driven],
): number {
  const near = nearestTrains({
    wheels: drawer,
    target: targetForLead(wantedOf(want), machine),
    wheelsInTrain: (2 * drivers.length) as WheelsInTrain,
  });
  const found = near.find(({ trains }) => trains.some((train) => same(train.drivers, drivers) && same(train.driven, driven)));
  return found ? toNumber(leadOfTrain(found.ratio, machine)) : -1;
}
