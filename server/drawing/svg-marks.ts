import type { LineKind, Mark, Point } from '../../lib/drawing/drawing.ts';
import { hatchLines } from '../../lib/drawing/hatch.ts';
import { besideFrom, besideTo } from '../../lib/drawing/lettering.ts';
import { lineLook, type Medium } from './line-look.ts';
import { escaped, type Pen } from './pen.ts';

export type Ink = {
  readonly pen: Pen;
  readonly medium: Medium /** Height of a label, which hatching and the like go by. */;
  readonly label: number;
};

type Text = { at: Point; says: string; size: number; anchor: string; turned?: number };

/** Letters with a thin ring of the ground about them, so that a line behind does not cross them. */
function textElement({ at, says, size, anchor, turned = 0 }: Text, { pen, medium }: Ink): string {
  const [x, y] = [pen.number(at[0]), pen.number(-at[1])];
  const turn = turned === 0 ? '' : ` transform="rotate(${turned} ${x} ${y})"`;
  const ring = medium === 'paper' ? '#fff' : 'none';
  const ground = `fill="currentColor" stroke="${ring}" stroke-width="${pen.number(size * 0.22)}" stroke-linejoin="round" paint-order="stroke"`;
  return `<text x="${x}" y="${y}" font-size="${pen.number(size)}" text-anchor="${anchor}" ${ground}${turn}>${escaped(says)}</text>`;
}

/** Arrowhead at `tip`, pointing along (dx, dy); three times as long as wide. */
function arrowhead([x, y]: Point, [dx, dy]: Point, long: number): Point[] {
  const [bx, by, half] = [x - dx * long, y - dy * long, long / 6];
  return [
    [x, y],
    [bx - dy * half, by + dx * half],
    [bx + dy * half, by - dx * half],
  ];
}

type Dimension = Extract<Mark, { draw: 'dimension' }>;

/** Lies along the line, is read from below or from the right. Degrees as SVG counts them (clockwise). */
function readingAngle([dx, dy]: Point): number {
  const angle = (Math.atan2(-dy, dx) * 180) / Math.PI;
  if (angle > 89.9) return Math.round(angle - 180);
  return Math.round(angle < -90.1 ? angle + 180 : angle);
}

/** Line, two arrowheads (outside, pointing in, when there is no room between), the figure above the middle or past the end, the other unit below. */
function dimensionElements(mark: Dimension, ink: Ink): string {
  const { from, to, says, also, size, beside = false } = mark;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const back: Point = [-along[0], -along[1]];
  const head = size * 0.62;
  const outside = long < head * 2.6;
  const reach = outside ? head * 1.9 : 0;
  const drawnOn = beside ? besideTo(says, size) : reach;
  const ends: Point[] = [
    [from[0] - along[0] * reach, from[1] - along[1] * reach],
    [to[0] + along[0] * drawnOn, to[1] + along[1] * drawnOn],
  ];
  const heads = [arrowhead(from, outside ? along : back, head), arrowhead(to, outside ? back : along, head)];
  const turned = readingAngle(along);
  const up: Point = [Math.sin((turned * Math.PI) / 180), Math.cos((turned * Math.PI) / 180)];
  const past = besideFrom(size);
  const stand: Point = beside ? [to[0] + along[0] * past, to[1] + along[1] * past] : [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const off = (by: number): Point => [stand[0] + up[0] * by, stand[1] + up[1] * by];
  const anchor = beside ? 'start' : 'middle';
  const { pen, medium } = ink;
  return [
    `<path ${lineLook('dimension', medium)} d="${pen.path(ends, false)}"/>`,
    `<path class="k-arrow" fill="currentColor" stroke="none" d="${heads.map((points) => pen.path(points, true)).join('')}"/>`,
    textElement({ at: off(size * 0.28), says, size, anchor, turned }, ink),
    also ? textElement({ at: off(-size * 0.8 * 1.05), says: also, size: size * 0.8, anchor, turned }, ink) : '',
  ].join('');
}

const circlePath = ([x, y]: Point, radius: number, { number }: Pen): string => {
  const [r, d] = [number(radius), number(2 * radius)];
  return `M${number(x - radius)} ${number(-y)}a${r} ${r} 0 1 0 ${d} 0a${r} ${r} 0 1 0 -${d} 0z`;
};

/** Distance between hatch lines in label heights: a section is hatched closer than metal to come off. */
const GAPS = { 'metal off': 0.5, section: 0.36 } as const;

function pathOf(mark: Mark, { pen, label }: Ink): { kind: LineKind; d: string } | null {
  if (mark.draw === 'line') return { kind: mark.kind, d: pen.path([mark.from, mark.to], false) };
  if (mark.draw === 'circle') return { kind: mark.kind, d: circlePath(mark.middle, mark.radius, pen) };
  if (mark.draw === 'outline') return { kind: mark.kind, d: pen.path(mark.points, mark.closed) };
  if (mark.draw !== 'hatch') return null;
  const lines = hatchLines(mark.rings, label * GAPS[mark.kind], mark.kind === 'section' ? -1 : 1);
  return { kind: mark.kind, d: lines.map(([from, to]) => pen.path([from, to], false)).join('') };
}

/** All marks as elements; neighbours of one kind share a path. Words and dimensions come last, on top of every line. */
export function markElements(marks: readonly Mark[], ink: Ink): string {
  const runs: { kind: LineKind; d: string[] }[] = [];
  const words: string[] = [];
  for (const mark of marks) {
    const path = pathOf(mark, ink);
    const last = runs.at(-1);
    if (path?.d && last?.kind === path.kind) last.d.push(path.d);
    else if (path?.d) runs.push({ kind: path.kind, d: [path.d] });
    if (mark.draw === 'text') words.push(textElement(mark, ink));
    if (mark.draw === 'dimension') words.push(dimensionElements(mark, ink));
  }
  const lines = runs.map(({ kind, d }) => `<path ${lineLook(kind, ink.medium)} d="${d.join('')}"/>`);
  return lines.join('') + words.join('');
}
