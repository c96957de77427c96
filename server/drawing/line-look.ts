import type { LineKind } from '../../lib/drawing/drawing.ts';

/** How a kind of line is ruled: heavy or thin, and the lengths of its dashes and gaps in px on a screen (a quarter of that in mm on paper). */
type Look = { readonly heavy: boolean; readonly dashes: readonly number[] };

const LOOKS: Readonly<Record<LineKind, Look>> = {
  here: { heavy: true, dashes: [] },
  missing: { heavy: true, dashes: [5, 4] },
  spare: { heavy: false, dashes: [] },
  'old outline': { heavy: false, dashes: [14, 3, 4, 3, 4, 3] },
  waits: { heavy: true, dashes: [12, 4, 4, 4] },
  'metal off': { heavy: false, dashes: [] },
  section: { heavy: false, dashes: [] },
  centre: { heavy: false, dashes: [14, 4, 3, 4] },
  edge: { heavy: false, dashes: [] },
  dimension: { heavy: false, dashes: [] },
  witness: { heavy: false, dashes: [] },
  kept: { heavy: false, dashes: [] },
  lost: { heavy: false, dashes: [] },
};

/** Thin and heavy, in px on a screen and in mm on paper. */
const WIDTHS = { screen: [1, 2], paper: [0.35, 0.7] } as const;
export type Medium = keyof typeof WIDTHS;

/** Class and stroke of a kind of line. On a screen the stroke keeps its px whatever the drawing's scale. */
export function lineLook(kind: LineKind, medium: Medium): string {
  const { heavy, dashes } = LOOKS[kind];
  const per = medium === 'paper' ? 0.25 : 1;
  const dashed = dashes.length ? ` stroke-dasharray="${dashes.map((dash) => dash * per).join(' ')}"` : '';
  const keeps = medium === 'screen' ? ' vector-effect="non-scaling-stroke"' : '';
  return `class="k-${kind.replace(' ', '-')}" stroke-width="${WIDTHS[medium][heavy ? 1 : 0]}"${dashed}${keeps}`;
}
