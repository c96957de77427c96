import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { exact } from '../gears/givens.ts';
import { inUnit, toInches } from '../values/length.ts';
import { BURRS, MAKER } from './cautions.ts';
import { countGiven, splineFigure, splineLength } from './spline-figure.ts';
import { HOLE_UNDER } from './straight.data.ts';
import { torquePerInch } from './straight.formulas.ts';
import type { StandardStraight } from './straight-choice.ts';

const PRESSURE = 1000;

/**
 * Sizes of a standard straight-sided spline, and what its keys carry. The sizes are those of the hub: the shaft is made to them with room.
 * Example: inch, six splines, slides without load, 1.250: small diameter 1.0625, width 0.3125, depth 0.0938.
 */
export function straightSpline(spline: StandardStraight): Answer {
  const { unit, source, outside, inside, name } = spline;
  const sides = { D: givenLength('D', 'outside', outside, unit, 'typed'), d: givenLength('d', 'small diameter', inside, unit, 'table') };
  return {
    figures: {
      ...nominal(spline, sides.D),
      depth: splineLength(
        unit,
        { name: 'Height of a key', symbol: 'h', formula: '(D − d) ÷ 2', source },
        (inUnit(outside, unit) - inUnit(inside, unit)) / 2,
        [sides.D, sides.d],
      ),
      torque: torqueFigure(spline),
    },
    cautions: [...memory(source), { ...BURRS, about: 'width' }, MAKER],
    says: `${name}: sizes of the hub; the shaft is made to the hub that is there, with room where it does not locate.`,
  };
}

function nominal({ unit, source, outside, inside, width, fractions, kind }: StandardStraight, D: Given): Record<string, Figure> {
  const part = (symbol: string, name: string, x: number): Given => ({ symbol, name, value: exact(x), from: 'table', where: source });
  const limits = (size: typeof outside, under: number) =>
    kind === 'inch' ? { limits: [{ length: inchesLess(size, under) }, { length: size }] as const } : {};
  const sized = (name: string, symbol: string, by: string, k: number | undefined, size: typeof outside, under: number): Figure => ({
    ...splineLength(
      unit,
      { name, symbol, formula: k === undefined ? '' : `${by} × D`, source },
      inUnit(size, unit),
      k === undefined ? [] : [part(by, `${name.toLowerCase()}, of the outside`, k), D],
    ),
    ...limits(size, under),
  });
  return {
    outside: {
      ...splineLength(unit, { name: 'Outside', symbol: 'D', formula: '', source }, inUnit(outside, unit), []),
      ...limits(outside, HOLE_UNDER.outside),
    },
    inside: sized('Small diameter', 'd', 'k', fractions?.d, inside, HOLE_UNDER.inside),
    width: sized('Width of a key', 'w', 'k', fractions?.w, width, HOLE_UNDER.width),
  };
}

const inchesLess = <T extends number>(size: T, under: number): T => (size - Math.round(under * 25_400_000)) as T;

const RULE = 'SAE J499a, equation 1: pressure × splines × mean radius × height, for each inch of bearing';

function torqueFigure({ splines, outside, inside }: StandardStraight): Figure {
  const T = torquePerInch(PRESSURE, splines, toInches(outside), toInches(inside));
  const said = { name: 'Carries at 1000 lb/in² on the sides', symbol: 'T', formula: 'p × N × (D − d) ÷ 2 × (D + d) ÷ 4', source: RULE };
  return {
    ...splineFigure('in', said, { number: T, unit: 'in lb for each inch of length', places: 0 }, [
      { symbol: 'p', name: 'pressure, lb/in²', value: { number: PRESSURE, unit: 'lb/in²', places: 0 }, from: 'table' },
      countGiven('N', 'splines', splines),
      givenLength('D', 'outside', outside, 'in', 'table'),
      givenLength('d', 'small diameter', inside, 'in', 'table'),
    ]),
    note: 'As if all keys bore alike; new ones seldom do.',
  };
}

const memory = (source: string): readonly Caution[] =>
  source.includes('memory')
    ? [
        {
          name: 'From memory',
          says: 'These sizes are recalled, not read in the standard: measure the mate.',
          weight: 'beware',
          about: 'inside',
        },
      ]
    : [];
