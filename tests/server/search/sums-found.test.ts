import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SUMS, sumsHolding } from '../../../server/sums/contents.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';

describe('sums are found by words', () => {
  let shop: TestShop;
  beforeAll(async () => {
    shop = await shopForTests();
  });
  afterAll(() => shop.close());

  it('by the beginnings of words of title or of what it tells, titles first', () => {
    const paths = (typed: string) => sumsHolding(typed).map(({ path }) => path);
    expect(paths('bev whe')[0]).toBe('bevel-pair');
    expect(paths('SPAN over')[0]).toBe('span');
    expect(paths('zzz')).toEqual([]);
    expect(paths('   ')).toEqual([]);
    for (const sum of SUMS) expect(paths(sum.title)).toContain(sum.path);
  });

  it('stand on the page of what was found, also where the shop holds nothing of the kind', async () => {
    const page = await visit(shop, '/search?q=worm');
    expect(page.statusCode).toBe(200);
    expect(page.body).toContain('href="/sums/worm-and-wheel"');
    expect(page.body).not.toContain('Nothing holds these words');
    expect((await visit(shop, '/search?q=qqqq')).body).toContain('Nothing holds these words');
  });
});
