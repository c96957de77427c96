import type { Gear } from '../gears/gear.ts';
import type { Length } from '../values/length.ts';
import { type BlankSizes, sizesOf } from './blank-sizes.ts';
import { type BoreWork, boreCheck } from './bore-check.ts';
import type { Check } from './check.ts';
import type { CleanUp } from './clean-up.ts';
import { CLEAN_UP } from './judgements.data.ts';
import { type OldRoot, oldRoot } from './measured-root.sums.ts';
import { metalCheck, newRing } from './metal.ts';
import { faceCheck, hardnessCheck, isOnlyJust, materialCheck, outsideCheck, type Room, roomOf } from './spare-checks.ts';
import type { SpareWheel } from './spare-wheel.ts';
import { leastWall, type Wall, wallCheck } from './wall.ts';

const VERDICTS = ['clean', 'only just', 'old gaps stay', 'refused', 'measure first'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** cleanUp: off the diameter, 0.010 in unless typed. acceptNarrower: the owner takes a narrower face. */
export type SpareAsked = {
  readonly wanted: Gear;
  readonly spare: SpareWheel;
  readonly cleanUp?: CleanUp;
  readonly acceptNarrower?: boolean;
};

/** A spare held against a wanted wheel: the verdict, each check in words, and the sizes behind them. */
export type Judged = {
  readonly verdict: Verdict;
  readonly says: string;
  readonly checks: readonly Check[];
  readonly room: Room;
  readonly sizes: BlankSizes;
  readonly oldOutside: Length;
  readonly root: OldRoot;
  readonly wall: Wall | null;
  readonly boreWork: BoreWork;
};

/** Whether a wheel may be made from it. */
export const makes = (verdict: Verdict): boolean => verdict === 'clean' || verdict === 'only just';

function verdictOf(checks: readonly Check[], room: Room, sizes: BlankSizes, oldOutside: Length): Verdict {
  const others = checks.filter((each) => each.about !== 'outside');
  if (others.some((each) => each.result === 'no') || sizes.outside > oldOutside) return 'refused';
  if (room.left < 0) return 'old gaps stay';
  if (others.some((each) => each.result === 'measure first')) return 'measure first';
  return isOnlyJust(room.left, sizes.depth) ? 'only just' : 'clean';
}

const OPENING: Readonly<Record<Verdict, string>> = {
  clean: 'Cleans up.',
  'only just': 'Only just cleans up.',
  'old gaps stay': 'The old gaps stay.',
  refused: 'Will not do.',
  'measure first': 'Not judged yet.',
};

/** The verdict with what decides it: the reasons against, else what has to be measured, else the room that is left. */
function sentence(verdict: Verdict, checks: readonly Check[]): string {
  const against = checks.filter((each) => each.result === 'no');
  const unknown = checks.filter((each) => each.result === 'measure first');
  const decides = against.length > 0 ? against : unknown.length > 0 ? unknown : checks.filter((each) => each.about === 'outside');
  return [OPENING[verdict], ...decides.map((each) => each.says)].join(' ');
}

/** Holds a spare against a wanted wheel. No working is built: the choice calls this for every pair. Throws DomainError on senseless readings. */
export function judgeSpare({ wanted, spare, cleanUp = CLEAN_UP, acceptNarrower = false }: SpareAsked): Judged {
  const sizes = sizesOf(wanted);
  const { unit } = sizes;
  const oldOutside = sizesOf(spare.gear).outside;
  const root = oldRoot(spare, unit);
  const room = roomOf(sizes.outside, root, cleanUp);
  const bore = boreCheck(wanted.bore, spare.gear.bore, unit);
  const wall = leastWall(wanted, spare.gear, sizes);
  const checks = [
    outsideCheck(sizes, oldOutside, root, cleanUp, room),
    metalCheck(spare.gear.body, newRing(sizes), unit),
    hardnessCheck(spare, sizes.outside, root, unit),
    bore.check,
    faceCheck(wanted, spare.gear, acceptNarrower, unit),
    wallCheck(wall, sizes),
    materialCheck(spare.material),
  ];
  const verdict = verdictOf(checks, room, sizes, oldOutside);
  return { verdict, says: sentence(verdict, checks), checks, room, sizes, oldOutside, root, wall, boreWork: bore.work };
}
