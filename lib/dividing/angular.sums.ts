import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Figure, Given, Value } from '../figure/figure.ts';
import type { Plate } from '../tooling/tooling.ts';
import { type Angle, MAS_PER_DEGREE } from '../values/angle.ts';
import { compareRatios, plus, type Ratio, ratio } from '../values/ratio.ts';
import { degreesOfTurns, type NearMove, type NearPair, nearestPair, nearMoves, turnsForAngle } from './angular.formulas.ts';
import { checkHead, checkPlates } from './check-dividing.ts';
import { CLAMP } from './clamp.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { arcSeconds } from './nearest.sums.ts';
import { sectorHoles } from './plain.formulas.ts';
import { compoundWords } from './way-words.ts';
import { MOST_HOLES } from './what-would-serve.ts';
import { whereOn } from './where-on.ts';

const RULE =
  "Machinery's Handbook, 1916 edition, angular indexing; Brown & Sharpe, Practical Treatise on Milling and Milling Machines, scan page 60";
const figure = figuresFrom(RULE);

export type AngularKey = 'turns' | 'crank' | 'sectorHoles' | 'made' | 'error';
export type AngularAsked = {
  readonly angle: Angle;
  readonly turns: number;
  readonly plates: readonly Plate[];
  readonly backPin: boolean;
  readonly reached: readonly number[] | null;
};

const MOST_SHOWN = 12;
const MOST_CIRCLES_PAIRED = 60;
const size = ([num, den]: Ratio): Ratio => [Math.abs(num), den];

function check({ angle, turns, plates }: AngularAsked): void {
  checkHead({ turns });
  checkPlates(plates);
  if (angle > 0 && angle <= 360 * MAS_PER_DEGREE) return;
  throw new DomainError({
    given: `An angle of ${angle / MAS_PER_DEGREE}° was asked for.`,
    limit: 'It may be above 0, up to 360°.',
    tryThis: 'Type degrees, as 35 or 48°40′.',
    about: ['angle'],
  });
}

/** A ratio short enough to be read, or its decimal. */
const shown = (turns: Ratio): Value => (turns[1] <= 10_000 ? { ratio: turns } : { number: turns[0] / turns[1], unit: 'turns', places: 7 });

/** Degrees, minutes and seconds: 48°40′, 0°5′24″. */
export function inMinutes(degrees: number): string {
  const tenths = Math.round(Math.abs(degrees) * 36_000);
  const [whole, minutes, seconds] = [Math.floor(tenths / 36_000), Math.floor(tenths / 600) % 60, (tenths % 600) / 10];
  return `${degrees < 0 ? '−' : ''}${whole}°${minutes}′${seconds === 0 ? '' : `${seconds}″`}`;
}

/** The nearest move, and all of them, nearest first; made: what the nearest turns the crank; pair: where no circle is exact and a back pin is there. */
type Work = {
  readonly turns: Ratio;
  readonly near: readonly NearMove[];
  readonly best: NearMove;
  readonly made: Ratio;
  readonly pair: NearPair | null;
};

function worked(asked: AngularAsked): Work {
  const { turns: R, angle, plates } = asked;
  const turns = turnsForAngle(R, angle);
  const near = nearMoves(turns, plates);
  const [best] = near;
  if (!best) throw new Error('plates were checked to have a circle');
  const { move } = best;
  const pair = best.error[0] === 0 ? null : pairOf(asked, turns);
  return { turns, near, best, made: ratio(move.turns * move.circle + move.spaces, move.circle), pair };
}

const isExact = ({ best }: Work): boolean => best.error[0] === 0;
const headGiven = ({ turns }: AngularAsked): Given => given('R', 'turns of the crank for one of the spindle', count(turns), 'table');

const turnsFigure = (asked: AngularAsked, { turns }: Work): Figure =>
  figure('Crank for the angle, in turns', 't', shown(turns), {
    formula: 'R × A ÷ 360',
    given: [headGiven(asked), inNumber(asked.angle)],
  });

function moveFigures(work: Work): Record<'crank' | 'sectorHoles', Figure> {
  const { plate, side, move } = work.best;
  const note = `On ${whereOn(plate, side)}. ${isExact(work) ? 'Exact.' : `The nearest: no circle here gives it exactly; ${wouldServe(work.turns)}.`}`;
  const sector: Value = move.spaces === 0 ? { words: 'none' } : count(sectorHoles(move.spaces), 'holes');
  return { crank: figure('Crank', 'm', { move }, { note }), sectorHoles: figure('Holes the sector shows', 'h', sector) };
}

