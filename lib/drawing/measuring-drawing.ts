import { spanOver } from '../gears/base-tangent.formulas.ts';
import type { Gear } from '../gears/gear.ts';
import { systemByKey } from '../gears/systems.ts';
import { ratio } from '../values/ratio.ts';
import { circle, type Drawing, line, type Mark, type Point, text } from './drawing.ts';
import { wheelOutline, wheelRadii } from './wheel-outline.ts';

/** The wheel that stands for any: 24 teeth, spanned over 3 and over 4. */
const TEETH = 24;
const MODULE_MM = 2.5;
const ALPHA = Math.PI / 9;
const LETTER = 4.2;
const LABEL = 3.1;

function wheelShown(): Pick<Gear, 'teeth' | 'pitch' | 'system'> {
  const named = systemByKey('module-1.25');
  if (!named) throw new RangeError('no 20° system');
  return { teeth: TEETH, pitch: { kind: 'module', size: ratio(5, 2) }, system: named.system };
}

/** Clockwise from the top, in teeth. */
const at = (radius: number, teeth: number): Point => {
  const t = (2 * Math.PI * teeth) / TEETH;
  return [radius * Math.sin(t), radius * Math.cos(t)];
};
const turned = ([x, y]: Point, teeth: number): Point => {
  const t = (2 * Math.PI * teeth) / TEETH;
  return [x * Math.cos(t) + y * Math.sin(t), y * Math.cos(t) - x * Math.sin(t)];
};

const spanMm = (k: number): number => {
  const tooth = MODULE_MM;
  const flanks = { N: TEETH, mn: tooth, an: ALPHA, psi: 0, v: 0, A: tooth, B: 1.25 * tooth, ring: false, unit: 'mm' } as const;
  return spanOver(flanks, (Math.PI * tooth) / 2, k);
};

/** Two jaws over k teeth whose middle stands so many teeth from the top, with a letter between them. */
function jaws(k: number, teeth: number, letter: string, outside: number): Mark[] {
  const [half, low, high] = [spanMm(k) / 2, outside - 4.4, outside + 5];
  const jaw = (x: number): Mark => line(turned([x, low], teeth), turned([x, high], teeth), 'here');
  const [left, right] = [turned([-half, high - 1], teeth), turned([half, high - 1], teeth)];
  const [x, y] = turned([0, high + 2.6], teeth);
  return [jaw(-half), jaw(half), line(left, right, 'dimension'), text([x, y - LETTER * 0.35], letter, LETTER)];
}

/** Pins in two opposite spaces and how they are measured over. */
function pins(teeth: number, pitch: number): Mark[] {
  const radius = 0.86 * MODULE_MM;
  const [one, other] = [at(pitch + 0.5, teeth), at(pitch + 0.5, teeth + TEETH / 2)];
  const [from, to] = [at(pitch + 0.5 + radius, teeth), at(pitch + 0.5 + radius, teeth + TEETH / 2)];
  const beside = at(pitch + 8.6, teeth);
  return [
    circle(one, radius, 'here'),
    circle(other, radius, 'here'),
    line(from, to, 'dimension'),
    text([beside[0], beside[1] - LETTER * 0.35], 'F', LETTER),
  ];
}

function across(outside: number, root: number): Mark[] {
  const y = -outside - 9;
  const drop = (x: number): Mark => line([x, -1], [x, y - 1.5], 'witness');
  const from = at(root, TEETH / 4 - 2.5);
  const to = at(root, (3 * TEETH) / 4 - 2.5);
  return [
    drop(-outside),
    drop(outside),
    { draw: 'dimension', from: [-outside, y], to: [outside, y], says: 'A', size: LETTER },
    line(from, to, 'dimension'),
    text([at(root * 0.55, TEETH / 4 - 2.5)[0], at(root * 0.55, TEETH / 4 - 2.5)[1] + 1.4], 'B', LETTER),
  ];
}

/** A few teeth, larger: tip to bottom. */
function larger(points: readonly Point[], [x, y]: Point, outside: number, root: number): Mark[] {
  const by = 2.2;
  const top = points
    .filter(([px, py]) => py > 0 && Math.abs(Math.atan2(px, py)) < (2 * Math.PI * 1.75) / TEETH)
    .sort((p, q) => Math.atan2(...p) - Math.atan2(...q));
  const placed = top.map(([px, py]): Point => [x + px * by, y + (py - root) * by]);
  const [low, high, right] = [y, y + (outside - root) * by, x + 28];
  return [
    { draw: 'outline', points: placed, closed: false, kind: 'here' },
    line([x, high], [right + 2, high], 'witness'),
    line([x + 10, low], [right + 2, low], 'witness'),
    line([right, low], [right, high], 'dimension'),
    text([right + 2, (low + high) / 2 - LETTER * 0.35], 'C', LETTER, 'start'),
  ];
}

/** The wheel and its mate from the front: how far their middles are apart. */
function withMate([x, y]: Point): Mark[] {
  const [one, other] = [8, 12];
  const [a, b]: readonly [Point, Point] = [
    [x - 18, y],
    [x - 18 + one + other, y],
  ];
  const drop = ([px, py]: Point): Mark => line([px, py], [px, y - 15.5], 'witness');
  return [
    circle(a, one, 'here'),
    circle(b, other, 'edge'),
    text([b[0], b[1] + 2.5], 'mate', LABEL),
    drop(a),
    drop(b),
    { draw: 'dimension', from: [a[0], y - 14], to: [b[0], y - 14], says: 'G', size: LETTER },
  ];
}

/** What inked teeth leave on paper: lines that lean from the axis, or do not. */
function print([x, y]: Point): Mark[] {
  const lean = 4;
  const lines = Array.from({ length: 6 }, (_, i): Mark => line([x - 22 + i * 7, y - 7], [x - 22 + i * 7 + lean, y + 7], 'here'));
  return [
    ...lines,
    line([x - 22 + 14, y - 9], [x - 22 + 14, y + 9.5], 'centre'),
    text([x - 22 + 15.6, y + 9.6], 'H', LETTER, 'start'),
    text([x - 26, y - 11.5], 'print of the inked teeth; chain line: axis', LABEL, 'start'),
  ];
}

/**
 * What to measure on a wheel of unknown pitch, and where: A over the tips, B across the roots, C tip to bottom, D and E between jaws over some
 * teeth and one more, F over pins, G to the middle of a mate, H the lean of a print. It stands for any wheel, and is not to scale.
 */
export function measuringDrawing(): Drawing {
  const wheel = wheelShown();
  const { outside, pitch, root } = wheelRadii(wheel);
  const points = wheelOutline(wheel);
  const right = outside + 48;
  return {
    title: 'Where to measure',
    describes:
      'A wheel of 24 teeth from the front with the places of the readings: A over opposite tips, B across opposite roots, C from tip to bottom, D between jaws over three teeth, E over four, F over two pins in opposite spaces, G between the middles of the wheel and its mate, H the lean of a rolled print. Not to scale.',
    low: [-outside - 4, -outside - 13.5],
    high: [right + 35, outside + 11],
    toScale: false,
    marks: [
      { draw: 'outline', points, closed: true, kind: 'here' },
      circle([0, 0], 7, 'here'),
      ...across(outside, root),
      ...jaws(3, 0, 'D', outside),
      ...jaws(4, TEETH / 4 - 1.5, 'E', outside),
      ...pins(-3.5, pitch),
      ...larger(points, [right, outside - 12], outside, root),
      ...withMate([right + 2, 1]),
      ...print([right, -outside - 1]),
    ],
  };
}
