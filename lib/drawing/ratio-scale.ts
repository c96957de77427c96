import { type Drawing, line, type Mark, text } from './drawing.ts';
import { type Letters, lettersFor, PHONE, type Shown } from './lettering.ts';

/** One place of the scale: at from 0 (left end) to 1 (right end); kept, lost: whether any ratio that falls there is kept or lost. */
type ScaleMark = { readonly at: number; readonly kept: boolean; readonly lost: boolean };
/** A figured place: 0.1, 1, 10. */
export type ScaleFigure = { readonly at: number; readonly says: string };
export type RatioScale = {
  readonly marks: readonly ScaleMark[];
  readonly decades: readonly ScaleFigure[];
  readonly kept: number;
  readonly lost: number;
};

/** The scale is 100 mm long; nothing on it is to scale with a wheel. */
const LONG = 100;

/**
 * Two to nine in every decade, ruled as on a slide rule: longer at 5. Places between and beyond the figured decades, on the scale only; none
 * where all decades fall on one place, as with a set that gives 1 to 1 and nothing else.
 */
function subdivisions(decades: readonly ScaleFigure[]): { at: number; long: boolean }[] {
  const [first, second] = decades;
  if (!first || !second) return [];
  const wide = second.at - first.at;
  if (!(wide > 0)) return [];
  const count = Math.ceil(1 / wide) + 1;
  return Array.from({ length: count + 1 }, (_, k) => first.at + (k - 1) * wide)
    .flatMap((from) => [2, 3, 4, 5, 6, 7, 8, 9].map((n) => ({ at: from + wide * Math.log10(n), long: n === 5 })))
    .filter(({ at }) => at >= 0 && at <= 1);
}

function ruleMarks({ decades }: RatioScale, { label }: Letters): Mark[] {
  const tick = (at: number, half: number): Mark => line([at * LONG, -half], [at * LONG, half], 'edge');
  return [
    line([0, label * 0.5], [LONG, label * 0.5], 'edge'),
    line([0, -label * 0.5], [LONG, -label * 0.5], 'edge'),
    ...subdivisions(decades).map(({ at, long }) => tick(at, label * (long ? 0.3 : 0.14))),
    ...decades.map(({ at }) => tick(at, label * 0.5)),
  ];
}

const anchorAt = (at: number): 'start' | 'middle' | 'end' => (at < 0.03 ? 'start' : at > 0.97 ? 'end' : 'middle');

/** Where the ratios lie along a logarithmic line: kept above it, lost below, decades figured. The table beside it says the same. */
export function ratioScale(scale: RatioScale, { shown = PHONE }: { readonly shown?: Shown } = {}): Drawing {
  const margin = LONG * 0.015;
  const letters = lettersFor(shown, () => LONG + 2 * margin);
  const { label } = letters;
  const [near, tall] = [label * 0.5, label * 2.6];
  const bar = (at: number, up: 1 | -1, kind: 'kept' | 'lost'): Mark => line([at * LONG, up * near], [at * LONG, up * (near + tall)], kind);
  const below = -near - tall - label * 1.2;
  return {
    title: 'Ratios kept and lost',
    describes: `A logarithmic scale of ratios: ${scale.kept} kept, as ticks above the line, ${scale.lost} lost, as ticks below it.`,
    low: [-margin, below - label * 1.9],
    high: [LONG + margin, near + tall + label * 1.5],
    toScale: false,
    marks: [
      ...scale.marks.filter(({ kept }) => kept).map(({ at }) => bar(at, 1, 'kept')),
      ...scale.marks.filter(({ lost }) => lost).map(({ at }) => bar(at, -1, 'lost')),
      ...ruleMarks(scale, letters),
      text([0, near + tall + label * 0.4], `${scale.kept} kept`, label, 'start'),
      text([LONG, near + tall + label * 0.4], `${scale.lost} lost, below`, label, 'end'),
      ...scale.decades.flatMap(({ at, says }) => [
        line([at * LONG, -near], [at * LONG, below + label * 0.1], 'witness'),
        text([at * LONG, below - label * 0.85], says, label, anchorAt(at)),
      ]),
    ],
  };
}
