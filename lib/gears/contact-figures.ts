import type { Caution, Figure, Given } from '../figure/figure.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import type { Radii } from './contact-ratio.formulas.ts';
import { type CoupleAsked, type PairTerms, pairTerms, type Settled, settled } from './couple.ts';
import { atOf, baseOf, type Flanks, mtOf, pitchOf, tipOf } from './flanks.formulas.ts';
import { overlapRatio } from './helical.formulas.ts';
import { tipShortening } from './pair.formulas.ts';
import { toldLength, toldNumber, workedLength, workedNumber } from './parallel-terms.ts';

export const T109 = 'SDP/SI, Elements of Metric Gear Technology, T-109, table 11-1';
const NORTON = 'Norton, Machine Design, ch. 12';

/** mate of a rack is left out. outsides as turned; left out, as the shifts have them. */
export type ContactAsked = CoupleAsked & { readonly rack?: boolean; readonly face?: Length };
export type Work = {
  readonly asked: ContactAsked;
  readonly at: Settled;
  readonly terms: PairTerms;
  readonly numbers: readonly Given[];
  readonly tips: readonly [number, number];
};

export const radii = (flanks: Flanks, tip: number): Radii => ({ base: baseOf(flanks) / 2, pitch: pitchOf(flanks) / 2, outside: tip / 2 });

export function workOf(asked: ContactAsked): Work {
  const at = settled(asked);
  const { one, mate } = at.couple;
  const K = tipShortening(at.couple, at.C);
  const tips = [tipOf(one) - 2 * K, mate.ring ? tipOf(mate) : tipOf(mate) - 2 * K] as const;
  const terms = pairTerms(asked, at);
  const numbers = [
    ...terms.numbers,
    workedLength('Do1', 'outside of the wheel', tips[0], one.unit),
    workedLength(mate.ring ? 'Di2' : 'Do2', mate.ring ? 'inside of the ring' : 'outside of the mate', tips[1], one.unit),
  ];
  return { asked, at, terms, numbers, tips };
}

export function overlap(flanks: Flanks, face: Length | undefined, ea: number, given: readonly Given[]): Record<string, Figure> {
  if (face === undefined || flanks.psi === 0) return {};
  const F = inUnit(face, flanks.unit);
  const eb = overlapRatio(F, flanks.mn, flanks.psi);
  const numbers = [
    ...given,
    workedLength('F', 'face', F, flanks.unit),
    workedLength('mn', 'module square to the teeth', flanks.mn, flanks.unit),
    workedNumber('ea', 'transverse contact ratio', ea, 5),
    workedNumber('eb', 'overlap ratio', eb, 5),
  ];
  return {
    overlap: toldNumber(
      flanks.unit,
      { name: 'Overlap ratio', symbol: 'eb', formula: 'F × sin(H) ÷ (π × mn)', source: NORTON },
      eb,
      numbers,
      4,
    ),
    total: toldNumber(flanks.unit, { name: 'Total contact ratio', symbol: 'eg', formula: 'ea + eb', source: NORTON }, ea + eb, numbers, 4),
  };
}

/** How far along the line of action tips reach from the base circle of their own gear, in symbols. */
export const reachOf = (outside: string, base: string): string => `√((${outside} ÷ 2)^2 − (${base} ÷ 2)^2)`;

export function ratioFigures({ at, terms, numbers, tips, asked }: Work, ratio: number, path: string): Record<string, Figure> {
  const { one } = at.couple;
  const said = {
    name: 'Transverse contact ratio',
    symbol: 'ea',
    formula: `max(0, ${path}) ÷ (${terms.across('π')} × cos(at))`,
    source: T109,
  };
  const along = { name: 'Length of contact', symbol: 'g', formula: `max(0, ${path})`, source: T109 };
  const g = ratio * Math.PI * mtOf(one) * Math.cos(atOf(one));
  return {
    contactRatio: toldNumber(one.unit, said, ratio, numbers, 4),
    ...overlap(one, asked.face, ratio, numbers),
    lengthOfContact: toldLength(one.unit, along, g, numbers),
    outsideDiameter: toldLength(
      one.unit,
      { name: 'Outside of the wheel', symbol: 'Do1', formula: '', source: 'as its addendum, shift and shortening have it' },
      tips[0],
      [],
    ),
  };
}

export const weak = (ratio: number): readonly Caution[] =>
  ratio >= 1.2
    ? []
    : [
        {
          name: ratio < 1 ? 'Contact breaks off' : 'Little contact',
          says:
            ratio < 1 ? 'One pair of teeth lets go before the next has taken hold: it will not run.' : 'Under 1.2 the gears run roughly.',
          weight: ratio < 1 ? 'danger' : 'beware',
          about: 'contactRatio',
        },
      ];

export const fouls = (who: string, about: string): Caution => ({
  name: 'Tips foul',
  says: `The tips of the ${who} reach past the involute of the other: they dig into its foot, or it must be undercut to clear them.`,
  weight: 'beware',
  about,
});

/** Said where a hob takes some of the flank that would touch. */
export const hobbedLess = (ratio: number): readonly Caution[] => [
  {
    name: 'Hobbed, less contact',
    says: 'A hob takes some of the foot that the other’s tips would touch: the contact ratio falls as said. A form cutter leaves it.',
    weight: ratio < 1 ? 'danger' : ratio < 1.2 ? 'beware' : 'note',
    about: 'hobbedContact',
  },
];

/** What is left of the contact where tips foul: only shown when it is less. */
export function heldFigure(
  unit: LengthUnit,
  ratio: number,
  held: number,
  path: string,
  base: string,
  at: readonly Given[],
): Record<string, Figure> {
  if (!(held < ratio - 1e-9)) return {};
  const said = {
    name: 'Contact ratio on involute alone',
    symbol: 'ei',
    formula: `max(0, ${path}) ÷ (${base})`,
    source: 'derived: beyond the base circle there is no involute',
  };
  return { involuteContact: toldNumber(unit, said, held, at, 4) };
}
