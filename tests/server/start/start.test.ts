import { chmodSync, chownSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import net from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import path from 'node:path';
import SqliteFile from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { migrations } from '../../../db/migrations/all.ts';
import { everyRow } from '../../db/every-row.ts';
import { build } from './built.ts';
import { type Ended, endAll, freePort, newFolder, post, run, start, stop } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });
beforeAll(build, 180_000);
afterAll(endAll);

/** One sentence for a person, no trace, exit code 1. */
function expectPlainWord({ code, err, out }: Ended, ...words: readonly (string | RegExp)[]): void {
  expect(err.trim().split('\n'), err).toHaveLength(1);
  expect(err).not.toMatch(/\bat \w+|node_modules|Error:|undefined/);
  for (const word of words) expect(err).toMatch(word);
  expect(out).toBe('');
  expect(code).toBe(1);
}

const begun = async (folder: string): Promise<string> => {
  await stop(await start(folder));
  return path.join(folder, 'shop.sqlite');
};
const bytesOf = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder)
      .filter((name) => name.endsWith('.sqlite'))
      .map((name) => [name, readFileSync(path.join(folder, name)).toString('base64')]),
  );

describe('a start that goes well', () => {
  test('prints where it is and a code for the phone, from any working folder; SIGTERM ends it within a second and the data is there', async () => {
    const folder = path.join(newFolder(), 'not', 'there', 'yet');
    const running = await start(folder, { cwd: tmpdir() });
    const lan = Object.values(networkInterfaces()).flatMap((list) => (list ?? []).filter((one) => !one.internal && one.family === 'IPv4'));
    expect(running.greeting).toContain(`http://localhost:${running.port}`);
    for (const { address } of lan) expect(running.greeting).toContain(`http://${address}:${running.port}`);
    if (lan.length > 0) expect(running.greeting).toMatch(/[▀▄█]{10}/);
    expect(running.greeting).toContain(path.join(folder, 'shop.sqlite'));
    expect((await fetch(`http://localhost:${running.port}/`)).status).toBe(200);
    expect((await post(running.port, '/devices/code', {})).status).toBe(303);
    const { code, ms, err } = await stop(running);
    expect([code, err]).toEqual([0, '']);
    expect(ms).toBeLessThan(1000);
    expect(readdirSync(folder).sort()).toEqual(['copies', 'shop.sqlite']);
    expect(everyRow(path.join(folder, 'shop.sqlite'))['pairing_code']).toHaveLength(1);
  });

  test('somebody who holds a connection open does not keep it from ending', async () => {
    const running = await start(newFolder());
    const idle = net.connect(running.port, '127.0.0.1');
    const half = net.connect(running.port, '127.0.0.1', () =>
      half.write(`POST /shop HTTP/1.1\r\nhost: localhost\r\norigin: http://localhost\r\ncontent-length: 900\r\n\r\nwhich=`),
    );
    for (const socket of [idle, half]) socket.on('error', () => undefined);
    await new Promise((resolve) => setTimeout(resolve, 200));
    const { code, ms } = await stop(running);
    expect(code).toBe(0);
    expect(ms).toBeLessThan(1000);
  });

  test('one host alone, and an address to print', async () => {
    const one = await start(newFolder(), { env: { BACKGEAR_HOST: '127.0.0.1' } });
    expect(one.greeting).not.toContain('On the LAN');
    await stop(one);
    const named = await start(newFolder(), { env: { BACKGEAR_ADDRESS: 'http://shop.test:4870/' } });
    expect(named.greeting.trimEnd().endsWith('http://shop.test:4870')).toBe(true);
    const there = await fetch(`http://127.0.0.1:${named.port}/devices`);
    expect(there.status).toBe(200);
    await stop(named);
  });
});

