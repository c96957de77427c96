import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import SqliteFile from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { everyRow } from '../../db/every-row.ts';
import { build } from './built.ts';
import { type Ended, endAll, newFolder, post, type Running, run, start, stop } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });
beforeAll(build, 180_000);
afterAll(endAll);

const codes = (file: string): number => everyRow(file)['pairing_code']?.length ?? -1;
const makeCode = async (running: Running): Promise<void> => {
  expect((await post(running.port, '/devices/code', {})).status).toBe(303);
};
const hand = (program: 'backup' | 'restore' | 'pair', folder: string, ...args: string[]): Promise<Ended> =>
  run(program, { env: { BACKGEAR_DATA: folder }, args });

function expectPlainWord({ code, err, out }: Ended, ...words: readonly string[]): void {
  expect(code).toBe(1);
  expect(err.trim().split('\n'), err).toHaveLength(1);
  expect(err).not.toMatch(/\bat \w+|node_modules|Error:|undefined/);
  for (const word of words) expect(err).toContain(word);
  expect(out).toBe('');
}

/** A shop with one code made before the copy and one after. Still running. */
async function copiedWhileOpen() {
  const folder = newFolder();
  const running = await start(folder);
  await makeCode(running);
  const { out, code, err } = await hand('backup', folder);
  expect([code, err]).toEqual([0, '']);
  const copy = /Copied to (.+\.sqlite)/.exec(out)?.[1] ?? '';
  await makeCode(running);
  return { folder, running, copy, shop: path.join(folder, 'shop.sqlite') };
}

describe('copies by hand', () => {
  test('taken while the shop is open; put back only when it is not, with what stood there kept', async () => {
    const { folder, running, copy, shop } = await copiedWhileOpen();
    expect(codes(copy)).toBe(1);
    const refused = await hand('restore', folder, copy);
    expectPlainWord(refused, shop, 'open in another program', 'Stop Backgear first');
    await makeCode(running);
    expect((await stop(running)).code).toBe(0);
    expect(codes(shop)).toBe(3);
    expect(readdirSync(folder).some((name) => name.includes('before'))).toBe(false);

    const done = await hand('restore', folder, copy);
    expect([done.code, done.err]).toEqual([0, '']);
    expect(codes(shop)).toBe(1);
    const kept = /kept as (.+)/.exec(done.out)?.[1] ?? '';
    expect(codes(kept)).toBe(3);
    const again = await start(folder);
    await makeCode(again);
    await stop(again);
    expect(codes(shop)).toBe(2);
  });

  test('after the server was killed, its last changes are in what is kept', async () => {
    const { folder, running, copy, shop } = await copiedWhileOpen();
    running.child.kill('SIGKILL');
    await running.ended;
    expect(existsSync(`${shop}-wal`)).toBe(true);
    const done = await hand('restore', folder, copy);
    expect(done.code).toBe(0);
    expect(codes(shop)).toBe(1);
    expect(codes(/kept as (.+)/.exec(done.out)?.[1] ?? '')).toBe(2);
  });

  test('put back over a damaged shop, and into a folder where there is none', async () => {
    const { folder, running, copy, shop } = await copiedWhileOpen();
    await stop(running);
    writeFileSync(shop, readFileSync(shop).fill(0x5a, 0, 8192));
    expect((await hand('restore', folder, copy)).code).toBe(0);
    expect(codes(shop)).toBe(1);
    const elsewhere = path.join(newFolder(), 'new');
    const moved = await hand('restore', elsewhere, copy);
    expect([moved.code, moved.err]).toEqual([0, '']);
    expect(moved.out).not.toContain('kept as');
    expect(codes(path.join(elsewhere, 'shop.sqlite'))).toBe(1);
  });

  test('what is no good copy is refused, and the shop is as it was', async () => {
    const { folder, running, copy, shop } = await copiedWhileOpen();
    await stop(running);
    const before = readFileSync(shop);
    const spoilt = path.join(newFolder(), 'spoilt.sqlite');
    copyFileSync(copy, spoilt);
    writeFileSync(spoilt, readFileSync(spoilt).fill(0x5a, 8192));
    const foreign = path.join(newFolder(), 'foreign.sqlite');
    new SqliteFile(foreign).exec('create table customer (name text)').close();
    const letters = path.join(newFolder(), 'letters');
    writeFileSync(letters, 'a letter to somebody '.repeat(100));
    expectPlainWord(await hand('restore', folder), 'Which copy?');
    expectPlainWord(await hand('restore', folder, path.join(folder, 'none.sqlite')), 'There is no file');
    expectPlainWord(await hand('restore', folder, spoilt), 'is damaged');
    expectPlainWord(await hand('restore', folder, foreign), 'some other program’s file');
    expectPlainWord(await hand('restore', folder, letters), 'is damaged');
    expectPlainWord(await hand('restore', folder, path.dirname(letters)), 'is no file');
    expectPlainWord(await hand('restore', folder, shop), 'is the shop itself');
    expect(readFileSync(shop).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(['copies', 'shop.sqlite']);
  });

  test('no shop yet: said, and none is made', async () => {
    const folder = newFolder();
    expectPlainWord(await hand('backup', folder), 'There is no shop', folder);
    expectPlainWord(await hand('backup', path.join(folder, 'nowhere')), 'There is no shop');
    expect(readdirSync(folder)).toEqual([]);
  });

  test('where nothing can be written: said', async () => {
    const { folder, running } = await copiedWhileOpen();
    await stop(running);
    const copies = path.join(folder, 'copies');
    const elsewhere = newFolder();
    copyFileSync(path.join(folder, 'shop.sqlite'), path.join(elsewhere, 'shop.sqlite'));
    writeFileSync(path.join(elsewhere, 'copies'), 'a file in the place of the folder');
    expectPlainWord(await hand('backup', elsewhere), 'cannot be written');
    expect(existsSync(copies)).toBe(true);
  });
});

describe('a code by hand', () => {
  test('pairs with the running server, once', async () => {
    const folder = newFolder();
    const running = await start(folder);
    const { out, code } = await hand('pair', folder);
    expect(code).toBe(0);
    expect(out).toMatch(/[▀▄█]{10}/);
    expect(out).toContain('for ten minutes');
    const [, given = ''] = /\/pair\/([A-Z0-9]{10})\n/.exec(out) ?? [];
    const first = await post(running.port, `/pair/${given}`, { name: 'tablet' });
    expect(first.status).toBe(303);
    expect(first.headers.getSetCookie().some((one) => one.startsWith('backgear-device='))).toBe(true);
    expect((await post(running.port, `/pair/${given}`, { name: 'another' })).status).toBe(404);
    await stop(running);
    expect(everyRow(path.join(folder, 'shop.sqlite'))['device']).toHaveLength(1);
  });

  test('before the first start, and in a folder that cannot be', async () => {
    const folder = path.join(newFolder(), 'new');
    expect((await hand('pair', folder)).code).toBe(0);
    expect(codes(path.join(folder, 'shop.sqlite'))).toBe(1);
    const file = path.join(newFolder(), 'data');
    writeFileSync(file, 'a note');
    expectPlainWord(await hand('pair', file), 'cannot be written');
    mkdirSync(path.join(folder, 'other', 'shop.sqlite'), { recursive: true });
    expectPlainWord(await hand('pair', path.join(folder, 'other')), 'cannot be written');
  });
});
