import type { Candidate } from './candidates.ts';
import { LISTED, RIVAL } from './judgements.data.ts';
import { type Misfit, misfits } from './misfit.ts';
import { type NearMiss, nearMissesOf } from './near-misses.ts';
import { type NextMeasurement, nextMeasurement } from './next-measurement.ts';
import type { KnownPitch } from './pitches.ts';
import { pooled } from './posterior.ts';
import { checkReadings, type MeasuredWheel, plain } from './readings.ts';
import { bestFit, type Fit, inQuestion, type PlainWheel, weigh } from './weigh.ts';

/** A candidate with how likely it is, and how the first wheel's readings fit it. */
export type Found = { readonly candidate: Candidate; readonly chance: number; readonly fit: Fit; readonly misfits: readonly Misfit[] };

/**
 * What a wheel may be. list: likeliest first; none: how likely that none fits; pitches: how likely each pitch is, whatever its teeth;
 * angles: each pressure angle in degrees; strangers: of each wheel, how likely it came from elsewhere; near: pitches that are taken for the leading ones.
 */
export type Identified = {
  readonly list: readonly Found[];
  readonly none: number;
  readonly pitches: readonly { readonly known: KnownPitch; readonly chance: number }[];
  readonly angles: readonly { readonly deg: number; readonly chance: number }[];
  readonly strangers: readonly number[];
  readonly next: NextMeasurement | null;
  readonly near: readonly NearMiss[];
};

type Ranked = readonly { readonly candidate: Candidate; readonly chance: number }[];

/** Chances summed over all that are alike, likeliest first. */
function gathered<K>(ranked: Ranked, by: (one: Candidate) => K): { readonly key: K; readonly chance: number }[] {
  const sums = new Map<K, number>();
  for (const { candidate, chance } of ranked) sums.set(by(candidate), (sums.get(by(candidate)) ?? 0) + chance);
  return [...sums].map(([key, chance]) => ({ key, chance })).sort((one, other) => other.chance - one.chance);
}

const degreesOf = ({ a }: Candidate): number => Math.round((a * 1800) / Math.PI) / 10;

const plainOf = ({ teeth, readings }: MeasuredWheel): PlainWheel => ({ teeth, readings: readings.map((one) => plain(one, teeth)) });

/** A pitch this likely is worth naming its near misses. */
const LEADING = 0.05;

/** Pairs about the pitches that lead, each once. */
function nearOf(pitches: Identified['pitches']): readonly NearMiss[] {
  const leading = pitches.filter(({ chance }, i) => i < 3 && chance > LEADING);
  return [...new Set(leading.flatMap(({ known }) => nearMissesOf(known)))];
}

/**
 * What the first of these wheels is; the others are taken to be of the same set. Throws DomainError for readings that make no sense.
 * Example: 22 teeth, outside 2.998, over 2 0.5835, over 3 0.9638 is 8 DP, 14½° full involute.
 */
export function identify(wheels: readonly MeasuredWheel[]): Identified {
  for (const wheel of wheels) checkReadings(wheel);
  const each = wheels.map(plainOf);
  const first = each[0];
  if (!first) throw new RangeError('no wheel');
  const candidates = inQuestion(first);
  const { posterior, strangers } = pooled(each.map((wheel) => weigh(wheel, candidates)));
  const { ranked, none } = posterior;
  const list = ranked
    .slice(0, LISTED)
    .filter(({ chance }, i) => i === 0 || chance > RIVAL / 10)
    .map(({ candidate, chance }) => {
      const fit = bestFit(candidate, first);
      return { candidate, chance, fit, misfits: misfits(candidate, fit, first.readings) };
    });
  const pitches = gathered(ranked, ({ known }) => known).map(({ key, chance }) => ({ known: key, chance }));
  return {
    list,
    none,
    pitches,
    angles: gathered(ranked, degreesOf).map(({ key, chance }) => ({ deg: key, chance })),
    strangers,
    next: nextMeasurement(
      first,
      list.filter(({ chance }) => chance > RIVAL),
    ),
    near: nearOf(pitches),
  };
}
