import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { to } from '../../server/addresses.ts';
import { type FirstStory, firstStory } from '../server/sheets/first-story.ts';
import { launch } from './chromium.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';
import { pagesPrinted, sidesOn } from './paper-sides.ts';

const chromium = inject('chromium');

describe.skipIf(!chromium)('an index sheet keeps to its side of paper, however many the teeth', () => {
  let shop: OpenShop;
  let story: FirstStory;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    shop = await listeningShop('own');
    story = await firstStory(shop.shops.own);
    browser = await launch(chromium);
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.emulateMedia({ media: 'print' });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  async function withTeeth(teeth: number): Promise<void> {
    const part = await shop.shops.own.selectFrom('part').select('gear_id').where('id', '=', story.parts[28]).executeTakeFirstOrThrow();
    await shop.shops.own
      .updateTable('gear')
      .set({ teeth })
      .where('id', '=', part.gear_id ?? 0)
      .execute();
  }

  it.each([28, 45, 46, 59, 100, 180])('%i teeth', async (teeth) => {
    await withTeeth(teeth);
    const [nick, one, two] = [await story.operation(28, 'nick'), await story.operation(22, 'rough'), await story.operation(28, 'rough')];
    for (const address of [to.indexSheet(nick.id), to.setUpSheet([one.id, two.id])]) {
      await page.goto(shop.base + address);
      const sides = await sidesOn(page);
      for (const side of sides) {
        expect(side.over, address).toEqual([]);
        expect(side.wide, address).toBeLessThanOrEqual(190.5);
        expect(side.tall, address).toBeLessThanOrEqual(255);
      }
      for (const format of ['Letter', 'A4'] as const) expect(await pagesPrinted(page, format), `${address} ${format}`).toBe(sides.length);
    }
  });
});
