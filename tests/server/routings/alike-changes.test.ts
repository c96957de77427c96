import { expect, it, onTestFinished } from 'vitest';
import { send, shopForTests, visit } from '../app-for-tests.ts';
import { storyOne } from '../machines/story-one.ts';

const unescaped = (text: string): string => text.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&');

it('a lathe put on record changes the set-up of many operations: one line, one button, which accepts them all', async () => {
  const shop = await shopForTests();
  onTestFinished(shop.close);
  const { set } = await storyOne(shop);
  const choices = /name="choices" value="([^"]*)"/.exec((await visit(shop, set)).body)?.[1] ?? '';
  await send(shop, `${set}/open`, { choices });
  // What is waited for leads to the tools of its kind, where one can be put on record.
  const waits = (await visit(shop, '/')).body;
  for (const kind of ['mandrel', 'cutter', 'head', 'plate']) expect(waits).toContain(`href="/tools?kind=${kind}"`);
  const lathe = {
    name: 'Long lathe',
    kind: 'lathe',
    feedsPer: 'turn',
    crossUnit: 'in',
    depthUnit: 'in',
    lastTurns: 'either',
    speeds: '45 73 112',
  };
  expect((await send(shop, '/tools/machines/new', lathe)).statusCode).toBe(303);
  const part = `/parts/${choices.split(':')[0]}`;
  const lines = async () =>
    [...(await visit(shop, part)).body.matchAll(/<tr><td class="as-name" data-label="What">set-up<[\s\S]*?<\/tr>/g)].map(([row]) => row);
  const [line = '', ...others] = (await lines()).filter((row) => row.includes('<b>Long lathe'));
  expect(others).toEqual([]);
  expect(line).toMatch(/Prove the mandrel between centres, and \d+ more</);
  const hidden = Object.fromEntries(
    [...line.matchAll(/name="(\w+)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [name, unescaped(value)]),
  );
  const action = /action="([^"]*)"/.exec(line)?.[1] ?? '';
  expect((await send(shop, action, hidden)).statusCode).toBe(303);
  expect((await lines()).filter((row) => row.includes('Long lathe'))).toEqual([]);
});
