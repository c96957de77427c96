import type { Caution } from '../figure/figure.ts';
import type { Gear, Pitch } from '../gears/gear.ts';
import type { Arbor, Cutter } from '../tooling/tooling.ts';
import type { Angle } from '../values/angle.ts';
import type { Length } from '../values/length.ts';
import type { ArborFit } from './arbor-fit.ts';
import type { Convention, ExactCount } from './ranges.ts';
import type { Verdict } from './verdict.ts';

/** What of a gear decides its cutter. The pitch of a helical gear is its normal pitch, the cutter's own. */
export type GearToCut = Pick<Gear, 'teeth' | 'pitch' | 'system' | 'helix'>;

/** What is asked: the gear, the cutters and arbors owned or lent to the shop, and the opinion on exact counts. */
export type CutterQuestion = {
  readonly gear: GearToCut;
  readonly cutters: readonly Cutter[];
  readonly arbors: readonly Arbor[];
  readonly convention: Convention;
};

/**
 * Error of form of one flank: sideways at the addendum, half way down and at the pitch line, and square to the flank at the tip corner.
 * Plus: metal off that should be there. Minus: metal left. square is null where the corner lies below the cutter's base circle.
 */
export type FormErrors = {
  readonly exact: ExactCount;
  readonly tip: Length;
  readonly half: Length;
  readonly pitchLine: Length;
  readonly square: Length | null;
};

/** A cutter that can do the work. troubles: what stands between it and cutting today (not here, blunt, no arbor); empty when ready. */
export type Candidate = {
  readonly cutter: Cutter;
  readonly error: FormErrors;
  readonly verdict: Verdict;
  readonly arbor: ArborFit;
  readonly troubles: readonly string[];
  readonly ready: boolean;
  readonly says: string;
};

/** A cutter that must not be used, with the reason and, where a form can be drawn, its error as the reason's size. */
export type Refused = {
  readonly cutter: Cutter;
  readonly reason: 'not written down' | 'wrong pitch' | 'wrong angle' | 'wrong form';
  readonly error: FormErrors | null;
  readonly says: string;
};

/** The cutter to look for. number and halfNumber are those of the usual inch sets, as words; the tooth range decides. */
export type Wanted = {
  readonly number: string | null;
  readonly halfNumber: string | null;
  readonly teethFrom: number;
  readonly teethTo: number | null;
  readonly teeth: number;
  readonly pitch: Pitch;
  readonly angle: Angle;
  readonly says: string;
};

/** One line of advice, best first. use: ready now. put right: the right cutter, once its trouble is cured. borrow: not owned. in a pinch: runs, with the error shown. */
export type Advice = {
  readonly do: 'use' | 'put right' | 'borrow' | 'in a pinch';
  readonly says: string;
  readonly tip: Length;
  readonly cutter: Cutter | null;
};

/** right: the best cutter of the right form, ready or not. wanted: set when no right cutter is here and sharp. */
export type CutterChoice = {
  readonly right: Candidate | null;
  readonly wanted: Wanted | null;
  readonly second: readonly Candidate[];
  readonly refused: readonly Refused[];
  readonly advice: readonly Advice[];
  readonly cautions: readonly Caution[];
};
