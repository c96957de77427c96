import { byId } from './order.ts';
import { allBefore, statesOf } from './states.ts';
import type { OperationState, WorkOperation } from './work.ts';

/** An operation with what its part shows of it. doneAt: when it was done, as a text that sorts; null if not. place: within its part. */
export type ShopOperation = WorkOperation & {
  readonly partMark: string;
  readonly place: number;
  readonly minutes: number;
  readonly doneAt: string | null;
};

/** unblocks: how many operations, and of how many parts, wait for this one by any way. */
type CanDo = { readonly operation: ShopOperation; readonly unblocks: number; readonly parts: number };
type CannotYet = { readonly operation: ShopOperation; readonly state: OperationState };
/** Something lacking from outside, with the parts that wait for it. */
type Blocker = { readonly says: string; readonly holdsUp: readonly string[] };
/** Where work on a part was left: the last operation done, and the next one. */
type LeftAt = {
  readonly partMark: string;
  readonly partName: string;
  readonly last: ShopOperation;
  readonly next: ShopOperation | null;
};

export type Today = {
  readonly canDo: readonly CanDo[];
  readonly cannotYet: readonly CannotYet[];
  readonly blockers: readonly Blocker[];
  readonly left: readonly LeftAt[];
};

type Behind = ReadonlyMap<number, readonly ShopOperation[]>;

/** For every operation, those that wait for it. */
function behind(operations: readonly ShopOperation[]): Behind {
  const [all, found] = [byId(operations), new Map<number, ShopOperation[]>()];
  for (const one of operations)
    for (const earlier of one.done || one.struck ? [] : allBefore(one.id, all)) {
      const list = found.get(earlier);
      if (list) list.push(one);
      else found.set(earlier, [one]);
    }
  return found;
}

const partsOf = (operations: readonly ShopOperation[]): readonly string[] => [...new Set(operations.map(({ partMark }) => partMark))];

/** What unblocks most comes first: parts, then operations; then the shortest; then as listed. */
const byWorth = (a: CanDo, b: CanDo): number => b.parts - a.parts || b.unblocks - a.unblocks || a.operation.minutes - b.operation.minutes;

function blockersOf(cannotYet: readonly CannotYet[]): readonly Blocker[] {
  const held = new Map<string, ShopOperation[]>();
  for (const { operation, state } of cannotYet)
    for (const wait of state.waits) if (wait.for !== 'operation') held.set(wait.says, [...(held.get(wait.says) ?? []), operation]);
  const list = [...held].map(([says, operations]) => ({ says, holdsUp: partsOf(operations), many: operations.length }));
  return list.sort((a, b) => b.holdsUp.length - a.holdsUp.length || b.many - a.many).map(({ says, holdsUp }) => ({ says, holdsUp }));
}

/** Per part that has begun and is not through: the last operation done and the next. Newest first. */
function leftAt(operations: readonly ShopOperation[]): readonly LeftAt[] {
  const left = partsOf(operations).flatMap((mark): LeftAt[] => {
    const own = operations.filter(({ partMark }) => partMark === mark).sort((a, b) => a.place - b.place);
    const done = own.filter(({ doneAt }) => doneAt !== null);
    const [last] = [...done].sort((a, b) => (b.doneAt ?? '').localeCompare(a.doneAt ?? '') || b.place - a.place);
    const next = own.find((one) => !one.done && !one.struck) ?? null;
    return last && next ? [{ partMark: mark, partName: last.partName, last, next }] : [];
  });
  return left.sort((a, b) => (b.last.doneAt ?? '').localeCompare(a.last.doneAt ?? ''));
}

/** What can be done today, first what unblocks most; what cannot yet and why; what is lacking and whom it holds up; where work was left. */
export function today(operations: readonly ShopOperation[]): Today {
  const states = new Map(statesOf(operations).map((state) => [state.id, state]));
  const waiting = behind(operations);
  const of = (...wanted: readonly OperationState['state'][]) =>
    operations.flatMap((operation) => {
      const state = states.get(operation.id);
      return state && wanted.includes(state.state) ? [{ operation, state }] : [];
    });
  const canDo = of('ready').map(({ operation }) => {
    const after = waiting.get(operation.id) ?? [];
    return { operation, unblocks: after.length, parts: partsOf(after).length };
  });
  const cannotYet = of('waits', 'held');
  return { canDo: canDo.sort(byWorth), cannotYet, blockers: blockersOf(cannotYet), left: leftAt(operations) };
}