function madeFigure(asked: AngularAsked, { made }: Work): Figure {
  const degrees = degreesOfTurns(asked.turns, made);
  const value: Value = { number: degrees, unit: '°', places: 6 };
  const moved = given('m', 'turns of the crank', { ratio: made });
  return figure('Angle that is made', 'B', value, {
    formula: '360 × m ÷ R',
    given: [moved, headGiven(asked)],
    note: inMinutes(degrees),
  });
}

const errorFigure = ({ turns }: AngularAsked, work: Work): Figure =>
  figure(
    'Too far by',
    'e',
    { number: arcSeconds(work.best.error, turns), unit: '″', places: 3 },
    { note: isExact(work) ? 'Exact.' : 'For one move. Moves on end add up.', source: 'derived: angle made less angle wanted' },
  );

/** Two pins are named where they give the angle, or come nearer to it than any one circle. */
function says({ angle, turns: R }: AngularAsked, work: Work): string {
  const { best, pair, turns, made } = work;
  const wanted = inMinutes(angle / MAS_PER_DEGREE);
  if (isExact(work)) return `${wanted}: exact.`;
  const one = inMinutes(degreesOfTurns(R, made));
  if (!pair || compareRatios(size(pair.error), size(best.error)) >= 0) return `${wanted}: nothing exact; the nearest is ${one}.`;
  const two = `with two pins: ${compoundWords(pair)}, ${whereOn(pair.plate, pair.side)}. On one circle the nearest is ${one}.`;
  const near = inMinutes(degreesOfTurns(R, plus(turns, pair.error)));
  return `${wanted}: ${pair.error[0] === 0 ? 'exact' : `nothing exact; the nearest is ${near}`} ${two}`;
}

/**
 * An angle on the index plates: exact on a circle when there is one, else the nearest with its error, on one circle and, with a back pin, on two.
 * Throws DomainError for angles outside 0 to 360°, wrong heads and plates. Example: 35° at 40 to 1: 3 turns + 16 spaces on 18, exact.
 */
export function angularIndexing(asked: AngularAsked): Answer<AngularKey> {
  check(asked);
  const work = worked(asked);
  return {
    figures: {
      turns: turnsFigure(asked, work),
      ...moveFigures(work),
      made: madeFigure(asked, work),
      error: errorFigure(asked, work),
    },
    cautions: [{ ...CLAMP, about: 'crank' }],
    says: says(asked, work),
    tables: [nearTable(work.near, asked.turns), ...(work.pair ? [pairTable(work.pair, asked.turns)] : [])],
  };
}

const inNumber = (angle: Angle): Given => given('A', 'angle', { number: angle / MAS_PER_DEGREE, unit: '°', places: 8 }, 'typed');

function nearTable(near: readonly NearMove[], R: number): AnswerTable {
  const exact = near.filter(({ error }) => error[0] === 0);
  const rows = (exact.length > 0 ? exact : near)
    .slice(0, MOST_SHOWN)
    .map(({ plate, side, move, error }): (Value | string)[] => [
      whereOn(plate, side),
      { move },
      move.spaces === 0 ? 'none' : count(sectorHoles(move.spaces)),
      { number: arcSeconds(error, R), unit: '″', places: 2 },
    ]);
  return {
    title: exact.length > 0 ? 'Circles that give it exactly' : 'Nearest circles',
    unit: 'in',
    heads: ['plate', 'move', 'holes the sector shows', 'too far by'],
    rows,
  };
}

/** What one circle must hold, for the note beside the nearest. */
function wouldServe([, holes]: Ratio): string {
  return holes <= MOST_HOLES ? `one of ${holes} holes, or a multiple, would` : `it would take ${holes} holes in one circle`;
}

function pairOf({ plates, backPin, reached }: AngularAsked, turns: Ratio): NearPair | null {
  if (!backPin || plates.flatMap(({ sides }) => sides.flat()).length > MOST_CIRCLES_PAIRED) return null;
  return nearestPair(turns, plates, reached);
}

function pairTable(pair: NearPair, R: number): AnswerTable {
  const rows = [[whereOn(pair.plate, pair.side), compoundWords(pair), { number: arcSeconds(pair.error, R), unit: '″', places: 3 }]];
  const title = pair.error[0] === 0 ? 'Exact with two pins' : 'Nearest with two pins';
  return { title, unit: 'in', heads: ['plate', 'moves', 'too far by'], rows };
}
