import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Value } from '../figure/figure.ts';
import type { Plate } from '../tooling/tooling.ts';
import { gcd, ratio, times } from '../values/ratio.ts';
import { blocksFor, blockTurns, spaceCut } from './block.formulas.ts';
import { checkDivisions, checkHead, checkPlates } from './check-dividing.ts';
import { CLAMP } from './clamp.ts';
import { count, figuresFrom, given } from './index-figure.ts';
import { landingHole, moveOn, sectorHoles } from './plain.formulas.ts';
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

/**
 * Cutting every k-th space round and round, so that the heat spreads. Throws DomainError for a k that shares a factor with N, and for
 * more than 500 divisions. Example: 25 divisions, 4 passed: 6 turns + 6 spaces on 15, four times round.
 */
export function blockIndexing(asked: BlockAsked): Answer<BlockKey> {
  const { divisions: N, turns: R, plates } = asked;
  checkDivisions(N);
  checkHead({ turns: R });
  checkPlates(plates);
  if (N > MOST_DIVISIONS)
    throw new DomainError({
      given: `${N} divisions were asked for.`,
      limit: `Blocks are listed up to ${MOST_DIVISIONS}.`,
      tryThis: 'Divide plainly.',
      about: ['divisions'],
    });
  const k = choose(asked);
  const turns = blockTurns(R, N, k);
  const on = plates.flatMap((plate) =>
    plate.sides.flatMap((circles, side) =>
      circles.flatMap((circle) => {
        const move = moveOn(circle, turns);
        return move ? [{ plate, side, move }] : [];
      }),
    ),
  );
  const [best] = on.sort((a, b) => a.move.circle - b.move.circle);
  const givens = [
    given('k', 'divisions passed', count(k), asked.passed === null ? 'worked out' : 'typed'),
    given('R', 'turns of the crank for one of the spindle', count(R), 'table'),
    given('N', 'divisions', count(N), 'typed'),
  ];
  const proof = times(ratio(N), turns);
  const none: Value = { words: 'none' };
  return {
    figures: {
      passed: figure('Divisions passed at each move', 'k', count(k)),
      turns: figure('Crank for one move, in turns', 't', { ratio: turns }, { formula: 'k × R ÷ N', given: givens }),
      crank: figure('Crank for one move', 'm', best ? { move: best.move } : none, {
        note: best ? `On ${whereOn(best.plate, best.side)}.` : '',
      }),
      sectorHoles: figure(
        'Holes the sector shows',
        'h',
        best && best.move.spaces > 0 ? count(sectorHoles(best.move.spaces), 'holes') : none,
      ),
      rounds: figure('Times that the work goes round', 'k', count(k)),
      proof: figure(
        'Proof: turns that all moves make',
        'p',
        { ratio: proof },
        {
          formula: 'N × t',
          given: [given('N', 'divisions', count(N), 'typed'), given('t', 'turns for one move', { ratio: turns })],
          note: `${k} times round at ${R}.`,
        },
      ),
    },
    cautions: [{ ...CLAMP, about: 'crank' }],
    says: best
      ? `Every ${k}th space, ${k} times round.`
      : whyNoCircle(
          N,
          turns,
          plates.flatMap(({ sides }) => sides.flat()),
        ).says,
    tables: best
      ? [
          {
            title: 'Order of cutting',
            unit: 'in',
            heads: ['cut', 'space', 'hole'],
            rows: Array.from({ length: N }, (_, at): Value[] => [
              count(at + 1),
              count(spaceCut(at + 1, N, k)),
              count(landingHole(at + 1, best.move)),
            ]),
          },
        ]
      : [],
  };
}
