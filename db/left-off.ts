import type { Executor, Row } from './executor.ts';
import { untilChanged } from './until-changed.ts';

/** Where work on a routing was left; null when nobody said. */
export const leftOffOf = untilChanged(
  async (db: Executor, routingId: number): Promise<Row<'bookmark'> | null> =>
    (await db.selectFrom('bookmark').selectAll().where('routing_id', '=', routingId).executeTakeFirst()) ?? null,
);
