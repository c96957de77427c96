import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { placeByMoves, placeFromZero, screwTurns } from './linear.formulas.ts';

const figure = figuresFrom('common practice, no source: the table screw measures the pitch');
const MOST_LINES = 500;

export type RackKey = 'pitch' | 'turns' | 'wholeTurns' | 'line' | 'each' | 'addedUp' | 'fromZero';
/** pitch: linear, from tooth to tooth; exact, in `unit`. lead: of the table screw. perTurn: lines on its dial. */
export type RackAsked = {
  readonly pitch: number;
  readonly unit: LengthUnit;
  readonly lead: Length;
  readonly perTurn: number;
  readonly teeth: number;
};

function check({ pitch, teeth, perTurn, lead }: RackAsked): void {
  if (pitch > 0 && lead > 0 && perTurn >= 1 && teeth >= 2 && teeth <= MOST_LINES) return;
  throw new DomainError({
    given: `${teeth} teeth at a pitch of ${pitch}, on a dial of ${perTurn} lines.`,
    limit: `A rack is listed from 2 to ${MOST_LINES} teeth; pitch, lead and lines are above 0.`,
    tryThis: 'Type the pitch from tooth to tooth and the lead of the table screw.',
    about: ['teeth', 'pitch', 'lead', 'perTurn'],
  });
}

/**
 * A rack by the table screw and its dial: where the dial stands for every tooth from zero, and what the error would grow to if one rounded
 * move were repeated. Throws DomainError for more than 500 teeth. Example: 8 DP on a screw of 0.2 in, 200 lines: 1 turn + 192.7 lines;
 * repeated as 193 it is 0.0060 too far at tooth 21; from zero it stays under 0.0005.
 */
export function rackIndexing(asked: RackAsked): Answer<RackKey> {
  check(asked);
  const { pitch: p, unit, teeth, perTurn } = asked;
  const L = inUnit(asked.lead, unit);
  const d = L / perTurn;
  const t = screwTurns(p, L);
  const whole = Math.floor(t + 1e-9);
  const rows = Array.from({ length: teeth }, (_, at) => ({ zero: placeFromZero(at + 1, p, d), moves: placeByMoves(at + 1, p, d) }));
  const worst = rows.reduce((most, { zero }) => Math.max(most, Math.abs(zero.error)), 0);
  const last = rows[rows.length - 1] as (typeof rows)[number];
  const pitch = given('p', 'pitch from tooth to tooth', { number: p, unit, places: 6 }, 'typed');
  const lead = givenLength('L', 'lead of the table screw', asked.lead, unit, 'table');
  const lines = given('D', 'lines on the dial', count(perTurn), 'typed');
  const teethGiven = given('n', 'teeth', count(teeth), 'typed');
  const error = (x: number): Value => ({ number: x, unit, places: unit === 'in' ? 5 : 4 });
  return {
    figures: {
      pitch: figure('Pitch from tooth to tooth', 'p', { number: p, unit, places: 6 }, { unit }),
      turns: figure(
        'Screw for one tooth, in turns',
        't',
        { number: t, unit: 'turns', places: 5 },
        { unit, formula: 'p ÷ L', given: [pitch, lead] },
      ),
      wholeTurns: figure('Whole turns', 'T', count(whole, 'turns'), { unit }),
      line: figure(
        'Then lines of the dial',
        'i',
        { number: (t - whole) * perTurn, unit: 'lines', places: 3 },
        { unit, formula: '(p ÷ L − T) × D', given: [pitch, lead, given('T', 'whole turns', count(whole)), lines] },
      ),
      each: figure('Too far at each tooth, whole lines repeated', 'e', error(placeByMoves(2, p, d).error), {
        unit,
        formula: 'round(p × D ÷ L) × L ÷ D − p',
        given: [pitch, lines, lead],
        note: 'Minus: short.',
      }),
      addedUp: figure('Added up at the last tooth', 'E', error(last.moves.error), {
        unit,
        formula: '(n − 1) × (round(p × D ÷ L) × L ÷ D − p)',
        given: [teethGiven, pitch, lines, lead],
        note: 'If one rounded move is repeated.',
      }),
      fromZero: figure('Worst tooth, every place counted from zero', 'z', error(worst), {
        unit,
        note: 'Half a line at most, however long the rack. The screw’s own error comes on top.',
      }),
    },
    cautions: [
      { name: 'Lash', says: 'One way only. Past the line: back beyond the lash, then up again.', weight: 'beware', about: 'line' },
      { name: 'Table', says: 'Table clamped to cut; free to move.', weight: 'beware', about: 'line' },
    ],
    says: `Count every tooth from zero: one rounded move repeated would be off by ${ofPrint(last.moves.error, unit)} at tooth ${teeth}.`,
    tables: [
      {
        title: 'Dial for every tooth, from zero at tooth 1',
        unit,
        heads: ['tooth', 'whole turns', 'line', 'too far by', 'too far by, one move repeated'],
        rows: rows.map(({ zero, moves }, at): Value[] => [
          count(at + 1),
          count(Math.floor(zero.divisions / perTurn)),
          count(zero.divisions % perTurn),
          error(zero.error),
          error(moves.error),
        ]),
      },
    ],
  };
}

const ofPrint = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(Math.abs(x), unit), { unit, places: 4 })} ${unit}`;
