import type { Answer, Figure } from '../figure/figure.ts';
import { addendumTerm, angleGiven, dedendumTerm, extraTerm, pitchTerm, teethGiven } from './givens.ts';
import { circularPitch, circularThickness } from './spur.formulas.ts';
import { baseDiameter, outsideDiameter, pitchDiameter, rootDiameter, type Tooth, wholeDepth } from './tooth.ts';
import { outsideAllowance, wheelCautions } from './wheel.cautions.ts';
import { checkedTooth, type Wheel } from './wheel.ts';
import { between, type Said, wheelFigure } from './wheel-figure.ts';

const NAVY = 'US Navy, Machinery Repairman (14345), appendices III and IV';
const PAIR = 'Machine Elements in Mechanical Design, 4th ed., pp. 319-320';

export type BlankKey =
  | 'pitchDiameter'
  | 'outsideDiameter'
  | 'rootDiameter'
  | 'baseDiameter'
  | 'addendum'
  | 'dedendum'
  | 'wholeDepth'
  | 'clearance'
  | 'circularPitch'
  | 'circularThickness';

function diameters(wheel: Wheel, tooth: Tooth): Record<'pitchDiameter' | 'outsideDiameter' | 'rootDiameter' | 'baseDiameter', Figure> {
  const [pitch, A, B] = [pitchTerm(wheel.pitch), addendumTerm(wheel.system), dedendumTerm(wheel.system)];
  const [e, N, Do] = [extraTerm(wheel.system, tooth.unit), teethGiven(wheel), outsideDiameter(tooth)];
  const tips = pitch.of(`(N + ${A.given.length === 0 ? '2' : '2 × A'})`);
  const roots = pitch.of('(N − 2 × B)') + (e ? ' − 2 × e' : '');
  const base = pitch.of('N × cos(a)');
  const outside = { name: 'Outside diameter', symbol: 'Do', formula: tips, source: NAVY };
  const root = { name: 'Root diameter', symbol: 'Dr', formula: roots, source: PAIR };
  return {
    outsideDiameter: {
      ...wheelFigure(tooth, outside, Do, [N, pitch.given, ...A.given]),
      limits: between(tooth, Do - outsideAllowance(tooth), Do),
    },
    pitchDiameter: wheelFigure(tooth, { name: 'Pitch diameter', symbol: 'D', formula: pitch.of('N'), source: NAVY }, pitchDiameter(tooth), [
      N,
      pitch.given,
    ]),
    rootDiameter: wheelFigure(tooth, root, rootDiameter(tooth), [N, pitch.given, ...B.given, ...(e?.given ?? [])]),
    baseDiameter: wheelFigure(tooth, { name: 'Base diameter', symbol: 'Db', formula: base, source: PAIR }, baseDiameter(tooth), [
      N,
      pitch.given,
      angleGiven(wheel),
    ]),
  };
}

function depths(wheel: Wheel, tooth: Tooth): Record<'addendum' | 'dedendum' | 'wholeDepth' | 'clearance', Figure> {
  const [pitch, A, B] = [pitchTerm(wheel.pitch), addendumTerm(wheel.system), dedendumTerm(wheel.system)];
  const e = extraTerm(wheel.system, tooth.unit);
  const more = e ? ' + e' : '';
  const all = [pitch.given, ...A.given, ...B.given, ...(e?.given ?? [])];
  const below = [pitch.given, ...B.given, ...(e?.given ?? [])];
  const said = (name: string, symbol: string, formula: string, source = NAVY): Said => ({ name, symbol, formula, source });
  return {
    wholeDepth: wheelFigure(tooth, said('Whole depth', 'h', pitch.of(`(${A.text} + B)`) + more), wholeDepth(tooth), all),
    addendum: wheelFigure(tooth, said('Addendum', 'ha', pitch.of(A.text)), tooth.A, [pitch.given, ...A.given]),
    dedendum: wheelFigure(tooth, said('Dedendum', 'hd', pitch.of('B') + more), tooth.B, below),
    clearance: wheelFigure(tooth, said('Clearance at the root', 'c', pitch.of(`(B − ${A.text})`) + more, PAIR), tooth.B - tooth.A, all),
  };
}

function arcs(wheel: Wheel, tooth: Tooth): Record<'circularPitch' | 'circularThickness', Figure> {
  const pitch = pitchTerm(wheel.pitch);
  const [whole, part] = wheel.pitch.kind === 'CP' ? ['p', 'p ÷ 2'] : [pitch.of('π'), pitch.of('π ÷ 2')];
  const along = { name: 'Circular pitch', symbol: 'pc', formula: whole, source: NAVY };
  const thick = { name: 'Circular thickness', symbol: 's', formula: part, source: NAVY };
  return {
    circularPitch: wheelFigure(tooth, along, circularPitch(tooth.m), [pitch.given]),
    circularThickness: wheelFigure(tooth, thick, circularThickness(tooth.m), [pitch.given]),
  };
}

/**
 * Every size of a spur wheel's blank and teeth, without backlash, in the unit of its pitch.
 * Throws DomainError for a count, angle or depth that makes no wheel. Example: 22 teeth, 8 DP, 14½° is 3.000 outside, 0.2696 deep.
 */
export function gearBlank(wheel: Wheel): Answer<BlankKey> {
  const tooth = checkedTooth(wheel);
  return {
    figures: { ...diameters(wheel, tooth), ...depths(wheel, tooth), ...arcs(wheel, tooth) },
    cautions: wheelCautions(wheel, tooth),
  };
}
