import { type Kysely, type Migration, Migrator, sql } from 'kysely';
import { MigrationFailed, NewerDatabase } from './problems.ts';

type Migrations = Readonly<Record<string, Migration>>;

/** The number of migrations that a file has been through. */
export async function versionOf<T>(db: Kysely<T>): Promise<number> {
  const { rows } = await sql<{ user_version: number }>`pragma user_version`.execute(db);
  return rows[0]?.user_version ?? 0;
}

/**
 * Kysely's migrator opens no transaction on SQLite, so each migration gets one here, and the file's version is written in it.
 * If the program dies between that and the migrator's own note, the next start finds the version and does not run it twice.
 */
function whole(migration: Migration, version: number): Migration {
  return {
    up: (db) =>
      db.transaction().execute(async (trx) => {
        if ((await versionOf(trx)) >= version) return;
        await migration.up(trx);
        await sql.raw(`pragma user_version = ${version}`).execute(trx);
      }),
  };
}

const inOrder = (migrations: Migrations): [string, Migration][] => Object.entries(migrations).sort(([a], [b]) => (a < b ? -1 : 1));

/** Throws NewerDatabase when the file has been through more migrations than there are. To be asked before the migrator is. */
export async function refuseNewer<T>(db: Kysely<T>, migrations: Migrations, path: string): Promise<void> {
  const [its, ours] = [await versionOf(db), Object.keys(migrations).length];
  if (its > ours) throw new NewerDatabase(path, its, ours);
}

/** Brings a file up to date. Throws MigrationFailed; the failed migration leaves nothing behind. */
export async function migrate<T>(db: Kysely<T>, migrations: Migrations): Promise<void> {
  const wrapped = Object.fromEntries(inOrder(migrations).map(([name, migration], at) => [name, whole(migration, at + 1)]));
  const migrator = new Migrator({ db, provider: { getMigrations: () => Promise.resolve(wrapped) } });
  const { error, results } = await migrator.migrateToLatest();
  if (error) throw new MigrationFailed(results?.find((result) => result.status === 'Error')?.migrationName ?? 'of the migrator', error);
}
