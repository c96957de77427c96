/** A drawing in millimetres, y upward, before anything has decided whether it becomes SVG, DXF or ink. */
export type Point = readonly [x: number, y: number];

/** What a line means; the same in drawings, borders and on paper (see DEVELOPERS.md, "Line kinds"). */
export type LineKind = 'here' | 'missing' | 'spare' | 'old outline' | 'waits' | 'metal off' | 'centre' | 'dimension' | 'witness';

export type Mark =
  | { readonly draw: 'line'; readonly from: Point; readonly to: Point; readonly kind: LineKind }
  | { readonly draw: 'circle'; readonly middle: Point; readonly radius: number; readonly kind: LineKind }
  | { readonly draw: 'outline'; readonly points: readonly Point[]; readonly closed: boolean; readonly kind: LineKind }
  /** An area hatched at 45 degrees: outer outline with holes in it (even-odd). */
  | { readonly draw: 'hatch'; readonly rings: readonly (readonly Point[])[] }
  /** size: letter height in millimetres on the drawing's own scale. */
  | { readonly draw: 'text'; readonly at: Point; readonly says: string; readonly size: number; readonly anchor: 'start' | 'middle' | 'end' }
  /** A dimension line with two arrowheads; the text stands above its middle. */
  | { readonly draw: 'dimension'; readonly from: Point; readonly to: Point; readonly says: string; readonly size: number };

/** describes: the drawing in a sentence, for those who cannot see it. scale: true when a check line must be printed with it. */
export type Drawing = {
  readonly title: string;
  readonly describes: string;
  readonly low: Point;
  readonly high: Point;
  readonly toScale: boolean;
  readonly marks: readonly Mark[];
};
