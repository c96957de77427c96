import { before, byId, inOrder } from './order.ts';
import type { OperationState, WaitsFor, WorkOperation } from './work.ts';

const isOpen = (one: WorkOperation | undefined): one is WorkOperation => one !== undefined && !one.done && !one.struck;

/** Those of an operation's own needs that nothing meets. */
const lacks = ({ id, needs }: WorkOperation): readonly WaitsFor[] =>
  needs.filter(({ metBy }) => metBy === null).map(({ says }) => ({ for: 'tool', says, at: id }));

const same = (one: WaitsFor, other: WaitsFor): boolean =>
  one.for === other.for && (one.for === 'operation' && other.for === 'operation' ? one.id === other.id : one.says === other.says);

const once = (waits: readonly WaitsFor[]): readonly WaitsFor[] =>
  waits.filter((one, at) => waits.findIndex((other) => same(one, other)) === at);

type All = ReadonlyMap<number, WorkOperation>;

/** Tools that are waited for, those of the operations before it first: they are lacked sooner. `known` holds every earlier operation. */
function toolsBefore(one: WorkOperation, all: All, known: ReadonlyMap<number, readonly WaitsFor[]>): readonly WaitsFor[] {
  const earlier = one.after.filter((id) => isOpen(all.get(id))).flatMap((id) => known.get(id) ?? []);
  return once([...earlier, ...lacks(one)]);
}

/** A blank that will not do comes before any tool: nobody buys one for it. */
const otherBlank = ({ blankFails = '' }: WorkOperation): readonly WaitsFor[] =>
  blankFails === '' ? [] : [{ for: 'blank', says: 'another blank: choose the blank anew' }];

function earlierOperations(one: WorkOperation, all: All): readonly WaitsFor[] {
  const open = one.after.map((id) => all.get(id)).filter(isOpen);
  return open.map(({ id, title, partName }) => ({
    for: 'operation',
    id,
    says: partName === one.partName ? title : `${title} (${partName})`,
  }));
}

const sentence = (waits: readonly WaitsFor[]): string => {
  const [first, ...others] = waits.map(({ says }) => says);
  if (first === undefined) return 'Ready.';
  return others.length === 0 ? `Waits for ${first}.` : `Waits first of all for ${first}; then for ${others.join('; ')}.`;
};

function heldState(one: WorkOperation, other: WorkOperation, waits: readonly WaitsFor[]): OperationState {
  const says = `Held for ${other.title} (${other.partName}).`;
  return { id: one.id, state: 'held', waits, heldFor: other.id, says };
}

function stateOf(one: WorkOperation, all: All, tools: readonly WaitsFor[]): OperationState {
  const plain = (state: OperationState['state'], says: string): OperationState => ({ id: one.id, state, waits: [], heldFor: null, says });
  if (one.done) return plain('done', 'Done.');
  if (one.struck) return plain('struck out', 'Struck out.');
  const waits = [...otherBlank(one), ...tools, ...earlierOperations(one, all)];
  const other = all.get(one.heldFor ?? Number.NaN);
  if (isOpen(other)) return heldState(one, other, waits);
  return { id: one.id, state: waits.length === 0 ? 'ready' : 'waits', waits, heldFor: null, says: sentence(waits) };
}

/**
 * The state of every operation, in the order given: done, ready, waiting (first of all for what comes first, tools before operations),
 * or held back for a named operation. One that was struck out holds nothing up. Throws DomainError where operations wait in a ring.
 */
export function statesOf(operations: readonly WorkOperation[]): readonly OperationState[] {
  const all = byId(operations);
  const tools = new Map<number, readonly WaitsFor[]>();
  for (const one of inOrder(operations)) tools.set(one.id, toolsBefore(one, all, tools));
  return operations.map((one) => stateOf(one, all, tools.get(one.id) ?? []));
}

/** Every operation still to be done before this one, by any way, among those of `byId`. */
export function allBefore(id: number, all: ReadonlyMap<number, WorkOperation>): ReadonlySet<number> {
  const found = new Set<number>();
  const next = [id];
  while (next.length > 0) {
    const one = all.get(next.pop() as number);
    for (const earlier of one ? before(one) : []) {
      if (found.has(earlier) || !isOpen(all.get(earlier))) continue;
      found.add(earlier);
      next.push(earlier);
    }
  }
  return found;
}
