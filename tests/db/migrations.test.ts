import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { Kysely, type Migration, sql } from 'kysely';
import { expect, onTestFinished, test } from 'vitest';
import { migrate, refuseNewer, versionOf } from '../../db/migrate.ts';
import { migrations } from '../../db/migrations/all.ts';
import { oneConnection } from '../../db/one-connection.ts';
import { openShop } from '../../db/open.ts';
import { aShop, emptyFolder, halvorsen, NOW } from './bench.ts';
import { everyRow } from './every-row.ts';

function aFile(path = ':memory:'): Kysely<unknown> {
  const db = new Kysely<unknown>({ dialect: oneConnection(new SqliteFile(path)) });
  onTestFinished(() => db.destroy());
  return db;
}

const tablesOf = async (db: Kysely<unknown>): Promise<string[]> =>
  (
    await sql<{ name: string }>`select name from sqlite_schema where name not like 'kysely_%' and name not like 'sqlite_%'`.execute(db)
  ).rows.map((row) => row.name);

const making = (table: string): Migration => ({ up: async (db) => void (await sql.raw(`create table ${table} (id integer)`).execute(db)) });
const failing: Migration = {
  up: async (db) => {
    await sql`create table half (id integer)`.execute(db);
    await sql`insert into first values (7)`.execute(db);
    throw new Error('the lamp went out');
  },
};

test('a migration that fails half-way leaves nothing behind, and those before it stay', async () => {
  const db = aFile();
  const failed = migrate(db, { '1_first': making('first'), '2_half': failing });
  await expect(failed).rejects.toMatchObject({ name: 'MigrationFailed', message: expect.stringContaining('2_half') });
  expect(await tablesOf(db)).toEqual(['first']);
  expect((await sql`select * from first`.execute(db)).rows).toEqual([]);
  expect(await versionOf(db)).toBe(1);
});

test('after the failure is mended the rest is done', async () => {
  const db = aFile();
  await expect(migrate(db, { '1_first': making('first'), '2_half': failing })).rejects.toThrow();
  await migrate(db, { '1_first': making('first'), '2_half': making('second') });
  expect(await tablesOf(db)).toEqual(['first', 'second']);
});

test('a program that died between the migration and the note of it does not run it twice', async () => {
  const db = aFile();
  await migrate(db, { '1_first': making('first') });
  await sql`delete from kysely_migration`.execute(db);
  await migrate(db, { '1_first': making('first') });
  expect(await tablesOf(db)).toEqual(['first']);
});

test('a file newer than the program is refused before the migrator speaks', async () => {
  const path = join(emptyFolder(), 'shop.sqlite');
  await (await openShop(path, { copies: null, now: NOW })).close();
  const file = new SqliteFile(path);
  file.pragma(`user_version = ${Object.keys(migrations).length + 1}`);
  file.exec("insert into kysely_migration values ('9999_of_next_year', '2027')");
  file.pragma('journal_mode = DELETE');
  file.close();
  const before = readFileSync(path);
  const opening = openShop(path, { copies: null, now: NOW });
  await expect(opening).rejects.toMatchObject({ name: 'NewerDatabase', message: expect.stringContaining('newer Backgear') });
  expect(readFileSync(path).equals(before)).toBe(true);
  await expect(refuseNewer(aFile(path), migrations, path)).rejects.toThrow('Update the program');
});

test('some other program’s file is left alone', async () => {
  const path = join(emptyFolder(), 'shop.sqlite');
  const file = new SqliteFile(path);
  file.exec('create table theirs (id integer)');
  file.close();
  await expect(openShop(path, { copies: null, now: NOW })).rejects.toMatchObject({ name: 'ForeignDatabase' });
  expect(await tablesOf(aFile(path))).toEqual(['theirs']);
});

test('a filled file goes through one more migration with every row in place, and a copy of it is taken first', async () => {
  const shop = await aShop();
  await halvorsen(shop.db);
  const before = everyRow(shop.path);
  const more = { ...migrations, '9999_shelves': making('shelf') };
  await migrate(shop.db, more);
  const { shelf, ...after } = everyRow(shop.path);
  expect(shelf).toEqual([]);
  expect(after).toEqual(before);
  expect(before['gear']?.length).toBeGreaterThan(20);
});

