import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Figure, Value } from '../figure/figure.ts';
import type { Plate } from '../tooling/tooling.ts';
import { type Angle, MAS_PER_DEGREE } from '../values/angle.ts';
import { type Ratio, ratio } from '../values/ratio.ts';
import { degreesOfTurns, nearestPair, nearMoves, turnsForAngle } from './angular.formulas.ts';
import { checkHead, checkPlates } from './check-dividing.ts';
import { CLAMP } from './clamp.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { arcSeconds } from './nearest.sums.ts';
import { sectorHoles } from './plain.formulas.ts';
import { compoundWords } from './way-words.ts';
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

/**
 * An angle on the index plates: exact on a circle when there is one, else the nearest with its error, on one circle and, with a back pin, on two.
 * Throws DomainError for angles outside 0 to 360°, wrong heads and plates. Example: 35° at 40 to 1: 3 turns + 16 spaces on 18, exact.
 */
export function angularIndexing(asked: AngularAsked): Answer<AngularKey> {
  check(asked);
  const turns = turnsForAngle(asked.turns, asked.angle);
  const near = nearMoves(turns, asked.plates);
  const [best] = near;
  if (!best) throw new Error('plates were checked to have a circle');
  const exact = best.error[0] === 0;
  const R = given('R', 'turns of the crank for one of the spindle', count(asked.turns), 'table');
  const A = given('A', 'angle', { angle: asked.angle }, 'typed');
  const move = ratio(best.move.turns * best.move.circle + best.move.spaces, best.move.circle);
  const figures: Record<AngularKey, Figure> = {
    turns: figure('Crank for the angle, in turns', 't', shown(turns), {
      formula: 'R × A ÷ 360',
      given: [R, A].map((one) => (one === A ? inNumber(asked.angle) : one)),
    }),
    crank: figure(
      'Crank',
      'm',
      { move: best.move },
      { note: `On ${whereOn(best.plate, best.side)}. ${exact ? 'Exact.' : 'The nearest: no circle here gives it exactly.'}` },
    ),
    sectorHoles: figure(
      'Holes the sector shows',
      'h',
      best.move.spaces === 0 ? { words: 'none' } : count(sectorHoles(best.move.spaces), 'holes'),
    ),
    made: figure(
      'Angle that is made',
      'B',
      { number: degreesOfTurns(asked.turns, move), unit: '°', places: 6 },
      {
        formula: '360 × m ÷ R',
        given: [given('m', 'turns of the crank', { ratio: move }), R],
        note: inMinutes(degreesOfTurns(asked.turns, move)),
      },
    ),
    error: figure(
      'Too far by',
      'e',
      { number: arcSeconds(best.error, asked.turns), unit: '″', places: 3 },
      { note: exact ? 'Exact.' : 'For one move. Moves on end add up.', source: 'derived: angle made less angle wanted' },
    ),
  };
  return {
    figures,
    cautions: [{ ...CLAMP, about: 'crank' }],
    says: exact
      ? `${inMinutes(asked.angle / MAS_PER_DEGREE)}: exact.`
      : `${inMinutes(asked.angle / MAS_PER_DEGREE)}: nothing exact; the nearest is ${inMinutes(degreesOfTurns(asked.turns, move))}.`,
    tables: [nearTable(near, asked.turns), ...pairTable(asked, turns, exact)],
  };
}

const inNumber = (angle: Angle) => given('A', 'angle', { number: angle / MAS_PER_DEGREE, unit: '°', places: 8 }, 'typed');

function nearTable(near: ReturnType<typeof nearMoves>, R: number): AnswerTable {
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

function pairTable({ turns: R, plates, backPin, reached }: AngularAsked, turns: Ratio, exact: boolean): AnswerTable[] {
  if (exact || !backPin || plates.flatMap(({ sides }) => sides.flat()).length > MOST_CIRCLES_PAIRED) return [];
  const pair = nearestPair(turns, plates, reached);
  if (!pair) return [];
  const rows = [[whereOn(pair.plate, pair.side), compoundWords(pair), { number: arcSeconds(pair.error, R), unit: '″', places: 3 }]];
  return [{ title: 'Nearest with two pins', unit: 'in', heads: ['plate', 'moves', 'too far by'], rows }];
}
