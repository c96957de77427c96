import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Figure, Value } from '../figure/figure.ts';
import type { IndexMove } from '../values/move.ts';
import { type Ratio, ratio } from '../values/ratio.ts';
import { checkDivisions, checkHead, checkPlates } from './check-dividing.ts';
import { countMade } from './differential.formulas.ts';
import { idlersSay, type OneIdler, plateWay, trainWords } from './idlers.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { nearestAnswer } from './nearest.sums.ts';
import { sectorHoles, turnsPerDivision } from './plain.formulas.ts';
import { METHOD, moveWords, placeWords, sectorsOf } from './way-words.ts';
import { wayCautions } from './ways.cautions.ts';
import { directionTable, inTurns, landingTable, waysTable, wouldTable } from './ways.tables.ts';
import { type DividingTools, proofOf, type Way, waysToDivide } from './ways.ts';
import { whatWouldServe } from './what-would-serve.ts';
import { whyNoCircle } from './why-not.ts';

const RULE =
  'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, indexing (scan pages 58 to 63); F. D. Jones, Milling Machines Part II (1912), compound indexing';
const figure = figuresFrom(RULE);

export type WaysKey =
  | 'method'
  | 'crank'
  | 'sector'
  | 'sectorHoles'
  | 'plateTurns'
  | 'gears'
  | 'idlers'
  | 'setFor'
  | 'ifWrong'
  | 'ifLocked'
  | 'proof'
  | 'nearest'
  | 'worst';

export type WaysAsked = {
  readonly divisions: number;
  readonly tools: DividingTools;
  readonly oneIdler: OneIdler;
  /** Only ways of this kind. */
  readonly only: Way['method'] | null;
  /** Whether the nearest is to be given where nothing is exact. */
  readonly nearest: boolean;
};

const MOST_ON_ONE_SIDE = 40;
const MOST_GEARS = 60;

function check({ divisions, tools }: WaysAsked): void {
  checkDivisions(divisions);
  checkHead(tools);
  checkPlates(tools.plates);
  const widest = Math.max(...tools.plates.flatMap(({ sides }) => sides.map((side) => side.length)));
  if (widest > MOST_ON_ONE_SIDE) throw tooMany(`One side has ${widest} circles.`, `At most ${MOST_ON_ONE_SIDE} are paired.`, 'plates');
  if (tools.gears.length > MOST_GEARS)
    throw tooMany(`There are ${tools.gears.length} change gears.`, `At most ${MOST_GEARS} are tried.`, 'gears');
}

const tooMany = (says: string, limit: string, about: string): DomainError =>
  new DomainError({ given: says, limit, tryThis: 'Type those that go with this head.', about: [about] });

/** The ways asked for: of one kind only, or all, the easiest first. */
export function waysAsked({ divisions, tools, only }: WaysAsked): Way[] {
  const ways = waysToDivide(divisions, tools, only === 'compound' || only === 'differential');
  return only === null ? ways : ways.filter(({ method }) => method === only);
}

/**
 * How to divide with what is owned: the easiest way that works, its proof, what would come of a wrong idler or a locked plate, and the
 * other ways; or that none does, what would make it possible, and the nearest when it is asked.
 * Throws DomainError for divisions outside 2 to 100,000, a head whose turns are no whole number, no plates, more than 40 circles on a side
 * or 60 gears. Example: 71 at 40 to 1 with 40 and 72: 10 spaces on 18, the plate 5/9 with the crank; wrong way 73, locked 72.
 */
export function dividingWays(asked: WaysAsked): Answer<WaysKey> {
  check(asked);
  const ways = waysAsked(asked);
  const [way] = ways;
  return way ? wayAnswer(asked, way, ways) : refused(asked);
}

const NAMES: Readonly<Record<WaysKey, readonly [string, string]>> = {
  method: ['Method', ''],
  crank: ['Crank for one division', 'm'],
  sector: ['Sector, in spaces', 's'],
  sectorHoles: ['Holes the sector shows', 'h'],
  plateTurns: ['Plate, for one turn of the spindle', 'g'],
  gears: ['Gears', ''],
  idlers: ['Idlers', ''],
  setFor: ['Set for', 'A'],
  ifWrong: ['If the plate turns the wrong way', 'w'],
  ifLocked: ['If the plate is left locked', 'k'],
  proof: ['Proof: turns that all moves make', 'p'],
  nearest: ['Nearest, where nothing is exact', ''],
  worst: ['Error at the worst tooth', 'e'],
};

