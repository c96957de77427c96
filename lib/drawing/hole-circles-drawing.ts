import { circle, type Drawing, line, type Mark, type Point, text } from './drawing.ts';
import { lettersFor, PHONE, type Shown } from './lettering.ts';

/** All in millimetres. number: written beside the first hole of each circle, 0 writes none. */
export type HolesDrawn = {
  readonly title: string;
  readonly circles: readonly { readonly diameter: number; readonly holes: readonly Point[] }[];
  readonly hole: number;
  readonly middle: Point;
};

const CROSS = 1.4;

const holeMarks = (at: Point, hole: number): Mark[] => {
  const arm = (hole / 2) * CROSS;
  return [
    circle(at, hole / 2, 'here'),
    line([at[0] - arm, at[1]], [at[0] + arm, at[1]], 'centre'),
    line([at[0], at[1] - arm], [at[0], at[1] + arm], 'centre'),
  ];
};

/** Holes on their circles, to scale, with the number of holes by hole 1 of each. Without letters it is what a drilling job takes. */
export function holeCirclesDrawing(
  { title, circles, hole, middle }: HolesDrawn,
  { shown = PHONE, lettered = true }: { readonly shown?: Shown; readonly lettered?: boolean } = {},
): Drawing {
  const [x, y] = middle;
  const reach = Math.max(...circles.map(({ diameter }) => diameter / 2)) + hole / 2;
  const letters = lettersFor(shown, ({ label }) => 2 * (reach + label * 2));
  const room = reach + (lettered ? letters.label * 2 : hole);
  const number = ({ holes }: HolesDrawn['circles'][number]): Mark[] => {
    const [first] = holes;
    return first ? [text([first[0], first[1] - hole / 2 - letters.label * 0.9], `${holes.length}`, letters.label)] : [];
  };
  return {
    title,
    describes: `Holes of ${hole} mm on ${circles.length === 1 ? 'a circle' : `${circles.length} circles`}: ${circles.map(({ diameter, holes }) => `${holes.length} on ${Math.round(diameter * 1000) / 1000} mm`).join(', ')}.`,
    low: [x - room, y - room],
    high: [x + room, y + room],
    toScale: true,
    marks: [
      line([x - reach, y], [x + reach, y], 'centre'),
      line([x, y - reach], [x, y + reach], 'centre'),
      ...circles.map(({ diameter }) => circle(middle, diameter / 2, 'centre')),
      ...circles.flatMap(({ holes }) => holes.flatMap((at) => holeMarks(at, hole))),
      ...(lettered ? circles.flatMap(number) : []),
    ],
  };
}
