import { existsSync, statSync } from 'node:fs';
import SqliteFile from 'better-sqlite3';
import { Kysely } from 'kysely';
import { copyInto, copyIsDue, refuseDamaged } from './backup.ts';
import { migrate, refuseNewer, versionOf } from './migrate.ts';
import { migrations } from './migrations/all.ts';
import { oneConnection } from './one-connection.ts';
import { DamagedDatabase, ForeignDatabase, isUnreadable } from './problems.ts';
import type { Schema } from './schema.ts';
import { watchChanges } from './until-changed.ts';

/** An open shop. copyDaily: takes today's copy unless there is one; gives its path or null. */
export type Shop = {
  readonly db: Kysely<Schema>;
  readonly path: string;
  readonly copyDaily: (now: string) => string | null;
  readonly close: () => Promise<void>;
};

/** copies: the folder for copies, null for none (tests). now: ISO text. */
export type Opening = { readonly copies: string | null; readonly now: string };

/** Up to this size a file is checked whole at every start: a few tenths of a second. */
const SMALL_BYTES = 64 * 1024 * 1024;

/** As delivered it would be 16 MB, which a check or a copy fills once and nothing empties; the system keeps what is read often anyway. */
const CACHE_KIB = 4096;

/** A large file is checked whole on the first start of a day, and before every copy. */
function isToBeChecked(path: string, { copies, now }: Opening): boolean {
  if (path === ':memory:' || !existsSync(path)) return false;
  return statSync(path).size <= SMALL_BYTES || copies === null || copyIsDue(copies, now);
}

/** Asked before anything is written, as is whether the file is newer: even the journal’s mode would be a change in a file that is not ours. */
function refuseForeign(path: string, file: SqliteFile.Database): void {
  const theirs = file.prepare(`select name from sqlite_schema where type = 'table' and name not like 'kysely_%'`).get();
  if (theirs !== undefined) throw new ForeignDatabase(path);
}

/** checked: the whole file was found sound at this opening. */
type Opened = { readonly file: SqliteFile.Database; readonly checked: boolean };

function openSound(path: string, opening: Opening): Opened {
  let file: SqliteFile.Database | null = null;
  try {
    const toBeChecked = isToBeChecked(path, opening);
    file = new SqliteFile(path);
    file.pragma('busy_timeout = 5000');
    file.pragma(`cache_size = -${CACHE_KIB}`);
    if (toBeChecked) refuseDamaged(file);
    if (file.pragma('user_version', { simple: true }) === 0) refuseForeign(path, file);
    file.pragma('synchronous = FULL');
    file.pragma('foreign_keys = ON');
    return { file, checked: toBeChecked };
  } catch (error) {
    file?.close();
    throw isUnreadable(error) ? new DamagedDatabase(path, error.message) : error;
  }
}

async function bringUpToDate(db: Kysely<Schema>, { file, checked }: Opened, path: string, { copies, now }: Opening): Promise<void> {
  await refuseNewer(db, migrations, path);
  file.pragma('journal_mode = WAL');
  const version = await versionOf(db);
  if (version === Object.keys(migrations).length) return;
  if (copies && version > 0) copyInto(file, copies, now, checked);
  await migrate(db, migrations);
}

/** Opens the shop's file, or makes it. Throws DamagedDatabase, ForeignDatabase, NewerDatabase, MigrationFailed, or SQLite's own error (CANTOPEN, READONLY). */
export async function openShop(path: string, opening: Opening): Promise<Shop> {
  const opened = openSound(path, opening);
  const { file } = opened;
  const db = new Kysely<Schema>({ dialect: oneConnection(file) });
  try {
    await bringUpToDate(db, opened, path, opening);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  watchChanges(db, file);
  const { copies } = opening;
  let sound = opened.checked;
  const copyDaily = (now: string): string | null => {
    const checked = sound;
    // what the opening found is true for the copy that follows it, not for those of later days
    sound = false;
    return copies && copyIsDue(copies, now) ? copyInto(file, copies, now, checked) : null;
  };
  return { db, path, copyDaily, close: () => db.destroy() };
}
