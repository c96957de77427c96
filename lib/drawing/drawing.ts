/** A drawing in millimetres, y upward, before anything has decided whether it becomes SVG, DXF or ink. */
export type Point = readonly [x: number, y: number];

/**
 * What a line means; the same in drawings, borders and on paper (see DEVELOPERS.md, "Line kinds").
 * here, missing, spare, old outline, waits: the state of a thing. kept, lost: a ratio on the scale. edge: an edge of the same thing
 * that is no outline (root line, keyway beyond). The rest are the draughtsman's own.
 */
const LINE_KINDS = [
  'here',
  'missing',
  'spare',
  'old outline',
  'waits',
  'metal off',
  'section',
  'centre',
  'edge',
  'dimension',
  'witness',
  'kept',
  'lost',
] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export type Anchor = 'start' | 'middle' | 'end';

export type Mark =
  | { readonly draw: 'line'; readonly from: Point; readonly to: Point; readonly kind: LineKind }
  | { readonly draw: 'circle'; readonly middle: Point; readonly radius: number; readonly kind: LineKind }
  | { readonly draw: 'outline'; readonly points: readonly Point[]; readonly closed: boolean; readonly kind: LineKind }
  /**
   * An area hatched at 45 degrees: outer outline with holes in it (even-odd). 'metal off' leans right, a 'section' (metal cut through
   * to look inside) leans left, so that the two are told apart without colour.
   */
  | { readonly draw: 'hatch'; readonly rings: readonly (readonly Point[])[]; readonly kind: 'metal off' | 'section' }
  /** size: letter height in millimetres on the drawing's own scale. */
  | { readonly draw: 'text'; readonly at: Point; readonly says: string; readonly size: number; readonly anchor: Anchor }
  /**
   * A dimension line with two arrowheads; `says` stands above its middle, `also` (the other unit) smaller below. beside: there is no room
   * for letters between its ends; they stand past `to`, on the line drawn on.
   */
  | {
      readonly draw: 'dimension';
      readonly from: Point;
      readonly to: Point;
      readonly says: string;
      readonly also?: string;
      readonly size: number;
      readonly beside?: boolean;
    };

/**
 * describes: the drawing in a sentence, for those who cannot see it.
 * toScale: the millimetres are those of the thing drawn, so that a scale line (on paper a check line) belongs with it.
 */
export type Drawing = {
  readonly title: string;
  readonly describes: string;
  readonly low: Point;
  readonly high: Point;
  readonly toScale: boolean;
  readonly marks: readonly Mark[];
};

export const line = (from: Point, to: Point, kind: LineKind): Mark => ({ draw: 'line', from, to, kind });
export const circle = (middle: Point, radius: number, kind: LineKind): Mark => ({ draw: 'circle', middle, radius, kind });
export const outline = (points: readonly Point[], kind: LineKind): Mark => ({ draw: 'outline', points, closed: true, kind });
export const text = (at: Point, says: string, size: number, anchor: Anchor = 'middle'): Mark => ({ draw: 'text', at, says, size, anchor });

export const moved = (points: readonly Point[], [dx, dy]: Point): Point[] => points.map(([x, y]) => [x + dx, y + dy]);
export const roundOf = (radius: number, steps = 96): Point[] =>
  Array.from({ length: steps }, (_, i) => [radius * Math.sin((2 * Math.PI * i) / steps), radius * Math.cos((2 * Math.PI * i) / steps)]);
