import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Figure, Value } from '../figure/figure.ts';
import { gcd, sameRatio } from '../values/ratio.ts';
import { inMinutes } from './angular.sums.ts';
import { checkDivisions, checkHead } from './check-dividing.ts';
import { type DialPlace, dialPlace, dialPlaces, lineWords, tableAngle } from './dial-places.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { arcSeconds } from './nearest.sums.ts';
import { dialServes, leastReading, type TableDial, turnsAt, worstOnDial } from './table-dial.formulas.ts';

const figure = figuresFrom('derived: places counted from zero, each put on the nearest line of the dial or vernier');
const MOST_DIVISIONS = 500;

export type TableDialKey = 'turns' | 'first' | 'line' | 'least' | 'worst' | 'worstTooth' | 'lash' | 'proof';
export type TableDialAsked = { readonly divisions: number; readonly dial: TableDial; readonly lash: number | null };

function check({ divisions, dial: { turns, perTurn, vernier } }: TableDialAsked): void {
  checkDivisions(divisions);
  checkHead({ turns });
  const limit =
    divisions > MOST_DIVISIONS
      ? `A dial table has ${MOST_DIVISIONS} lines at most.`
      : 'A dial has from 2 to 1000 lines, a vernier from 1 (none) to 100 parts.';
  if (divisions <= MOST_DIVISIONS && perTurn >= 2 && perTurn <= 1000 && vernier >= 1 && vernier <= 100) return;
  throw new DomainError({
    given: `${divisions} divisions on a dial of ${perTurn} lines and ${vernier} parts.`,
    limit,
    tryThis: 'Count the lines once round the dial.',
    about: divisions > MOST_DIVISIONS ? ['divisions'] : ['perTurn', 'vernier'],
  });
}

/** Whole lines, or where a vernier parts them, lines with decimals. */
const linesAt = ({ move }: DialPlace, { vernier }: TableDial): Value => ({
  number: move.divisions,
  unit: 'lines',
  places: vernier === 1 ? 0 : 3,
});

/** Too far by, in seconds of the table. */
export const secondsOff = ({ error }: Pick<DialPlace, 'error'>, { turns }: Pick<TableDial, 'turns'>): number => arcSeconds(error, turns);

const HANDWHEEL = 'turns of the handwheel for one of the table';
const handwheelTurns = ({ turns }: TableDial) => given('R', HANDWHEEL, count(turns), 'table');
const dialGivens = (dial: TableDial) => [
  handwheelTurns(dial),
  given('D', 'lines on the dial', count(dial.perTurn), 'typed'),
  given('v', 'parts of the vernier', count(dial.vernier), 'typed'),
];

/** What one part of the vernier reads; its givens tell the dial that a table is divided by. Example: 90, 240, 12: 5 seconds. */
export const leastFigure = (dial: TableDial): Figure =>
  figure(
    'Least reading',
    'r',
    { number: leastReading(dial) * 3600, unit: '″', places: 3 },
    { formula: '1296000 ÷ (R × D × v)', given: dialGivens(dial) },
  );

/** The error at the worst tooth, and which tooth that is: the first of them. */
export function worstFigures(N: number, dial: TableDial): Record<'worst' | 'worstTooth', Figure> {
  const error = worstOnDial(dial, N);
  const q = N / gcd(N, dial.turns * dial.perTurn * dial.vernier);
  const worst = figure(
    'Error at the worst tooth',
    'e',
    { number: arcSeconds(error, dial.turns), unit: '″', places: 3 },
    {
      formula: '1296000 × floor(q ÷ 2) ÷ (q × D × v × R)',
      given: [given('q', 'parts of a reading on which the true places fall', count(q)), ...dialGivens(dial)],
      note: error[0] === 0 ? 'Exact all round.' : 'Half a reading at most; it does not add up.',
    },
  );
  const tooth = dialPlaces(N, dial).find((place) => sameRatio([Math.abs(place.error[0]), place.error[1]], error));
  return { worst, worstTooth: figure('Worst tooth', 'n', error[0] === 0 || !tooth ? { words: 'none: exact' } : count(tooth.tooth)) };
}

const lashFigure = (lash: number | null): Figure =>
  figure(
    'Lash to take up',
    'b',
    lash === null
      ? { words: 'not measured: turn back and read where the table starts to move' }
      : { number: lash, unit: 'lines', places: 1 },
    { note: lash === null ? '' : 'Past the line: back by more than this, then up to it again.' },
  );

const placesTable = (N: number, dial: TableDial): AnswerTable => ({
  title: 'Handwheel for every tooth, from zero at tooth 1',
  unit: 'in',
  heads: ['tooth', 'whole turns', 'line', 'as it is read', 'table stands at', 'too far by'],
  rows: dialPlaces(N, dial).map((place): (Value | string)[] => [
    place.backAtFirst ? '1 again' : `${place.tooth}`,
    count(place.move.turns),
    linesAt(place, dial),
    lineWords(place, dial),
    inMinutes(tableAngle(place, dial)),
    { number: secondsOff(place, dial), unit: '″', places: 2 },
  ]),
});

/**
 * Dividing on a rotary table by its dial and vernier: turns and line for every tooth, counted from zero so that nothing adds up.
 * lash: lines of the dial. Throws DomainError for more than 500 divisions or a dial that nobody makes.
 * Example: 17 on a table of 90 turns, 240 lines, vernier of 12: 5 turns + 70.583, worst 2.4 seconds off.
 */
export function tableDialDividing(asked: TableDialAsked): Answer<TableDialKey> {
  check(asked);
  const { divisions: N, dial, lash } = asked;
  const [first, exact] = [dialPlace(2, N, dial), dialServes(dial, N)];
  const divisions = given('N', 'divisions', count(N), 'typed');
  const turns: Value = { ratio: turnsAt(2, dial.turns, N) };
  return {
    figures: {
      turns: figure('Handwheel for one division, in turns', 't', turns, { formula: 'R ÷ N', given: [handwheelTurns(dial), divisions] }),
      first: figure('First move, whole turns', 'T', count(first.move.turns, 'turns')),
      line: figure('First move, then to the line', 'd', linesAt(first, dial)),
      least: leastFigure(dial),
      ...worstFigures(N, dial),
      lash: lashFigure(lash),
      proof: figure('Proof: turns at tooth 1 again', 'p', count(dial.turns), {
        formula: 'N × t',
        given: [divisions, given('t', 'turns for one division', turns)],
      }),
    },
    cautions: [{ name: 'Lash', says: 'Turn one way only. Table clamped to cut, free to move.', weight: 'beware', about: 'line' }],
    says: exact
      ? `${N} divisions fall on the lines.`
      : `${N} divisions: between the lines; the worst tooth is off by half a reading at most.`,
    tables: [placesTable(N, dial)],
  };
}
