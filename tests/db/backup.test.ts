import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { expect, test } from 'vitest';
import { backupNow, copyIsDue, restore } from '../../db/backup.ts';
import { openShop } from '../../db/open.ts';
import { aProject, aShop, emptyFolder, halvorsen, NOW } from './bench.ts';
import { everyRow } from './every-row.ts';

const LATER = '2026-05-02T08:00:00.000Z';

test('a copy taken while the shop is open comes back with every row, and what stood there is kept', async () => {
  const [shop, copies] = [await aShop(), emptyFolder()];
  await halvorsen(shop.db);
  const asItWas = everyRow(shop.path);
  const copy = backupNow(shop.path, copies, NOW);
  await aProject(shop.db);
  await shop.close();
  const kept = restore(copy, shop.path, LATER);
  expect(everyRow(shop.path)).toEqual(asItWas);
  expect(asItWas['part']).toHaveLength(10);
  expect(everyRow(kept ?? '')['project']).toHaveLength(2);
  const again = await openShop(shop.path, { copies: null, now: LATER });
  await again.close();
});

test('a copy is due once a day', async () => {
  const path = join(emptyFolder(), 'shop.sqlite');
  const copies = join(emptyFolder(), 'copies');
  const shop = await openShop(path, { copies, now: NOW });
  expect(shop.copyDaily(NOW)).not.toBeNull();
  expect(shop.copyDaily('2026-05-01T23:00:00.000Z')).toBeNull();
  expect(copyIsDue(copies, LATER)).toBe(true);
  expect(shop.copyDaily(LATER)).not.toBeNull();
  expect(readdirSync(copies)).toHaveLength(2);
  await shop.close();
});

test('the newest ten stay, two of one instant both', async () => {
  const [shop, copies] = [await aShop(), emptyFolder()];
  backupNow(shop.path, copies, '2026-04-01T00:00:00.000Z');
  for (let day = 10; day < 20; day += 1) backupNow(shop.path, copies, `2026-04-${day}T00:00:00.000Z`);
  const last = backupNow(shop.path, copies, '2026-04-19T00:00:00.000Z');
  const names = readdirSync(copies);
  expect(names).toHaveLength(10);
  expect(names.some((name) => name.includes('2026-04-01'))).toBe(false);
  expect(existsSync(last)).toBe(true);
});

/** Writes rubbish over the pages from the third on. */
function spoil(path: string): void {
  const bytes = readFileSync(path);
  bytes.fill(0x5a, 8192, bytes.length);
  writeFileSync(path, bytes);
}

test('a damaged copy is refused and nothing is touched', async () => {
  const [shop, copies] = [await aShop(), emptyFolder()];
  await halvorsen(shop.db);
  const copy = backupNow(shop.path, copies, NOW);
  await shop.close();
  spoil(copy);
  const before = everyRow(shop.path);
  expect(() => restore(copy, shop.path, LATER)).toThrow(expect.objectContaining({ name: 'DamagedDatabase' }));
  expect(everyRow(shop.path)).toEqual(before);
});

test('a damaged shop is not opened', async () => {
  const shop = await aShop();
  await halvorsen(shop.db);
  await shop.close();
  spoil(shop.path);
  await expect(openShop(shop.path, { copies: null, now: NOW })).rejects.toMatchObject({ name: 'DamagedDatabase' });
});

test('a file that is no shop’s is refused', () => {
  const path = join(emptyFolder(), 'other.sqlite');
  const file = new SqliteFile(path);
  file.exec('create table project (id integer)');
  file.close();
  expect(() => restore(path, join(emptyFolder(), 'shop.sqlite'), NOW)).toThrow(expect.objectContaining({ name: 'ForeignDatabase' }));
});
