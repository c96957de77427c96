import { DomainError } from '../figure/domain-error.ts';
import { degrees, toRadians } from '../values/angle.ts';
import type { LengthUnit } from '../values/length.ts';
import {
  ANSI,
  ANSI_SOURCE,
  DIN_SHIFT,
  DIN_SOURCE,
  ISO,
  ISO_SOURCE,
  OLD_DEPTHS,
  OLD_SOURCE,
  type OldDepth,
  type Root,
} from './involute.data.ts';
import { beyond, dinShift, dinSizes, type InvoluteSpline, isoFormShaft, toothHalfAngle } from './involute.formulas.ts';

export const PRESSURE = degrees(30);
const a = toRadians(PRESSURE);

/** Which spline is meant: by its standard and what that standard names it by. Sizes are plain numbers in `unitOfSpline`. */
export type NamedSpline =
  | { readonly standard: 'ANSI'; readonly root: Root; readonly teeth: number; readonly P: number }
  | { readonly standard: 'ISO'; readonly root: Root; readonly teeth: number; readonly m: number }
  | { readonly standard: 'DIN'; readonly teeth: number; readonly m: number; readonly reference: number }
  | { readonly standard: 'old'; readonly depth: OldDepth; readonly teeth: number; readonly outside: number };

export const unitOfSpline = ({ standard }: NamedSpline): LengthUnit => (standard === 'ISO' || standard === 'DIN' ? 'mm' : 'in');

export const sourceOfSpline = ({ standard }: NamedSpline): string =>
  ({ ANSI: ANSI_SOURCE, ISO: ISO_SOURCE, DIN: DIN_SOURCE, old: OLD_SOURCE })[standard];

/** The depth of tooth of an old American spline as a fraction of its outside. */
export const oldDepth = (name: OldDepth): number => OLD_DEPTHS.find((depth) => depth.name === name)?.h ?? OLD_DEPTHS[0].h;

function ansi(root: Root, N: number, P: number): InvoluteSpline {
  const { shaftOutside, shaftInside, hubOutside } = ANSI[root];
  const m = 1 / P;
  return {
    N,
    m,
    a,
    t: (Math.PI * m) / 2,
    shaft: { outside: beyond(N, m, shaftOutside), inside: beyond(N, m, ansiInside(root, P) ?? shaftInside) },
    hub: { outside: beyond(N, m, hubOutside), inside: beyond(N, m, -1) },
  };
}

/** What stands for the shaft's inside in (N + k)/P at this pitch. */
export function ansiInside(root: Root, P: number): number {
  const { shaftInside, fine } = ANSI[root];
  return fine && P >= fine.from ? fine.shaftInside : shaftInside;
}

function iso(root: Root, N: number, m: number): InvoluteSpline {
  const { shaftOutside, shaftInside, hubOutside } = ISO[root];
  return {
    N,
    m,
    a,
    t: (Math.PI * m) / 2,
    shaft: { outside: beyond(N, m, shaftOutside), inside: beyond(N, m, shaftInside) },
    hub: { outside: beyond(N, m, hubOutside), inside: isoFormShaft(N, m, a) + 0.2 * m },
  };
}

/** Old American: the pitch circle is the outside diameter, tooth and space alike on it; the hub has the same nominal sizes. */
function old(N: number, D: number, depth: OldDepth): InvoluteSpline {
  const part = { outside: D, inside: D * (1 - 2 * oldDepth(depth)) };
  return { N, m: D / N, a, t: (Math.PI * D) / (2 * N), shaft: part, hub: part };
}

/** All sizes of a named spline, without a check: for searches. */
export function sizesOf(named: NamedSpline): InvoluteSpline {
  if (named.standard === 'ANSI') return ansi(named.root, named.teeth, named.P);
  if (named.standard === 'ISO') return iso(named.root, named.teeth, named.m);
  if (named.standard === 'DIN') return dinSizes(named.reference, named.m, named.teeth, a);
  return old(named.teeth, named.outside, named.depth);
}

const SHORT: Readonly<Record<NamedSpline['standard'], string>> = {
  ANSI: 'ANSI B92.1',
  ISO: 'ISO 4156',
  DIN: 'DIN 5480',
  old: 'Old American',
};

/** As it is spoken of: ANSI B92.1, 20 teeth, 16/32, flat root. */
export function nameOfSpline(named: NamedSpline): string {
  const start = `${SHORT[named.standard]}, ${named.teeth} teeth`;
  if (named.standard === 'ANSI') return `${start}, ${named.P}/${2 * named.P}, ${named.root} root`;
  if (named.standard === 'ISO') return `${start}, module ${named.m}, ${named.root} root`;
  if (named.standard === 'DIN') return `${start}, ${named.reference} × ${named.m}`;
  return `${start}, ${named.depth}`;
}

const [FEWEST, MOST] = [4, 200];

/** Whether the shift of a DIN 5480 spline is one that the series uses. */
export function usualShift(reference: number, m: number, teeth: number): boolean {
  const x = dinShift(reference, m, teeth) / m;
  return x >= DIN_SHIFT.least - 1e-9 && x <= DIN_SHIFT.most + 1e-9;
}

/** All sizes of a named spline. Throws DomainError for a count, pitch or diameter that makes no spline. */
export function checkedSpline(named: NamedSpline): InvoluteSpline {
  checkCount(named.teeth);
  if (named.standard === 'DIN') checkReference(named.reference, named.m, named.teeth);
  const spline = sizesOf(named);
  const ends = [spline.shaft, spline.hub].every(({ inside, outside }) => inside > 0 && outside > inside);
  if (ends && spline.t > 0 && toothHalfAngle(spline, spline.shaft.outside / 2) > 0) return spline;
  throw new DomainError({
    given: `${nameOfSpline(named)}.`,
    limit: 'With so few teeth, or so much shift, its teeth end in a point or have no inside diameter.',
    tryThis: 'Look at the count and the pitch again.',
    about: ['teeth', 'pitch', 'reference'],
  });
}

function checkCount(teeth: number): void {
  if (Number.isInteger(teeth) && teeth >= FEWEST && teeth <= MOST) return;
  throw new DomainError({
    given: `A spline of ${teeth} teeth.`,
    limit: `An involute spline here has from ${FEWEST} to ${MOST}.`,
    tryThis: 'Count them once round.',
    about: ['teeth'],
  });
}

function checkReference(reference: number, m: number, teeth: number): void {
  const x = dinShift(reference, m, teeth) / m;
  if (x >= -1 && x <= 1) return;
  const fits = Math.floor(reference / m - 1.1 + 1e-9);
  throw new DomainError({
    given: `Reference diameter ${reference} mm, module ${m}, ${teeth} teeth.`,
    limit: `The teeth would have to be shifted by ${x < 0 ? 'less than −1' : 'more than 1'} module to reach it.`,
    tryThis: fits >= FEWEST ? `About ${fits} teeth go with that diameter and module.` : 'Take a smaller module.',
    about: ['reference', 'teeth', 'pitch'],
  });
}
