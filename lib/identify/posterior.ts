import { CANDIDATES, type Candidate } from './candidates.ts';
import { NONE_OFTEN, STRANGER_OFTEN } from './judgements.data.ts';
import { TEMPER } from './temper.data.ts';
import type { Weighed } from './weigh.ts';

/** How likely each candidate is, likeliest first, and that none fits; together 1. */
type Posterior = { readonly ranked: readonly { readonly candidate: Candidate; readonly chance: number }[]; readonly none: number };

/** The sum of numbers given by their logarithms, as a logarithm. */
function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs);
  if (!Number.isFinite(most)) return Number.NEGATIVE_INFINITY;
  return most + Math.log(logs.reduce((total, one) => total + Math.exp(one - most), 0));
}

type Terms = { readonly each: ReadonlyMap<Candidate, number>; readonly none: number };

const NONE_LOG = Math.log(NONE_OFTEN);
const START_LOG: ReadonlyMap<Candidate, number> = new Map(CANDIDATES.map((one) => [one, Math.log(one.often * (1 - NONE_OFTEN))]));

/** All wheels taken as of one pitch and system: logarithms, not yet made to sum to 1. */
function together(wheels: readonly Weighed[]): Terms {
  const first = wheels[0];
  if (!first) throw new RangeError('no wheel was weighed');
  const each = new Map<Candidate, number>();
  for (const candidate of first.logs.keys())
    each.set(
      candidate,
      wheels.reduce((total, { logs }) => total + (logs.get(candidate) ?? Number.NEGATIVE_INFINITY), START_LOG.get(candidate) ?? 0),
    );
  return { each, none: wheels.reduce((total, { none }) => total + none, NONE_LOG) };
}

const whole = ({ each, none }: Terms): number => logSum([...each.values(), none]);

/** Logarithms to chances: flattened by the temper that the bench bears out, then made to sum to 1. */
function settle({ each, none }: Terms): Posterior {
  const logs = [...each].map(([candidate, log]) => ({ candidate, log: log * TEMPER }));
  const all = logSum([...logs.map(({ log }) => log), none * TEMPER]);
  if (!Number.isFinite(all)) return { ranked: [], none: 1 };
  const ranked = logs
    .map(({ candidate, log }) => ({ candidate, chance: Math.exp(log - all) }))
    .sort((one, other) => other.chance - one.chance);
  return { ranked, none: Math.exp(none * TEMPER - all) };
}

/** Chances of two mixed, the first by a part and the second by the rest. */
function mixed(one: Posterior, part: number, other: Posterior): Posterior {
  const rest = new Map(other.ranked.map(({ candidate, chance }) => [candidate, chance]));
  const ranked = one.ranked.map(({ candidate, chance }) => ({
    candidate,
    chance: part * chance + (1 - part) * (rest.get(candidate) ?? 0),
  }));
  return { ranked: ranked.sort((a, b) => b.chance - a.chance), none: part * one.none + (1 - part) * other.none };
}

/** What the wheels of a set say together: chances for the first wheel, and how likely each of them is a stranger (one wheel alone: none is). */
export type Pooled = { readonly posterior: Posterior; readonly strangers: readonly number[] };

/**
 * Wheels of a set are taken as of one pitch and system, each worn by itself, but for a chance that one of them came from elsewhere.
 * A stranger is known by this: the readings are likelier with it taken by itself than with all taken as one.
 */
export function pooled(wheels: readonly Weighed[]): Pooled {
  const all = together(wheels);
  if (wheels.length < 2) return { posterior: settle(all), strangers: wheels.map(() => 0) };
  const apart = wheels.map((one, i) => {
    const rest = together(wheels.filter((_, j) => j !== i));
    return { alone: together([one]), rest };
  });
  const start = Math.log(1 - STRANGER_OFTEN);
  const logs = [
    start + whole(all),
    ...apart.map(({ alone, rest }) => Math.log(STRANGER_OFTEN / wheels.length) + whole(alone) + whole(rest)),
  ];
  const sum = logSum(logs);
  if (!Number.isFinite(sum)) return { posterior: settle(all), strangers: wheels.map(() => 0) };
  const strangers = logs.slice(1).map((log) => Math.exp(log - sum));
  return { posterior: firstOf(all, apart, strangers), strangers };
}

type Apart = { readonly alone: Terms; readonly rest: Terms };

/** The chances for the first wheel: with all; by itself where it is the stranger, or where one of two is; with the rest where another is. */
function firstOf(all: Terms, apart: readonly Apart[], strangers: readonly number[]): Posterior {
  let weight = 1 - strangers.reduce((total, one) => total + one, 0);
  let posterior = settle(all);
  const alone = apart[0]?.alone ?? all;
  apart.forEach(({ rest }, i) => {
    const chance = strangers[i] ?? 0;
    if (chance < 1e-6) return;
    const by = i === 0 || apart.length === 2 ? alone : rest;
    posterior = mixed(posterior, Math.max(0, weight) / (Math.max(0, weight) + chance), settle(by));
    weight += chance;
  });
  return posterior;
}
