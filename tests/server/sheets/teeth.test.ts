import { afterEach, beforeEach, expect, test } from 'vitest';
import { rowOf } from '../../../db/changes.ts';
import { markDone, markUndone } from '../../../db/operations.ts';
import { closeRouting } from '../../../db/routings.ts';
import { ticksOf } from '../../../db/ticks.ts';
import { NOW, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { type FirstStory, firstStory } from './first-story.ts';
import { plain, teethOn } from './read-sheet.ts';

let shop: TestShop;
let story: FirstStory;
beforeEach(async () => {
  shop = await shopForTests();
  story = await firstStory(shop.shops.own);
});
afterEach(() => shop.close());

const idOf = async (key: string): Promise<number> => (await story.operation(22, key)).id;
const page = async (id: number): Promise<string> => (await visit(shop, `/operations/${id}/teeth`)).body;
const press = (id: number, tooth: number | string) => send(shop, `/operations/${id}/teeth/cut`, { tooth: String(tooth) });
const back = (id: number, tooth: number) => send(shop, `/operations/${id}/teeth/back`, { tooth: String(tooth) });
const ticks = (id: number): Promise<number[]> => ticksOf(shop.shops.own, id);

/** The button's words and the tooth that it sends. */
function button(html: string): { says: string; tooth: string } {
  const found = /action="[^"]*\/teeth\/cut"[^>]*><input type="hidden" name="tooth" value="(\d+)"><button[^>]*>([^<]*)</.exec(html);
  return { says: found?.[2] ?? '', tooth: found?.[1] ?? '' };
}

async function pressAll(id: number, marks: number): Promise<void> {
  for (let mark = 1; mark <= marks; mark++) await press(id, mark);
}

test('the button names the tooth that it marks, and the hole to land in stands large', async () => {
  const rough = await idOf('rough');
  expect(button(await page(rough))).toEqual({ says: 'Tooth 1 is cut', tooth: '1' });
  await pressAll(rough, 6);
  const html = await page(rough);
  expect(button(html)).toEqual({ says: 'Tooth 7 is cut', tooth: '7' });
  // derived: six moves of 27 on 33: 162 = 4 × 33 + 30
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('1 turn, hole 30');
  expect(plain(html)).toContain('Crank 1 turn + 27 spaces on 33 from hole 3');
  expect(plain(html)).toContain('6 of 44 done');
  expect(plain(html)).toContain('Nick comes first: 0 of 23 done');
});

test('a double tap, a resend and a stale page cost no tooth', async () => {
  const rough = await idOf('rough');
  await press(rough, 1);
  await Promise.all([press(rough, 2), press(rough, 2), press(rough, 2)]);
  await press(rough, 1);
  expect(await ticks(rough)).toEqual([1, 2]);
});

test('only the next tooth is counted; another is not, and that is said', async () => {
  const rough = await idOf('rough');
  await press(rough, 1);
  const answer = await press(rough, 5);
  expect(answer.statusCode).toBe(303);
  expect(decodeURIComponent(decodeURIComponent(String(answer.headers['set-cookie'])))).toContain('Nothing was counted');
  for (const nonsense of ['0', '-1', 'x', '1e9', '']) await press(rough, nonsense);
  expect(await ticks(rough)).toEqual([1]);
});

test('back one takes the last back, once', async () => {
  const rough = await idOf('rough');
  await pressAll(rough, 3);
  expect(await page(rough)).toContain('Back one: Tooth 3 is not cut');
  await back(rough, 3);
  await back(rough, 3);
  expect(await ticks(rough)).toEqual([1, 2]);
  await back(rough, 1);
  expect(await ticks(rough)).toEqual([1, 2]);
  expect(button(await page(rough)).says).toBe('Tooth 3 is cut');
});

