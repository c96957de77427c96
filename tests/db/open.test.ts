import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { openShop } from '../../db/open.ts';

const now = '2026-05-01T10:00:00.000Z';

test('a new file has the pragmas that keep it safe', async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'shop-')), 'shop.sqlite');
  const shop = await openShop(path, { copies: null, now });
  const read = async (name: string): Promise<unknown> => Object.values((await sql.raw(`pragma ${name}`).execute(shop.db)).rows[0] ?? {})[0];
  expect(await read('journal_mode')).toBe('wal');
  expect(await read('synchronous')).toBe(2);
  expect(await read('foreign_keys')).toBe(1);
  expect(await read('busy_timeout')).toBe(5000);
  expect((await sql.raw('pragma foreign_key_check').execute(shop.db)).rows).toEqual([]);
  await shop.close();
});

test('a file that is no database is called damaged', async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'shop-')), 'shop.sqlite');
  writeFileSync(path, 'not a database at all, but long enough to be looked at '.repeat(40));
  await expect(openShop(path, { copies: null, now })).rejects.toMatchObject({ name: 'DamagedDatabase' });
});
