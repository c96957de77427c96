import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Plate } from '../tooling/tooling.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { type Ratio, ratio, times, toNumber } from '../values/ratio.ts';
import { type NearMove, nearMoves } from './angular.formulas.ts';
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

/** What the crank turns for one line, the circle that gives it or comes nearest, and what one turn of the crank moves the table, in `unit`. */
type Work = { readonly turns: Ratio; readonly best: NearMove; readonly perTurn: number };

function worked({ distance, lead, turns: R, driver, driven, plates, unit }: GraduatingAsked): Work {
  const x = ratio(driver, driven);
  const turns = graduatingTurns(R, ratio(distance), ratio(lead), x);
  const [best] = nearMoves(turns, plates);
  if (!best) throw new Error('plates were checked to have a circle');
  return { turns, best, perTurn: inUnit(1 as Length, unit) * toNumber(movePerCrankTurn(R, ratio(lead), x)) };
}

const isExact = ({ best }: Work): boolean => best.error[0] === 0;
/** By how much line n, counted from 0, stands too far. */
const offAt = (n: number, { turns, best, perTurn }: Work): number => toNumber(lineError(n, turns, best.move.circle)) * perTurn;
const errorValue = (e: number, unit: LengthUnit): Value => ({ number: e, unit, places: unit === 'in' ? 6 : 5 });

type Givens = Readonly<Record<'R' | 's' | 'L', Given>> & { readonly gears: readonly Given[] };

const givensOf = ({ distance, lead, turns, driver, driven, unit }: GraduatingAsked): Givens => ({
  R: given('R', 'turns of the crank for one of the spindle', count(turns), 'table'),
  s: givenLength('s', 'distance of the lines', distance, unit, 'typed'),
  gears: [given('a', 'teeth on the spindle', count(driver), 'typed'), given('b', 'teeth on the screw', count(driven), 'typed')],
  L: givenLength('L', 'lead of the table screw', lead, unit, 'table'),
});

function turnFigures({ unit }: GraduatingAsked, { turns, perTurn }: Work, { R, s, gears, L }: Givens): Record<'perTurn' | 'turns', Figure> {
  return {
    perTurn: figure(
      'One turn of the crank moves the table',
      'u',
      { number: perTurn, unit, places: 6 },
      { unit, formula: 'a × L ÷ (b × R)', given: [...gears, L, R] },
    ),
    turns: figure('Crank for one line, in turns', 't', shown(turns), {
      unit,
      formula: 'R × s × b ÷ (a × L)',
      given: [R, s, ...gears, L],
    }),
  };
}

function moveFigures({ unit }: GraduatingAsked, work: Work): Record<'crank' | 'sectorHoles', Figure> {
  const { plate, side, move } = work.best;
  const note = `On ${whereOn(plate, side)}. ${isExact(work) ? 'Exact.' : 'The nearest: take each line from the table below.'}`;
  const sector: Value = move.spaces === 0 ? { words: 'none' } : count(sectorHoles(move.spaces), 'holes');
  return {
    crank: figure('Crank for one line', 'm', { move }, { unit, note }),
    sectorHoles: figure('Holes the sector shows', 'h', sector, { unit }),
  };
}

function worstFigure({ lines, unit }: GraduatingAsked, work: Work): Figure {
  const worst = Array.from({ length: lines }, (_, n) => Math.abs(offAt(n, work))).reduce((a, b) => Math.max(a, b), 0);
  const note = isExact(work)
    ? 'Exact but for the screw itself.'
    : 'Counted from zero; it does not add up. The screw’s own error comes on top.';
  return figure('Worst line off by', 'e', errorValue(worst, unit), { unit, note });
}

function proofFigure({ lines, unit }: GraduatingAsked, work: Work, { R, s, gears, L }: Givens): Figure {
  const moved = isExact(work) ? turnsMade(lines - 1, work.best.move) : times(ratio(lines - 1), work.turns);
  return figure('Turns from the first line to the last', 'p', shown(moved), {
    unit,
    formula: '(n − 1) × R × s × b ÷ (a × L)',
    given: [given('n', 'lines', count(lines), 'typed'), R, s, ...gears, L],
  });
}

/** Holes gone past from zero to line n: the nearest to where it should stand, the lower of two as near. */
const holesTo = (n: number, { turns, best }: Work): number => Math.ceil((2 * best.move.circle * n * turns[0] - turns[1]) / (2 * turns[1]));

const linesTable = ({ lines, unit }: GraduatingAsked, work: Work): AnswerTable => ({
  title: 'Every line from zero',
  unit,
  heads: ['line', 'turns from the start', 'hole', 'too far by'],
  rows: Array.from({ length: lines }, (_, n) => {
    const [holes, circle] = [holesTo(n, work), work.best.move.circle];
    return [count(n + 1), count(Math.floor(holes / circle)), count(holes % circle), errorValue(offAt(n, work), unit)];
  }),
});

const ONE_WAY: Caution = {
  name: 'One way',
  says: 'Crank one way only; lash of screw and gears taken up before the first line.',
  weight: 'beware',
  about: 'crank',
};

/**
 * Lines of a scale by the index crank, the head geared to the table screw. Exact when a circle gives it; else the nearest, each line counted
 * from zero. Throws DomainError for more than 500 lines, wrong heads and plates. Example: 1/64 in on a screw of 1/4 in, 1 to 1, 40 to 1:
 * 2 turns + 8 spaces on 16, exact.
 */
export function scaleGraduating(asked: GraduatingAsked): Answer<GraduatingKey> {
  check(asked);
  const [work, givens] = [worked(asked), givensOf(asked)];
  return {
    figures: {
      ...turnFigures(asked, work, givens),
      ...moveFigures(asked, work),
      worst: worstFigure(asked, work),
      proof: proofFigure(asked, work, givens),
    },
    cautions: [ONE_WAY],
    says: isExact(work) ? 'Exact: every line falls on a hole.' : 'Nothing exact: every line on its nearest hole.',
    tables: [linesTable(asked, work)],
  };
}
