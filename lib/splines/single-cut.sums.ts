import type { Figure } from '../figure/figure.ts';
import { inUnit, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { leftBySingleCut, singleCutEdge, singleCutRidge, widestForOneCut } from './mill.formulas.ts';
import type { MillGivens } from './mill-figures.ts';
import type { MillAsked, MillPlan } from './mill-plan.ts';
import { splineFigure, splineLength } from './spline-figure.ts';

const SIMULATED = 'derived: corner of a straight wall and a straight floor';
const text = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(x, unit), { unit, places: unit === 'in' ? 4 : 3 })} ${unit}`;

/** The cut's own corners, where the side cuts leave them standing. */
function edgeFigure({ shaft }: MillPlan, { d, c }: MillGivens, unit: LengthUnit): Figure {
  const name = 'One cut a space, (D − d)/2 deep: its edges stand out';
  if (leftBySingleCut(shaft) === 'floor')
    return splineFigure(unit, { name, symbol: 'e', formula: '', source: SIMULATED }, { words: 'not at all: the side cuts take them off' });
  return splineLength(unit, { name, symbol: 'e', formula: '(√(d^2 + c^2) − d) ÷ 2', source: SIMULATED }, singleCutEdge(shaft), [d, c]);
}

const WALL = '(√(d^2 − w^2) − c × sin(180° ÷ N)) ÷ (2 × cos(180° ÷ N))';
const FLOORS = 'max(0, (√(d^2 − w^2) − d × cos(180° ÷ N)) ÷ (2 × sin(180° ÷ N)))';

/** What stands between the one cut and the side cuts. */
function ridgeFigure({ shaft }: MillPlan, { D, d, w, c, N }: MillGivens, unit: LengthUnit): Figure {
  const name = 'One cut a space: ridges beside it stand out';
  const ways = {
    wall: [name, `√((${WALL})^2 + c^2 ÷ 4) − d ÷ 2`, [d, w, c, N]],
    floor: [name, `√((${FLOORS})^2 + d^2 ÷ 4) − d ÷ 2`, [d, w, N]],
    fin: ['One cut a space: fins beside it stand out', '(D − d) ÷ 2', [D, d]],
  } as const;
  const [says, formula, given] = ways[leftBySingleCut(shaft)];
  return splineLength(unit, { name: says, symbol: 'g', formula, source: SIMULATED }, singleCutRidge(shaft), given);
}

/** What one cut a space would do, and the cutter that could do it. */
export function singleCut({ bore, unit }: MillAsked, plan: MillPlan, givens: MillGivens): Record<string, Figure> {
  const { shaft, tooLarge } = plan;
  const { D, d, w, N } = givens;
  const edge = leftBySingleCut(shaft) === 'floor' ? 0 : singleCutEdge(shaft);
  const across = shaft.d + 2 * Math.max(edge, singleCutRidge(shaft));
  const inside = inUnit(bore.inside, unit);
  const wide = widestForOneCut(shaft);
  const enters = across <= inside ? (tooLarge > 0 ? `no: ${text(tooLarge, unit)} too large outside` : 'yes') : null;
  return {
    singleEdge: edgeFigure(plan, givens, unit),
    singleRidge: ridgeFigure(plan, givens, unit),
    singleEnters: splineFigure(
      unit,
      { name: 'Would a shaft with one narrow cut a space enter', symbol: 'v', formula: '', source: SIMULATED },
      { words: enters ?? `no: ${text(across, unit)} across in a bore of ${text(inside, unit)}` },
    ),
    wideCutter: splineLength(
      unit,
      {
        name: 'Cutter for one cut a space, or a little less',
        symbol: 'x',
        formula: 'd × sin(180° ÷ N − asin(w ÷ d))',
        source: 'derived: chord of the gap on the small diameter',
      },
      wide,
      [d, w, N],
    ),
    wideDepth: splineLength(
      unit,
      {
        name: 'Depth of that one cut from touching',
        symbol: 'y',
        formula: 'D ÷ 2 − d × cos(180° ÷ N − asin(w ÷ d)) ÷ 2',
        source: 'derived: its corners on the small diameter',
      },
      shaft.D / 2 - Math.sqrt(shaft.d ** 2 - wide ** 2) / 2,
      [D, d, w, N],
    ),
  };
}
