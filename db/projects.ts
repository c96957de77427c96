import type { Changes } from './changes.ts';
import { rowOf, saveRow } from './changes.ts';
import { type Executor, type NewRow, type Row, together } from './executor.ts';
import { newProjectMark } from './marks.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';
import { makeFindable } from './search.ts';
import { untilChanged } from './until-changed.ts';

/** mark is given if the owner wants one of his own. */
export type NewProject = Omit<NewRow<'project'>, 'id' | 'rev' | 'closed_on' | 'mark'> & { readonly mark?: string };
export type ProjectLine = Row<'project'> & { readonly parts: number; readonly missing: number; readonly open_routings: number };

const titleOf = (row: Row<'project'>): string => [row.make, row.model, row.what].filter((word) => word !== '').join(' ');

async function findable(db: Executor, row: Row<'project'>): Promise<Row<'project'>> {
  await makeFindable(db, {
    kind: 'project',
    ref: row.id,
    title: titleOf(row),
    text: [row.mark, row.size, row.year, row.serial],
    notes: [row.notes],
  });
  return row;
}

export const addProject = (db: Executor, project: NewProject): Promise<Row<'project'>> =>
  together(db, async (trx) => {
    const mark = await newProjectMark(trx, project.make, project.mark ?? project.model);
    const row = await trx
      .insertInto('project')
      .values({ ...project, mark })
      .returningAll()
      .executeTakeFirstOrThrow();
    return findable(trx, row);
  });

export const project = (db: Executor, id: number): Promise<Row<'project'>> => rowOf(db, 'project', id);

/** Throws RecordNotFound, RecordChanged. */
export const saveProject = (db: Executor, id: number, rev: number, changes: Omit<Changes<'project'>, 'mark'>): Promise<Row<'project'>> =>
  together(db, async (trx) => findable(trx, await saveRow(trx, 'project', id, rev, changes)));

/** Each machine with how many parts it has, how many are missing and how many are being made. */
export const withCounts = (db: Executor) =>
  db
    .selectFrom('project')
    .selectAll()
    .select((eb) => [
      eb
        .selectFrom('part')
        .whereRef('part.project_id', '=', 'project.id')
        .select(eb.fn.countAll<number>().as('n'))
        .$asScalar()
        .$notNull()
        .as('parts'),
      eb
        .selectFrom('part')
        .whereRef('part.project_id', '=', 'project.id')
        .where('part.item_id', 'is', null)
        .select(eb.fn.countAll<number>().as('n'))
        .$asScalar()
        .$notNull()
        .as('missing'),
      eb
        .selectFrom('part')
        .crossJoin('routing')
        .whereRef('routing.part_id', '=', 'part.id')
        .whereRef('part.project_id', '=', 'project.id')
        .where('routing.closed_on', 'is', null)
        .select(eb.fn.countAll<number>().as('n'))
        .$asScalar()
        .$notNull()
        .as('open_routings'),
    ]);

/** Newest first, each with its counts. */
export const projects = untilChanged(async (db: Executor, ask: PageAsk): Promise<Page<ProjectLine>> => {
  const rows = await withCounts(db)
    .where('id', '<', startOf(ask))
    .orderBy('id', 'desc')
    .limit(ask.size + 1)
    .execute();
  return pageOf(rows, ask, (row) => row.id);
});
