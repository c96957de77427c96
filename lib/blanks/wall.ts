import type { Body, Bore, Gear } from '../gears/gear.ts';
import { inUnit, type Length, type LengthUnit, nanometres, ofUnit } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { type BlankSizes, inWords } from './blank-sizes.ts';
import { type Check, check } from './check.ts';
import { WALL_LEAST, WALL_WANTED } from './judgements.data.ts';
import { oneLength, type Term } from './term.ts';
import { keywayCorner, wallOver } from './wall.formulas.ts';

/** The least metal under the new root, and over what. term: formula of the hole's radius. */
export type Wall = { readonly wall: Length; readonly over: string; readonly radius: Term };

type Hole = { readonly reach: Length; readonly over: string; readonly radius: Term };

/** As it stands on record: nobody says by what it was read. */
const size = (symbol: string, name: string, length: Length, unit: LengthUnit): Term => oneLength(symbol, name, length, unit, 'typed');

/** How far from the middle a bore reaches: with its keyway, or to the bottom of its splines. */
export function boreHole(bore: Bore, whose: string, unit: LengthUnit): Hole {
  const diameter = size('b', `bore of the ${whose}`, bore.diameter, unit);
  const round = { reach: nanometres(bore.diameter / 2), radius: { ...diameter, text: 'b ÷ 2' } };
  if (bore.form === 'plain') return { ...round, over: 'the bore' };
  if (bore.form === 'splined') return { ...round, over: 'the bottom of the splines' };
  const plain = (length: Length) => inUnit(length, 'mm');
  const [depth, width] = [size('t', 'keyway depth', bore.keyDepth, unit), size('w', 'keyway width', bore.keyWidth, unit)];
  const corner = keywayCorner(plain(bore.diameter), plain(bore.keyDepth), plain(bore.keyWidth));
  const radius = { text: '√((b ÷ 2 + t)^2 + (w ÷ 2)^2)', given: [...diameter.given, ...depth.given, ...width.given] };
  return { reach: ofUnit(corner, 'mm'), over: 'the corner of the keyway', radius };
}

/** Recesses and openings that end below the new root. */
function hollows(body: Body, root: Length, unit: LengthUnit): Hole[] {
  if (!body.known) return [];
  const named = [...body.recesses.map((each) => ({ ...each, what: 'recess' })), ...body.openings];
  return named
    .filter(({ outer }) => outer <= root)
    .map(({ outer, what }) => ({
      reach: nanometres(outer / 2),
      over: `the ${what}`,
      radius: { ...size('b', `outside of the ${what}`, outer, unit), text: 'b ÷ 2' },
    }));
}

/** The least wall of a wheel cut from `spare`, whichever bore is the larger; null while neither bore is known. */
export function leastWall(wanted: Gear, spare: Gear, sizes: BlankSizes): Wall | null {
  const bores = [
    wanted.bore ? boreHole(wanted.bore, 'new wheel', sizes.unit) : [],
    spare.bore ? boreHole(spare.bore, 'spare', sizes.unit) : [],
  ].flat();
  if (bores.length === 0) return null;
  const holes = [...bores, ...hollows(spare.body, sizes.root, sizes.unit)];
  const widest = holes.reduce((most, hole) => (hole.reach > most.reach ? hole : most));
  const wall = ofUnit(wallOver(inUnit(sizes.root, sizes.unit), inUnit(widest.reach, sizes.unit)), sizes.unit);
  return { wall, over: widest.over, radius: widest.radius };
}

/** Accepted from 1.2 whole depths, with a caution down to 1.0, refused below. */
export function wallCheck(wall: Wall | null, { depth, unit }: BlankSizes): Check {
  if (!wall) return check('wall', 'measure first', 'Measure the bore first: the wall under the new teeth hangs on it.');
  const depths = wall.wall / depth;
  const says = `${inWords(wall.wall, unit)} of metal between the new roots and ${wall.over}, ${printNumber(depths, 2)} whole depths`;
  if (depths >= WALL_WANTED) return check('wall', 'yes', `${says}.`);
  if (depths >= WALL_LEAST) return check('wall', 'beware', `${says}: thin, ${WALL_WANTED} are wanted.`);
  return check('wall', 'no', `${says}: too thin, at least ${printNumber(WALL_LEAST, 1)} is needed.`);
}
