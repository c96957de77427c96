import { type BevelPair, type Cones, checkedCones } from '../bevel/pair.ts';
import { inches, millimetres, toMm } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { type Drawing, line, type Mark, outline, type Point, text } from './drawing.ts';

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

const turned = (points: readonly Point[], S: number): Point[] =>
  points.map(([x, y]) => [x * Math.cos(S) + y * Math.sin(S), x * Math.sin(S) - y * Math.cos(S)]);

/** Both wheels of a bevel pair in section, to scale: axes, pitch cones, and the toothed bands. The wheel to make lies along x. */
export function bevelDrawing(pair: BevelPair): Drawing {
  const cones = checkedCones(pair);
  const mm = cones.unit === 'in' ? toMm(inches(1)) : toMm(millimetres(1));
  const reach = cones.Ao * mm * 1.08;
  const letter = reach * 0.045;
  const own = toothBand(cones, cones.g1, mm);
  const mate = turned(toothBand(cones, cones.g2, mm), cones.S);
  const axes: Mark[] = [
    line([-letter, 0], [reach, 0], 'centre'),
    line([0, 0], [reach * Math.cos(cones.S), reach * Math.sin(cones.S)], 'centre'),
    line([0, 0], onCone(cones.g1, cones.Ao * mm, 0), 'edge'),
  ];
  const marks: Mark[] = [
    ...axes,
    outline(own, 'here'),
    { draw: 'hatch', rings: [own], kind: 'section' },
    outline(mate, 'spare'),
    text([reach, letter * 0.5], `${pair.teeth} teeth`, letter, 'end'),
    text([reach * Math.cos(cones.S), reach * Math.sin(cones.S) + letter * 0.6], `${pair.mate} teeth`, letter),
  ];
  const all = [...own, ...mate, [reach, 0], [reach * Math.cos(cones.S), reach * Math.sin(cones.S)], [-letter, -letter]] as const;
  const [xs, ys] = [all.map((point) => point[0] ?? 0), all.map((point) => point[1] ?? 0)];
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
