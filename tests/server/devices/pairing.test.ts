import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ask, LAN_PEER, pairedCookie, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';

const START = Date.parse('2026-03-14T10:00:00.000Z');
let present = START;
let shop: TestShop;
beforeEach(async () => {
  present = START;
  shop = await shopForTests({ clock: () => new Date(present).toISOString() });
});
afterEach(() => shop.close());

const MINUTE = 60_000;
const later = (ms: number): void => {
  present = START + ms;
};

/** The code that the shop PC is shown, read off the page. */
async function codeOnPage(): Promise<string> {
  const made = await send(shop, '/devices/code', {});
  expect(made.statusCode).toBe(303);
  const page = await visit(shop, String(made.headers.location));
  expect(page.statusCode).toBe(200);
  expect(page.body).toContain('<svg');
  return /\/pair\/([A-Z0-9]+)</.exec(page.body)?.[1] ?? '';
}

const open = (code: string) => ask(shop, `/pair/${code}`, { peer: LAN_PEER });
const press = (code: string, name = 'phone') => ask(shop, `/pair/${code}`, { method: 'POST', peer: LAN_PEER, form: { name } });
const mayChange = async (cookie: string): Promise<boolean> =>
  (await ask(shop, '/shop/anew', { peer: LAN_PEER, headers: { host: 'localhost', cookie } })).statusCode === 200;
const count = async (): Promise<number> => (await shop.shops.own.selectFrom('device').selectAll().execute()).length;

test('a code pairs once, and the phone may change at once', async () => {
  const code = await codeOnPage();
  expect(code).toMatch(/^[A-Z0-9]{10}$/);
  expect((await open(code)).statusCode).toBe(200);
  const first = await press(code);
  expect(first.statusCode).toBe(303);
  const cookie = first.cookies.find((one) => one.name === 'backgear-device');
  expect(await mayChange(`backgear-device=${cookie?.value}`)).toBe(true);
  const second = await press(code, 'another');
  expect(second.statusCode).toBe(404);
  expect(second.cookies.some((one) => one.name === 'backgear-device')).toBe(false);
  expect((await open(code)).statusCode).toBe(404);
  expect(await count()).toBe(1);
});

test('opening the code pairs nothing, however often and however asked', async () => {
  const code = await codeOnPage();
  for (const method of ['GET', 'HEAD'] as const) {
    for (let time = 0; time < 3; time += 1) {
      const seen = await ask(shop, `/pair/${code}`, { method, peer: LAN_PEER });
      expect(seen.statusCode).toBe(200);
      expect(seen.cookies).toEqual([]);
    }
  }
  expect(await count()).toBe(0);
  expect((await press(code)).statusCode).toBe(303);
});

test('good until the last millisecond of ten minutes, and not at ten', async () => {
  const [one, two] = [await codeOnPage(), await codeOnPage()];
  later(10 * MINUTE - 1);
  expect((await open(one)).statusCode).toBe(200);
  expect((await press(one)).statusCode).toBe(303);
  later(10 * MINUTE);
  expect((await open(two)).statusCode).toBe(404);
  expect((await press(two)).statusCode).toBe(404);
  expect(await count()).toBe(1);
});

test.each(['AAAAAAAAAA', 'aaaaaaaaaa', '0', '%20', '%27%20or%201=1--', 'x'.repeat(190), '%F0%9F%94%A9', '__proto__', 'null'])(
  'the made-up code %s pairs nothing and says the same as a used one',
  async (code) => {
    const used = await codeOnPage();
    await press(used);
    const says = (body: string): string => /<main[\s\S]*<\/main>/.exec(body)?.[0] ?? 'no main';
    const [made, old] = [await press(code), await press(used)];
    expect(made.statusCode).toBe(404);
    expect(says(made.body)).toBe(says(old.body));
    expect(says((await open(code)).body)).toBe(says(old.body));
    expect((await visit(shop, `/devices/code/${code}`)).statusCode).toBe(404);
    expect(await count()).toBe(1);
  },
);

test('twenty phones press one code at once: one is paired', async () => {
  const code = await codeOnPage();
  const answers = await Promise.all(Array.from({ length: 20 }, (_, at) => press(code, `phone ${at}`)));
  expect(answers.filter((one) => one.statusCode === 303)).toHaveLength(1);
  expect(answers.filter((one) => one.statusCode === 404)).toHaveLength(19);
  expect(await count()).toBe(1);
});

