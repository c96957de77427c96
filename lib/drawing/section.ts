import type { Gear, Recess } from '../gears/gear.ts';
import { toMm } from '../values/length.ts';
import { type LineKind, line, type Mark, outline, type Point, text } from './drawing.ts';
import { mmOf } from './lettering.ts';
import { type WheelRadii, wheelRadii } from './wheel-outline.ts';

/** Where the section stands: its left edge and the face drawn (a guess when nobody has measured it). */
export type SectionPlace = { readonly x: number; readonly face: number; readonly letter: number };

/** A recess's depth is not recorded; three tenths of the face are drawn for it. */
const RECESS_DEPTH = 0.3;

type Band = { readonly inner: number; readonly outer: number };

function notches(recesses: readonly Recess[], side: 'marked' | 'other', from: number, to: number): Band[] {
  return recesses
    .filter((recess) => recess.side === side || recess.side === 'both')
    .map(({ inner, outer }) => ({ inner: Math.max(from, toMm(inner) / 2), outer: Math.min(to, toMm(outer) / 2) }))
    .filter(({ inner, outer }) => outer > inner)
    .sort((a, b) => a.inner - b.inner);
}

/** The cut metal above the axis between two radii: up the marked side, down the other, round each recess. */
function cutMetal(recesses: readonly Recess[], from: number, to: number, { x, face }: SectionPlace): Point[] {
  const depth = face * RECESS_DEPTH;
  const up = notches(recesses, 'marked', from, to).flatMap(({ inner, outer }): Point[] => [
    [x, inner],
    [x + depth, inner],
    [x + depth, outer],
    [x, outer],
  ]);
  const down = notches(recesses, 'other', from, to)
    .reverse()
    .flatMap(({ inner, outer }): Point[] => [
      [x + face, outer],
      [x + face - depth, outer],
      [x + face - depth, inner],
      [x + face, inner],
    ]);
  return [[x, from], ...up, [x, to], [x + face, to], ...down, [x + face, from]];
}

/** What is solid between bore and root, as bands: the openings (holes, spokes) taken out. */
function solidBands(gear: Gear, from: number, to: number): Band[] {
  if (!gear.body.known) return [];
  const gaps = gear.body.openings
    .map(({ inner, outer }) => ({ inner: toMm(inner) / 2, outer: toMm(outer) / 2 }))
    .sort((a, b) => a.inner - b.inner);
  const bands: Band[] = [];
  let at = from;
  for (const gap of gaps) {
    if (gap.inner > at) bands.push({ inner: at, outer: Math.min(gap.inner, to) });
    at = Math.max(at, gap.outer);
  }
  return at < to ? [...bands, { inner: at, outer: to }] : bands;
}

const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]) => [x, -y]);
const rectangle = (x: number, y: number, wide: number, high: number): Point[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** Radius of the hole at the top and at the bottom of the section: a keyway is cut through at the top. */
function holeRadii(gear: Gear): readonly [top: number, bottom: number] {
  const bore = gear.bore;
  if (bore === null) return [0, 0];
  const radius = toMm(bore.diameter) / 2;
  return [bore.form === 'keyed' ? radius + toMm(bore.keyDepth) : radius, radius];
}

function metalMarks(gear: Gear, root: number, place: SectionPlace): Mark[] {
  if (!gear.body.known)
    return [
      text([place.x + place.face / 2, root * 0.62], '?', place.letter * 1.4),
      text([place.x + place.face / 2, -root * 0.62 - place.letter], '?', place.letter * 1.4),
    ];
  const { recesses } = gear.body;
  const [top, bottom] = holeRadii(gear);
  const above = solidBands(gear, top, root).map(({ inner, outer }) => cutMetal(recesses, inner, outer, place));
  const below = solidBands(gear, bottom, root).map(({ inner, outer }) => mirrored(cutMetal(recesses, inner, outer, place)));
  return [...above, ...below].flatMap((ring): Mark[] => [{ draw: 'hatch', rings: [ring], kind: 'section' }, outline(ring, 'edge')]);
}

function boreMarks(gear: Gear, { x, face }: SectionPlace): Mark[] {
  if (gear.bore === null) return [];
  const [top, bottom] = holeRadii(gear);
  const edge = (y: number): Mark => line([x, y], [x + face, y], 'edge');
  const inner = gear.bore.form === 'splined' ? toMm(gear.bore.minor) / 2 : bottom;
  return [...new Set([top, -bottom, inner, -inner])].map(edge);
}

/** The wheel cut through its axis: outline, root lines, pitch lines, axis; cut metal hatched where the body is known. Teeth are never hatched. */
export function sectionMarks(gear: Gear, place: SectionPlace, kind: LineKind): Mark[] {
  const { x, face, letter } = place;
  const { outside, pitch, root }: WheelRadii = wheelRadii(gear);
  const over = letter * 0.5;
  const both = (r: number, past: number, lineKind: LineKind): Mark[] =>
    [r, -r].map((y) => line([x - past, y], [x + face + past, y], lineKind));
  return [
    ...metalMarks(gear, root, place),
    ...boreMarks(gear, place),
    ...both(root, 0, 'edge'),
    ...both(pitch, over, 'centre'),
    line([x - over, 0], [x + face + over, 0], 'centre'),
    outline(rectangle(x, -outside, face, 2 * outside), gear.face === null ? 'missing' : kind),
  ];
}

/** The face to draw: as measured, else a guess of 8 modules. */
export const drawnFace = (gear: Gear): number => {
  const { pitch } = wheelRadii(gear);
  return mmOf(gear.face, (8 * 2 * pitch) / gear.teeth);
};
