import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Value } from '../figure/figure.ts';
import { compareRatios, type Ratio } from '../values/ratio.ts';
import { inMinutes } from './angular.sums.ts';
import { checkDivisions, checkHead } from './check-dividing.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { arcSeconds } from './nearest.sums.ts';
import { type DialSetting, dialSetting, leastReading, type TableDial, turnsAt } from './table-dial.formulas.ts';

const figure = figuresFrom('derived: places counted from zero, each put on the nearest line of the dial or vernier');
const MOST_DIVISIONS = 500;

export type TableDialKey = 'turns' | 'first' | 'line' | 'least' | 'worst' | 'worstTooth' | 'lash' | 'proof';
export type TableDialAsked = { readonly divisions: number; readonly dial: TableDial; readonly lash: number | null };

/** The place of every tooth, from zero: the line settings a shop can read, and how far each is off. */
const dialPlaces = (N: number, dial: TableDial): DialSetting[] =>
  Array.from({ length: N + 1 }, (_, at) => dialSetting(turnsAt(at + 1, dial.turns, N), dial));

const places = (vernier: number): number => (vernier === 1 ? 0 : 3);

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

const size = ([num, den]: Ratio): Ratio => [Math.abs(num), den];

/**
 * Dividing on a rotary table by its dial and vernier: turns and line for every tooth, counted from zero so that nothing adds up.
 * lash: lines of the dial. Throws DomainError for more than 500 divisions or a dial that nobody makes.
 * Example: 17 on a table of 90 turns, 240 lines, vernier of 12: 5 turns + 70.583, worst 2.4 seconds off.
 */
export function tableDialDividing(asked: TableDialAsked): Answer<TableDialKey> {
  check(asked);
  const { divisions: N, dial, lash } = asked;
  const all = dialPlaces(N, dial);
  const worst = all.reduce((a, b, at) => (compareRatios(size(b.error), size(a.setting.error)) > 0 ? { setting: b, at } : a), {
    setting: all[0] as DialSetting,
    at: 0,
  });
  const [first, exact] = [all[1] as DialSetting, worst.setting.error[0] === 0];
  const R = given('R', 'turns of the handwheel for one of the table', count(dial.turns), 'table');
  const line = (places_: number, { move }: DialSetting): Value => ({ number: move.divisions, unit: 'lines', places: places_ });
  return {
    figures: {
      turns: figure(
        'Handwheel for one division, in turns',
        't',
        { ratio: turnsAt(2, dial.turns, N) },
        { formula: 'R ÷ N', given: [R, given('N', 'divisions', count(N), 'typed')] },
      ),
      first: figure('First move, whole turns', 'T', count(first.move.turns, 'turns')),
      line: figure('First move, then to the line', 'd', line(places(dial.vernier), first)),
      least: figure(
        'Least reading',
        'r',
        { number: leastReading(dial) * 3600, unit: '″', places: 3 },
        {
          formula: '1296000 ÷ (R × D × v)',
          given: [
            R,
            given('D', 'lines on the dial', count(dial.perTurn), 'typed'),
            given('v', 'parts of the vernier', count(dial.vernier), 'typed'),
          ],
        },
      ),
      worst: figure(
        'Error at the worst tooth',
        'e',
        { number: Math.abs(arcSeconds(worst.setting.error, dial.turns)), unit: '″', places: 3 },
        { note: exact ? 'Exact all round.' : 'Half a reading at most; it does not add up.' },
      ),
      worstTooth: figure('Worst tooth', 'n', exact ? { words: 'none: exact' } : count(worst.at + 1)),
      lash: figure(
        'Lash to take up',
        'b',
        lash === null
          ? { words: 'not measured: turn back and read where the table starts to move' }
          : { number: lash, unit: 'lines', places: 1 },
        { note: lash === null ? '' : 'Past the line: back by more than this, then up to it again.' },
      ),
      proof: figure('Proof: turns at tooth 1 again', 'p', count(dial.turns), {
        formula: 'N × t',
        given: [given('N', 'divisions', count(N), 'typed'), given('t', 'turns for one division', { ratio: turnsAt(2, dial.turns, N) })],
      }),
    },
    cautions: [{ name: 'Lash', says: 'Turn one way only. Table clamped to cut, free to move.', weight: 'beware', about: 'line' }],
    says: exact
      ? `${N} divisions fall on the lines.`
      : `${N} divisions: between the lines; the worst tooth is off by less than half a reading.`,
    tables: [
      {
        title: 'Handwheel for every tooth, from zero at tooth 1',
        unit: 'in',
        heads: ['tooth', 'whole turns', 'line', 'table stands at', 'too far by'],
        rows: all.map((setting, at): (Value | string)[] => [
          at === N ? '1 again' : `${at + 1}`,
          count(setting.move.turns),
          line(places(dial.vernier), setting),
          inMinutes((360 / dial.turns) * (setting.move.turns + setting.move.divisions / dial.perTurn)),
          { number: arcSeconds(setting.error, dial.turns), unit: '″', places: 2 },
        ]),
      },
    ],
  };
}
