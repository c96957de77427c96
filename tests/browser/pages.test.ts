import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { HtmlValidate } from 'html-validate';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launch } from './chromium.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';
import { linksIn, type Seen, walk } from './walk.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
type Violation = { readonly id: string; readonly nodes: readonly { readonly target: readonly string[] }[] };

const chromium = inject('chromium');
const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: { 'doctype-style': 'off', 'no-trailing-whitespace': 'off', 'long-title': 'off' },
});
const LEAST_TOUCH_PX = 44;
const OF_ONE_KIND = 2;
/** A hundred pages and more, each with the whole of axe, on a slow machine. */
const LONG_WALK_MS = 900_000;

describe.skipIf(!chromium)('every page of the demo shop', () => {
  let shop: OpenShop;
  let browser: Browser;
  let pages: Seen[] = [];

  beforeAll(async () => {
    shop = await listeningShop('demo');
    browser = await launch(chromium);
    pages = await walk(['/', '/sums', '/shop', '/search?q=H12', '/devices'], OF_ONE_KIND, async (address) => {
      const answer = await fetch(shop.base + address);
      return { address, status: answer.status, type: answer.headers.get('content-type') ?? '', body: await answer.text() };
    });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  const html = (): Seen[] => pages.filter((page) => page.type.startsWith('text/html'));

  it('is reached by links and answers well', () => {
    expect(pages.length).toBeGreaterThan(20);
    expect(pages.filter((page) => page.status !== 200).map((page) => `${page.status} ${page.address}`)).toEqual([]);
  });

  it('shows nothing that is no word or number, and no empty link', () => {
    for (const page of html()) {
      const text = page.body.replace(/<[^>]*>/g, ' ');
      expect(text, page.address).not.toMatch(/\bundefined\b|\bNaN\b|\[object |\bInfinity\b|\bnull\b/);
      expect(
        linksIn(page.body).filter((link) => link === '' || link === '#'),
        page.address,
      ).toEqual([]);
    }
  });

  it('is valid HTML', async () => {
    const wrong: string[] = [];
    for (const page of html()) {
      const report = await validator.validateString(page.body);
      for (const result of report.results)
        for (const one of result.messages) wrong.push(`${page.address}: ${one.ruleId} ${one.message} (line ${one.line})`);
    }
    expect(wrong).toEqual([]);
  });

  it(
    'is accessible, quiet, stays in the shop, and fits a phone',
    async () => {
      const wrong: string[] = [];
      const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
      let address = '';
      page.on('console', (message) => wrong.push(`${address}: console ${message.text()}`));
      page.on('request', (request) => {
        if (!request.url().startsWith(shop.base) && !request.url().startsWith('data:')) wrong.push(`${address}: asks ${request.url()}`);
      });
      for (const one of html()) {
        address = one.address;
        await page.goto(shop.base + address);
        await page.evaluate(axeSource);
        const found = (await page.evaluate('axe.run({ resultTypes: ["violations"] })')) as { violations: readonly Violation[] };
        for (const rule of found.violations)
          wrong.push(`${address}: ${rule.id} ${rule.nodes.map((node) => node.target.join(' ')).join(', ')}`);
        const wide = Number(await page.evaluate('document.documentElement.scrollWidth'));
        if (wide > 360 && !address.includes('sheet')) wrong.push(`${address}: ${wide} px wide on a phone`);
        const small = (await page.evaluate(SMALL_CONTROLS(LEAST_TOUCH_PX))) as string[];
        if (!address.includes('sheet')) wrong.push(...small.map((control) => `${address}: too small to touch: ${control}`));
      }
      await page.close();
      expect(wrong).toEqual([]);
    },
    LONG_WALK_MS,
  );
});

/** Controls whose box is lower than `least` pixels; links inside running text are not controls. */
const SMALL_CONTROLS = (
  least: number,
): string => `[...document.querySelectorAll('button, input:not([type=hidden]), select, textarea, summary, a.act, nav a, .links a, .rows a')]
  .filter((one) => one.getClientRects().length > 0 && !one.classList.contains('skip'))
  .map((one) => [one, (one.closest('label') ?? one).getBoundingClientRect().height])
  .filter(([, height]) => height < ${least})
  .map(([one, height]) => one.outerHTML.slice(0, 80) + ' ' + Math.round(height) + ' px')`;
