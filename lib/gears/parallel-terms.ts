import type { Figure, Given, Value } from '../figure/figure.ts';
import { radians } from '../values/angle.ts';
import { type LengthUnit, ofUnit } from '../values/length.ts';
import { atOf, type Flanks } from './flanks.formulas.ts';
import { addendumTerm, angleGiven, dedendumTerm, exact, extraTerm, pitchTerm, teethGiven } from './givens.ts';
import type { ParallelGear } from './parallel.ts';

/** Those of the numbers at hand whose symbols a formula uses. */
function usedIn(formula: string, at: readonly Given[]): readonly Given[] {
  const words = new Set(formula.match(/[A-Za-z][A-Za-z0-9]*/g));
  return at.filter(({ symbol }) => words.has(symbol));
}

export const workedAngle = (symbol: string, name: string, rad: number): Given => ({
  symbol,
  name,
  value: { angle: radians(rad) },
  from: 'worked out',
});
export const workedLength = (symbol: string, name: string, size: number, unit: LengthUnit): Given => ({
  symbol,
  name,
  value: { number: size, unit, places: 6 },
  from: 'worked out',
});
export const workedNumber = (symbol: string, name: string, x: number, places = 7): Given => ({
  symbol,
  name,
  value: { number: x, unit: '', places },
  from: 'worked out',
});

/** How a gear's sizes are written in a formula, and every number that such a formula may need. */
export type Terms = {
  readonly given: readonly Given[];
  /** x of the tooth system's own pitch, of the pitch in the plane of the wheel, and of that square to the teeth. */
  readonly of: (x: string) => string;
  readonly across: (x: string) => string;
  readonly square: (x: string) => string;
  readonly A: string;
  readonly B: string;
  /** ' + X' or nothing. */
  readonly plusX: string;
  readonly minusX: string;
  readonly plusE: string;
};

export function termsOf(gear: ParallelGear, flanks: Flanks): Terms {
  const [pitch, A, B, e] = [
    pitchTerm(gear.pitch),
    addendumTerm(gear.system),
    dedendumTerm(gear.system),
    extraTerm(gear.system, flanks.unit),
  ];
  const leans = gear.helix && flanks.psi > 0 ? gear.helix : null;
  const normal = gear.plane === 'normal';
  const helix: readonly Given[] = leans ? [{ symbol: 'H', name: 'helix angle', value: { angle: leans.angle }, from: 'typed' }] : [];
  const shift: Given = { symbol: 'X', name: 'shift, of 1/P or module', value: exact(gear.shift), from: 'typed' };
  return {
    given: [
      ...[teethGiven(gear), pitch.given, angleGiven(gear), ...helix, shift, ...A.given, ...B.given, ...(e?.given ?? [])],
      workedAngle('at', 'pressure angle in the plane of the wheel', atOf(flanks)),
      workedAngle('an', 'pressure angle square to the teeth', flanks.an),
    ],
    of: pitch.of,
    across: (x) => pitch.of(leans && normal ? `${x} ÷ cos(H)` : x),
    square: (x) => pitch.of(leans && !normal ? `${x} × cos(H)` : x),
    A: A.text,
    B: B.text,
    plusX: gear.shift === 0 ? '' : ' + X',
    minusX: gear.shift === 0 ? '' : ' − X',
    plusE: e ? ' + 2 × e' : '',
  };
}

export type Saying = {
  readonly name: string;
  readonly symbol: string;
  readonly formula: string;
  readonly source: string;
  readonly note?: string;
};

/** A figure of whatever kind, its givens picked from those at hand. */
export const told = (unit: LengthUnit, said: Saying, value: Value, at: readonly Given[], places?: number): Figure => ({
  ...said,
  value,
  unit,
  given: usedIn(said.formula, at),
  ...(places === undefined ? {} : { places }),
});

export const toldLength = (unit: LengthUnit, said: Saying, size: number, at: readonly Given[]): Figure =>
  told(unit, said, { length: ofUnit(size, unit) }, at);
export const toldAngle = (unit: LengthUnit, said: Saying, rad: number, at: readonly Given[]): Figure =>
  told(unit, said, { angle: radians(rad) }, at);
export const toldNumber = (unit: LengthUnit, said: Saying, x: number, at: readonly Given[], places = 3): Figure =>
  told(unit, said, { number: x, unit: '', places }, at);
