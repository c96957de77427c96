import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure } from '../figure/figure.ts';
import { baseDiameter, pitchDiameter, type Tooth, wholeDepth } from '../gears/tooth.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import { printLength, printShort } from '../values/print.ts';
import type { GearToCut } from './choice.ts';
import { type EdgePoint, type GroundFor, type GroundTool, groundTool, insideBase, ordinates, usualFillet } from './ground-space.ts';
import { GROUND_INVOLUTE, pitchWidth, topWidth } from './ground-widths.ts';
import { sameSpaceUnshifted } from './shifted-space.ts';
import { CLEARANCE, FLY_CUTTER, RAKE, SHAPER_TOOL } from './tool-cautions.ts';
import { sizeGiven, toolFigure, toolTooth } from './tool-givens.ts';

/** step: between ordinates. fillet: corner of the tool's tip, null for the usual one. */
export type GroundAsked = {
  readonly gear: GearToCut;
  readonly kind: GroundFor;
  /** As a part of the module (of 1/P), away from the middle; left out, none. */
  readonly shift?: number;
  readonly fillet: Length | null;
  readonly step: Length;
};

export type GroundFigures = 'depth' | 'pitchWidth' | 'topWidth' | 'tipWidth' | 'corner';

const depthFigure = (tooth: Tooth): Figure =>
  toolFigure(tooth, wholeDepth(tooth), {
    name: 'Depth of cut',
    symbol: 'h',
    formula: 'A + B',
    source: 'US Navy, Machinery Repairman (14345), appendix III: whole depth',
    given: [sizeGiven('A', `addendum, ${tooth.unit}`, tooth.A, 'table'), sizeGiven('B', `dedendum, ${tooth.unit}`, tooth.B, 'table')],
    note: 'On the middle line. Where the sides leave a round blank the tool is used a little less deep: the widths end there.',
  });

const plain = (tooth: Tooth, size: number, name: string, symbol: string, source: string, note: string): Figure =>
  toolFigure(tooth, size, { name, symbol, formula: '', source, given: [], note });

const CORNER: Readonly<Record<GroundFor, string>> = {
  wheel: 'a seventh of the space at the outside: old rule of the makers of form cutters, value from memory',
  ring: 'derived: the largest that leaves the flank straight as far as a mate reaches, (B − A) ÷ (1 − sin a)',
  rack: 'derived: the largest that leaves the flank straight as far as a mate reaches, (B − A) ÷ (1 − sin a)',
};

/** Where the flat or round tip ends. */
const tipEnd = ({ edge }: GroundTool): number => edge.findLast(([, y]) => y < 1e-12)?.[0] ?? 0;

function ordinatesTable(tooth: Tooth, rows: readonly EdgePoint[]): AnswerTable {
  return {
    title: 'Widths of the tool, from its tip up',
    unit: tooth.unit,
    heads: ['From the tip', 'Half width, from the middle line', 'Width'],
    rows: rows.map(([x, y]) => [y, x, 2 * x].map((size) => ({ length: ofUnit(size, tooth.unit) }))),
  };
}

function cautionsFor({ shaped }: Ground, { kind }: GroundAsked): readonly Caution[] {
  const tool = kind === 'ring' ? SHAPER_TOOL : FLY_CUTTER;
  if (kind !== 'ring' || insideBase(shaped) <= 1e-9 * shaped.m) return [tool, RAKE, CLEARANCE];
  const { unit } = shaped;
  const bore = printLength(ofUnit(baseDiameter(shaped), unit), { unit, places: unit === 'in' ? 4 : 3 });
  const says = `The ring’s tips lie inside its base circle, where there is no involute: the tool is straight there, and a mate would foul them. Bore the ring over its tips to ${bore} ${unit} at least.`;
  return [{ name: 'tips inside the base circle', says, weight: 'beware', about: 'topWidth' }, tool, RAKE, CLEARANCE];
}

/** tooth: as asked; shaped: the unshifted one of the same space; tool: its edge. */
type Ground = { readonly tooth: Tooth; readonly shaped: Tooth; readonly tool: GroundTool };

/** What the tool is, as an edge: for the picture and the files. Throws DomainError when the sizes make no tool. */
export function groundEdge({ gear, kind, fillet, shift = 0 }: GroundAsked): Ground {
  const tooth = toolTooth(gear);
  const shaped = sameSpaceUnshifted(tooth, shift * tooth.m, kind);
  const usual = shift === 0 || kind === 'wheel' ? null : usualFillet(tooth, kind);
  const tool = groundTool(shaped, kind, fillet === null ? usual : inUnit(fillet, tooth.unit));
  if (kind !== 'rack') checkTeeth(shaped, tool, kind);
  return { tooth, shaped, tool };
}

/** A space as wide as the pitch where it leaves the blank leaves no tooth between. */
function checkTeeth(tooth: Tooth, { edge }: GroundTool, kind: GroundFor): void {
  const [x, y] = edge.at(-1) ?? [0, 0];
  const r = pitchDiameter(tooth) / 2;
  if (Math.atan2(x, kind === 'ring' ? r + tooth.B - y : r - tooth.B + y) < Math.PI / tooth.N) return;
  throw new DomainError({
    given: `${printShort(tooth.N, 2)} teeth of this shift and addendum.`,
    limit: 'Neighbouring spaces would run together: the teeth end in a point before the blank does.',
    tryThis: 'Take less shift, or a shorter addendum.',
    about: ['shift', 'teeth'],
  });
}

const SAYS: Readonly<Record<GroundFor, string>> = {
  wheel: 'A fly cutter or shaper tool ground so cuts this one count, a true involute down to the base circle and straight below it.',
  ring: 'A shaper tool ground so cuts this one ring. It stands radially in the space, its middle line through the middle of the ring.',
  rack: 'A tool ground so cuts a rack: its sides are straight.',
};

/**
 * A tool ground to the space of one wheel, ring or rack: its widths from the tip up, to grind and to check by. Helical teeth: square to the
 * teeth, at the virtual count. Throws DomainError when the corner does not fit or the widths would not fit a sheet.
 */
export function groundToolAnswer(asked: GroundAsked): Answer<GroundFigures> {
  const ground = groundEdge(asked);
  const { tooth, tool } = ground;
  const rows = ordinates(tooth, tool, inUnit(asked.step, tooth.unit));
  return {
    figures: {
      depth: depthFigure(tooth),
      pitchWidth: pitchWidth(tooth, asked),
      topWidth: topWidth(tooth, asked),
      tipWidth: plain(
        tooth,
        2 * tipEnd(tool),
        'Width of the tip between its corners',
        'wt',
        GROUND_INVOLUTE,
        'Between the corners; ground flat on all but a ring’s tool.',
      ),
      corner: plain(
        tooth,
        tool.fillet,
        'Radius of the tip’s corners',
        'f',
        asked.fillet === null ? CORNER[asked.kind] : 'as typed',
        'The corner does not touch the mate; a little less is safe.',
      ),
    },
    cautions: cautionsFor(ground, asked),
    says: SAYS[asked.kind],
    tables: [ordinatesTable(tooth, rows)],
  };
}
