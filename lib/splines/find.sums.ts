import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit, toInches } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { NO_GEAR_CUTTER } from './cautions.ts';
import { type Candidate, candidatesFor, fitsRead, type SplineRead } from './find.ts';
import { splineFigure, splineLength } from './spline-figure.ts';

const MOST_SHOWN = 6;
const DERIVED = 'derived: as read, less the standard';

/**
 * The nearest standard spline to three readings and a count, by how much each reading misses it, the ratios that tell, the next candidates;
 * or that none of these fits. Throws DomainError for readings that are no spline.
 * Example: bore 1.251, 1.063, 0.313, six: inch, slides without load, 1.250, off by 0.0010, 0.0005 and 0.0005.
 */
export function findSpline(read: SplineRead, unit: LengthUnit): Answer {
  checkRead(read, unit);
  const candidates = candidatesFor(read);
  const [best, next] = candidates;
  return {
    figures: { ...ratios(read, unit), ...(best ? bestFigures(read, best, unit) : {}) },
    cautions: cautionsFor(read, best, next),
    says: verdict(read, best, next),
    tables: [candidateTable(candidates.slice(0, MOST_SHOWN), unit)],
  };
}

/** The best candidate, when it is near enough. */
export function foundSpline(read: SplineRead): Candidate | null {
  const [best] = candidatesFor(read);
  return best && fitsRead(best) ? best : null;
}

