import type { EdgePoint } from '../cutters/ground-space.ts';
import { type Length, type LengthUnit, millimetres } from '../values/length.ts';
import { type Drawing, line, type Mark, type Point, text } from './drawing.ts';
import { dimensionText, type Letters, lettersFor, mmPer, PHONE } from './lettering.ts';

/** edge: the right edge of the tool from its tip up, in `unit`; rows: where its widths are listed. says: what the tool is for. */
export type ToolDrawn = {
  readonly edge: readonly EdgePoint[];
  readonly rows: readonly EdgePoint[];
  readonly unit: LengthUnit;
  readonly says: string;
  /** How many times the tool's own size. */
  readonly times: number;
};

/** The whole edge as a closed shape, tip up, its middle on x = 0, in millimetres. */
function shape({ edge, unit, times }: ToolDrawn): Point[] {
  const mm = mmPer(unit) * times;
  const right = edge.map(([x, y]): Point => [x * mm, -y * mm]);
  return [
    ...right,
    ...right
      .filter(([x]) => x > 1e-9)
      .reverse()
      .map(([x, y]): Point => [-x, y]),
  ];
}

const outline = (points: readonly Point[]): Mark => ({ draw: 'outline', points, closed: true, kind: 'here' });

/** The tool alone at its true size, without letters: for a file that is cut or ground by. */
export function toolOutline(tool: ToolDrawn): Drawing {
  const points = shape({ ...tool, times: 1 });
  const wide = Math.max(...points.map(([x]) => x));
  const low = Math.min(...points.map(([, y]) => y));
  return { title: tool.says, describes: tool.says, low: [-wide, low], high: [wide, 0], toScale: true, marks: [outline(points)] };
}

const MOST_LINES = 45;

/** A thin line across wherever a width is listed, as many as can be told apart. */
function rowMarks({ rows, unit, times }: ToolDrawn): Mark[] {
  const mm = mmPer(unit) * times;
  const every = Math.ceil(rows.length / MOST_LINES);
  return rows.filter((_, at) => at % every === 0).map(([x, y]) => line([-x * mm, -y * mm], [x * mm, -y * mm], 'witness'));
}

/** Depth at the right, width at the widest below; both are those of the tool, not of the drawing. */
function dimensions(tool: ToolDrawn, wide: number, low: number, { label, figure }: Letters): Mark[] {
  const real = (mm: number): Length => millimetres(mm / tool.times);
  const form = { unit: tool.unit, places: tool.unit === 'in' ? 4 : 3 } as const;
  const [side, under] = [wide + figure * 1.6, low - figure * 2];
  return [
    line([0, 0], [side + label * 0.3, 0], 'witness'),
    line([wide, low], [side + label * 0.3, low], 'witness'),
    { draw: 'dimension', from: [side, low], to: [side, 0], size: figure, ...dimensionText(real(-low), form) },
    line([-wide, low], [-wide, under - label * 0.3], 'witness'),
    line([wide, low], [wide, under - label * 0.3], 'witness'),
    { draw: 'dimension', from: [-wide, under], to: [wide, under], size: figure, ...dimensionText(real(2 * wide), form) },
  ];
}

/** Half the width and the (negative) depth of the drawn tool, in millimetres. */
export function extentOf(tool: ToolDrawn): { readonly wide: number; readonly low: number } {
  const points = shape(tool);
  return { wide: Math.max(...points.map(([x]) => x)), low: Math.min(...points.map(([, y]) => y)) };
}

/** How far the dimensions stand out to the right of the tool's middle and below its tip. */
export const reachOf = ({ wide, low }: { readonly wide: number; readonly low: number }, { figure }: Letters): Point => [
  wide + figure * 3.4,
  low - figure * 2,
];

/** The profile with its middle line, a line for each listed width, and its dimensions; the middle of the tip at 0. */
export function profileMarks(tool: ToolDrawn, letters: Letters): Mark[] {
  const { wide, low } = extentOf(tool);
  return [
    ...rowMarks(tool),
    line([0, low - 2], [0, letters.label * 0.6], 'centre'),
    outline(shape(tool)),
    ...dimensions(tool, wide, low, letters),
  ];
}

/** A tool ground to a space, drawn so many times its size, tip up, with its depth, its greatest width and a line for each listed width. */
export function spaceProfileDrawing(tool: ToolDrawn): Drawing {
  const { wide, low } = extentOf(tool);
  const letters = lettersFor(PHONE, ({ figure }) => 2 * wide + figure * 5 + 8);
  const { label, figure } = letters;
  const [left, right] = [-wide - 4, Math.max(wide + figure * 3.4, -wide - 4 + label * 14)];
  return {
    title: tool.says,
    describes: `${tool.says}: its cutting edge ${tool.times} times its size, tip up, ${dimensionText(millimetres(-low / tool.times), { unit: tool.unit, places: 4 }).says} deep.`,
    low: [left, low - figure * 2 - label * 3.4],
    high: [right, label * 2],
    toScale: false,
    marks: [
      ...profileMarks(tool, letters),
      text([left, label * 0.8], tool.times === 1 ? 'true size' : `${tool.times} : 1`, label, 'start'),
    ],
  };
}
