import { halfSpace } from '../cutters/form-error.formulas.ts';
import { type Convention, exactCountOf, wholeNumberFor } from '../cutters/ranges.ts';
import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { angleGivenOf, angleOf, countGiven, lengthOf, sizedGiven, type Told, told } from '../figure/told.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import { printLength, printShort } from '../values/print.ts';
import { backConeTeeth } from './bevel.formulas.ts';
import { type MilledBevel, roll, setOver, smallSpace } from './milled.formulas.ts';
import { type BevelPair, type Cones, checkedCones } from './pair.ts';

/** bottoms: whether the bottoms of the spaces run to the apex, or leave the same clearance all along (as milled bevels mostly do). */
type Bottoms = 'to the apex' | 'even clearance';
export type MilledAsked = BevelPair & {
  readonly bottoms: Bottoms;
  /** Thickness of the cutter at its pitch line, a dedendum of the large end from its tip, as measured. */
  readonly cutterThickness: Length;
  readonly convention: Convention;
  readonly headTurns: number;
};

export type MilledKey = 'cutter' | 'roll' | 'rollTurns' | 'setOver' | 'thickAtSmall' | 'smallSpace';
type Worked = {
  readonly asked: MilledAsked;
  readonly cones: Cones;
  readonly numbers: MilledBevel;
  readonly form: number;
  readonly number: string;
};

/** How much less deep below the pitch line the cutter reaches at the small end. */
const lessDeep = ({ A, B, Ao, F }: Cones, bottoms: Bottoms): number => ((bottoms === 'to the apex' ? B : A) * F) / Ao;

function cutterFor(cones: Cones, convention: Convention): { number: string; form: number } {
  const teeth = backConeTeeth(cones.N1, cones.g1);
  const found = wholeNumberFor(teeth);
  if (found) return { number: found.number, form: exactCountOf(found, convention).count };
  throw new DomainError({
    given: `A back cone of ${printShort(teeth, 1)} teeth.`,
    limit: 'The sets of form cutters end at 12 teeth.',
    tryThis: 'Take a wheel with more teeth, or have it planed.',
    about: ['teeth'],
  });
}

function worked(asked: MilledAsked): Worked {
  const cones = checkedCones(asked);
  const { number, form } = cutterFor(cones, asked.convention);
  const TL = inUnit(asked.cutterThickness, cones.unit);
  const space = { N: form, m: cones.m, a: cones.a };
  const TS = TL - 2 * (halfSpace(space, 0) - halfSpace(space, -lessDeep(cones, asked.bottoms)));
  const numbers = { p: Math.PI * cones.m, D: cones.N1 * cones.m, Ao: cones.Ao, F: cones.F, TL, TS };
  checkThickness(asked, cones, numbers);
  return { asked, cones, numbers, form, number };
}

