import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SUMS } from '../../../server/sums/contents.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';
import { boxesOn, problemsOn } from './read-page.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

const NONSENSE = [
  'abc',
  '0',
  '-1',
  '1e9',
  '1000000000',
  '',
  '   ',
  '🙂🙂',
  '<script>alert(1)</script>',
  '"><b>x',
  '1/0',
  'NaN',
  '__proto__',
  '.',
  '8 DP;;;|',
];
const tidy = (text: string): string => text.replace(/\s+/g, ' ').trim();

describe.each(SUMS.map((sum) => [sum.path, sum] as const))('%s', (path, sum) => {
  const ask = async (given: readonly (readonly [string, string])[]) => {
    const query = new URLSearchParams(given.map(([name, text]): [string, string] => [name, text])).toString();
    return { page: await visit(shop, `/sums/${path}?${query}`), json: await visit(shop, `/sums/${path}.json?${query}`) };
  };
  const example = Object.entries(sum.example).filter(([, text]) => text !== '');
  const without = (name: string) => example.filter(([box]) => box !== name);

  it('takes any nonsense in any box: an answer or a problem, as typed, never 500', async () => {
    for (const [name, field] of Object.entries(sum.asks)) {
      for (const text of NONSENSE) {
        const { page, json } = await ask([...without(name), [name, text]]);
        expect([200, 422], `${name}=${text}`).toContain(page.statusCode);
        expect(json.statusCode, `${name}=${text}`).toBe(page.statusCode);
        expect(page.body).not.toMatch(/<script>alert|undefined|NaN<|\[object/);
        if (page.statusCode === 200) continue;
        const problems = (json.json() as { problems: Record<string, string> }).problems;
        expect(Object.keys(problems).length, `${name}=${text}: ${page.body.match(/role="alert">[\s\S]*?<\/p>/)?.[0]}`).toBeGreaterThan(0);
        expect(problemsOn(page.body).length, `${name}=${text}`).toBe(Object.keys(problems).filter((box) => box in sum.asks).length);
        if (field.kind !== 'choice' && field.kind !== 'tick') expect(boxesOn(page.body).get(name), name).toBe(tidy(text));
        for (const [box, kept] of without(name)) expect(boxesOn(page.body).get(box), box).toBe(tidy(kept));
      }
    }
  });

  it('refuses a box sent twice, and a name that it does not have, each in words', async () => {
    const name = Object.keys(sum.asks)[0] ?? '';
    const twice = await ask([...example, [name, sum.example[name] ?? '']]);
    expect([twice.page.statusCode, twice.json.statusCode]).toEqual([422, 422]);
    expect((twice.json.json() as { problems: Record<string, string> }).problems[name]).toMatch(/Give it once/);
    const unknown = await ask([...example, ['teehts', '22']]);
    expect([unknown.page.statusCode, unknown.json.statusCode]).toEqual([422, 422]);
    expect(unknown.page.body).toContain('Nothing here is called “teehts”');
  });
});

it('one million letters in a box come back as typed', async () => {
  const flood = 'x'.repeat(1_000_000);
  for (const [path, name] of [
    ['span', 'pitch'],
    ['plain-indexing', 'plates'],
    ['cutter-choice', 'cutters'],
    ['missing-wheels', 'drawer'],
    ['spare-test', 'spareBore'],
    ['spindle-speed', 'speeds'],
  ]) {
    const page = await visit(shop, `/sums/${path}?${name}=${flood}`);
    expect(page.statusCode, path).toBe(422);
    expect(boxesOn(page.body).get(name ?? ''), path).toBe(flood);
  }
});
