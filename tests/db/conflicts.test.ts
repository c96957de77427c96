import { spawn } from 'node:child_process';
import { once as event } from 'node:events';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { together } from '../../db/executor.ts';
import { part, savePart } from '../../db/parts.ts';
import { project, saveProject } from '../../db/projects.ts';
import { aProject, aShop, halvorsenWheel, onePart } from './bench.ts';

test('two open the same project; the second to save gets both versions and nothing is lost', async () => {
  const one = await aShop();
  const two = await aShop(one.path);
  const { id, rev } = await aProject(one.db);
  const seen = await project(two.db, id);
  await saveProject(one.db, id, rev, { notes: 'ways scraped' });
  const late = saveProject(two.db, id, seen.rev, { notes: 'bed cracked' });
  await expect(late).rejects.toMatchObject({
    name: 'RecordChanged',
    theirs: { notes: 'ways scraped', rev: 2 },
    yours: { notes: 'bed cracked' },
  });
  expect((await project(one.db, id)).notes).toBe('ways scraped');
});

test('a part saved late keeps its gear too', async () => {
  const { db } = await aShop();
  const { part: guard } = await onePart(db);
  await savePart(db, guard.id, guard.rev, { name: 'wheel' }, { gear: halvorsenWheel(22) });
  await expect(savePart(db, guard.id, guard.rev, {}, { gear: halvorsenWheel(28) })).rejects.toMatchObject({ name: 'RecordChanged' });
  expect((await part(db, guard.id)).stored?.gear.teeth).toBe(22);
});

test('a record that is not there says so', async () => {
  const { db } = await aShop();
  await expect(saveProject(db, 999, 1, {})).rejects.toMatchObject({ name: 'RecordNotFound', id: 999 });
  await expect(part(db, 12)).rejects.toThrow('There is no part 12.');
});

// The other process takes the write lock, reads, waits, writes and lets go: what a shop PC does while `npm run pair` runs.
const OTHER = `
const Database = require(process.argv[1]);
const file = new Database(process.argv[2]);
file.exec('begin immediate');
process.stdout.write('holding');
setTimeout(() => {
  file.exec("update project set notes = 'from the other process', rev = rev + 1; commit");
  file.close();
}, 400);`;

test('another process that holds the file is waited for, and its change is seen', async () => {
  const shop = await aShop();
  const { id, rev } = await aProject(shop.db);
  const sqlite = createRequire(import.meta.url).resolve('better-sqlite3');
  const other = spawn(process.execPath, ['-e', OTHER, sqlite, shop.path], { stdio: ['ignore', 'pipe', 'inherit'] });
  await event(other.stdout, 'data');
  const save = together(shop.db, async (trx) => {
    await project(trx, id);
    return saveProject(trx, id, rev, { notes: 'ours' });
  });
  await expect(save).rejects.toMatchObject({ name: 'RecordChanged', theirs: { notes: 'from the other process' } });
  if (other.exitCode === null) await event(other, 'exit');
  expect(other.exitCode).toBe(0);
}, 20_000);
