import { DomainError } from '../figure/domain-error.ts';
import { inUnit, type Length } from '../values/length.ts';
import { type Flanks, normalThickness } from './flanks.formulas.ts';

/** Backlash of this gear along its standard pitch circle, in its unit; 0 when none was typed. Throws DomainError unless from 0 to half the tooth. */
export function checkedThinning(flanks: Flanks, backlash?: Length): number {
  const b = backlash === undefined ? 0 : inUnit(backlash, flanks.unit);
  const most = normalThickness(flanks) / 2;
  if (b >= 0 && b < most) return b;
  throw new DomainError({
    given: 'A backlash of half the tooth or more.',
    limit: 'It is taken off the thickness of this gear alone and lies between nothing and half the tooth.',
    tryThis: 'A few thousandths of an inch are usual.',
    about: ['backlash'],
  });
}