describe('a start that cannot be', () => {
  test('the port is taken: one line, and the shop that runs there is left alone', async () => {
    const folder = newFolder();
    const running = await start(folder);
    const before = bytesOf(folder);
    expectPlainWord(
      await run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(running.port) } }),
      `Port ${running.port} is taken`,
      'BACKGEAR_PORT',
    );
    expect(bytesOf(folder)).toEqual(before);
    expect(readdirSync(path.join(folder, 'copies'))).toHaveLength(1);
    await stop(running);
  });

  test.each(['letters', '-1', '65536', '4870.5', '0x10', '1e3', ' 4870', '99999999999999999999'])('BACKGEAR_PORT=%j', async (port) => {
    const folder = newFolder();
    expectPlainWord(await run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: port } }), 'BACKGEAR_PORT', 'whole number');
    expect(readdirSync(folder)).toEqual([]);
  });

  test.each([
    ['BACKGEAR_HOST', '198.51.100.7', 'no address of this machine'],
    ['BACKGEAR_HOST', 'no such host', 'no address of this machine'],
    ['BACKGEAR_ADDRESS', 'shop.local:4870', 'whole address'],
    ['BACKGEAR_ADDRESS', 'javascript:alert(1)', 'whole address'],
    ['BACKGEAR_ADDRESS', 'http://shop.local/machines', 'whole address'],
  ])('%s=%s', async (name, value, says) => {
    const env = { BACKGEAR_DATA: newFolder(), BACKGEAR_PORT: String(await freePort()), [name]: value };
    expectPlainWord(await run('main', { env }), name, says);
  });

  test('a file where the data folder should be, or a folder where the shop’s file should be', async () => {
    const port = String(await freePort());
    const file = path.join(newFolder(), 'data');
    writeFileSync(file, 'a note');
    expectPlainWord(await run('main', { env: { BACKGEAR_DATA: file, BACKGEAR_PORT: port } }), 'cannot be written', 'BACKGEAR_DATA');
    expectPlainWord(await run('main', { env: { BACKGEAR_DATA: path.join(file, 'below'), BACKGEAR_PORT: port } }), 'cannot be written');
    expect(readFileSync(file, 'utf8')).toBe('a note');
    const folder = newFolder();
    mkdirSync(path.join(folder, 'shop.sqlite'));
    expectPlainWord(await run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: port } }), 'cannot be written');
  });

  const NEVER_WRITTEN = ['/proc/backgear', '/proc/sys/backgear/data', '/proc/self/fd/backgear', '/sys/backgear', '/dev/null/backgear'];
  const onLinux = process.platform === 'linux' ? test : test.skip;

  onLinux.each(NEVER_WRITTEN)('a folder in %s, which takes none: a word and an end, not a start that never comes', async (folder) => {
    expectPlainWord(
      await run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(await freePort()) } }),
      folder,
      'cannot be written',
    );
    expectPlainWord(await run('pair', { env: { BACKGEAR_DATA: folder } }), folder, 'cannot be written');
  });

  // Root may write anywhere, so these run as a user who may not: as nobody when the tests run as root, else as ourselves.
  const NOBODY = 65_534;
  const asOther = process.getuid?.() === 0 ? { uid: NOBODY } : {};
  const give = (place: string): void => {
    if (process.getuid?.() === 0) chownSync(place, NOBODY, NOBODY);
  };
  const onPosix = process.platform === 'win32' ? test.skip : test;

  onPosix('a folder without the right to write', async () => {
    const folder = newFolder();
    chmodSync(folder, 0o555);
    expectPlainWord(
      await run('main', { ...asOther, env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(await freePort()) } }),
      folder,
      'cannot be written',
    );
    expectPlainWord(
      await run('main', { ...asOther, env: { BACKGEAR_DATA: path.join(folder, 'below'), BACKGEAR_PORT: String(await freePort()) } }),
      'cannot be written',
    );
    expect(readdirSync(folder)).toEqual([]);
  });

  onPosix('a shop’s file that may only be read, in a folder that may be written', async () => {
    const folder = newFolder();
    const file = await begun(folder);
    give(folder);
    chmodSync(file, 0o444);
    expectPlainWord(
      await run('main', { ...asOther, env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(await freePort()) } }),
      'cannot be written',
    );
  });

  onPosix('a port below 1024 for a user who may not', async () => {
    const folder = newFolder();
    give(folder);
    const low = Number(
      existsSync('/proc/sys/net/ipv4/ip_unprivileged_port_start')
        ? readFileSync('/proc/sys/net/ipv4/ip_unprivileged_port_start', 'utf8')
        : 1024,
    );
    const ended = await (low > 81 ? run('main', { ...asOther, env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: '81' } }) : null);
    if (ended) expectPlainWord(ended, 'Port 81 is not open to this user');
    else expect(low).toBeLessThanOrEqual(81);
  });

  test.each([
    ['damaged in the middle', (bytes: Buffer) => bytes.fill(0x5a, 8192), 'is damaged'],
    ['with its first page gone', (bytes: Buffer) => bytes.fill(0, 0, 4096), 'is damaged'],
    ['cut short', (bytes: Buffer) => bytes.subarray(0, 9000), 'is damaged'],
    ['of letters', () => Buffer.from('no database at all, only a letter to somebody '.repeat(50)), 'is damaged'],
  ] as const)('a shop’s file %s: said, and not touched', async (_how, spoil, says) => {
    const folder = newFolder();
    const file = await begun(folder);
    writeFileSync(file, spoil(readFileSync(file)));
    const before = readFileSync(file);
    expectPlainWord(
      await run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(await freePort()) } }),
      file,
      says,
      'npm run restore',
    );
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('a file of a newer Backgear, and some other program’s file: said, and not touched', async () => {
    const folder = newFolder();
    const file = await begun(folder);
    const ask = async () => run('main', { env: { BACKGEAR_DATA: folder, BACKGEAR_PORT: String(await freePort()) } });
    const newer = new SqliteFile(file);
    newer.pragma(`user_version = ${Object.keys(migrations).length + 1}`);
    newer.close();
    const before = bytesOf(folder);
    expectPlainWord(await ask(), file, 'newer Backgear', 'Update the program');
    expect(bytesOf(folder)).toEqual(before);
    const other = newFolder();
    const foreign = new SqliteFile(path.join(other, 'shop.sqlite'));
    foreign.exec('create table customer (name text); insert into customer values (1)');
    foreign.close();
    const theirs = bytesOf(other);
    expectPlainWord(
      await run('main', { env: { BACKGEAR_DATA: other, BACKGEAR_PORT: String(await freePort()) } }),
      'some other program’s file',
    );
    expect(bytesOf(other)).toEqual(theirs);
  });
});
