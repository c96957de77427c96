import type { AnswerTable, Value } from '../figure/figure.ts';
import { type Ratio, ratio } from '../values/ratio.ts';
import { countMade } from './differential.formulas.ts';
import { idlersSay, type OneIdler, plateWay, trainWords } from './idlers.ts';
import { count } from './index-figure.ts';
import { holesAt, METHOD, moveWords, placeWords } from './way-words.ts';
import { changesFrom, type DividingTools, type Way } from './ways.ts';
import type { WouldServe } from './what-would-serve.ts';

const MOST_SHOWN = 24;
const MOST_TEETH_LISTED = 500;

type Asked = { readonly divisions: number; readonly tools: DividingTools; readonly oneIdler: OneIdler };

/** "39 4/9". */
export function inTurns([num, den]: Ratio): string {
  const [whole, left] = [Math.floor(num / den), num % den];
  return left === 0 ? `${whole}` : `${whole === 0 ? '' : `${whole} `}${left}/${den}`;
}

/** What comes out when the plate turns the wrong way, and when it is left locked; nothing of the kind where no gears turn it. */
function falseCounts(turns: number, way: Way): (Value | string)[] {
  if (way.method !== 'differential') return ['–', '–'];
  const move = ratio(way.move.turns * way.move.circle + way.move.spaces, way.move.circle);
  return (['wrong', 'locked'] as const).map((goes): Value => ({ ratio: countMade(turns, move, way.plateTurns, goes) }));
}

export function waysTable({ tools, oneIdler }: Asked, ways: readonly Way[]): AnswerTable {
  const row = (way: Way): (Value | string)[] => [
    METHOD[way.method].split(':')[0] as string,
    placeWords(way) + (way.method === 'direct' || way.plate.here ? '' : ' (not in the shop)'),
    moveWords(way),
    way.method === 'differential' ? trainWords(way.train) : 'none',
    way.method === 'differential' ? `${way.plateTurns.map(Math.abs).join('/')} ${plateWay(way)}; ${idlersSay(way, oneIdler)}` : 'still',
    ...falseCounts(tools.turns, way),
    count(changesFrom(tools.mounted, way)),
  ];
  return {
    title: ways.length > MOST_SHOWN ? `The first ${MOST_SHOWN} of ${ways.length} ways, easiest first` : 'Ways that work, easiest first',
    unit: 'in',
    heads: ['method', 'plate', 'move', 'gears', 'plate turns', 'wrong way makes', 'locked makes', 'weight of changes'],
    rows: ways.slice(0, MOST_SHOWN).map(row),
  };
}

/** While the head has not been tried: what comes out for each number of idlers, either way. */
export function directionTable({ divisions, oneIdler, tools }: Asked, way: Way): AnswerTable[] {
  if (way.method !== 'differential' || oneIdler) return [];
  const turns = ratio(way.move.turns * way.move.circle + way.move.spaces, way.move.circle);
  const wrong = countMade(tools.turns, turns, way.plateTurns, 'wrong');
  const simple = way.train.drivers.length === 1;
  const idlers = simple ? [1, 2] : [0, 1];
  const rows = (['with', 'against'] as const).map((one): (Value | string)[] => [
    `${simple ? 'one idler' : 'no idler'} turns the plate ${one} the crank`,
    ...idlers.map((_, at): Value => ({ ratio: (at === 0) === (one === plateWay(way)) ? [divisions, 1] : wrong })),
  ]);
  return [
    {
      title: 'Teeth made, by what this head does',
      unit: 'in',
      heads: ['if on this head', ...idlers.map((n) => `with ${n} ${n === 1 ? 'idler' : 'idlers'}`)],
      rows,
    },
  ];
}

export function landingTable({ divisions }: Pick<Asked, 'divisions'>, way: Way): AnswerTable[] {
  if (divisions > MOST_TEETH_LISTED) return [];
  const heads = way.method === 'compound' ? ['tooth', 'hole of the crank pin', 'hole of the back pin'] : ['tooth', 'hole'];
  const rows = Array.from({ length: divisions + 1 }, (_, at): (Value | string)[] => [
    at === divisions ? '1 again' : `${at + 1}`,
    ...holesAt(at + 1, way).map((hole) => count(hole)),
  ]);
  return [{ title: 'Where the pin lands, hole 0 being where it stands for tooth 1', unit: 'in', heads, rows }];
}

export function wouldTable({ circles, gears }: WouldServe): AnswerTable {
  const rows: (Value | string)[][] = [
    ...circles.map((holes): (Value | string)[] => [`a circle of ${holes} holes`, 'on any plate for this head, plainly']),
    ...gears.map(({ teeth, with: other, driver, turns, plateTurns }): (Value | string)[] => [
      `a gear of ${teeth}`,
      `with the ${other}: ${driver === 'it' ? teeth : other} on the spindle, ${driver === 'it' ? other : teeth} on the plate’s shaft; ${inTurns(turns)} turn of the crank; plate ${plateTurns.map(Math.abs).join('/')} ${plateTurns[0] > 0 ? 'with' : 'against'}`,
    ]),
  ];
  return { title: 'Any one of these would make it possible', unit: 'in', heads: ['made, borrowed or bought', 'how'], rows };
}
