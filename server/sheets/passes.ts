import type { OperationLine } from '../../db/operations.ts';
import { backHoleAt, type WalkedMove } from '../../lib/dividing/index-table.ts';
import { landingHole, turnsMade } from '../../lib/dividing/plain.formulas.ts';
import { BACKWARDS } from '../../lib/dividing/way-words.ts';
import type { IndexMove } from '../../lib/values/move.ts';
import type { Ratio } from '../../lib/values/ratio.ts';

/** What is done to every tooth space in turn. nick: all and one more. */
type PassKind = 'nick' | 'rough' | 'finish';
export type Pass = {
  readonly kind: PassKind;
  readonly operation: OperationLine;
  readonly teeth: number;
  readonly rounds: number;
  /** How many ticks there are in all: rounds × teeth, and one more of nicks. */
  readonly marks: number;
};

const KINDS: Readonly<Record<string, PassKind>> = { nick: 'nick', rough: 'rough', finish: 'finish' };

/** Rough all round may be several rounds: lib gives a depth for each. */
const roundsOf = ({ figures }: OperationLine): number => Math.max(1, figures.filter(({ key }) => /^rough\d+$/.test(key)).length);

function passOf(operation: OperationLine, teeth: number): Pass | null {
  const kind = KINDS[operation.key ?? ''];
  if (!kind || operation.struck_on !== null) return null;
  const rounds = kind === 'rough' ? roundsOf(operation) : 1;
  return { kind, operation, teeth, rounds, marks: rounds * teeth + (kind === 'nick' ? 1 : 0) };
}

/** Nick, rough and finish of a routing, in its own order; what is struck out is left out. */
export const passesOf = (operations: readonly OperationLine[], teeth: number): Pass[] =>
  operations.flatMap((operation) => passOf(operation, teeth) ?? []);

const ownMove = (figures: OperationLine['figures'], wanted: string): IndexMove | null => {
  for (const { key, shown } of figures) if (key === wanted && 'move' in shown) return shown.move;
  return null;
};

/** What plate and crank do together after the crank alone, by the figure and by its name. */
function keptBack(figures: OperationLine['figures']): Pick<WalkedMove, 'back'> {
  const [move, kept] = [ownMove(figures, 'back'), figures.find(({ key }) => key === 'back')];
  if (!move || !kept) return {};
  const spaces = move.turns * move.circle + move.spaces;
  return { back: { spaces: kept.figure.name === BACKWARDS ? -spaces : spaces, circle: move.circle } };
}

/** The move that one operation keeps; null where it keeps none. */
function keptMove({ figures }: OperationLine): WalkedMove | null {
  const move = ownMove(figures, 'crank');
  return move && { ...move, ...keptBack(figures) };
}

/**
 * The move of the crank that a routing divides by. own: the operation that is looked at: its own move, and where it has none that of the
 * last one before it, for what is done was done by the move that it keeps, whatever another plate asks for today. Null while no circle serves.
 */
export function moveOf(operations: readonly OperationLine[], own: OperationLine | null = null): WalkedMove | null {
  const live = operations.filter(({ struck_on, id }) => struck_on === null || id === own?.id);
  const here = live.findIndex(({ id }) => id === own?.id);
  const nearest = [...live.slice(0, here + 1).reverse(), ...live.slice(here + 1)];
  for (const operation of nearest) {
    const move = keptMove(operation);
    if (move) return move;
  }
  return null;
}

/** One tick of a pass: which tooth, in which round, and where the pin lands for it. again: the first tooth once more, the proof. */
export type Mark = {
  readonly mark: number;
  readonly tooth: number;
  readonly round: number;
  readonly again: boolean;
  readonly hole: number;
  readonly backHole?: number;
  readonly turns: Ratio;
};

export function markOf(pass: Pass, move: WalkedMove, mark: number): Mark {
  const done = mark - 1;
  return {
    mark,
    tooth: (done % pass.teeth) + 1,
    round: Math.floor(done / pass.teeth) + 1,
    again: pass.kind === 'nick' && mark === pass.marks,
    hole: landingHole(mark, move),
    ...backHoleAt(mark, move),
    turns: turnsMade(done, move),
  };
}

/** The first mark that is not ticked; null when all are. */
export function nextMark({ marks }: Pass, ticked: readonly number[]): number | null {
  const done = new Set(ticked);
  for (let mark = 1; mark <= marks; mark++) if (!done.has(mark)) return mark;
  return null;
}
