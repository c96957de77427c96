import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { to } from '../../server/addresses.ts';
import { shopMachines, toolDrawer } from '../server/sheets/first-story.ts';
import { anotherWheel, GEARS } from '../server/sheets/to-be-cut.ts';
import { launch } from './chromium.ts';
import { follow, press, readFigure, textIn, whereTo } from './on-page.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';
import { pagesPrinted, sidesOn } from './paper-sides.ts';

const chromium = inject('chromium');
type Drawn = { readonly name: string; readonly teeth: string; readonly x: number };

/** What a drawing says and where, read off it: every word with the middle of its place, from left to right. */
const WORDS = `[...document.querySelectorAll('figure.gears svg text')].map((one) => {
  const box = one.getBoundingClientRect();
  return { text: one.textContent.trim(), x: box.x + box.width / 2, y: box.y };
})`;
/** Bent arrows, by where they begin and where their head ends: over the top to the right is clockwise. From left to right. */
const ARROWS = `[...document.querySelectorAll('figure.gears svg path')].flatMap((one) => {
  const [bend, head] = one.getAttribute('d').split('M').slice(1);
  if (!head || (bend.match(/l/g) ?? []).length !== 12) return [];
  const [from, to] = [bend, head].map((d) => Number(/^-?[\\d.]+/.exec(d)?.[0]));
  return [{ x: (from + to) / 2, way: to > from ? 'clockwise' : 'anticlockwise' }];
}).sort((a, b) => a.x - b.x).map(({ way }) => way)`;

type Word = { readonly text: string; readonly x: number; readonly y: number };

/** Gears on the studs: the name of a shaft with the count of teeth that stands under it. */
async function gearsOn(page: Page): Promise<Drawn[]> {
  const words = (await page.evaluate(WORDS)) as Word[];
  const names = words.filter(({ text }) => /^(spindle|idler \d|stud|plate)$/.test(text));
  return names
    .map(({ text, x }) => ({
      name: text,
      x,
      teeth: words
        .filter((one) => /^\d+$/.test(one.text) && Math.abs(one.x - x) < 6)
        .map((one) => one.text)
        .join(),
    }))
    .sort((a, b) => a.x - b.x);
}

async function keepsToPaper(page: Page): Promise<void> {
  const sides = await sidesOn(page);
  for (const { over, tall, wide } of sides) {
    expect(over).toEqual([]);
    expect(tall).toBeLessThanOrEqual(255);
    expect(wide).toBeLessThanOrEqual(190.5);
  }
  for (const format of ['Letter', 'A4'] as const) expect(await pagesPrinted(page, format), format).toBe(sides.length);
}

