import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Plate } from '../tooling/tooling.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { type Ratio, ratio, times, toNumber } from '../values/ratio.ts';
import { nearMoves } from './angular.formulas.ts';
import { checkHead, checkPlates } from './check-dividing.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { graduatingTurns, lineError, movePerCrankTurn } from './linear.formulas.ts';
import { sectorHoles, turnsMade } from './plain.formulas.ts';
import { whereOn } from './where-on.ts';

const figure = figuresFrom('Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, graduating (scan page 190)');
const MOST_LINES = 500;

export type GraduatingKey = 'perTurn' | 'turns' | 'crank' | 'sectorHoles' | 'worst' | 'proof';
/** distance: of the lines. lead: of the table screw. drivers ÷ driven: turns of the screw for one of the spindle. */
export type GraduatingAsked = {
  readonly distance: Length;
  readonly lead: Length;
  readonly turns: number;
  readonly driver: number;
  readonly driven: number;
  readonly lines: number;
  readonly plates: readonly Plate[];
  readonly unit: LengthUnit;
};

function check({ distance, lead, lines, turns, plates }: GraduatingAsked): void {
  checkHead({ turns });
  checkPlates(plates);
  if (distance > 0 && lead > 0 && lines >= 2 && lines <= MOST_LINES) return;
  throw new DomainError({
    given: `${lines} lines were asked for.`,
    limit: `A scale is listed from 2 to ${MOST_LINES} lines, their distance and the lead above 0.`,
    tryThis: 'Take it in stretches.',
    about: ['lines', 'distance', 'lead'],
  });
}

/** A ratio that can be read, or its decimal. */
const shown = (turns: Ratio): Value => (turns[1] <= 10_000 ? { ratio: turns } : { number: toNumber(turns), unit: 'turns', places: 7 });

/**
 * Lines of a scale by the index crank, the head geared to the table screw. Exact when a circle gives it; else the nearest, each line counted
 * from zero. Throws DomainError for more than 500 lines, wrong heads and plates. Example: 1/64 in on a screw of 1/4 in, 1 to 1, 40 to 1:
 * 2 turns + 8 spaces on 16, exact.
 */
export function scaleGraduating(asked: GraduatingAsked): Answer<GraduatingKey> {
  check(asked);
  const { distance, lead, turns: R, lines, unit, driver, driven } = asked;
  const x = ratio(driver, driven);
  const turns = graduatingTurns(R, ratio(distance), ratio(lead), x);
  const [best] = nearMoves(turns, asked.plates);
  if (!best) throw new Error('plates were checked to have a circle');
  const exact = best.error[0] === 0;
  const perTurn = inUnit(1 as Length, unit) * toNumber(movePerCrankTurn(R, ratio(lead), x));
  const off = (n: number): number => toNumber(lineError(n, turns, best.move.circle)) * perTurn;
  const worst = Array.from({ length: lines }, (_, n) => Math.abs(off(n))).reduce((a, b) => Math.max(a, b), 0);
  const error = (e: number): Value => ({ number: e, unit, places: unit === 'in' ? 6 : 5 });
  const Rg = given('R', 'turns of the crank for one of the spindle', count(R), 'table');
  const L = givenLength('L', 'lead of the table screw', lead, unit, 'table');
  const s = givenLength('s', 'distance of the lines', distance, unit, 'typed');
  const gears = [given('a', 'teeth on the spindle', count(driver), 'typed'), given('b', 'teeth on the screw', count(driven), 'typed')];
  const moved = exact ? turnsMade(lines - 1, best.move) : times(ratio(lines - 1), turns);
  return {
    figures: {
      perTurn: figure(
        'One turn of the crank moves the table',
        'u',
        { number: perTurn, unit, places: 6 },
        { unit, formula: 'a × L ÷ (b × R)', given: [...gears, L, Rg] },
      ),
      turns: figure('Crank for one line, in turns', 't', shown(turns), {
        unit,
        formula: 'R × s × b ÷ (a × L)',
        given: [Rg, s, ...gears, L],
      }),
      crank: figure(
        'Crank for one line',
        'm',
        { move: best.move },
        { unit, note: `On ${whereOn(best.plate, best.side)}. ${exact ? 'Exact.' : 'The nearest: take each line from the table below.'}` },
      ),
      sectorHoles: figure(
        'Holes the sector shows',
        'h',
        best.move.spaces === 0 ? { words: 'none' } : count(sectorHoles(best.move.spaces), 'holes'),
        { unit },
      ),
      worst: figure('Worst line off by', 'e', error(worst), {
        unit,
        note: exact ? 'Exact but for the screw itself.' : 'Counted from zero; it does not add up. The screw’s own error comes on top.',
      }),
      proof: figure('Turns from the first line to the last', 'p', shown(moved), {
        unit,
        formula: '(n − 1) × R × s × b ÷ (a × L)',
        given: [given('n', 'lines', count(lines), 'typed'), Rg, s, ...gears, L],
      }),
    },
    cautions: [
      {
        name: 'One way',
        says: 'Crank one way only; lash of screw and gears taken up before the first line.',
        weight: 'beware',
        about: 'crank',
      },
    ],
    says: exact ? 'Exact: every line falls on a hole.' : 'Nothing exact: every line on its nearest hole.',
    tables: [
      {
        title: 'Every line from zero',
        unit,
        heads: ['line', 'turns from the start', 'hole', 'too far by'],
        rows: Array.from({ length: lines }, (_, n): Value[] => {
          const holes = Math.ceil((2 * best.move.circle * n * turns[0] - turns[1]) / (2 * turns[1]));
          return [count(n + 1), count(Math.floor(holes / best.move.circle)), count(holes % best.move.circle), error(off(n))];
        }),
      },
    ],
  };
}
