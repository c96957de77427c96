import { DomainError } from '../figure/domain-error.ts';
import { inUnit, type Length } from '../values/length.ts';
import { printNumber } from '../values/print.ts';
import { outsideDiameter, type Tooth } from './tooth.ts';

/**
 * The outside as measured, or the nominal one when nobody measured, in the tooth's unit.
 * Throws DomainError when it is off by more than an addendum a side: that is another wheel, or a slip in the reading.
 */
export function checkedOutside(tooth: Tooth, measured?: Length): number {
  const nominal = outsideDiameter(tooth);
  if (measured === undefined) return nominal;
  const size = inUnit(measured, tooth.unit);
  if (Math.abs(size - nominal) <= 2 * tooth.A) return size;
  const says = (x: number): string => `${printNumber(x, tooth.unit === 'in' ? 4 : 3)} ${tooth.unit}`;
  throw new DomainError({
    given: `An outside of ${says(size)}.`,
    limit: `${tooth.N} teeth of this pitch have ${says(nominal)}; it may be off by one addendum a side.`,
    tryThis: 'Measure again, or look whether count and pitch are right.',
    about: ['measuredOutside'],
  });
}
