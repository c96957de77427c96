import type { Pitch, PitchKind } from '../gears/gear.ts';
import { moduleOf } from '../gears/tooth.ts';
import { ratio } from '../values/ratio.ts';
import { CP_SERIES, DP_SERIES, KIND_WEIGHT, MET_WEIGHT, type Met, MODULE_SERIES } from './series.data.ts';

/** A pitch of the series with its module in inches and how often it is met, of 1 in all. */
export type KnownPitch = { readonly pitch: Pitch; readonly m: number; readonly often: number };

const MM_PER_INCH = 25.4;
const SERIES = { DP: DP_SERIES, module: MODULE_SERIES, CP: CP_SERIES } as const;

/** Module in inches of any pitch. Example: module 2.5 gives 0.098425, 8 DP gives 0.125. */
const moduleInches = (pitch: Pitch): number => moduleOf(pitch) / (pitch.kind === 'module' ? MM_PER_INCH : 1);

function weighted(kind: PitchKind): KnownPitch[] {
  return (['usual', 'less', 'rare'] as const).flatMap((met: Met) =>
    SERIES[kind][met].map(([num, den]) => {
      const pitch: Pitch = { kind, size: ratio(num, den) };
      return { pitch, m: moduleInches(pitch), often: MET_WEIGHT[met] * KIND_WEIGHT[kind] };
    }),
  );
}

function shared(): readonly KnownPitch[] {
  const all = (['DP', 'module', 'CP'] as const).flatMap(weighted);
  const sum = all.reduce((total, { often }) => total + often, 0);
  return all.map((known) => ({ ...known, often: known.often / sum })).sort((one, other) => one.m - other.m);
}

/** Every pitch of the three series, finest first. */
export const PITCHES: readonly KnownPitch[] = shared();
