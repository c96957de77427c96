import type { Figure, Given } from '../figure/figure.ts';
import { pitchTerm } from '../gears/givens.ts';
import { inv } from '../gears/involute.formulas.ts';
import { baseDiameter, pitchDiameter, type Tooth } from '../gears/tooth.ts';
import type { GroundAsked } from './ground-tool.sums.ts';
import { countGiven, sizeGiven, toolFigure, toothGivens } from './tool-givens.ts';

export const GROUND_INVOLUTE = 'derived: the true involute, half a pitch wide at the pitch circle (less or more by a shift)';

/** As it stands in a formula, its given, and by how much it turns the flank, in radians. */
type ShiftTerm = { readonly text: string; readonly given: readonly Given[]; readonly turn: number };

/** What a shift does to half the space's angle at the pitch circle: narrower in a wheel, wider in a ring. */
function shiftTerm({ shift = 0, kind }: GroundAsked, tooth: Tooth): ShiftTerm {
  if (shift === 0) return { text: '', given: [], turn: 0 };
  const sign = kind === 'ring' ? 1 : -1;
  return {
    text: ` ${sign > 0 ? '+' : '−'} 2 × x × tan(a) ÷ N`,
    given: [{ symbol: 'x', name: 'profile shift, of 1/P or m', value: { number: shift, unit: '', places: 4 }, from: 'typed' }],
    turn: (sign * 2 * shift * Math.tan(tooth.a)) / tooth.N,
  };
}

/** Straight across where the flanks meet the pitch circle; a rack's half pitch. */
export function pitchWidth(tooth: Tooth, asked: GroundAsked): Figure {
  const { gear, kind } = asked;
  const { given, of } = pitchTerm(gear.pitch);
  if (kind === 'rack')
    return toolFigure(tooth, (Math.PI * tooth.m) / 2, {
      name: 'Width at the pitch line',
      symbol: 'wp',
      formula: of('π ÷ 2'),
      source: GROUND_INVOLUTE,
      given: [given],
    });
  const { text, turn, given: shift } = shiftTerm(asked, tooth);
  return toolFigure(tooth, pitchDiameter(tooth) * Math.sin(Math.PI / (2 * tooth.N) + turn), {
    name: 'Width where it meets the pitch circle',
    symbol: 'wp',
    formula: `${of('N')} × sin(90° ÷ N${text})`,
    source: GROUND_INVOLUTE,
    given: turn === 0 ? [given, countGiven(gear)] : [...toothGivens(gear), ...shift],
  });
}

const rackTop = (tooth: Tooth, { gear }: GroundAsked): Figure =>
  toolFigure(tooth, (Math.PI * tooth.m) / 2 + 2 * tooth.A * Math.tan(tooth.a), {
    name: 'Width at the face of the rack',
    symbol: 'wo',
    formula: `${pitchTerm(gear.pitch).of('π ÷ 2')} + 2 × A × tan(a)`,
    source: GROUND_INVOLUTE,
    given: [pitchTerm(gear.pitch).given, ...toothGivens(gear).slice(2), sizeGiven('A', `addendum, ${tooth.unit}`, tooth.A, 'table')],
  });

/** Straight across where the flanks leave the blank: at the outside of a wheel, at the bore of a ring, at the face of a rack. */
export function topWidth(tooth: Tooth, asked: GroundAsked): Figure {
  const { gear, kind, shift = 0 } = asked;
  if (kind === 'rack') return rackTop(tooth, asked);
  const out = kind === 'ring' ? -1 : 1;
  const Do = pitchDiameter(tooth) + 2 * (out * tooth.A + shift * tooth.m);
  const within = Do < baseDiameter(tooth);
  const turned = (within ? 0 : inv(Math.acos(baseDiameter(tooth) / Do))) - inv(tooth.a);
  const { text, turn, given } = shiftTerm(asked, tooth);
  const [plus, minus] = out > 0 ? ['+', '−'] : ['−', '+'];
  const flank = within ? `${minus} inv(a)` : `${plus} (inv(acos(${pitchTerm(gear.pitch).of('N')} × cos(a) ÷ Do)) − inv(a))`;
  return toolFigure(tooth, Do * Math.sin(Math.PI / (2 * tooth.N) + turn + out * turned), {
    name: kind === 'ring' ? 'Width at the tips of the ring' : 'Width at the outside of the wheel',
    symbol: 'wo',
    formula: `Do × sin(90° ÷ N${text} ${flank})`,
    source: GROUND_INVOLUTE,
    given: [
      ...toothGivens(gear).slice(within ? 1 : 0),
      ...given,
      sizeGiven('Do', kind === 'ring' ? `bore over the ring’s tips, ${tooth.unit}` : `outside diameter, ${tooth.unit}`, Do),
    ],
  });
}
