import { afterEach, beforeEach, expect, it } from 'vitest';
import { send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { problemAt, rowsOf, sectionOf, textOf, typedIn } from '../machines/read-page.ts';
import { SET, storyOne } from '../machines/story-one.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

/** The form as it stands, with its rev. */
const formOf = async (set: string): Promise<Record<string, string>> => ({ ...SET, rev: typedIn(await bodyOf(`${set}/edit`), 'rev') });
const bodyOf = async (url: string): Promise<string> => (await visit(shop, url)).body;
const QUADRANT = { between: '6', slots: '1.4 to 5.5; 1.8 to 4.7 at 50', swing: '-80 to 60', wheelPitch: '8 DP', lastTurns: 'either' };

it('has no chart until one is typed, and asks for it', async () => {
  const { set } = await storyOne(shop);
  const html = await bodyOf(set);
  expect(html).not.toContain('id="chart"');
  expect(textOf(html)).toContain('Type the machine’s chart of threads or feeds, and its quadrant');
});

it('marks each line of the chart exact, near or lost with the wheels that lie there, and gives the order of making', async () => {
  const { set } = await storyOne(shop);
  const form = await formOf(set);
  const saved = await send(shop, set, { ...form, chart: '4 TPI, 7.4 TPI, 22/19 in, 28/25 in, 11 TPI', screw: '1 in', ...QUADRANT });
  expect(saved.statusCode).toBe(303);
  const html = await bodyOf(set);
  const rows = rowsOf(sectionOf(html, 'chart'));
  // 22 ÷ 19 and 28 ÷ 25 want the missing wheels: derived, by hand.
  expect(rows.find(([wanted]) => wanted === '22/19 in')?.[1]).not.toBe('exact');
  expect(rows.find(([wanted]) => wanted === '28/25 in')?.[1]).not.toBe('exact');
  expect(
    rows
      .filter(([wheel]) => wheel === '22' || wheel === '28')
      .flat()
      .join(' '),
  ).toMatch(/22\/19 in.*28\/25 in/);
  expect(sectionOf(html, 'chart')).toMatch(/href="\/sums\/change-gears\?[^"]*thread=4(?:\+|%20)TPI[^"]*between=6/);
  const link = /href="(\/sums\/change-gears\?[^"]*)"/.exec(sectionOf(html, 'chart'))?.[1]?.replaceAll('&amp;', '&') ?? '';
  expect((await visit(shop, link)).statusCode).toBe(200);
  expect(textOf(sectionOf(html, 'chart'))).toContain('The 22 that is missing');
  const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(ids.filter((id, n) => ids.indexOf(id) !== n)).toEqual([]);
  const again = await bodyOf(`${set}/edit`);
  expect(again).toContain('4 TPI, 7.4 TPI, 22/19 in, 28/25 in, 11 TPI');
  expect([typedIn(again, 'screw'), typedIn(again, 'slots')]).toEqual(['1 in', QUADRANT.slots]);
});

it('refuses a chart without its screw, half a quadrant, and what is no thread, each beside its box', async () => {
  const { set } = await storyOne(shop);
  const form = await formOf(set);
  const without = await send(shop, set, { ...form, chart: '4 TPI', screw: '' });
  expect(without.statusCode).toBe(422);
  expect(problemAt(without.body, 'screw')).toMatch(/A chart wants the screw/);
  const half = await send(shop, set, { ...form, between: '6' });
  expect(half.statusCode).toBe(422);
  expect(problemAt(half.body, 'slots')).toMatch(/Whether a train stands needs/);
  const text = await send(shop, set, { ...form, chart: '4 TPI, nonsense', screw: '4 TPI' });
  expect(text.statusCode).toBe(422);
  expect(problemAt(text.body, 'chart')).toMatch(/nonsense/);
});

it('says which missing wheels its order of making leaves out, where more than ten are missing', async () => {
  const { set } = await storyOne(shop, { ...SET, belongs: '19, 22-34 step 2, 41-61 step 4', drawer: '19' });
  const form = { ...SET, belongs: '', drawer: '', rev: typedIn(await bodyOf(`${set}/edit`), 'rev') };
  expect((await send(shop, set, { ...form, chart: '4 TPI', screw: '1 in' })).statusCode).toBe(303);
  expect(textOf(sectionOf(await bodyOf(set), 'chart'))).toContain('Of 13 missing wheels the first 10 are weighed; not 53, 57, 61.');
});
