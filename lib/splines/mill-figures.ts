import type { Figure, Given } from '../figure/figure.ts';
import { degrees } from '../values/angle.ts';
import { inUnit, type LengthUnit, ofUnit } from '../values/length.ts';
import type { IndexMove } from '../values/move.ts';
import { printLength } from '../values/print.ts';
import { bottomDepth, sideDepth, sideOffset } from './mill.formulas.ts';
import type { MillAsked, MillPlan } from './mill-plan.ts';
import { countGiven, splineFigure, splineLength } from './spline-figure.ts';

export type MillGivens = Readonly<Record<'D' | 'd' | 'w' | 'c' | 'N' | 'R' | 'C', Given>>;

const CORNER = 'derived: the cutter’s corner on the small diameter';
const FACE = 'derived: the near face half a key from the middle';

/** Where the cutter stands for the sides, and how deep. */
export function sideFigures({ shaft }: MillPlan, { D, d, w, c }: MillGivens, unit: LengthUnit): Record<string, Figure> {
  const offset = sideOffset(shaft);
  return {
    firstOffset: splineLength(
      unit,
      { name: 'First sides: cutter’s middle off centre', symbol: 'a', formula: '(w + c) ÷ 2', source: FACE },
      offset,
      [w, c],
    ),
    nearFace: splineLength(unit, { name: 'First sides: near face off centre', symbol: 'b', formula: 'w ÷ 2', source: FACE }, shaft.w / 2, [
      w,
    ]),
    sideDepth: splineLength(
      unit,
      { name: 'Sides: depth from touching', symbol: 's', formula: 'D ÷ 2 − √(d^2 − w^2) ÷ 2', source: CORNER },
      sideDepth(shaft),
      [D, d, w],
    ),
    crossMove: splineLength(
      unit,
      {
        name: 'Each of two cross moves, the same way',
        symbol: 'm',
        formula: '(w + c) ÷ 2',
        source: FACE,
        note: 'First to the bottoms, then to the second sides.',
      },
      offset,
      [w, c],
    ),
  };
}

/** Where the crank stands for a bottom cut, from where it stood for the key: half a space, `off` spaces more. */
function moveFor(N: number, R: number, circle: number, off: number): IndexMove {
  const spaces = (R * circle) / (2 * N) + off;
  return { turns: Math.floor(spaces / circle), spaces: spaces - Math.floor(spaces / circle) * circle, circle };
}

const TURNED = 'derived: half a space, and as near to the key’s foot as whole spaces allow';

function bottomMove(
  name: string,
  symbol: string,
  off: number,
  { shaft, cuts }: MillPlan,
  asked: MillAsked,
  { N, R, C }: MillGivens,
): Figure {
  const sign = off < 0 ? '−' : '+';
  return splineFigure(
    asked.unit,
    { name, symbol, formula: off === 0 ? 'R ÷ (2 × N)' : `R ÷ (2 × N) ${sign} u ÷ C`, source: TURNED },
    { move: moveFor(shaft.N, asked.head.turns, cuts.on.circle, off) },
    off === 0 ? [R, N] : [R, N, countGiven('u', 'spaces from the middle of the gap', Math.abs(off), 'worked out'), C],
  );
}

/** The bottoms: how many cuts, where the crank stands for the outermost, how deep, and what is left. */
export function bottomFigures(asked: MillAsked, plan: MillPlan, givens: MillGivens): Record<string, Figure> {
  const { shaft, cuts } = plan;
  const { D, d, c } = givens;
  const { unit } = asked;
  const [first = 0, last = 0] = [cuts.off[0], cuts.off.at(-1)];
  const moves: Record<string, Figure> = {
    bottomFirst: bottomMove('Bottoms: crank from the key, first cut', 'p', first, plan, asked, givens),
    ...(cuts.off.length > 1 ? { bottomLast: bottomMove('Bottoms: crank from the key, last cut', 'q', last, plan, asked, givens) } : {}),
  };
  return {
    bottomCuts: splineFigure(
      unit,
      { name: 'Bottom cuts in a space', symbol: 'n', formula: '', source: 'derived: as few as cover the gap' },
      { count: cuts.off.length, unit: 'cuts' },
    ),
    ...moves,
    bottomDepth: splineLength(
      unit,
      { name: 'Bottoms: depth from touching', symbol: 't', formula: 'D ÷ 2 − √(d^2 − c^2) ÷ 2', source: CORNER },
      bottomDepth(shaft),
      [D, d, c],
    ),
    highest: highestFigure(plan, givens, unit),
    enters: splineFigure(
      unit,
      { name: 'Does the shaft enter', symbol: 'v', formula: '', source: 'derived: highest metal left and the outside against the bore' },
      { words: entersWords(plan, asked) },
    ),
  };
}

function entersWords({ highest, tooLarge }: MillPlan, { bore, unit }: MillAsked): string {
  const room = inUnit(bore.inside, unit) - highest;
  const over = printLength(ofUnit(tooLarge, unit), { unit, places: unit === 'in' ? 4 : 3 });
  if (tooLarge > 1e-9) return `no: ${over} ${unit} too large outside${room < -1e-9 ? ', and more comes off the bottoms' : ''}`;
  if (room < -1e-9) return 'no: more comes off the bottoms';
  return `yes: ${room > 0 ? 'the bottoms stay clear of the bore' : 'just'}`;
}

/** The corner between a side cut's floor and the wall of the bottom cut beside it. */
function highestFigure({ shaft, cuts, highest }: MillPlan, { d, w, c }: MillGivens, unit: LengthUnit): Figure {
  const q = 180 / shaft.N - (cuts.turned * 180) / Math.PI;
  const name = 'Highest metal left, across';
  const source = 'derived: corner of the side cut’s floor and the bottom cut’s wall';
  const angle: Given = {
    symbol: 'q',
    name: 'from the key’s middle line to that of the bottom cut',
    value: { angle: degrees(q) },
    from: 'worked out',
  };
  const formula = 'max(d, 2 × √(((√(d^2 − w^2) − c × sin(q)) ÷ (2 × cos(q)))^2 + c^2 ÷ 4))';
  return splineLength(unit, { name, symbol: 'H', formula, source }, highest, [d, w, c, angle]);
}
