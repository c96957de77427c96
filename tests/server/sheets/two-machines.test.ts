import { expect, test } from 'vitest';
import { fillDemo } from '../../../seed/demo.ts';
import { send, shopForTests, visit } from '../app-for-tests.ts';

test('a set-up sheet of parts of two machines names both machines', async () => {
  const shop = await shopForTests({ fillDemo });
  await send(shop, '/shop', { which: 'demo' });
  const listed = (await visit(shop, '/set-ups')).body;
  const sheets = [...new Set([...listed.matchAll(/\/set-ups\/sheet\?operations=[\d,]+/g)].map(([address]) => address))];
  const bodies = await Promise.all(sheets.map(async (address) => (await visit(shop, address)).body));
  const both = bodies.filter((body) => body.includes('S16-60T') && body.includes('D24-71T'));
  expect(both.length).toBeGreaterThan(0);
  for (const body of both) {
    const block = body.slice(body.lastIndexOf('<footer'));
    expect(block).toContain('Thornbury-Pell S-16');
    expect(block).toContain('Dunmarrow D-24');
  }
  await shop.close();
});
