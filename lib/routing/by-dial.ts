import { dialPlace, dialPlaceWords } from '../dividing/dial-places.ts';
import { figuresFrom } from '../dividing/index-figure.ts';
import { arcSeconds } from '../dividing/nearest.sums.ts';
import { dialServes, type TableDial, worstOnDial } from '../dividing/table-dial.formulas.ts';
import { leastFigure, tableDialDividing, worstFigures } from '../dividing/table-dial.sums.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import type { Head } from '../tooling/tooling.ts';
import { printShort } from '../values/print.ts';

const figure = figuresFrom('derived: places counted from zero, each put on the nearest line of the dial or vernier');

/** A table of the shop that is divided by its dial. exact: every tooth falls on a line. */
export type ByDial = { readonly head: Head; readonly dial: TableDial; readonly exact: boolean };

const MOST_TEETH = 500;

/** The tables here with a divided dial; those on which every tooth falls on a line come first, then those whose worst tooth is least off. */
export function dialsFor(teeth: number, heads: readonly Head[]): ByDial[] {
  if (teeth > MOST_TEETH) return [];
  const all = heads.flatMap((head): ByDial[] => {
    if (!head.here || !head.dial) return [];
    const dial = { turns: head.turns, perTurn: head.dial.perTurn, vernier: head.dial.vernier };
    return [{ head, dial, exact: dialServes(dial, teeth) }];
  });
  return all.sort((a, b) => secondsAtWorst(teeth, a.dial) - secondsAtWorst(teeth, b.dial));
}

export const secondsAtWorst = (teeth: number, dial: TableDial): number => arcSeconds(worstOnDial(dial, teeth), dial.turns);

const between = (teeth: number, { head, dial }: ByDial): Caution => ({
  name: 'Between the lines',
  says: `${teeth} do not fall on the lines of ${head.name}: the worst tooth is off by ${printShort(secondsAtWorst(teeth, dial), 1)}″, each set from zero, never by adding moves up.`,
  weight: 'beware',
  about: 'worst',
});

/** Turns and line of the first move, what a line reads, the error at the worst tooth, and the proof. */
export function dialAnswer(teeth: number, by: ByDial): Answer {
  const { dial, exact, head } = by;
  const { figures, says } = tableDialDividing({ divisions: teeth, dial, lash: null });
  const first: Figure = figure('Handwheel at tooth 2', 'm', { words: dialPlaceWords(dialPlace(2, teeth, dial), dial) });
  return {
    figures: { crank: first, turns: figures.turns, least: leastFigure(dial), ...worstFigures(teeth, dial), proof: figures.proof },
    cautions: exact ? [] : [between(teeth, by)],
    says: `${says ?? ''} ${head.name}, by its dial.`.trim(),
  };
}

/** What a dial would do that its owner has not asked for. */
export const dialWould = (teeth: number, { head, dial }: ByDial): string =>
  `By the dial of ${head.name} the worst tooth would be off by ${printShort(secondsAtWorst(teeth, dial), 1)}″; its page under Tools says whether that is wanted.`;
