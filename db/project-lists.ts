import { sql } from 'kysely';
import type { Executor } from './executor.ts';
import { MADE_COLUMNS, type MadeLine } from './made.ts';
import { type Page, type PageAsk, pageOf } from './page.ts';
import { type ProjectLine, withCounts } from './projects.ts';
import { untilChanged } from './until-changed.ts';

/** One machine with how many parts it has, how many are missing and how many are being made; null when there is none. */
export const countsOfProject = untilChanged(
  async (db: Executor, id: number): Promise<ProjectLine | null> => (await withCounts(db).where('id', '=', id).executeTakeFirst()) ?? null,
);

const nameOf = sql<string>`lower(project.make || ' ' || project.model || ' ' || project.what)`;

/** By name, from the one after `after`. next: the id to ask on from. */
export const projectsByName = untilChanged(async (db: Executor, after: number | null, size: number): Promise<Page<ProjectLine>> => {
  const start = sql<boolean>`(${nameOf}, project.id) > (select lower(p.make || ' ' || p.model || ' ' || p.what), p.id
    from project as p where p.id = ${after})`;
  const rows = await withCounts(db)
    .$if(after !== null, (query) => query.where(start))
    .orderBy(nameOf)
    .orderBy('id')
    .limit(size + 1)
    .execute();
  return pageOf(rows, { before: null, size }, (row) => row.id);
});

/** What was made for a machine, newest first. */
export const madeOfProject = untilChanged(async (db: Executor, projectId: number, ask: PageAsk): Promise<Page<MadeLine>> => {
  const rows = await db
    .selectFrom('made')
    .innerJoin('part', 'part.id', 'made.part_id')
    .select(MADE_COLUMNS)
    .where('part.project_id', '=', projectId)
    .$if(ask.before !== null, (query) => query.where('made.id', '<', ask.before ?? 0))
    .orderBy('made.id', 'desc')
    .limit(ask.size + 1)
    .execute();
  return pageOf(rows, ask, (row) => row.id);
});
