import type { Answer, Figure } from '../figure/figure.ts';
import { fouls, heldFigure, radii, ratioFigures, reachOf, type Work, weak } from './contact-figures.ts';
import { contactRatioAt, involuteContactAt } from './contact-ratio.formulas.ts';
import { atOf, baseOf, type Flanks, formDiameter, leastShift, mtOf } from './flanks.formulas.ts';
import { largestTip } from './interference.formulas.ts';
import { toldLength } from './parallel-terms.ts';

const DERIVED = 'derived: there the line of action touches the base circle of the other';

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
  const intoFillet = started < formDiameter(one, one.A) - 1e-6 * one.mn && one.v >= leastShift(one, one.A);
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
    },
    cautions: [
      ...weak(held),
      ...(tips[0] > limits[0] ? [fouls('wheel', 'largestOutside')] : []),
      ...(tips[1] > limits[1] ? [fouls('mate', 'largestMate')] : []),
      ...(intoFillet
        ? [
            {
              name: 'Into the fillet',
              says: 'The mate’s tips reach below where a rack of this system ends the involute of the wheel.',
              weight: 'note',
              about: 'contactBegins',
            } as const,
          ]
        : []),
    ],
  };
}
