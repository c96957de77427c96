import SqliteFile from 'better-sqlite3';
import { isUnreadable, ShopIsOpen } from './problems.ts';

const WAIT_MS = 500;

/**
 * Makes sure that no program holds the shop's file open, and writes what lies beside it (-wal) into it. A file can leave the
 * write-ahead journal only while nobody else has it open, not even to read: a running server therefore makes this fail, and one that
 * was killed does not. A file too damaged to be asked passes: no server can have opened it. Throws ShopIsOpen.
 */
export function closeToOthers(path: string): void {
  let file: SqliteFile.Database | null = null;
  try {
    file = new SqliteFile(path, { fileMustExist: true, timeout: WAIT_MS });
    file.pragma('journal_mode = DELETE');
  } catch (error) {
    if (isUnreadable(error)) return;
    const { code = '' } = error as { code?: string };
    throw /^SQLITE_(BUSY|LOCKED)/.test(code) ? new ShopIsOpen(path) : error;
  } finally {
    file?.close();
  }
}
