import type { RatioScale, ScaleFigure } from '../../lib/drawing/ratio-scale.ts';
import type { RatioMarks } from '../../lib/trains/ratio-marks.ts';

const DECADES = [0.001, 0.01, 0.1, 1, 10, 100, 1000] as const;

/** Marks in columns as the drawing takes them: one tick for each column, placed from 0 to 1 along the line. */
export function scaleOf({ greatest, kept, lost }: RatioMarks): RatioScale {
  const pixels = kept.length;
  const marks = kept.flatMap((many, column) => {
    const gone = lost[column] ?? 0;
    return many + gone === 0 ? [] : [{ at: (column + 0.5) / pixels, kept: many > 0, lost: gone > 0 }];
  });
  const place = (value: number): number => (value === 1 ? 0.5 : 0.5 + Math.log(value) / (2 * Math.log(greatest)));
  const decades: ScaleFigure[] = DECADES.map((value) => ({ at: place(value), says: String(value) })).filter(({ at }) => at >= 0 && at <= 1);
  const all = (many: readonly number[]): number => many.reduce((sum, one) => sum + one, 0);
  return { marks, decades, kept: all(kept), lost: all(lost) };
}
