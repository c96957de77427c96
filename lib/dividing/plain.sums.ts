import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import type { Head, Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import type { Ratio } from '../values/ratio.ts';
import { checkDivisions, checkHead, checkPlates } from './check-dividing.ts';
import { CLAMP } from './clamp.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { holesBack } from './lash.ts';
import { type CircleThatServes, circlesThatServe, sectorHoles, turnsMade, turnsPerDivision } from './plain.formulas.ts';
import { whereOn } from './where-on.ts';
import { whyNoCircle } from './why-not.ts';

const RULE = 'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, plain indexing (scan pages 58 to 60)';
const SECTOR_RULE = 'rotary table manual of the 221 series, p. 5 (10 spaces on 34: arms hold 11 holes)';

export type PlainKey = 'turns' | 'leastCircle' | 'crank' | 'sector' | 'sectorHoles' | 'proof';

export type PlainAsked = {
  readonly divisions: number;
  /** lash: turns of the crank before the spindle moves, where it has been measured. */
  readonly head: Pick<Head, 'turns' | 'name' | 'lash'>;
  readonly plates: readonly Plate[];
  /** The circle to set on, when it has been chosen already (with other parts, say). Otherwise the fewest holes on a plate in the shop. */
  readonly circle?: number;
  readonly plateId?: number;
};

const figure = figuresFrom(RULE);

/**
 * Plain indexing on the plates owned: the crank's move, the sector, the proof, and every circle that serves; or that none does.
 * Throws DomainError for divisions outside 2 to 100,000, a head whose turns are no whole number, no plates, or a chosen circle that does not serve.
 * Example: 22 divisions, 40 to 1: 1 turn + 27 spaces on 33, sector 28 holes; 22 moves make 40 turns.
 */
export function plainIndexing(asked: PlainAsked): Answer<PlainKey> {
  checkDivisions(asked.divisions);
  checkHead(asked.head);
  checkPlates(asked.plates);
  const serving = circlesThatServe(asked.head.turns, asked.divisions, asked.plates);
  if (serving.length === 0) return refusal(asked);
  const chosen = choose(asked, serving);
  return {
    figures: { ...common(asked), ...settings(asked, chosen.move) },
    cautions: cautionsFor(chosen, asked.head.lash ?? null),
    says: saysWhere(asked, chosen),
    tables: [servingTable(serving)],
  };
}

function choose({ circle, plateId, divisions }: PlainAsked, serving: readonly CircleThatServes[]): CircleThatServes {
  const wanted = serving.filter((one) => (circle ?? one.circle) === one.circle && (plateId ?? one.plate.id) === one.plate.id);
  const [first] = wanted.sort((a, b) => Number(b.plate.here) - Number(a.plate.here) || a.circle - b.circle);
  if (first) return first;
  throw new DomainError({
    given: `${divisions} divisions were to be set on ${circle === undefined ? 'another plate' : `the ${circle} circle`}.`,
    limit: `Of the circles here these serve: ${[...new Set(serving.map((one) => one.circle))].join(', ')}.`,
    tryThis: 'Take one of them.',
    about: ['circle'],
  });
}

const turnsGiven = ({ head }: PlainAsked): Given =>
  given('R', `turns of the crank for one of the spindle (${head.name})`, count(head.turns), 'table');
const divisionsGiven = ({ divisions }: PlainAsked): Given => given('N', 'divisions', count(divisions), 'typed');

function common(asked: PlainAsked): Pick<Answer<PlainKey>['figures'], 'turns' | 'leastCircle'> {
  const turns = turnsPerDivision(asked.head.turns, asked.divisions);
  const least: Value = turns[1] === 1 ? { words: 'any circle' } : count(turns[1], 'holes');
  return {
    turns: figure(
      'Crank for one division, in turns',
      't',
      { ratio: turns },
      { formula: 'R ÷ N', given: [turnsGiven(asked), divisionsGiven(asked)] },
    ),
    leastCircle: figure('Least circle that would serve', 'q', least, {
      note: turns[1] === 1 ? 'Whole turns: the pin drops into the hole it came from.' : `Any multiple of ${turns[1]} serves as well.`,
    }),
  };
}

function settings(asked: PlainAsked, move: IndexMove): Omit<Answer<PlainKey>['figures'], 'turns' | 'leastCircle'> {
  const { spaces, circle } = move;
  const moved = [turnsGiven(asked), divisionsGiven(asked)];
  const onCircle = given('c', 'holes in the circle', count(circle), 'table');
  const none = (name: string, symbol: string): Figure => figure(name, symbol, { words: 'none: whole turns' });
  return {
    crank: figure('Crank for one division', 'm', { move }, { formula: 'R ÷ N', given: moved }),
    sector:
      spaces === 0
        ? none(NAMES.sector, 's')
        : figure(NAMES.sector, 's', count(spaces, 'spaces'), { formula: 'c × R ÷ N − c × floor(R ÷ N)', given: [...moved, onCircle] }),
    sectorHoles:
      spaces === 0
        ? none(NAMES.sectorHoles, 'h')
        : figure(NAMES.sectorHoles, 'h', count(sectorHoles(spaces), 'holes'), {
            formula: 's + 1',
            source: SECTOR_RULE,
            given: [given('s', NAMES.sector, count(spaces))],
          }),
    proof: proofFigure(asked, move, turnsMade(asked.divisions, move)),
  };
}

const NAMES = { sector: 'Sector, in spaces', sectorHoles: 'Holes the sector shows', proof: 'Proof: turns that all moves make' } as const;

const proofFigure = (asked: PlainAsked, { turns, spaces, circle }: IndexMove, made: Ratio): Figure =>
  figure(
    NAMES.proof,
    'p',
    { ratio: made },
    {
      formula: 'N × (T + s ÷ c)',
      source: 'derived: all moves together must bring the spindle once round',
      given: [
        divisionsGiven(asked),
        given('T', 'whole turns', count(turns)),
        given('s', NAMES.sector, count(spaces)),
        given('c', 'holes in the circle', count(circle), 'table'),
      ],
      note: `The head takes ${asked.head.turns}.`,
    },
  );

/** No near value is given: a gear with one odd space is scrap. */
function refusal(asked: PlainAsked): Answer<PlainKey> {
  const circles = asked.plates.flatMap((plate) => plate.sides.flat());
  const why = whyNoCircle(asked.divisions, turnsPerDivision(asked.head.turns, asked.divisions), circles);
  const none = (name: string, symbol: string): Figure => figure(name, symbol, { words: 'none' }, { note: why.says });
  return {
    figures: {
      ...common(asked),
      crank: none('Crank for one division', 'm'),
      sector: none(NAMES.sector, 's'),
      sectorHoles: none(NAMES.sectorHoles, 'h'),
      proof: none(NAMES.proof, 'p'),
    },
    cautions: [],
    says: why.says,
    tables: [servingTable([])],
  };
}

const servingTable = (serving: readonly CircleThatServes[]): AnswerTable => ({
  title: 'Circles that serve',
  unit: 'in',
  heads: ['plate', 'side', 'circle', 'move', 'holes the sector shows'],
  rows: serving.map(({ plate, side, circle, move }) => [
    plate.here ? plate.name : `${plate.name} (not in the shop)`,
    count(side + 1),
    count(circle),
    { move },
    move.spaces === 0 ? 'none' : count(sectorHoles(move.spaces)),
  ]),
});

const saysWhere = ({ divisions }: PlainAsked, { plate, side, move }: CircleThatServes): string =>
  move.spaces === 0
    ? `${divisions} divisions: whole turns, on any circle.`
    : `${divisions} divisions on the ${move.circle} circle of ${whereOn(plate, side)}.`;

function cautionsFor({ plate, move }: CircleThatServes, lash: Ratio | null): Caution[] {
  const clamp: Caution = { ...CLAMP, about: 'crank' };
  const back: Caution = {
    name: 'Overshoot',
    says: `Gone past the hole: back ${lash ? `${holesBack(lash, move.circle)} holes or more` : 'beyond the lash'}, then up to it again.`,
    weight: 'note',
    about: 'crank',
  };
  const { spaces } = move;
  const sector: Caution = {
    name: 'Spaces, not holes',
    says: `Set the sector by ${spaces} spaces: that is ${sectorHoles(spaces)} holes, counting the one that the pin stands in.`,
    weight: 'beware',
    about: 'sector',
  };
  const away: Caution = { name: 'Plate away', says: `${plate.name} is not in the shop.`, weight: 'beware', about: 'crank' };
  return [...(plate.here ? [] : [away]), clamp, ...(spaces === 0 ? [] : [sector]), back];
}
