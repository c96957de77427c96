import { afterAll, beforeAll, expect, test } from 'vitest';
import { rowOf, saveRow } from '../../../db/changes.ts';
import { typeFigure } from '../../../db/figures.ts';
import { markDone, operationsOf, strikeOut } from '../../../db/operations.ts';
import { addTool } from '../../../db/tools.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import { inches } from '../../../lib/values/length.ts';
import { NOW, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { type FirstStory, firstStory, formCutter } from './first-story.ts';
import { readQr } from './read-qr.ts';
import { figuresOn, linesOn, operationTitles, plain, qrsOn } from './read-sheet.ts';

const ADDRESS = 'http://shop.lan:4870';
let shop: TestShop;
let story: FirstStory;
const sheet = async (teeth: 22 | 28): Promise<string> => (await visit(shop, `/parts/${story.parts[teeth]}/sheet`)).body;

beforeAll(async () => {
  shop = await shopForTests({ config: { printedAddress: ADDRESS } });
  story = await firstStory(shop.shops.own);
});
afterAll(() => shop.close());

// The first acceptance story, derived: (N + 2)/8, 2.157/8, 40/N, W = cos a ((k − 0.5) π + N inv a)/P. Depth: whole depth and 0.001 in of paper.
const STORY = {
  22: [
    ['blank-outside', 'Outside diameter', '3.0000 in'],
    ['plate-crank', 'Crank for one division', '1 turn + 27 spaces on 33'],
    ['plate-sector', 'Sector, in spaces', '27 spaces = 28 holes'],
    ['touch-depth', 'Depth to dial from touching', '0.2706 in'],
    ['first-span-span', 'Span over 2 teeth', '0.5850 in'],
    ['first-span-feedWhenLarge', 'Still to feed when the span reads 0.005 in large', '0.0089 in'],
  ],
  28: [
    ['blank-outside', 'Outside diameter', '3.7500 in'],
    ['plate-crank', 'Crank for one division', '1 turn + 9 spaces on 21'],
    ['plate-sector', 'Sector, in spaces', '9 spaces = 10 holes'],
    ['touch-depth', 'Depth to dial from touching', '0.2706 in'],
    ['first-span-span', 'Span over 3 teeth', '0.9693 in'],
    ['first-span-feedWhenLarge', 'Still to feed when the span reads 0.005 in large', '0.0076 in'],
  ],
} as const;

test.each([22, 28] as const)('the %i: the story’s numbers stand under their labels', async (teeth) => {
  const found = figuresOn(await sheet(teeth));
  for (const [key, label, size] of STORY[teeth]) expect(found.get(key), key).toMatchObject({ label, size });
  const root = found.get('sound-oldRoot');
  expect(root).toMatchObject({ label: 'Old root, worked out', size: 'measure' });
  expect(root?.working).toContain(`worked out: ${teeth === 22 ? '3.5858' : '3.9608'} in;`);
});

test('turned off a side, and the part of it through the old teeth, stand small', async () => {
  expect(plain(await sheet(22))).toMatch(/To turn off, a side 0\.5625 in .* Of it over the gaps of the old teeth 0\.2696 in/);
  expect(plain(await sheet(28))).toMatch(/To turn off, a side 0\.3750 in/);
});

test.each([22, 28] as const)('the %i: every large figure is the one that lib gave, under the name that lib gave it', async (teeth) => {
  const found = figuresOn(await sheet(teeth));
  const stored = (await operationsOf(shop.shops.own, story.routings[teeth])).flatMap(({ key, figures }) =>
    figures.map(({ key: figure, figure: of }) => [`${key}-${figure}`, of] as const),
  );
  const compared = stored.filter(([key]) => found.has(key));
  expect(compared.length).toBe(found.size);
  expect(found.size).toBeGreaterThan(25);
  for (const [key, figure] of compared) {
    const { text, unit } = printFigure(figure);
    expect(found.get(key)?.label, key).toBe(figure.name);
    const stands = key === 'sound-oldRoot' ? found.get(key)?.working : found.get(key)?.size;
    expect(stands?.replace('at most ', ''), key).toContain(unit ? `${text} ${unit}` : text);
  }
});

test('the working has the numbers in place of the symbols', async () => {
  const found = figuresOn(await sheet(22));
  expect(found.get('blank-outside')?.working).toBe('2.9975 to 3.0000 in Do = (22 + 2) ÷ 8');
  expect(found.get('first-span-span')?.working).toContain('W = cos(14.50°) × ((2 − 0.5) × π + 22 × inv(14.50°)) ÷ 8');
  for (const [key, { working }] of found) expect(working, key).not.toMatch(/\b(Nt|Do|Dr) [×÷+−]/);
});

test('the summary says the same as the rows, spaces and holes in one breath', async () => {
  const summary = linesOn(await sheet(22), 'summary');
  expect(summary.get('blank-outside')).toEqual({ label: 'Outside diameter', text: '3.0000 in' });
  expect(summary.get('plate-sector')?.text).toBe('27 spaces = 28 holes');
  expect(summary.get('cutter')?.text).toBe('No. 5, 8 DP, 14½°, for 22 teeth: lacking');
  expect(linesOn(await sheet(28), 'summary').get('cutter')?.text).toBe('No. 4, 8 DP, 14½°, for 28 teeth');
});

test('tools are ticked or lacking', async () => {
  const text = plain(await sheet(28));
  expect(text).toContain('lacking: mandrel for a 6-spline bore of 1.2500 in');
  expect(text).toContain('✓ No. 4, 8 DP');
  expect(text).toContain('✓ Dividing head');
});

test('what is measured has room to write, with its limits', async () => {
  const found = figuresOn(await sheet(22));
  for (const key of ['blank-outside', 'blank-runOut', 'first-span-span', 'measure-pinRunOut'])
    expect(found.get(key)?.html, key).toContain('class="write"');
  expect(found.get('blank-runOut')?.size).toBe('at most 0.0010 in');
});

test('every side carries the QR code of the part, its mark in letters, and which side it is', async () => {
  const html = await sheet(22);
  const codes = qrsOn(html).map(readQr);
  const sides = html.match(/<section class="paper/g)?.length ?? 0;
  expect(codes).toEqual(Array.from({ length: sides }, () => `${ADDRESS}/parts/${story.parts[22]}`));
  expect(html.match(/<b>H12-22T<\/b>/g)).toHaveLength(sides);
  for (let side = 1; side <= sides; side++) expect(plain(html)).toContain(`Sheet ${side} of ${sides}`);
});

test('no money and no names: what is shown to anyone on the network', async () => {
  const db = shop.shops.own;
  await addTool(db, { ...formCutter('6', 17, 20), owner: 'Ottoline' });
  const edges = await story.operation(28, 'edges');
  await saveRow(db, 'operation', edges.id, edges.rev, { notes: 'Ask Ottoline for the stone' });
  const url = `/parts/${story.parts[28]}/sheet`;
  const stranger = await shop.app.inject({ method: 'GET', url, headers: { host: 'localhost' }, remoteAddress: '192.168.1.50' });
  expect(stranger.statusCode).toBe(200);
  expect(stranger.body).not.toContain('Ottoline');
  expect((await visit(shop, url)).body).toContain('Ask Ottoline for the stone');
});

test('a part without a routing has its wheel and its own figures', async () => {
  const parts = await shop.shops.own
    .selectFrom('part')
    .select(['id'])
    .where('item_id', 'is not', null)
    .orderBy('id')
    .limit(1)
    .executeTakeFirstOrThrow();
  const { statusCode, body } = await visit(shop, `/parts/${parts.id}/sheet`);
  expect(statusCode).toBe(200);
  // derived: 19 teeth, 8 DP: 21/8
  expect(linesOn(body, 'summary').get('outside')?.text).toBe('2.6250 in');
  expect(body).toContain('No routing is open');
});

test('a part that does not exist is said not to', async () => {
  for (const id of ['999', '0', 'x', '1e9']) expect((await visit(shop, `/parts/${id}/sheet`)).statusCode).toBe(404);
});

test('struck out is left out; done is ticked with what was measured; typed is underlined; changed since shows was and now', async () => {
  const own = await shopForTests();
  const db = own.shops.own;
  const two = await firstStory(db);
  const chamfer = await two.operation(22, 'chamfer');
  await strikeOut(db, chamfer.id, chamfer.rev, NOW);
  const sound = await two.operation(22, 'sound');
  const value = { length: inches(3.58) };
  const reading = { what: 'old root', value, read_on: NOW, instrument: 'micrometer' };
  await markDone(db, sound.id, sound.rev, { on: NOW, minutes: 20, measured: [{ figure: 'oldRoot', reading }] });
  const solid = await two.operation(22, 'solid');
  await typeFigure(db, solid.id, solid.rev, 'roughTo', { length: inches(3.04) });
  await addTool(db, { ...formCutter('5', 21, 25), details: { ...formCutter('5', 21, 25).details, stampedDepth: inches(0.271) } });
  const html = (await visit(own, `/parts/${two.parts[22]}/sheet`)).body;
  expect(operationTitles(html)).not.toContain(chamfer.title);
  expect(operationTitles(html)).toContain(sound.title);
  const found = figuresOn(html);
  expect(found.get('sound-oldRoot')?.measured).toBe('3.5800 in');
  expect(found.get('sound-oldRoot')?.html).toContain('number is-measured');
  expect(html).toContain(`<span class="tick is-ticked">✓</span> <b>${NOW.slice(0, 10)}</b>`);
  expect(found.get('solid-roughTo')?.html).toContain('<b class="number is-typed">3.0400</b>');
  expect(found.get('solid-roughTo')?.size).toBe('3.0400 in typed');
  expect(found.get('solid-roughTo')?.working).toContain('worked out: 3.0300 in');
  // stamped 0.271 in, and 0.001 in of paper
  expect(found.get('touch-depth')?.html).toMatch(/<s>0\.2706\sin<\/s> →/);
  expect(found.get('touch-depth')?.size).toContain('0.2720 in');
  await own.close();
});

test('rows of the database are as they were: a sheet writes nothing', async () => {
  const row = () => rowOf(shop.shops.own, 'routing', story.routings[22]);
  const before = await row();
  await sheet(22);
  expect(await row()).toEqual(before);
});