const told = (key: WaysKey, words: string, note?: string): Figure =>
  figure(NAMES[key][0], NAMES[key][1], { words }, note === undefined ? {} : { note });
const R = ({ tools }: WaysAsked) => given('R', 'turns of the crank for one of the spindle', count(tools.turns), 'table');
const N = ({ divisions }: WaysAsked) => given('N', 'divisions', count(divisions), 'typed');
/** One move as holes gone past on its circle, whole turns and all. */
const holesIn = ({ turns, spaces, circle }: IndexMove): number => turns * circle + spaces;
const holesGone = (move: IndexMove) => [
  given('h', 'spaces of one move, whole turns too', count(holesIn(move))),
  given('c', 'holes in the circle', count(move.circle), 'table'),
];

/** Spaces and holes as counts where there is one sector to set, in words where there are two or none. */
function sectorFigures(way: Way): Record<'sector' | 'sectorHoles', Figure> {
  if (way.method === 'compound' || way.move.spaces === 0) {
    const { spaces, holes } = sectorsOf(way);
    return { sector: told('sector', spaces), sectorHoles: told('sectorHoles', holes) };
  }
  const { spaces } = way.move;
  return {
    sector: figure(NAMES.sector[0], NAMES.sector[1], count(spaces, 'spaces')),
    sectorHoles: figure(NAMES.sectorHoles[0], NAMES.sectorHoles[1], count(sectorHoles(spaces), 'holes')),
  };
}

/** What is to be said of one way. ways: all that work, for the table of them. Example as dividingWays. */
export function wayAnswer(asked: WaysAsked, way: Way, ways: readonly Way[] = [way]): Answer<WaysKey> {
  const [name, symbol] = NAMES.crank;
  const crank =
    way.method === 'compound'
      ? told('crank', moveWords(way))
      : figure(name, symbol, { move: way.move }, { note: `On ${placeWords(way)}.` });
  return {
    figures: {
      method: told('method', METHOD[way.method]),
      crank,
      ...sectorFigures(way),
      ...gearFigures(asked, way),
      proof: proofFigure(asked, way),
      nearest: told('nearest', 'not needed: exact'),
      worst: told('worst', 'none: exact'),
    },
    cautions: wayCautions(way, asked.oneIdler),
    says: says(asked, way),
    tables: [waysTable(asked, ways), ...directionTable(asked, way), ...landingTable(asked, way)],
  };
}

const says = ({ divisions }: WaysAsked, way: Way): string => {
  const start = `${divisions} divisions: ${moveWords(way)}, ${placeWords(way)}`;
  return way.method === 'differential' ? `${start}; ${trainWords(way.train)}; the plate turns ${plateWay(way)} the crank.` : `${start}.`;
};

type GearKey = 'plateTurns' | 'gears' | 'idlers' | 'setFor' | 'ifWrong' | 'ifLocked';

