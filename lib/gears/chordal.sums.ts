import type { Answer, Given } from '../figure/figure.ts';
import { inUnit, type Length } from '../values/length.ts';
import { checkedBacklash } from './backlash.sums.ts';
import { addendumTerm, halfLashAngle, lengthGiven, pitchTerm, teethGiven } from './givens.ts';
import { checkedOutside } from './outside.ts';
import { chordalAddendum, chordalThickness, circularThickness } from './spur.formulas.ts';
import { outsideDiameter, pitchDiameter } from './tooth.ts';
import { blankCautions, compositeCaution } from './wheel.cautions.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { wheelFigure } from './wheel-figure.ts';

const BROWN_SHARPE = 'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, p. 152';

export type ChordalChoice = { readonly measuredOutside?: Length; readonly backlash?: Length };

/** 90° ÷ N, less half of what backlash takes off the tooth's angle. */
const halfAngle = (wheel: Wheel, b: Length): string => (b === 0 ? '90° ÷ N' : `90° ÷ N − ${halfLashAngle(wheel.pitch)}`);

/**
 * Thickness straight across at the pitch circle, and the depth at which the gear-tooth vernier is set, corrected for the outside
 * as measured. Throws DomainError when the measured outside cannot be this wheel's. Example: 23 teeth, 1 DP gives 1.5696 and 1.0268.
 */
export function chordalAnswer(
  wheel: Wheel,
  { measuredOutside, backlash }: ChordalChoice = {},
): Answer<'chordalThickness' | 'chordalAddendum'> {
  const tooth = checkedTooth(wheel);
  const b = checkedBacklash(tooth, backlash);
  const [d, Do] = [pitchDiameter(tooth), outsideDiameter(tooth)];
  const Dm = checkedOutside(tooth, measuredOutside);
  const s = circularThickness(tooth.m) - inUnit(b, tooth.unit);
  const [pitch, A, angle] = [pitchTerm(wheel.pitch), addendumTerm(wheel.system), halfAngle(wheel, b)];
  const lash: readonly Given[] = b === 0 ? [] : [lengthGiven('b', 'backlash of this wheel', b, tooth.unit, 'typed')];
  const outside: readonly Given[] =
    measuredOutside === undefined ? [] : [lengthGiven('Dm', 'outside as measured', measuredOutside, tooth.unit, 'measured')];
  const given = [teethGiven(wheel), pitch.given, ...lash];
  // The addendum as it stands is half of what the measured outside has over the pitch circle.
  const above = measuredOutside === undefined ? pitch.of(A.text) : `(Dm − ${pitch.of('N')}) ÷ 2`;
  const stands = measuredOutside === undefined ? tooth.A : (Dm - d) / 2;
  const heightGiven = measuredOutside === undefined ? [...given, ...A.given] : [...given, ...outside];
  return {
    figures: {
      chordalThickness: wheelFigure(
        tooth,
        { name: 'Chordal thickness', symbol: 't', formula: `${pitch.of('N')} × sin(${angle})`, source: BROWN_SHARPE },
        chordalThickness(d, s),
        given,
      ),
      chordalAddendum: wheelFigure(
        tooth,
        {
          name: 'Chordal addendum',
          symbol: 'hc',
          formula: `${above} + ${pitch.of('N')} ÷ 2 × (1 − cos(${angle}))`,
          source: BROWN_SHARPE,
        },
        chordalAddendum(d, s, stands),
        heightGiven,
      ),
    },
    cautions: [...blankCautions(tooth, Do, Dm), ...compositeCaution(wheel, 'chordalThickness')],
  };
}
