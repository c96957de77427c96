import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { exact } from '../gears/givens.ts';
import { type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { BURRS, MAKER } from './cautions.ts';
import { DIN_SOURCE, OLD_SOURCE } from './involute.data.ts';
import { dinShift, type InvoluteSpline } from './involute.formulas.ts';
import {
  ansiInside,
  checkedSpline,
  type NamedSpline,
  nameOfSpline,
  oldDepth,
  PRESSURE,
  sourceOfSpline,
  unitOfSpline,
} from './involute-spline.ts';
import { pinFigures } from './pins.sums.ts';
import { countGiven, splineLength } from './spline-figure.ts';

export type InvoluteAsked = {
  readonly named: NamedSpline;
  /** How much thinner the shaft's teeth are than the hub's spaces, along the pitch circle. */
  readonly thinner?: Length;
  /** Pins of another size than the usual ones. */
  readonly pinShaft?: Length;
  readonly pinHub?: Length;
};

/**
 * An involute spline of 30° by its standard: diameters of shaft and hub, tooth and space, and what the pins read on each.
 * Throws DomainError for a spline, a thinning or pins that cannot be. Example: ANSI, 20 teeth, 16/32, flat root: shaft outside 1.3125.
 */
export function involuteSpline(asked: InvoluteAsked): Answer {
  const { named } = asked;
  const spline = checkedSpline(named);
  const pins = pinFigures(asked, spline);
  return {
    figures: { ...pitchFigures(named, spline), ...diameters(named, spline), ...pins.figures },
    cautions: [...pins.cautions, ...standardCautions(named), { ...BURRS, about: 'shaftOutside' }, MAKER],
    says: `${nameOfSpline(named)}, 30°.`,
  };
}

/** The pitch as it stands in a formula: x ÷ P or x × m. */
function pitchTerm(named: NamedSpline): { readonly given: readonly Given[]; readonly of: (x: string) => string } {
  const given = (symbol: string, name: string, size: number): Given => ({ symbol, name, value: exact(size), from: 'typed' });
  if (named.standard === 'ANSI') return { given: [given('P', 'diametral pitch', named.P)], of: (x) => `${x} ÷ P` };
  if (named.standard !== 'old') return { given: [given('m', 'module', named.m)], of: (x) => `${x} × m` };
  return { given: [givenLength('D', 'outside', ofUnit(named.outside, 'in'), 'in', 'typed')], of: (x) => `${x} × D ÷ N` };
}

const teeth = (named: NamedSpline): Given => countGiven('N', 'teeth', named.teeth);

function pitchFigures(named: NamedSpline, { N, m, a }: InvoluteSpline): Record<string, Figure> {
  const [unit, source, pitch] = [unitOfSpline(named), sourceOfSpline(named), pitchTerm(named)];
  const isOld = named.standard === 'old';
  const angle: Given = { symbol: 'a', name: 'pressure angle', value: { angle: PRESSURE }, from: 'table' };
  const by = isOld ? 'D' : pitch.of('N');
  const given = isOld ? pitch.given : [teeth(named), ...pitch.given];
  return {
    pitchDiameter: splineLength(unit, { name: 'Pitch diameter', symbol: isOld ? 'd' : 'D', formula: by, source }, N * m, given),
    baseDiameter: splineLength(unit, { name: 'Base diameter', symbol: 'Db', formula: `${by} × cos(a)`, source }, N * m * Math.cos(a), [
      ...given,
      angle,
    ]),
  };
}

type Size = { readonly formula: string; readonly given: readonly Given[] };

const dinGivens = (named: NamedSpline & { standard: 'DIN' }, k: string): Size => ({
  formula: k,
  given: [
    givenLength('B', 'reference diameter', ofUnit(named.reference, 'mm'), 'mm', 'typed'),
    ...(k.includes('m') ? [{ symbol: 'm', name: 'module', value: exact(named.m), from: 'typed' } as const] : []),
  ],
});

/** (N + k)/P, (N − k) × m; with k printed as a number of the standard. */
function plain(named: NamedSpline, k: number): Size {
  const pitch = pitchTerm(named);
  const term = k < 0 ? `(N − ${Math.abs(k)})` : `(N + ${k})`;
  return { formula: pitch.of(term), given: [teeth(named), ...pitch.given] };
}

function oldInside(named: NamedSpline & { standard: 'old' }): Size {
  return { formula: `D − 2 × ${oldDepth(named.depth)} × D`, given: pitchTerm(named).given };
}

/** How each of the four diameters is reached in the words of its standard. */
function sizesBy(named: NamedSpline): Record<'shaftOutside' | 'shaftInside' | 'hubOutside' | 'hubInside', Size> {
  if (named.standard === 'DIN')
    return {
      shaftOutside: dinGivens(named, 'B − 0.2 × m'),
      shaftInside: dinGivens(named, 'B − 2.2 × m'),
      hubOutside: dinGivens(named, 'B'),
      hubInside: dinGivens(named, 'B − 2 × m'),
    };
  if (named.standard === 'old') {
    const outside: Size = { formula: 'D', given: pitchTerm(named).given };
    return { shaftOutside: outside, shaftInside: oldInside(named), hubOutside: outside, hubInside: oldInside(named) };
  }
  if (named.standard === 'ANSI')
    return {
      shaftOutside: plain(named, 1),
      shaftInside: plain(named, ansiInside(named.root, named.P)),
      hubOutside: plain(named, named.root === 'flat' ? 1.35 : 1.8),
      hubInside: plain(named, -1),
    };
  const k = named.root === 'flat' ? 1.5 : 1.8;
  return { shaftOutside: plain(named, 1), shaftInside: plain(named, -k), hubOutside: plain(named, k), hubInside: isoInside(named) };
}

function isoInside(named: NamedSpline): Size {
  const angle: Given = { symbol: 'a', name: 'pressure angle', value: { angle: PRESSURE }, from: 'table' };
  const formula = '2 × √((N × m × cos(a) ÷ 2)^2 + (N × m × sin(a) ÷ 2 − 0.6 × m ÷ sin(a))^2) + 0.2 × m';
  return { formula, given: [teeth(named), ...pitchTerm(named).given, angle] };
}

const NAMES = {
  shaftOutside: ['Shaft outside', 'Do'],
  shaftInside: ['Shaft inside, at most', 'Di'],
  hubOutside: ['Hub across its grooves, at least', 'Go'],
  hubInside: ['Hub across its tops', 'Gi'],
} as const;

function diameters(named: NamedSpline, spline: InvoluteSpline): Record<string, Figure> {
  const [unit, source, by] = [unitOfSpline(named), sourceOfSpline(named), sizesBy(named)];
  const numbers = {
    shaftOutside: spline.shaft.outside,
    shaftInside: spline.shaft.inside,
    hubOutside: spline.hub.outside,
    hubInside: spline.hub.inside,
  };
  const figure = (key: keyof typeof NAMES): Figure => {
    const [name, symbol] = NAMES[key];
    return splineLength(unit, { name, symbol, formula: by[key].formula, source }, numbers[key], by[key].given);
  };
  return {
    ...shiftFigure(named, unit),
    shaftOutside: figure('shaftOutside'),
    shaftInside: figure('shaftInside'),
    hubOutside: figure('hubOutside'),
    hubInside: figure('hubInside'),
  };
}

function shiftFigure(named: NamedSpline, unit: LengthUnit): Record<string, Figure> {
  if (named.standard !== 'DIN') return {};
  const given = [...dinGivens(named, 'm').given, teeth(named)];
  const said = { name: 'Shift that fits the reference diameter', symbol: 'V', formula: '(B − m × N − 1.1 × m) ÷ 2', source: DIN_SOURCE };
  return { shift: splineLength(unit, said, dinShift(named.reference, named.m, named.teeth), given) };
}

const caution = (name: string, says: string, about: string): Caution => ({ name, says, weight: 'beware', about });

function standardCautions(named: NamedSpline): readonly Caution[] {
  if (named.standard === 'ISO')
    return [
      caution('From memory', 'These proportions of ISO 4156 are recalled, not read: measure the mate before cutting.', 'shaftOutside'),
    ];
  if (named.standard === 'DIN')
    return [caution('From memory', 'The diameters of DIN 5480 are recalled, not read: measure the mate before cutting.', 'shaftOutside')];
  if (named.standard === 'old')
    return [
      caution(
        'One source',
        `Known from one printed page (${OLD_SOURCE}): it says nothing of room between shaft and hub. Measure the mate.`,
        'shaftOutside',
      ),
    ];
  return [];
}
