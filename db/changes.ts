import type { Updateable } from 'kysely';
import type { Executor, Row } from './executor.ts';
import type { Schema } from './schema.ts';
import { untilChanged } from './until-changed.ts';

/** What has a rev of its own and can be saved by two devices at once. */
export type Editable = 'project' | 'assembly' | 'wheel_set' | 'part' | 'item' | 'tool' | 'machine' | 'routing' | 'operation';
export type Changes<T extends Editable> = Omit<Updateable<Schema[T]>, 'id' | 'rev'>;

export class RecordNotFound extends Error {
  readonly kind: string;
  readonly id: number | string;
  constructor(kind: string, id: number | string) {
    super(`There is no ${kind.replaceAll('_', ' ')} ${id}.`);
    this.name = 'RecordNotFound';
    this.kind = kind;
    this.id = id;
  }
}

/** Somebody else saved meanwhile. theirs: the row as it stands; yours: what was to be saved. */
export class RecordChanged extends Error {
  readonly kind: Editable;
  readonly id: number;
  readonly theirs: Readonly<Record<string, unknown>>;
  readonly yours: Readonly<Record<string, unknown>>;
  constructor(kind: Editable, id: number, theirs: Readonly<Record<string, unknown>>, yours: Readonly<Record<string, unknown>>) {
    super(`This ${kind.replaceAll('_', ' ')} was changed on another device meanwhile.`);
    this.name = 'RecordChanged';
    this.kind = kind;
    this.id = id;
    this.theirs = theirs;
    this.yours = yours;
  }
}

const rowIn = untilChanged((db, table: Editable, id: number) => db.selectFrom(table).selectAll().where('id', '=', id).executeTakeFirst());

/** The row with this id. Throws RecordNotFound. */
export async function rowOf<T extends Editable>(db: Executor, table: T, id: number): Promise<Row<T>> {
  const found = await rowIn(db, table, id);
  if (!found) throw new RecordNotFound(table, id);
  return found as unknown as Row<T>;
}

/** The rows with these ids, in the order asked for. Throws RecordNotFound. */
export async function rowsOf<T extends Editable>(db: Executor, table: T, ids: readonly number[]): Promise<Row<T>[]> {
  if (ids.length === 0) return [];
  const rows = await db
    .selectFrom(table as Editable)
    .selectAll()
    .where('id', 'in', ids)
    .execute();
  const found = new Map(rows.map((row) => [row.id, row]));
  return ids.map((id) => {
    const row = found.get(id);
    if (!row) throw new RecordNotFound(table, id);
    return row as unknown as Row<T>;
  });
}

/** Saves changes to a row that still stands at `rev`; gives the row as it stands now. Throws RecordNotFound, RecordChanged. */
export async function saveRow<T extends Editable>(db: Executor, table: T, id: number, rev: number, changes: Changes<T>): Promise<Row<T>> {
  const saved = await db
    .updateTable(table as 'project')
    .set({ ...(changes as Changes<'project'>), rev: rev + 1 })
    .where('id', '=', id)
    .where('rev', '=', rev)
    .returningAll()
    .executeTakeFirst();
  if (saved) return saved as unknown as Row<T>;
  throw new RecordChanged(table, id, await rowOf(db, table, id), changes);
}
