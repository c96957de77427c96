import type { FormPicture, PicturePoint } from '../cutters/form-picture.ts';
import type { LengthUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { type Drawing, line, type Mark, type Point, text } from './drawing.ts';
import { lettersFor, mmPer, PHONE } from './lettering.ts';

export type FormDrawn = {
  readonly picture: FormPicture;
  /** Of the wheel, in `unit`. */
  readonly module: number;
  readonly unit: LengthUnit;
  /** "35 teeth" and "a form right for 26". */
  readonly own: string;
  readonly form: string;
};

/** Millimetres of the drawing that a module takes; what is drawn is so many times larger than the wheel. */
const PER_MODULE = 40;
const CHART_HALF = 30;
const MAGNIFIED = [1, 2, 5, 10, 20, 50, 100, 200, 500] as const;

const sized = (points: readonly PicturePoint[], side: 1 | -1): Point[] => points.map(([x, y]) => [side * x * PER_MODULE, y * PER_MODULE]);
const open = (points: readonly Point[], kind: 'here' | 'missing'): Mark => ({ draw: 'outline', points, closed: false, kind });

/** The largest magnification at which the greatest difference still fits its chart. */
function magnificationOf({ errors }: FormPicture): number {
  const most = Math.max(...errors.map(([x]) => Math.abs(x))) * PER_MODULE;
  return MAGNIFIED.findLast((times) => most * times <= CHART_HALF) ?? 1;
}

/** The difference against a straight line: to the right is metal off that should be there. */
function chartMarks({ errors }: FormPicture, x: number, times: number, label: number): Mark[] {
  const curve = errors.map(([e, y]): Point => [x + e * PER_MODULE * times, y * PER_MODULE]);
  const across = errors
    .filter((_, at) => at % 3 === 0)
    .map(([e, y]) => line([x, y * PER_MODULE], [x + e * PER_MODULE * times, y * PER_MODULE], 'witness'));
  const [top, low] = [PER_MODULE * 1.15, -PER_MODULE * 1.15];
  return [
    line([x, low], [x, top], 'centre'),
    ...across,
    open(curve, 'missing'),
    text([x - CHART_HALF / 2, low - label * 1.1], 'left', label),
    text([x + CHART_HALF / 2, low - label * 1.1], 'off', label),
  ];
}

/**
 * The true space and the cutter's form laid over each other, much enlarged, and beside it the difference along the flank, magnified
 * so many times more; both scales are said.
 */
export function cutterFormDrawing({ picture, module, unit, own, form }: FormDrawn): Drawing {
  const widest = Math.max(...[...picture.own, ...picture.form].map(([x]) => x)) * PER_MODULE;
  const times = magnificationOf(picture);
  const chart = widest + CHART_HALF + 14;
  const [left, right] = [-widest - 6, chart + CHART_HALF + 6];
  const { label } = lettersFor(PHONE, () => right - left);
  const top = Math.max(...picture.own.map(([, y]) => y)) * PER_MODULE;
  const low = Math.min(...[...picture.own, ...picture.form].map(([, y]) => y)) * PER_MODULE;
  const larger = PER_MODULE / (module * mmPer(unit));
  const says = [
    `heavy: true space, ${own}`,
    `dashes: ${form}`,
    `${printShort(larger, 1)} times size; difference ${printShort(larger * times, 0)} times:`,
    'right is metal off, left is metal left',
  ];
  const words = says.map((one, at): Mark => text([left + 2, low - label * (2.8 + at * 1.4)], one, label, 'start'));
  return {
    title: 'The cutter’s form over the true space',
    describes: `${own} and ${form}, ${printShort(larger, 1)} times their size, and their difference along the flank ${printShort(times, 0)} times more: right of the line is metal off that should be there, left of it metal left.`,
    low: [left, low - label * 7.8],
    high: [right, Math.max(top, PER_MODULE * 1.15) + label * 1.6],
    toScale: false,
    marks: [
      line([left + 4, 0], [widest + 4, 0], 'centre'),
      line([0, low - 3], [0, top + 3], 'centre'),
      text([left + 4, label * 0.3], 'pitch line', label, 'start'),
      ...([1, -1] as const).flatMap((side) => [open(sized(picture.own, side), 'here'), open(sized(picture.form, side), 'missing')]),
      ...chartMarks(picture, chart, times, label),
      ...words,
    ],
  };
}
