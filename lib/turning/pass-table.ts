import type { AnswerTable, Value } from '../figure/figure.ts';
import type { Dial } from '../tooling/tooling.ts';
import { type Length, type LengthUnit, nanometres, ofUnit } from '../values/length.ts';
import { asDialCounts, dialMoveOf, lineBelow } from './dial.formulas.ts';
import { divisionsFor } from './dial.sums.ts';
import { LAST_CUTS, passesFor, perSide, type Stages } from './passes.formulas.ts';

/** One cut of the plan: what it is, the diameter that it should leave, and the dial from touching the old outside. */
type Pass = { readonly what: string; readonly diameter: Length };

function equalPasses(what: string, from: number, to: number, passes: number, unit: LengthUnit): Pass[] {
  return Array.from({ length: passes }, (_, i) => ({ what, diameter: ofUnit(from - ((from - to) * (i + 1)) / passes, unit) }));
}

const wordsAt = (over: boolean): string => (over ? 'over the gaps' : 'solid');

/** All cuts in order. depth: of one roughing pass, a side. */
export function passesOf(stages: Stages, depth: number, unit: LengthUnit): Pass[] {
  const { start, root, rough, end } = stages;
  return [
    ...equalPasses(wordsAt(true), start, root, passesFor(perSide(start, root), depth), unit),
    ...equalPasses(wordsAt(false), root, rough, passesFor(perSide(root, rough), depth), unit),
    ...equalPasses('last cut, after measuring', rough, end, LAST_CUTS, unit),
  ];
}

type AtDial = { readonly setting: Value; readonly diameter: Length };

/** Roughing is set on the line below, so the size it leaves is that line's. */
function atLine(start: Length, pass: Pass, dial: Dial): AtDial {
  const off = nanometres(start - pass.diameter);
  const line = lineBelow(divisionsFor({ move: off, counted: 'diameter', dial }));
  const done = asDialCounts(line * dial.division, dial.reads, 'diameter');
  return { setting: { dial: dialMoveOf(line, dial.perTurn) }, diameter: nanometres(start - done) };
}

/** The plan as rows: number, kind, diameter left, dial from zero. The last cuts follow what was measured, so they have no dial here. */
export function passTable(stages: Stages, depth: number, unit: LengthUnit, dial: Dial | null): AnswerTable {
  const start = ofUnit(stages.start, unit);
  const passes = passesOf(stages, depth, unit);
  const rows = passes.map((pass, i): (Value | string)[] => {
    const measured = i >= passes.length - LAST_CUTS;
    if (measured || !dial) return [{ count: i + 1 }, pass.what, { length: pass.diameter }, measured ? 'from what was measured' : '—'];
    const { setting, diameter } = atLine(start, pass, dial);
    return [{ count: i + 1 }, pass.what, { length: diameter }, setting];
  });
  return {
    title: 'Cuts from the old outside',
    unit: dial?.unit ?? unit,
    heads: ['cut', 'where', 'diameter it leaves', 'dial from touching'],
    rows,
  };
}

/** More rows than this are no plan for a lathe. */
export const MOST_PASSES = 200;

/** How many cuts a plan would have, without making it. */
export const countPasses = (s: Stages, depth: number): number =>
  passesFor(perSide(s.start, s.root), depth) + passesFor(perSide(s.root, s.rough), depth) + LAST_CUTS;
