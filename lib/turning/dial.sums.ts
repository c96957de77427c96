import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, From, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Dial } from '../tooling/tooling.ts';
import { type Length, nanometres } from '../values/length.ts';
import type { DialMove } from '../values/move.ts';
import { printLength, printShort } from '../values/print.ts';
import { asDialCounts, type Counted, dialMoveOf, lineBelow, settle } from './dial.formulas.ts';

/** move: how far; counted: whether that is tool travel or what comes off the diameter. lash: of the screw, if known. */
export type DialAsked = {
  readonly move: Length;
  readonly counted: Counted;
  readonly dial: Dial;
  readonly lash?: Length | null;
  readonly from?: From;
};

export type DialKey = 'divisions' | 'move' | 'line' | 'left';

const source = 'common practice, no source; a cross-slide movement takes twice its amount off the diameter';

function checkedDial(dial: Dial): void {
  if (dial.division > 0 && Number.isSafeInteger(dial.perTurn) && dial.perTurn > 0) return;
  throw new DomainError({
    given: `The dial has ${dial.perTurn} divisions a turn of ${printLength(dial.division, { unit: dial.unit, places: 4 })} ${dial.unit}.`,
    limit: 'Both have to be above 0, and the divisions a whole number.',
    tryThis: 'Count the lines of one turn and read what one of them stands for.',
    about: ['dial'],
  });
}

function checked(asked: DialAsked): void {
  checkedDial(asked.dial);
  if (asked.move >= 0) return;
  throw new DomainError({
    given: `The move is ${printLength(asked.move, { unit: asked.dial.unit, places: 4 })} ${asked.dial.unit}.`,
    limit: 'A move is counted forward from zero, never below it.',
    tryThis: 'If metal is already gone, there is nothing more to feed.',
    about: ['move'],
  });
}

/** Divisions from zero for a move, as an exact count that may lie between two lines. */
export const divisionsFor = ({ move, counted, dial }: DialAsked): number => settle(asDialCounts(move, counted, dial.reads) / dial.division);

/** What one division does, counted as the move is. */
const perDivision = (dial: Dial, counted: Counted): number => asDialCounts(dial.division, dial.reads, counted);

const factorOf = (counted: Counted, reads: Counted): '' | ' ÷ 2' | ' × 2' => {
  if (counted === reads) return '';
  return reads === 'travel' ? ' ÷ 2' : ' × 2';
};

const wordsOf = (counted: Counted) => (counted === 'diameter' ? 'off the diameter' : 'of travel');

/** A move cut to a tenth of a division: nobody reads finer, and "100 divisions" of a hundred is never shown. */
function readable(n: number, perTurn: number): DialMove {
  const { turns, divisions } = dialMoveOf(Math.round(n * 10), perTurn * 10);
  return { turns, divisions: divisions / 10, perTurn };
}

function lashWords(lash: Length | null | undefined, dial: Dial): string {
  if (!lash) return 'back at least half a turn';
  return `back more than the lash of ${printLength(lash, { unit: dial.unit, places: dial.unit === 'in' ? 3 : 2 })} ${dial.unit}`;
}

/** From where the dial is counted, which way, and how the lash is kept out. */
function zeroWords(dial: Dial, lash?: Length | null): string {
  const reads = dial.reads === 'diameter' ? 'reads what comes off the diameter' : 'reads the travel, half of what comes off the diameter';
  return `The dial ${reads}. Touch the work going in, set the dial to 0 there, and count up going in; overshot: ${lashWords(lash, dial)} and in again.`;
}

function leftFigure(asked: DialAsked, line: number): Figure {
  const { dial, move, counted } = asked;
  const left = nanometres(move - line * perDivision(dial, counted));
  const factor = counted === dial.reads ? '' : dial.reads === 'travel' ? '2 × ' : '0.5 × ';
  return {
    name: counted === 'diameter' ? 'Metal left on the diameter at that line' : 'Travel left at that line',
    symbol: 'x',
    value: { length: left },
    unit: dial.unit,
    formula: `T − ${factor}k × d`,
    source,
    given: [
      givenLength('T', `wanted ${wordsOf(counted)}`, move, dial.unit, asked.from ?? 'worked out'),
      { symbol: 'k', name: 'lines from zero', value: { count: line }, from: 'worked out' },
      givenLength('d', 'one division', dial.division, dial.unit, 'typed'),
    ],
  };
}

/**
 * A movement in turns and divisions of one machine's dial, the nearest lower line, and what that line leaves.
 * Throws DomainError for a move below 0 or a dial without divisions.
 */
export function dialMove(asked: DialAsked): Answer<DialKey> {
  checked(asked);
  const { dial, move, counted } = asked;
  const n = divisionsFor(asked);
  const line = lineBelow(n);
  const between = n !== line;
  const given: Given[] = [
    givenLength('T', `wanted ${wordsOf(counted)}`, move, dial.unit, asked.from ?? 'worked out'),
    givenLength('d', 'one division', dial.division, dial.unit, 'typed'),
  ];
  const left = leftFigure(asked, line);
  const base = { unit: dial.unit, source };
  const figures = {
    divisions: {
      ...base,
      name: 'Divisions from zero',
      symbol: 'n',
      value: { number: n, unit: 'divisions', places: 2 },
      formula: `T${factorOf(counted, dial.reads)} ÷ d`,
      given,
    },
    move: {
      ...base,
      name: 'Dial from zero',
      symbol: 'm',
      value: { dial: readable(n, dial.perTurn) },
      formula: `T${factorOf(counted, dial.reads)} ÷ d ÷ q`,
      given: [...given, { symbol: 'q', name: 'divisions a turn', value: { count: dial.perTurn }, from: 'typed' }],
      note: `${printShort(n, 1)} divisions at ${dial.perTurn} a turn. ${zeroWords(dial, asked.lash ?? dial.lash)}`,
    },
    line: {
      ...base,
      name: 'Nearest lower line',
      symbol: 'mk',
      value: { dial: dialMoveOf(line, dial.perTurn) },
      formula: '',
      given: [],
      ...(between ? { error: left.value } : {}),
      note: between ? 'Between two lines: the lower one leaves metal.' : 'On a line.',
    },
    left,
  } satisfies Record<DialKey, Figure>;
  const says = between
    ? `Between two lines; the lower one leaves ${printLength(nanometres(move - line * perDivision(dial, counted)), { unit: dial.unit, places: dial.unit === 'in' ? 4 : 3 })} ${dial.unit} ${wordsOf(counted)}.`
    : 'On a line.';
  return { figures, cautions: [], says };
}

/** The one figure of a move for a sheet: turns and divisions from zero. */
export const dialFigure = (asked: DialAsked): Figure => dialMove(asked).figures.move;
