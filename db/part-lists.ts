import { sql } from 'kysely';
import type { Executor } from './executor.ts';
import { gearsOfRows } from './gears.ts';
import { type Page, type PageAsk, pageOf } from './page.ts';
import type { PartLine } from './parts.ts';
import { untilChanged } from './until-changed.ts';

/** Above any id: missing parts rank before those in their place. */
const MISSING_RANK = 2 ** 40;
const rank = sql<number>`(case when part.item_id is null then ${sql.lit(MISSING_RANK)} else 0 end) + part.id`;

/** Parts of a machine, the missing ones first, newest first among each. next ranks, it is no id. */
export const partsMissingFirst = untilChanged(async (db: Executor, projectId: number, ask: PageAsk): Promise<Page<PartLine>> => {
  const rows = await db
    .selectFrom('part')
    .leftJoin('routing', (join) => join.onRef('routing.part_id', '=', 'part.id').on('routing.closed_on', 'is', null))
    .selectAll('part')
    .select(['routing.id as routing_id', 'routing.blank_fails'])
    .select(rank.as('rank'))
    .where('part.project_id', '=', projectId)
    .$if(ask.before !== null, (query) => query.where(rank, '<', ask.before ?? 0))
    .orderBy(rank, 'desc')
    .limit(ask.size + 1)
    .execute();
  const gear = await gearsOfRows(db, rows);
  return pageOf(
    rows.map((row) => ({ ...row, ...gear(row.gear_id) })),
    ask,
    (row) => row.rank,
  );
});
