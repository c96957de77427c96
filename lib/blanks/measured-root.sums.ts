import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution } from '../figure/figure.ts';
import type { Gear, ToothSystem } from '../gears/gear.ts';
import { outsideFromJaws, rootFromAcross, rootFromDepth, rootFromPins, rootFromWall } from '../gears/measured-root.formulas.ts';
import { TOOTH_SYSTEMS } from '../gears/systems.data.ts';
import { moduleOf, unitOfPitch } from '../gears/tooth.ts';
import { inUnit, type Length, type LengthUnit, nanometres, ofUnit, subtract } from '../values/length.ts';
import { inWords, outsideTerm, rootTerm, sizesOf } from './blank-sizes.ts';
import type { RootReading, SpareWheel } from './spare-wheel.ts';
import { join, lengthFigure, one, oneLength, type Term } from './term.ts';

/**
 * The old root diameter. usable: what of it is round with the bore (less the run-out of the roots, unless the walls were measured).
 * term and usableTerm: their formulas, in `unit`.
 */
export type OldRoot = {
  readonly root: Length;
  readonly usable: Length;
  readonly from: 'measured' | 'worked out';
  readonly unit: LengthUnit;
  readonly term: Term;
  readonly usableTerm: Term;
  readonly cautions: readonly Caution[];
};

/** 20 pitch: from here on finer, the fine-pitch systems are possible. */
const FINE_MODULE_IN = 1 / 20;

/** The deepest system that a wheel of this pitch and angle can have: what a root is worked out with when nobody measured it. */
export function deepestSystem(gear: Gear): ToothSystem {
  const unit = unitOfPitch(gear.pitch);
  const m = moduleOf(gear.pitch);
  const fine = inUnit(ofUnit(m, unit), 'in') <= FINE_MODULE_IN + 1e-9;
  const depth = (system: ToothSystem) => system.dedendum * m + inUnit(system.extra, unit);
  const same = TOOTH_SYSTEMS.map((named) => named.system).filter((system) => system.angle === gear.system.angle);
  const known = same.filter((system) => system.extra === 0 || fine);
  const deepest = known.reduce((most, system) => (depth(system) > depth(most) + 1e-12 ? system : most), gear.system);
  return known.length === 0 && deepest.dedendum < 1.25 ? { ...deepest, dedendum: 1.25, name: 'deepest likely' } : deepest;
}

const size = (symbol: string, name: string, length: Length, u: LengthUnit): Term => oneLength(symbol, name, length, u, 'measured');
const teeth = (gear: Gear): Term => one('No', 'teeth, old wheel', { count: gear.teeth }, 'typed');
const isOdd = (gear: Gear): boolean => gear.teeth % 2 === 1;

type Found = { readonly root: number; readonly term: Term; readonly says: string };

function fromAcross(gear: Gear, across: Length, u: LengthUnit): Found {
  const T = size('T', 'across the roots', across, u);
  const root = rootFromAcross(inUnit(across, u), gear.teeth);
  if (!isOdd(gear)) return { root, term: T, says: 'Measured across opposite roots.' };
  return { root, term: join`${T} ÷ cos(90° ÷ ${teeth(gear)})`, says: 'An odd count has no root opposite a root: corrected.' };
}

function fromPins(gear: Gear, over: Length, pin: Length, u: LengthUnit): Found {
  const [M, p] = [size('M', 'over pins', over, u), size('w', 'pin', pin, u)];
  const root = rootFromPins(inUnit(over, u), inUnit(pin, u), gear.teeth);
  const term = isOdd(gear) ? join`((${M} − ${p}) ÷ cos(90° ÷ ${teeth(gear)}) − ${p})` : join`(${M} − 2 × ${p})`;
  return { root, term, says: 'The pins must touch the bottoms, not rest on the flanks.' };
}

function trueOutside(gear: Gear, jaws: Length, u: LengthUnit): Found {
  const T = size('T', 'outside between flat jaws', jaws, u);
  const [least, greatest] = outsideFromJaws(inUnit(jaws, u), gear.teeth);
  if (!isOdd(gear)) return { root: least, term: T, says: 'Outside between flat jaws.' };
  const says = `Flat jaws on an odd count: the outside is from ${inWords(ofUnit(least, u), u)} to ${inWords(ofUnit(greatest, u), u)}; the least is taken.`;
  return { root: least, term: join`${T} ÷ cos(90° ÷ ${teeth(gear)})`, says };
}

function fromDepth(gear: Gear, jaws: Length, depth: Length, u: LengthUnit): Found {
  const outside = trueOutside(gear, jaws, u);
  const d = size('d', 'depth of a space', depth, u);
  return {
    root: rootFromDepth(outside.root, inUnit(depth, u)),
    term: join`(${outside.term} − 2 × ${d})`,
    says: `${outside.says} Worn tips make the root seem smaller, which is safe.`,
  };
}

