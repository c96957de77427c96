import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import type { Fields, ValuesOf } from '../forms/form.ts';

/** A computation with an address: /sums/<path>?… as a page, /sums/<path>.json?… as JSON. Needs no project and writes nothing. */
export type Sum = {
  readonly path: string;
  readonly title: string;
  /** The group of the contents page that it stands in. */
  readonly group: 'Gears' | 'Blanks' | 'Cutters' | 'Dividing' | 'Turning' | 'Speeds' | 'Fits' | 'Wheels';
  /** In one sentence: what one learns from it. */
  readonly tells: string;
  readonly asks: Fields;
  /** The worked example that a bare address shows, as it would be typed. */
  readonly example: Readonly<Record<string, string>>;
  readonly work: (given: never) => Answer;
  readonly draw?: (given: never) => Drawing;
};

type SumOf<F extends Fields> = Omit<Sum, 'asks' | 'work' | 'draw'> & {
  readonly asks: F;
  readonly work: (given: ValuesOf<F>) => Answer;
  readonly draw?: (given: ValuesOf<F>) => Drawing;
};

/** Ties the values that `work` gets to the fields that `asks` names. */
export const sum = <F extends Fields>(wanted: SumOf<F>): Sum => wanted as unknown as Sum;
