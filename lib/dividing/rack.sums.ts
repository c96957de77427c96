import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { inUnit, type Length, type LengthUnit, ofUnit } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { placeByMoves, placeFromZero, type RackPlace, screwTurns } from './linear.formulas.ts';

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

/** Where the dial stands for a tooth: counted from zero, and where one rounded move would have come to if repeated. */
type Row = { readonly zero: RackPlace; readonly moves: RackPlace };
/** t: turns of the screw for one tooth; whole: the whole ones of them. each: too far at every repeated move, in `unit`. */
type Work = { readonly t: number; readonly whole: number; readonly each: number; readonly rows: readonly Row[]; readonly last: Row };

function worked({ pitch: p, unit, lead, perTurn, teeth }: RackAsked): Work {
  const L = inUnit(lead, unit);
  const d = L / perTurn;
  const t = screwTurns(p, L);
  const rows = Array.from({ length: teeth }, (_, at) => ({ zero: placeFromZero(at + 1, p, d), moves: placeByMoves(at + 1, p, d) }));
  return { t, whole: Math.floor(t + 1e-9), each: placeByMoves(2, p, d).error, rows, last: rows[rows.length - 1] as Row };
}

const pitchValue = ({ pitch, unit }: RackAsked): Value => ({ number: pitch, unit, places: 6 });
const errorValue = (x: number, unit: LengthUnit): Value => ({ number: x, unit, places: unit === 'in' ? 5 : 4 });

type Givens = Readonly<Record<'p' | 'L' | 'D' | 'n', Given>>;

const givensOf = (asked: RackAsked): Givens => ({
  p: given('p', 'pitch from tooth to tooth', pitchValue(asked), 'typed'),
  L: givenLength('L', 'lead of the table screw', asked.lead, asked.unit, 'table'),
  D: given('D', 'lines on the dial', count(asked.perTurn), 'typed'),
  n: given('n', 'teeth', count(asked.teeth), 'typed'),
});

function screwFigures(
  { unit, perTurn }: RackAsked,
  { t, whole }: Work,
  { p, L, D }: Givens,
): Record<'turns' | 'wholeTurns' | 'line', Figure> {
  return {
    turns: figure('Screw for one tooth, in turns', 't', { number: t, unit: 'turns', places: 5 }, { unit, formula: 'p ÷ L', given: [p, L] }),
    wholeTurns: figure('Whole turns', 'T', count(whole, 'turns'), { unit }),
    line: figure(
      'Then lines of the dial',
      'i',
      { number: (t - whole) * perTurn, unit: 'lines', places: 3 },
      { unit, formula: '(p ÷ L − T) × D', given: [p, L, given('T', 'whole turns', count(whole)), D] },
    ),
  };
}

/** What comes of one rounded move repeated. */
function repeatedFigures({ unit }: RackAsked, { each, last }: Work, { p, L, D, n }: Givens): Record<'each' | 'addedUp', Figure> {
  return {
    each: figure('Too far at each tooth, whole lines repeated', 'e', errorValue(each, unit), {
      unit,
      formula: 'round(p × D ÷ L) × L ÷ D − p',
      given: [p, D, L],
      note: 'Minus: short.',
    }),
    addedUp: figure('Added up at the last tooth', 'E', errorValue(last.moves.error, unit), {
      unit,
      formula: '(n − 1) × (round(p × D ÷ L) × L ÷ D − p)',
      given: [n, p, D, L],
      note: 'If one rounded move is repeated.',
    }),
  };
}

function fromZeroFigure({ unit }: RackAsked, { rows }: Work): Figure {
  const worst = rows.reduce((most, { zero }) => Math.max(most, Math.abs(zero.error)), 0);
  const note = 'Half a line at most, however long the rack. The screw’s own error comes on top.';
  return figure('Worst tooth, every place counted from zero', 'z', errorValue(worst, unit), { unit, note });
}

const dialTable = ({ unit, perTurn }: RackAsked, { rows }: Work): AnswerTable => ({
  title: 'Dial for every tooth, from zero at tooth 1',
  unit,
  heads: ['tooth', 'whole turns', 'line', 'too far by', 'too far by, one move repeated'],
  rows: rows.map(({ zero, moves }, at) => [
    count(at + 1),
    count(Math.floor(zero.divisions / perTurn)),
    count(zero.divisions % perTurn),
    errorValue(zero.error, unit),
    errorValue(moves.error, unit),
  ]),
});

const CAUTIONS: readonly Caution[] = [
  { name: 'Lash', says: 'One way only. Past the line: back beyond the lash, then up again.', weight: 'beware', about: 'line' },
  { name: 'Table', says: 'Table clamped to cut; free to move.', weight: 'beware', about: 'line' },
];

const sizeWords = (x: number, unit: LengthUnit): string => `${printLength(ofUnit(Math.abs(x), unit), { unit, places: 4 })} ${unit}`;

/**
 * A rack by the table screw and its dial: where the dial stands for every tooth from zero, and what the error would grow to if one rounded
 * move were repeated. Throws DomainError for more than 500 teeth. Example: 8 DP on a screw of 0.2 in, 200 lines: 1 turn + 192.7 lines;
 * repeated as 193 it is 0.0060 too far at tooth 21; from zero it stays under 0.0005.
 */
export function rackIndexing(asked: RackAsked): Answer<RackKey> {
  check(asked);
  const { teeth, unit } = asked;
  const [work, givens] = [worked(asked), givensOf(asked)];
  return {
    figures: {
      pitch: figure('Pitch from tooth to tooth', 'p', pitchValue(asked), { unit }),
      ...screwFigures(asked, work, givens),
      ...repeatedFigures(asked, work, givens),
      fromZero: fromZeroFigure(asked, work),
    },
    cautions: CAUTIONS,
    says: `Count every tooth from zero: one rounded move repeated would be off by ${sizeWords(work.last.moves.error, unit)} at tooth ${teeth}.`,
    tables: [dialTable(asked, work)],
  };
}
