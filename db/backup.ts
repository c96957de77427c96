import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, unlinkSync } from 'node:fs';
import { basename, join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { closeToOthers } from './in-use.ts';
import { DamagedDatabase, ForeignDatabase, isUnreadable } from './problems.ts';

/** How many copies stay in the folder; older ones go. */
const KEPT = 10;

/** The file's own check; null when it is sound. */
function whatIsWrong(file: SqliteFile.Database): string | null {
  const rows = file.pragma('quick_check(1)') as { quick_check: string }[];
  const said = rows[0]?.quick_check ?? 'the check said nothing';
  return said === 'ok' ? null : said;
}

/** Opens a file that must exist, runs `work`, and closes it. Throws DamagedDatabase when it cannot be read. */
function withFile<T>(path: string, work: (file: SqliteFile.Database) => T): T {
  let file: SqliteFile.Database | null = null;
  try {
    file = new SqliteFile(path, { fileMustExist: true });
    return work(file);
  } catch (error) {
    throw isUnreadable(error) ? new DamagedDatabase(path, error.message) : error;
  } finally {
    file?.close();
  }
}

/** Throws DamagedDatabase. */
export function refuseDamaged(file: SqliteFile.Database): void {
  const wrong = whatIsWrong(file);
  if (wrong) throw new DamagedDatabase(file.name, wrong);
}

/** A name that sorts by time: shop-2026-05-01T10-30-00.000Z.sqlite */
const nameAt = (now: string): string => `shop-${now.replaceAll(':', '-')}.sqlite`;

const copiesIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => /^shop-.*\.sqlite$/.test(name))
        .sort()
    : [];

function freeName(folder: string, now: string): string {
  const first = join(folder, nameAt(now));
  for (let again = 2; ; again += 1) {
    const name = again === 2 ? first : first.replace(/\.sqlite$/, `_${again - 1}.sqlite`);
    if (!existsSync(name)) return name;
  }
}

/**
 * Copies an open file, whole, into the folder, and drops the oldest copies. Gives the copy's path. A damaged file is refused, so that
 * it never pushes a good copy out. sound: checked whole a moment ago, and not again. Throws DamagedDatabase.
 */
export function copyInto(file: SqliteFile.Database, folder: string, now: string, sound = false): string {
  if (!sound) refuseDamaged(file);
  mkdirSync(folder, { recursive: true });
  const path = freeName(folder, now);
  file.prepare('vacuum into ?').run(path);
  for (const old of copiesIn(folder).slice(0, -KEPT)) unlinkSync(join(folder, old));
  return path;
}

/** Copies the file at `path` into the folder. Safe while the shop is open. Throws DamagedDatabase. */
export const backupNow = (path: string, folder: string, now: string): string => withFile(path, (file) => copyInto(file, folder, now));

/** True when no copy carries today's date. */
export const copyIsDue = (folder: string, now: string): boolean =>
  !copiesIn(folder).some((name) => name.startsWith(`shop-${now.slice(0, 10)}`));

function refuseForeign(path: string, file: SqliteFile.Database): void {
  const tables = file.prepare(`select name from sqlite_schema where type = 'table' and name in ('project', 'part', 'made')`).all();
  if (tables.length !== 3) throw new ForeignDatabase(path);
}

/**
 * Puts a copy in the place of the shop's file. The copy is checked first, then that nobody has the shop open; what stood there is kept
 * beside it. Gives the path of the kept file, or null when there was none. Throws DamagedDatabase, ForeignDatabase, ShopIsOpen.
 */
export function restore(copy: string, path: string, now: string): string | null {
  withFile(copy, (file) => {
    refuseDamaged(file);
    refuseForeign(copy, file);
  });
  const had = existsSync(path);
  if (had) closeToOthers(path);
  const [incoming, kept] = [`${path}.incoming`, freeName(join(path, '..'), now).replace(/shop-([^/\\]*)$/, `${basename(path)}.before-$1`)];
  rmSync(incoming, { force: true });
  copyFileSync(copy, incoming);
  for (const end of ['', '-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, kept + end);
  renameSync(incoming, path);
  return had ? kept : null;
}
