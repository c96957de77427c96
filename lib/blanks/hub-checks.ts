import { SHRINK_METALS } from '../fits/shrink-materials.data.ts';
import type { Bore, Gear } from '../gears/gear.ts';
import { inUnit, type Length, nanometres, ofUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { type BlankSizes, inWords } from './blank-sizes.ts';
import { boreCheck } from './bore-check.ts';
import { type Check, check } from './check.ts';
import { type CleanUp, offHub } from './clean-up.ts';
import { WALL_WANTED } from './judgements.data.ts';
import type { OldRoot } from './measured-root.sums.ts';
import { metalCheck } from './metal.ts';
import { hubDiameter, ringUnderTeeth } from './ring-and-hub.formulas.ts';
import type { SpareWheel } from './spare-wheel.ts';
import { boreHole } from './wall.ts';

/** Steps to which a hub is turned: sixteenths of an inch, whole millimetres (judgement). */
export const HUB_STEPS = { in: 16, mm: 1 } as const;

/** The hub that suits: below the old roots (below the case, when case-hardened), and leaving the ring enough under its teeth. */
export function suitedHub(spare: SpareWheel, root: OldRoot, sizes: BlankSizes, cleanUp: CleanUp): Length {
  const u = (length: number) => inUnit(nanometres(length), sizes.unit);
  const { off } = offHub(spare, cleanUp);
  return ofUnit(Math.max(0, hubDiameter(u(root.usable), u(off), u(sizes.root), u(sizes.depth), HUB_STEPS[sizes.unit])), sizes.unit);
}

function hubMetal({ material }: SpareWheel): Check {
  if (material === 'unknown') return check('material', 'measure first', 'Find out what the hub is made of first.');
  return SHRINK_METALS[material]
    ? check('material', 'yes', `A hub of ${material}.`)
    : check('material', 'no', `Of ${material}: no heat, no shrink fit, not a hub.`);
}

function hubHardness({ hardness }: SpareWheel): Check {
  if (hardness === 'hard through') return check('hardness', 'no', 'Hard right through: it cannot be turned to a hub.');
  if (hardness === 'case hard')
    return check('hardness', 'beware', 'Case-hardened: the hub lies under the case. Expect hard skin on bore and web.');
  return hardness === 'not tried'
    ? check('hardness', 'beware', 'Try a file on tip, root, web and bore first.')
    : check('hardness', 'yes', 'A file bites.');
}

function hubSize(hub: Length, root: OldRoot, sizes: BlankSizes, cleanUp: Length): Check {
  const { unit } = sizes;
  const under = nanometres(ringUnderTeeth(sizes.root, hub));
  const depths = printNumber(under / sizes.depth, 2);
  const says = `Hub ${inWords(hub, unit)} under old roots of ${inWords(root.root, unit)}; ring ${inWords(under, unit)} under the new roots, ${depths} whole depths`;
  if (hub > root.usable - cleanUp) return check('outside', 'no', `${says}: the hub would carry traces of the old gaps.`);
  return under / sizes.depth >= WALL_WANTED
    ? check('outside', 'yes', `${says}.`)
    : check('outside', 'no', `${says}: too thin, ${WALL_WANTED} are wanted.`);
}

function hubWall(hub: Length, hole: Bore | null, { depth, unit }: BlankSizes): Check {
  if (hole === null) return check('wall', 'measure first', 'Measure the bore of the spare first.');
  const { reach, over } = boreHole(hole, 'spare', unit);
  const wall = nanometres(hub / 2 - reach);
  const says = `${inWords(wall, unit)} of hub round ${over}`;
  return wall >= WALL_WANTED * depth ? check('wall', 'yes', `${says}.`) : check('wall', 'no', `${says}: too thin to carry a ring.`);
}

/** Everything that is looked at before the middle of a spare carries a ring. */
export function hubChecks(wanted: Gear, spare: SpareWheel, root: OldRoot, sizes: BlankSizes, hub: Length, cleanUp: Length): Check[] {
  const { unit } = sizes;
  const ring = { inner: nanometres(Math.max(0, hub - 2 * WALL_WANTED * sizes.depth)), outer: hub };
  const face =
    wanted.face !== null && spare.gear.face !== null && spare.gear.face < wanted.face
      ? [
          check(
            'face',
            'beware',
            `Hub ${inWords(spare.gear.face, unit)} long: the ring of ${inWords(wanted.face, unit)} stands out over it.`,
          ),
        ]
      : [];
  return [
    hubSize(hub, root, sizes, cleanUp),
    metalCheck(spare.gear.body, ring, unit, 'ring’s seat'),
    hubHardness(spare),
    boreCheck(wanted.bore, spare.gear.bore, unit).check,
    hubWall(hub, spare.gear.bore, sizes),
    hubMetal(spare),
    ...face,
  ];
}
