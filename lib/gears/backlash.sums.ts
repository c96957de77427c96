import { DomainError } from '../figure/domain-error.ts';
import type { Answer } from '../figure/figure.ts';
import { inches, inUnit, type Length } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { deeperForBacklashFormed, deeperForBacklashGenerated, normalBacklash } from './depth.formulas.ts';
import { angleGiven, halfLashAngle, lengthGiven, pitchTerm, teethGiven } from './givens.ts';
import { circularThickness } from './spur.formulas.ts';
import type { Tooth } from './tooth.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { wheelFigure } from './wheel-figure.ts';

const places = ({ unit }: Tooth) => ({ unit, places: unit === 'in' ? 4 : 3 });

const SUNK = 'derived: the form sinks until its flank crosses the pitch circle b further out';

/** The backlash typed, none when nothing was. Throws DomainError unless it lies from 0 to half the tooth's thickness. */
export function checkedBacklash(tooth: Tooth, backlash: Length = inches(0)): Length {
  const b = inUnit(backlash, tooth.unit);
  const most = circularThickness(tooth.m) / 2;
  if (b >= 0 && b < most) return backlash;
  throw new DomainError({
    given: `Backlash of ${printLength(backlash, places(tooth))} ${tooth.unit}.`,
    limit: 'It is taken off the thickness of this wheel alone and lies between nothing and half the tooth.',
    tryThis: 'A few thousandths of an inch are usual.',
    about: ['backlash'],
  });
}

/** The formula of deeperForBacklashFormed in the wheel's own symbols. */
export function formedDeeper({ pitch }: Wheel): string {
  const [before, after] = ['a + 90° ÷ N', `90° ÷ N + ${halfLashAngle(pitch)}`];
  const along = `√(max(0, sin(a)^2 − (cos(a) × sin(${before}) − sin(${after}))^2))`;
  return pitchTerm(pitch).of(`N ÷ 2 × (cos(a) × cos(${before}) − cos(${after}) + ${along})`);
}

export type BacklashKey = 'spanLess' | 'deeperFormed' | 'deeperGenerated' | 'apart';

/**
 * What a circular thinning b of this wheel is in the other measures: square to the flank and off the span; deeper with a form cutter or
 * a hob; by setting the wheels apart. Example: 22 teeth, 14½°, 0.004 in is 0.0039 off the span and 0.0059 deeper with a form cutter.
 */
export function backlashAnswer(wheel: Wheel, backlash: Length): Answer<BacklashKey> {
  const tooth = checkedTooth(wheel);
  const b = inUnit(checkedBacklash(tooth, backlash), tooth.unit);
  const given = [lengthGiven('b', 'backlash along the pitch circle', backlash, tooth.unit, 'typed'), angleGiven(wheel)];
  const [source, byRack] = ['derived: by how far each flank moves square to itself', deeperForBacklashGenerated(b, tooth.a)];
  return {
    figures: {
      spanLess: wheelFigure(
        tooth,
        { name: 'Off the span, and lash square to the flank', symbol: 'bn', formula: 'b × cos(a)', source },
        normalBacklash(b, tooth.a),
        given,
      ),
      deeperFormed: {
        ...wheelFigure(
          tooth,
          { name: 'Deeper with a form cutter', symbol: 'd', formula: formedDeeper(wheel), source: SUNK },
          deeperForBacklashFormed(b, tooth),
          [...given, teethGiven(wheel), pitchTerm(wheel.pitch).given],
        ),
        note: 'A hair shallow where the backlash is large: the span has the last word.',
      },
      deeperGenerated: wheelFigure(
        tooth,
        { name: 'Deeper with a hob or rack', symbol: 'd', formula: 'b ÷ (2 × tan(a))', source },
        byRack,
        given,
      ),
      apart: wheelFigure(tooth, { name: 'Or centres set apart by', symbol: 'x', formula: 'b ÷ (2 × tan(a))', source }, byRack, given),
    },
    cautions: [],
  };
}