test('nicks: all and one more, and the last must fall in the first', async () => {
  const nick = await idOf('nick');
  await pressAll(nick, 22);
  const html = await page(nick);
  expect(button(html)).toEqual({ says: 'Tooth 1 once more is nicked', tooth: '23' });
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('1 turn, hole 0');
  expect(plain(html)).toContain('It must fall in nick 1');
  await press(nick, 23);
  await press(nick, 24);
  expect(await ticks(nick)).toHaveLength(23);
  const done = await page(nick);
  expect(button(done).says).toBe('');
  expect(done).toContain(`href="/operations/${await idOf('rough')}/teeth" rel="next">Rough →`);
});

test('two rounds of roughing, then the finish: each pass counts its own', async () => {
  const [rough, finish] = [await idOf('rough'), await idOf('finish')];
  await pressAll(rough, 22);
  const html = await page(rough);
  expect(plain(html)).toContain('round 2 of 2');
  expect(button(html)).toEqual({ says: 'Tooth 1 is cut', tooth: '23' });
  expect(/<b class="number">([^<]*)<\/b>/.exec(html)?.[1]).toBe('1 turn, hole 0');
  await press(finish, 1);
  expect(await ticks(finish)).toEqual([1]);
  expect(plain(await page(finish))).toMatch(/Nick: 0 of 23 Rough: 22 of 44 Finish: 1 of 22/);
});

test('what was counted at the mill is ticked on the printed index sheet', async () => {
  const nick = await idOf('nick');
  await pressAll(nick, 5);
  const html = (await visit(shop, `/operations/${nick}/index-sheet`)).body;
  expect(html.match(/is-ticked" data-pass="nick"/g)).toHaveLength(5);
  expect(teethOn(html)).toHaveLength(23);
});

test('a device that may only look has no buttons, and its presses are refused', async () => {
  const rough = await idOf('rough');
  const far = { host: 'localhost', origin: 'http://localhost', 'content-type': 'application/x-www-form-urlencoded' };
  const remoteAddress = '192.168.1.50';
  const seen = await shop.app.inject({ method: 'GET', url: `/operations/${rough}/teeth`, headers: far, remoteAddress });
  expect(seen.statusCode).toBe(200);
  expect(seen.body).not.toContain('<button');
  const sent = await shop.app.inject({
    method: 'POST',
    url: `/operations/${rough}/teeth/cut`,
    headers: far,
    remoteAddress,
    payload: 'tooth=1',
  });
  expect(sent.statusCode).toBe(403);
  expect(await ticks(rough)).toEqual([]);
});

test('an operation that is done has nothing to press; one that goes round no teeth is refused in words', async () => {
  const rough = await idOf('rough');
  await shop.shops.own.updateTable('operation').set({ done_on: NOW }).where('id', '=', rough).execute();
  expect(button(await page(rough)).says).toBe('');
  const edges = await visit(shop, `/operations/${await idOf('edges')}/teeth`);
  expect(edges.statusCode).toBe(422);
  expect(plain(edges.body)).toContain('does not go round the teeth');
  expect((await visit(shop, '/operations/99999/teeth')).statusCode).toBe(404);
});

test('a count that is done with stays as it is: neither pressed on nor taken back, until it is said to be not done after all', async () => {
  const rough = await idOf('rough');
  await pressAll(rough, 3);
  const { rev, routing_id } = await rowOf(shop.shops.own, 'operation', rough);
  await markDone(shop.shops.own, rough, rev, { on: NOW, minutes: null, measured: [] });
  for (const refused of [await press(rough, 4), await back(rough, 3)]) {
    expect(refused.statusCode).toBe(422);
    expect(plain(refused.body)).toContain('Its count of teeth stays as it is.');
  }
  expect(await ticks(rough)).toEqual([1, 2, 3]);
  await markUndone(shop.shops.own, rough, rev + 1);
  await press(rough, 4);
  expect(await ticks(rough)).toEqual([1, 2, 3, 4]);
  await closeRouting(shop.shops.own, routing_id, (await rowOf(shop.shops.own, 'routing', routing_id)).rev, NOW);
  for (const refused of [await press(rough, 5), await back(rough, 4)]) {
    expect(refused.statusCode).toBe(422);
    expect(plain(refused.body)).toContain('was closed on');
  }
  expect(await ticks(rough)).toEqual([1, 2, 3, 4]);
});
