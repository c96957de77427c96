import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launch } from './chromium.ts';
import { LATHE, MILL, NO_4, SPLINE_MANDREL, TOOLS } from './first-machine.ts';
import { type Hands, handsAt } from './hands.ts';
import { follow, press, readFigure, rowsIn, textIn, typeIn, whereTo } from './on-page.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';

const chromium = inject('chromium');
const WIDE_PX = 360;

describe.skipIf(!chromium)('the same road on a phone, JavaScript off', () => {
  let shop: OpenShop;
  let browser: Browser;
  let page: Page;
  let hands: Hands;
  const tooWide: string[] = [];
  const at = { set: '', part28: '' };

  beforeAll(async () => {
    shop = await listeningShop('own');
    browser = await launch(chromium);
    page = await browser.newPage({ viewport: { width: WIDE_PX, height: 740 }, javaScriptEnabled: false });
    hands = handsAt(page, shop.base);
    page.on('domcontentloaded', () => {
      const { pathname } = new URL(page.url());
      void page
        .evaluate('document.documentElement.scrollWidth')
        .then((wide) => Number(wide) > WIDE_PX && !pathname.includes('sheet') && tooWide.push(`${pathname}: ${String(wide)} px`))
        .catch(() => undefined);
    });
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  it('a machine, and its set from two lines', async () => {
    at.set = await hands.firstSet();
    expect(await textIn(page)).toContain('Missing: 22, 28. Spare: 19, 25, 31, 34, 46.');
    expect(await textIn(page, '#blanks')).toContain('31 becomes 22; 34 becomes 28.');
    expect(await readFigure(page, 'Ratios lost today, one wheel of each number')).toBe('874');
  });

  it('bad input comes back as typed, with words beside it', async () => {
    await hands.go('/tools/new/cutter');
    await press(page, 'Put it on record');
    expect(await textIn(page, 'main .problem')).toContain('Not saved yet');
    expect(await textIn(page)).toContain('Nothing is typed yet');
    await typeIn(page, { ...NO_4, pitch: '8', teeth: '34 to 26 🛠', hole: '<script>' });
    await press(page, 'Put it on record');
    expect(await page.locator('main .problem').count()).toBeGreaterThan(2);
    for (const [name, typed] of [
      ['pitch', '8'],
      ['teeth', '34 to 26 🛠'],
      ['hole', '<script>'],
      ['number', '4'],
    ] as const)
      expect(await page.inputValue(`main form [name="${name}"]`)).toBe(typed);
    expect(await textIn(page)).toContain('does not say which pitch');
    await typeIn(page, NO_4);
    await press(page, 'Put it on record');
    expect(await textIn(page, '.notice')).toContain('is on record');
  });

  it('opens the routings; an operation is done with what was measured', async () => {
    for (const [kind, typed] of TOOLS.filter(([kind]) => kind !== 'cutter')) await hands.addTool(kind, typed);
    await hands.addTool('mandrel', SPLINE_MANDREL);
    for (const typed of [LATHE, MILL]) await hands.addShopMachine(typed);
    await hands.go(at.set);
    await press(page, 'Open the routings');
    at.part28 = await whereTo(page, /^28 teeth$/);
    const blank = await hands.operation(at.part28, 'Write down the size');
    await hands.go(blank);
    await typeIn(page, { 'm-outside': 'three and a bit', minutes: '12' }, '#measured');
    await press(page, 'Mark done');
    expect(await page.inputValue('[name="m-outside"]')).toBe('three and a bit');
    expect(await page.inputValue('[name="minutes"]')).toBe('12');
    expect(await textIn(page)).toContain('Nothing is saved yet');
    await hands.markDone(blank, { 'm-outside': '3.7490' });
    expect((await rowsIn(page, '#measure')).find(([name]) => name === 'Outside diameter')?.slice(1, 3)).toEqual([
      '3.7490 in',
      '3.7475 to 3.7500 in',
    ]);
    await hands.go(await hands.operation(at.part28, 'Touch the blank'));
    // derived: 2.157 ÷ 8 less half of 0.0010, and the paper of 0.0010: 0.270125
    expect(await readFigure(page, 'Depth to dial from touching')).toBe('0.2701');
  });

  it('at the machine the first number is the one to set', async () => {
    await hands.go(await hands.operation(at.part28, 'Plate, circle and sector'));
    await follow(page, 'At the machine: one number at a time');
    expect(await page.textContent('.one-number')).toContain('1 turn + 9 spaces on 21');
  });

  it('the sheet opens, and teeth are ticked', async () => {
    await hands.go(at.part28);
    await follow(page, 'Print the route sheet');
    expect(await textIn(page, 'body')).toContain('9 spaces = 10 holes');
    expect(await page.locator('section.paper').count()).toBeGreaterThan(1);
    await hands.go(await hands.operation(at.part28, 'Rough all round'));
    await follow(page, 'Count the teeth');
    for (const tooth of [1, 2]) await press(page, `Tooth ${tooth} is cut`);
    await page.reload();
    expect(await page.textContent('h2')).toBe('Tooth 3');
    await press(page, 'Back one: Tooth 2 is not cut');
    expect(await page.textContent('h2')).toBe('Tooth 2');
    expect(tooWide).toEqual([]);
  });
});