describe.skipIf(!chromium)('a prime count from the part page to the sheet, and counted at the machine', () => {
  let shop: OpenShop;
  let browser: Browser;
  let page: Page;
  const at = { part: '', nick: '', teeth: '' };

  beforeAll(async () => {
    shop = await listeningShop('own');
    const db = shop.shops.own;
    await toolDrawer(db, { gears: GEARS, oneIdler: 'with', lash: [1, 12] });
    await shopMachines(db);
    const { part, operation } = await anotherWheel(db, 71);
    at.part = to.part(part.id);
    at.nick = to.operation(await operation('nick'));
    browser = await launch(chromium);
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  it('the part page says the setting, the gears and what a wrong idler would make', async () => {
    await page.goto(shop.base + at.part);
    const text = await textIn(page);
    expect(text).not.toContain('No circle on these plates');
    // story 4, derived there
    expect(await readFigure(page, 'Crank for one division')).toBe('10 spaces on 18');
    expect(await readFigure(page, 'If the plate turns the wrong way')).toBe('73');
    expect(await readFigure(page, 'If the plate is left locked')).toBe('72');
    expect(await readFigure(page, 'Proof: turns that all moves make')).toBe('40');
  });

  it('from there to a sheet that keeps to its paper, with the gears drawn on their studs', async () => {
    await page.goto(shop.base + (await whereTo(page, 'Nick all 71', '#routing')));
    await follow(page, 'Count the teeth');
    await follow(page, 'The index sheet on paper');
    await page.emulateMedia({ media: 'print' });
    await keepsToPaper(page);
    expect((await gearsOn(page)).map(({ name, teeth }) => `${name} ${teeth}`)).toEqual([
      'spindle 40',
      expect.stringMatching(/^idler 1 \d+$/),
      'plate 72',
    ]);
    // one idler between: spindle and plate turn alike
    expect(await page.evaluate(ARROWS)).toEqual(['clockwise', 'anticlockwise', 'clockwise']);
    const text = await textIn(page, 'body');
    expect(text).toContain('39 4/9 turns against the plate, and 5/9 of the plate: 40');
    expect(text).toContain('71 is right, 73 a wrong idler, 72 a locked plate');
    await page.emulateMedia({ media: 'screen' });
  });

  it('counts at the phone through a reload; pressed twice in a hurry it is one tooth', async () => {
    const phone = await (await browser.newContext({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false })).newPage();
    await phone.goto(shop.base + at.nick);
    await follow(phone, 'Count the teeth');
    at.teeth = phone.url();
    await press(phone, 'Tooth 1 is nicked');
    // derived: from 10 on, by 18: 10, 2
    expect(await phone.textContent('.one-number')).toContain('hole 10');
    await phone.locator('main button', { hasText: 'Tooth 2 is nicked' }).dblclick();
    const heading = (): Promise<string | null> => phone.textContent('h2').catch(() => '');
    await vi.waitUntil(async () => (await heading()) === 'Tooth 3', { timeout: 10_000 });
    await phone.waitForLoadState();
    expect(await phone.textContent('.one-number')).toContain('hole 2');
    expect(await ticks()).toBe(2);
    await phone.reload();
    expect(await phone.textContent('h2')).toBe('Tooth 3');
    expect(await phone.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(360);
    await phone.context().close();
  });

  it('a second device goes on where the first left off, and the first’s old page counts no tooth twice', async () => {
    const [first, second] = [await browser.newPage(), await (await browser.newContext()).newPage()];
    await first.goto(at.teeth);
    await second.goto(at.teeth);
    expect(await second.textContent('h2')).toBe('Tooth 3');
    await press(second, 'Tooth 3 is nicked');
    await press(first, 'Tooth 3 is nicked');
    expect(await ticks()).toBe(3);
    expect(await first.textContent('h2')).toBe('Tooth 4');
    await press(first, 'Back one: Tooth 3 is not nicked');
    await press(second, 'Tooth 4 is nicked');
    expect(await textIn(second, '.notice')).toContain('Nothing was counted');
    expect(await ticks()).toBe(2);
    await first.close();
    await second.context().close();
  });

  it.each([
    [127, 'with'],
    [127, null],
    [173, null],
    [71, null],
  ] as const)(
    '%i, one idler turns the plate %s: the sheet keeps to its paper with four gears and untried idlers too',
    async (teeth, oneIdler) => {
      const db = shop.shops.own;
      await db.updateTable('head').set({ one_idler: oneIdler }).execute();
      const { operation } = await anotherWheel(db, teeth);
      await page.goto(shop.base + to.indexSheet(await operation('nick')));
      await page.emulateMedia({ media: 'print' });
      await keepsToPaper(page);
      const names = (await gearsOn(page)).map(({ name }) => name);
      expect(names).toEqual(teeth === 71 ? ['spindle', 'idler 1', 'plate'] : expect.arrayContaining(['spindle', 'stud', 'plate']));
    },
  );

  it.each([24, 71, 181])('%i by the dial of a table: line, vernier and what it is off by keep to the paper too', async (teeth) => {
    const db = shop.shops.own;
    await db.updateTable('head').set({ turns: 90, gears: '[]', dial_lines: 240, dial_vernier: 6, dial_near: 1, dial_only: 1 }).execute();
    const { operation } = await anotherWheel(db, teeth);
    await page.goto(shop.base + to.indexSheet(await operation('nick')));
    expect(await textIn(page, 'body')).toContain('Line · vernier');
    await page.emulateMedia({ media: 'print' });
    await keepsToPaper(page);
  });

  const ticks = async (): Promise<number> => (await shop.shops.own.selectFrom('tick').select('tooth').execute()).length;
});