test('a name too long comes back as typed and leaves the code good; a name of markup is shown as letters', async () => {
  const code = await codeOnPage();
  const long = await press(code, 'n'.repeat(61));
  expect(long.statusCode).toBe(422);
  expect(long.body).toContain('n'.repeat(61));
  expect(await count()).toBe(0);
  expect((await press(code, '<script>alert(1)</script> 📱')).statusCode).toBe(303);
  const list = (await visit(shop, '/devices')).body;
  expect(list).not.toContain('<script>alert');
  expect(list).toContain('&lt;script&gt;alert(1)&lt;/script&gt; 📱');
});

test('the cookie is out of reach of scripts and foreign pages, and lasts', async () => {
  const code = await codeOnPage();
  const answer = await press(code);
  const cookie = answer.cookies.find((one) => one.name === 'backgear-device');
  expect(cookie).toMatchObject({ httpOnly: true, sameSite: 'Lax', path: '/' });
  expect(cookie?.maxAge).toBeGreaterThan(180 * 24 * 3600);
  // Over plain http a browser would drop a cookie that is marked for https.
  expect(cookie?.secure).toBeUndefined();
  expect(cookie?.domain).toBeUndefined();
  expect(cookie?.value).toMatch(/^[\w-]{43}$/);
});

test('neither token nor code lies in any file of the data folder', async () => {
  const code = await codeOnPage();
  const token = (await press(code)).cookies.find((one) => one.name === 'backgear-device')?.value ?? '';
  expect(token).not.toBe('');
  const files = readdirSync(shop.folder).map((name) => path.join(shop.folder, name));
  expect(files.some((file) => file.endsWith('-wal'))).toBe(true);
  for (const file of files.filter((one) => /sqlite/.test(one))) {
    const bytes = readFileSync(file);
    expect(bytes.includes(token), file).toBe(false);
    expect(bytes.includes(code), file).toBe(false);
  }
});

test('revoking works at the next request, for that device alone', async () => {
  const [lost, kept] = [await pairedCookie(shop, 'lost'), await pairedCookie(shop, 'kept')];
  expect(await mayChange(lost)).toBe(true);
  expect((await send(shop, '/devices/1/revoke', {})).statusCode).toBe(303);
  expect(await mayChange(lost)).toBe(false);
  expect(await mayChange(kept)).toBe(true);
  expect((await visit(shop, '/devices')).body).toContain('look only, since 2026-03-14');
});

test.each(['99', '0', '-1', '1.5', 'abc', '1e9', '9007199254740993', '%00', '1%20'])(
  'revoking device %s, which is none, says so',
  async (id) => {
    const cookie = await pairedCookie(shop);
    expect((await send(shop, `/devices/${id}/revoke`, {})).statusCode).toBe(404);
    expect(await mayChange(cookie)).toBe(true);
  },
);

test('a peer on the LAN can make no code, see none, and see no device', async () => {
  await pairedCookie(shop, 'the owner’s phone');
  const code = await codeOnPage();
  const codes = async () => (await shop.shops.own.selectFrom('pairing_code').selectAll().execute()).length;
  const before = await codes();
  expect((await ask(shop, '/devices/code', { method: 'POST', peer: LAN_PEER, form: {} })).statusCode).toBe(403);
  expect((await ask(shop, `/devices/code/${code}`, { peer: LAN_PEER })).statusCode).toBe(403);
  const list = await ask(shop, '/devices', { peer: LAN_PEER });
  expect(list.body).not.toContain('owner');
  expect(list.body).not.toContain('<form class="one"');
  expect(await codes()).toBe(before);
});

test('the code page shows the address by which the PC was asked, or the one that the owner set', async () => {
  const made = await send(shop, '/devices/code', {});
  const set = await shopForTests({ config: { printedAddress: 'http://shop.test:4870' } });
  try {
    const there = await send(set, '/devices/code', {});
    expect((await visit(set, String(there.headers.location))).body).toContain('http://shop.test:4870/pair/');
  } finally {
    await set.close();
  }
  expect((await visit(shop, String(made.headers.location))).body).toMatch(/http:\/\/[^/<]+\/pair\/[A-Z0-9]{10}/);
});