const said = (length: Length, unit: LengthUnit): string => `${printLength(length, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

function checkRead({ splines, outside, inside, width }: SplineRead, unit: LengthUnit): void {
  if (!Number.isInteger(splines) || splines < 3 || splines > 200)
    throw new DomainError({
      given: `${splines} splines.`,
      limit: 'From 3 to 200 are looked for.',
      tryThis: 'Count them once round.',
      about: ['splines'],
    });
  if (!(inside > 0 && inside < outside))
    throw new DomainError({
      given: `Outside ${said(outside, unit)}, inside ${said(inside, unit)}.`,
      limit: 'The outside is the larger of the two.',
      tryThis: 'Exchange them, or measure again.',
      about: ['outside', 'inside'],
    });
  const most = inUnit(outside, unit) * Math.sin(Math.PI / splines);
  if (inUnit(width, unit) > 0 && inUnit(width, unit) < most) return;
  throw new DomainError({
    given: `${splines} times a width of ${said(width, unit)}.`,
    limit: `On ${said(outside, unit)} they would meet: no wider than ${said(ofUnit(most, unit), unit)}.`,
    tryThis: 'Measure the width again, or count again.',
    about: ['width', 'splines'],
  });
}

function ratios({ outside, inside, width }: SplineRead, unit: LengthUnit): Record<string, Figure> {
  const read = (symbol: string, name: string, size: Length): Given => givenLength(symbol, name, size, unit, 'measured');
  const [D, d, w] = [read('D', 'outside', outside), read('d', 'inside', inside), read('w', 'width', width)];
  const of = (name: string, symbol: string, formula: string, x: number, given: readonly Given[]): Figure =>
    splineFigure(unit, { name, symbol, formula, source: 'derived: of the readings' }, { number: x, unit: '', places: 3 }, given);
  return {
    insideRatio: of('Inside, of the outside', 'r', 'd ÷ D', inside / outside, [d, D]),
    widthRatio: of('Width, of the outside', 'v', 'w ÷ D', width / outside, [w, D]),
  };
}

const MISFITS = [
  ['outside', 'Outside', 'D'],
  ['inside', 'Inside', 'd'],
  ['width', 'Width', 'w'],
] as const;

function bestFigures(read: SplineRead, best: Candidate, unit: LengthUnit): Record<string, Figure> {
  const found = fitsRead(best);
  const words = found ? best.name : `none of these (nearest: ${best.name})`;
  const figures: Record<string, Figure> = {
    best: splineFigure(unit, { name: 'Nearest standard', symbol: 'n', formula: '', source: best.source }, { words }),
  };
  for (const [key, name, symbol] of MISFITS) {
    figures[key] = splineLength(
      unit,
      { name: `${name}, of the standard`, symbol, formula: '', source: best.source },
      inUnit(best[key], unit),
      [],
    );
    figures[`${key}Off`] = splineLength(
      unit,
      { name: `${name} misses it by`, symbol: `e${symbol}`, formula: `R − ${symbol}`, source: DERIVED },
      inUnit(best.misfits[key], unit),
      [
        givenLength('R', `${name.toLowerCase()} as read`, read[key], unit, 'measured'),
        givenLength(symbol, 'of the standard', best[key], unit, 'table'),
      ],
    );
  }
  return figures;
}

function verdict(read: SplineRead, best?: Candidate, next?: Candidate): string {
  if (!best || !fitsRead(best)) return 'None of these: make the new part to the one that is there, and measure each groove of it.';
  const doubt = next && fitsRead(next) ? ` ${next.name} lies as near as the readings can tell.` : '';
  const form = best.form === 'straight' ? 'Straight-sided' : 'Involute';
  const unseen =
    read.sides === 'not looked at'
      ? ' Nobody has said whether the sides are parallel: measure the width at the top and at the bottom.'
      : '';
  return `${form}: ${best.name}.${doubt}${unseen}`;
}

function cautionsFor({ sides }: SplineRead, best?: Candidate, next?: Candidate): readonly Caution[] {
  if (!best) return [];
  const near = next !== undefined && fitsRead(next) && fitsRead(best);
  const look: Caution = {
    name: 'Straight or involute',
    says: 'Straight sides are as far apart at the top as at the bottom; involute ones are not. Two readings of one groove settle it.',
    weight: 'beware',
    about: 'best',
  };
  const doubt: Caution = { name: 'Two that fit', says: separates(best, next), weight: 'beware', about: 'best' };
  const memory: Caution = {
    name: 'From memory',
    says: 'The sizes of this standard are recalled, not read.',
    weight: 'note',
    about: 'best',
  };
  return [
    ...(best.form === 'straight' && sides !== 'not looked at' ? [NO_GEAR_CUTTER] : []),
    ...(sides === 'not looked at' ? [look] : []),
    ...(near ? [doubt] : []),
    ...(best.source.includes('memory') ? [memory] : []),
    {
      name: 'Make it to the mate',
      says: 'The standard only names it: the new part is made to the gears that are there.',
      weight: 'note',
      about: 'best',
    },
  ];
}

/** Where two candidates differ most, and by how much. */
function separates(best: Candidate, next?: Candidate): string {
  if (!next) return '';
  const [key, name] = [...MISFITS].sort((a, b) => Math.abs(best[b[0]] - next[b[0]]) - Math.abs(best[a[0]] - next[a[0]]))[0] ?? MISFITS[0];
  const apart = printLength(Math.abs(best[key] - next[key]) as Length, { unit: 'in', places: 4 });
  return toInches(Math.abs(best[key] - next[key]) as Length) < 0.0005
    ? `They have the same sizes to half a thousandth: either name will do.`
    : `They differ most in the ${name.toLowerCase()}, by ${apart} in: measure that again in three places.`;
}

function candidateTable(candidates: readonly Candidate[], unit: LengthUnit): AnswerTable {
  const size = (length: Length) => ({ length });
  return {
    title: 'Nearest standards, and by how much each reading misses',
    unit,
    heads: ['standard', 'outside', 'misses', 'inside', 'misses', 'width', 'misses', 'fits'],
    rows: candidates.map((one) => [
      one.name,
      size(one.outside),
      size(one.misfits.outside),
      size(one.inside),
      size(one.misfits.inside),
      size(one.width),
      size(one.misfits.width),
      fitsRead(one) ? 'yes' : 'no',
    ]),
  };
}
