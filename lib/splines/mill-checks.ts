import { checkHead, checkPlates } from '../dividing/check-dividing.ts';
import { circlesThatServe } from '../dividing/plain.formulas.ts';
import { DomainError } from '../figure/domain-error.ts';
import type { Head, Plate } from '../tooling/tooling.ts';
import { type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { type BottomCuts, bottomCuts } from './bottom-cuts.ts';
import { leavesFin, type ShaftToMill, widestForOneCut, widestForSides } from './mill.formulas.ts';

type Asked = {
  readonly head: Pick<Head, 'turns' | 'name'>;
  readonly plates: readonly Plate[];
  readonly circle?: number;
  readonly unit: LengthUnit;
};

/** The bottom cuts, once shaft, cutter and plates are found able. Throws DomainError that names what is not. */
export function checkedCuts(shaft: ShaftToMill, { head, plates, circle, unit }: Asked): BottomCuts {
  checkHead(head);
  checkPlates(plates);
  checkOutside(shaft, unit);
  checkCutter(shaft, unit);
  const here = plates.filter((plate) => plate.here);
  checkCircles(shaft.N, head.turns, here, circle);
  const cuts = bottomCuts(shaft, head.turns, here, circle);
  if (cuts && !leavesFin(shaft, cuts.turned)) return cuts;
  throw new DomainError({
    given: `A cutter ${text(shaft.c, unit)} wide.`,
    limit: 'It is too narrow: a fin of metal would be left in the spaces, or a dozen cuts would not cover one.',
    tryThis: `Take a wider one, up to ${text(widestCutter(shaft), unit)}.`,
    about: ['cutter'],
  });
}

const text = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(x, unit), { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

const widestCutter = (shaft: ShaftToMill): number => Math.min(widestForOneCut(shaft), widestForSides(shaft));

function checkOutside({ D, d }: ShaftToMill, unit: LengthUnit): void {
  if (D > d) return;
  throw new DomainError({
    given: `A shaft of ${text(D, unit)} as turned.`,
    limit: `It is not over its small diameter of ${text(d, unit)}: there would be no keys.`,
    tryThis: 'Measure the outside again, or turn a new blank.',
    about: ['turned'],
  });
}

function checkCutter(shaft: ShaftToMill, unit: LengthUnit): void {
  const most = widestCutter(shaft);
  if (shaft.c <= most) return;
  throw new DomainError({
    given: `A cutter ${text(shaft.c, unit)} wide.`,
    limit: `One over ${text(most, unit)} would cut into a key.`,
    tryThis: 'Take a narrower one.',
    about: ['cutter'],
  });
}

function checkCircles(N: number, R: number, here: readonly Plate[], circle?: number): void {
  const serving = circlesThatServe(R, 2 * N, here).map((one) => one.circle);
  if (circle === undefined ? serving.length > 0 : serving.includes(circle)) return;
  const which = [...new Set(serving)].sort((a, b) => a - b).join(', ');
  throw new DomainError({
    given: circle === undefined ? 'The plates as typed.' : `The ${circle} circle.`,
    limit: `${which === '' ? 'None of the circles turns' : `It does not turn`} half a space: ${2 * N} divisions${which === '' ? '' : `; these do: ${which}`}.`,
    tryThis: which === '' ? `Find a plate whose holes times ${R} divide by ${2 * N}.` : 'Take one of them.',
    about: [circle === undefined ? 'plates' : 'circle'],
  });
}
