import { indexRows } from '../../lib/dividing/index-table.ts';
import { chooseCircles } from '../../lib/dividing/joint.ts';
import { sectorHoles } from '../../lib/dividing/plain.formulas.ts';
import { type PlainAsked, type PlainKey, plainIndexing } from '../../lib/dividing/plain.sums.ts';
import { whereOn } from '../../lib/dividing/where-on.ts';
import type { Answer, Value } from '../../lib/figure/figure.ts';
import type { Plate } from '../../lib/tooling/tooling.ts';
import { countOfEach } from '../../lib/trains/wheel-lists.ts';
import type { IndexMove } from '../../lib/values/move.ts';
import { toldFigures } from './told-figure.ts';

export const headOf = (turns: number) => ({ turns, name: `${turns} to 1` });

/** The move of an answer of plain indexing; null when no circle serves. */
export const moveIn = ({ figures }: Answer<PlainKey>): IndexMove | null =>
  'move' in figures.crank.value ? figures.crank.value.move : null;

const turnsText = (whole: number, left: number, circle: number): string => (left === 0 ? `${whole}` : `${whole} + ${left}/${circle}`);

/** Plain indexing with the tick sheet: where the pin lands for every tooth, and once more for the first. */
export function indexTable(asked: PlainAsked): Answer<PlainKey> {
  const answer = plainIndexing(asked);
  const move = moveIn(answer);
  if (!move) return answer;
  const rows = indexRows(asked.divisions, move).map(({ tooth, turnsFromStart: [num, den], hole, backAtFirst }): (Value | string)[] => {
    const whole = Math.floor(num / den);
    const turned = turnsText(whole, (num - whole * den) * (move.circle / den), move.circle);
    return [backAtFirst ? `1 again` : `${tooth}`, turned, { count: hole }];
  });
  const table = {
    title: 'Where the pin lands, hole 0 being where it stands for tooth 1',
    unit: 'in' as const,
    heads: ['tooth', 'turns from the start', 'hole'],
    rows,
  };
  return { ...answer, tables: [table] };
}

const figure = toldFigures('derived: every choice of circles held against the others: fewest plates put on, then fewest circles');

/** Circles for several wheels together, so that the plate stays on. */
export function jointAnswer(counts: readonly number[], turns: number, plates: readonly Plate[]): Answer<'plates' | 'circles' | 'refused'> {
  const divisions = [...countOfEach(counts).keys()].sort((a, b) => a - b);
  const choice = chooseCircles(
    divisions.map((count) => ({ key: `${count}`, divisions: count, head: headOf(turns) })),
    plates,
  );
  const { mountings, jobs, refused } = choice;
  return {
    figures: {
      plates: figure('Plates to put on', 'n', { count: mountings.length, unit: 'plates' }),
      circles: figure('Circles to set on', 'c', { count: new Set(jobs.map(({ circle }) => circle)).size, unit: 'circles' }),
      refused: figure('Cannot be divided so', '', {
        words: refused.length === 0 ? 'none' : refused.map((one) => one.divisions).join(', '),
      }),
    },
    cautions: [],
    says: choice.says,
    tables: [
      {
        title: 'Where each is set',
        unit: 'in',
        heads: ['divisions', 'plate', 'circle', 'move', 'holes the sector shows'],
        rows: jobs.map(({ divisions: count, plate, side, circle, move }) => [
          { count },
          whereOn(plate, side),
          { count: circle },
          { move },
          move.spaces === 0 ? 'none' : { count: sectorHoles(move.spaces) },
        ]),
      },
    ],
  };
}
