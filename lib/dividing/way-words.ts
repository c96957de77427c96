import type { Figure, Value } from '../figure/figure.ts';
import { printMove } from '../figure/print-value.ts';
import { type CompoundMove, compoundHoles } from './compound.formulas.ts';
import { figuresFrom } from './index-figure.ts';
import { landingHole, sectorHoles } from './plain.formulas.ts';
import type { Way } from './ways.ts';
import { whereOn } from './where-on.ts';

/** What each method is called. */
export const METHOD = {
  direct: 'direct',
  plain: 'plain',
  compound: 'compound: two pins',
  differential: 'differential: gears turn the plate',
} as const;

const spaces = (n: number, circle: number): string => printMove({ turns: Math.floor(n / circle), spaces: n % circle, circle });

/** "5 spaces on 15, then 7 spaces on 19 with the crank". */
export const compoundWords = ({ front, frontCircle, back, backCircle }: CompoundMove): string =>
  `${spaces(front, frontCircle)}, then plate and crank ${spaces(Math.abs(back), backCircle)} ${back > 0 ? 'the same way' : 'back'}`;

export const moveWords = (way: Way): string => (way.method === 'compound' ? compoundWords(way.move) : printMove(way.move));

export const placeWords = (way: Way): string => (way.method === 'direct' ? 'plate on the spindle' : whereOn(way.plate, way.side));

/** Spaces and holes both, as the sector is set; of a compound move both sectors. */
export function sectorsOf(way: Way): { readonly spaces: string; readonly holes: string } {
  const all =
    way.method === 'compound' ? [way.move.front % way.move.frontCircle, Math.abs(way.move.back) % way.move.backCircle] : [way.move.spaces];
  const used = all.filter((one) => one > 0);
  if (used.length === 0) return { spaces: 'none: whole turns', holes: 'none' };
  return { spaces: used.join(' and '), holes: used.map(sectorHoles).join(' and ') };
}

/** The hole to land in for tooth n; of a compound move crank pin and back pin. */
export function holesAt(n: number, way: Way): readonly number[] {
  if (way.method !== 'compound') return [landingHole(n, way.move)];
  const { front, back } = compoundHoles(n, way.move);
  return [front, back];
}

const figure = figuresFrom('F. D. Jones, Milling Machines Part II (1912), compound indexing');

/** The name of the second move when it goes against the way of cranking: by it a kept figure tells which way. */
export const BACKWARDS = 'Then plate and crank, back';

/** Both moves of a compound setting as figures of their own. back is told as it is gone: with the crank, or back. */
export function movesOf({ front, frontCircle, back, backCircle }: CompoundMove): Record<'crank' | 'back', Figure> {
  const move = (spaces: number, circle: number): Value => ({
    move: { turns: Math.floor(spaces / circle), spaces: spaces % circle, circle },
  });
  return {
    crank: figure('First the crank alone', 'x', move(front, frontCircle)),
    back: figure(back > 0 ? 'Then plate and crank, the same way' : BACKWARDS, 'y', move(Math.abs(back), backCircle)),
  };
}
