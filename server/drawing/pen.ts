import type { Point } from '../../lib/drawing/drawing.ts';

/** Writes coordinates: y turned downward, and no more decimals than can be seen. */
export type Pen = {
  readonly number: (x: number) => string;
  readonly path: (points: readonly Point[], closed: boolean) => string;
};

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
export const escaped = (says: string): string => says.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);

/** A pen whose last decimal is finer than a three-thousandth of the drawing's width. */
export function penFor(width: number): Pen {
  const scale = 10 ** Math.max(0, Math.ceil(Math.log10(3000 / width)));
  const whole = (x: number): number => Math.round(x * scale);
  const print = (n: number): string => String((n === 0 ? 0 : n) / scale).replace(/^(-?)0\./, '$1.');
  const pair = (x: number, y: number): string => `${print(x)}${y < 0 ? '' : ' '}${print(y)}`;
  /** Steps from the rounded place before, so that rounding never adds up. */
  const path = (points: readonly Point[], closed: boolean): string => {
    const places = points.map(([x, y]) => [whole(x), whole(-y)] as const);
    const steps = places.map(([x, y], i) => {
      const [px, py] = places[i - 1] ?? [0, 0];
      return i > 0 && x === px && y === py ? '' : `${i === 0 ? 'M' : 'l'}${pair(x - px, y - py)}`;
    });
    return steps.join('') + (closed ? 'z' : '');
  };
  return { number: (x) => print(whole(x)), path };
}
