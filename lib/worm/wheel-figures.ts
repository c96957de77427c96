import type { Figure, Given } from '../figure/figure.ts';
import { sizedGiven } from '../figure/told.ts';
import { pitchTerm } from '../gears/givens.ts';
import { toRadians } from '../values/angle.ts';
import type { Worked } from './asked.ts';
import { throatDiameter, throatRadius, wheelOverCorners, wormCentre } from './worm.formulas.ts';
import { addendum, BOOK, startsGiven, type Terms, teethGiven, wormGiven } from './worm-terms.ts';

/** The wheel's pitch diameter. */
export const wheelAcross = ({ asked, tooth }: Worked): number => asked.teeth * tooth.m;

/** Throat, and the corners beyond it where the face hugs the worm. */
function throat(terms: Terms): Record<'throatDiameter' | 'overCorners' | 'throatRadius', Figure> {
  const { asked, d, tooth, of, length } = terms;
  const [A, pitch] = [addendum(terms), pitchTerm(asked.pitch)];
  const [Dt, rt] = [throatDiameter(wheelAcross(terms), tooth.A), throatRadius(d, tooth.A)];
  const embrace: Given = { symbol: 'v', name: 'face hugs the worm over', value: { angle: asked.embrace }, from: 'typed' };
  const [Dtg, rtg] = [sizedGiven('Dt', 'throat diameter', Dt, tooth.unit), sizedGiven('rt', 'throat radius', rt, tooth.unit)];
  const corner = 'derived: the corner lies on the throat circle, half that angle from the middle';
  return {
    throatDiameter: of({ name: 'Wheel, throat', symbol: 'Dt', formula: `${pitch.of('N')} + 2 × (${A.text})`, source: BOOK }, length(Dt), [
      teethGiven(terms),
      ...A.given,
    ]),
    overCorners: of(
      { name: 'Wheel, over the corners', symbol: 'Dw', formula: 'Dt + 2 × rt × (1 − cos(v ÷ 2))', source: corner },
      length(wheelOverCorners(Dt, rt, toRadians(asked.embrace))),
      [Dtg, rtg, embrace],
    ),
    throatRadius: of({ name: 'Throat radius', symbol: 'rt', formula: `d ÷ 2 − (${A.text})`, source: BOOK }, length(rt), [
      wormGiven(terms),
      ...A.given,
    ]),
  };
}

/** Where the wheel's pitch circle lies. */
function pitchAndCentre(terms: Terms): Record<'wheelPitchDiameter' | 'centre', Figure> {
  const { asked, d, of, length } = terms;
  const [D, pitch] = [wheelAcross(terms), pitchTerm(asked.pitch)];
  return {
    wheelPitchDiameter: of({ name: 'Wheel, pitch diameter', symbol: 'D', formula: pitch.of('N'), source: BOOK }, length(D), [
      teethGiven(terms),
      pitch.given,
    ]),
    centre: of({ name: 'Centre distance', symbol: 'C', formula: `(d + ${pitch.of('N')}) ÷ 2`, source: BOOK }, length(wormCentre(d, D)), [
      wormGiven(terms),
      teethGiven(terms),
      pitch.given,
    ]),
  };
}

const ratioFigure = (terms: Terms): Figure =>
  terms.of(
    {
      name: 'Turns of the worm for one of the wheel',
      symbol: 'R',
      formula: 'N ÷ n',
      source: 'counted: one start passes one tooth in a turn',
    },
    { number: terms.asked.teeth / terms.asked.starts, unit: 'turns', places: terms.asked.teeth % terms.asked.starts === 0 ? 0 : 4 },
    [teethGiven(terms), startsGiven(terms)],
  );

/** Every size of the wheel, where its middle stands, and how often the worm goes round for it. */
export const wheelFigures = (terms: Terms) => ({ ...throat(terms), ...pitchAndCentre(terms), ratio: ratioFigure(terms) });
