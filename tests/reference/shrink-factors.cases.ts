import { fitPressure, hoopStress } from '../../lib/fits/shrink.formulas.ts';
import type { Case } from './case.ts';

/**
 * The handbook's factor C stands in A = T (1 + C) ÷ E for a steel hub and A = T (2.304 + C) ÷ E for an iron one, A the allowance for each
 * unit of shaft and T the stress in the hub at its bore. Its figures hold with T as the stress that by itself would stretch the bore so far
 * (hoop stress + v × pressure), Poisson's ratio 1/3 for steel and 1/4 for iron, iron 2.304 times as soft: three printed columns, worked
 * back, agree on that to one of the last place (0.459 is printed where 0.4583 stands). So C is what our pressure and hoop stress have to give again, by another road than the story's.
 */
const STEEL = { E: 30e6, v: 1 / 3 };
const IRON = { E: 30e6 / 2.304, v: 1 / 4 };

/** C for a hub 1 in bore and `hub` in outside on a steel shaft of 1 in with a hole of `hole` in. */
function factor(hub: number, hole: number, metal: typeof STEEL): number {
  const allowance = 0.001;
  const p = fitPressure(allowance, 1, hub, hole, metal, STEEL);
  const stretch = hoopStress(p, hub, 1) + metal.v * p;
  return (STEEL.E * allowance) / stretch - STEEL.E / metal.E;
}

type Row = readonly [hub: number, shaftOverHole: number | null, printed: number];

const table = (number: string, page: number, metal: typeof STEEL, of: string, catches: string, rows: readonly Row[]): readonly Case[] =>
  rows.map(([hub, hollow, printed]) => ({
    topic: 'Shrink fits, factors of the handbook',
    kind: 'published',
    source: `Machinery's Handbook, 31st ed., "Shrinkage Fits", p. ${page}, table ${number}`,
    table: `shrinkage fits, table ${number}`,
    given: `C of ${of}, hub ${hub} times the shaft${hollow === null ? ', solid' : `, shaft ${hollow} times its hole`}`,
    expected: printed,
    tolerance: 0.001,
    unit: '',
    actual: () => factor(hub, hollow === null ? 0 : 1 / hollow, metal),
    catches,
  }));

export const cases: readonly Case[] = [
  ...table('1', 644, STEEL, 'a steel hub', 'Poisson’s ratio of a solid shaft added instead of taken off', [
    [1.5, null, 0.227],
    [2, null, 0.333],
    [4, null, 0.455],
  ]),
  ...table('1', 644, IRON, 'an iron hub', 'ring and shaft given each other’s metal', [
    [1.5, null, 0.234],
    [2.4, null, 0.399],
    [3, null, 0.444],
  ]),
  ...table('2', 645, STEEL, 'a steel hub on a hollow shaft', 'the hole of the hub left out, or taken as its radius', [
    [1.5, 2, 0.455],
    [1.6, 2.5, 0.4],
    [2, 3, 0.459],
    [2.2, 3.5, 0.455],
    [3.4, 2, 0.876],
    [4, 3.5, 0.576],
  ]),
  ...table('3', 645, IRON, 'an iron hub on a hollow shaft', 'two metals, one stiffness', [
    [1.5, 2, 0.468],
    [1.8, 3, 0.427],
    [2.4, 2, 0.798],
    [2.8, 3.5, 0.547],
    [3.6, 2.5, 0.74],
    [4, 3, 0.663],
  ]),
];