function checkThickness({ cutterThickness }: MilledAsked, { unit }: Cones, { TL, TS, ...rest }: MilledBevel): void {
  const [most, least] = [TL - TS + smallSpace(rest), TL - TS + smallSpace(rest) / 3];
  if (TL <= most + 1e-9 && TL >= least) return;
  const at = (size: number): string => `${printLength(ofUnit(size, unit), { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;
  throw new DomainError({
    given: `A cutter ${printLength(cutterThickness, { unit, places: unit === 'in' ? 4 : 3 })} ${unit} thick at its pitch line.`,
    limit: `To pass the small end and still leave its sides to cut it is from ${at(least)} to ${at(most)} thick there.`,
    tryThis:
      'A cutter for spur wheels is too thick: bevel cutters of the same number are ground thinner. A narrower face takes a thicker one.',
    about: ['cutterThickness', 'face'],
  });
}

const SOURCE = 'US Navy, Machinery Repairman (14345), ch. 14, rolling the gear blank';
const DERIVED = 'derived: half the cutter, set over and rolled, reaches half the space at both ends of the face';

function givens({ cones, numbers, asked }: Worked): Readonly<Record<'p' | 'D' | 'Ao' | 'F' | 'TL' | 'TS', Given>> {
  const size = (symbol: string, name: string, x: number): Given => sizedGiven(symbol, name, x, cones.unit);
  return {
    p: size('p', 'circular pitch, large end', numbers.p),
    D: size('D', 'pitch diameter, large end', numbers.D),
    Ao: size('Ao', 'cone distance', numbers.Ao),
    F: size('F', 'face', numbers.F),
    TL: givenLength('TL', "cutter's thickness at its pitch line", asked.cutterThickness, cones.unit, 'measured'),
    TS: size('TS', "cutter's thickness at the small end's pitch line", numbers.TS),
  };
}

type Of = (about: Told, value: Value, given?: readonly Given[]) => Figure;
/** A work with what its figures are written by: its givens, and its unit. */
type Terms = Worked & { readonly by: ReturnType<typeof givens>; readonly of: Of; readonly length: (size: number) => Value };

const termsOf = (work: Worked): Terms => ({
  ...work,
  by: givens(work),
  of: (about, value, given = []) => told(work.cones.unit, about, value, given),
  length: (size) => lengthOf(size, work.cones.unit),
});

const setOverFigure = ({ numbers, by, of, length }: Terms): Figure =>
  of(
    {
      name: 'Set the cutter over',
      symbol: 'e',
      formula: 'TL ÷ 2 − Ao ÷ F × (TL − TS) ÷ 2',
      source: DERIVED,
      note: 'From the middle, once to each side. Roll the blank the same way, so that the cutter stands in the slot of the small end again: it now trims the far flank.',
    },
    length(setOver(numbers)),
    [by.TL, by.TS, by.Ao, by.F],
  );

function rollFigures({ numbers, asked, by, of }: Terms): Pick<Record<MilledKey, Figure>, 'roll' | 'rollTurns'> {
  const angle = roll(numbers);
  return {
    roll: of(
      { name: 'Roll the blank', symbol: 'r', formula: '(p ÷ 2 − Ao ÷ F × (TL − TS)) ÷ D × 180° ÷ π', source: SOURCE },
      angleOf(angle),
      [by.p, by.Ao, by.F, by.TL, by.TS, by.D],
    ),
    rollTurns: of(
      {
        name: 'Roll, turns of the crank',
        symbol: 'c',
        formula: 'r ÷ 360° × H',
        source: SOURCE,
        note: 'On the largest circle, to the nearest hole.',
      },
      { number: (angle / (2 * Math.PI)) * asked.headTurns, unit: 'turns', places: 4 },
      [angleGivenOf('r', 'roll', angle), countGiven('H', 'turns of the crank for one of the head', asked.headTurns)],
    ),
  };
}

const cutterFigure = ({ form, number, of }: Terms): Figure =>
  of(
    { name: 'Cutter of the set', symbol: '', formula: '', source: `range by the teeth of the back cone; form taken as exact for ${form}` },
    { words: `No. ${number}` },
  );

/** Cutter and space where they are narrowest. */
const smallEndFigures = ({ numbers, by, of, length }: Terms): Pick<Record<MilledKey, Figure>, 'thickAtSmall' | 'smallSpace'> => ({
  thickAtSmall: of(
    { name: 'Cutter is thick at the small end', symbol: 'TS', formula: '', source: "derived: the form at the small end's lesser depth" },
    length(numbers.TS),
  ),
  smallSpace: of(
    { name: 'Space at the small end', symbol: 's', formula: 'p × (Ao − F) ÷ (2 × Ao)', source: DERIVED },
    length(smallSpace(numbers)),
    [by.p, by.Ao, by.F],
  ),
});

function figures(work: Worked): Record<MilledKey, Figure> {
  const terms = termsOf(work);
  return { setOver: setOverFigure(terms), ...rollFigures(terms), cutter: cutterFigure(terms), ...smallEndFigures(terms) };
}

/** Ordinates where a milled bevel departs: what is left for the file above the pitch line of the small end. */
function fileTable({ cones, form, asked }: Worked): AnswerTable {
  const m = (cones.m * (cones.Ao - cones.F)) / cones.Ao;
  const right = { N: backConeTeeth(cones.N1, cones.g1), m, a: cones.a };
  const cut = { N: form, m: cones.m, a: cones.a };
  const sunk = lessDeep(cones, asked.bottoms);
  const [r0, c0] = [halfSpace(right, 0), halfSpace(cut, -sunk)];
  const rows = [1, 0.5].map((share) => {
    const h = (cones.A * (cones.Ao - cones.F) * share) / cones.Ao;
    const left = halfSpace(right, h) - r0 - (halfSpace(cut, h - sunk) - c0);
    return [share === 1 ? 'at the tip' : 'half way up', { length: ofUnit(left, cones.unit) }] as const;
  });
  return { title: 'Metal left on each flank of the small end, for the file', unit: cones.unit, heads: ['Where', 'Left'], rows };
}

const CAUTIONS: readonly Caution[] = [
  {
    name: 'Two trial teeth',
    says: 'Cut two neighbouring teeth, measure both ends at the pitch line, and correct roll and set-over before going on.',
    weight: 'note',
  },
  {
    name: 'A milled bevel',
    says: 'One form cannot fit both ends: the small end is filed above its pitch line, and the pair is for slow work.',
    weight: 'beware',
  },
];

/**
 * Cutter, roll and set-over for milling a straight bevel wheel with a bevel form cutter.
 * Throws DomainError for a pair that cannot be and a cutter that cannot pass the small end.
 */
export function milledBevel(asked: MilledAsked): Answer<MilledKey> {
  const work = worked(asked);
  return { figures: figures(work), cautions: CAUTIONS, tables: [fileTable(work)] };
}
