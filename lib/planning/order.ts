import { DomainError } from '../figure/domain-error.ts';
import type { WorkOperation } from './work.ts';

/** The operations by id; an id that nobody has is no edge. */
export const byId = (operations: readonly WorkOperation[]): ReadonlyMap<number, WorkOperation> =>
  new Map(operations.map((one) => [one.id, one]));

/** What must be done before an operation: those it follows, and the one that it is held for. */
export const before = ({ after, heldFor }: WorkOperation): readonly number[] =>
  heldFor === undefined || heldFor === null ? after : [...after, heldFor];

const loop = (title: string): DomainError =>
  new DomainError({
    given: `“${title}” waits for itself, by way of those before it.`,
    limit: 'Operations follow one another without a ring.',
    tryThis: 'Take one of them out of the ring: let it follow another, or hold it no longer.',
    about: ['after', 'heldFor'],
  });

/**
 * All operations so that each stands after those before it, else in the order given. Throws DomainError for a ring.
 * Depth first, without recursion: the work of a shop may hang in one long line.
 */
export function inOrder(operations: readonly WorkOperation[]): readonly WorkOperation[] {
  const all = byId(operations);
  const [placed, open] = [new Set<number>(), new Set<number>()];
  const order: WorkOperation[] = [];
  for (const start of operations) {
    const stack = [start];
    while (stack.length > 0) {
      const one = stack[stack.length - 1] as WorkOperation;
      if (placed.has(one.id)) {
        stack.pop();
        continue;
      }
      open.add(one.id);
      const next = before(one)
        .flatMap((id) => all.get(id) ?? [])
        .find(({ id }) => !placed.has(id));
      if (next && open.has(next.id)) throw loop(next.title);
      if (next) stack.push(next);
      else {
        stack.pop();
        open.delete(one.id);
        placed.add(one.id);
        order.push(one);
      }
    }
  }
  return order;
}
