import { readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { setSetting, settings } from '../../../db/settings.ts';
import { type FillDemo, openShops, type Shops } from '../../../server/shops.ts';
import { aProject, emptyFolder, halvorsen } from '../../db/bench.ts';
import { everyRow } from '../../db/every-row.ts';
import { ask, LAN_PEER, NOW, pairedCookie, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';

const ends: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).reverse()) await end();
});

const oneMachine: FillDemo = async (db) => {
  await aProject(db);
};
const wholeMachine: FillDemo = async (db) => {
  await halvorsen(db);
};
const clock = (): string => NOW;

async function testShop(fill: FillDemo = oneMachine): Promise<TestShop> {
  const shop = await shopForTests({ fillDemo: fill });
  ends.push(shop.close);
  return shop;
}
async function shopsIn(folder: string, fill: FillDemo = oneMachine): Promise<Shops> {
  const shops = await openShops(folder, clock, fill);
  ends.push(() => shops.close());
  return shops;
}
const machines = async (shops: Shops): Promise<number> => (await shops.now().db.selectFrom('project').selectAll().execute()).length;
const openDemo = (shop: TestShop) => send(shop, '/shop', { which: 'demo' });
const openOwn = (shop: TestShop) => send(shop, '/shop', { which: 'own' });

test('there and back: own rows stay byte for byte whatever is done in the demo', async () => {
  const shop = await testShop(wholeMachine);
  await aProject(shop.shops.own);
  const file = path.join(shop.folder, 'shop.sqlite');
  const before = everyRow(file);
  expect((await openDemo(shop)).statusCode).toBe(303);
  expect(shop.shops.now().demo).toBe(true);
  await shop.shops.now().db.deleteFrom('made').execute();
  await aProject(shop.shops.now().db);
  await send(shop, '/shop/anew', {});
  await openOwn(shop);
  const { setting, ...rest } = everyRow(file);
  const { setting: settingBefore, ...restBefore } = before;
  expect(rest).toEqual(restBefore);
  expect([settingBefore, setting]).toEqual([[], [expect.objectContaining({ key: 'open shop', value: 'own' })]]);
  expect(await machines(shop.shops)).toBe(1);
});

test('which shop is open is remembered over a restart, and the demo keeps what was tried', async () => {
  const folder = emptyFolder();
  const first = await shopsIn(folder);
  expect(first.now().demo).toBe(false);
  await first.pick('demo');
  await aProject(first.now().db);
  await first.close();
  const second = await shopsIn(folder);
  expect(second.now().demo).toBe(true);
  expect(await machines(second)).toBe(2);
  await second.pick('own');
  await second.close();
  const third = await shopsIn(folder);
  expect(third.now().demo).toBe(false);
  expect(await machines(third)).toBe(0);
});

test('paired devices are the owner’s: they hold in the demo, and beginning it anew forgets none', async () => {
  const shop = await testShop();
  await openDemo(shop);
  const cookie = await pairedCookie(shop);
  await send(shop, '/shop/anew', {});
  const may = () => ask(shop, '/shop/anew', { peer: LAN_PEER, headers: { host: 'localhost', cookie } });
  expect((await may()).statusCode).toBe(200);
  await openOwn(shop);
  expect((await may()).statusCode).toBe(200);
  expect(everyRow(path.join(shop.folder, 'demo.sqlite'))['device']).toEqual([]);
});

test('beginning anew is asked first, takes the right, and puts every row back as at first', async () => {
  const shop = await testShop(wholeMachine);
  await openDemo(shop);
  const file = path.join(shop.folder, 'demo.sqlite');
  const atFirst = everyRow(file);
  expect((await visit(shop, '/shop')).body).toContain('Begin the demo shop anew');
  const { db } = shop.shops.now();
  await aProject(db);
  await setSetting(db, 'clean-up', '0.010 in');
  const tried = everyRow(file);
  const question = await visit(shop, '/shop/anew');
  expect(question.body).toMatch(/<form[^>]*action="\/shop\/anew"[^>]*method="post"/);
  expect(everyRow(file)).toEqual(tried);
  expect((await ask(shop, '/shop/anew', { method: 'POST', peer: LAN_PEER, form: {} })).statusCode).toBe(403);
  expect(everyRow(file)).toEqual(tried);
  expect((await send(shop, '/shop/anew', {})).statusCode).toBe(303);
  expect(everyRow(file)).toEqual(atFirst);
  await openOwn(shop);
  expect((await visit(shop, '/shop')).body).not.toContain('Begin the demo shop anew');
});

test('a demo that could not be filled leaves one’s own open and is filled at the next try', async () => {
  let broken = true;
  const shop = await testShop(async (db, now) => {
    await oneMachine(db, now);
    if (broken) throw new Error('the seed broke half-way');
  });
  await expect(shop.shops.pick('demo')).rejects.toThrow('half-way');
  expect(shop.shops.now().demo).toBe(false);
  expect(everyRow(path.join(shop.folder, 'demo.sqlite'))['project']).toEqual([]);
  broken = false;
  await shop.shops.pick('demo');
  expect(await machines(shop.shops)).toBe(1);
  broken = true;
  await aProject(shop.shops.now().db);
  await expect(shop.shops.demoAnew()).rejects.toThrow('half-way');
  expect(await machines(shop.shops)).toBe(2);
});

test('switching, beginning anew and looking, all at once: nothing breaks and the last word stands', async () => {
  const shop = await testShop();
  await aProject(shop.shops.own);
  await aProject(shop.shops.own);
  const work = Array.from({ length: 60 }, (_, at) => {
    if (at % 10 === 3) return send(shop, '/shop/anew', {});
    if (at % 5 === 0) return at % 2 ? openOwn(shop) : openDemo(shop);
    return visit(shop, at % 2 ? '/' : '/search?q=Halvorsen');
  });
  const codes = (await Promise.all(work)).map((one) => one.statusCode);
  expect(new Set(codes)).toEqual(new Set([200, 303]));
  await openOwn(shop);
  expect(await machines(shop.shops)).toBe(2);
  await openDemo(shop);
  expect(await machines(shop.shops)).toBe(1);
});

test('a demo file thrown away while one’s own is open comes back full', async () => {
  const folder = emptyFolder();
  const first = await shopsIn(folder);
  await first.pick('demo');
  await first.pick('own');
  await first.close();
  for (const end of ['', '-wal', '-shm']) rmSync(path.join(folder, `demo.sqlite${end}`), { force: true });
  const second = await shopsIn(folder);
  await second.pick('demo');
  expect(await machines(second)).toBe(1);
  expect(await settings(second.own)).toEqual({ 'open shop': 'demo' });
  expect(readFileSync(path.join(folder, 'demo.sqlite')).subarray(0, 15).toString()).toBe('SQLite format 3');
});

test('the page of the two shops says “start” only where no machine is on record', async () => {
  const shop = await testShop();
  expect((await visit(shop, '/shop')).body).toContain('Start with your own machine');
  await aProject(shop.shops.own);
  const page = (await visit(shop, '/shop')).body;
  expect(page).not.toContain('Start with');
  expect(page).toMatch(/<a class="act main" href="\/">Your own shop<\/a>/);
});
