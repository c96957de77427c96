import type { OperationLine } from '../../db/operations.ts';
import type { WalkedMove } from '../../lib/dividing/index-table.ts';
import { BACKWARDS } from '../../lib/dividing/way-words.ts';
import type { IndexMove } from '../../lib/values/move.ts';

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
export function keptMove({ figures }: OperationLine): WalkedMove | null {
  const move = ownMove(figures, 'crank');
  return move && { ...move, ...keptBack(figures) };
}

/**
 * What the operation that is looked at keeps (own), and where it keeps nothing what the last one before it does, then those after it: for
 * what is done was done by what it keeps, whatever another plate asks for today. Null where none keeps it.
 */
export function nearestKept<T>(
  operations: readonly OperationLine[],
  own: OperationLine | null,
  kept: (one: OperationLine) => T | null,
): T | null {
  const live = operations.filter(({ struck_on, id }) => struck_on === null || id === own?.id);
  const here = live.findIndex(({ id }) => id === own?.id);
  for (const operation of [...live.slice(0, here + 1).reverse(), ...live.slice(here + 1)]) {
    const found = kept(operation);
    if (found) return found;
  }
  return null;
}

/** One tick of a pass: which tooth, and in which round. again: the first tooth once more, the proof. */
export type Mark = { readonly mark: number; readonly tooth: number; readonly round: number; readonly again: boolean };

export function markOf(pass: Pass, mark: number): Mark {
  const done = mark - 1;
  return {
    mark,
    tooth: (done % pass.teeth) + 1,
    round: Math.floor(done / pass.teeth) + 1,
    again: pass.kind === 'nick' && mark === pass.marks,
  };
}

/** The first mark that is not ticked; null when all are. */
export function nextMark({ marks }: Pass, ticked: readonly number[]): number | null {
  const done = new Set(ticked);
  for (let mark = 1; mark <= marks; mark++) if (!done.has(mark)) return mark;
  return null;
}
