import type { Answer, AnswerTable, Caution, Figure, Given } from '../figure/figure.ts';
import { pitchTerm } from '../gears/givens.ts';
import { inv } from '../gears/involute.formulas.ts';
import { baseDiameter, pitchDiameter, type Tooth, wholeDepth } from '../gears/tooth.ts';
import { inUnit, type Length, ofUnit } from '../values/length.ts';
import type { GearToCut } from './choice.ts';
import { type EdgePoint, type GroundFor, type GroundTool, groundTool, ordinates } from './ground-space.ts';
import { CLEARANCE, FLY_CUTTER, RAKE, SHAPER_TOOL } from './tool-cautions.ts';
import { countGiven, sizeGiven, toolFigure, toolTooth, toothGivens } from './tool-givens.ts';

/** step: between ordinates. fillet: corner of the tool's tip, null for the usual one. */
export type GroundAsked = {
  readonly gear: GearToCut;
  readonly kind: GroundFor;
  readonly fillet: Length | null;
  readonly step: Length;
};

export type GroundFigures = 'depth' | 'pitchWidth' | 'topWidth' | 'tipWidth' | 'corner';

const INVOLUTE = 'derived: the true involute, half a pitch wide at the pitch circle';

const depthFigure = (tooth: Tooth): Figure =>
  toolFigure(tooth, wholeDepth(tooth), {
    name: 'Depth of cut',
    symbol: 'h',
    formula: 'A + B',
    source: 'US Navy, Machinery Repairman (14345), appendix III: whole depth',
    given: [sizeGiven('A', `addendum, ${tooth.unit}`, tooth.A, 'table'), sizeGiven('B', `dedendum, ${tooth.unit}`, tooth.B, 'table')],
    note: 'On the middle line. Where the sides leave a round blank the tool is used a little less deep: the widths end there.',
  });

/** Straight across where the flanks meet the pitch circle; a rack's half pitch. */
function pitchWidth(tooth: Tooth, { gear, kind }: GroundAsked): Figure {
  const { given, of } = pitchTerm(gear.pitch);
  const rack = kind === 'rack';
  return toolFigure(tooth, rack ? (Math.PI * tooth.m) / 2 : pitchDiameter(tooth) * Math.sin(Math.PI / (2 * tooth.N)), {
    name: rack ? 'Width at the pitch line' : 'Width where it meets the pitch circle',
    symbol: 'wp',
    formula: rack ? of('π ÷ 2') : `${of('N')} × sin(90° ÷ N)`,
    source: INVOLUTE,
    given: rack ? [given] : [given, countGiven(gear)],
  });
}

/** Straight across where the flanks leave the blank: at the outside of a wheel, at the bore of a ring, at the face of a rack. */
function topWidth(tooth: Tooth, { gear, kind }: GroundAsked): Figure {
  const { given: pitch, of } = pitchTerm(gear.pitch);
  if (kind === 'rack')
    return toolFigure(tooth, (Math.PI * tooth.m) / 2 + 2 * tooth.A * Math.tan(tooth.a), {
      name: 'Width at the face of the rack',
      symbol: 'wo',
      formula: `${of('π ÷ 2')} + 2 × A × tan(a)`,
      source: INVOLUTE,
      given: [pitch, ...toothGivens(gear).slice(2), sizeGiven('A', `addendum, ${tooth.unit}`, tooth.A, 'table')],
    });
  const [out, sign] = kind === 'ring' ? [-1, '−'] : [1, '+'];
  const Do = pitchDiameter(tooth) + out * 2 * tooth.A;
  const turned = inv(Math.acos(Math.min(1, baseDiameter(tooth) / Do))) - inv(tooth.a);
  const given: readonly Given[] = [
    ...toothGivens(gear),
    sizeGiven('Do', kind === 'ring' ? `bore over the ring’s tips, ${tooth.unit}` : `outside diameter, ${tooth.unit}`, Do),
  ];
  return toolFigure(tooth, Do * Math.sin(Math.PI / (2 * tooth.N) + out * turned), {
    name: kind === 'ring' ? 'Width at the tips of the ring' : 'Width at the outside of the wheel',
    symbol: 'wo',
    formula: `Do × sin(90° ÷ N ${sign} (inv(acos(${of('N')} × cos(a) ÷ Do)) − inv(a)))`,
    source: INVOLUTE,
    given,
  });
}

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

const cautionsFor = (kind: GroundFor): readonly Caution[] => [kind === 'ring' ? SHAPER_TOOL : FLY_CUTTER, RAKE, CLEARANCE];

/** What the tool is, as an edge: for the picture and the files. Throws DomainError when the sizes make no tool. */
export function groundEdge({ gear, kind, fillet }: GroundAsked): { readonly tooth: Tooth; readonly tool: GroundTool } {
  const tooth = toolTooth(gear);
  return { tooth, tool: groundTool(tooth, kind, fillet === null ? null : inUnit(fillet, tooth.unit)) };
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
  const { tooth, tool } = groundEdge(asked);
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
        INVOLUTE,
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
    cautions: cautionsFor(asked.kind),
    says: SAYS[asked.kind],
    tables: [ordinatesTable(tooth, rows)],
  };
}
