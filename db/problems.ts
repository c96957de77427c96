/** Errors of the shop's file, each a sentence for the person who meets it. */
export class DamagedDatabase extends Error {
  constructor(path: string, found: string) {
    super(`${path} is damaged (${found}). Nothing was changed in it. Put back a copy: npm run restore FILE.`);
    this.name = 'DamagedDatabase';
  }
}

export class NewerDatabase extends Error {
  constructor(path: string, itsVersion: number, ourVersion: number) {
    super(`${path} was written by a newer Backgear (file version ${itsVersion}, this program knows ${ourVersion}). Update the program.`);
    this.name = 'NewerDatabase';
  }
}

/** SQLite opened it, but it holds none of our tables and is not empty. */
export class ForeignDatabase extends Error {
  constructor(path: string) {
    super(`${path} is some other program’s file, not a shop’s. Nothing was changed in it.`);
    this.name = 'ForeignDatabase';
  }
}

export class MigrationFailed extends Error {
  constructor(name: string, cause: unknown) {
    super(`The file could not be brought up to date: step ${name} failed and was undone. The copy taken before it is good.`, { cause });
    this.name = 'MigrationFailed';
  }
}

/** Somebody has the file open which is about to be replaced. */
export class ShopIsOpen extends Error {
  constructor(path: string) {
    super(`${path} is open in another program. Stop Backgear first; nothing was changed.`);
    this.name = 'ShopIsOpen';
  }
}

/** True when SQLite refused a second row with the same columns, named as "table.column". */
export const isUnique = (error: unknown, columns: string): boolean =>
  error instanceof Error && 'code' in error && error.code === 'SQLITE_CONSTRAINT_UNIQUE' && error.message.endsWith(columns);

/** True when SQLite says that the bytes are no database, or a broken one. */
export const isUnreadable = (error: unknown): error is Error =>
  error instanceof Error && 'code' in error && /^SQLITE_(NOTADB|CORRUPT)/.test(String(error.code));
