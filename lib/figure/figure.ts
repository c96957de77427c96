import type { Angle } from '../values/angle.ts';
import type { Length, LengthUnit } from '../values/length.ts';
import type { DialMove, IndexMove } from '../values/move.ts';
import type { Ratio } from '../values/ratio.ts';
import type { Reading, Rise } from '../values/temperature.ts';

/** Any size that Backgear prints. `words` is for what is no number, such as "No. 5". */
export type Value =
  | { readonly length: Length }
  | { readonly angle: Angle }
  | { readonly count: number; readonly unit?: string }
  | { readonly ratio: Ratio }
  | { readonly number: number; readonly unit: string; readonly places?: number }
  | { readonly move: IndexMove }
  | { readonly dial: DialMove }
  | { readonly rise: Rise }
  | { readonly reading: Reading }
  | { readonly words: string };

/** Where a number came from. */
export type From = 'typed' | 'measured' | 'table' | 'worked out' | 'guess';

/** A number that was put into a formula, under the symbol that the formula uses. */
export type Given = { readonly symbol: string; readonly name: string; readonly value: Value; readonly from: From; readonly where?: string };

/**
 * A figure to cut by, with how it was reached.
 * formula: the right-hand side in plain text, in the symbols of `given`, such as "(N + 2) ÷ P"; empty when there is none
 *   (a value looked up or counted). It can be worked by hand from the printed givens: × ÷ + − ^ √( ) π °, sin cos tan acos inv, min max floor ceil round abs.
 * unit: the length unit in which formula, givens and value are printed. per: the length is gone in so much time.
 * source: author, title, edition, page or section; or "common practice, no source"; or "value from memory"; or "derived: …".
 * error: how far off, when the result is not exact. limits: least and greatest acceptable when it is measured.
 */
export type Figure = {
  readonly name: string;
  readonly symbol: string;
  readonly value: Value;
  readonly unit: LengthUnit;
  readonly places?: number;
  readonly per?: 'min';
  readonly formula: string;
  readonly source: string;
  readonly given: readonly Given[];
  readonly error?: Value;
  readonly limits?: readonly [Value, Value];
  readonly note?: string;
};

export type Weight = 'note' | 'beware' | 'danger';
/** A caution to show where the hand is. `about` is the key of the figure that it stands beside. */
export type Caution = { readonly name: string; readonly says: string; readonly weight: Weight; readonly about?: string };

/** Rows of an answer that has many: circles that serve, candidate blanks. Cells are values or words. */
export type AnswerTable = {
  readonly title: string;
  readonly unit: LengthUnit;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly (Value | string)[])[];
};

/** What a sum gives: pages, sheets, JSON, stored operations and tests all take this one thing. `says` is the plain verdict. */
export type Answer<K extends string = string> = {
  readonly figures: Readonly<Record<K, Figure>>;
  readonly cautions: readonly Caution[];
  readonly says?: string;
  readonly tables?: readonly AnswerTable[];
};
