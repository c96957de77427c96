import type { AnswerTable, Value } from '../figure/figure.ts';
import { printPitch } from '../gears/pitch.ts';
import { nearestSpanCount, span } from '../gears/spur.formulas.ts';
import { radians, toDegrees } from '../values/angle.ts';
import { inches, type LengthUnit } from '../values/length.ts';
import { printDegrees, printShort } from '../values/print.ts';
import type { Found, Identified } from './identify.ts';
import { type Misfit, worst } from './misfit.ts';
import type { NearMiss } from './near-misses.ts';
import type { NextMeasurement } from './next-measurement.ts';
import { chanceText, percent, small, smallHead } from './said.ts';

const COMPARED = 4;
const length = (inch: number): Value => ({ length: inches(inch) });

/** How a candidate has to stand to fit: shift and helix, where there is any. */
export function standsSo({ candidate, fit }: Found): string {
  const { v, psi } = fit.stance.flanks;
  const shifted = v === 0 ? '' : `, shifted ${v > 0 ? '+' : ''}${printShort(v / candidate.m, 2)}`;
  const square = fit.stance.flanks.mn === candidate.m ? 'square to the teeth' : 'in the plane of the wheel';
  return psi === 0 ? shifted : `${shifted}, helix ${printShort(toDegrees(radians(psi)), 1)}°, pitch ${square}`;
}

const against = (all: readonly Misfit[]): string =>
  all
    .filter(({ contradicts }) => contradicts)
    .map(({ reading }) => reading.name.toLowerCase())
    .join(', ') || 'nothing';

export function candidatesTable({ list }: Identified, unit: LengthUnit): AnswerTable {
  return {
    title: 'What it may be',
    unit,
    heads: ['Pitch and teeth', 'Chance', 'Teeth thinned by', 'Outside short by', `Largest misfit, ${smallHead(unit)}`, 'Spoken against by'],
    rows: list.map((found) => [
      `${found.candidate.name}${standsSo(found)}`,
      chanceText(found.chance),
      length(found.fit.wear),
      length(found.fit.tip),
      small(worst(found.misfits), unit),
      against(found.misfits),
    ]),
  };
}

/** A misfit as it is written: thousandths, or degrees of a print; a mark where it contradicts. */
function misfitText({ reading, off, contradicts }: Misfit, unit: LengthUnit): string {
  const text = reading.of === 'helix' ? `${printDegrees(radians(off), 1)}°` : small(off, unit);
  return contradicts ? `${text} against` : text;
}

export function misfitsTable({ list }: Identified, unit: LengthUnit): AnswerTable {
  const compared = list.slice(0, COMPARED);
  const readings = compared[0]?.misfits ?? [];
  return {
    title: `Read less what it should read, wear allowed for, ${smallHead(unit)}`,
    unit,
    heads: ['Reading', ...compared.map(({ candidate }) => candidate.name)],
    rows: readings.map(({ reading }, i) => [
      reading.name,
      ...compared.map(({ misfits }) => {
        const misfit = misfits[i];
        return misfit ? misfitText(misfit, unit) : '';
      }),
    ]),
  };
}

export const nextTable = (next: NextMeasurement, unit: LengthUnit): AnswerTable => ({
  title: `Measure next: ${next.name.charAt(0).toLowerCase()}${next.name.slice(1)}`,
  unit,
  heads: ['If it is', 'it reads', 'within'],
  rows: next.each.map(({ candidate, read, within }) => [candidate.name, length(read), length(within)]),
});

/** What tells two near pitches apart on this wheel: the outside and a span, each of the standard tooth at one angle. */
function nearRow({ finer, coarser, apart }: NearMiss, N: number, a: number): (Value | string)[] {
  const k = nearestSpanCount(N, a);
  const W = (m: number): number => span({ N, m, a }, k);
  return [
    `${printPitch(finer.pitch)} and ${printPitch(coarser.pitch)}`,
    percent(apart),
    length((N + 2) * (coarser.m - finer.m)),
    `over ${k}`,
    length(W(coarser.m) - W(finer.m)),
    length(Math.PI * Math.cos(a) * (coarser.m - finer.m)),
  ];
}

export const nearTable = ({ near, list }: Identified, N: number, unit: LengthUnit): AnswerTable => ({
  title: 'Easily taken for each other: what tells them apart on this wheel',
  unit,
  heads: ['Pitches', 'Apart', 'Outside differs by', 'Span', 'differs by', 'One tooth more differs by'],
  rows: near.map((pair) => nearRow(pair, N, list[0]?.candidate.a ?? 0.25)),
});

/** Each wheel of the set, and whether it is of it. */
export function setTable({ strangers }: Identified, teeth: readonly number[], unit: LengthUnit): AnswerTable {
  const verdict = (chance: number): string => (chance > 0.5 ? 'looks a stranger' : chance > 0.2 ? 'may be a stranger' : 'of the set');
  return {
    title: 'The wheels taken together',
    unit,
    heads: ['Wheel', 'Verdict', 'A stranger'],
    rows: teeth.map((count, i) => [`${count} teeth`, verdict(strangers[i] ?? 0), chanceText(strangers[i] ?? 0)]),
  };
}
