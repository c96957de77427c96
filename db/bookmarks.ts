import type { Executor, NewRow } from './executor.ts';
import { untilChanged } from './until-changed.ts';

export type LeftOff = {
  readonly routing_id: number;
  readonly operation_id: number | null;
  readonly operation_title: string | null;
  readonly note: string;
  readonly at: string;
  readonly part_id: number;
  readonly part_mark: string;
  readonly part_name: string;
};

/** Notes where work was left; the last note of a routing stands. */
export async function leaveOff(db: Executor, mark: NewRow<'bookmark'>): Promise<void> {
  const { operation_id, note, at } = mark;
  await db
    .insertInto('bookmark')
    .values(mark)
    .onConflict((on) => on.column('routing_id').doUpdateSet({ operation_id, note, at }))
    .execute();
}

/** Where work was left, last left first. */
export const leftOff = untilChanged(
  (db: Executor, most: number): Promise<LeftOff[]> =>
    db
      .selectFrom('bookmark')
      .innerJoin('routing', 'routing.id', 'bookmark.routing_id')
      .innerJoin('part', 'part.id', 'routing.part_id')
      .leftJoin('operation', 'operation.id', 'bookmark.operation_id')
      .select(['bookmark.routing_id', 'bookmark.operation_id', 'operation.title as operation_title', 'bookmark.note', 'bookmark.at'])
      .select(['part.id as part_id', 'part.mark as part_mark', 'part.name as part_name'])
      .orderBy('bookmark.at', 'desc')
      .orderBy('bookmark.routing_id', 'desc')
      .limit(most)
      .execute(),
);
