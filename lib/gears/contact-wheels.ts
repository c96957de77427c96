import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { fouls, heldFigure, hobbedLess, radii, ratioFigures, reachOf, type Work, weak } from './contact-figures.ts';
import { contactRatioAt, hobbedContactAt, involuteContactAt } from './contact-ratio.formulas.ts';
import { atOf, baseOf, type Flanks, mtOf } from './flanks.formulas.ts';
import { largestTip } from './interference.formulas.ts';
import { toldLength, toldNumber, workedLength } from './parallel-terms.ts';
import { hobbedFormDiameter } from './profile-rack.formulas.ts';

const DERIVED = 'derived: there the line of action touches the base circle of the other';

type Hobbed = { readonly figures: Record<string, Figure>; readonly cautions: readonly Caution[] };

/** What a hob's undercut, or its fillet, takes off the contact: only said where it takes any. */
function hobbed({ at, terms, numbers, tips }: Work, held: number): Hobbed {
  const { one, mate } = at.couple;
  const forms = [hobbedFormDiameter(one), hobbedFormDiameter(mate)] as const;
  const [f1, f2] = forms;
  if (f1 === null || f2 === null)
    return {
      figures: {},
      cautions: [
        {
          name: 'No flank',
          says: `A hob or rack leaves no involute on the ${f1 === null ? 'wheel' : 'mate'}.`,
          weight: 'danger',
          about: 'contactRatio',
        },
      ],
    };
  const ratio = hobbedContactAt(radii(one, tips[0]), radii(mate, tips[1]), [f1 / 2, f2 / 2], at.C, atOf(one), mtOf(one));
  if (!(ratio < held - 5e-5)) return { figures: {}, cautions: [] };
  const T = 'C × sin(aw)';
  const L = (form: string, base: string): string => `√(max(0, (${form} ÷ 2)^2 − (${base} ÷ 2)^2))`;
  const path = `min(${reachOf('Do1', 'Db1')}, ${T} − ${L('Df2', 'Db2')}) − max(${T} − ${reachOf('Do2', 'Db2')}, ${L('Df1', 'Db1')})`;
  const said = {
    name: 'Contact ratio if both are hobbed',
    symbol: 'eh',
    formula: `max(0, ${path}) ÷ (${terms.across('π')} × cos(at))`,
    source: 'derived: no flank below where the hob’s own rack begins it',
  };
  const given = [
    ...numbers,
    workedLength('Df1', 'involute of the wheel begins', f1, one.unit),
    workedLength('Df2', 'involute of the mate begins', f2, one.unit),
  ];
  return {
    figures: { hobbedContact: toldNumber(one.unit, said, ratio, given, 4) },
    cautions: hobbedLess(ratio),
  };
}

/** Two wheels: how long in contact, and how large either may be before its tips foul. */
export function wheels(work: Work): Answer {
  const { at, numbers, tips } = work;
  const { couple, C, aw } = at;
  const { one, mate } = couple;
  const ratio = contactRatioAt(radii(one, tips[0]), radii(mate, tips[1]), C, atOf(one), mtOf(one));
  const T = 'C × sin(aw)';
  const path = `${reachOf('Do1', 'Db1')} + ${reachOf('Do2', 'Db2')} − ${T}`;
  const bounded = `min(${reachOf('Do1', 'Db1')}, ${T}) + min(${reachOf('Do2', 'Db2')}, ${T}) − ${T}`;
  const held = involuteContactAt(radii(one, tips[0]), radii(mate, tips[1]), C, atOf(one), mtOf(one));
  const most = (name: string, symbol: string, base: string, flanks: Flanks): Figure =>
    toldLength(
      one.unit,
      { name, symbol, formula: `2 × √((${base} ÷ 2)^2 + (${T})^2)`, source: DERIVED },
      2 * largestTip(baseOf(flanks) / 2, C, aw),
      numbers,
    );
  const limits = [2 * largestTip(baseOf(one) / 2, C, aw), 2 * largestTip(baseOf(mate) / 2, C, aw)] as const;
  const lowest = Math.max(0, C * Math.sin(aw) - Math.sqrt(Math.max(0, (tips[1] / 2) ** 2 - (baseOf(mate) / 2) ** 2)));
  const start = {
    name: 'Contact begins on the wheel at',
    symbol: 'Ds',
    formula: `2 × √((Db1 ÷ 2)^2 + max(0, ${T} − ${reachOf('Do2', 'Db2')})^2)`,
    source: DERIVED,
  };
  const started = 2 * Math.hypot(baseOf(one) / 2, lowest);
  const cut = hobbed(work, held);
  return {
    figures: {
      ...ratioFigures(work, ratio, path),
      ...heldFigure(one.unit, ratio, held, bounded, `${work.terms.across('π')} × cos(at)`, numbers),
      mateOutside: toldLength(
        one.unit,
        { name: 'Outside of the mate', symbol: 'Do2', formula: '', source: 'as its addendum, shift and shortening have it' },
        tips[1],
        [],
      ),
      largestOutside: most('Largest outside of the wheel that meets involute', 'Dm1', 'Db1', one),
      largestMate: most('Largest outside of the mate that meets involute', 'Dm2', 'Db2', mate),
      contactBegins: toldLength(one.unit, start, started, numbers),
      ...cut.figures,
    },
    cautions: [
      ...weak(held),
      ...(tips[0] > limits[0] ? [fouls('wheel', 'largestOutside')] : []),
      ...(tips[1] > limits[1] ? [fouls('mate', 'largestMate')] : []),
      ...cut.cautions,
    ],
  };
}
