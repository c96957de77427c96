import type { Caution, Figure } from '../figure/figure.ts';
import type { Bore, Pitch } from '../gears/gear.ts';
import type { Angle } from '../values/angle.ts';
import type { Length } from '../values/length.ts';

/** How a part is got. */
export const WAYS = ['repair', 're-cut a spare', 'make from stock', 'cast', 'buy', 'swap', 'do without'] as const;
export type Way = (typeof WAYS)[number];

/** A description that any fitting tool meets; never the name of one tool. `meets` in needs.ts decides. */
export type Need =
  | { readonly kind: 'cutter'; readonly pitch: Pitch; readonly angle: Angle; readonly teeth: number }
  | { readonly kind: 'mandrel'; readonly bore: Bore }
  | { readonly kind: 'head'; readonly turns: number }
  | { readonly kind: 'circle'; readonly holes: number }
  | { readonly kind: 'arbor'; readonly diameter: Length }
  | { readonly kind: 'chuck'; readonly jaws: number }
  | { readonly kind: 'other'; readonly name: string };

/** Where an operation is done. Two operations with the same key share a set-up. Words are for people, the key for comparing. */
export type SetUp = {
  readonly key: string;
  readonly place: 'bench' | 'lathe' | 'mill' | 'oven' | 'machine under repair';
  readonly machineId: number | null;
  readonly says: string;
};

/** What to measure, against which one-sided limits. `figure` is the key of the figure that it answers to. */
export type Measure = {
  readonly key: string;
  readonly name: string;
  readonly figure: string;
  readonly low: Length | null;
  readonly high: Length | null;
  readonly below: string;
  readonly above: string;
};

/** towards: the key of the figure to set that this one is only a step to. While what is set stays the same, a step that moved changes nothing. */
export type PlannedFigure = Figure & { readonly towards?: string };

/**
 * One operation as lib plans it. key: lib's stable name, by which stored operations are matched. after: keys that come first.
 * verdict: what is to be said of blank and tools by what is on record so far; unlike the steps it follows every change.
 */
export type PlannedOperation = {
  readonly key: string;
  readonly title: string;
  readonly must: boolean;
  readonly setUp: SetUp;
  readonly steps: readonly string[];
  readonly verdict?: string;
  readonly figures: Readonly<Record<string, PlannedFigure>>;
  readonly measures: readonly Measure[];
  readonly needs: readonly Need[];
  readonly cautions: readonly Caution[];
  readonly minutes: number;
  readonly after: readonly string[];
};
