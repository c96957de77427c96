import { type BevelPair, type Cones, checkedCones } from '../bevel/pair.ts';
import { inches, millimetres, toMm } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { type Drawing, line, type Mark, outline, type Point, text } from './drawing.ts';
import { lettersFor, PHONE } from './lettering.ts';

/** A point on a wheel's blank: along the pitch cone from the apex, then square to it (outward is plus); g the pitch angle. */
function onCone(g: number, along: number, out: number): Point {
  return [along * Math.cos(g) - out * Math.sin(g), along * Math.sin(g) + out * Math.cos(g)];
}

/** The toothed part seen in section above its axis: tip and root lines run to the apex. */
function toothBand({ Ao, F, A, B }: Cones, g: number, mm: number): Point[] {
  const small = (Ao - F) / Ao;
  return [
    onCone(g, Ao * mm, A * mm),
    onCone(g, (Ao - F) * mm, A * small * mm),
    onCone(g, (Ao - F) * mm, -B * small * mm),
    onCone(g, Ao * mm, -B * mm),
  ];
}

/** Turned to the mate's own axis, which lies S from this one's; the mate's pitch cone touches this wheel's. */
const toMate = (points: readonly Point[], S: number): Point[] =>
  points.map(([x, y]) => [x * Math.cos(S) + y * Math.sin(S), x * Math.sin(S) - y * Math.cos(S)]);
const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]) => [x, -y]);

/** Outline of a whole blank about its axis, from the band of teeth above the axis: round the small end, down, and back by the large end. */
const blankOf = (band: readonly Point[]): Point[] => [
  ...band.slice(0, 3),
  ...mirrored(band.slice(0, 3)).reverse(),
  ...mirrored(band.slice(3)),
  ...band.slice(3),
];

/** Both wheels of a bevel pair in section, to scale: axes, pitch cones, and the toothed bands. The wheel to make lies along x. */
export function bevelDrawing(pair: BevelPair): Drawing {
  const cones = checkedCones(pair);
  const mm = cones.unit === 'in' ? toMm(inches(1)) : toMm(millimetres(1));
  const reach = cones.Ao * mm * 1.08;
  const [own, other] = [toothBand(cones, cones.g1, mm), toothBand(cones, cones.g2, mm)];
  const [blank, mate] = [blankOf(own), toMate(blankOf(other), cones.S)];
  const far: Point = [reach * Math.cos(cones.S), reach * Math.sin(cones.S)];
  const across = [...blank, ...mate, [reach, 0] as const, far].map(([x]) => x);
  const letter = lettersFor(PHONE, ({ label }) => Math.max(...across) - Math.min(0, ...across) + 6 * label).label;
  const marks: Mark[] = [
    line([-letter, 0], [reach, 0], 'centre'),
    line([0, 0], far, 'centre'),
    line([0, 0], onCone(cones.g1, cones.Ao * mm, 0), 'edge'),
    outline(blank, 'here'),
    { draw: 'hatch', rings: [own], kind: 'section' },
    { draw: 'hatch', rings: [mirrored(own)], kind: 'section' },
    outline(mate, 'spare'),
    text([reach, letter * 0.5], `${pair.teeth} teeth`, letter, 'end'),
    text([far[0], far[1] + letter * 0.6], `${pair.mate} teeth`, letter),
  ];
  const all: Point[] = [...blank, ...mate, [reach, 0], far, [-letter, -letter]];
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const face = printLength(cones.unit === 'in' ? inches(cones.F) : millimetres(cones.F), {
    unit: cones.unit,
    places: cones.unit === 'in' ? 3 : 2,
  });
  return {
    title: 'Bevel pair',
    describes: `Section through a bevel pair of ${pair.teeth} and ${pair.mate} teeth, face ${face} ${cones.unit}; the wheel to make is hatched, its axis level.`,
    low: [Math.min(...xs) - letter * 3, Math.min(...ys) - letter],
    high: [Math.max(...xs) + letter * 3, Math.max(...ys) + letter * 2.5],
    toScale: true,
    marks,
  };
}
