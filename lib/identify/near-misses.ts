import { NEAR_MISS } from './judgements.data.ts';
import { type KnownPitch, PITCHES } from './pitches.ts';

/** Two pitches that are taken for each other. apart: by which part of the finer one the coarser is larger. */
export type NearMiss = { readonly finer: KnownPitch; readonly coarser: KnownPitch; readonly apart: number };

/**
 * All pairs of the series whose modules differ by no more than the given part, worked out and never listed by hand.
 * Example: 5/16 in CP and 10 DP, 0.53 percent apart.
 */
export function nearMisses(within: number = NEAR_MISS): readonly NearMiss[] {
  return PITCHES.flatMap((finer, i) => {
    const rest = PITCHES.slice(i + 1);
    const far = rest.findIndex(({ m }) => m > finer.m * (1 + within));
    return rest.slice(0, far < 0 ? rest.length : far).map((coarser) => ({ finer, coarser, apart: coarser.m / finer.m - 1 }));
  });
}

const PAIRS = nearMisses();

/** The pairs in which a pitch stands. */
export const nearMissesOf = ({ m }: KnownPitch): readonly NearMiss[] =>
  PAIRS.filter(({ finer, coarser }) => finer.m === m || coarser.m === m);
