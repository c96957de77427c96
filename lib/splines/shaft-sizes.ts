import { DomainError } from '../figure/domain-error.ts';
import type { Figure } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inches, inUnit, type Length, type LengthUnit, subtract } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { splineLength } from './spline-figure.ts';
import { gapHalfAngle } from './straight.formulas.ts';

/** A straight-sided bore as measured: across the bottoms of its grooves, across its tops, width of a groove. */
export type StraightBore = { readonly splines: number; readonly outside: Length; readonly inside: Length; readonly width: Length };

export const LOCATING = ['outside and sides', 'sides', 'outside', 'bottom'] as const;
export type Locating = (typeof LOCATING)[number];

/** How much smaller the shaft is than the bore at each surface; on the diameter or the width. null: the usual one for this way of locating. */
export type Clearances = { readonly outside: Length | null; readonly sides: Length | null; readonly bottom: Length | null };

/** What locates gets little room, what does not gets plenty (judgement). Inches. */
const [CLOSE, CLOSE_SIDES, ROOM, ROOM_SIDES] = [0.001, 0.0005, 0.005, 0.004];

function usualClearances(locates: Locating): { readonly outside: Length; readonly sides: Length; readonly bottom: Length } {
  return {
    outside: inches(locates.includes('outside') ? CLOSE : ROOM),
    sides: inches(locates.includes('sides') ? CLOSE_SIDES : ROOM_SIDES),
    bottom: inches(locates === 'bottom' ? CLOSE : ROOM),
  };
}

const RULE = 'derived: the bore as measured less the clearance chosen; usual clearances are judgement';

export type ShaftSizes = { readonly outside: Figure; readonly key: Figure; readonly small: Figure };
export type PlainSizes = { readonly D: Length; readonly d: Length; readonly w: Length };

/** The shaft's sizes from the bore it is to enter, and how each was reached. Throws DomainError where nothing sensible is left. */
export function shaftSizes(
  bore: StraightBore,
  locates: Locating,
  given: Clearances,
  unit: LengthUnit,
): PlainSizes & { figures: ShaftSizes } {
  checkBore(bore, unit);
  const usual = usualClearances(locates);
  const room = { outside: given.outside ?? usual.outside, sides: given.sides ?? usual.sides, bottom: given.bottom ?? usual.bottom };
  const sizes = {
    D: subtract(bore.outside, room.outside),
    d: subtract(bore.inside, room.bottom),
    w: subtract(bore.width, room.sides),
  };
  checkShaft(bore.splines, sizes, unit);
  const less = (
    name: string,
    symbol: string,
    from: readonly [string, string, Length],
    off: readonly [Length, boolean],
    size: Length,
  ): Figure =>
    splineLength(unit, { name, symbol, formula: `${from[0]} − k`, source: RULE }, inUnit(size, unit), [
      givenLength(from[0], from[1], from[2], unit, 'measured'),
      givenLength('k', 'clearance here', off[0], unit, off[1] ? 'typed' : 'guess'),
    ]);
  return {
    ...sizes,
    figures: {
      outside: less('Shaft outside', 'D', ['Do', 'bore across its grooves', bore.outside], [room.outside, given.outside !== null], sizes.D),
      key: less('Width of a key', 'w', ['W', 'width of a groove in the bore', bore.width], [room.sides, given.sides !== null], sizes.w),
      small: less('Shaft small diameter', 'd', ['Di', 'bore across its tops', bore.inside], [room.bottom, given.bottom !== null], sizes.d),
    },
  };
}

const said = (length: Length, unit: LengthUnit): string => `${printLength(length, { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

/** A bore whose grooves do not fit round its tops is no spline. */
export function checkBore({ splines, outside, inside, width }: StraightBore, unit: LengthUnit): void {
  if (!Number.isInteger(splines) || splines < 3 || splines > 60)
    throw new DomainError({
      given: `${splines} splines.`,
      limit: 'A splined bore has from 3 to 60 grooves.',
      tryThis: 'Count the grooves once round.',
      about: ['splines'],
    });
  if (inside >= outside)
    throw new DomainError({
      given: `Across the grooves ${said(outside, unit)}, across the tops ${said(inside, unit)}.`,
      limit: 'The grooves lie outside the tops: their diameter is the larger.',
      tryThis: 'Exchange the two, or measure again.',
      about: ['inside'],
    });
  checkWidth(splines, inUnit(inside, unit), inUnit(width, unit), unit);
}

function checkShaft(N: number, { D, d, w }: PlainSizes, unit: LengthUnit): void {
  if (d <= 0 || w <= 0 || d >= D)
    throw new DomainError({
      given: `With these clearances the shaft would be ${said(D, unit)} outside, ${said(d, unit)} at its bottoms, keys ${said(w, unit)} wide.`,
      limit: 'Outside stays over the bottoms, and all stay over nothing.',
      tryThis: 'Take smaller clearances.',
      about: ['bottom', 'sides', 'outsideRoom'],
    });
  checkWidth(N, inUnit(d, unit), inUnit(w, unit), unit);
}

function checkWidth(N: number, d: number, w: number, unit: LengthUnit): void {
  const most = d * Math.sin(Math.PI / N);
  if (w > 0 && w < most && gapHalfAngle(N, w, d) > 1e-6) return;
  throw new DomainError({
    given: `${N} keys ${printLength(lengthOf(w, unit), { unit, places: 4 })} ${unit} wide.`,
    limit: `On ${printLength(lengthOf(d, unit), { unit, places: 4 })} ${unit} they meet at ${printLength(lengthOf(most, unit), { unit, places: 4 })} ${unit}.`,
    tryThis: 'Measure one groove again, or count the splines again.',
    about: ['width'],
  });
}

const lengthOf = (x: number, unit: LengthUnit): Length => inches(unit === 'in' ? x : x / 25.4);
