import type { Figure } from '../lib/figure/figure.ts';
import { mountedBy } from '../lib/routing/set-ups.ts';
import type { MountedNow } from '../lib/routing/shop-now.ts';
import type { Executor } from './executor.ts';

/** The operation after which something else stands on the head: other wheels may be divided by it then, and are planned anew. */
export const SETS_THE_HEAD = 'plate';

/** The circle of the move that an operation was printed with; null where it has none. */
function circleOf(printed: string | null): number | null {
  if (printed === null) return null;
  const { value } = JSON.parse(printed) as Figure;
  return 'move' in value ? value.move.circle : null;
}

/** What stands on the dividing head: what was set last, in whichever routing. None while no plate was ever set. */
export async function mountedNow(db: Executor): Promise<MountedNow | null> {
  const last = await db
    .selectFrom('operation')
    .innerJoin('set_up', 'set_up.id', 'operation.set_up_id')
    .leftJoin('figure', (on) => on.onRef('figure.operation_id', '=', 'operation.id').on('figure.key', '=', 'crank'))
    .select(['set_up.key as set_up_key', 'figure.printed'])
    .where('operation.key', '=', SETS_THE_HEAD)
    .where('operation.done_on', 'is not', null)
    .orderBy('operation.done_on', 'desc')
    .orderBy('operation.id', 'desc')
    .limit(1)
    .executeTakeFirst();
  return last ? mountedBy(last.set_up_key, circleOf(last.printed)) : null;
}
