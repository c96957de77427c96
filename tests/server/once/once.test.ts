import { afterEach, beforeEach, expect, test } from 'vitest';
import { RecordChanged } from '../../../db/changes.ts';
import type { Executor } from '../../../db/executor.ts';
import { setSetting, settings } from '../../../db/settings.ts';
import { actOnce, formMark } from '../../../server/once.ts';
import { type Handler, show, type Visit } from '../../../server/visit.ts';
import { NOW, shopForTests, type TestShop } from '../app-for-tests.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await shopForTests();
});
afterEach(() => shop.close());

const visitWith = (body: Record<string, unknown>, address = '/wheels'): Visit => ({
  db: shop.shops.own,
  shops: shop.shops,
  params: {},
  query: {},
  body,
  now: NOW,
  trusted: true,
  demo: false,
  shopAddress: '',
  address,
  cookies: {},
});

/** Adds a wheel, as a setting of a new name each time: how often it acted is how many there are. */
async function addWheel(db: Executor): Promise<number> {
  const nth = Object.keys(await settings(db)).length + 1;
  await setSetting(db, `wheel ${nth}`, 'here');
  return nth;
}
const add: Handler = async ({ db }) => ({ go: `/wheels/${await addWheel(db)}`, saved: 'Added.' });
const wheels = async (): Promise<number> => Object.keys(await settings(shop.shops.own)).length;

test('marks are never the same and can be kept', () => {
  const marks = new Set(Array.from({ length: 1000 }, () => formMark().value));
  expect(marks.size).toBe(1000);
  for (const mark of marks) expect(mark).toMatch(/^[0-9a-f]{24}$/);
});

test('sent again, the same form acts no more and leads to the same place', async () => {
  const first = await actOnce(visitWith({ mark: 'm1' }), add);
  expect(first).toMatchObject({ go: '/wheels/1' });
  for (let time = 0; time < 3; time += 1) expect(await actOnce(visitWith({ mark: 'm1' }), add)).toEqual({ go: '/wheels/1' });
  expect(await wheels()).toBe(1);
  expect(await actOnce(visitWith({ mark: 'm2' }), add)).toMatchObject({ go: '/wheels/2' });
});

test('thirty times at once: it acts once', async () => {
  const answers = await Promise.all(Array.from({ length: 30 }, () => actOnce(visitWith({ mark: 'm1' }), add)));
  expect(new Set(answers.map((one) => ('go' in one ? one.go : 'no')))).toEqual(new Set(['/wheels/1']));
  expect(await wheels()).toBe(1);
});

test('many different forms at once: each acts', async () => {
  await Promise.all(Array.from({ length: 30 }, (_, at) => actOnce(visitWith({ mark: `m${at}` }), add)));
  expect(await wheels()).toBe(30);
});

test('a handler that throws leaves nothing, and the form may be sent again', async () => {
  let fails = true;
  const late: Handler = async (visit) => {
    const result = await add(visit);
    if (fails) throw new Error('the last line broke');
    return result;
  };
  await expect(actOnce(visitWith({ mark: 'm1' }), late)).rejects.toThrow('the last line broke');
  expect(await wheels()).toBe(0);
  fails = false;
  expect(await actOnce(visitWith({ mark: 'm1' }), late)).toMatchObject({ go: '/wheels/1' });
  expect(await wheels()).toBe(1);
});

test.each([409, 422] as const)(
  'a refusal (%i) after something was written leaves nothing, and the form may be mended and sent again',
  async (status) => {
    const refuses: Handler = async ({ db }) => {
      await addWheel(db);
      return show('search/results', {} as never, status);
    };
    expect(await actOnce(visitWith({ mark: 'm1' }), refuses)).toMatchObject({ show: 'search/results', status });
    expect(await wheels()).toBe(0);
    expect(await actOnce(visitWith({ mark: 'm1' }), add)).toMatchObject({ go: '/wheels/1' });
  },
);

test('a change that somebody else was faster with comes out as it is, with nothing done', async () => {
  const loses: Handler = async ({ db }) => {
    await addWheel(db);
    throw new RecordChanged('item', 1, { name: 'theirs' }, { name: 'yours' });
  };
  await expect(actOnce(visitWith({ mark: 'm1' }), loses)).rejects.toBeInstanceOf(RecordChanged);
  expect(await wheels()).toBe(0);
});

test('one mark on two addresses is two forms; in the query it is the same', async () => {
  await actOnce(visitWith({ mark: 'm1' }, '/wheels'), add);
  expect(await actOnce(visitWith({ mark: 'm1' }, '/wheels/1/scrap'), add)).toMatchObject({ go: '/wheels/2' });
  expect(await actOnce(visitWith({ mark: 'm1' }, '/wheels?from=list'), add)).toEqual({ go: '/wheels/1' });
});

test.each([[undefined], [''], [['m1', 'm1']], [{ a: 1 }], ['x'.repeat(65)], [7]])(
  'the mark %j is none: each sending acts',
  async (mark) => {
    await actOnce(visitWith({ mark }), add);
    await actOnce(visitWith({ mark }), add);
    expect(await wheels()).toBe(2);
  },
);
