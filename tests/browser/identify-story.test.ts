import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launch } from './chromium.ts';
import { follow, openFolds, press, textIn, typeIn } from './on-page.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';

const chromium = inject('chromium');

describe.skipIf(!chromium)('a gear of unknown pitch, on a phone without script', () => {
  let shop: OpenShop;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    shop = await listeningShop('demo');
    browser = await launch(chromium);
    page = await browser.newPage({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  it('is measured, identified and taken into its part, and put back as it stood', async () => {
    await page.goto(`${shop.base}/search?q=pitch+not+known`);
    await follow(page, 'S16-30T');
    expect(await textIn(page)).toContain('Pitch not known: identify it first.');

    await openFolds(page);
    await typeIn(page, { what: 'across roots', value: '1.978' }, '#reading');
    await press(page, 'Write it down');
    expect(await textIn(page, '#readings')).toContain('Across opposite roots');

    await follow(page, 'What is this gear?');
    expect(await page.inputValue('[name="rootRead"]')).toBe('1.9780');
    expect(await textIn(page)).toContain('The pitch is 14 DP');
    await press(page, 'Take this answer: 14 DP');
    const known = await textIn(page, 'body');
    expect(known).toMatch(/Taken: 14 DP, .*%/);
    expect(known).toContain('by measurement');
    expect(known).not.toContain('Pitch not known');

    await follow(page, 'Not so: what stood there before');
    expect(await textIn(page)).toContain('Nothing is saved yet');
    await press(page, 'Save');
    expect(await textIn(page)).toContain('Pitch not known: identify it first.');
    await follow(page, 'Print a blank measuring sheet');
    expect(await textIn(page)).toContain('S16-30T');
  });
});
