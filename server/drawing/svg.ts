import type { Drawing, Mark, Point } from '../../lib/drawing/drawing.ts';
import { escaped, penFor } from './pen.ts';
import { type Ink, markElements } from './svg-marks.ts';

/**
 * widthPx: how wide the drawing is meant to be shown at most on a screen; from 700 it may fill its panel.
 * toScale: 'paper' gives it width and height in millimetres, so that it prints true, and a check line to measure.
 */
export type SvgAs = { readonly widthPx?: number; readonly toScale?: 'paper' };

const WIDE_PX = 700;
const THIN = '\u2009';
const INCH = 25.4;

type Frame = { readonly low: Point; readonly high: Point; readonly marks: readonly Mark[] };

/** Height of the smallest letters in the drawing; without letters a twenty-third of its width (14.4 px on a phone). */
function labelOf({ marks, low, high }: Drawing): number {
  const sizes = marks.flatMap((mark) => (mark.draw === 'text' ? [mark.size] : mark.draw === 'dimension' ? [mark.size * 0.8] : []));
  return sizes.length ? Math.min(...sizes) : (high[0] - low[0]) / 23;
}

const tick = (x: number, y: number, to: number): Mark => ({ draw: 'line', from: [x, y], to: [x, to], kind: 'edge' });
const flat = (from: number, to: number, y: number): Mark => ({ draw: 'line', from: [from, y], to: [to, y], kind: 'edge' });

/** Two bars from one zero: so many inches above, so many millimetres below. */
function bars(x: number, y: number, inches: number, millimetres: number, tall: number): Mark[] {
  const [a, b] = [x + inches * INCH, x + millimetres];
  return [
    flat(x, a, y + tall / 4),
    tick(x, y - tall, y + tall),
    tick(a, y + tall / 4, y + tall),
    flat(x, b, y - tall / 4),
    tick(b, y - tall / 4, y - tall),
  ];
}

/** On a screen: 1 in / 25 mm under the drawing, the words beside the bars. */
function withScaleLine({ low, high, marks }: Frame, label: number): Frame {
  const [x, y] = [low[0] + label * 0.5, low[1] - label * 0.7];
  const says: Mark = {
    draw: 'text',
    at: [x + INCH + label * 0.5, y - label * 0.36],
    says: `1${THIN}in / 25${THIN}mm`,
    size: label,
    anchor: 'start',
  };
  return { low: [low[0], low[1] - label * 1.5], high, marks: [...marks, ...bars(x, y, 1, 25, label * 0.45), says] };
}

/** On paper: 2 in / 50 mm to be measured before anything is cut by the drawing. */
function withCheckLine({ low, high, marks }: Frame): Frame {
  const [x, y] = [low[0] + 2, low[1] - 6];
  const words = (at: number, says: string): Mark => ({ draw: 'text', at: [x + INCH, at], says, size: 3, anchor: 'middle' });
  const lines = [...bars(x, y, 2, 50, 2.4), words(y + 1.4, `2${THIN}in`), words(y - 4, `50${THIN}mm`)];
  return { low: [low[0], low[1] - 11], high: [Math.max(high[0], x + 2 * INCH + 2), high[1]], marks: [...marks, ...lines] };
}

function framed(drawing: Drawing, label: number, paper: boolean): Frame {
  if (!drawing.toScale) return drawing;
  return paper ? withCheckLine(drawing) : withScaleLine(drawing, label);
}

function sizeAttributes(wide: number, high: number, { widthPx = 0 }: SvgAs, paper: boolean): string {
  const twoPlaces = (mm: number): number => Math.round(mm * 100) / 100;
  if (paper) return `class="dwg dwg-paper" width="${twoPlaces(wide)}mm" height="${twoPlaces(high)}mm"`;
  return widthPx >= WIDE_PX ? 'class="dwg dwg-wide"' : 'class="dwg"';
}

/**
 * A drawing as one SVG element to stand in a page: viewBox in millimetres, a class for each kind of line, its own title and
 * description, no ids, no style attributes, so that many fit on one page under a strict policy.
 */
export function toSvg(drawing: Drawing, as: SvgAs = {}): string {
  const paper = as.toScale === 'paper';
  const label = labelOf(drawing);
  const { low, high, marks } = framed(drawing, label, paper);
  const [wide, tall] = [high[0] - low[0], high[1] - low[1]];
  const pen = penFor(wide);
  const ink: Ink = { pen, medium: paper ? 'paper' : 'screen', label };
  const box = [low[0], -high[1], wide, tall].map((x) => Math.round(x * 1000) / 1000).join(' ');
  return [
    `<svg ${sizeAttributes(wide, tall, as, paper)} viewBox="${box}" role="img" fill="none" stroke="currentColor" stroke-linejoin="round" font-family="sans-serif">`,
    `<title>${escaped(drawing.title)}</title><desc>${escaped(drawing.describes)}</desc>`,
    markElements(marks, ink),
    '</svg>',
  ].join('');
}

/** A drawing as an SVG file of its own, millimetre for millimetre, with the line to check a print by. What scale it is drawn at, its words say. */
export const toSvgFile = (drawing: Drawing): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${toSvg({ ...drawing, toScale: true }, { toScale: 'paper' }).replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" color="#000" ')}\n`;
