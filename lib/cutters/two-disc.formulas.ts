import { DomainError } from '../figure/domain-error.ts';
import { spaceAtBase } from '../gears/profile.formulas.ts';
import { baseDiameter, outsideDiameter, pitchDiameter, type Tooth } from '../gears/tooth.ts';

/** A point of a flank: x sideways from the middle line of the space, y above the pitch line. */
export type FlankPoint = readonly [x: number, y: number];

/**
 * Two like discs, one for each flank: D diameter, C distance between their middles, k height of the middles above the pitch line;
 * off the largest that the arcs leave the true flank by, either way, square to it.
 */
export type TwoDiscs = { readonly D: number; readonly C: number; readonly k: number; readonly off: number };

/**
 * The least radius at which a mate can still touch the flank: that of a rack with the wheel's own addendum A,
 *   Rs = √(rb² + (r sin a − A/sin a)²), or the base circle where the bracket is below 0.
 * r pitch radius, rb base radius, a pressure angle. Source: derived: the rack's tips leave the line of action A/sin a from the pitch point;
 * agrees with ISO 21771:2007, start of active profile with a rack (value from memory). Example: 35 teeth, m 1, 20°, A 1: 16.787.
 */
export function activeFrom(tooth: Tooth): number {
  const [r, rb, sin] = [pitchDiameter(tooth) / 2, baseDiameter(tooth) / 2, Math.sin(tooth.a)];
  return Math.hypot(rb, Math.max(0, r * sin - tooth.A / sin));
}

/** The true involute between two radii, in even steps of roll, in the cutter's own coordinates. */
function flankPoints(tooth: Tooth, from: number, steps: number): readonly FlankPoint[] {
  const [r, rb, ro] = [pitchDiameter(tooth) / 2, baseDiameter(tooth) / 2, outsideDiameter(tooth) / 2];
  if (ro <= from) throw noFlank(tooth);
  const [first, last] = [Math.sqrt(Math.max(0, from * from - rb * rb)), Math.sqrt(ro * ro - rb * rb)];
  const t0 = spaceAtBase(tooth);
  return Array.from({ length: steps + 1 }, (_, i): FlankPoint => {
    const string = first + ((last - first) * i) / steps;
    const t = t0 + string / rb - Math.atan2(string, rb);
    const R = Math.hypot(rb, string);
    return [R * Math.sin(t), R * Math.cos(t) - r];
  });
}

const noFlank = ({ N }: Tooth): DomainError =>
  new DomainError({
    given: `${N} teeth of this shape.`,
    limit: 'No involute is left on the tooth for a disc to follow.',
    tryThis: 'Take more teeth or the usual addendum.',
    about: ['teeth'],
  });

type Circle = { readonly x: number; readonly y: number; readonly R: number };

/** The circle through three points. Source: Euclid, Elements, III.1 and IV.5. */
function circleThrough([ax, ay]: FlankPoint, [bx, by]: FlankPoint, [cx, cy]: FlankPoint): Circle {
  const d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
  const [a2, b2, c2] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  const x = (a2 * (by - cy) + b2 * (cy - ay) + c2 * (ay - by)) / d;
  const y = (a2 * (cx - bx) + b2 * (ax - cx) + c2 * (bx - ax)) / d;
  return { x, y, R: Math.hypot(ax - x, ay - y) };
}

/** How far each point lies outside (plus) or inside a circle. */
const offCircle = (points: readonly FlankPoint[], { x, y, R }: Circle): number[] =>
  points.map(([px, py]) => Math.hypot(px - x, py - y) - R);

/** Four simultaneous equations by elimination with the largest leading number first. Source: any textbook of numerical methods. */
function solved(rows: readonly (readonly number[])[]): readonly number[] {
  const m = rows.map((row) => [...row]);
  for (let i = 0; i < m.length; i++) {
    const rest = m.slice(i).sort((p, q) => Math.abs(q[i] ?? 0) - Math.abs(p[i] ?? 0));
    m.splice(i, m.length - i, ...rest);
    const [lead, at] = [m[i] ?? [], m[i]?.[i] ?? 1];
    for (let j = 0; j < m.length; j++) {
      const row = m[j] ?? [];
      const by = (row[i] ?? 0) / at;
      if (j !== i) m[j] = row.map((value, k) => value - by * (lead[k] ?? 0));
    }
  }
  return m.map((row, i) => (row[m.length] ?? 0) / (row[i] ?? 1));
}

