import type { InvoluteSpline } from '../splines/involute.formulas.ts';
import { toothHalfAngle } from '../splines/involute.formulas.ts';
import type { MillPlan } from '../splines/mill-plan.ts';
import { type Length, type LengthUnit, millimetres, toMm } from '../values/length.ts';
import type { LengthForm } from '../values/print.ts';
import { circle, type Drawing, type LineKind, line, type Mark, outline, type Point, roundOf, text } from './drawing.ts';
import { besideTo, dimensionText, type Letters, lettersFor, mmPer, PHONE, type Shown, widthOfText } from './lettering.ts';
import { boreOutline, thinned } from './wheel-outline.ts';

export type SplineDrawingAs = { readonly shown?: Shown; readonly form: LengthForm };

/** A straight-sided spline from its end: of a shaft the keys stand out, of a hub they are grooves in the metal around. */
export type StraightView = {
  readonly part: 'shaft' | 'hub';
  readonly splines: number;
  readonly outside: Length;
  readonly inside: Length;
  readonly width: Length;
};

type Row = { readonly name: string; readonly radius: number };

const rowY = (largest: number, place: number, { figure }: Letters): number => -largest - figure * (2 + 2.6 * place);

/** One diameter under the end view, smallest nearest. */
function rowMarks(rows: readonly Row[], largest: number, letters: Letters, form: LengthForm): Mark[] {
  return [...rows]
    .sort((a, b) => a.radius - b.radius)
    .flatMap(({ name, radius }, place): Mark[] => {
      const y = rowY(largest, place, letters);
      const { says, also } = dimensionText(millimetres(2 * radius), form);
      const drop = (x: number): Mark => line([x, 0], [x, y - letters.label * 0.4], 'witness');
      const measure: Mark = { draw: 'dimension', from: [-radius, y], to: [radius, y], says: `${name} ${says}`, also, size: letters.figure };
      return [drop(-radius), drop(radius), measure];
    });
}

const cross = (largest: number): Mark[] => [line([-largest, 0], [largest, 0], 'centre'), line([0, -largest], [0, largest], 'centre')];

/** The width of the key on top, over it. */
function widthMarks(width: Length, from: number, letters: Letters, form: LengthForm): Mark[] {
  const [half, y] = [toMm(width) / 2, from + letters.figure * 1.3];
  const up = (x: number): Mark => line([x, from * 0.98], [x, y + letters.label * 0.4], 'witness');
  const beside = widthOfText(dimensionText(width, form).says, letters.figure) > 2 * half;
  return [
    up(-half),
    up(half),
    {
      draw: 'dimension',
      from: [-half, y],
      to: [half, y],
      size: letters.figure,
      ...(beside ? { beside } : {}),
      ...dimensionText(width, form),
    },
  ];
}

const HUB_WALL = 1.35;

type EndView = {
  readonly title: string;
  readonly says: string;
  readonly marks: (letters: Letters) => readonly Mark[];
  readonly largest: number;
};

/** An end view with its diameters below and the width of a key above. */
function endView(view: EndView, rows: readonly Row[], width: Length, { shown = PHONE, form }: SplineDrawingAs): Drawing {
  const { largest } = view;
  const beside = (letters: Letters): number => toMm(width) / 2 + besideTo(dimensionText(width, form).says, letters.figure);
  const half = (letters: Letters): number => Math.max(largest, Math.min(beside(letters), largest * 1.6)) + letters.label * 0.8;
  const letters = lettersFor(shown, (guess) => 2 * half(guess));
  return {
    title: view.title,
    describes: view.says,
    low: [-half(letters), rowY(largest, rows.length - 1, letters) - letters.label * 1.8],
    high: [half(letters), largest + letters.figure * 1.3 + letters.label * 2.2],
    toScale: true,
    marks: [...view.marks(letters), ...rowMarks(rows, largest, letters, form), ...widthMarks(width, largest, letters, form)],
  };
}

const sized = (length: Length, form: LengthForm): string => dimensionText(length, form).says;

export function straightDrawing(view: StraightView, as: SplineDrawingAs): Drawing {
  const { part, splines, outside, inside, width } = view;
  const line = boreOutline({ form: 'splined', diameter: outside, minor: inside, splines, keyWidth: width });
  const hub = part === 'hub';
  const largest = (toMm(outside) / 2) * (hub ? HUB_WALL : 1);
  const around = roundOf(largest);
  const title = hub ? `Hub with ${splines} straight grooves` : `Shaft with ${splines} straight keys`;
  const says = `${title}, seen from the end: outside ${sized(outside, as.form)}, inside ${sized(inside, as.form)}, width ${sized(width, as.form)}.`;
  const marks = (): Mark[] => [
    ...(hub ? [{ draw: 'hatch', rings: [around, line], kind: 'section' } as const, outline(around, 'edge')] : []),
    outline(line, 'here'),
    ...cross(largest),
  ];
  const rows = [
    { name: hub ? 'grooves' : 'outside', radius: toMm(outside) / 2 },
    { name: hub ? 'bore' : 'bottoms', radius: toMm(inside) / 2 },
  ];
  return endView({ title, says, marks, largest }, rows, width, as);
}

const turned = ([x, y]: Point, by: number): Point => [x * Math.cos(by) + y * Math.sin(by), y * Math.cos(by) - x * Math.sin(by)];

