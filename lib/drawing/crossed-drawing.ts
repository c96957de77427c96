import { toothOf } from '../gears/tooth.ts';
import { toRadians } from '../values/angle.ts';
import { diameterByNormal, mateHelix } from '../worm/crossed.formulas.ts';
import type { CrossedAsked } from '../worm/crossed.sums.ts';
import { type Drawing, type LineKind, line, type Mark, outline, type Point, text } from './drawing.ts';
import { lettersFor, PHONE } from './lettering.ts';

const MM_PER_INCH = 25.4;
/** Face drawn, in normal modules: none was asked for. */
const FACE = 10;

type Cylinder = { readonly d: number; readonly face: number; readonly lean: number; readonly teeth: number; readonly pitch: number };

const turn = ([x, y]: Point, by: number): Point => [x * Math.cos(by) - y * Math.sin(by), x * Math.sin(by) + y * Math.cos(by)];

/** Lines of the teeth on the side that is looked at, leaning by the helix from the axis (which stands upright), a pitch apart. */
function toothLines({ d, face, lean, pitch }: Cylinder): (readonly [Point, Point])[] {
  const slant = (face / 2) * Math.tan(lean);
  const many = Math.floor((d * 0.92) / 2 / pitch);
  return Array.from({ length: 2 * many + 1 }, (_, i) => (i - many) * pitch).flatMap((x) => {
    const ends: [Point, Point] = [
      [x - slant, -face / 2],
      [x + slant, face / 2],
    ];
    return Math.abs(x) + Math.abs(slant) < d / 2 ? [ends] : [];
  });
}

function cylinder(one: Cylinder, by: number, kind: LineKind): Mark[] {
  const corners: Point[] = [
    [-one.d / 2, -one.face / 2],
    [one.d / 2, -one.face / 2],
    [one.d / 2, one.face / 2],
    [-one.d / 2, one.face / 2],
  ];
  return [
    outline(
      corners.map((point) => turn(point, by)),
      kind,
    ),
    ...toothLines(one).map(([from, to]) => line(turn(from, by), turn(to, by), 'edge')),
    line(turn([0, -one.face], by), turn([0, one.face], by), 'centre'),
  ];
}

/**
 * Both wheels looked at square to their shafts, the first one behind with its axis upright, the mate before it: pitch cylinders and the lines of the
 * teeth that face each other. A right-hand tooth leans to the right on the side seen; where they touch, both lie along one line.
 */
export function crossedDrawing(asked: CrossedAsked): Drawing {
  const tooth = toothOf({ teeth: asked.teeth, pitch: asked.pitch, system: asked.system });
  const mm = tooth.unit === 'in' ? MM_PER_INCH : 1;
  const m = tooth.m * mm;
  const [S, b1] = [toRadians(asked.shafts), toRadians(asked.helix)];
  const b2 = mateHelix(S, b1);
  const sign = asked.hand === 'right' ? 1 : -1;
  const one = (N: number, b: number): Cylinder => ({
    d: diameterByNormal(N, m, b),
    face: FACE * m,
    lean: sign * b,
    teeth: N,
    pitch: (Math.PI * m) / Math.cos(b),
  });
  const [first, mate] = [one(asked.teeth, b1), one(asked.mate, b2)];
  const half = Math.max(first.d, mate.d, 2 * FACE * m) / 2;
  const letter = lettersFor(PHONE, ({ label }) => 2 * half + 4 * label).label;
  const reach = half + letter;
  return {
    title: 'Crossed helical wheels',
    describes: `Two helical wheels on shafts that cross at an angle, the first of ${asked.teeth} teeth upright and ${asked.hand}-hand, the mate of ${asked.mate} teeth.`,
    low: [-reach - letter, -reach - 2 * letter],
    high: [reach + letter, reach + 2 * letter],
    toScale: true,
    marks: [
      ...cylinder(first, 0, 'here'),
      ...cylinder({ ...mate, lean: -mate.lean }, -sign * S, 'spare'),
      text([0, -reach - letter], `${asked.teeth} teeth, upright; mate ${asked.mate} teeth`, letter),
    ],
  };
}