/** The circle from which four points lie alternately as far outside and inside: Newton's method on its middle, radius and that distance. */
function levelled(four: readonly FlankPoint[], start: Circle): Circle {
  let circle = start;
  for (let step = 0; step < 12; step++) {
    const { x, y, R } = circle;
    const rows = four.map(([px, py], i) => {
      const d = Math.hypot(px - x, py - y);
      return [(x - px) / d, (y - py) / d, -1, i % 2 === 0 ? -1 : 1, R - d];
    });
    const [dx = 0, dy = 0, dR = 0] = solved(rows);
    circle = { x: x + dx, y: y + dy, R: R + dR };
    if (Math.abs(dx) + Math.abs(dy) + Math.abs(dR) < 1e-13 * R) break;
  }
  return circle;
}

/** The points at which a circle is farthest off between its changes of side: both ends and the two turning points within. */
function worstFour(points: readonly FlankPoint[], circle: Circle): readonly number[] {
  const off = offCircle(points, circle);
  const turns = off.flatMap((e, i) => {
    const [before, after] = [off[i - 1], off[i + 1]];
    return before !== undefined && after !== undefined && (e - before) * (after - e) <= 0 ? [i] : [];
  });
  return [0, turns[0] ?? Math.round(points.length / 4), turns.at(-1) ?? Math.round((3 * points.length) / 4), points.length - 1];
}

const STEPS = 240;

/**
 * The two discs whose arcs leave the true flank least at their worst place, from where a mate first touches it to the outside.
 * The best circle leaves the flank equally far at four places, alternately outside and inside it (Chebyshev's rule for the smallest
 * largest error); found by taking the four worst places of the last circle and levelling them, again and again.
 * N teeth, module m, angle a, addendum A. Its own error is given with it: a disc is a stand-in for the involute, more so the fewer the teeth.
 * Source: derived; P. L. Chebyshev's alternation and E. Remez's exchange, as in any textbook of approximation; that an arc may stand for the
 * flank is common practice. Checked by a search over middles and against the circle of curvature, radius r sin a at the pitch point.
 * Throws DomainError when no flank is left. Example: 35 teeth, m 1, 20°: D 11.76.
 */
export function twoDiscs(tooth: Tooth): TwoDiscs {
  const points = flankPoints(tooth, activeFrom(tooth), STEPS);
  const at = (part: number): FlankPoint => points[Math.round(part * STEPS)] ?? [0, 0];
  let circle = circleThrough(at(0.07), at(0.5), at(0.93));
  for (let step = 0; step < 8; step++)
    circle = levelled(
      worstFour(points, circle).map((i) => points[i] ?? [0, 0]),
      circle,
    );
  const off = Math.max(...offCircle(points, circle).map(Math.abs));
  return { D: 2 * circle.R, C: 2 * circle.x, k: circle.y, off };
}

/** Where the two-disc form is off along the flank: at y above the pitch line; plus is metal off that should be there. Source: derived. */
export function discErrors(tooth: Tooth, { D, C, k }: TwoDiscs, steps: number): readonly FlankPoint[] {
  const points = flankPoints(tooth, activeFrom(tooth), steps);
  const off = offCircle(points, { x: C / 2, y: k, R: D / 2 });
  return points.map(([, y], i) => [off[i] ?? 0, y]);
}

/**
 * How far the discs go in from touching the turned rim of a cutter blank: k + B + √((D/2)² − ((C − w)/2)²); a blank as wide as C or wider is
 * touched by the discs' foremost points, and the root is D/2.
 * B dedendum, w width of the blank's rim. Derived: the discs stand side by side, their line across the middle line of the space; the tip of the
 * cutter, B below the pitch line, is the blank's rim. Throws DomainError when the blank passes between the discs.
 * Example: D 12, C 13, k 0.5, B 1.25, w 13: 7.75.
 */
export function infeed({ D, C, k }: TwoDiscs, B: number, w: number): number {
  const aside = Math.max(0, (C - w) / 2);
  if (aside >= D / 2)
    throw new DomainError({
      given: 'A cutter blank narrower than the gap between the discs.',
      limit: 'The discs would pass it on both sides.',
      tryThis: 'Take a blank at least as wide as the space at the outside of the wheel.',
      about: ['blankWidth'],
    });
  return k + B + Math.sqrt((D / 2) ** 2 - aside * aside);
}