/** The cutter as a box: its middle `offset` from the shaft's, its edge at `floor`, the shaft turned by `by`. */
function cutterBox(offset: number, floor: number, by: number, { c, D }: MillPlan['shaft']): Point[] {
  const [near, far, top] = [offset - c / 2, offset + c / 2, D * 0.62];
  const corners: Point[] = [
    [near, floor],
    [far, floor],
    [far, top],
    [near, top],
  ];
  return corners.map((corner) => turned(corner, by));
}

/** The shaft to be milled, with the cutter in every place that it has in one space: sides at both keys, and the bottoms. */
export function millingDrawing(plan: MillPlan, turns: number, unit: LengthUnit, as: SplineDrawingAs): Drawing {
  const { shaft, cuts } = plan;
  const mm = mmPer(unit);
  const step = (2 * Math.PI) / (turns * cuts.on.circle);
  const [side, bottom] = [Math.sqrt(shaft.d ** 2 - shaft.w ** 2) / 2, Math.sqrt(shaft.d ** 2 - shaft.c ** 2) / 2];
  const offset = (shaft.w + shaft.c) / 2;
  const boxes = [
    cutterBox(offset, side, 0, shaft),
    ...cuts.off.map((off) => cutterBox(0, bottom, Math.PI / shaft.N + off * step, shaft)),
    cutterBox(-offset, side, (2 * Math.PI) / shaft.N, shaft),
  ].map((box) => box.map(([x, y]): Point => [x * mm, y * mm]));
  const kept = boreOutline({
    form: 'splined',
    diameter: millimetres(shaft.D * mm),
    minor: millimetres(shaft.d * mm),
    splines: shaft.N,
    keyWidth: millimetres(shaft.w * mm),
  });
  const [largest, bar] = [(shaft.D * mm) / 2, roundOf((shaft.D * mm) / 2)];
  const title = `${shaft.N} keys milled`;
  const form = (x: number): string => sized(millimetres(x * mm), as.form);
  const says = `${title}: the shaft from its end, metal to come off hatched, and the cutter ${form(shaft.c)} wide in the ${boxes.length} places that it has in one space: outside ${form(shaft.D)}, bottoms ${form(shaft.d)}, keys ${form(shaft.w)}.`;
  const marks = (letters: Letters): Mark[] => [
    { draw: 'hatch', rings: [bar, kept], kind: 'metal off' },
    outline(bar, 'old outline'),
    outline(kept, 'here'),
    ...boxes.map((box) => outline(box, 'edge')),
    text([largest * 0.02, -letters.label * 0.4], `${shaft.N}`, letters.label),
  ];
  const rows = [
    { name: 'outside', radius: largest },
    { name: 'bottoms', radius: (shaft.d * mm) / 2 },
  ];
  return endView({ title, says, marks, largest: largest * 1.24 }, rows, millimetres(shaft.w * mm), as);
}

const FLANK_STEPS = 8;

/** One part's teeth all round; inside the base circle the flank is drawn radial. */
function involuteOutline(spline: InvoluteSpline, { inside, outside }: { inside: number; outside: number }, mm: number): Point[] {
  const { N } = spline;
  const rb = (N * spline.m * Math.cos(spline.a)) / 2;
  const radii = Array.from({ length: FLANK_STEPS + 1 }, (_, i) => (inside + ((outside - inside) * i) / FLANK_STEPS) / 2);
  const half = (R: number): number => Math.max(0, toothHalfAngle(spline, Math.max(R, rb)));
  const at = (R: number, angle: number): Point => [R * mm * Math.sin(angle), R * mm * Math.cos(angle)];
  return Array.from({ length: N }, (_, i) => (2 * Math.PI * i) / N).flatMap((middle) => [
    ...radii.map((R) => at(R, middle - half(R))),
    ...[...radii].reverse().map((R) => at(R, middle + half(R))),
  ]);
}

/** Shaft and hub of an involute spline in one another: the shaft heavy, the hub's metal cut through around it. */
export function involuteDrawing(spline: InvoluteSpline, unit: LengthUnit, as: SplineDrawingAs): Drawing {
  const mm = mmPer(unit);
  const largest = (spline.hub.outside / 2) * mm * HUB_WALL;
  const around = roundOf(largest);
  const title = `Involute spline of ${spline.N} teeth`;
  const size = (x: number): string => sized(millimetres(x * mm), as.form);
  const says = `${title}, shaft in hub, seen from the end: shaft outside ${size(spline.shaft.outside)}, hub across its tops ${size(spline.hub.inside)}, pitch circle ${size(spline.N * spline.m)}.`;
  const part = (of: 'shaft' | 'hub', kind: LineKind, letters: Letters): Mark =>
    outline(thinned(involuteOutline(spline, spline[of], mm), letters.label / 150), kind);
  const marks = (letters: Letters): Mark[] => [
    { draw: 'hatch', rings: [around, thinned(involuteOutline(spline, spline.hub, mm), letters.label / 150)], kind: 'section' },
    part('hub', 'section', letters),
    part('shaft', 'here', letters),
    circle([0, 0], (spline.N * spline.m * mm) / 2, 'centre'),
    ...cross(largest),
  ];
  const rows = [
    { name: 'shaft', radius: (spline.shaft.outside / 2) * mm },
    { name: 'tops', radius: (spline.hub.inside / 2) * mm },
  ];
  return endView({ title, says, marks, largest }, rows, millimetres(spline.t * mm), as);
}
