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

/** A move on the dial: n divisions from zero, and the line at or below. */
type Placed = DialAsked & { readonly n: number; readonly line: number };

function placed(asked: DialAsked): Placed {
  const n = divisionsFor(asked);
  return { ...asked, n, line: lineBelow(n) };
}

const isBetween = ({ n, line }: Placed): boolean => n !== line;
/** What the line leaves, counted as the move is. */
const leftAt = ({ move, line, dial, counted }: Placed): Length => nanometres(move - line * perDivision(dial, counted));

const wantedGiven = ({ move, counted, dial, from }: DialAsked): Given =>
  givenLength('T', `wanted ${wordsOf(counted)}`, move, dial.unit, from ?? 'worked out');
const divisionGiven = ({ dial }: DialAsked): Given => givenLength('d', 'one division', dial.division, dial.unit, 'typed');
const turnGiven = ({ dial }: DialAsked): Given => ({
  symbol: 'q',
  name: 'divisions a turn',
  value: { count: dial.perTurn },
  from: 'typed',
});

const divisionsFigure = (at: Placed): Figure => ({
  unit: at.dial.unit,
  source,
  name: 'Divisions from zero',
  symbol: 'n',
  value: { number: at.n, unit: 'divisions', places: 2 },
  formula: `T${factorOf(at.counted, at.dial.reads)} ÷ d`,
  given: [wantedGiven(at), divisionGiven(at)],
});

const moveFigure = (at: Placed): Figure => ({
  unit: at.dial.unit,
  source,
  name: 'Dial from zero',
  symbol: 'm',
  value: { dial: readable(at.n, at.dial.perTurn) },
  formula: `T${factorOf(at.counted, at.dial.reads)} ÷ d ÷ q`,
  given: [wantedGiven(at), divisionGiven(at), turnGiven(at)],
  note: `${printShort(at.n, 1)} divisions at ${at.dial.perTurn} a turn. ${zeroWords(at.dial, at.lash ?? at.dial.lash)}`,
});

const lineFigure = (at: Placed): Figure => ({
  unit: at.dial.unit,
  source,
  name: 'Nearest lower line',
  symbol: 'mk',
  value: { dial: dialMoveOf(at.line, at.dial.perTurn) },
  formula: '',
  given: [],
  ...(isBetween(at) ? { error: { length: leftAt(at) } } : {}),
  note: isBetween(at) ? 'Between two lines: the lower one leaves metal.' : 'On a line.',
});

function leftFigure(at: Placed): Figure {
  const { dial, counted, line } = at;
  const factor = counted === dial.reads ? '' : dial.reads === 'travel' ? '2 × ' : '0.5 × ';
  return {
    name: counted === 'diameter' ? 'Metal left on the diameter at that line' : 'Travel left at that line',
    symbol: 'x',
    value: { length: leftAt(at) },
    unit: dial.unit,
    formula: `T − ${factor}k × d`,
    source,
    given: [wantedGiven(at), { symbol: 'k', name: 'lines from zero', value: { count: line }, from: 'worked out' }, divisionGiven(at)],
  };
}

function saysOf(at: Placed): string {
  if (!isBetween(at)) return 'On a line.';
  const { unit } = at.dial;
  return `Between two lines; the lower one leaves ${printLength(leftAt(at), { unit, places: unit === 'in' ? 4 : 3 })} ${unit} ${wordsOf(at.counted)}.`;
}

/**
 * A movement in turns and divisions of one machine's dial, the nearest lower line, and what that line leaves.
 * Throws DomainError for a move below 0 or a dial without divisions.
 */
export function dialMove(asked: DialAsked): Answer<DialKey> {
  checked(asked);
  const at = placed(asked);
  return {
    figures: { divisions: divisionsFigure(at), move: moveFigure(at), line: lineFigure(at), left: leftFigure(at) },
    cautions: [],
    says: saysOf(at),
  };
}

/** The one figure of a move for a sheet: turns and divisions from zero. */
export const dialFigure = (asked: DialAsked): Figure => dialMove(asked).figures.move;
