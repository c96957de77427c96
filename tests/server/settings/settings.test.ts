import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { shopNow } from '../../../db/shop-now.ts';
import { inches } from '../../../lib/values/length.ts';
import { ask, LAN_PEER, send, shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { textOf } from '../machines/read-page.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

const bodyOf = async (): Promise<string> => (await visit(shop, '/settings')).body;
/** What stood when the page was opened, as its hidden field carries it. */
const stood = (html: string): string => /name="stood" value="([^"]*)"/.exec(html)?.[1]?.replaceAll('&quot;', '"') ?? '';
const AS_DELIVERED = { cleanUp: '0.010', paper: '0.001', backlash: '0', convention: 'low end', unit: 'pitch' };

describe('the owner’s defaults', () => {
  it('stand as delivered, each with its ground', async () => {
    const text = textOf(await bodyOf());
    expect(text).toContain('Judgement.');
    expect(text).toContain('value from memory');
    expect(text).toContain('J. Rose, Modern Machine-Shop Practice');
    expect(await shopNow(shop.shops.own)).toMatchObject({ cleanUp: undefined, paper: inches(0.001), convention: 'low end', unit: null });
  });

  it('what is typed is what the work is planned with', async () => {
    const form = { ...AS_DELIVERED, cleanUp: '0.5 mm', paper: '0.0015', convention: 'treatise', unit: 'mm', stood: stood(await bodyOf()) };
    expect((await send(shop, '/settings', form)).statusCode).toBe(303);
    const now = await shopNow(shop.shops.own);
    expect(now).toMatchObject({ cleanUp: 500_000, paper: inches(0.0015), convention: 'treatise', unit: 'mm' });
    expect(await bodyOf()).toContain('value="0.5 mm"');
    expect((await visit(shop, '/tools/new/arbor')).body).toContain('<span class="unit">mm</span>');
  });

  it.each([
    ['cleanUp', 'much'],
    ['cleanUp', '-0.01'],
    ['paper', '1'],
    ['backlash', ''],
    ['convention', 'neither'],
    ['unit', 'furlong'],
  ])('%s typed as “%s” is refused, and nothing changes', async (name, text) => {
    const answer = await send(shop, '/settings', { ...AS_DELIVERED, [name]: text, stood: stood(await bodyOf()) });
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toContain('has-problem');
    expect(await shopNow(shop.shops.own)).toMatchObject({ cleanUp: undefined, paper: inches(0.001), convention: 'low end', unit: null });
  });

  it('two devices: the second is shown both and changes nothing yet', async () => {
    const opened = stood(await bodyOf());
    await send(shop, '/settings', { ...AS_DELIVERED, cleanUp: '0.012', stood: opened });
    const late = await send(shop, '/settings', { ...AS_DELIVERED, cleanUp: '0.020', stood: opened });
    expect(late.statusCode).toBe(409);
    expect(textOf(late.body)).toContain('As you typed it 0.020');
    expect(textOf(late.body)).toContain('As it stands now 0.012');
    expect((await shopNow(shop.shops.own)).cleanUp).toBe(inches(0.012));
    expect((await send(shop, '/settings', { ...AS_DELIVERED, cleanUp: '0.020', stood: stood(late.body) })).statusCode).toBe(303);
    expect((await shopNow(shop.shops.own)).cleanUp).toBe(inches(0.02));
  });

  it('what the owner typed is his, also where it reads as delivered; what he left alone is not', async () => {
    const looked = async () => textOf((await ask(shop, '/settings', { peer: LAN_PEER })).body);
    expect(await looked()).not.toContain('Typed by the owner');
    await send(shop, '/settings', { ...AS_DELIVERED, paper: '0.0015', stood: stood(await bodyOf()) });
    expect((await shopNow(shop.shops.own)).cleanUp).toBeUndefined();
    for (const cleanUp of ['0.012', '0.010'])
      await send(shop, '/settings', { ...AS_DELIVERED, paper: '0.0015', cleanUp, stood: stood(await bodyOf()) });
    expect((await shopNow(shop.shops.own)).cleanUp).toBe(inches(0.01));
    expect(await looked()).toMatch(/Clean-up 0\.010 in Typed by the owner/);
  });

  it('a device that may only look reads them and has no form', async () => {
    const looked = await ask(shop, '/settings', { peer: LAN_PEER });
    expect(textOf(looked.body)).toContain('0.010 in');
    expect(looked.body).not.toContain('method="post"');
  });
});
