import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop } from '../app-for-tests.ts';
import { askSum } from './refused.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

type Case = readonly [says: string, sum: string, given: Readonly<Record<string, string>>, words: readonly RegExp[]];

/** What was given, the limit, what to try: each has to be found on the page. */
const REFUSED: readonly Case[] = [
  [
    '3 teeth at 14½° full depth',
    'gear-blank',
    { teeth: '3', system: 'full-14.5' },
    [/is outside what teeth may be: from 4 to 1000\. Count again/],
  ],
  ['no teeth', 'gear-blank', { teeth: '0' }, [/from 4 to 1000/]],
  ['teeth below nothing', 'gear-blank', { teeth: '-22' }, [/from 4 to 1000/]],
  ['a thousand million teeth', 'gear-blank', { teeth: '1000000000' }, [/from 4 to 1000/]],
  ['a span off the flank', 'span', { k: '6' }, [/A span over 6 of 22 teeth\./, /touch the flanks over 1 to 4 teeth/, /Measure over 2/]],
  ['a span read off the flank', 'still-to-feed', { k: '9' }, [/9 of 22 teeth/, /touch the flanks over 1 to 4/, /Measure over 2/]],
  ['a pin that falls through', 'over-pins', { pin: '0.05' }, [/A pin of 0\.0500 in\./, /falls through/, /Take one near 0\.2160 in/]],
  ['a pin that only lies on the tips', 'over-pins', { pin: '0.9' }, [/A pin of 0\.9000 in\./, /touches no flank/, /Take one near/]],
  [
    'a pin that falls to the bottom of a ring',
    'between-pins',
    { pin: '0.02' },
    [/A pin of 0\.0200 in\./, /bottoms in the root/, /Take one near/],
  ],
  [
    'a ring smaller than its pinion',
    'internal-gear',
    { teeth: '17' },
    [/A ring of 17 teeth around a wheel of 18/, /more teeth/, /Type the greater/],
  ],
  [
    'a ring as large as its pinion',
    'internal-gear',
    { teeth: '18' },
    [/A ring of 18 teeth around a wheel of 18/, /more teeth/, /Type the greater/],
  ],
  [
    'a ring for a mate smaller than the wheel',
    'gear-pair',
    { mateIs: 'ring', mate: '10' },
    [/A ring of 10 teeth/, /more teeth/, /Type the greater/],
  ],
  [
    'a centre distance that no shift reaches, too short',
    'gear-pair',
    { centre: '30 mm' },
    [/A centre distance of 30\.000 mm/, /from 50\.743 mm to 59\.183 mm/, /Measure the centres again/],
  ],
  [
    'a centre distance that no shift reaches, too long',
    'gear-pair',
    { centre: '90 mm' },
    [/90\.000 mm/, /59\.183 mm/, /Measure the centres again/],
  ],
  ['a helix of nothing', 'helical-gear', { helix: '0' }, [/A helix angle of 0°/, /no lead/, /See the spur gear/]],
];

describe.each(REFUSED)('%s', (_, sum, given, words) => {
  it(`is refused by ${sum} with what was given, the limit and what to try`, async () => {
    const answer = await askSum(shop, sum, given);
    expect(answer.status).toBe(422);
    for (const word of words) expect(answer.words).toMatch(word);
    expect(answer.problems).not.toBe('');
    expect(answer.cpuMs).toBeLessThan(1000);
  });
});

it('a spare smaller than the gear is answered, not refused: it will not do, and why', async () => {
  const answer = await askSum(shop, 'spare-test', { spareTeeth: '20' });
  expect(answer.status).toBe(200);
  expect(answer.words).toContain('Will not do. The spare is smaller: 2.7500 in over the tips, 3.0000 in is wanted.');
});

it('a box to tick takes nothing but a tick', async () => {
  const answer = await askSum(shop, 'spare-test', { acceptNarrower: 'maybe' });
  expect(answer.status).toBe(422);
  expect(answer.html).toContain('“maybe” is neither a tick nor none.');
});

it.each([
  ['internal-gear', { teeth: '17' }, ['teeth', 'pinion']],
  ['gear-pair', { mateIs: 'ring', mate: '10' }, ['teeth', 'mate']],
])('%s: a ring smaller than its pinion marks both counts, either of which may be wrong', async (sum, given, boxes) => {
  const { html } = await askSum(shop, sum, given);
  expect([...html.matchAll(/name="(\w+)"[^>]*aria-invalid="true"/g)].map(([, name]) => name).sort()).toEqual([...boxes].sort());
});
