import type { ShopOperation } from '../lib/planning/today.ts';
import { needWords } from '../lib/routing/needs.ts';
import type { Executor } from './executor.ts';
import { needsOf } from './needs.ts';
import { ownRows } from './own-rows.ts';
import { blankWillNotDo } from './readiness.ts';
import { untilChanged } from './until-changed.ts';

/** key: lib's name of it; null for one that was added by hand. */
export type KeyedWork = ShopOperation & { readonly key: string | null };

const MOST = 3000;

/** The operations of open routings, the newest routing first; done and struck ones among them. */
const openOperations = (db: Executor) =>
  db
    .selectFrom('routing')
    .crossJoin('operation')
    .innerJoin('part', 'part.id', 'routing.part_id')
    .select(['operation.id', 'operation.key', 'operation.title', 'operation.place_no', 'operation.minutes_planned', 'operation.done_on'])
    .select(['operation.struck_on', 'operation.held_for_id', 'part.name', 'part.mark', 'routing.blank_fails'])
    .select(blankWillNotDo.as('blank_will_not_do'))
    .whereRef('operation.routing_id', '=', 'routing.id')
    .where('routing.closed_on', 'is', null)
    .orderBy('routing.id', 'desc')
    .orderBy('operation.place_no')
    .limit(MOST)
    .execute();

/** Everything that is being made, as planning looks at it. */
export const workOperations = untilChanged(async (db: Executor): Promise<KeyedWork[]> => {
  const rows = await openOperations(db);
  const ids = rows.map((row) => row.id);
  const needsOn = ownRows(await needsOf(db, ids));
  const follows = ids.length === 0 ? [] : await db.selectFrom('follows').selectAll().where('operation_id', 'in', ids).execute();
  const afterOn = ownRows(follows);
  return rows.map((row) => ({
    id: row.id,
    key: row.key,
    partName: `${row.mark} ${row.name}`,
    partMark: row.mark,
    title: row.title,
    place: row.place_no,
    minutes: row.minutes_planned,
    done: row.done_on !== null,
    doneAt: row.done_on,
    struck: row.struck_on !== null,
    after: afterOn(row.id).map((one) => one.after_id),
    heldFor: row.held_for_id,
    blankFails: row.blank_will_not_do ? row.blank_fails : '',
    needs: needsOn(row.id).map(({ need, tool_name }) => ({ says: needWords(need), metBy: tool_name })),
  }));
});
