import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { to } from '../../../server/addresses.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { type FirstStory, firstStory } from './first-story.ts';

const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: { 'doctype-style': 'off', 'no-trailing-whitespace': 'off', 'long-title': 'off' },
});
let shop: TestShop;
let story: FirstStory;
beforeAll(async () => {
  shop = await shopForTests();
  story = await firstStory(shop.shops.own);
});
afterAll(() => shop.close());

test('every sheet and the page at the mill are sound markup and print nothing that is no word or number', async () => {
  const [one, two] = [await story.operation(22, 'rough'), await story.operation(28, 'rough')];
  const addresses = [
    to.partSheet(story.parts[22]),
    to.partSheet(story.parts[28]),
    to.partSheet(1),
    to.indexSheet(one.id),
    to.setUpSheet([one.id, two.id]),
    to.teeth(one.id),
  ];
  for (const address of addresses) {
    const { statusCode, body } = await visit(shop, address);
    expect(statusCode, address).toBe(200);
    const report = await validator.validateString(body);
    expect(report.results.flatMap(({ messages }) => messages.map((one) => `${address} ${one.line}: ${one.ruleId} ${one.message}`))).toEqual(
      [],
    );
    expect(body.replace(/<[^>]*>/g, ' '), address).not.toMatch(/\bundefined\b|\bNaN\b|\[object |\bInfinity\b|\bnull\b/);
  }
});
