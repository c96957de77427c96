import SqliteFile from 'better-sqlite3';

/** Every row of every table of a shop's file, the migrator's own notes and the search index's inner tables left out. */
export function everyRow(path: string): Record<string, unknown[]> {
  const file = new SqliteFile(path, { readonly: true });
  try {
    const names = file
      .prepare(
        `select name from sqlite_schema where type = 'table' and name not like 'kysely_%' and name not glob 'found_[^p]*' order by name`,
      )
      .pluck()
      .all() as string[];
    return Object.fromEntries(names.map((name) => [name, file.prepare(`select * from "${name}"`).all()]));
  } finally {
    file.close();
  }
}
