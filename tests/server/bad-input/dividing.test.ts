import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shopForTests, type TestShop } from '../app-for-tests.ts';
import { askSum } from './refused.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

/** Every sum that asks for a drawer of wheels, with the name of its box. */
const DRAWERS = [
  ['change-gears', 'drawer'],
  ['chart-today', 'drawer'],
  ['metric-on-inch', 'drawer'],
  ['helical-milling', 'drawer'],
  ['wheels-for-a-lead', 'drawer'],
  ['cam-lobes', 'drawer'],
  ['dividing-ways', 'gears'],
  ['missing-wheels', 'drawer'],
  ['missing-and-spare', 'drawer'],
  ['which-spare', 'drawer'],
] as const;
const FIVE_HUNDRED = Array.from({ length: 500 }, (_, at) => 20 + (at % 100)).join(', ');

describe.each(['plain-indexing', 'dividing-ways', 'index-table', 'block-indexing', 'table-dial'])('%s', (sum) => {
  it.each(['0', '1', '1000000', '-3'])('%s divisions: refused with the limit', async (divisions) => {
    const answer = await askSum(shop, sum, { divisions });
    expect(answer.status).toBe(422);
    expect(answer.problems).toMatch(new RegExp(`^“${divisions}” is outside what divisions may be: from 2 to [15](?:0|,(?=000))+\\.$`));
    expect(answer.cpuMs).toBeLessThan(1000);
  });
  it.each(['seventy', '7½x', '1e3', '٧'])('%s divisions: text in a number field', async (divisions) => {
    const answer = await askSum(shop, sum, { divisions });
    expect(answer.status).toBe(422);
    expect(answer.problems).toContain(`“${divisions}” is no whole number. Type divisions in digits`);
  });
});

it.each(['plain-indexing', 'dividing-ways', 'angular-indexing', 'helical-milling', 'mill-splined-shaft'])(
  '%s: a head ratio of 0',
  async (sum) => {
    const answer = await askSum(shop, sum, { turns: '0' });
    expect(answer.status).toBe(422);
    expect(answer.problems).toContain('“0” is outside what it may be: from 1 to 1000.');
  },
);

describe('drawers', () => {
  it.each(DRAWERS)('%s: five hundred wheels are refused in wheels, at once', async (sum, box) => {
    const answer = await askSum(shop, sum, { [box]: FIVE_HUNDRED });
    expect(answer.status).toBe(422);
    expect(answer.problems).toMatch(/500 wheels/);
    expect(answer.cpuMs).toBeLessThan(1000);
  });

  it.each(DRAWERS.filter(([sum]) => !['cam-lobes', 'missing-wheels', 'which-spare'].includes(sum)))(
    '%s: an empty drawer is a drawer too',
    async (sum, box) => {
      const answer = await askSum(shop, sum, { [box]: '' });
      expect(answer.status).toBe(200);
      expect(answer.cpuMs).toBeLessThan(1000);
    },
  );

  it.each([
    ['cam-lobes', {}, 'Add wheels to the drawer'],
    ['missing-wheels', {}, 'Choose again which spare becomes which wheel.'],
    ['which-spare', {}, 'up to 6 missing wheels'],
  ] as const)('%s: an empty drawer is refused in words where nothing can be said of it', async (sum, more, says) => {
    const answer = await askSum(shop, sum, { ...more, drawer: '' });
    expect([answer.status, answer.problems]).toEqual([422, expect.stringContaining(says)]);
  });

  it('an empty drawer gives no train, and says so', async () => {
    for (const sum of ['change-gears', 'helical-milling', 'wheels-for-a-lead'])
      expect((await askSum(shop, sum, { drawer: '' })).words).toMatch(/no train at all: it holds fewer than two wheels/);
  });

  it('like wheels are each used once: two of 20 and two of 40 give 20 ÷ 40 and 20 × 20 ÷ 40 × 40, and nothing longer', async () => {
    const { words } = await askSum(shop, 'change-gears', { thread: '32 TPI', screw: '8 TPI', drawer: '20x2, 40x2' });
    expect(words).toMatch(/20 × 20 ÷ 40 × 40/);
    const { words: one } = await askSum(shop, 'change-gears', { thread: '32 TPI', screw: '8 TPI', drawer: '20, 40' });
    expect(one).toContain('Nothing exact');
  });
});

describe('leads', () => {
  it('a lead of nothing, without end, or that is no number', async () => {
    for (const [lead, says] of [
      ['0', 'A lead of nothing cannot be cut.'],
      ['infinite', 'A lead without end is straight teeth'],
      ['99999999 in', 'no thread, lead or feed that a machine cuts'],
    ] as const) {
      const answer = await askSum(shop, 'wheels-for-a-lead', { leadWanted: lead });
      expect([answer.status, answer.problems.includes(says)], lead).toEqual([422, true]);
    }
  });
  it('a lead far shorter than any helix: it was an error of ours', async () => {
    for (const leadWanted of ['0.001 mm', 'module 0.0001', '0.01 in']) {
      const answer = await askSum(shop, 'wheels-for-a-lead', { leadWanted });
      expect(answer.status).toBe(422);
      expect(answer.problems).toBe('No less than a fortieth of the diameter, 0.05 in. Cut so short a lead as a thread, in the lathe.');
    }
  });
  it('a table screw of next to nothing', async () => {
    for (const sum of ['wheels-for-a-lead', 'helical-milling']) {
      const answer = await askSum(shop, sum, { tableScrew: '0.001 mm' });
      expect([answer.status, answer.problems], sum).toEqual([422, expect.stringContaining('From 0.01 to 2 in a turn.')]);
    }
  });
  const STRAIGHT =
    'Such teeth are straight: their lead has no end, and no wheels are needed. Lock the head and cut straight along; else type an angle from 0.1 to 80.';
  it.each([
    ['0', STRAIGHT],
    ['0.0001', STRAIGHT],
    ['85', 'Beyond 80° it is a worm. Type an angle from 0.1 to 80.'],
  ])('a helix of %s°: straight, or a worm', async (helix, says) => {
    const answer = await askSum(shop, 'helical-milling', { helix });
    expect([answer.status, answer.problems]).toEqual([422, says]);
  });
});

it.each(['∞', 'infinite', 'Infinity', 'endless', 'inf. mm'])(
  'a lead of “%s” is straight teeth, and needs no wheels',
  async (leadWanted) => {
    const answer = await askSum(shop, 'wheels-for-a-lead', { leadWanted });
    expect(answer.status).toBe(422);
    expect(answer.problems).toBe('A lead without end is straight teeth: no wheels are needed. Lock the head and cut straight along.');
  },
);
