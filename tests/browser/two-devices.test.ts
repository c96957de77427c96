import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { launch } from './chromium.ts';
import { NO_4 } from './first-machine.ts';
import { handsAt } from './hands.ts';
import { follow, press, textIn, typeIn, whereTo } from './on-page.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';

const chromium = inject('chromium');

describe.skipIf(!chromium)('sent twice, and changed by two at once', () => {
  let shop: OpenShop;
  let browser: Browser;
  let bench: Page;
  let phone: Page;
  let set = '';

  beforeAll(async () => {
    shop = await listeningShop('own');
    // As people's browsers do: a page left with “back” in reach is kept as it was, its boxes and its mark with it.
    browser = await launch(chromium, { ignoreDefaultArgs: ['--disable-back-forward-cache'] });
    bench = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    phone = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();
    set = await handsAt(bench, shop.base).firstSet();
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });
  const rows = async (table: 'routing' | 'tool' | 'part') => (await shop.shops.own.selectFrom(table).select('id').execute()).length;

  it('a form sent once more after the back button acts once', async () => {
    await bench.goto(`${shop.base}/tools/new/cutter`);
    const form = bench.url();
    await typeIn(bench, NO_4);
    await press(bench, 'Put it on record');
    const where = bench.url();
    await bench.evaluate('history.back()');
    await vi.waitUntil(() => bench.url() === form);
    expect(await bench.inputValue('main [name="number"]')).toBe('4');
    await press(bench, 'Put it on record');
    expect(bench.url()).toBe(where);
    expect(await rows('tool')).toBe(1);
  });

  it('a button pressed twice in a hurry acts once, without JavaScript too', async () => {
    const plain = await browser.newPage({ javaScriptEnabled: false });
    await plain.goto(shop.base + set);
    await plain.locator('main button', { hasText: 'Open the routings' }).dblclick();
    await plain.waitForSelector('#wheels');
    await vi.waitUntil(async () => (await rows('routing')) > 0);
    await plain.goto(shop.base + set);
    expect(await rows('routing')).toBe(2);
    expect(await textIn(plain, '#wheels')).toContain('promised for the 22');
    await plain.close();
  });

  it('both versions of a wheel stand side by side, and what each wrote is kept', async () => {
    await bench.goto(shop.base + set);
    const part = shop.base + (await whereTo(bench, /^37 teeth$/));
    for (const page of [bench, phone]) {
      await page.goto(part);
      await follow(page, 'Change the wheel, its name or notes');
    }
    await typeIn(bench, { face: '0.800', notes: 'Measured at the bench.' });
    await press(bench, 'Save');
    await typeIn(phone, { face: '0.750', material: 'steel' });
    await press(phone, 'Save');
    const both = await phone.locator('fieldset.both').allTextContents();
    const of = (label: string) => both.find((text) => text.includes(label))?.replace(/\s+/g, ' ') ?? '';
    expect(of('Face')).toMatch(/As you typed it\s*0\.750.*As it stands now\s*0\.800/);
    await phone.locator('fieldset.both', { hasText: 'Notes' }).locator('label', { hasText: 'As it stands now' }).click();
    await press(phone, 'Keep what is chosen');
    await phone.goto(part);
    expect(await textIn(phone)).toContain('Measured at the bench.');
    await follow(phone, 'Change the wheel, its name or notes');
    expect(await phone.inputValue('[name="face"]')).toBe('0.750');
    expect(await phone.inputValue('[name="material"]')).toBe('steel');
    expect(await rows('part')).toBe(10);
  });
});