test('opening an older file takes a copy before it is brought up to date', async () => {
  const folder = emptyFolder();
  const path = join(folder, 'shop.sqlite');
  const old = aFile(path);
  const [first] = Object.entries(migrations);
  await migrate(old, Object.fromEntries(first ? [first] : []));
  await sql`insert into project values (1, 'Halvorsen', 'H-12', 'hobber', '', '', '', 'H12', '', '2026', null, 1)`.execute(old);
  const copies = join(folder, 'copies');
  const shop = await openShop(path, { copies, now: NOW });
  onTestFinished(() => shop.close());
  expect(await versionOf(shop.db)).toBe(Object.keys(migrations).length);
  const [copy = ''] = readdirSync(copies);
  expect(everyRow(join(copies, copy))['project']).toHaveLength(1);
  expect(await tablesOf(aFile(join(copies, copy)))).not.toContain('tool');
});

test('a file that was searched with its notes finds the same things, and keeps the words of notes apart', async () => {
  const db = aFile();
  await migrate(db, Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0006')));
  await sql`insert into project values (3, 'Halvorsen', 'H-12', 'hobber', '', '', '4071', 'H12', 'forty pounds', '2026', null, 1)`.execute(
    db,
  );
  await sql`insert into found (rowid, kind, ref, title, text) values (8, 'project', 3, 'Halvorsen H-12 hobber', ${'Halvorsen H-12 hobber\nH12\n4071\nforty pounds'})`.execute(
    db,
  );
  await sql`insert into found_place values ('project', 3, 8)`.execute(db);
  await migrate(db, migrations);
  const found = async (question: string) =>
    (
      await sql<{
        ref: number;
        title: string;
        at: number;
      }>`select ref, title, rowid as at from found where found match ${question}`.execute(db)
    ).rows;
  const whole = [{ ref: 3, title: 'Halvorsen H-12 hobber', at: 8 }];
  expect(await found('text : ("4071"* "hobb"*)')).toEqual(whole);
  expect(await found('"forty"*')).toEqual(whole);
  expect(await found('text : ("forty"*)')).toEqual([]);
});

test('what an older file says of a blank among the steps becomes a word of its own; other steps stay', async () => {
  const old = aFile();
  const before = Object.entries(migrations).filter(([name]) => name < '0005');
  await migrate(old, Object.fromEntries(before));
  await sql`pragma foreign_keys = off`.execute(old);
  await sql`insert into routing values (1, 1, 're-cut a spare', '2026', null, 0, '', 1)`.execute(old);
  await sql`insert into set_up values (1, 'bench', 'bench', null, 'Bench')`.execute(old);
  const add = (id: number, key: string, steps: readonly string[]) =>
    sql`insert into operation values (${id}, 1, ${id}, ${key}, 'x', 1, 1, ${JSON.stringify(steps)}, '[]', '[]', 5, null, null, null, null, '', 1)`.execute(
      old,
    );
  await add(1, 'sound', ['Read the old roots.', 'Cleans up. 0.2429 in left a side.']);
  await add(2, 'stock', ['Try a file on it.', 'My own word.']);
  await add(3, 'solid', ['Cleans up.', 'Cleans up.']);
  await migrate(old, migrations);
  expect((await sql`select steps, verdict from operation order by id`.execute(old)).rows).toEqual([
    { steps: '["Read the old roots."]', verdict: 'Cleans up. 0.2429 in left a side.' },
    { steps: '["Try a file on it.","My own word."]', verdict: '' },
    { steps: '["Cleans up.","Cleans up."]', verdict: '' },
  ]);
});

test('a migration imports nothing but Kysely', () => {
  const folder = join(import.meta.dirname, '../../db/migrations');
  const files = readdirSync(folder).filter((name) => /^\d/.test(name));
  expect(files).toHaveLength(Object.keys(migrations).length);
  for (const name of files) {
    const targets = [...readFileSync(join(folder, name), 'utf8').matchAll(/from '([^']+)'/g)].map((found) => found[1]);
    expect({ name, targets }).toEqual({ name, targets: ['kysely'] });
  }
});
