import type { Database, Statement } from 'better-sqlite3';
import { CompiledQuery, type DatabaseConnection, type Dialect, type Driver, type SqliteDatabase, SqliteDialect } from 'kysely';

/** Refuses undefined, which SQLite would take for NULL without a word. */
function refuseUndefined(query: CompiledQuery): CompiledQuery {
  if (query.parameters.includes(undefined)) throw new TypeError(`undefined bound in: ${query.sql}`);
  return query;
}

const careful = (inner: DatabaseConnection): DatabaseConnection => ({
  executeQuery: (query) => inner.executeQuery(refuseUndefined(query)),
  streamQuery: (query, size) => inner.streamQuery(refuseUndefined(query), size),
});

/**
 * A transaction takes the right to write at once: two that read first and write later would otherwise fail on each other
 * at the write, whatever the waiting time.
 */
function immediate(driver: Driver): Driver {
  const wrapped = new WeakMap<DatabaseConnection, DatabaseConnection>();
  const wrap = (inner: DatabaseConnection): DatabaseConnection => {
    const known = wrapped.get(inner) ?? careful(inner);
    wrapped.set(inner, known);
    return known;
  };
  return {
    init: () => driver.init(),
    acquireConnection: async () => wrap(await driver.acquireConnection()),
    beginTransaction: async (connection) => {
      await connection.executeQuery(CompiledQuery.raw('begin immediate'));
    },
    commitTransaction: (connection) => driver.commitTransaction(connection),
    rollbackTransaction: (connection) => driver.rollbackTransaction(connection),
    releaseConnection: (connection) => driver.releaseConnection(connection),
    destroy: () => driver.destroy(),
  };
}

const MOST_KEPT = 500;

/**
 * The file, with the statements last used kept ready: Kysely prepares every query anew, which costs more than running most of them.
 * A statement is run to its end before the next one starts, so one copy of each is enough.
 */
function remembering(file: Database): SqliteDatabase {
  const kept = new Map<string, Statement>();
  const prepare = (text: string): Statement => {
    const statement = kept.get(text) ?? file.prepare(text);
    kept.delete(text);
    kept.set(text, statement);
    const oldest = kept.size > MOST_KEPT ? kept.keys().next().value : undefined;
    if (oldest !== undefined) kept.delete(oldest);
    return statement;
  };
  return { prepare: prepare as SqliteDatabase['prepare'], close: () => file.close() };
}

/** SQLite through Kysely over one open file. */
export function oneConnection(file: Database): Dialect {
  const sqlite = new SqliteDialect({ database: remembering(file) });
  return {
    createDriver: () => immediate(sqlite.createDriver()),
    createQueryCompiler: () => sqlite.createQueryCompiler(),
    createAdapter: () => sqlite.createAdapter(),
    createIntrospector: (db) => sqlite.createIntrospector(db),
  };
}