function gearFigures(asked: WaysAsked, way: Way): Record<GearKey, Figure> {
  if (way.method !== 'differential') {
    const none = (key: GearKey): Figure => told(key, 'none');
    return {
      plateTurns: told('plateTurns', 'none: the plate stands still'),
      gears: none('gears'),
      idlers: none('idlers'),
      setFor: none('setFor'),
      ifWrong: none('ifWrong'),
      ifLocked: none('ifLocked'),
    };
  }
  const turns = ratio(holesIn(way.move), way.move.circle);
  const gone = holesGone(way.move);
  const g: Ratio = [Math.abs(way.plateTurns[0]), way.plateTurns[1]];
  const made = (goes: 'wrong' | 'locked'): Value => ({ ratio: countMade(asked.tools.turns, turns, way.plateTurns, goes) });
  const odd = (value: Value): string =>
    'ratio' in value && value.ratio[1] !== 1 ? 'No whole count: the last space comes out odd.' : 'Teeth that would be made.';
  const [wrong, locked] = [made('wrong'), made('locked')];
  const shape = (key: GearKey, value: Value, formula: string, givens: Figure['given'], note: string): Figure =>
    figure(NAMES[key][0], NAMES[key][1], value, { formula, given: givens, note });
  return {
    plateTurns: shape(
      'plateTurns',
      { ratio: g },
      'abs(R − N × h ÷ c)',
      [R(asked), N(asked), ...gone],
      `${capital(plateWay(way))} the crank.`,
    ),
    gears: told('gears', trainWords(way.train)),
    idlers: told('idlers', idlersSay(way, asked.oneIdler)),
    setFor: shape('setFor', locked, 'R × c ÷ h', [R(asked), ...gone], 'The count that the move makes without gears.'),
    ifWrong: shape('ifWrong', wrong, '2 × R × c ÷ h − N', [R(asked), ...gone, N(asked)], odd(wrong)),
    ifLocked: shape('ifLocked', locked, 'R × c ÷ h', [R(asked), ...gone], odd(locked)),
  };
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

function proofFigure(asked: WaysAsked, way: Way): Figure {
  const proof = proofOf(asked.divisions, way);
  const takes = way.method === 'direct' ? 'The spindle goes round once.' : `The head takes ${asked.tools.turns}.`;
  const [name, symbol] = NAMES.proof;
  const made = (formula: string, givens: Figure['given'], note: string): Figure =>
    figure(
      name,
      symbol,
      { ratio: proof.together },
      { formula, given: [N(asked), ...givens], note, source: 'derived: all moves together must bring the spindle once round' },
    );
  if (way.method === 'compound') {
    const { front, frontCircle, back, backCircle } = way.move;
    const givens = [
      given('x', 'spaces of the crank', count(front)),
      given('a', 'holes in its circle', count(frontCircle), 'table'),
      given('y', 'spaces of the back pin', count(Math.abs(back))),
      given('b', 'holes in its circle', count(backCircle), 'table'),
    ];
    return made(`N × (x ÷ a ${back > 0 ? '+' : '−'} y ÷ b)`, givens, takes);
  }
  const { turns, spaces, circle } = way.move;
  const moved = [
    given('T', 'whole turns', count(turns)),
    given('s', 'spaces', count(spaces)),
    given('c', 'holes in the circle', count(circle), 'table'),
  ];
  if (way.method !== 'differential') return made('N × (T + s ÷ c)', moved, takes);
  const g: Ratio = [Math.abs(way.plateTurns[0]), way.plateTurns[1]];
  const plate = given('g', 'turns of the plate', { ratio: g });
  return made(
    `N × (T + s ÷ c) ${way.plateTurns[0] > 0 ? '+' : '−'} g`,
    [...moved, plate],
    `${inTurns(proof.crank)} turns against the plate; the plate gives the rest. ${takes}`,
  );
}

/** Nothing exact: why, what would do, and only when asked the nearest. */
function refused(asked: WaysAsked): Answer<WaysKey> {
  const { divisions, tools, only } = asked;
  const circles = tools.plates.flatMap((plate) => plate.sides.flat());
  const turns = turnsPerDivision(tools.turns, divisions);
  const plainServes = circles.some((c) => c % turns[1] === 0);
  const why = plainServes ? `A circle here divides ${divisions} plainly.` : whyNoCircle(divisions, turns, circles).says;
  const kind = only === null ? 'with what is owned' : `by ${only} dividing`;
  const would = whatWouldServe(tools.turns, divisions, tools.plates, tools.gears);
  const near = asked.nearest ? nearestAnswer(divisions, tools.turns, tools.plates) : null;
  const none = (key: WaysKey): Figure => told(key, 'none');
  const not = near ? near.figures : { nearest: told('nearest', 'not asked: an odd space is scrap'), worst: none('worst') };
  const keys = ['crank', 'sector', 'sectorHoles', 'plateTurns', 'gears', 'idlers', 'setFor', 'ifWrong', 'ifLocked', 'proof'] as const;
  const empty = Object.fromEntries(keys.map((key) => [key, none(key)])) as Record<(typeof keys)[number], Figure>;
  return {
    figures: { method: told('method', `none exact ${kind}`), ...empty, ...not },
    cautions: [],
    says: `Nothing exact ${kind}. ${why}`,
    tables: [wouldTable(would), ...(near ? [near.table] : [])],
  };
}
