import type { Gear, Material } from '../gears/gear.ts';
import { type Length, type LengthUnit, nanometres } from '../values/length.ts';
import { type BlankSizes, inWords } from './blank-sizes.ts';
import { type Check, check } from './check.ts';
import { CASE_DEPTH, ONLY_JUST_SHARE, SAME_WITHIN } from './judgements.data.ts';
import type { OldRoot } from './measured-root.sums.ts';
import type { SpareWheel } from './spare-wheel.ts';

/** left: per side, what the clean-up leaves between old root and new outside. gaps: how deep the old gaps stay; 0 when none do. */
export type Room = { readonly left: Length; readonly gaps: Length };

export function roomOf(outside: Length, root: OldRoot, cleanUp: Length): Room {
  return {
    left: nanometres((root.usable - cleanUp - outside) / 2),
    gaps: nanometres(Math.max(0, (outside - root.usable) / 2)),
  };
}

export const isOnlyJust = (left: Length, depth: Length): boolean => left >= 0 && left < ONLY_JUST_SHARE * depth;

/** Does the new outside lie under the old roots? */
export function outsideCheck(sizes: BlankSizes, oldOutside: Length, root: OldRoot, cleanUp: Length, room: Room): Check {
  const { outside, depth, unit } = sizes;
  const says = (length: Length) => inWords(length, unit);
  const figures = `New outside ${says(outside)}; old roots ${root.from} ${says(root.root)}`;
  if (outside > oldOutside)
    return check('outside', 'no', `The spare is smaller: ${says(oldOutside)} over the tips, ${says(outside)} is wanted.`);
  if (room.gaps > 0) return check('outside', 'no', `${figures}: the old gaps would stay ${says(room.gaps)} deep under the new outside.`);
  const less = `less ${says(cleanUp)} to clean up`;
  if (room.left < 0)
    return check('outside', 'no', `${figures}: clear of them, but not with ${says(cleanUp)} to clean up; traces would stay.`);
  const left = `${figures}, ${less}: ${says(room.left)} left a side`;
  if (!isOnlyJust(room.left, depth)) return check('outside', 'yes', `${left}.`);
  return check('outside', 'beware', `${left}, under a fifth of the whole depth: only just.`);
}

/** As tried by file. The new outside must lie a case depth under the old roots, since the case follows them. */
export function hardnessCheck({ hardness, caseDepth }: SpareWheel, outside: Length, root: OldRoot, unit: LengthUnit): Check {
  if (hardness === 'file bites') return check('hardness', 'yes', 'A file bites.');
  if (hardness === 'not tried') return check('hardness', 'beware', 'Try a file on tip, root, web and bore first.');
  if (hardness === 'hard through') return check('hardness', 'no', 'Hard right through: it cannot be turned or cut.');
  const depth = caseDepth ?? CASE_DEPTH;
  const known = `${inWords(depth, unit)}${caseDepth === null ? ', a guess' : ''}`;
  const soft = nanometres(root.usable - 2 * depth);
  if (outside <= soft)
    return check('hardness', 'beware', `Case-hardened: the new outside lies under the case (${known}). Expect hard skin on web and bore.`);
  return check('hardness', 'no', `Case-hardened: soft only below ${inWords(soft, unit)}, a case of ${known} under the old roots.`);
}

export function faceCheck(wanted: Gear, spare: Gear, acceptNarrower: boolean, unit: LengthUnit): Check {
  if (wanted.face === null) return check('face', 'beware', 'Nobody has said how wide the wheel has to be: measure its neighbours.');
  if (spare.face === null) return check('face', 'measure first', 'Measure the face of the spare first.');
  const [is, want] = [inWords(spare.face, unit), inWords(wanted.face, unit)];
  if (Math.abs(spare.face - wanted.face) <= SAME_WITHIN) return check('face', 'yes', `Face ${is}, as wanted.`);
  if (spare.face > wanted.face) return check('face', 'yes', `Face ${is}: face it off to ${want}.`);
  return acceptNarrower
    ? check('face', 'beware', `Face ${is}, narrower than ${want}: accepted by the owner.`)
    : check('face', 'no', `Face ${is}, and ${want} is wanted.`);
}

const MATERIAL_SAYS: Readonly<Record<Material, string | null>> = {
  steel: null,
  bronze: null,
  brass: null,
  aluminium: 'Aluminium: soft for a change wheel under load.',
  'cast iron': 'Cast iron: cut dry, mask for dust.',
  phenolic: 'Phenolic: mask, no air line; old stuff may hold asbestos. No heat, no shrink fit.',
  zinc: 'Zinc: no heat, no shrink fit, not a hub.',
  unknown: 'Find out the material first: zinc and phenolic take no heat.',
};

export function materialCheck(material: Material): Check {
  const says = MATERIAL_SAYS[material];
  return says ? check('material', 'beware', says) : check('material', 'yes', `Of ${material}.`);
}
