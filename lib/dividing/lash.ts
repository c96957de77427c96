import type { Figure } from '../figure/figure.ts';
import type { Ratio } from '../values/ratio.ts';
import { count, figuresFrom, given } from './index-figure.ts';

const figure = figuresFrom('derived: the lash of the head, in turns of its crank, counted in holes or lines');

/** Holes or lines that a crank goes back: one more than the lash takes of so many in a turn. */
export const holesBack = (lash: Ratio, of: number): number => Math.floor((lash[0] * of) / lash[1]) + 1;

/**
 * How far back a crank or handwheel goes before it comes up again, so that the lash lies on the same side at every tooth: one hole or line
 * more than the lash takes.
 *   n = floor(b × c) + 1
 * b: lash in turns; c: holes in the circle or lines on the dial. Example: 1/12 turn on 33: 3 holes.
 */
export function lashFigure(lash: Ratio, of: number, unit: 'holes' | 'lines'): Figure {
  return figure('Lash: gone past, go back by', 'n', count(holesBack(lash, of), unit), {
    formula: 'floor(b × c) + 1',
    given: [given('b', 'lash, in turns of the crank', { ratio: lash }, 'measured'), given('c', `${unit} once round`, count(of), 'table')],
    note: `Then up again to the ${unit === 'holes' ? 'hole' : 'line'}, the way of cranking.`,
  });
}

/** What is said of the lash where nobody has measured it. */
export const LASH_UNKNOWN = 'beyond the lash';
