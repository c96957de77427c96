import { plainIndexing } from '../../lib/dividing/plain.sums.ts';
import { indexPlate } from '../../lib/drawing/index-plate.ts';
import { countField, optional } from '../forms/field.ts';
import { ABOUT, divisionsUpTo, headField } from './dividing-asks.ts';
import { headOf, indexTable, jointAnswer, moveIn } from './index-answers.ts';
import { COMMON_PLATES, platesField } from './read-plates.ts';
import { someWheelsField } from './read-wheels.ts';
import { sum } from './sum.ts';

const circleField = optional(
  countField({ label: 'Circle', hint: 'Empty: the fewest holes that serve', limits: { least: 2, most: 1000 }, unit: 'holes' }),
);

type Given = {
  readonly divisions: number;
  readonly turns: number;
  readonly plates: Parameters<typeof plainIndexing>[0]['plates'];
  readonly circle: number | null;
};
const askedOf = ({ divisions, turns, plates, circle }: Given) => ({
  divisions,
  head: headOf(turns),
  plates,
  ...(circle === null ? {} : { circle }),
});

/** The plate with its sector, where a sector is needed. */
function drawMove(given: Given) {
  const move = moveIn(plainIndexing(askedOf(given)));
  return move && move.spaces > 0 ? indexPlate({ holes: move.circle, turns: move.turns, spaces: move.spaces }) : null;
}

const plainSum = sum({
  path: 'plain-indexing',
  title: 'Plain indexing',
  group: 'Dividing',
  tells: 'Whole turns and spaces of the crank for one division, the sector, the proof, and every circle that serves; or that none does.',
  asks: { divisions: divisionsUpTo(100_000), turns: headField, plates: platesField, circle: circleField },
  example: { divisions: '22', turns: '40', plates: COMMON_PLATES, circle: '' },
  about: ABOUT,
  work: (given) => plainIndexing(askedOf(given)),
  draw: drawMove,
});

const jointSum = sum({
  path: 'joint-circles',
  title: 'Circles for several wheels',
  group: 'Dividing',
  tells: 'The circles for all wheels that are ready, chosen together so that they stay on one plate if they can.',
  asks: { counts: someWheelsField({ label: 'Wheels to divide', hint: 'As 22, 28, 35' }), turns: headField, plates: platesField },
  example: { counts: '22, 28', turns: '40', plates: COMMON_PLATES },
  about: ABOUT,
  work: ({ counts, turns, plates }) => jointAnswer(counts, turns, plates),
});

const tableSum = sum({
  path: 'index-table',
  title: 'Index table',
  group: 'Dividing',
  tells: 'The hole to land in for every tooth, and for the first once more.',
  asks: { divisions: divisionsUpTo(500), turns: headField, plates: platesField, circle: circleField },
  example: { divisions: '28', turns: '40', plates: COMMON_PLATES, circle: '' },
  about: ABOUT,
  work: (given) => indexTable(askedOf(given)),
  draw: drawMove,
});

export const DIVIDING_SUMS = [plainSum, jointSum, tableSum];
