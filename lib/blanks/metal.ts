import type { Body } from '../gears/gear.ts';
import { type Length, type LengthUnit, nanometres } from '../values/length.ts';
import { type BlankSizes, inWords } from './blank-sizes.ts';
import { type Check, check } from './check.ts';
import { WALL_WANTED } from './judgements.data.ts';

/** A ring of metal between two diameters. */
export type Ring = { readonly inner: Length; readonly outer: Length };

/** The ring that has to be solid over the full new face: from 1.2 whole depths below the new root out to the new outside. */
export const newRing = ({ root, outside, depth }: BlankSizes): Ring => ({
  inner: nanometres(Math.max(0, root - 2 * WALL_WANTED * depth)),
  outer: outside,
});

const meets = (one: Ring, other: Ring): boolean => one.inner < other.outer && other.inner < one.outer;

const SIDE = { marked: 'on the marked side', other: 'on the plain side', both: 'on both sides' } as const;

/** What stands in the way of a ring, in words, one line each. */
function inTheWay(body: Body & { readonly known: true }, ring: Ring, unit: LengthUnit): string[] {
  const between = ({ inner, outer }: Ring) => `between ${inWords(inner, unit)} and ${inWords(outer, unit)}`;
  const recesses = body.recesses.filter((recess) => meets(recess, ring)).map((each) => `the recess ${between(each)} ${SIDE[each.side]}`);
  const openings = body.openings.filter((opening) => meets(opening, ring)).map((each) => `the ${each.what} ${between(each)}`);
  return [...recesses, ...openings];
}

/** Is the wheel solid where the ring will be? An unknown body is to be measured first; it is never a yes. */
export function metalCheck(body: Body, ring: Ring, unit: LengthUnit, what = 'new teeth'): Check {
  const zone = `from ${inWords(ring.inner, unit)} to ${inWords(ring.outer, unit)} across`;
  if (!body.known) return check('metal', 'measure first', `Measure web and recesses first: it has to be solid ${zone}.`);
  const found = inTheWay(body, ring, unit);
  if (found.length === 0) return check('metal', 'yes', `Solid ${zone}, where the ${what} will stand.`);
  return check('metal', 'no', `The ${what} would stand in ${found.join(' and in ')}; it has to be solid ${zone}.`);
}
