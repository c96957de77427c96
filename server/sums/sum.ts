import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import type { Fields, Typed, ValuesOf } from '../forms/form.ts';
import type { LinkView } from '../page.ts';
import type { Owner } from './identify-owner.ts';
import type { TakenAnswer } from './taken-answers.ts';

/** A computation with an address: /sums/<path>?… as a page, /sums/<path>.json?… as JSON, and where it offers them /sums/<path>.dxf?… and .svg?… as drawings. Needs no project and writes nothing. */
export type Sum = {
  readonly path: string;
  readonly title: string;
  /** The group of the contents page that it stands in. */
  readonly group: 'Gears' | 'Blanks' | 'Cutters' | 'Dividing' | 'Turning' | 'Speeds' | 'Fits' | 'Splines' | 'Wheels' | 'Trains' | 'Leads';
  /** In one sentence: what one learns from it. */
  readonly tells: string;
  readonly asks: Fields;
  /** The worked example that a bare address shows, as it would be typed. */
  readonly example: Readonly<Record<string, string>>;
  readonly work: (given: never) => Answer;
  /** null where there is nothing to draw. */
  readonly draw?: (given: never) => Drawing | null;
  /** To scale and without letters, for a drilling or cutting job: offered as a file at /sums/<path>.dxf?…. */
  readonly dxf?: (given: never) => Drawing | null;
  /** To be printed at the scale that its words say, millimetre for millimetre: offered as a file at /sums/<path>.svg?…. */
  readonly paper?: (given: never) => Drawing | null;
  /** Where the sum was reached from a record (`for`): answers that can be taken into it. */
  readonly take?: (given: never) => readonly TakenAnswer[];
  /** Tooth counts of the missing wheels that the answer waits for: the page leads to their parts. */
  readonly waits?: (given: never) => readonly number[];
  /** To a sheet on which what it asks for is written down by hand. */
  readonly blankSheet?: (owner: Owner | null, typed: Typed) => LinkView;
  /** Boxes for what lib calls otherwise: where its refusals stand. What has a box of its own name needs no line here. */
  readonly about?: Readonly<Record<string, readonly string[]>>;
  /** The boxes under headings, where there are many; a box named in none stands before them. */
  readonly parts?: readonly SumPart[];
};

/** Boxes under a heading. folded: not needed for a first answer; opens on touch, and stands open once anything in it is typed. */
export type SumPart = { readonly legend: string; readonly asks: readonly string[]; readonly folded?: boolean };

type SumOf<F extends Fields> = Omit<Sum, 'asks' | 'example' | 'work' | 'draw' | 'dxf' | 'paper' | 'take' | 'waits' | 'parts'> & {
  readonly asks: F;
  readonly example: Readonly<Record<keyof F, string>>;
  readonly work: (given: ValuesOf<F>) => Answer;
  readonly draw?: (given: ValuesOf<F>) => Drawing | null;
  readonly dxf?: (given: ValuesOf<F>) => Drawing | null;
  readonly paper?: (given: ValuesOf<F>) => Drawing | null;
  readonly take?: (given: ValuesOf<F>) => readonly TakenAnswer[];
  readonly waits?: (given: ValuesOf<F>) => readonly number[];
  readonly parts?: readonly (Omit<SumPart, 'asks'> & { readonly asks: readonly (keyof F & string)[] })[];
};

/** Ties the values that `work` gets to the fields that `asks` names. */
export const sum = <F extends Fields>(wanted: SumOf<F>): Sum => wanted as unknown as Sum;
