import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launch } from './chromium.ts';
import { listeningShop, type OpenShop } from './open-shop.ts';

const chromium = inject('chromium');

type Opened = {
  readonly name: string;
  readonly perUnit: number;
  readonly unit: number;
  readonly boxes: readonly (readonly [number, number])[];
};

/** Asked inside the page. Unit 7 is millimetres. */
const IN_PAGE = `(() => {
  const svg = document.documentElement;
  const boxes = [...document.querySelectorAll('path.k-here')].map((path) => path.getBBox());
  return {
    name: svg.localName,
    perUnit: svg.width.baseVal.valueInSpecifiedUnits / svg.viewBox.baseVal.width,
    unit: svg.width.baseVal.unitType,
    boxes: boxes.map(({ width, height }) => [width, height]),
  };
})()`;

/** The print of a ground tool, opened by a browser as a file of its own: its paper size and the size of what is drawn, in millimetres. */
describe.skipIf(!chromium)('a tool ground to the space, as SVG', () => {
  let shop: OpenShop;
  let browser: Browser;
  beforeAll(async () => {
    shop = await listeningShop('demo');
    browser = await launch(chromium);
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.close();
  });

  it.each(['5', '10'])('opened by another program it is %s times the tool, one drawn millimetre to one of paper', async (times) => {
    const asked = new URLSearchParams({
      teeth: '22',
      pitch: '8 DP',
      system: 'full-14.5',
      helix: '',
      kind: 'rack',
      fillet: '',
      step: '0.010',
      times,
    });
    const text = await (await fetch(`${shop.base}/sums/ground-tool.svg?${asked}`)).text();
    const page = await browser.newPage();
    await page.goto(`data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`);
    const seen = await page.evaluate<Opened>(IN_PAGE);
    await page.close();
    expect(seen.name).toBe('svg');
    expect(seen.unit).toBe(7);
    expect(seen.perUnit).toBeCloseTo(1, 2);
    // A rack of 8 DP, 14½°: half a pitch and twice the addendum's slope wide, 2.157/8 in deep (by hand).
    const wide = (Math.PI / 16 + (2 / 8) * Math.tan((14.5 * Math.PI) / 180)) * 25.4 * Number(times);
    expect(seen.boxes).toHaveLength(1);
    expect(Math.abs((seen.boxes[0]?.[0] ?? 0) - wide)).toBeLessThan(0.1);
    expect(Math.abs((seen.boxes[0]?.[1] ?? 0) - (2.157 / 8) * 25.4 * Number(times))).toBeLessThan(0.1);
  });
});
