import type { Head, Plate } from '../../../lib/tooling/tooling.ts';

export const plate = (id: number, name: string, ...sides: number[][]): Plate => ({ id, name, here: true, kind: 'plate', sides });
export const head = (turns: number): Head => ({ id: 1, name: `head ${turns} to 1`, here: true, kind: 'head', turns, backPin: false });

/** The usual three plates of a 40 to 1 head. */
export const THREE_PLATES = [
  plate(1, 'Plate 1', [15, 16, 17, 18, 19, 20]),
  plate(2, 'Plate 2', [21, 23, 27, 29, 31, 33]),
  plate(3, 'Plate 3', [37, 39, 41, 43, 47, 49]),
];
export const TWO_SIDED = [
  plate(4, 'Large plate', [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43], [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66]),
];
/** An odd plate from a drawer: few circles, with factors that the usual ones lack. */
export const ODD_PLATE = [plate(5, 'Odd plate', [22, 36, 52, 61, 100])];
