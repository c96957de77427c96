import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, inject } from 'vitest';
import { launch } from './chromium.ts';
import { type Hands, handsAt } from './hands.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';
import { making } from './story-made.ts';
import { planning } from './story-planned.ts';

const chromium = inject('chromium');

describe.skipIf(!chromium)('a drawer of wheels, two to make, one set-up: from an empty shop to the made record', () => {
  let shop: OpenShop;
  let browser: Browser;
  let page: Page;
  let hands: Hands;
  const errors: string[] = [];

  beforeAll(async () => {
    shop = await listeningShop('own');
    browser = await launch(chromium);
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.on('console', (message) => errors.push(`${page.url()}: ${message.text()}`));
    page.on('pageerror', (error) => errors.push(`${page.url()}: ${error.message}`));
    page.on('dialog', (dialog) => void dialog.accept());
    hands = handsAt(page, shop.base);
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  const story = { page: () => page, base: () => shop.base, hands: () => hands, errors, at: { set: '', part22: '', part28: '' } };
  planning(story);
  making(story);
});
