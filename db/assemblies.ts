import type { Changes } from './changes.ts';
import { rowOf, saveRow } from './changes.ts';
import type { Executor, NewRow, Row } from './executor.ts';
import { untilChanged } from './until-changed.ts';

export type NewAssembly = Omit<NewRow<'assembly'>, 'id' | 'rev'>;

export const addAssembly = (db: Executor, assembly: NewAssembly): Promise<Row<'assembly'>> =>
  db.insertInto('assembly').values(assembly).returningAll().executeTakeFirstOrThrow();

export const assembly = (db: Executor, id: number): Promise<Row<'assembly'>> => rowOf(db, 'assembly', id);

/** Throws RecordNotFound, RecordChanged. */
export const saveAssembly = (db: Executor, id: number, rev: number, changes: Changes<'assembly'>): Promise<Row<'assembly'>> =>
  saveRow(db, 'assembly', id, rev, changes);

/** A machine has few: 500 at most are shown. */
export const assembliesOf = untilChanged(
  (db: Executor, projectId: number): Promise<Row<'assembly'>[]> =>
    db.selectFrom('assembly').selectAll().where('project_id', '=', projectId).orderBy('id').limit(500).execute(),
);
