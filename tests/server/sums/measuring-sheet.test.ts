import { expect, it, onTestFinished } from 'vitest';
import { addAssembly } from '../../../db/assemblies.ts';
import { addItem } from '../../../db/items.ts';
import { addPart } from '../../../db/parts.ts';
import { aProject, halvorsenWheel, place, stock, wheel } from '../../db/bench.ts';
import { ask, LAN_PEER, shopForTests, visit } from '../app-for-tests.ts';
import { readQr } from '../sheets/read-qr.ts';

async function aShop() {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { db } = shop.shops.now();
  const project = await aProject(db);
  const { id: assembly } = await addAssembly(db, { project_id: project.id, within_id: null, name: 'head', serial: '', notes: '' });
  const { teeth, face, bore, body } = halvorsenWheel(30);
  const part = await addPart(db, {
    ...place(project.id, assembly, null, null, 'feed wheel'),
    gear: { teeth, face, bore, body, pitch: null },
  });
  const other = await addPart(db, place(project.id, assembly, null, null, 'guard'));
  const item = await addItem(db, wheel(halvorsenWheel(22), null));
  const bar = await addItem(db, stock(null));
  return { shop, part, other, item, bar, get: (url: string) => visit(shop, url) };
}

const rowsOf = (html: string): string[] =>
  [...html.matchAll(/<tr><th scope="row">([^<]*)<\/th><td><b>([^<]*)<\/b>/g)].map(([, letter = '', what = '']) =>
    `${letter} ${what}`.trim(),
  );

const LETTERS = [
  ...['– Teeth', 'A Outside diameter', 'B Root diameter', 'C Depth of a space'],
  ...['D Span over 3 teeth', 'E Span over 4 teeth', 'F Over two pins', 'G Centre distance', 'H Lean of a print'],
];

it('of a part says the count, over how many teeth to span, its mark and where its QR code leads', async () => {
  const { get, part } = await aShop();
  const sheet = await get(`/parts/${part.id}/measuring-sheet`);
  expect(sheet.statusCode).toBe(200);
  expect(rowsOf(sheet.body)).toEqual(LETTERS);
  expect(sheet.body).toContain('30 by our count');
  expect(sheet.body).toContain(`<b>${part.mark}</b><small>http`);
  expect(sheet.body).toMatch(new RegExp(`/parts/${part.id}</small>`));
  const [, qr = ''] = /<div class="mark">(<svg[\s\S]*?<\/svg>)/.exec(sheet.body) ?? [];
  expect(readQr(qr)).toMatch(new RegExp(`^http.*/parts/${part.id}$`));
  expect(sheet.body).toContain('Please return to');
  for (const letter of 'ABCDEFGH') expect(sheet.body, letter).toMatch(new RegExp(`<text[^>]*>${letter}</text>`));
});

it('of a thing in the drawer likewise; a part or thing without teeth has none', async () => {
  const { get, item, other, bar } = await aShop();
  const sheet = await get(`/drawer/${item.id}/measuring-sheet`);
  // 22 teeth at 14½°: 22 × 14.5 ÷ 180 + ½ = 2.3, so over 2 and over 3
  expect(rowsOf(sheet.body)).toContain('D Span over 2 teeth');
  expect(sheet.body).toMatch(new RegExp(`/drawer/${item.id}</small>`));
  expect((await get(`/parts/${other.id}/measuring-sheet`)).statusCode).toBe(404);
  expect((await get(`/drawer/${bar.id}/measuring-sheet`)).statusCode).toBe(404);
});

it('for nobody’s wheel it has neither mark nor QR code, and says how to find the teeth to span; anyone may print it', async () => {
  const { get, shop } = await aShop();
  const blank = await get('/sums/unknown-gear/measuring-sheet');
  expect(rowsOf(blank.body)).toContain('D Span over some teeth');
  expect(blank.body).toContain('teeth ÷ 12, rounded up');
  expect(blank.body).not.toContain('<small>http');
  expect(rowsOf((await get('/sums/unknown-gear/measuring-sheet?teeth=30')).body)).toEqual(LETTERS);
  for (const teeth of ['3', '99999', '-4', 'x'])
    expect((await get(`/sums/unknown-gear/measuring-sheet?teeth=${teeth}`)).body).toContain('Count twice');
  expect((await ask(shop, '/sums/unknown-gear/measuring-sheet', { peer: LAN_PEER })).statusCode).toBe(200);
  expect((await get('/sums/unknown-gear')).body).toContain('href="/sums/unknown-gear/measuring-sheet');
});
