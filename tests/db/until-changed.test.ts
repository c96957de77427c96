import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import SqliteFile from 'better-sqlite3';
import { afterEach, expect, test } from 'vitest';
import type { Executor } from '../../db/executor.ts';
import { openShop, type Shop } from '../../db/open.ts';
import { setSetting, settings } from '../../db/settings.ts';
import { untilChanged } from '../../db/until-changed.ts';

const open: Shop[] = [];
afterEach(async () => {
  for (const shop of open.splice(0)) await shop.close();
});

async function shopIn(file: string): Promise<Shop> {
  const shop = await openShop(file, { copies: null, now: '2026-05-01T10:00:00.000Z' });
  open.push(shop);
  return shop;
}

/** A reading that counts how often the shop was really asked. */
function counted() {
  const asked = { times: 0 };
  const read = untilChanged(async (db, key: string) => {
    asked.times += 1;
    return (await db.selectFrom('setting').select('value').where('key', '=', key).executeTakeFirst())?.value ?? null;
  });
  return { asked, read };
}

test('the same is asked once until something is written, whatever it is', async () => {
  const { db } = await shopIn(':memory:');
  const { asked, read } = counted();
  await setSetting(db, 'unit', 'in');
  expect([await read(db, 'unit'), await read(db, 'unit'), asked.times]).toEqual(['in', 'in', 1]);
  expect([await read(db, 'paper'), asked.times]).toEqual([null, 2]);
  await setSetting(db, 'unit', 'mm');
  expect([await read(db, 'unit'), asked.times]).toEqual(['mm', 3]);
  await db.deleteFrom('setting').execute();
  expect([await read(db, 'unit'), await read(db, 'unit'), asked.times]).toEqual([null, null, 4]);
});

test('two shops are kept apart', async () => {
  const [one, two] = [await shopIn(':memory:'), await shopIn(':memory:')];
  const { read } = counted();
  await setSetting(one.db, 'unit', 'in');
  expect([await read(one.db, 'unit'), await read(two.db, 'unit')]).toEqual(['in', null]);
});

test('inside a change what was just written is read, and nothing of one taken back is left', async () => {
  const { db } = await shopIn(':memory:');
  const { read } = counted();
  await setSetting(db, 'unit', 'in');
  expect(await read(db, 'unit')).toBe('in');
  const change = db.transaction().execute(async (trx: Executor) => {
    await setSetting(trx, 'unit', 'mm');
    expect(await read(trx, 'unit')).toBe('mm');
    throw new Error('taken back');
  });
  await expect(change).rejects.toThrow('taken back');
  expect(await read(db, 'unit')).toBe('in');
});

test('an answer during which something was written is not kept', async () => {
  const { db } = await shopIn(':memory:');
  const written = { done: false };
  const read = untilChanged(async (from) => {
    const found = (await from.selectFrom('setting').select('value').execute()).length;
    if (!written.done) await setSetting(db, 'unit', 'mm');
    written.done = true;
    return found;
  });
  expect(await read(db)).toBe(0);
  expect(await read(db)).toBe(1);
});

test('a reader that waits while a change is made gets what stands after it, and so does everybody later', async () => {
  const { db } = await shopIn(':memory:');
  const { read } = counted();
  await setSetting(db, 'unit', 'in');
  await read(db, 'unit');
  const change = db.transaction().execute(async (trx) => {
    await setSetting(trx, 'unit', 'mm');
    await new Promise((resolve) => setTimeout(resolve, 20));
    await setSetting(trx, 'paper', '0.001');
  });
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(await read(db, 'unit')).toBe('mm');
  await change;
  expect(await read(db, 'unit')).toBe('mm');
});

test('what another program writes into the file is seen', async () => {
  const file = path.join(mkdtempSync(path.join(tmpdir(), 'backgear-kept-')), 'shop.sqlite');
  const { db } = await shopIn(file);
  await setSetting(db, 'unit', 'in');
  expect((await settings(db))['unit']).toBe('in');
  const other = new SqliteFile(file);
  other.prepare(`update setting set value = 'mm' where key = 'unit'`).run();
  other.close();
  expect((await settings(db))['unit']).toBe('mm');
});
