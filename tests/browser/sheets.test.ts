import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { to } from '../../server/addresses.ts';
import { type FirstStory, firstStory } from '../server/sheets/first-story.ts';
import { launch } from './chromium.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';

const chromium = inject('chromium');
/** Letter less its margins of 10 mm: the smaller of the two papers. */
const TALLEST_MM = 259.4;
const WIDEST_MM = 195.9;
const PAGES_IN_PDF = /\/Type\s*\/Page\b(?!s)/g;

/** For each side of paper: its height and width in millimetres, and what of it reaches over the edge. */
const MEASURE = `[...document.querySelectorAll('section.paper')].map((side) => {
  const box = side.getBoundingClientRect();
  const over = [...side.querySelectorAll('*')].filter((one) => one.getClientRects().length > 0 && one.checkVisibility() && !['title', 'desc'].includes(one.tagName)).filter((one) => { const b = one.getBoundingClientRect(); return b.right > box.right + 1 || b.bottom > box.bottom + 1 || b.left < box.left - 1; });
  const block = side.querySelector('.paper-block').getBoundingClientRect();
  return { tall: box.height / 96 * 25.4, wide: box.width / 96 * 25.4, over: over.map((one) => one.outerHTML.slice(0, 90)), blockInCorner: Math.abs(block.right - box.right) < 2 && Math.abs(block.bottom - box.bottom) < 2 };
})`;
type Side = { tall: number; wide: number; over: string[]; blockInCorner: boolean };

describe.skipIf(!chromium)('sheets on paper', () => {
  let shop: OpenShop;
  let story: FirstStory;
  let browser: Browser;
  let page: Page;
  let sheets: readonly string[] = [];

  beforeAll(async () => {
    shop = await listeningShop('own');
    story = await firstStory(shop.shops.own);
    const [one, two] = [await story.operation(22, 'rough'), await story.operation(28, 'rough')];
    sheets = [
      ...[to.partSheet(story.parts[22]), to.partSheet(story.parts[28]), to.indexSheet(one.id), to.setUpSheet([one.id, two.id])],
      ...[to.partMeasuringSheet(story.parts[22]), to.itemMeasuringSheet(1), to.measuringSheet()],
    ];
    browser = await launch(chromium);
    page = await browser.newPage();
    await page.emulateMedia({ media: 'print' });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  it('every side is one page of Letter and of A4; nothing reaches over an edge; the title block is bottom right', async () => {
    for (const address of sheets) {
      await page.goto(shop.base + address);
      const sides = (await page.evaluate(MEASURE)) as Side[];
      for (const side of sides) {
        expect(side.tall, address).toBeLessThan(TALLEST_MM);
        expect(side.wide, address).toBeLessThan(WIDEST_MM);
        expect(side.over, address).toEqual([]);
        expect(side.blockInCorner, address).toBe(true);
      }
      for (const format of ['A4', 'Letter'] as const) {
        const pages = (await page.pdf({ format })).toString('latin1').match(PAGES_IN_PDF)?.length;
        expect(pages, `${address} ${format}`).toBe(sides.length);
      }
    }
  });

  it('a drawing is as wide on paper as its scale says', async () => {
    await page.goto(shop.base + to.partSheet(story.parts[22]));
    const scale = await page.textContent('.glance figcaption b');
    // derived: the spare of 31 teeth is 33/8 in over its tips
    const wanted = (33 / 8) * 25.4 * (scale === 'Scale 1:1.' ? 1 : 0.5);
    const wide = Number(
      await page.evaluate(`document.querySelector('.glance svg .k-old-outline').getBoundingClientRect().width / 96 * 25.4`),
    );
    expect(Math.abs(wide - wanted)).toBeLessThan(1);
  });

  it('the page at the mill counts with a finger, survives a reload, and a second device goes on from there', async () => {
    const rough = await story.operation(28, 'rough');
    const phone = await browser.newPage({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false });
    await phone.goto(shop.base + to.teeth(rough.id));
    await phone.click('text=Tooth 1 is cut');
    await phone.click('text=Tooth 2 is cut');
    await phone.reload();
    const other = await browser.newPage({ viewport: { width: 360, height: 740 } });
    await other.goto(shop.base + to.teeth(rough.id));
    expect(await other.textContent('h2')).toBe('Tooth 3');
    await other.dblclick('text=Tooth 3 is cut');
    await other.waitForSelector('text=Tooth 4 is cut');
    await phone.click('text=Tooth 3 is cut');
    expect(await phone.textContent('h2')).toBe('Tooth 4');
    await phone.close();
    await other.close();
  });
});
