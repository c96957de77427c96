import { sql } from 'kysely';
import { type Executor, together } from './executor.ts';
import { type Page, type PageAsk, pageOf, startOf } from './page.ts';

export type FoundKind = 'project' | 'part' | 'item' | 'tool' | 'machine' | 'made';
/** at: for asking the next page. */
export type Found = { readonly kind: FoundKind; readonly ref: number; readonly title: string; readonly at: number };

/** What was taken off the list is found no more. */
export async function forgetFound(db: Executor, kind: FoundKind, ref: number): Promise<void> {
  const old = await db
    .deleteFrom('found_place')
    .where('kind', '=', kind)
    .where('ref', '=', ref)
    .returning('found_rowid')
    .executeTakeFirst();
  if (old) await db.deleteFrom('found').where('rowid', '=', old.found_rowid).execute();
}

/**
 * Makes a thing findable by its title and text, in place of what stood there. The last one written comes first.
 * notes: what may hold a name or a price; found only by those who may see it.
 */
export const makeFindable = (
  db: Executor,
  thing: { kind: FoundKind; ref: number; title: string; text: readonly string[]; notes: readonly string[] },
): Promise<void> =>
  together(db, async (trx) => {
    const { kind, ref, title } = thing;
    await forgetFound(trx, kind, ref);
    const text = [title, ...thing.text].join('\n');
    const notes = thing.notes.join('\n');
    await trx.insertInto('found').values({ kind, ref, title, text, notes }).execute();
    const { rows } = await sql<{ id: number }>`select last_insert_rowid() as id`.execute(trx);
    await trx
      .insertInto('found_place')
      .values({ kind, ref, found_rowid: rows[0]?.id ?? 0 })
      .execute();
  });

/** Typed words as an FTS5 question: each word quoted, each the beginning of a word. Null when there is nothing to look for. */
function questionOf(typed: string): string | null {
  const words = typed
    .slice(0, 200)
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word));
  return words.length === 0 ? null : words.map((word) => `"${word.replaceAll('"', '""').replaceAll('\0', '')}"*`).join(' ');
}

/** Everything that holds all the words, newest first. byNotes: by the words of notes too, for those who may see them. */
export async function find(db: Executor, typed: string, ask: PageAsk, byNotes: boolean): Promise<Page<Found>> {
  const words = questionOf(typed);
  if (!words) return { rows: [], next: null };
  const question = byNotes ? words : `text : (${words})`;
  const { rows } = await sql<Found>`select kind, ref, title, rowid as at from found
    where found match ${question} and rowid < ${startOf(ask)} order by rowid desc limit ${ask.size + 1}`.execute(db);
  return pageOf(rows, ask, (row) => row.at);
}
