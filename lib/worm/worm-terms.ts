import type { Figure, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { angleGivenOf, countGiven, type Told } from '../figure/told.ts';
import { addendumTerm, pitchTerm } from '../gears/givens.ts';
import type { Worked } from './asked.ts';

export const BOOK = 'Machine Elements in Mechanical Design, 4th ed., section 8-9';

type Of = (about: Told, value: Value, given?: readonly Given[]) => Figure;
/** A worm and wheel with what its figures are written by. */
export type Terms = Worked & { readonly of: Of; readonly length: (size: number) => Value };

export const wormGiven = ({ asked, tooth }: Worked): Given =>
  givenLength('d', "worm's pitch diameter", asked.wormPitchDiameter, tooth.unit, 'typed');
export const startsGiven = ({ asked }: Worked): Given => countGiven('n', 'starts', asked.starts);
export const teethGiven = ({ asked }: Worked): Given => countGiven('N', "wheel's teeth", asked.teeth);
export const leadAngleGiven = ({ l }: Worked): Given => angleGivenOf('l', 'lead angle', l);

export type Term = { readonly text: string; readonly given: readonly Given[] };

export function addendum({ asked }: Worked): Term {
  const [pitch, A] = [pitchTerm(asked.pitch), addendumTerm(asked.system)];
  return { text: pitch.of(A.text), given: [pitch.given, ...A.given] };
}
