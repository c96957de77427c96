import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Figure, Given, Value } from '../figure/figure.ts';
import type { Plate } from '../tooling/tooling.ts';
import type { IndexMove } from '../values/move.ts';
import { gcd, type Ratio, ratio, times } from '../values/ratio.ts';
import { blocksFor, blockTurns, spaceCut } from './block.formulas.ts';
import { checkDivisions, checkHead, checkPlates } from './check-dividing.ts';
import { CLAMP } from './clamp.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { type CircleThatServes, circlesThatServe, landingHole, sectorHoles } from './plain.formulas.ts';
import { whereOn } from './where-on.ts';
import { whyNoCircle } from './why-not.ts';

const figure = figuresFrom(
  'block or multiple indexing: value from memory; derived: every space is met once when the two counts share no factor',
);
const MOST_DIVISIONS = 500;

export type BlockKey = 'passed' | 'turns' | 'crank' | 'sectorHoles' | 'rounds' | 'proof';
export type BlockAsked = {
  readonly divisions: number;
  readonly turns: number;
  readonly plates: readonly Plate[];
  readonly passed: number | null;
};

function choose({ divisions: N, passed }: BlockAsked): number {
  if (passed === null) {
    const [first, ...rest] = blocksFor(N);
    const about = Math.min(6, Math.round(Math.sqrt(N)));
    if (first !== undefined) return [first, ...rest].find((k) => k >= about) ?? first;
  } else if (passed > 1 && passed < N && gcd(passed, N) === 1) return passed;
  throw new DomainError({
    given: passed === null ? `${N} divisions have no count to pass.` : `${passed} of ${N} divisions were to be passed at every move.`,
    limit:
      passed === null
        ? 'It would have to lie between 1 and half way round and share no factor.'
        : `The two share the factor ${gcd(passed, N)}, or it is not between 1 and ${N}: some spaces would be cut twice, others never.`,
    tryThis: blocksFor(N).length === 0 ? 'Divide plainly.' : `Take one of ${blocksFor(N).slice(0, 8).join(', ')}.`,
    about: ['passed'],
  });
}

function check({ divisions: N, turns, plates }: BlockAsked): void {
  checkDivisions(N);
  checkHead({ turns });
  checkPlates(plates);
  if (N <= MOST_DIVISIONS) return;
  throw new DomainError({
    given: `${N} divisions were asked for.`,
    limit: `Blocks are listed up to ${MOST_DIVISIONS}.`,
    tryThis: 'Divide plainly.',
    about: ['divisions'],
  });
}

/** k divisions passed at every move, and what the crank turns for them. */
type Block = { readonly k: number; readonly turns: Ratio };

/** The circle of fewest holes that gives the move, if one does: k divisions pass as one would on a head of k × R turns. */
const smallestCircle = ({ divisions, turns, plates }: BlockAsked, { k }: Block): CircleThatServes | undefined =>
  circlesThatServe(k * turns, divisions, plates).sort((a, b) => a.circle - b.circle)[0];

const divisionsGiven = ({ divisions }: BlockAsked): Given => given('N', 'divisions', count(divisions), 'typed');

const turnsFigure = (asked: BlockAsked, { k, turns }: Block): Figure =>
  figure(
    'Crank for one move, in turns',
    't',
    { ratio: turns },
    {
      formula: 'k × R ÷ N',
      given: [
        given('k', 'divisions passed', count(k), asked.passed === null ? 'worked out' : 'typed'),
        given('R', 'turns of the crank for one of the spindle', count(asked.turns), 'table'),
        divisionsGiven(asked),
      ],
    },
  );

function moveFigures(best: CircleThatServes | undefined): Record<'crank' | 'sectorHoles', Figure> {
  const none: Value = { words: 'none' };
  const shown = best && best.move.spaces > 0 ? count(sectorHoles(best.move.spaces), 'holes') : none;
  const note = best ? `On ${whereOn(best.plate, best.side)}.` : '';
  return {
    crank: figure('Crank for one move', 'm', best ? { move: best.move } : none, { note }),
    sectorHoles: figure('Holes the sector shows', 'h', shown),
  };
}

const proofFigure = (asked: BlockAsked, { k, turns }: Block): Figure =>
  figure(
    'Proof: turns that all moves make',
    'p',
    { ratio: times(ratio(asked.divisions), turns) },
    {
      formula: 'N × t',
      given: [divisionsGiven(asked), given('t', 'turns for one move', { ratio: turns })],
      note: `${k} times round at ${asked.turns}.`,
    },
  );

const orderTable = (N: number, k: number, move: IndexMove): AnswerTable => ({
  title: 'Order of cutting',
  unit: 'in',
  heads: ['cut', 'space', 'hole'],
  rows: Array.from({ length: N }, (_, at) => [count(at + 1), count(spaceCut(at + 1, N, k)), count(landingHole(at + 1, move))]),
});

const noCircle = ({ divisions, plates }: BlockAsked, { turns }: Block): string =>
  whyNoCircle(
    divisions,
    turns,
    plates.flatMap(({ sides }) => sides.flat()),
  ).says;

/**
 * Cutting every k-th space round and round, so that the heat spreads. Throws DomainError for a k that shares a factor with N, and for
 * more than 500 divisions. Example: 25 divisions, 4 passed: 6 turns + 6 spaces on 15, four times round.
 */
export function blockIndexing(asked: BlockAsked): Answer<BlockKey> {
  check(asked);
  const { divisions: N, turns: R } = asked;
  const k = choose(asked);
  const block = { k, turns: blockTurns(R, N, k) };
  const best = smallestCircle(asked, block);
  return {
    figures: {
      passed: figure('Divisions passed at each move', 'k', count(k)),
      turns: turnsFigure(asked, block),
      ...moveFigures(best),
      rounds: figure('Times that the work goes round', 'k', count(k)),
      proof: proofFigure(asked, block),
    },
    cautions: [{ ...CLAMP, about: 'crank' }],
    says: best ? `Every ${k}th space, ${k} times round.` : noCircle(asked, block),
    tables: best ? [orderTable(N, k, best.move)] : [],
  };
}