/** The root by the reading; null when the reading says nothing of the root. */
function byReading(gear: Gear, reading: RootReading, u: LengthUnit): Found | null {
  if (reading.by === 'across roots') return fromAcross(gear, reading.across, u);
  if (reading.by === 'pin') return fromPins(gear, reading.over, reading.pin, u);
  if (reading.by === 'depth') return fromDepth(gear, reading.jaws, reading.depth, u);
  if (reading.by === 'jaws') return null;
  const root = rootFromWall(inUnit(reading.wall, u), inUnit(reading.bore, u));
  const term = join`2 × (${size('w', 'least wall of six', reading.wall, u)} + ${size('b', 'measured bore', reading.bore, u)} ÷ 2)`;
  return { root, term, says: 'From the least wall between bore and root: true to the bore.' };
}

function workedOut(gear: Gear, reading: RootReading | null, u: LengthUnit): Found {
  const deep = { ...gear, system: deepestSystem(gear) };
  const nominal = sizesOf(deep);
  const plain = { root: inUnit(nominal.root, u), term: rootTerm(deep, 'old', u), says: `Not measured: worked out as ${deep.system.name}.` };
  if (reading?.by !== 'jaws') return plain;
  const outside = trueOutside(gear, reading.jaws, u);
  const lost = inUnit(subtract(sizesOf(gear).outside, ofUnit(outside.root, u)), u);
  if (lost <= 0) return plain;
  const term = join`(${plain.term} − (${outsideTerm(gear, 'old', u)} − ${outside.term}))`;
  return { root: plain.root - lost, term, says: `${plain.says} ${outside.says} It is under size, and the root is taken as much smaller.` };
}

function sensible(root: Length, spare: SpareWheel, u: LengthUnit): void {
  const nominal = sizesOf(spare.gear);
  if (root > 0 && root < nominal.outside) return;
  throw new DomainError({
    given: `${spare.name}: the readings make its root ${inWords(root, u)}, and its outside is ${inWords(nominal.outside, u)}.`,
    limit: 'The root lies between nothing and the outside.',
    tryThis: 'Count the teeth again, and look at pitch and readings.',
    about: ['reading'],
  });
}

const note = (name: string, says: string, weight: Caution['weight']): Caution => ({ name, says, weight, about: 'oldRoot' });

/** Corrected as if both ends of the reading lay in one plane across the axis. */
const ONE_PLANE = note(
  'Odd and helical',
  'Holds for points or balls in one plane across the axis. Flat jaws, or pins laid along the spaces, read larger: measure the wall instead.',
  'beware',
);

function cautionsOf(spare: SpareWheel, found: Found, measured: boolean, root: Length, u: LengthUnit): Caution[] {
  const far = Math.abs(root - sizesOf(spare.gear).root) > 0.15 * sizesOf(spare.gear).depth;
  const runOut = measured && spare.reading?.by !== 'wall' && spare.runOut === null;
  return [
    ...(measured && isOdd(spare.gear) && spare.gear.helix && spare.reading?.by !== 'wall' ? [ONE_PLANE] : []),
    note('Old root', found.says, measured ? 'note' : 'beware'),
    ...(measured ? [] : [note('Measure first', 'Measure the wall from bore to root in six places before turning.', 'beware')]),
    ...(runOut ? [note('Run-out', 'Try the old roots against the bore: a diameter alone does not show run-out.', 'beware')] : []),
    ...(far
      ? [note('Not as expected', `By pitch and system the root would be ${inWords(sizesOf(spare.gear).root, u)}: look again.`, 'beware')]
      : []),
  ];
}

/** The old root of a spare from what was measured, or worked out. unit: wanted wheel's. Throws DomainError when readings and count disagree. */
export function oldRoot(spare: SpareWheel, unit: LengthUnit = unitOfPitch(spare.gear.pitch)): OldRoot {
  const read = spare.reading ? byReading(spare.gear, spare.reading, unit) : null;
  const found = read ?? workedOut(spare.gear, spare.reading, unit);
  const root = ofUnit(found.root, unit);
  sensible(root, spare, unit);
  const t = spare.reading?.by === 'wall' || spare.runOut === null ? null : spare.runOut;
  const term = found.term;
  return {
    root,
    usable: t === null ? root : nanometres(root - t),
    from: read ? 'measured' : 'worked out',
    unit,
    term,
    usableTerm: t === null ? term : join`(${term} − ${size('t', 'run-out of the old roots, full reading', t, unit)})`,
    cautions: cautionsOf(spare, found, read !== null, root, unit),
  };
}

const GEOMETRY = 'derived: geometry of equal spaces';

/** The old root as a sum: the diameter, and what of it is true to the bore. */
export function measuredRoot(spare: SpareWheel): Answer<'oldRoot' | 'usable'> {
  const old = oldRoot(spare);
  const source = old.from === 'measured' ? GEOMETRY : 'derived: from teeth, pitch and the deepest system of this angle';
  const root = lengthFigure({ name: `Old root, ${old.from}`, symbol: 'Dr', source }, old.root, old.unit, old.term);
  const usable = lengthFigure({ name: 'True to the bore', symbol: 'Du', source }, old.usable, old.unit, old.usableTerm);
  return { figures: { oldRoot: root, usable }, cautions: old.cautions };
}
